package sandslurry.pump.rotodynamic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import sandslurry.pump.rotodynamic.OperatingRegion.Place;

class PumpGroupTest {
  private final PumpCurve strong =
      PumpCurve.through(
          List.of(
              new PumpCurve.Point(0, 40, 0),
              new PumpCurve.Point(0.02, 36, 0.6),
              new PumpCurve.Point(0.04, 20, 0.5)));
  private final PumpCurve weak =
      PumpCurve.through(
          List.of(
              new PumpCurve.Point(0, 30, 0),
              new PumpCurve.Point(0.01, 26, 0.7),
              new PumpCurve.Point(0.02, 10, 0.4)));

  /** Head rises from 20 to 25 m before it falls. */
  private final PumpCurve drooping =
      PumpCurve.through(
          List.of(
              new PumpCurve.Point(0, 20, 0),
              new PumpCurve.Point(0.01, 25, 0.5),
              new PumpCurve.Point(0.03, 5, 0.4)));

  @Test
  void theWeakPumpGivesNothingUntilTheHeadFallsBelowItsShutOff() {
    PumpGroup group = PumpGroup.parallel(List.of(strong, weak));
    assertThat(group.leastFlowM3ps()).isZero();
    assertThat(group.headM(0.02)).isCloseTo(36, within(1e-9));
    assertThat(group.parts(0.02).get(1).flowM3ps()).isZero();
    assertThat(group.parts(0.02).get(1).efficiency()).isZero();
    assertThat(group.efficiency(0.02)).isCloseTo(0.6, within(1e-6));
    // The strong curve ends at 20 m, where the weak pump is between its last two points.
    assertThat(group.headM(group.greatestFlowM3ps())).isCloseTo(20, within(1e-9));
    assertThat(group.greatestFlowM3ps()).isBetween(0.05, 0.06);
    assertThat(group.parts(0.05).get(1).flowM3ps()).isPositive();
  }

  @Test
  void theSharesOfPumpsAddUpToTheFlowOverEveryJump() {
    for (PumpGroup group :
        List.of(
            PumpGroup.parallel(List.of(strong, weak)),
            PumpGroup.parallel(List.of(drooping, drooping)),
            PumpGroup.parallel(List.of(strong, drooping)))) {
      for (int i = 1; i <= 50; i++) {
        double flow = group.greatestFlowM3ps() * i / 50;
        List<PumpGroup.Part> parts = group.parts(flow);
        assertThat(parts.stream().mapToDouble(PumpGroup.Part::flowM3ps).sum())
            .isCloseTo(flow, within(1e-6));
        assertThat(group.greatestShareM3ps(flow, group.headM(flow)))
            .isEqualTo(parts.stream().mapToDouble(PumpGroup.Part::flowM3ps).max().orElseThrow());
      }
    }
  }

  @Test
  void aCurveBeginsWhereItsPointsDo() {
    PumpCurve late =
        PumpCurve.through(
            List.of(
                new PumpCurve.Point(0.002, 30, 0.1),
                new PumpCurve.Point(0.01, 26, 0.7),
                new PumpCurve.Point(0.02, 10, 0.4)));
    assertThat(late.leastFlowM3ps()).isCloseTo(0.002, within(1e-15));
    assertThat(PumpGroup.parallel(List.of(late, late)).leastFlowM3ps())
        .isCloseTo(0.004, within(1e-12));
  }

  @Test
  void onlyTheAllowableRegionIsAllowed() {
    assertThat(OperatingRegion.Place.values())
        .filteredOn(OperatingRegion.Place::allowable)
        .containsExactlyInAnyOrder(
            OperatingRegion.Place.BELOW_PREFERRED,
            OperatingRegion.Place.PREFERRED,
            OperatingRegion.Place.ABOVE_PREFERRED);
  }

