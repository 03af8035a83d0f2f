package sandslurry.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sandslurry.golden.Shipped.assess;

import org.junit.jupiter.api.Test;
import sandslurry.assessment.line.FlowCase;
import sandslurry.assessment.line.LineModel;
import sandslurry.assessment.materials.Materials;
import sandslurry.assessment.stop.PulsationResult;
import sandslurry.assessment.stop.StopResult;
import sandslurry.assessment.stop.StopResult.FlushFlow;
import sandslurry.assessment.stop.StopResult.OverBed;
import sandslurry.correlation.Physics;
import sandslurry.design.Documents;
import sandslurry.design.document.DesignDocument;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.Severity;
import sandslurry.pump.piston.CrankDrive;

/** Restart, flush and pulse of three lines each, every step written out by hand. */
class StopByHandTest {
  private static final String WATER = "\"kind\": \"water\", \"temperature\": \"15 degC\"";

  private static String bingham(double yieldPa, double viscosityPaS) {
    return "\"kind\": \"rheology\", \"law\": \"Bingham\", \"temperature\": \"15 degC\","
        + " \"density\": \"1020 kg/m3\", \"yieldStress\": \""
        + yieldPa
        + " Pa\", \"plasticViscosity\": \""
        + 1000 * viscosityPaS
        + " cP\"";
  }

  /** A line of 100 m in a bore of 150 mm; grains of one size, so that the coarse grain is known. */
  private static DesignDocument line(
      String carrier, double sandPercent, double litres, double rise, String more) {
    return Documents.parse(
        """
        {
          "formatVersion": 1,
          "sand": { "d50": "1 mm", "d85": "1 mm" },
          "carrier": { %s },
          "mixture": { "volumeFraction": "%s %%" },
          "flow": { "minimum": "%s L/s", "design": "%s L/s", "maximum": "%s L/s" },
          "route": { "runs": [ { "name": "Line", "bore": "150 mm", "roughness": "0.1 mm",
            "rating": "4 MPa", "length": "100 m", "rise": "%s m" } ] }
          %s
        }
        """
            .formatted(carrier, sandPercent, litres, litres, litres, rise, more));
  }

  private static StopResult stop(DesignDocument document) {
    return assess(document).service().stop().orElseThrow();
  }

  /** 4 × (2 × 10 Pa) × 100 m/0.15 m = 53 333 Pa; level; no sand: the answer of the clear liquid. */
  @Test
  void restartOfAClearLiquorByHand() {
    StopResult stop = stop(line(bingham(10, 0.5), 0, 20, 0, ""));
    assertThat(stop.lying().restedYieldPa()).isCloseTo(20, within(1e-9));
    assertThat(stop.restart().yieldPa()).isCloseTo(53_333.3, within(0.1));
    assertThat(stop.restart().slidingBedPa()).isZero();
    assertThat(stop.pressures().staticPa()).isCloseTo(0, within(1e-9));
    assertThat(stop.restart().expectedPa()).isCloseTo(53_333.3, within(0.1));
    // With the factor measured: 4 × 30 Pa × 100/0.15.
    assertThat(
            stop(line(bingham(10, 0.5), 0, 20, 0, ", \"operation\": { \"thixotropy\": \"3\" }"))
                .restart()
                .yieldPa())
        .isCloseTo(80_000, within(0.1));
  }

  /**
   * Water without yield stress, 3 % sand, all of it settled: the bed takes 0.03/0.6 = 5 % of the
   * section, β = 0.634474 rad, A = 8.83573e-4 m2, S = 88.9130 mm; open 0.0167879 m2 in a perimeter
   * of 0.464981 m, Rh = 36.1045 mm; normal force 9.80665 × 1650.9 × 0.6 × 0.15²/2 × (sin β − β cos
   * β) = 8.93472 N/m; 0.4 × 8.93472/(8.83573e-4 + 0.088913 × 0.0361045) = 873.01 Pa/m, times 100 m.
   */
  @Test
  void restartOfABedInWaterByHand() {
    StopResult stop = stop(line(WATER, 3, 60, 0, ""));
    assertThat(stop.lying().running().get(0)).isZero();
    assertThat(stop.lying().atRest()).isEqualTo(1);
    assertThat(stop.runs().get(0).bedShare()).isCloseTo(0.05, within(1e-9));
    assertThat(stop.restart().slidingBedPa()).isCloseTo(87_301, within(20.0));
    assertThat(stop.restart().yieldPa()).isZero();
  }

