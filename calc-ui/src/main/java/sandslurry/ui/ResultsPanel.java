package sandslurry.ui;

import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Graphics;
import java.beans.PropertyChangeEvent;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JLayer;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import javax.swing.event.HyperlinkEvent;
import javax.swing.plaf.LayerUI;
import sandslurry.assessment.Assessment;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.Problem;
import sandslurry.report.DesignReport;
import sandslurry.report.block.TextView;

/**
 * Verdict, findings, charts, cautions and report. They belong to the inputs: dimmed and marked
 * while a change is evaluated, empty once another design is open.
 */
final class ResultsPanel {
  private static final String TOO_THICK = "The mixture is too thick to flow.";

  /**
   * A page.
   *
   * @param title its title
   * @param component what it shows
   * @param there whether a design has that chapter; a page without a chapter stays away
   * @param fill shows an assessment, or why there is none
   */
  private record Page(
      String title,
      JComponent component,
      Predicate<DesignDocument> there,
      BiConsumer<Optional<Assessment>, String> fill) {}

  private final FormModel model;
  private final JPanel panel = new JPanel(new BorderLayout());
  private final JTabbedPane tabs = new JTabbedPane();
  private final Veil veil = new Veil();
  private final JLabel behind =
      new JLabel("These pages belong to the inputs before the last change.");
  private final List<Page> pages;
  private final Set<Page> filled = new HashSet<>();
  private final VerdictBanner banner = new VerdictBanner();
  private final HtmlView findings = new HtmlView("findings", "Findings");
  private final BackgroundCures cures = new BackgroundCures();
  private final HtmlView states = new HtmlView("states", "States");
  private final ChartView systemCurve = new ChartView("system chart", "System curve and pump");
  private final ChartView gradeLine = new ChartView("grade chart", "Hydraulic grade line");
  private final DepositionView deposition = new DepositionView();
  private final ChartView dilution = new ChartView("dilution chart", "What dilution does");
  private final LaneView lane = new LaneView();
  private final PlantView plant = new PlantView();
  private final SizeView size = new SizeView();
  private final HtmlView safety = new HtmlView("safety", "Safety cautions");
  private final TextPage report = new TextPage("report", "Report");

  ResultsPanel(FormModel model, Consumer<String> goToField) {
    this.model = model;
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
    behind.setName("behind");
    behind.setBorder(BorderFactory.createEmptyBorder(0, 14, 6, 14));
    behind.setForeground(Look.NEEDED);
    this.pages = pages();
    tabs.addChangeListener(event -> fillOpenPage());
    JPanel above = new JPanel(new BorderLayout());
    above.add(banner.component(), BorderLayout.CENTER);
    above.add(behind, BorderLayout.SOUTH);
    panel.add(above, BorderLayout.NORTH);
    panel.add(new JLayer<>(tabs, veil), BorderLayout.CENTER);
    model.listen(this::refresh);
    refresh();
  }

  private List<Page> pages() {
    Predicate<DesignDocument> always = document -> true;
    Predicate<DesignDocument> line = document -> document.has("/lines/" + model.line() + "/route");
    return List.of(
        new Page("Answer", findings.component(), always, this::showFindings),
        new Page(
            "States",
            states.component(),
            line.or(d -> d.has("/screw")).or(d -> d.has("/gravityRun")),
            (a, why) ->
                states.show(model.ofLine(a).map(StatesPage::of).orElse(FindingsPage.plain(why)))),
        chart("Pump and line", systemCurve, line, Charts::systemCurve, TOO_THICK),
        chart("Hydraulic grade line", gradeLine, line, Charts::gradeLine, TOO_THICK),
        new Page(
            "Deposition",
            deposition.component(),
            line,
            (a, why) ->
                deposition.show(
                    model.ofLine(a).filter(shown -> shown.line().isPresent()),
                    a.isEmpty() ? why : TOO_THICK)),
        chart(
            "Dilution",
            dilution,
            document -> document.has("/lines/" + model.line() + "/dilution"),
            Charts::dilution,
            "There is no curve: the mixture is too thick, or the line has no flow to dilute."),
        new Page("Size", size.component(), line, (a, why) -> size.show(sized())),
        new Page(
            "Lane",
            lane.component(),
            ResultsPanel::hasLane,
            (a, why) ->
                lane.show(
                    a,
                    a.isEmpty()
                        ? why
                        : "The mixture is too thick to flow through the lane, or there is no steady"
                            + " state.")),
        new Page("Plant", plant.component(), document -> document.has("/plant"), plant::show),
        new Page(
            "Safety",
            safety.component(),
            always,
            (a, why) -> safety.show(a.map(FindingsPage::safety).orElse(FindingsPage.plain(why)))),
        new Page(
            "Report",
            report.component(),
            always,
            (a, why) -> report.show(width -> a.map(all -> text(all, width)).orElse(why))));
  }

