package sandslurry.ui;

import java.awt.BorderLayout;
import java.awt.Font;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTabbedPane;
import javax.swing.JTextArea;
import javax.swing.event.HyperlinkEvent;
import sandslurry.assessment.Assessment;
import sandslurry.report.Report;
import sandslurry.report.TextView;

/** Verdict, findings, charts, cautions and report: blank unless they belong to the inputs. */
final class ResultsPanel {
  private static final List<String> TABS =
      List.of(
          "Findings",
          "States",
          "Pump and line",
          "Grade line",
          "Deposition",
          "Dilution",
          "Lane",
          "Plant",
          "Safety",
          "Report");

  private final FormModel model;
  private final JPanel panel = new JPanel(new BorderLayout());
  private final JTabbedPane tabs = new JTabbedPane();
  private final VerdictBanner banner = new VerdictBanner();
  private final HtmlView findings = new HtmlView("findings", "Findings");
  private final HtmlView states = new HtmlView("states", "States");
  private final ChartView systemCurve = new ChartView("system chart", "System curve and pump");
  private final ChartView gradeLine = new ChartView("grade chart", "Hydraulic grade line");
  private final DepositionView deposition = new DepositionView();
  private final ChartView dilution = new ChartView("dilution chart", "What dilution does");
  private final ChartView lane = new ChartView("lane chart", "Capture in the settling lane");
  private final PlantView plant = new PlantView();
  private final HtmlView safety = new HtmlView("safety", "Safety cautions");
  private final JTextArea report = new JTextArea();

  ResultsPanel(FormModel model, Consumer<String> goToField) {
    this.model = model;
    report.setEditable(false);
    report.setFont(new Font(Font.MONOSPACED, Font.PLAIN, report.getFont().getSize()));
    Look.named(report, "report", "Report");
    JScrollPane reportScroll = new JScrollPane(report);
    reportScroll.setBorder(null);
    findings
        .page()
        .addHyperlinkListener(
            event -> {
              if (event.getEventType() == HyperlinkEvent.EventType.ACTIVATED) {
                goToField.accept(event.getDescription());
              }
            });
    tabs.setTabLayoutPolicy(JTabbedPane.SCROLL_TAB_LAYOUT);
    Look.named(tabs, "results", "Results");
    tabs.addTab(TABS.get(0), findings.component());
    tabs.addTab(TABS.get(1), states.component());
    tabs.addTab(TABS.get(2), systemCurve.component());
    tabs.addTab(TABS.get(3), gradeLine.component());
    tabs.addTab(TABS.get(4), deposition.component());
    tabs.addTab(TABS.get(5), dilution.component());
    tabs.addTab(TABS.get(6), lane.component());
    tabs.addTab(TABS.get(7), plant.component());
    tabs.addTab(TABS.get(8), safety.component());
    tabs.addTab(TABS.get(9), reportScroll);
    panel.add(banner.component(), BorderLayout.NORTH);
    panel.add(tabs, BorderLayout.CENTER);
    model.listen(this::refresh);
    refresh();
  }

  JPanel component() {
    return panel;
  }

  JTabbedPane tabs() {
    return tabs;
  }

  /** The report as it is shown; nothing while there are no results. */
  Optional<String> reportText() {
    return model.outcome().assessment().map(ResultsPanel::text);
  }

  static String text(Assessment assessment) {
    return new TextView(JudgeCommand.REPORT_WIDTH).write(Report.of(assessment));
  }

  private void refresh() {
    banner.show(model);
    Outcome outcome = model.outcome();
    if (outcome.state() == Outcome.State.WORKING) {
      // The banner says so; the pages follow in a moment, so they are not emptied in between.
      return;
    }
    Optional<Assessment> assessment = outcome.assessment();
    String whyNot =
        outcome.state() == Outcome.State.BROKEN
            ? outcome.message()
            : "No results: some inputs need attention.";
    findings.show(
        assessment
            .map(FindingsPage::findings)
            .orElseGet(
                () ->
                    model.reading().problems().isEmpty()
                        ? FindingsPage.plain(whyNot)
                        : FindingsPage.problems(model.reading().problems())));
    states.show(assessment.map(StatesPage::of).orElse(FindingsPage.plain(whyNot)));
    safety.show(assessment.map(FindingsPage::safety).orElse(FindingsPage.plain(whyNot)));
    Optional<Charts> charts = assessment.map(Charts::new);
    String noLine = assessment.isPresent() ? "This design has no transfer line." : whyNot;
    String noLane = assessment.isPresent() ? "This design has no settling lane." : whyNot;
    systemCurve.show(charts.flatMap(Charts::systemCurve), noLine);
    gradeLine.show(charts.flatMap(Charts::gradeLine), noLine);
    deposition.show(assessment.filter(a -> a.line().isPresent()), noLine);
    dilution.show(
        charts.flatMap(Charts::dilution),
        assessment.isPresent() ? "This design does not look at dilution." : whyNot);
    lane.show(charts.flatMap(Charts::laneCapture), noLane);
    plant.show(assessment, assessment.isPresent() ? "This design has no plant." : whyNot);
    showReport(reportText().orElse(whyNot));
  }

  private void showReport(String text) {
    if (!text.equals(report.getText())) {
      report.setText(text);
      report.setCaretPosition(0);
    }
  }
}
