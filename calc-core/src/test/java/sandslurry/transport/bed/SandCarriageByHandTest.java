package sandslurry.transport.bed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sandslurry.material.liquid.Bingham;
import sandslurry.material.liquid.Newtonian;
import sandslurry.material.liquid.Rheology;
import sandslurry.material.sand.Grain;
import sandslurry.material.sand.GrainShape;
import sandslurry.pipe.Bore;
import sandslurry.settling.StaticSuspension;
import sandslurry.transport.bed.SandCarriage.Support;
import sandslurry.transport.friction.NonNewtonianFriction;

/** What carries the sand: each number of the judgement by hand, each limit from both sides. */
class SandCarriageByHandTest {
  private static final Bore BORE = new Bore(0.2, 0);
  private static final Grain COARSE = new Grain(1e-3, 2650, GrainShape.NATURAL);

  /** A plug of half the bore: 100 Pa in 200 Pa at the wall. */
  private static final Rheology STIFF = new Bingham(100, 2);

  /** Buckingham and Reiner: 200 · 0.2 (1 − 4/6 + 1/48)/(8 · 2) = 0.885417 m/s. */
  private static final double STIFF_MPS = 200 * 0.2 * (1 - 2.0 / 3 + 1.0 / 48) / 16;

  private Rheology liquid = STIFF;
  private double velocity = STIFF_MPS;
  private Grain coarsest = COARSE;
  private double floorShare = 0.001;
  private double sinking;
  private double deposition = 2;
  private double tolerated = 0.01;

  private NonNewtonianFriction pipe() {
    return new NonNewtonianFriction(liquid, 1000, BORE);
  }

  private SandCarriage judged() {
    return SandCarriage.judge(
        pipe(),
        velocity,
        coarsest,
        floorShare,
        new SlidingBed(BORE, SlidingBed.formedShare(floorShare, 0.1), 1e-3, 0, 2650, 1000),
        sinking,
        deposition,
        tolerated);
  }

  private Support support() {
    return judged().support();
  }

  /**
   * The plug moves at (200 − 100)² 0.1/(2 · 200 · 2) = 1.25 m/s in a quarter of the section: 1.25 ·
   * 0.25/0.885417 = 6/17 of the flow. A grain of 1 mm needs 0.2 · 9.80665 · 1650 · 0.001 = 3.2362
   * Pa. All of 1 % of the sand in a line of 10 % moves in a bed of 0.01 · 0.1/(0.6 · 0.5) = 1/300.
   */
  @Test
  void theNumbersOfTheJudgement() {
    floorShare = 0.01;
    sinking = 0.1;
    SandCarriage judged = judged();
    assertThat(judged.velocityMps()).isEqualTo(STIFF_MPS);
    assertThat(judged.outsidePlugShare()).isCloseTo(11.0 / 17, within(1e-9));
    assertThat(judged.yieldStressPa()).isEqualTo(100);
    assertThat(judged.neededYieldStressPa()).isCloseTo(3.2361945, within(1e-9));
    assertThat(judged.coarsestM()).isEqualTo(1e-3);
    assertThat(judged.bedShare()).isCloseTo(1.0 / 300, within(1e-12));
    assertThat(judged.riseDemand()).isCloseTo(0.1 / 0.885416667, within(1e-9));
    assertThat(judged.laminarBelowMps()).isEqualTo(pipe().laminarBelowMps());
    assertThat(judged.turbulentAboveMps()).isEqualTo(pipe().turbulentAboveMps());
  }

  /** Without a bed there are 4 · 200/0.2 = 4000 Pa/m, and the rule of thumb asks for 2000. */
  @Test
  void theGradientOverATraceOfSandIsThatOfThePipe() {
    floorShare = 0;
    assertThat(judged().slideDemand()).isCloseTo(0.5, within(1e-9));
    assertThat(judged().bedSlides()).isTrue();
  }

  /** Of the tolerated 50 % no more than 0.5/1.25 = 40 % in what is carried. */
  @ParameterizedTest
  @CsvSource({
    "0.4, CARRIED_BY_YIELD_STRESS",
    "0.4001, SLOW_TO_SETTLE",
    "0.5, SLOW_TO_SETTLE",
    "0.5001, SLIDING_BED"
  })
  void theLimitsOfTheShareOnTheFloorBelongToTheirBetterSide(double share, Support expected) {
    tolerated = 0.5;
    floorShare = share;
    assertThat(support()).isEqualTo(expected);
  }

