package sandslurry.assessment.observed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sandslurry.golden.Shipped.assess;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.observed.ObservedResult.Agreement;
import sandslurry.assessment.observed.ObservedResult.Cause;
import sandslurry.assessment.observed.ObservedResult.Filling;
import sandslurry.assessment.observed.ObservedResult.Second;
import sandslurry.design.document.DesignDocument;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.Severity;
import sandslurry.report.Answer;
import sandslurry.report.DesignReport;
import sandslurry.report.block.Block;
import sandslurry.report.block.TextView;

/** A reading on the example of a line that slows down, and on changes of it. */
class ObservedFindingsTest {
  private static DesignDocument example;
  private static Assessment assessed;

  @BeforeAll
  static void load() throws Exception {
    example = DesignDocument.load(Path.of("..", "docs", "examples", "line-slows-down.json"));
    assessed = assess(example);
  }

  private static ObservedResult of(DesignDocument document) {
    return assess(document).service().observed().orElseThrow();
  }

  private static List<String> ids(Assessment assessment) {
    return assessment.findings().stream()
        .filter(f -> f.topic() == Topic.OBSERVED)
        .map(Finding::id)
        .toList();
  }

  @Test
  void theExampleLeavesBedAndLiquorOpenAndSaysWhatTellsThemApart() {
    ObservedResult result = assessed.service().observed().orElseThrow();
    assertThat(result.line().agreement()).isEqualTo(Agreement.MORE);
    assertThat(result.open()).containsExactly(List.of(Cause.BED, Cause.LIQUID));
    assertThat(result.second())
        .filteredOn(s -> s.kind() == Second.AFTER_FLUSH)
        .singleElement()
        .matches(s -> s.distinguishes(result.open().get(0)));
    assertThat(ids(assessed))
        .contains("observed.more", "observed.bed", "observed.thicker", "observed.undecided")
        .contains("observed.pump-as-new", "observed.fills")
        .doesNotContain("observed.rough", "observed.as-clean");
    assertThat(assessed.verdict()).isEqualTo(Severity.CAUTION);
  }

  @Test
  void theReadingOfTheDutyIsThatOfTheCleanLineAndOfTheNewPump() {
    Assessment bare = assess(example.without("/lines/0/observed"));
    double flow = bare.pump().orElseThrow().governing().orElseThrow().flowM3ps();
    DesignDocument read =
        example
            .with("/lines/0/observed/flow", flow + " m3/s")
            .with(
                "/lines/0/observed/pressure",
                of(example.with("/lines/0/observed/flow", flow + " m3/s")).line().calculatedPa()
                    + " Pa");
    ObservedResult result = of(read);
    assertThat(result.line().agreement()).isEqualTo(Agreement.AS_CALCULATED);
    assertThat(result.possible()).isEmpty();
    assertThat(result.pump().orElseThrow().wear().value()).isCloseTo(0, within(1e-6));
    // The pressure at the start of the line is that of the working of the line.
    assertThat(result.line().calculatedPa())
        .isCloseTo(
            assess(
                    example
                        .with("/lines/0/flow/minimum", flow + " m3/s")
                        .with("/lines/0/flow/design", flow + " m3/s")
                        .with("/lines/0/flow/maximum", flow + " m3/s"))
                .line()
                .orElseThrow()
                .states()
                .get(0)
                .runs()
                .get(0)
                .pressures()
                .startPa(),
            within(1.0));
    assertThat(ids(assess(read))).contains("observed.as-clean", "observed.pump-as-new");
  }

  @Test
  void aLowPressureOnTheLineIsAWornPumpAndNoBed() {
    ObservedResult result =
        of(
            example
                .with("/lines/0/observed/flow", "330 gpm")
                .with("/lines/0/observed/pressure", "13.9 psi"));
    assertThat(result.line().agreement()).isEqualTo(Agreement.AS_CALCULATED);
    assertThat(result.pump().orElseThrow().wear().low()).isPositive();
    assertThat(result.filling()).isEmpty();
  }

