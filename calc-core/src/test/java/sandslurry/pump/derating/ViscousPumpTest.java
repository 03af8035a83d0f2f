package sandslurry.pump.derating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sandslurry.correlation.Estimate;
import sandslurry.fact.step.Followed;
import sandslurry.fact.step.Trace;
import sandslurry.material.liquid.Bingham;
import sandslurry.material.liquid.HerschelBulkley;
import sandslurry.material.liquid.Newtonian;
import sandslurry.material.liquid.PowerLaw;
import sandslurry.material.liquid.Rheology;
import sandslurry.pump.derating.SolidsDeratings.Derating;
import sandslurry.pump.rotodynamic.BestPoint;
import sandslurry.pump.rotodynamic.OperatingRegion;
import sandslurry.pump.rotodynamic.OperatingRegion.Place;
import sandslurry.pump.rotodynamic.PumpCurve;
import sandslurry.pump.rotodynamic.ViscousCorrection;
import sandslurry.pump.suction.SuctionEnergy;
import sandslurry.pump.suction.SuctionMargin;

/** Pumps in a viscous liquid, and what follows from their specific speeds. */
class ViscousPumpTest {
  private static final HydraulicInstituteViscous MODEL = new HydraulicInstituteViscous();
  private static final double SPEED = 1450.0 / 60;
  private static final PumpCurve WATER =
      PumpCurve.through(
          List.of(
              new PumpCurve.Point(0, 25, 0),
              new PumpCurve.Point(0.012, 24.2, 0.36),
              new PumpCurve.Point(0.024, 21.8, 0.52),
              new PumpCurve.Point(0.036, 17.8, 0.54),
              new PumpCurve.Point(0.06, 5.6, 0.29)));
  private static final BestPoint BEST = BestPoint.of(WATER, SPEED);

  private static ViscousCorrection at(double centistokes) {
    return MODEL.correction(BEST, centistokes * 1e-6);
  }

  @Test
  void waterChangesExactlyNothing() {
    assertThat(at(1).b()).isLessThan(1);
    assertThat(at(1).none()).isTrue();
    assertThat(WATER.viscous(at(1))).isSameAs(WATER);
    assertThat(at(1).suctionRatio(2)).isEqualTo(1);
  }

  @Test
  void aLiquidThinnerThanWaterChangesNothingEither() {
    assertThat(at(0.01).none()).isTrue();
    assertThat(at(0.01).flowRatio()).isEqualTo(1);
    assertThat(at(0.01).efficiencyRatio()).isEqualTo(1);
    assertThatThrownBy(() -> at(Double.POSITIVE_INFINITY)).hasMessageContaining("Infinity");
    assertThatThrownBy(() -> at(0)).hasMessageContaining("0.0 m2/s");
  }

  /** Each limit of the method is named when it is passed, and by itself. */
  @Test
  void aPumpBeyondTheTestedFlowOrHeadIsNamed() {
    assertThat(MODEL.correction(new BestPoint(0.05, 100, SPEED), 1e-4).excesses()).isEmpty();
    assertThat(MODEL.correction(new BestPoint(0.08, 100, SPEED), 1e-4).excesses())
        .extracting(e -> e.bound().what())
        .contains(MODEL.about().bounds().get(3).what());
    assertThat(MODEL.correction(new BestPoint(0.05, 140, SPEED), 1e-4).excesses())
        .extracting(e -> e.bound().what())
        .contains(MODEL.about().bounds().get(4).what());
  }

  @Test
  void theFactorsJoinWaterWithoutAStep() {
    double one = 1 / (at(1).b() * at(1).b());
    assertThat(at(one * (1 - 1e-9)).flowRatio()).isEqualTo(1);
    assertThat(at(one * (1 + 1e-6)).flowRatio()).isCloseTo(1, within(1e-12));
    assertThat(at(one * (1 + 1e-6)).efficiencyRatio()).isCloseTo(1, within(1e-6));
  }