  /**
   * A liquor of 1 Pa that turns turbulent, 3 % sand, 5 m up: it holds grains of 1/(0.2 × 9.80665 ×
   * 1630) = 0.31 mm, so the sand of 1 mm settles; mixture 0.03 × 2650 + 0.97 × 1020 = 1068.9 kg/m3,
   * static 1068.9 × 9.80665 × 5 = 52 412 Pa; yield 4 × 2 × 100/0.15 = 5333 Pa; bed as above with
   * 1630 kg/m3 instead of 1650.9: 87 301 × 1630/1650.9 = 86 196 Pa. Together 143 941 Pa.
   */
  @Test
  void restartOfAThinLiquorUphillByHand() {
    StopResult stop = stop(line(bingham(1, 0.002), 3, 60, 5, ""));
    assertThat(stop.lying().atRest()).isEqualTo(1);
    assertThat(stop.pressures().staticPa()).isCloseTo(52_412, within(5.0));
    assertThat(stop.restart().yieldPa()).isCloseTo(5_333.3, within(0.1));
    assertThat(stop.restart().slidingBedPa()).isCloseTo(86_196, within(25.0));
    assertThat(stop.pressures().staticPa() + stop.restart().expectedPa())
        .isCloseTo(143_941, within(40.0));
  }

  /** Neither at 5.30 Pa nor anywhere else does what restarting takes step in the yield stress. */
  @Test
  void theRestartHasNoStepInTheYieldStress() {
    for (double yield = 2; yield < 20; yield *= 1.09) {
      double here = stop(line(bingham(yield, 0.002), 3, 60, 0, "")).restart().expectedPa();
      double there = stop(line(bingham(1.001 * yield, 0.002), 3, 60, 0, "")).restart().expectedPa();
      assertThat(Math.abs(there - here)).isLessThan(0.02 * here);
    }
  }

  private static String tank(double levelM) {
    return ", \"operation\": { \"flushLevel\": \"" + levelM + " m\" }";
  }

  /**
   * Water in the line: the flush meets water. Start: 1048.6 kg/m3 × 9.80665 × 2 m of 999.1 ×
   * 9.80665 × 12 m. Strip: nothing. The flow is that against the line full of its sand.
   */
  @Test
  void flushOfALineOfWaterByHand() {
    StopResult stop = stop(line(WATER, 3, 60, 2, tank(12)));
    FlushFlow supply = stop.supply().orElseThrow();
    double mixture = 0.03 * 2650 + 0.97 * 999.1;
    assertThat(supply.startPa()).isCloseTo(mixture * Physics.GRAVITY * 2, within(2.0));
    assertThat(supply.startDemand()).isCloseTo(mixture * 2 / (999.1 * 12), within(1e-4));
    assertThat(supply.stripDemand()).isZero();
    // A yield stress that vanishes gives the same answer as none.
    FlushFlow trace =
        stop(line(
                "\"kind\": \"measured\", \"temperature\": \"15 degC\","
                    + " \"density\": \"1020 kg/m3\", \"viscosity\": \"2 cP\"",
                3,
                60,
                2,
                tank(12)))
            .supply()
            .orElseThrow();
    FlushFlow none = stop(line(bingham(0.001, 0.002), 3, 60, 2, tank(12))).supply().orElseThrow();
    assertThat(none.loadedM3ps().orElseThrow())
        .isCloseTo(
            trace.loadedM3ps().orElseThrow(), within(0.01 * trace.loadedM3ps().orElseThrow()));
    assertThat(none.startDemand()).isCloseTo(trace.startDemand(), within(1e-2));
  }

