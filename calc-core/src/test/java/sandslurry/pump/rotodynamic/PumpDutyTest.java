package sandslurry.pump.rotodynamic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import sandslurry.material.Slurry;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.GrainShape;
import sandslurry.pump.derating.DeratingSpread;
import sandslurry.pump.derating.SolidsDeratings;
import sandslurry.pump.derating.SolidsDeratings.Derating;
import sandslurry.pump.drive.DailyDuty;
import sandslurry.pump.drive.ScrewConveyor;
import sandslurry.pump.suction.RequiredSuctionHead;
import sandslurry.pump.suction.SuctionHead;
import sandslurry.pump.suction.SuctionMargin;

/** Suction, derating spread, day, wear and screw. */
class PumpDutyTest {
  private final Slurry slurry =
      new Slurry(new Liquid(1010, 2e-3), 2650, GrainShape.NATURAL, 3e-4, 5e-4, 0.05);

  @Test
  void theSpreadHoldsEveryDeratingThatCanBeAsked() {
    DeratingSpread known = DeratingSpread.of(slurry, OptionalDouble.of(0.35));
    assertThat(known.each()).hasSize(SolidsDeratings.FAMILY.all().size());
    DeratingSpread unknown = DeratingSpread.of(slurry, OptionalDouble.empty());
    assertThat(unknown.each())
        .extracting(Derating::model)
        .noneMatch(m -> m.needsImpellerDiameter());
    double mildest = known.each().stream().mapToDouble(d -> d.headRatio().value()).max().orElse(0);
    assertThat(known.mostSevere().headRatio().value()).isLessThan(mildest);
    Derating governing = SolidsDeratings.governing(slurry, OptionalDouble.of(0.35));
    assertThat(governing.headRatio().value())
        .isBetween(known.mostSevere().headRatio().value(), mildest);
    DeratingSpread clear = DeratingSpread.of(slurry.withVolumeFraction(0), OptionalDouble.of(0.35));
    assertThat(clear.mostSevere().headRatio().value()).isEqualTo(1);
  }

  @Test
  void thereIsLessSuctionHeadHigherWarmerAndWithADenserMixture() {
    double low = SuctionHead.atSiteM(0, 283.15, 1000, 1, 0.5).value();
    assertThat(SuctionHead.atSiteM(1500, 283.15, 1000, 1, 0.5).value()).isLessThan(low);
    assertThat(SuctionHead.atSiteM(0, 313.15, 1000, 1, 0.5).value()).isLessThan(low);
    assertThat(SuctionHead.atSiteM(0, 283.15, 1150, 1, 0.5).value()).isLessThan(low);
  }

  @Test
  void requiredSuctionHeadPassesItsPointsAndGoesWithTheSquareOfTheSpeed() {
    RequiredSuctionHead curve =
        RequiredSuctionHead.through(
            List.of(
                new RequiredSuctionHead.Point(0.04, 5),
                new RequiredSuctionHead.Point(0.01, 2),
                new RequiredSuctionHead.Point(0.02, 2.5)));
    assertThat(curve.requiredM(0.02)).isEqualTo(2.5);
    assertThat(curve.atSpeed(0.5).requiredM(0.01)).isCloseTo(0.625, within(1e-12));
    assertThatThrownBy(() -> curve.requiredM(0.041)).hasMessageContaining("outside");
  }

  @Test
  void theGreaterOfRatioAndDifferenceCounts() {
    assertThat(SuctionMargin.WASTEWATER.neededM(2)).isCloseTo(2.6, within(1e-12));
    assertThat(SuctionMargin.WASTEWATER.neededM(10)).isCloseTo(11, within(1e-12));
    assertThat(SuctionMargin.SOLIDS.neededM(2.8)).isBetween(3.9, 4.21);
  }

  @Test
  void startsAreMostFrequentAtHalfTheFlowOfThePump() {
    DailyDuty day = new DailyDuty(120, 3, 0.02);
    double often = 1 / day.greatestStartRatePs();
    // From start to start: the sump fills at an inflow q and is emptied at 0.02 - q.
    DoubleUnaryOperator cycleS = inflow -> 3 / inflow + 3 / (0.02 - inflow);
    assertThat(cycleS.applyAsDouble(0.01)).isCloseTo(often, within(1e-9));
    assertThat(cycleS.applyAsDouble(0.006)).isGreaterThan(often);
    assertThat(cycleS.applyAsDouble(0.015)).isGreaterThan(often);
    assertThat(day.runningS()).isCloseTo(6000, within(1e-9));
  }

  @Test
  void energyForSandDoesNotDependOnTheLengthOfTheDay() {
    DailyDuty day = new DailyDuty(120, 3, 0.02);
    assertThat(day.energyJ(10e3)).isCloseTo(60e6, within(1e-3));
    double each = day.energyPerSandJpKg(10e3, 100).orElseThrow();
    assertThat(each).isCloseTo(5000, within(1e-9));
    assertThat(new DailyDuty(240, 3, 0.02).energyPerSandJpKg(10e3, 100).orElseThrow())
        .isCloseTo(each, within(1e-9));
    assertThat(day.energyPerSandJpKg(10e3, 0)).isEmpty();
  }

  @Test
  void wearIsOneAtTheDesignStateAndItsValuesAreInOrderOnBothSides() {
    assertThat(WearIndex.of(2, 2)).isEqualTo(new WearIndex(1, 1));
    WearIndex fast = WearIndex.of(4, 2);
    assertThat(fast.low()).isCloseTo(4, within(1e-12));
    assertThat(fast.high()).isCloseTo(Math.pow(2, 3.5), within(1e-12));
    WearIndex slow = WearIndex.of(1, 2);
    assertThat(slow.low()).isCloseTo(Math.pow(2, -3.5), within(1e-12));
    assertThat(slow.high()).isGreaterThan(slow.low());
  }

  @Test
  void aScrewCarriesInProportionToSpeedAndFillingAndLessOnASlope() {
    ScrewConveyor level = new ScrewConveyor(0.3, 0.08, 0.3, 0);
    double flow = level.capacityM3ps(0.5, 0.15).value();
    assertThat(level.capacityM3ps(1, 0.15).value()).isCloseTo(2 * flow, within(1e-15));
    assertThat(level.capacityM3ps(0.5, 0.30).value()).isCloseTo(2 * flow, within(1e-15));
    assertThat(level.loading(flow, 0.5).value()).isCloseTo(0.15, within(1e-12));
    ScrewConveyor steep = new ScrewConveyor(0.3, 0.08, 0.3, Math.toRadians(30));
    assertThat(steep.capacityM3ps(0.5, 0.15).value()).isCloseTo(0.4 * flow, within(1e-12));
    assertThat(steep.capacityM3ps(0.5, 0.15).inRange()).isFalse();
    assertThat(level.capacityM3ps(0.5, 0.15).inRange()).isTrue();
    assertThat(level.loading(10 * flow, 0.5).inRange()).isFalse();
    assertThat(steep.powerW(2, 6, 4) - level.powerW(2, 6, 4))
        .isCloseTo(2 * 9.80665 * 3, within(1e-9));
    assertThatThrownBy(() -> new ScrewConveyor(0.3, 0.3, 0.3, 0)).hasMessageContaining("wider");
    assertThatThrownBy(() -> new ScrewConveyor(0.3, 0, 0.3, 0.8)).hasMessageContaining("45");
    assertThatThrownBy(() -> level.loading(0.01, 0)).isInstanceOf(ArithmeticException.class);
  }
}