  @Test
  void atTheBestPointFlowAndHeadFallAlikeAndAtNoFlowTheHeadStays() {
    ViscousCorrection thick = at(200);
    PumpCurve curve = WATER.viscous(thick);
    assertThat(curve.headM(0)).isEqualTo(25);
    double best = thick.flowRatio() * 0.036;
    assertThat(curve.bestEfficiencyFlowM3ps()).isCloseTo(best, within(1e-12));
    assertThat(curve.headM(best)).isCloseTo(thick.flowRatio() * 17.8, within(1e-9));
    assertThat(curve.efficiency(best)).isCloseTo(thick.efficiencyRatio() * 0.54, within(1e-9));
  }

  @Test
  void theCorrectedCurveFollowsTheCurveForWaterBetweenItsPoints() {
    ViscousCorrection thick = at(200);
    PumpCurve curve = WATER.viscous(thick);
    for (int i = 1; i < 600; i++) {
      double water = 0.06 * i / 600;
      assertThat(curve.headM(thick.flowRatio() * water))
          .isCloseTo(thick.headRatio(water) * WATER.headM(water), within(0.02));
    }
  }

  @Test
  void aCurveThatLosesAllItsHeadEndsThere() {
    ViscousCorrection mud = at(60_000);
    assertThat(mud.endOfHeadM3ps()).isBetween(0.036, 0.06);
    PumpCurve curve = WATER.viscous(mud);
    assertThat(curve.greatestFlowM3ps())
        .isCloseTo(mud.flowRatio() * mud.endOfHeadM3ps(), within(1e-12));
    assertThat(curve.headM(curve.greatestFlowM3ps())).isCloseTo(0, within(1e-9));
  }

  @Test
  void whatLiesOutsideThePublishedRangeIsTold() {
    assertThat(at(1).excesses()).isEmpty();
    assertThat(at(100).excesses()).isEmpty();
    assertThat(at(5000).excesses()).anyMatch(e -> e.bound().what().contains("viscosity"));
    assertThat(at(60_000).excesses()).anyMatch(e -> e.bound().what().contains("parameter B"));
    BestPoint mixed = new BestPoint(0.07, 7, SPEED);
    assertThat(mixed.specificSpeed()).isGreaterThan(60);
    assertThat(MODEL.correction(mixed, 1e-4).excesses())
        .anyMatch(e -> e.bound().what().contains("specific speed"));
  }

  @Test
  void nonsenseIsRefused() {
    assertThatThrownBy(() -> at(0)).hasMessageContaining("viscosity");
    assertThatThrownBy(() -> at(Double.NaN)).hasMessageContaining("NaN");
    assertThatThrownBy(() -> new BestPoint(0, 1, 1)).hasMessageContaining("best point");
    assertThatThrownBy(() -> at(1).suctionRatio(-1)).hasMessageContaining("-1");
  }

  @Test
  void everyViscosityOfANewtonianLiquidIsTheSame() {
    for (RepresentativeViscosity which : RepresentativeViscosity.values()) {
      assertThat(which.viscosityPaS(new Newtonian(0.03), SPEED, 80)).isCloseTo(0.03, within(1e-15));
    }
  }

  @Test
  void thePlasticViscosityOfABinghamLiquidIsItsOwnAndTheWallOfALineIsThickest() {
    Rheology bingham = new Bingham(4, 0.02);
    assertThat(RepresentativeViscosity.PLASTIC.viscosityPaS(bingham, SPEED, 80))
        .isCloseTo(0.02, within(1e-12));
    assertThat(RepresentativeViscosity.IMPELLER.viscosityPaS(bingham, SPEED, 80))
        .isCloseTo(0.02 + 4 / (2 * 2 * Math.PI * SPEED), within(1e-12));
    for (Rheology liquid :
        List.of(bingham, new PowerLaw(0.8, 0.4), new HerschelBulkley(2, 0.5, 0.5))) {
      double plastic = RepresentativeViscosity.PLASTIC.viscosityPaS(liquid, SPEED, 80);
      double impeller = RepresentativeViscosity.IMPELLER.viscosityPaS(liquid, SPEED, 80);
      double wall = RepresentativeViscosity.PIPE_WALL.viscosityPaS(liquid, SPEED, 80);
      assertThat(List.of(plastic, impeller, wall)).isSorted();
    }
  }