  /** Half the rise is the margin; a grain that sinks as fast as the mixture rises goes nowhere. */
  @ParameterizedTest
  @CsvSource({
    "0.5, CARRIED_BY_YIELD_STRESS",
    "0.5001, SLOW_TO_SETTLE",
    "0.9999, SLOW_TO_SETTLE",
    "1, LAMINAR_AND_DEPOSITING"
  })
  void theLimitsOfTheRise(double ofTheVelocity, Support expected) {
    sinking = ofTheVelocity * velocity;
    assertThat(support()).isEqualTo(expected);
  }

  /** Sand that sinks back deposits however little of it reaches the floor and whatever slides. */
  @Test
  void aSlidingBedDoesNotHelpWhatSinksBack() {
    floorShare = 0.02;
    assertThat(support()).isEqualTo(Support.SLIDING_BED);
    sinking = velocity;
    assertThat(support()).isEqualTo(Support.LAMINAR_AND_DEPOSITING);
  }

  /** 129.4 Pa hold a grain of 40 mm by 0.2 g d Δρ; what is weaker by a ten-thousandth does not. */
  @ParameterizedTest
  @CsvSource({"1, CARRIED_BY_YIELD_STRESS", "0.9999, SLOW_TO_SETTLE"})
  void theYieldStressThatHoldsTheCoarsestGrain(double ofTheNeeded, Support expected) {
    coarsest = new Grain(0.04, 2650, GrainShape.NATURAL);
    double needed =
        StaticSuspension.neededYieldStressPa(coarsest, 1000, StaticSuspension.GREATEST_CONSTANT);
    assertThat(needed).isCloseTo(129.44778, within(1e-5));
    liquid = new Bingham(ofTheNeeded * needed, 2);
    assertThat(support()).isEqualTo(expected);
  }

  /** The yield stress is counted on only where the flow is surely laminar, eddies only above. */
  @Test
  void betweenLaminarAndTurbulentNeitherCarries() {
    liquid = new Bingham(100, 0.05);
    double laminar = pipe().laminarBelowMps();
    double turbulent = pipe().turbulentAboveMps();
    assertThat(turbulent).isGreaterThan(laminar);
    deposition = laminar;
    velocity = 0.999 * laminar;
    assertThat(support()).isEqualTo(Support.CARRIED_BY_YIELD_STRESS);
    velocity = laminar;
    assertThat(support()).isEqualTo(Support.SLOW_TO_SETTLE);
    velocity = 0.999 * turbulent;
    assertThat(support()).isEqualTo(Support.SLOW_TO_SETTLE);
    velocity = turbulent;
    assertThat(support()).isEqualTo(Support.CARRIED_BY_TURBULENCE);
  }

  /**
   * 50 Pa of yield stress hold a millimetre fifteen times over, but a slow flow leaves hardly more
   * than 4 · 50/0.2 = 1000 Pa/m, half of what moves the little that lies: it stays.
   */
  @Test
  void whatStaysIsNotCarried() {
    liquid = new Bingham(50, 0.1);
    velocity = 0.05;
    SandCarriage judged = judged();
    assertThat(judged.slideDemand()).isBetween(1.5, 2.0);
    assertThat(judged.bedSlides()).isFalse();
    assertThat(judged.support()).isEqualTo(Support.SLOW_TO_SETTLE);
    floorShare = 0.01;
    assertThat(support()).isEqualTo(Support.SLOW_TO_SETTLE);
    floorShare = 0.0101;
    assertThat(support()).isEqualTo(Support.LAMINAR_AND_DEPOSITING);
  }

  /** In eddies the deposition velocity alone decides, whatever would lie without them. */
  @ParameterizedTest
  @CsvSource({
    "2, CARRIED_BY_TURBULENCE",
    "2.0001, TURBULENT_BUT_TOO_SLOW",
    "0, CARRIED_BY_TURBULENCE"
  })
  void inTurbulentFlowTheDepositionVelocityDecides(double limit, Support expected) {
    liquid = new Newtonian(0.001);
    velocity = 2;
    floorShare = 1;
    sinking = 3;
    deposition = limit;
    assertThat(support()).isEqualTo(expected);
    assertThat(judged().slideDemand()).isZero();
  }