  /**
   * 60 Pa, 120 Pa after the rest: 4 × 120 × 100/0.15 = 320 000 Pa and 1020 × 9.80665 × 2 = 20 006
   * Pa of static pressure against 999.1 × 9.80665 × 12 = 117 575 Pa: nothing moves, whatever the
   * supply gives through a clean line.
   */
  @Test
  void flushOfAThickLiquorThatDoesNotStartByHand() {
    Assessment assessed = assess(line(bingham(60, 0.5), 0, 10, 2, tank(12)));
    FlushFlow supply = assessed.service().stop().orElseThrow().supply().orElseThrow();
    assertThat(supply.startPa()).isCloseTo(340_006, within(5.0));
    assertThat(supply.startAvailablePa()).isCloseTo(117_575, within(60.0));
    assertThat(supply.startDemand()).isCloseTo(2.892, within(2e-3));
    assertThat(supply.loadedM3ps()).isEmpty();
    assertThat(supply.cleanM3ps().orElseThrow()).isGreaterThan(0.05);
    assertThat(assessed.findings())
        .anyMatch(
            f ->
                f.element().equals("flush")
                    && f.severity() == Severity.CAUTION
                    && f.id().equals("stop.flush-no-start"));
  }

  /**
   * 8 Pa: starting takes 4 × 16 × 100/0.15 + 20 006 = 62 673 Pa of 117 575. Through the clean line
   * the head of 10 m goes into friction and outlet: with the flow Q found, V = Q/A, f = (2 g 10/V²
   * − 1) D/L, and the water has ρ f V²/8 on the wall, against 2 × 8 Pa that strip the liquor.
   */
  @Test
  void flushThatStartsAndChannelsByHand() {
    StopResult stop = stop(line(bingham(8, 0.05), 0, 30, 2, tank(12)));
    FlushFlow supply = stop.supply().orElseThrow();
    assertThat(supply.startPa()).isCloseTo(62_673, within(5.0));
    assertThat(supply.startDemand()).isLessThan(1);
    double area = Math.PI * 0.15 * 0.15 / 4;
    double velocity = supply.cleanM3ps().orElseThrow() / area;
    double factor = (2 * Physics.GRAVITY * 10 / (velocity * velocity) - 1) * 0.15 / 100;
    OverBed run = supply.runs().get(0);
    assertThat(run.wallStressPa())
        .isCloseTo(999.1 * factor * velocity * velocity / 8, within(0.02));
    assertThat(run.strippingPa()).isCloseTo(16, within(1e-9));
    assertThat(supply.stripDemand()).isCloseTo(16 / run.wallStressPa(), within(1e-9));
    // While the liquor is pushed out it flows more slowly than the water after it.
    assertThat(supply.loadedM3ps().orElseThrow()).isLessThan(supply.cleanM3ps().orElseThrow());
    assertThat(supply.loadedM3ps().orElseThrow()).isPositive();
  }

  /**
   * A line that falls 20 m, full of water with 15 % sand: the heavy mixture drives itself out
   * faster than the water behind it runs, so the least flow of the flush is that of the clean line.
   */
  @Test
  void whereALineFallsTheFlushIsNoFasterThanTheCleanLine() {
    StopResult stop = stop(line(WATER, 15, 60, -20, tank(2)));
    FlushFlow supply = stop.supply().orElseThrow();
    assertThat(supply.loadedM3ps().orElseThrow())
        .isLessThanOrEqualTo(supply.cleanM3ps().orElseThrow());
    // A clear liquor of 1 Pa starts by itself: nobody needs a pressure below that of the air.
    StopResult clear = stop(line(bingham(1, 0.05), 0, 60, -20, tank(2)));
    assertThat(clear.pressures().staticPa()).isLessThan(-100_000);
    assertThat(clear.supply().orElseThrow().startDemand()).isZero();
    assertThat(clear.leastPa()).isZero();
    assertThat(clear.mostPa()).hasValue(0);
  }