  @Test
  void aDroopingPumpJoinsWithAJumpOverWhichTheHeadIsLevel() {
    PumpGroup group = PumpGroup.parallel(List.of(drooping, drooping));
    double outer = 0.01 + 0.001;
    assertThat(group.headM(0)).isEqualTo(20);
    assertThat(group.headM(outer)).isCloseTo(20, within(1e-6));
    List<PumpGroup.Part> parts = group.parts(outer);
    assertThat(parts.get(0).flowM3ps() + parts.get(1).flowM3ps()).isCloseTo(outer, within(1e-9));
    assertThat(group.headM(0.055)).isLessThan(20);
  }

  @Test
  void aGroupOfOneIsThePumpItselfWithItsUnstableBranch() {
    PumpGroup one = PumpGroup.parallel(List.of(drooping));
    assertThat(one.headM(0.01)).isEqualTo(25);
    assertThat(one.headM(0)).isEqualTo(20);
  }

  @Test
  void aSeriesEndsWithTheFirstOfItsCurvesAndItsPowersAdd() {
    PumpGroup group = PumpGroup.series(List.of(strong, weak));
    assertThat(group.greatestFlowM3ps()).isEqualTo(0.02);
    assertThat(group.headM(0.01)).isCloseTo(strong.headM(0.01) + 26, within(1e-12));
    double taken = strong.headM(0.01) / strong.efficiency(0.01) + 26 / 0.7;
    assertThat(group.efficiency(0.01)).isCloseTo(group.headM(0.01) / taken, within(1e-12));
    assertThat(group.efficiency(0)).isZero();
    assertThatThrownBy(() -> group.headM(0.021)).hasMessageContaining("not extrapolated");
  }

  @Test
  void aFlowBeyondTheEndOfTheCurveAtEverySpeedThatGivesTheHeadHasNoSpeed() {
    PumpGroup group = PumpGroup.series(List.of(strong));
    assertThat(group.speedRatio(0.04, 20).getAsDouble()).isCloseTo(1, within(1e-9));
    assertThat(group.speedRatio(0.04, 1)).isEmpty();
    assertThat(group.speedRatio(0.001, 10).getAsDouble()).isCloseTo(0.5, within(0.01));
  }

  @Test
  void theBestEfficiencyIsAPointAndTheRegionsLieAboutIt() {
    assertThat(strong.bestEfficiencyFlowM3ps()).isEqualTo(0.02);
    OperatingRegion region = OperatingRegion.common(strong.bestEfficiencyFlowM3ps(), 30);
    assertThat(region.place(0.0099)).isEqualTo(Place.BELOW_ALLOWABLE);
    assertThat(region.place(0.0139)).isEqualTo(Place.BELOW_PREFERRED);
    assertThat(region.place(0.014)).isEqualTo(Place.PREFERRED);
    assertThat(region.place(0.024)).isEqualTo(Place.PREFERRED);
    assertThat(region.place(0.0249)).isEqualTo(Place.ABOVE_PREFERRED);
    assertThat(region.place(0.0251)).isEqualTo(Place.ABOVE_ALLOWABLE);
    assertThat(region.place(0.0251).allowable()).isFalse();
    assertThat(region.minimumFlowM3ps()).isEqualTo(0.01);
  }

  @Test
  void nonsenseIsRefused() {
    assertThatThrownBy(() -> PumpGroup.series(List.of())).hasMessageContaining("one pump");
    assertThatThrownBy(() -> strong.trimmed(0.7)).hasMessageContaining("0.75");
    assertThatThrownBy(() -> strong.trimmed(1.01)).hasMessageContaining("1.01");
    assertThatThrownBy(() -> strong.worn(1)).hasMessageContaining("derating");
    PumpGroup group = PumpGroup.parallel(List.of(strong, weak));
    assertThatThrownBy(() -> group.headM(Double.NaN)).hasMessageContaining("NaN");
    assertThatThrownBy(() -> group.speedRatio(0, 1)).hasMessageContaining("0.0 m3/s");
    assertThatThrownBy(() -> new OperatingRegion(0.01, 0.8, 0.7, 1.2, 1.3))
        .hasMessageContaining("in order");
  }
}