  @ParameterizedTest
  @CsvSource({
    "-0.001, 0.01, 0, 0",
    "1.001, 0.01, 0, 0",
    "NaN, 0.01, 0, 0",
    "0, -0.001, 0, 0",
    "0, 1.001, 0, 0",
    "0, NaN, 0, 0",
    "0, 0.01, -0.001, 0",
    "0, 0.01, Infinity, 0",
    "0, 0.01, 0, -0.001",
    "0, 0.01, 0, Infinity"
  })
  void nonsenseIsRefused(double floor, double mayLie, double sinks, double deposits) {
    floorShare = 0;
    SlidingBed none = new SlidingBed(BORE, 0, 1e-3, 0, 2650, 1000);
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                SandCarriage.judge(pipe(), velocity, COARSE, floor, none, sinks, deposits, mayLie));
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0, CARRIED_BY_YIELD_STRESS",
    "1, 1, SLOW_TO_SETTLE",
    "0, 1, CARRIED_BY_YIELD_STRESS",
    "1, 0, SLIDING_BED"
  })
  void sharesMayBeNoneOrAll(double floor, double mayLie, Support expected) {
    floorShare = floor;
    tolerated = mayLie;
    assertThat(support()).isEqualTo(expected);
  }

  /** A yield stress that is not to be counted on leaves the same numbers, slow to settle. */
  @Test
  void withoutTheYieldStressOnlyWhatItCarriedIsJudgedAnew() {
    SandCarriage carried = judged();
    SandCarriage slow = carried.withoutYieldStress();
    assertThat(carried.support()).isEqualTo(Support.CARRIED_BY_YIELD_STRESS);
    assertThat(slow.support()).isEqualTo(Support.SLOW_TO_SETTLE);
    assertThat(slow).usingRecursiveComparison().ignoringFields("support").isEqualTo(carried);
    floorShare = 0.02;
    assertThat(judged().withoutYieldStress().support()).isEqualTo(Support.SLIDING_BED);
  }

  private static SandCarriage of(double floor, double mayLie, double slide, double rise) {
    return new SandCarriage(
        Support.SLOW_TO_SETTLE, 2, 1, 5, 1e-3, 10, 3, 0.5, floor, mayLie, 0.1, slide, rise);
  }

  /** Sand deposits when too much falls and it does not slide, or when it sinks back. */
  @ParameterizedTest
  @CsvSource({
    "0.02, 0.01, 3, 0, 2",
    "0.02, 0.01, 0.7, 0, 0.7",
    "0.002, 0.01, 3, 0.1, 0.2",
    "0.002, 0.01, 3, 0.9, 0.9",
    "0.001, 0, 3, 0, 3",
    "0.001, 0, 1e12, 0, 1e9",
    "0, 0, 3, 0, 0"
  })
  void whatDecidesWhetherSandDeposits(
      double floor, double mayLie, double slide, double rise, double demand) {
    assertThat(of(floor, mayLie, slide, rise).demand()).isCloseTo(demand, within(1e-12));
  }

  @Test
  void aBedSlidesUpToTheGradientThatThereIs() {
    assertThat(of(0, 0.01, 1, 0).bedSlides()).isTrue();
    assertThat(of(0, 0.01, 1.0001, 0).bedSlides()).isFalse();
  }

  /** 2 m/s are a quarter of the way from 1 to 5 m/s: three quarters of a fifth lie. */
  @Test
  void throughTheTransitionLessAndLessLies() {
    assertThat(of(0.2, 0.01, 1, 0).lyingShare()).isCloseTo(0.15, within(1e-12));
    NonNewtonianFriction water = new NonNewtonianFriction(new Newtonian(0.001), 1000, BORE);
    double laminar = water.laminarBelowMps();
    double turbulent = water.turbulentAboveMps();
    assertThat(SandCarriage.eddies(water, 0.5 * laminar)).isZero();
    assertThat(SandCarriage.eddies(water, laminar)).isZero();
    assertThat(SandCarriage.eddies(water, 0.3 * laminar + 0.7 * turbulent))
        .isCloseTo(0.7, within(1e-9));
    assertThat(SandCarriage.eddies(water, turbulent)).isEqualTo(1);
    assertThat(SandCarriage.eddies(water, 2 * turbulent)).isEqualTo(1);
  }

  @Test
  void everyStateHasWordsOfItsOwn() {
    assertThat(Arrays.stream(Support.values()).map(Support::words).collect(Collectors.toSet()))
        .hasSize(Support.values().length)
        .allMatch(words -> words.length() > 10);
  }
}
