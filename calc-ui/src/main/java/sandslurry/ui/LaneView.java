package sandslurry.ui;

import java.util.List;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import sandslurry.assessment.Assessment;

/** The lanes of a design: the trade that a lane is designed by, its capture, and how it fills. */
final class LaneView {
  private static final List<String> PAGES =
      List.of(
          "sand against organic matter, by velocity",
          "capture of each grain size",
          "how it fills, and what it then keeps");

  private final ChartView chart = new ChartView("lane chart", "Settling lane");
  private final JComboBox<String> lane = new JComboBox<>();
  private final JComboBox<String> page = new JComboBox<>(PAGES.toArray(String[]::new));
  private Optional<Assessment> assessment = Optional.empty();
  private String whyNot = "";

  LaneView() {
    Look.named(lane, "lane shown", "Lane shown");
    Look.named(page, "lane page", "What is shown of the lane");
    chart.choose("Lane", lane, "Show", page, this::paint);
  }

  JPanel component() {
    return chart.component();
  }

  void show(Optional<Assessment> shown, String why) {
    assessment = shown;
    whyNot = why;
    List<String> names = shown.map(a -> List.copyOf(a.lanes().keySet())).orElse(List.of());
    ChartView.fill(lane, names);
    page.setEnabled(!names.isEmpty());
    paint();
  }

  private void paint() {
    if (assessment.isEmpty() || assessment.get().lanes().isEmpty()) {
      chart.show(Optional.empty(), whyNot);
      return;
    }
    LaneCharts charts = new LaneCharts(assessment.get());
    String name = (String) lane.getSelectedItem();
    switch (page.getSelectedIndex()) {
      case 0 -> chart.show(Optional.of(charts.trade(name)), "");
      case 1 -> chart.show(Optional.of(charts.capture(name)), "");
      default -> chart.show(charts.filling(name), charts.whyNotFilling(name));
    }
  }
}