  /**
   * 8 Pa ask for 16 Pa of the water on the wall: ρ f V²/8 = 16, with Churchill's f at the Reynolds
   * number V 0.15/1.14e-6 = 341 000, roughness 0.1 mm: f = 0.0190 gives V = sqrt(128/(999.1 ×
   * 0.0190)) = 2.60 m/s. Without sand nothing else is asked of the flow, without yield stress
   * nothing of the wall.
   */
  @Test
  void theFlushThatStripsByHand() {
    StopResult.FlushNeed need = stop(line(bingham(8, 0.05), 0, 30, 2, "")).flush().orElseThrow();
    double velocity = need.strippingM3ps() / (Math.PI * 0.15 * 0.15 / 4);
    assertThat(velocity).isCloseTo(2.60, within(0.02));
    assertThat(need.clearingM3ps()).isZero();
    assertThat(need.flowM3ps()).isEqualTo(need.strippingM3ps());
    assertThat(need.volumeM3()).isCloseTo(2 * 100 * Math.PI * 0.15 * 0.15 / 4, within(1e-9));
    StopResult.FlushNeed water = stop(line(WATER, 3, 60, 2, "")).flush().orElseThrow();
    assertThat(water.strippingM3ps()).isZero();
    assertThat(water.flowM3ps()).isEqualTo(water.clearingM3ps());
    // With both the greater is asked for: to strip 60 Pa takes more than to carry off the bed.
    StopResult.FlushNeed both = stop(line(bingham(60, 0.5), 3, 30, 2, "")).flush().orElseThrow();
    assertThat(both.clearingM3ps()).isCloseTo(water.clearingM3ps(), within(1e-3));
    assertThat(both.flowM3ps()).isEqualTo(both.strippingM3ps());
    assertThat(both.strippingM3ps()).isGreaterThan(2 * need.strippingM3ps());
  }

  /**
   * Sand of 1 mm needs 0.2 × 9.80665 × 1630 × 1e-3 = 3.197 Pa: below it settles in a time that
   * grows without a step, above nobody knows when, and the report gives no time.
   */
  @Test
  void theTimeToSettleGrowsWithTheYieldStressAndThenIsNotKnown() {
    double before = 0;
    for (double yield : new double[] {0.01, 0.3, 1, 2, 3, 3.19}) {
      double time =
          stop(line(bingham(yield, 0.02), 3, 60, 0, "")).runs().get(0).coarseS().orElseThrow();
      assertThat(time).as("%s Pa", yield).isGreaterThan(before);
      before = time;
    }
    StopResult held = stop(line(bingham(3.3, 0.02), 3, 60, 0, ""));
    assertThat(held.runs().get(0).coarseS()).isEmpty();
    assertThat(held.lying().atRest()).isBetween(0.5, 1.0);
  }

  private static String pump(double litres, String pulsation) {
    return ", \"pump\": { \"kind\": \"piston\", \"displacement\": \""
        + litres / 0.95
        + " L\", \"strokeRate\": \"60 1/min\", \"volumetricEfficiency\": \"95 %\","
        + " \"pressureLimit\": \"3 MPa\", \"cylinders\": \"2\", "
        + pulsation
        + " }";
  }

  /** Every moment of a cycle in turn: the pressure at the flow of that moment, and the inertia. */
  private static void peakByHand(DesignDocument document, double litres, double passed) {
    Assessment assessed = assess(document);
    PulsationResult pulsation = assessed.service().pulsation().orElseThrow();
    Materials materials = Materials.of(document.read().design().orElseThrow());
    LineModel model = new LineModel(materials);
    double mean = litres / 1000;
    double sand = materials.sandFraction(mean);
    double density = materials.mixtureDensityKgM3(sand);
    CrankDrive drive = new CrankDrive(2, false, 0, 6);
    double area = Math.PI * 0.15 * 0.15 / 4;
    double most = 0;
    int steps = 360;
    for (int i = 0; i < steps; i++) {
      double angle = 2 * Math.PI * i / steps;
      double here = 1 + passed * (drive.relativeFlow(angle) - 1);
      double next = 1 + passed * (drive.relativeFlow(angle + 1e-4) - 1);
      double inertia = density * 100 * mean / area * (next - here) / (1e-4 / (2 * Math.PI));
      // Below the mean the sand rubs as at the mean, and the liquid alone loses less.
      double flow = Math.max(here, 0.01) * mean;
      double steady =
          here >= 1
              ? pressure(model, flow, sand, density)
              : pressure(model, mean, sand, density)
                  - pressure(model, mean, 0, density)
                  + pressure(model, flow, 0, density);
      most = Math.max(most, steady + inertia);
    }
    assertThat(pulsation.peakPa()).isCloseTo(most, within(0.01 * most));
  }

  private static double pressure(LineModel model, double flow, double sand, double density) {
    var runs = model.runs(flow, sand);
    return density
        * Physics.GRAVITY
        * (model.totalHeadsM(runs).get(0) - runs.get(0).velocityHeadM());
  }