  /** A page with one chart; where an assessment has none, the page says why. */
  private Page chart(
      String title,
      ChartView view,
      Predicate<DesignDocument> there,
      Function<Charts, Optional<ChartData>> chart,
      String none) {
    return new Page(
        title,
        view.component(),
        there,
        (a, why) ->
            view.show(model.ofLine(a).map(Charts::new).flatMap(chart), a.isEmpty() ? why : none));
  }

  JPanel component() {
    return panel;
  }

  JTabbedPane tabs() {
    return tabs;
  }

  /** The line that is edited is the one that is sized. */
  private DesignDocument sized() {
    DesignDocument document = model.document();
    return document.size("/lines") > 1 ? document.ofLine(model.line()) : document;
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
    return model.outcome().assessment().map(all -> text(all, JudgeCommand.FORM_WIDTH));
  }

  private static String text(Assessment assessment, int width) {
    return new TextView(width).write(DesignReport.everything(assessment));
  }

  private void refresh() {
    banner.show(model);
    boolean old = model.isBehind();
    behind.setVisible(old);
    veil.draw(old);
    report.setEnabled(!old);
    findings.page().setEnabled(!old);
    if (!old) {
      filled.clear();
    }
    turnPages();
    fillOpenPage();
  }

  /** Only the page that is looked at is worth the work. */
  private void fillOpenPage() {
    for (Page page : pages) {
      if (page.component() == tabs.getSelectedComponent() && filled.add(page)) {
        page.fill().accept(model.shown(), whyNot());
      }
    }
  }

  private String whyNot() {
    return switch (model.outcome().state()) {
      case BROKEN -> model.outcome().message();
      case WORKING -> "The design is being evaluated.";
      case PROBLEMS, DONE -> "No results: some inputs need attention.";
    };
  }

  private void showFindings(Optional<Assessment> assessment, String whyNot) {
    List<Problem> problems = model.reading().problems();
    findings.show(
        assessment
            .map(shown -> FindingsPage.findings(shown, cures.of(shown)))
            .orElseGet(
                () ->
                    problems.isEmpty()
                        ? FindingsPage.plain(whyNot)
                        : FindingsPage.problems(problems)));
    cures.request(
        model.document(),
        assessment,
        () -> {
          if (model.outcome().assessment().filter(one -> one == assessment.get()).isPresent()) {
            showFindings(assessment, whyNot);
          }
        });
  }

  /** Dims the pages while they are those of the inputs before the last change. */
  @SuppressWarnings("serial")
  private static final class Veil extends LayerUI<JTabbedPane> {
    private static final Color DIM = new Color(235, 235, 235, 170);
    private boolean drawn;

    void draw(boolean wanted) {
      boolean before = drawn;
      drawn = wanted;
      firePropertyChange("drawn", before, wanted);
    }

    @Override
    public void applyPropertyChange(
        PropertyChangeEvent event, JLayer<? extends JTabbedPane> layer) {
      layer.repaint();
    }

    @Override
    public void paint(Graphics graphics, JComponent component) {
      super.paint(graphics, component);
      if (drawn) {
        graphics.setColor(DIM);
        graphics.fillRect(0, 0, component.getWidth(), component.getHeight());
      }
    }
  }
}
