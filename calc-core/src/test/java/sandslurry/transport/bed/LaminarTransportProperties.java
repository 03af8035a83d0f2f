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
import sandslurry.material.liquid.PowerLaw;
import sandslurry.material.liquid.Rheology;
import sandslurry.material.sand.Grain;
import sandslurry.material.sand.GrainShape;
import sandslurry.pipe.Bore;
import sandslurry.pipe.CircularSegment;
import sandslurry.settling.Rowe1987;
import sandslurry.settling.SettlingVelocities;
import sandslurry.transport.bed.LaminarTransport.Part;
import sandslurry.transport.bed.LaminarTransport.Run;
import sandslurry.transport.bed.SandCarriage.Support;
import sandslurry.transport.friction.LaminarPipeFlow;
import sandslurry.transport.friction.NonNewtonianFriction;

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
    assertThat(share).isCloseTo(plug * 2 / Math.PI, within(1e-5));
    // Loss of dust in a tube, Fuchs (1964) and Pich (1972); from memory, unverified.
    double k = Math.min(1, 0.75 * kappa);
    double z = Math.cbrt(k);
    double root = Math.sqrt(1 - z * z);
    double dust = 2 / Math.PI * (2 * k * root - z * root + Math.asin(z));
    assertThat(dust).isCloseTo(parabolic * 2 / Math.PI, within(1e-5));
    assertThat(share).isGreaterThanOrEqualTo(dust - 1e-12);
  }

  @Property(tries = 50)
  void aLineCutInTwoWithRemixingLosesNoMoreThanTheWhole(
      @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 2) double length) {
    double whole = floor(new HerschelBulkley(2, 1, 0.45), level(length));
    double half = floor(new HerschelBulkley(2, 1, 0.45), level(length / 2));
    double halves = floor(new HerschelBulkley(2, 1, 0.45), level(length / 2), level(length / 2));
    assertThat(halves).isGreaterThan(half).isLessThanOrEqualTo(whole + 1e-12);
    assertThat(floor(new HerschelBulkley(2, 1, 0.45), level(0))).isZero();
  }

  private static Run level(double length) {
    return new Run(BORE, length, 0);
  }

  private static double floor(Rheology liquid, Run... runs) {
    return floor(COARSE, liquid, 0.01, runs);
  }

  private static double floor(Grain grain, Rheology liquid, double flow, Run... runs) {
    List<Part> sand = List.of(new Part(grain, 1));
    return LaminarTransport.floorShare(
        sand,
        () -> LaminarTransport.coreFallsMps(sand, liquid, 1020),
        0.1,
        liquid,
        1020,
        flow,
        List.of(runs),
        new Rowe1987());
  }

  @Property(tries = 100)
  void whatThePlugHoldsDoesNotReachTheFloorHoweverLongTheLine(
      @ForAll @Scale(6) @DoubleRange(min = 10, max = 200) double yield,
      @ForAll @Scale(6) @DoubleRange(min = 0.02, max = 2) double viscosity) {
    Bingham liquid = new Bingham(yield, viscosity);
    LaminarPipeFlow flow = LaminarPipeFlow.at(liquid, BORE.diameterM(), BORE.velocityMps(0.01));
    assertThat(floor(liquid, level(1e5))).isCloseTo(1 - flow.plugFlowShare(), within(1e-9));
    // A grain too coarse for the yield stress sinks out of the plug too.
    Grain stone = new Grain(30 * COARSE.diameterM() * yield / 10, 2650, GrainShape.NATURAL);
    assertThat(floor(stone, liquid, 0.01, level(1e5))).isEqualTo(1);
  }

  @Property(tries = 200)
  void theShareOnTheFloorHasNoStepInTheYieldStress(
      @ForAll @Scale(6) @DoubleRange(min = 0.2, max = 60) double yield,
      @ForAll @Scale(6) @DoubleRange(min = 1e-4, max = 5e-3) double size,
      @ForAll @Scale(6) @DoubleRange(min = 1, max = 300) double length) {
    Grain grain = new Grain(size, 2650, GrainShape.NATURAL);
    double here = floor(grain, new HerschelBulkley(yield, 8, 0.4), 0.005, level(length));
    double there = floor(grain, new HerschelBulkley(1.001 * yield, 8, 0.4), 0.005, level(length));
    assertThat(Math.abs(there - here)).isLessThan(0.02 * Math.max(0.01, here));
  }

  @Property(tries = 50)
  void withoutYieldStressNothingIsLeftOut(
      @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 60) double length) {
    PowerLaw liquid = new PowerLaw(3, 0.5);
    LaminarPipeFlow flow = LaminarPipeFlow.at(liquid, BORE.diameterM(), BORE.velocityMps(0.01));
    double fall =
        LaminarTransport.shearedFallMps(
            COARSE, 0.1, 1020, flow, SettlingVelocities.DEFAULT, new Rowe1987());
    assertThat(floor(liquid, level(length)))
        .isCloseTo(
            LaminarTransport.floorShare(fall, length, BORE, flow.velocityMps()), within(1e-12));
  }

  @Property(tries = 60)
  void theShareThatSinksBackIsThatOfTheSlowLayerAtTheWall(
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 40) double yield,
      @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 1) double index,
      @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 0.9) double sinking) {
    LaminarPipeFlow flow =
        LaminarPipeFlow.at(new HerschelBulkley(yield, 2, index), BORE.diameterM(), 0.3);
    int rings = 100_000;
    double slow = 0;
    for (int i = 0; i < rings; i++) {
      double r = (i + 0.5) / rings * BORE.diameterM() / 2;
      double u = flow.velocityMps(r);
      slow += u < sinking ? u * 2 * Math.PI * r * BORE.diameterM() / 2 / rings : 0;
    }
    assertThat(LaminarTransport.sinkingBackShare(flow, sinking))
        .isCloseTo(Math.min(1, slow / (0.3 * BORE.areaM2())), within(2e-4));
  }

  @Example
  void inParabolicFlowTheLayerIsTheSquareOfHalfTheRatio() {
    LaminarPipeFlow flow = LaminarPipeFlow.at(new Newtonian(2), BORE.diameterM(), 0.3);
    assertThat(LaminarTransport.sinkingBackShare(flow, 0.06)).isCloseTo(0.01, within(1e-12));
    assertThat(LaminarTransport.sinkingBackShare(flow, 0)).isZero();
    assertThat(LaminarTransport.sinkingBackShare(flow, 0.6)).isEqualTo(1);
  }

  private static SlidingBed bed(double share, double angle) {
    return new SlidingBed(BORE, share, 1e-3, angle, 2650, 1000);
  }

  @Property(tries = 50)
  void aDeeperBedTakesAGreaterGradientUpToThatOfAFullPipe(
      @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 0.95) double share) {
    double gradient = bed(share, 0).balancePaPm(0);
    assertThat(bed(share + 0.04, 0).balancePaPm(0)).isGreaterThan(gradient);
    assertThat(bed(1, 0).balancePaPm(0))
        .isCloseTo(2 * 0.4 * 9.80665 * 1650 * 0.6, within(1e-6))
        .isGreaterThan(gradient);
    // Uphill the weight helps to hold, downhill to move; a stiff liquid sticks.
    assertThat(bed(share, 0.2).balancePaPm(0)).isGreaterThan(gradient);
    assertThat(bed(share, -0.2).balancePaPm(0)).isLessThan(gradient);
    assertThat(bed(share, 0).balancePaPm(10)).isGreaterThan(gradient);
  }

  @Property(tries = 50)
  void aTraceOfSandIsTheLiquidItselfAndAPatchyLayerCountsByItsSand(
      @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 60) double yield) {
    assertThat(bed(0, 0).balancePaPm(yield)).isCloseTo(4 * yield / 0.2, within(1e-9));
    assertThat(bed(1e-9, 0).balancePaPm(yield)).isCloseTo(4 * yield / 0.2, within(1e-3 * yield));
    assertThat(bed(4e-5, 0).balancePaPm(0))
        .isCloseTo(2 * bed(2e-5, 0).balancePaPm(0), within(1e-9));
  }

  /**
   * The balance at a depth of a tenth of a 0.2 m bore, step by step: β = arccos(0.8) = 0.643501;
   * sin β = 0.6; A = 0.01 (0.643501 − 0.48) = 1.635011e-3 m2; S = 0.12 m; open area 0.0314159 −
   * 0.0016350 = 0.0297809 m2 in a perimeter of 0.2 (3.141593 − 0.643501) + 0.12 = 0.619618 m, Rh =
   * 0.0480633 m; normal force 9.80665 × 1650 × 0.6 × 0.02 × (0.6 − 0.643501 × 0.8) = 16.5433 N/m;
   * 0.4 × 16.5433/(0.001635011 + 0.12 × 0.0480633) = 893.91 Pa/m.
   */
  @Example
  void theBalanceOfABedByHand() {
    double share = 1.635011e-3 / (Math.PI * 0.01);
    assertThat(bed(share, 0).balancePaPm(0)).isCloseTo(893.915, within(1e-2));
    // The rule of thumb asks for more, and more still of coarser grains.
    assertThat(bed(share, 0).neededPaPm(0)).isEqualTo(2000);
    assertThat(new SlidingBed(BORE, share, 3e-3, 0, 2650, 1000).neededPaPm(0)).isEqualTo(6000);
    // Its friction alone, over the whole section: 0.4 × 16.5433/0.0314159.
    assertThat(bed(share, 0).frictionPaPm()).isCloseTo(210.635, within(1e-2));
  }

  /** Rule of thumb: 0.5 to 2 kPa/m for beds whose depth is 5 to 30 % of the bore. */
  @Example
  void theBalanceGivesTheOrderOfTheRuleOfThumb() {
    Bore pipe = new Bore(0.154, 0);
    for (double depth : new double[] {0.05, 0.3}) {
      double share = new CircularSegment(0.154, depth).areaM2() / pipe.areaM2();
      assertThat(new SlidingBed(pipe, share, 1e-3, 0, 2650, 1000).balancePaPm(0))
          .isBetween(400.0, 2500.0);
    }
  }

  @Example
  void overABedOfNothingTheGradientIsThatOfThePipe() {
    HerschelBulkley liquid = new HerschelBulkley(20, 8, 0.4);
    assertThat(bed(0, 0).availablePaPm(liquid, 0.4))
        .isCloseTo(LaminarPipeFlow.at(liquid, 0.2, 0.4).pressureGradientPaPm(), within(1e-9));
    assertThat(bed(0.3, 0).availablePaPm(liquid, 0.4))
        .isGreaterThan(bed(0.2, 0).availablePaPm(liquid, 0.4));
    assertThat(SlidingBed.formedShare(0.3, 0.2)).isCloseTo(0.3 * 0.2 / 0.3, within(1e-12));
  }

  @Example
  void waterAtSpeedIsCarriedByTurbulenceAndSlowWaterIsNot() {
    NonNewtonianFriction pipe = new NonNewtonianFriction(new Newtonian(0.001), 1000, BORE);
    assertThat(judge(pipe, 3, 0, 2.2).support()).isEqualTo(Support.CARRIED_BY_TURBULENCE);
    SandCarriage slow = judge(pipe, 1, 0, 2.2);
    assertThat(slow.support()).isEqualTo(Support.TURBULENT_BUT_TOO_SLOW);
  }

  @Example
  void aYieldStressThatHoldsTheSandAtRestDoesNotPassALongShearedLine() {
    NonNewtonianFriction pipe = new NonNewtonianFriction(new Bingham(10, 0.5), 1020, BORE);
    SandCarriage longLine = judge(pipe, 0.5, 0.6, 2);
    assertThat(longLine.yieldStressPa()).isGreaterThan(longLine.neededYieldStressPa());
    assertThat(longLine.support()).isEqualTo(Support.LAMINAR_AND_DEPOSITING);
    assertThat(longLine.demand()).isGreaterThan(1);
  }

  @Example
  void withThePressureOfAThickLiquidTheSameSandSlides() {
    NonNewtonianFriction pipe = new NonNewtonianFriction(new Bingham(60, 6), 1020, BORE);
    SandCarriage thick = judge(pipe, 0.5, 0.6, 2);
    assertThat(thick.support()).isEqualTo(Support.SLIDING_BED);
    assertThat(thick.demand()).isLessThan(1);
    assertThat(thick.bedSlides()).isTrue();
  }

  @Example
  void aPlugThatExistsCarriesAndOneThatDoesNotIsSlowToSettleOnly() {
    NonNewtonianFriction stiff = new NonNewtonianFriction(new Bingham(100, 2), 1020, BORE);
    assertThat(judge(stiff, 0.3, 0.004, 2).support()).isEqualTo(Support.CARRIED_BY_YIELD_STRESS);
    // Nearly on the criterion there is no margin.
    assertThat(judge(stiff, 0.3, 0.009, 2).support()).isEqualTo(Support.SLOW_TO_SETTLE);
    // 1.14 Pa under 200 Pa at the wall: the whole section is sheared, whatever it would hold at
    // rest.
    NonNewtonianFriction sheared =
        new NonNewtonianFriction(new HerschelBulkley(1.14, 60, 0.3), 1020, BORE);
    SandCarriage none = judge(sheared, 1, 0.004, 2);
    assertThat(none.outsidePlugShare()).isGreaterThan(0.99);
    assertThat(none.support()).isEqualTo(Support.SLOW_TO_SETTLE);
  }

  @Example
  void aRunWhoseCoarsestGrainsSinkAsFastAsItRisesDeposits() {
    NonNewtonianFriction pipe = new NonNewtonianFriction(new Bingham(100, 2), 1020, BORE);
    assertThat(judge(pipe, 0.3, 0.004, 2, 0.1).support())
        .isEqualTo(Support.CARRIED_BY_YIELD_STRESS);
    assertThat(judge(pipe, 0.3, 0.004, 2, 0.2).support()).isEqualTo(Support.SLOW_TO_SETTLE);
    assertThat(judge(pipe, 0.3, 0.004, 2, 0.31).support())
        .isEqualTo(Support.LAMINAR_AND_DEPOSITING);
  }

  private static SandCarriage judge(
      NonNewtonianFriction pipe, double velocity, double floorShare, double deposition) {
    return judge(pipe, velocity, floorShare, deposition, 0);
  }

  private static SandCarriage judge(
      NonNewtonianFriction pipe,
      double velocity,
      double floorShare,
      double deposition,
      double sinking) {
    return SandCarriage.judge(
        pipe,
        velocity,
        COARSE,
        floorShare,
        bed(SlidingBed.formedShare(floorShare, 0.1), 0),
        sinking,
        deposition,
        SandCarriage.DEFAULT_TOLERATED_SHARE);
  }
}
