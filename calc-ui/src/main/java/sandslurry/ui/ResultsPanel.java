package sandslurry.ui;

import java.awt.BorderLayout;
import java.awt.Font;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTabbedPane;
import javax.swing.JTextArea;
import javax.swing.event.HyperlinkEvent;
import sandslurry.assessment.Assessment;
import sandslurry.design.DesignDocument;
import sandslurry.report.DesignReport;
import sandslurry.report.block.TextView;

/** Verdict, findings, charts, cautions and report: blank unless they belong to the inputs. */
final class ResultsPanel {
  /**
   * A page.
   *
   * @param title its title
   * @param component what it shows
   * @param there whether a design has that chapter; a page without a chapter stays away
   */
  private record Page(String title, JComponent component, Predicate<DesignDocument> there) {}

  private final FormModel model;
  private final JPanel panel = new JPanel(new BorderLayout());
  private final JTabbedPane tabs = new JTabbedPane();
  private final List<Page> pages;
  private final VerdictBanner banner = new VerdictBanner();
  private final HtmlView findings = new HtmlView("findings", "Findings");
  private final HtmlView states = new HtmlView("states", "States");
  private final ChartView systemCurve = new ChartView("system chart", "System curve and pump");
  private final ChartView gradeLine = new ChartView("grade chart", "Hydraulic grade line");
  private final DepositionView deposition = new DepositionView();
  private final ChartView dilution = new ChartView("dilution chart", "What dilution does");
  private final LaneView lane = new LaneView();
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
    Predicate<DesignDocument> always = document -> true;
    Predicate<DesignDocument> line = document -> document.has("/route");
    this.pages =
        List.of(
            new Page("Findings", findings.component(), always),
            new Page(
                "States",
                states.component(),
                line.or(d -> d.has("/screw")).or(d -> d.has("/gravityRun"))),
            new Page("Pump and line", systemCurve.component(), line),
            new Page("Grade line", gradeLine.component(), line),
            new Page("Deposition", deposition.component(), line),
            new Page("Dilution", dilution.component(), document -> document.has("/dilution")),
            new Page("Lane", lane.component(), ResultsPanel::hasLane),
            new Page("Plant", plant.component(), document -> document.has("/plant")),
            new Page("Safety", safety.component(), always),
            new Page("Report", reportScroll, always));
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

  private static boolean hasLane(DesignDocument document) {
    return document.has("/lane")
        || IntStream.range(0, document.size("/plant/units"))
            .anyMatch(i -> document.text("/plant/units/" + i + "/kind").equalsIgnoreCase("lane"));
  }

  /** Every page there can be, shown or not. */
  List<String> titles() {
    return pages.stream().map(Page::title).toList();
  }

  boolean has(String title) {
    return tabs.indexOfTab(title) >= 0;
  }

  void open(String title) {
    if (has(title)) {
      tabs.setSelectedIndex(tabs.indexOfTab(title));
    }
  }

  /** Shows the pages of the chapters that the design has, and stays at the page that was open. */
  private void turnPages() {
    List<Page> wanted = pages.stream().filter(p -> p.there().test(model.document())).toList();
    List<String> shown = IntStream.range(0, tabs.getTabCount()).mapToObj(tabs::getTitleAt).toList();
    if (shown.equals(wanted.stream().map(Page::title).toList())) {
      return;
    }
    String open = shown.isEmpty() ? "" : tabs.getTitleAt(tabs.getSelectedIndex());
    tabs.removeAll();
    wanted.forEach(page -> tabs.addTab(page.title(), page.component()));
    tabs.setSelectedIndex(Math.max(0, tabs.indexOfTab(open)));
  }

  /** The report as it is shown; nothing while there are no results. */
  Optional<String> reportText() {
    return model.outcome().assessment().map(ResultsPanel::text);
  }

  static String text(Assessment assessment) {
    return new TextView(JudgeCommand.REPORT_WIDTH).write(DesignReport.everything(assessment));
  }

  private void refresh() {
    banner.show(model);
    turnPages();
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
    String noLine = assessment.isPresent() ? "The mixture is too thick to flow." : whyNot;
    systemCurve.show(charts.flatMap(Charts::systemCurve), noLine);
    gradeLine.show(charts.flatMap(Charts::gradeLine), noLine);
    deposition.show(assessment.filter(a -> a.line().isPresent()), noLine);
    dilution.show(
        charts.flatMap(Charts::dilution),
        assessment.isPresent()
            ? "There is no curve: the mixture is too thick, or the line has no flow to dilute."
            : whyNot);
    lane.show(
        assessment,
        assessment.isPresent()
            ? "The mixture is too thick to flow through the lane, or there is no steady state."
            : whyNot);
    plant.show(assessment, whyNot);
    showReport(reportText().orElse(whyNot));
  }

  private void showReport(String text) {
    if (!text.equals(report.getText())) {
      report.setText(text);
      report.setCaretPosition(0);
    }
  }
}
