package sandslurry.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static sandslurry.ui.EventThread.onEventThread;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.JTextField;
import org.jfree.chart.axis.NumberAxis;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sandslurry.assessment.Assessment;
import sandslurry.design.document.DesignDocument;

/** Habits that people bring from other programs, and what they may rely on. */
class FormHabitsTest {
  @BeforeAll
  static void look() throws Exception {
    EventThread.installLook();
  }

  private static FormModel model(DesignDocument document) {
    FormModel model = new FormModel(Designs.NEVER);
    model.startFrom(document);
    return model;
  }

  @Test
  void aTableTakesTheCellsOfASpreadsheetInOneStep() throws Exception {
    onEventThread(
        () -> {
          FormModel model = model(Designs.everything());
          DesignDocument before = model.document();
          ListTable table =
              new ListTable(
                  model,
                  () -> "/sand/gradation",
                  "sieve",
                  List.of(
                      new ListTable.Column("size", "Size", List.of(), ""),
                      new ListTable.Column("passing", "Passing", List.of(), "")));
          table.refresh();
          table.table().changeSelection(1, 0, false, false);
          table.paste("1 mm\t 80 % \r\n0.3 mm\t40 %\tmore\n0.2 mm\t20 %\n");
          assertThat(model.document().size("/sand/gradation")).isEqualTo(4);
          assertThat(model.document().text("/sand/gradation/0/size")).isEqualTo("2 mm");
          assertThat(model.document().text("/sand/gradation/1/passing")).isEqualTo("80 %");
          assertThat(model.document().text("/sand/gradation/3/size")).isEqualTo("0.2 mm");
          assertThat(model.reading().problems()).isEmpty();
          model.undo();
          assertThat(model.document()).isEqualTo(before);
          return null;
        });
  }

  @Test
  void severalCellsCanBeCopiedFromEveryTable() throws Exception {
    onEventThread(
        () -> {
          FormModel model = new FormModel(Designs.AT_ONCE);
          model.startFrom(Designs.example("parlor-line.json"));
          ResultsPanel results = new ResultsPanel(model, pointer -> {});
          results.open("Pump and line");
          JTable numbers =
              PanelsTest.find(results.component(), JTable.class, "system chart numbers");
          numbers.selectAll();
          assertThat(numbers.isEnabled()).isTrue();
          assertThat(numbers.isCellEditable(0, 0)).isFalse();
          assertThat(numbers.getSelectedRowCount()).isGreaterThan(5);
          return null;
        });
  }

  @Test
  void aFieldThatNoRowShowsIsSeenAndCanBeRemoved() throws Exception {
    onEventThread(
        () -> {
          DesignDocument clean = Designs.example("parlor-line.json");
          FormModel model =
              model(
                  clean
                      .with("/lines/0/flow/desing", "350 gpm")
                      .with("/lines/0/route/runs/0/a~1b", "1")
                      .with("/other/deep", "2"));
          InputsPanel inputs = new InputsPanel(model);
          for (String place :
              List.of("/lines/0/flow/desing", "/lines/0/route/runs/0/a~1b", "/other")) {
            assertThat(inputs.focus(place)).as(place).isTrue();
          }
          PanelsTest.find(inputs.component(), AbstractButton.class, "/lines/0/flow/desing remove")
              .doClick(0);
          assertThat(model.document().has("/lines/0/flow/desing")).isFalse();
          PanelsTest.find(inputs.component(), AbstractButton.class, "remove unknown").doClick(0);
          assertThat(model.document()).isEqualTo(clean);
          assertThat(
                  PanelsTest.find(
                          inputs.component(), JComponent.class, "section Fields that are not known")
                      .isVisible())
              .isFalse();
          return null;
        });
  }

  @Test
  void theLabelsOfThePartThatHasTheFocusHaveALetterEach() throws Exception {
    onEventThread(
        () -> {
          InputsPanel inputs = new InputsPanel(model(Designs.everything()));
          Letters letters = new Letters();
          for (InputSection section : inputs.sections()) {
            letters.moveTo(section.panel());
            Set<Integer> used = new HashSet<>();
            int labels = 0;
            for (JComponent component : PanelsTest.all(inputs.component())) {
              int letter =
                  component instanceof JLabel label
                      ? label.getDisplayedMnemonic()
                      : component instanceof AbstractButton button ? button.getMnemonic() : 0;
              labels += component instanceof JLabel && PanelsTest.isShown(component) ? 1 : 0;
              if (letter != 0) {
                assertThat(used.add(letter)).as(section.title() + " " + (char) letter).isTrue();
                assertThat(Letters.TAKEN.indexOf(letter)).isNegative();
              }
            }
            assertThat(labels).isPositive();
          }
          return null;
        });
  }

