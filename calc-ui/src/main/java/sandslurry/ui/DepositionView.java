package sandslurry.ui;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import sandslurry.assessment.Assessment;

/** The deposition correlations beside each other, for a run and a flow that can be chosen. */
final class DepositionView {
  private static final String EVERY_STATE = "every state that was judged";

  private final ChartView chart = new ChartView("deposition chart", "Deposition velocities");
  private final JComboBox<String> run = new JComboBox<>();
  private final JComboBox<String> flow = new JComboBox<>();
  private Optional<Assessment> assessment = Optional.empty();

  DepositionView() {
    Look.named(run, "deposition run", "Run shown");
    Look.named(flow, "deposition flow", "Flow shown");
    chart.choose("Run", run, "Flow", flow, this::paint);
  }

  JPanel component() {
    return chart.component();
  }

  void show(Optional<Assessment> shown, String whyNot) {
    assessment = shown;
    ChartView.fill(
        run,
        shown
            .flatMap(a -> a.design().line())
            .map(line -> line.route().runs().stream().map(r -> r.name()).toList())
            .orElse(List.of()));
    ChartView.fill(
        flow,
        shown
            .flatMap(Assessment::line)
            .map(
                line ->
                    Stream.concat(
                            line.states().stream().map(s -> s.flowCase().words()),
                            Stream.of(EVERY_STATE))
                        .toList())
            .orElse(List.of()));
    if (shown.isEmpty()) {
      chart.show(Optional.empty(), whyNot);
    } else {
      paint();
    }
  }

  private void paint() {
    if (assessment.isPresent()) {
      boolean everyState = EVERY_STATE.equals(flow.getSelectedItem());
      run.setEnabled(!everyState);
      Charts charts = new Charts(assessment.get());
      chart.show(
          everyState
              ? charts.states()
              : charts.deposition(run.getSelectedIndex(), flow.getSelectedIndex()),
          "No sand is carried here, or the flow is laminar: there is no deposition velocity.");
    }
  }
}