  /**
   * Bingham, 4 Pa and 0.02 Pa.s. Plastic: (34 - 6) Pa over 1400 1/s. Impeller: 4 pi 1450/60 =
   * 303.687 1/s, so (4 + 6.07375)/303.687. Wall: (4 + 1.6)/80.
   */
  @ParameterizedTest
  @CsvSource({
    "PLASTIC, 34, 1500, 0.02",
    "IMPELLER, 10.07375, 303.687, 0.0331715",
    "PIPE_WALL, 5.6, 80, 0.07"
  })
  void eachViscosityHasStepsThatCanBeFollowed(
      RepresentativeViscosity which, double stressPa, double shearPs, double viscosityPaS) {
    Trace trace = Trace.recording();
    assertThat(which.steps(trace, new Bingham(4, 0.02), SPEED, 80))
        .isCloseTo(viscosityPaS, within(1e-7));
    Followed.all(trace.steps());
    assertThat(trace.steps().get(0).value()).isCloseTo(stressPa, within(1e-4));
    assertThat(trace.steps().get(0).inputs().get(0)).isCloseTo(shearPs, within(1e-3));
    assertThat(trace.steps()).hasSize(which == RepresentativeViscosity.PLASTIC ? 3 : 2);
    assertThat(which.words()).isNotBlank();
    assertThat(trace.steps().get(0).equation().meaning()).endsWith(which.words());
  }

  @Test
  void ofASpreadThatWhichTakesTheMostHeadIsTheMostSevere() {
    List<Derating> each =
        Stream.of(0.9, 0.7, 0.8)
            .map(ratio -> Estimate.checks().value(ratio))
            .map(ratio -> new Derating(SolidsDeratings.FAMILY.all().get(0), ratio, ratio))
            .toList();
    assertThat(new DeratingSpread(each).mostSevere().headRatio().value()).isEqualTo(0.7);
  }

  @Test
  void thePreferredRegionNarrowsWithTheSpecificSpeed() {
    OperatingRegion slow = OperatingRegion.common(0.01, 30);
    OperatingRegion fast = OperatingRegion.common(0.01, 100);
    assertThat(slow.place(0.0075)).isEqualTo(Place.PREFERRED);
    assertThat(fast.place(0.0075)).isEqualTo(Place.BELOW_PREFERRED);
    assertThat(slow.place(0.0118)).isEqualTo(Place.PREFERRED);
    assertThat(fast.place(0.0118)).isEqualTo(Place.ABOVE_PREFERRED);
  }

  /** 70 to 120 % of the best, from 4500 US (87.2) on 80 to 115 %; 50 to 125 % may be run at. */
  @ParameterizedTest
  @CsvSource({
    "86, 0.71, 0.69, 1.19, 1.21, 0.51, 0.49, 1.24, 1.26",
    "88.4, 0.81, 0.79, 1.14, 1.16, 0.51, 0.49, 1.24, 1.26"
  })
  void theLimitsOfARegionAreThoseOfItsSpecificSpeed(
      double speed,
      double low,
      double belowLow,
      double high,
      double aboveHigh,
      double least,
      double belowLeast,
      double most,
      double aboveMost) {
    OperatingRegion region = OperatingRegion.common(0.01, speed);
    assertThat(region.place(0.01 * low)).isEqualTo(Place.PREFERRED);
    assertThat(region.place(0.01 * belowLow)).isEqualTo(Place.BELOW_PREFERRED);
    assertThat(region.place(0.01 * high)).isEqualTo(Place.PREFERRED);
    assertThat(region.place(0.01 * aboveHigh)).isEqualTo(Place.ABOVE_PREFERRED);
    assertThat(region.place(0.01 * least)).isEqualTo(Place.BELOW_PREFERRED);
    assertThat(region.place(0.01 * belowLeast)).isEqualTo(Place.BELOW_ALLOWABLE);
    assertThat(region.place(0.01 * most)).isEqualTo(Place.ABOVE_PREFERRED);
    assertThat(region.place(0.01 * aboveMost)).isEqualTo(Place.ABOVE_ALLOWABLE);
  }

