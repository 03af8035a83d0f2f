package sandslurry.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sandslurry.golden.Shipped.assess;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.service.ServiceResult.DutyRow;
import sandslurry.assessment.station.PumpResult;
import sandslurry.assessment.station.StateResult;
import sandslurry.assessment.station.StateResult.Point;
import sandslurry.assessment.station.StateResult.PumpPoint;
import sandslurry.design.document.DesignDocument;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.Severity;
import sandslurry.fact.step.Step;
import sandslurry.pump.derating.RepresentativeViscosity;
import sandslurry.report.DesignReport;
import sandslurry.report.block.TextView;

/** Rotodynamic pumps in thick liquor, by every correction, and unlike pumps side by side. */
class PumpStationTest {
  private static final String DUTY = "pump duty";
  private static DesignDocument pair;
  private static DesignDocument thick;
  private static Assessment together;
  private static Assessment inLiquor;

  @BeforeAll
  static void load() throws Exception {
    pair =
        DesignDocument.load(Path.of("..", "docs", "examples", "two-pumps-six-states.json"))
            .without("/lines/0/operation");
    thick = DesignDocument.load(Path.of("..", "docs", "examples", "thick-liquor-rotodynamic.json"));
    together = assess(pair);
    inLiquor = assess(thick);
  }