  @Test
  void aNewDesignIsInTheUnitsOfThePlace() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.US);
      assertThat(new FormModel(Designs.NEVER).document().text("/units")).isEqualTo("US");
      Locale.setDefault(Locale.GERMANY);
      assertThat(new FormModel(Designs.NEVER).document().text("/units")).isEqualTo("metric");
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void theExamplesInEmptyFieldsAreInTheUnitsOfTheDesign() throws Exception {
    onEventThread(
        () -> {
          FormModel model = model(Designs.everything().with("/units", "US"));
          InputsPanel inputs = new InputsPanel(model);
          JTextField length =
              PanelsTest.find(inputs.component(), JTextField.class, "/lines/0/route/runs/0/length");
          assertThat(length.getClientProperty("JTextField.placeholderText"))
              .asString()
              .contains("ft");
          model.edit("/units", "metric");
          assertThat(length.getClientProperty("JTextField.placeholderText"))
              .asString()
              .contains(" m");
          return null;
        });
  }

  @Test
  void aChartHasOneDecimalMarkWhateverTheLanguage() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);
      Charts charts = new Charts(Designs.assessment(Designs.example("parlor-line.json")));
      NumberAxis heads =
          (NumberAxis)
              ChartPainter.chart(charts.systemCurve().orElseThrow()).getXYPlot().getRangeAxis();
      assertThat(heads.getNumberFormatOverride().format(1234.5)).isEqualTo("1234.5");
      NumberAxis bars =
          (NumberAxis)
              ChartPainter.chart(charts.deposition(0, 0).orElseThrow())
                  .getCategoryPlot()
                  .getRangeAxis();
      assertThat(bars.getNumberFormatOverride().format(1.5)).isEqualTo("1.5");
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void aCurveHasTheSameColourInEveryDesign() {
    List<List<String>> names =
        List.of("parlor-line.json", "thick-manure-piston.json", "oversized-line-plugs.json")
            .stream()
            .map(file -> new Charts(Designs.assessment(Designs.example(file))).systemCurve())
            .flatMap(java.util.Optional::stream)
            .map(chart -> chart.series().stream().map(ChartData.Series::name).toList())
            .toList();
    assertThat(names).hasSizeGreaterThan(1);
    assertThat(new HashSet<>(names)).hasSize(1);
  }

  @Test
  void theAxisOfHeadsEndsWhereThePumpDoesNotWhereTheBedBegins() {
    ChartData chart =
        new Charts(Designs.assessment(Designs.example("oversized-line-plugs.json")))
            .systemCurve()
            .orElseThrow();
    double greatest =
        chart.series().stream()
            .filter(s -> !s.name().contains("over a bed"))
            .flatMap(s -> s.points().stream())
            .mapToDouble(ChartData.Point::y)
            .max()
            .orElseThrow();
    assertThat(ChartPainter.chart(chart).getXYPlot().getRangeAxis().getUpperBound())
        .isLessThanOrEqualTo(1.1 * greatest + 1e-9);
  }

  @Test
  void theStateThatFailsIsOnTheCharts() {
    DesignDocument worn =
        Designs.example("two-pumps-six-states.json").with("/lines/0/mixture/volumeFraction", "9 %");
    Assessment assessment = Designs.assessment(worn);
    Charts charts = new Charts(assessment);
    ChartData states = charts.states().orElseThrow();
    assertThat(states.bars()).anyMatch(b -> b.group().equals("FAIL") && b.value() < 100);
    assertThat(
            charts.systemCurve().orElseThrow().series().stream()
                .filter(s -> s.name().equals("states that fail"))
                .findFirst()
                .orElseThrow()
                .points())
        .isNotEmpty();
  }

  @Test
  void aTextFieldHoldsWhatWasTypedToTheLetter() throws Exception {
    onEventThread(
        () -> {
          String typed = "safe\u202eSSAP";
          FormModel model = model(Designs.example("parlor-line.json").with("/title", typed));
          InputsPanel inputs = new InputsPanel(model);
          assertThat(PanelsTest.find(inputs.component(), JTextField.class, "/title").getText())
              .isEqualTo(typed);
          return null;
        });
  }
}