  @ParameterizedTest
  @CsvSource({"0.5, BELOW_PREFERRED", "0.7, PREFERRED", "1.2, PREFERRED", "1.25, ABOVE_PREFERRED"})
  void aLimitBelongsToTheBetterRegion(double flow, Place place) {
    OperatingRegion region = OperatingRegion.common(1, 87.2);
    assertThat(region.place(flow)).isEqualTo(place);
    assertThat(OperatingRegion.common(0.01, 30).minimumFlowM3ps()).isCloseTo(0.005, within(1e-15));
  }

  @Test
  void theLimitsOfTheMakerComeFirst() {
    OperatingRegion common = OperatingRegion.common(0.01, 30);
    OperatingRegion narrow = common.within(OptionalDouble.of(0.008), OptionalDouble.of(0.011));
    assertThat(narrow.place(0.0079)).isEqualTo(Place.BELOW_ALLOWABLE);
    assertThat(narrow.place(0.009)).isEqualTo(Place.PREFERRED);
    assertThat(narrow.place(0.0111)).isEqualTo(Place.ABOVE_ALLOWABLE);
    OperatingRegion wide = common.within(OptionalDouble.of(0.003), OptionalDouble.of(0.014));
    assertThat(wide.place(0.0035)).isEqualTo(Place.BELOW_PREFERRED);
    assertThat(wide.place(0.0135)).isEqualTo(Place.ABOVE_PREFERRED);
    // A limit beyond the customary other one moves that one along.
    assertThat(common.within(OptionalDouble.of(0.02), OptionalDouble.empty()).place(0.015))
        .isEqualTo(Place.BELOW_ALLOWABLE);
    assertThat(common.within(OptionalDouble.empty(), OptionalDouble.of(0.004)).place(0.0045))
        .isEqualTo(Place.ABOVE_ALLOWABLE);
    assertThat(common.within(OptionalDouble.empty(), OptionalDouble.empty())).isEqualTo(common);
    assertThatThrownBy(() -> common.within(OptionalDouble.of(0.02), OptionalDouble.of(0.01)))
        .hasMessageContaining("above the least");
  }

  @Test
  void theMarginIsTheGreaterOfWhatSandAndInletAskFor() {
    SuctionMargin calm = SuctionMargin.of(100, SuctionEnergy.Grade.LOW);
    assertThat(calm).isEqualTo(SuctionMargin.WASTEWATER);
    assertThat(SuctionMargin.of(200, SuctionEnergy.Grade.LOW))
        .isEqualTo(SuctionMargin.WASTEWATER_HIGH_SUCTION_SPEED);
    assertThat(SuctionMargin.SOLIDS.or(calm)).isEqualTo(SuctionMargin.SOLIDS);
    SuctionMargin violent = SuctionMargin.SOLIDS.or(SuctionMargin.VERY_HIGH_ENERGY);
    assertThat(violent.neededM(1)).isEqualTo(2.5);
    assertThat(violent.neededM(4)).isEqualTo(8);
  }

  @Test
  void aFasterWiderInletHasTheHigherSuctionEnergy() {
    BestPoint slow = new BestPoint(0.03, 20, 1000.0 / 60);
    BestPoint fast = new BestPoint(0.06, 80, 2000.0 / 60);
    double before = SuctionEnergy.of(0.1, slow, 2, 1).value();
    assertThat(SuctionEnergy.of(0.2, slow, 2, 1).value()).isCloseTo(2 * before, within(1e-3));
    assertThat(SuctionEnergy.of(0.1, fast, 2, 1).value()).isGreaterThan(2 * before);
    assertThat(new SuctionEnergy(159e6).grade()).isEqualTo(SuctionEnergy.Grade.LOW);
    assertThat(new SuctionEnergy(160e6).grade()).isEqualTo(SuctionEnergy.Grade.HIGH);
    assertThat(new SuctionEnergy(241e6).grade()).isEqualTo(SuctionEnergy.Grade.VERY_HIGH);
  }

  /** tau = gamma^0.5: (38.729833 - 10)/1400 from 100 to 1500 1/s. */
  @Test
  void thePlasticViscosityIsTheSlopeOfTheRheogramAtHighShear() {
    assertThat(RepresentativeViscosity.PLASTIC.viscosityPaS(new PowerLaw(1, 0.5), 25, 300))
        .isCloseTo(0.0205213, within(1e-7));
  }
}