  private static StateResult state(Assessment assessment, String name) {
    return assessment.service().states().stream()
        .filter(s -> s.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static Point point(Assessment assessment, String name) {
    return state(assessment, name).point().orElseThrow();
  }

  private static PumpPoint pump(Assessment assessment, String state, int index) {
    return point(assessment, state).pumps().get(index);
  }

  @Test
  void waterChangesNothingAndTheReportDoesNotSpeakOfIt() {
    assertThat(together.pump().orElseThrow().viscous()).allMatch(v -> v.correction().none());
    assertThat(new TextView(100).write(DesignReport.everything(together)))
        .doesNotContain("9.6.7", "viscosity of the liquid");
    assertThat(together.findings()).noneMatch(f -> f.what().contains("beside the sand"));
  }

  @Test
  void thickLiquorTakesHeadAndEfficiencyAndIsJudgedByItsThickestViscosity() {
    PumpResult result = inLiquor.pump().orElseThrow();
    PumpResult.Viscous believed = result.believed().orElseThrow();
    assertThat(result.viscous()).hasSize(3);
    assertThat(believed.viscosityPaS())
        .isEqualTo(
            result.viscous().stream()
                .mapToDouble(PumpResult.Viscous::viscosityPaS)
                .max()
                .orElseThrow());
    assertThat(believed.which()).isEqualTo(RepresentativeViscosity.IMPELLER);
    // K = 0.8 Pa.s^0.5 at 2 omega = 243 1/s, thickened a little by the fines of the sand.
    double sheared = 0.8 / Math.sqrt(4 * Math.PI * 1160 / 60);
    assertThat(believed.viscosityPaS()).isBetween(sheared, 1.02 * sheared);
    PumpPoint pump = pump(inLiquor, DUTY, 0);
    double inWaterWithSand = 0.66 * result.efficiencyRatio();
    assertThat(pump.efficiency())
        .isLessThanOrEqualTo(
            believed.correction().efficiencyRatio() * inWaterWithSand * (1 + 1e-9));
    assertThat(inLiquor.findings())
        .anyMatch(f -> f.severity() == Severity.CAUTION && f.what().contains("beside the sand"));
    assertThat(inLiquor.working())
        .extracting(Step::symbol)
        .contains("B", "C_Q", "C_eta", "mu_p", "S");
  }

  @Test
  void npshRequiredGrowsInThickLiquor() {
    assertThat(pump(inLiquor, DUTY, 0).suction().orElseThrow().viscousRatio()).isGreaterThan(1);
    assertThat(pump(together, DUTY, 0).suction().orElseThrow().viscousRatio()).isEqualTo(1);
  }

  @Test
  void aYieldStressIsACautionForAPumpBelowItsPreferredRegion() {
    DesignDocument yields =
        thick
            .with("/carrier/law", "Bingham")
            .without("/carrier/index")
            .without("/carrier/consistency")
            .with("/carrier/plasticViscosity", "15 mPa.s")
            .with("/carrier/yieldStress", "3 Pa");
    assertThat(assess(yields).findings())
        .anyMatch(
            f ->
                f.severity() == Severity.NOTE
                    && f.what().contains("yield stress may cost the pump"));
    DesignDocument oversized = yields.with("/lines/0/pump/speed", "1160 rpm");
    for (int i = 1; i < 6; i++) {
      oversized = oversized.with("/lines/0/pump/curve/" + i + "/flow", 45 * i + " L/s");
    }
    assertThat(assess(oversized.with("/lines/0/pump/curveSpeed", "1160 rpm")).findings())
        .anyMatch(
            f ->
                f.severity() == Severity.CAUTION
                    && f.what().contains("yield stress may cost the pump"));
  }

  @Test
  void theBandHoldsEveryCorrectionAndItsUsedRowIsTheDuty() {
    List<DutyRow> band = inLiquor.service().dutyBand();
    assertThat(band).hasSize(4 * 3);
    assertThat(together.service().dutyBand()).hasSize(4);
    for (Assessment each : List.of(inLiquor, together)) {
      assertThat(each.service().dutyBand())
          .filteredOn(DutyRow::believed)
          .singleElement()
          .satisfies(
              row ->
                  assertThat(row.flowM3ps().getAsDouble())
                      .isCloseTo(
                          each.pump().orElseThrow().governing().orElseThrow().flowM3ps(),
                          within(1e-9)));
    }
  }

  @Test
  void theLeastDutyOfTheBandIsAStateThatIsJudged() {
    DutyRow least = together.service().leastDuty().orElseThrow();
    assertThat(point(together, ServiceResult.LEAST_STATE).flowM3ps())
        .isCloseTo(least.flowM3ps().getAsDouble(), within(1e-9));
    Assessment asked = assess(thick.with("/lines/0/states/wornHead", "8 %"));
    assertThat(point(asked, ServiceResult.LEAST_STATE).flowM3ps())
        .isCloseTo(
            asked.service().leastDuty().orElseThrow().flowM3ps().getAsDouble(), within(1e-9));
  }

  @Test
  void theWorstTogetherBelievesTheGravestLossToSand() {
    StateResult worst =
        together.service().states().stream()
            .filter(s -> s.name().startsWith("coldest, "))
            .findFirst()
            .orElseThrow();
    assertThat(worst.name()).endsWith(", most derated");
    double others =
        List.of("coldest", "pit at its lowest", "pumps worn", ServiceResult.LEAST_STATE).stream()
            .mapToDouble(name -> point(together, name).flowM3ps())
            .min()
            .orElseThrow();
    assertThat(worst.point().orElseThrow().flowM3ps()).isLessThan(others);
  }

  @Test
  void aDutyThatOneCorrectionTakesBelowTheLimitIsACaution() {
    DesignDocument slow = pair.without("/lines/0/states").without("/lines/0/suction");
    Assessment found =
        assess(
            slow.with("/lines/0/pump/speed", "1135 rpm")
                .with("/lines/0/pump/others/0/speed", "1135 rpm"));
    assertThat(found.service().leastDuty().orElseThrow().severity()).isEqualTo(Severity.CAUTION);
    assertThat(found.service().dutyBand())
        .filteredOn(DutyRow::believed)
        .singleElement()
        .extracting(DutyRow::severity)
        .isEqualTo(Severity.PASS);
    assertThat(found.findings())
        .filteredOn(f -> f.element().equals("pump derating"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.severity()).isEqualTo(Severity.CAUTION);
              assertThat(f.id()).isEqualTo("states.derating-lowers");
              assertThat(f.cures()).containsExactly("derated-flow");
            });
  }

  private static DesignDocument weak() {
    DesignDocument weak = pair;
    String[] heads = {"9 m", "8.6 m", "8 m", "7 m", "5 m", "2 m"};
    for (int i = 0; i < heads.length; i++) {
      weak = weak.with("/lines/0/pump/others/0/curve/" + i + "/head", heads[i]);
    }
    return weak;
  }

  @Test
  void aPumpThatTheOthersPushBackIsTold() {
    Assessment pushed = assess(weak());
    PumpPoint shut = pump(pushed, DUTY, 1);
    assertThat(shut.flowM3ps()).isZero();
    assertThat(shut.shaftW()).isZero();
    assertThat(shut.shutOffM()).isLessThan(shut.headM());
    assertThat(pushed.findings())
        .anyMatch(
            f ->
                f.element().equals("older pump")
                    && f.severity() == Severity.CAUTION
                    && f.id().equals("states.shut-off"));
    // The other runs as if alone.
    assertThat(point(pushed, DUTY).flowM3ps())
        .isCloseTo(point(pushed, "without older pump").flowM3ps(), within(1e-8));
    assertThat(together.findings()).noneMatch(f -> f.id().equals("states.shut-off"));
  }

  @Test
  void theSpeedNamedForAPumpPushedBackOpensItsValve() {
    Assessment pushed = assess(weak());
    PumpPoint shut = pump(pushed, DUTY, 1);
    double ratio = Math.sqrt(shut.headM() / shut.shutOffM());
    Assessment opened =
        assess(
            weak().with("/lines/0/pump/others/0/speed", Math.ceil(1.02 * ratio * 1350) + " rpm"));
    assertThat(pump(opened, DUTY, 1).flowM3ps()).isPositive();
  }

  @Test
  void theSuctionLineOfThePumpThatTakesMostIsTheOneThatCounts() {
    // With one pump shut the other draws all, through its own suction line.
    Assessment pushed = assess(weak());
    Point duty = point(pushed, DUTY);
    Point alone = point(pushed, "without older pump");
    assertThat(duty.headM()).isCloseTo(alone.headM(), within(1e-6));
  }

  @Test
  void aPumpWearsByItsOwnShare() {
    double before = point(together, "pumps worn").flowM3ps();
    Assessment worse = assess(pair.with("/lines/0/pump/others/0/wornHead", "20 %"));
    assertThat(point(worse, "pumps worn").flowM3ps()).isLessThan(before);
    assertThat(point(worse, DUTY).flowM3ps())
        .isCloseTo(point(together, DUTY).flowM3ps(), within(1e-9));
    Assessment only =
        assess(
            pair.without("/lines/0/states/wornHead")
                .with("/lines/0/pump/others/0/wornHead", "20 %"));
    assertThat(point(only, "pumps worn").flowM3ps())
        .isBetween(
            point(worse, "pumps worn").flowM3ps(), point(together, DUTY).flowM3ps() * (1 - 1e-9));
  }

  @Test
  void aPumpHasItsOwnDriveMotorAndImpeller() {
    Assessment own =
        assess(
            pair.with("/lines/0/pump/others/0/driveEfficiency", "44 %")
                .with("/lines/0/pump/others/0/motorRating", "6 kW")
                .with("/lines/0/pump/others/0/impeller", "150 mm"));
    Point before = point(together, DUTY);
    Point after = point(own, DUTY);
    double shafts = after.pumps().get(0).shaftW() / 0.88 + after.pumps().get(1).shaftW() / 0.44;
    assertThat(after.power().inputW().getAsDouble()).isCloseTo(shafts, within(1e-6 * shafts));
    assertThat(own.pump().orElseThrow().governing().orElseThrow().inputW())
        .isCloseTo(shafts, within(1e-3 * shafts));
    assertThat(own.findings())
        .anyMatch(
            f ->
                f.element().equals("motor")
                    && f.severity() == Severity.FAIL
                    && f.why().contains("older pump")
                    && f.why().contains("6.00 kW"));
    // A smaller impeller loses more head to sand, by Engin and Gur, so this pump gives less.
    assertThat(after.pumps().get(1).flowM3ps()).isLessThan(before.pumps().get(1).flowM3ps());
    assertThat(after.pumps().get(0).flowM3ps()).isGreaterThan(before.pumps().get(0).flowM3ps());
    assertThat(together.findings())
        .anyMatch(
            f -> f.element().contains("older pump") && f.id().equals("states.impeller-not-given"));
    assertThat(own.findings())
        .filteredOn(f -> f.id().equals("states.impeller-not-given"))
        .singleElement()
        .extracting(Finding::element)
        .isEqualTo("spare pump");
  }

  @Test
  void unlikePumpsInSeriesCarryOneFlowAndTheirHeadsAdd() {
    Assessment series =
        assess(
            pair.with("/lines/0/pump/arrangement", "series")
                .with("/lines/0/pump/speed", "1000 rpm")
                .with("/lines/0/pump/others/0/speed", "1000 rpm")
                .with("/lines/0/pump/others/1/speed", "1000 rpm")
                .with("/lines/0/flow/design", "36 L/s")
                .with("/lines/0/flow/minimum", "30 L/s"));
    Point duty = point(series, DUTY);
    assertThat(duty.pumps().get(0).flowM3ps()).isEqualTo(duty.pumps().get(1).flowM3ps());
    assertThat(duty.pumps().get(0).headM() + duty.pumps().get(1).headM())
        .isCloseTo(duty.headM(), within(1e-5));
    assertThat(duty.pumps().get(0).headM()).isNotEqualTo(duty.pumps().get(1).headM());
  }

  @Test
  void theMakersGreatestFlowIsHeld() {
    Assessment held = assess(pair.with("/lines/0/pump/maximumFlow", "20 L/s"));
    assertThat(state(held, DUTY).reasons())
        .anyMatch(r -> r.contains("pump 1 runs above the allowable region"));
    assertThat(state(together, DUTY).reasons()).isEmpty();
  }

  @Test
  void aLineThatNeverMeetsTheCurveIsToldAndNotExtrapolated() {
    Assessment out =
        assess(
            pair.without("/lines/0/states")
                .without("/lines/0/suction")
                .with("/lines/0/route/runs/0/length", "5 m")
                .with("/lines/0/route/runs/0/rise", "-2 m")
                .with("/lines/0/flow/design", "100 L/s")
                .with("/lines/0/flow/minimum", "90 L/s")
                .with("/lines/0/flow/maximum", "110 L/s"));
    assertThat(out.pump().orElseThrow().governing()).isEmpty();
    assertThat(out.findings())
        .anyMatch(
            f ->
                f.severity() == Severity.FAIL
                    && f.topic() == Topic.PUMP
                    && (f.what().contains("beyond its end")
                        || f.what().contains("beyond the points given")));
  }

  @Test
  void everyEfficiencyOfEveryStateIsAFraction() {
    for (Assessment each : List.of(together, inLiquor)) {
      assertThat(each.service().states())
          .flatExtracting(s -> s.point().map(Point::pumps).orElse(List.of()))
          .extracting(PumpPoint::efficiency)
          .allMatch(e -> e >= 0 && e < 1);
    }
    assertThat(
            together.service().dutyBand().stream()
                .max(Comparator.comparingDouble(DutyRow::headRatio))
                .orElseThrow()
                .headRatio())
        .isLessThanOrEqualTo(1);
  }
}