  @Test
  void thePeakOfAPulseByHandInAThickLiquor() {
    peakByHand(line(bingham(30, 1), 0, 15, 2, pump(15, "\"pulsationPassed\": \"20 %\"")), 15, 0.2);
  }

  @Test
  void thePeakOfAPulseByHandInWaterWithSand() {
    peakByHand(line(WATER, 3, 60, 2, pump(60, "\"pulsationPassed\": \"5 %\"")), 60, 0.05);
  }

  /** Zero pulse: the peak is the steady pressure. A pulse that is let through adds friction too. */
  @Test
  void withoutPulseThePeakIsTheSteadyPressure() {
    DesignDocument still = line(bingham(30, 1), 0, 15, 2, pump(15, "\"pulsationPassed\": \"0 %\""));
    Assessment assessed = assess(still);
    PulsationResult none = assessed.service().pulsation().orElseThrow();
    double start =
        assessed
            .line()
            .orElseThrow()
            .at(FlowCase.DUTY)
            .orElseThrow()
            .runs()
            .get(0)
            .pressures()
            .startPa();
    assertThat(none.peakPa()).isCloseTo(start, within(1e-6 * start));
    assertThat(none.peak().flowRatio()).isEqualTo(1);
    peakByHand(line(bingham(30, 1), 0, 15, 2, pump(15, "\"pulsationPassed\": \"60 %\"")), 15, 0.6);
  }

  /**
   * 24 Pa in a bore of 100 mm at 10 L/s is carried by its plug, of which a stroke at 1.57 times
   * that flow shears more: as a line of its own at the greatest flow it is no pass, so neither is
   * the pulse.
   */
  @Test
  void aPulseThatBreaksThePlugIsNoPass() {
    DesignDocument still = plugLine("\"pulsationPassed\": \"0 %\"");
    assertThat(assess(still).service().pulsation().orElseThrow().strained()).isEmpty();
    assertThat(plugging(assess(still))).isEqualTo(Severity.PASS);
    DesignDocument pulsing = plugLine("\"pulsationPassed\": \"100 %\"");
    PulsationResult pulsation = assess(pulsing).service().pulsation().orElseThrow();
    double greatest = 10 * pulsation.ripple().greatestRatio();
    assertThat(greatest).isGreaterThan(15);
    DesignDocument fastest =
        still
            .without("/lines/0/pump")
            .with("/lines/0/flow/minimum", greatest + " L/s")
            .with("/lines/0/flow/design", greatest + " L/s")
            .with("/lines/0/flow/maximum", greatest + " L/s");
    assertThat(plugging(assess(fastest))).isGreaterThan(Severity.PASS);
    assertThat(pulsation.strained())
        .singleElement()
        .satisfies(
            run -> {
              assertThat(run.run()).isEqualTo("Line");
              assertThat(run.greatestMps())
                  .isCloseTo(greatest / 1000 / (Math.PI * 0.1 * 0.1 / 4), within(1e-9));
            });
    assertThat(plugging(assess(pulsing))).isEqualTo(Severity.CAUTION);
  }

  private static Severity plugging(Assessment assessed) {
    return assessed.findings().stream()
        .filter(f -> f.topic() == Topic.PLUGGING && f.element().equals("Line"))
        .map(Finding::severity)
        .reduce(Severity.PASS, Severity::or);
  }

  private static DesignDocument plugLine(String pulsation) {
    return Documents.parse(
        """
        {
          "formatVersion": 1,
          "sand": { "d50": "0.15 mm", "d85": "0.22 mm" },
          "carrier": { "kind": "rheology", "law": "Herschel-Bulkley", "temperature": "5 degC",
            "density": "1040 kg/m3", "yieldStress": "24 Pa", "consistency": "36",
            "index": "0.35" },
          "mixture": { "volumeFraction": "5 %%" },
          "flow": { "minimum": "10 L/s", "design": "10 L/s", "maximum": "10 L/s" },
          "route": { "runs": [ { "name": "Line", "bore": "100 mm", "roughness": "0.02 mm",
            "rating": "4 MPa", "length": "6 m" } ] }
          %s
        }
        """
            .formatted(pump(10, pulsation)));
  }
}