  @Test
  void aPressureTooLowIsNoBedNorRoughness() {
    ObservedResult result =
        of(
            example
                .with("/lines/0/observed/flow", "330 gpm")
                .with("/lines/0/observed/pressure", "7 psi"));
    assertThat(result.line().agreement()).isEqualTo(Agreement.LESS);
    assertThat(result.value(Cause.BED)).isEmpty();
    assertThat(result.value(Cause.ROUGHNESS)).isEmpty();
    assertThat(ids(assess(example.with("/lines/0/observed/pressure", "3 psi"))))
        .contains("observed.less");
  }

  @Test
  void aBedNeedsItsSand() {
    Filling filling = assessed.service().observed().orElseThrow().filling().orElseThrow();
    // All sand: volume of the bed, 0.6 of it sand, over what comes at the flow rate read.
    double sand = 0.01 * 0.0151416 * 2650 * filling.leastS();
    assertThat(filling.sandKg()).isCloseTo(sand, within(0.05 * sand));
    ObservedResult soon = of(example.with("/lines/0/observed/runningTimeSinceCleaning", "60 s"));
    assertThat(soon.possible()).noneMatch(e -> e.cause() == Cause.BED);
    assertThat(ids(assess(example.with("/lines/0/observed/runningTimeSinceCleaning", "60 s"))))
        .contains("observed.too-little-sand")
        .doesNotContain("observed.bed");
  }

  @Test
  void withLessUncertaintyTheBedIsKnownBetter() {
    var wide = of(example).value(Cause.BED).orElseThrow();
    var narrow =
        of(example
                .with("/lines/0/observed/flowUncertainty", "0 %")
                .with("/lines/0/observed/pressureUncertainty", "0 psi"))
            .value(Cause.BED)
            .orElseThrow();
    assertThat(narrow.value()).isCloseTo(wide.value(), within(1e-9));
    assertThat(narrow.high() - narrow.low()).isLessThan(wide.high() - wide.low());
  }

  @Test
  void aPistonPumpLacksFlowAndIsNeverReadWithItsValveClosed() {
    DesignDocument piston =
        example
            .without("/lines/0/pump")
            .with("/lines/0/pump/kind", "piston")
            .with("/lines/0/pump/displacement", "20 L")
            .with("/lines/0/pump/strokeRate", "60 1/min")
            .with("/lines/0/pump/volumetricEfficiency", "95 %")
            .with("/lines/0/pump/pressureLimit", "700 kPa");
    ObservedResult result = of(piston);
    // 240 of 301.2 gal/min: 19 L/s swept and delivered, 15.14 L/s read.
    assertThat(result.pump().orElseThrow().wear().value())
        .isCloseTo(1 - 15.1416 / 19, within(1e-3));
    assertThat(result.pump().get().closedPa()).isEmpty();
    assertThat(assess(piston).findings())
        .filteredOn(f -> f.id().equals("observed.piston-worn"))
        .singleElement()
        .satisfies(f -> assertThat(f.cure()).contains("Never close"));
  }

  @Test
  void answerAndReportShowIt() {
    List<Block> answer = Answer.of(assessed);
    int heading = -1;
    for (int i = 0; i < answer.size(); i++) {
      if (answer.get(i) instanceof Block.Heading h && h.text().equals("Reading on site")) {
        heading = i;
      }
    }
    assertThat(heading).isPositive();
    assertThat(((Block.Items) answer.get(heading + 1)).items()).hasSizeBetween(3, 5);
    String report = new TextView(100).write(DesignReport.everything(assessed));
    assertThat(report)
        .contains("Reading on site")
        .contains("calculated for the clean line")
        .contains("mixture after a flush");
    assertThat(new TextView(100).write(DesignReport.service(assessed)))
        .contains("settled bed, depth in the first run");
  }
}
