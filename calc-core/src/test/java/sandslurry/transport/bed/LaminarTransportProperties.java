package sandslurry.transport.bed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import sandslurry.material.liquid.Bingham;
import sandslurry.material.liquid.HerschelBulkley;
import sandslurry.material.liquid.Newtonian;
import sandslurry.material.sand.Grain;
import sandslurry.material.sand.GrainShape;
import sandslurry.pipe.Bore;
import sandslurry.settling.Rowe1987;
import sandslurry.settling.SettlingVelocities;
import sandslurry.transport.bed.LaminarTransport.Run;
import sandslurry.transport.bed.SandCarriage.Support;
import sandslurry.transport.friction.NonNewtonianFriction;
import sandslurry.units.UnitSystem;

class LaminarTransportProperties {
  private static final Bore BORE = new Bore(0.2, 0);
  private static final Grain COARSE = new Grain(1e-3, 2650, GrainShape.NATURAL);

  @Property(tries = 50)
  void theShareOnTheFloorIsTheSumOverVerticalStrips(
      @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 1.6) double kappa) {
    int strips = 200_000;
    double plug = 0;
    double parabolic = 0;
    for (int i = 0; i < strips; i++) {
      double x = (i + 0.5) / strips;
      double half = Math.sqrt(1 - x * x);
      // In radii and mean velocities: a fall over the whole length of 2κ times the mean flow.
      plug += Math.min(2 * kappa, 2 * half) / strips;
      parabolic += Math.min(2 * kappa, 8.0 / 3 * half * half * half) / strips;
    }
    double length = kappa * BORE.diameterM() / 0.001;
    double share = LaminarTransport.floorShare(0.001, length, BORE, 1);
    double least = LaminarTransport.leastFloorShare(0.001, length, BORE, 1);
    assertThat(share).isCloseTo(plug * 2 / Math.PI, within(1e-5));
    assertThat(least).isCloseTo(parabolic * 2 / Math.PI, within(1e-5));
    assertThat(least).isLessThanOrEqualTo(share + 1e-12);
  }

  @Property(tries = 50)
  void aLineCutInTwoWithRemixingLosesNoMoreThanTheWhole(
      @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 2) double length) {
    List<LaminarTransport.RunDeposit> whole = along(List.of(new Run(BORE, length)));
    List<LaminarTransport.RunDeposit> halves =
        along(List.of(new Run(BORE, length / 2), new Run(BORE, length / 2)));
    assertThat(halves.get(1).shareOfInflow())
        .isGreaterThan(halves.get(0).shareOfInflow())
        .isLessThanOrEqualTo(whole.get(0).shareOfInflow() + 1e-12);
    assertThat(along(List.of(new Run(BORE, 0))).get(0).share()).isZero();
  }

  private static List<LaminarTransport.RunDeposit> along(List<Run> runs) {
    return LaminarTransport.alongLine(
        COARSE,
        0.1,
        new HerschelBulkley(2, 1, 0.45),
        1020,
        0.01,
        runs,
        SettlingVelocities.DEFAULT,
        new Rowe1987());
  }

  @Property(tries = 50)
  void aDeeperBedTakesAGreaterGradientUpToThatOfAFullPipe(
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 0.95) double depth) {
    double gradient = LaminarTransport.slidingGradientPaPm(BORE, depth, 2650, 1000, 0.4, 0.6);
    assertThat(LaminarTransport.slidingGradientPaPm(BORE, depth + 0.04, 2650, 1000, 0.4, 0.6))
        .isGreaterThan(gradient);
    assertThat(LaminarTransport.slidingGradientPaPm(BORE, 1, 2650, 1000, 0.4, 0.6))
        .isCloseTo(2 * 0.4 * 9.80665 * 1650 * 0.6, within(1e-9))
        .isGreaterThan(gradient);
  }

  @Example
  void waterAtSpeedIsCarriedByTurbulenceAndSlowWaterIsNot() {
    NonNewtonianFriction pipe = new NonNewtonianFriction(new Newtonian(0.001), 1000, BORE);
    assertThat(judge(pipe, 3, 0, 2.2).support()).isEqualTo(Support.CARRIED_BY_TURBULENCE);
    SandCarriage slow = judge(pipe, 1, 0, 2.2);
    assertThat(slow.support()).isEqualTo(Support.TURBULENT_BUT_TOO_SLOW);
    assertThat(slow.support().carried()).isFalse();
    assertThat(slow.velocityForTurbulenceMps()).isEqualTo(2.2);
    assertThat(slow.reasons(UnitSystem.METRIC)).anyMatch(r -> r.contains("sand settles"));
  }

  @Example
  void aYieldStressThatHoldsTheSandAtRestDoesNotPassALongShearedLine() {
    Bingham liquid = new Bingham(10, 0.5);
    NonNewtonianFriction pipe = new NonNewtonianFriction(liquid, 1020, BORE);
    SandCarriage longLine = judge(pipe, 0.5, 0.6, 2);
    assertThat(longLine.yieldStressPa()).isGreaterThan(longLine.neededYieldStressPa());
    assertThat(longLine.support()).isEqualTo(Support.LAMINAR_AND_DEPOSITING);
    assertThat(longLine.reasons(UnitSystem.METRIC)).anyMatch(r -> r.contains("holds nothing"));
    NonNewtonianFriction stiff = new NonNewtonianFriction(new Bingham(40, 3), 1020, BORE);
    SandCarriage stub = judge(stiff, 0.5, 0.004, 2);
    assertThat(stub.support()).isEqualTo(Support.CARRIED_BY_YIELD_STRESS);
    assertThat(stub.bedSlides()).isTrue();
  }

  @Example
  void whatReachesTheFloorAndStaysThereFillsThePipeHoweverLittleItIs() {
    SandCarriage judged =
        judge(new NonNewtonianFriction(new Bingham(10, 0.5), 1020, BORE), 0.5, 0.004, 2);
    assertThat(judged.floorShare()).isLessThan(judged.toleratedShare());
    assertThat(judged.bedSlides()).isFalse();
    assertThat(judged.support()).isEqualTo(Support.LAMINAR_AND_DEPOSITING);
    assertThat(judged.reasons(UnitSystem.METRIC)).anyMatch(r -> r.contains("not surely slide"));
  }

  @Example
  void aStiffPlugCarriesHoweverLongTheLine() {
    NonNewtonianFriction pipe = new NonNewtonianFriction(new Bingham(200, 0.05), 1020, BORE);
    SandCarriage judged = judge(pipe, 0.02, 1, 2);
    assertThat(judged.outsidePlugShare()).isLessThan(0.05);
    assertThat(judged.floorShare()).isEqualTo(judged.outsidePlugShare());
    assertThat(SandCarriage.judge(pipe, 0.02, COARSE, 1, 2, 0.05).support())
        .isEqualTo(Support.CARRIED_BY_YIELD_STRESS);
    assertThat(judged.bedSlides()).isTrue();
  }

  @Example
  void aWeakYieldStressIsNeverCalledACarrier() {
    NonNewtonianFriction pipe = new NonNewtonianFriction(new Bingham(1, 0.5), 1020, BORE);
    SandCarriage judged = judge(pipe, 0.1, 0, 2);
    assertThat(judged.support()).isEqualTo(Support.LAMINAR_AND_DEPOSITING);
    assertThat(judged.reasons(UnitSystem.US)).anyMatch(r -> r.contains("even at rest"));
  }

  private static SandCarriage judge(
      NonNewtonianFriction pipe, double velocity, double floorShare, double deposition) {
    return SandCarriage.judge(
        pipe, velocity, COARSE, floorShare, deposition, SandCarriage.DEFAULT_TOLERATED_SHARE);
  }
}
