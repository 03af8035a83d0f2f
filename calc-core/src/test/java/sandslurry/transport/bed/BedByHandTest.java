package sandslurry.transport.bed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sandslurry.material.liquid.Bingham;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.liquid.Newtonian;
import sandslurry.material.liquid.PowerLaw;
import sandslurry.material.liquid.Rheology;
import sandslurry.material.sand.Grain;
import sandslurry.material.sand.GrainShape;
import sandslurry.pipe.Bore;
import sandslurry.settling.Rowe1987;
import sandslurry.settling.SettlingVelocities;
import sandslurry.transport.bed.LaminarTransport.Part;
import sandslurry.transport.bed.LaminarTransport.Run;
import sandslurry.transport.bed.SandCarriage.Support;
import sandslurry.transport.friction.LaminarPipeFlow;
import sandslurry.transport.friction.NonNewtonianFriction;

/** The limits by which sand is told to be carried without turbulence, each from either side. */
class BedByHandTest {
  private static final Bore BORE = new Bore(0.2, 0);
  private static final Grain COARSE = new Grain(1e-3, 2650, GrainShape.NATURAL);

  private static Support judge(Bingham liquid, double velocity, double floorShare) {
    return SandCarriage.judge(
            new NonNewtonianFriction(liquid, 1000, BORE),
            velocity,
            COARSE,
            floorShare,
            new SlidingBed(BORE, SlidingBed.formedShare(floorShare, 0.1), 1e-3, 0, 2650, 1000),
            0,
            2,
            SandCarriage.DEFAULT_TOLERATED_SHARE)
        .support();
  }

  /** Of the 1 % that may reach the floor no more than 1/1.25, 0.8 %, for sand that is carried. */
  @ParameterizedTest
  @CsvSource({
    "0.0079, CARRIED_BY_YIELD_STRESS",
    "0.0081, SLOW_TO_SETTLE",
    "0.0099, SLOW_TO_SETTLE",
    "0.0101, SLIDING_BED"
  })
  void whatMayReachTheFloor(double floorShare, Support support) {
    assertThat(judge(new Bingham(100, 2), 0.3, floorShare)).isEqualTo(support);
  }

  /**
   * Buckingham and Reiner: a plug of xi bores, at a wall stress of tau_y/xi, travels in a flow of V
   * = (tau_y/xi) D (1 - 4 xi/3 + xi⁴/3)/(8 mu). A tenth of the bore is the least that counts.
   */
  @ParameterizedTest
  @CsvSource({"0.098, SLOW_TO_SETTLE", "0.102, CARRIED_BY_YIELD_STRESS"})
  void theLeastPlug(double xi, Support support) {
    double velocity = 20 / xi * 0.2 * (1 - 4 * xi / 3 + Math.pow(xi, 4) / 3) / (8 * 10);
    assertThat(judge(new Bingham(20, 10), velocity, 0.001)).isEqualTo(support);
  }

  /** All of 40 % of sand would fill 0.4/(0.6 · 0.5) of the section. */
  @Test
  void noBedFillsMoreThanNineteenTwentieths() {
    assertThat(SlidingBed.formedShare(1, 0.4)).isEqualTo(0.95);
    assertThat(SlidingBed.formedShare(0.7, 0.4)).isCloseTo(0.28 / 0.3, within(1e-12));
  }

  /**
   * At rest a Bingham liquid lets a grain fall at (g d² Δρ - 18 c tau_y d)/(18 mu), and 18 c tau_y
   * d is all of its weight where tau_y is 0.2 g d Δρ = 3.2362 Pa: at half of that it falls half as
   * fast as in 100 Pa.s without a yield stress, 8.98943e-6 m/s.
   */
  @ParameterizedTest
  @CsvSource({"0, 8.98943e-6", "1.61810, 4.49471e-6", "3.1, 3.7832e-7", "3.24, 0"})
  void theFallInThePlugCore(double yieldPa, double fallMps) {
    assertThat(
            LaminarTransport.coreFallMps(
                COARSE, new Bingham(yieldPa, 100), 1000, SettlingVelocities.DEFAULT))
        .isCloseTo(fallMps, within(1e-9));
  }

  /** k = 1 - sin 30 degrees (Jaky 1944, from memory, unverified). */
  @Test
  void loosePackedSandLeansOnTheWallWithHalfOfItsStress() {
    assertThat(PackedPlug.STRESS_RATIO).isCloseTo(1 - Math.sin(Math.toRadians(30)), within(1e-12));
  }

  @Test
  void aPipeIsBlockedByABedOfNineTenths() {
    assertThat(new OpenSection(BORE, 0.9, 1e-3).areaM2()).isPositive();
    assertThatIllegalArgumentException().isThrownBy(() -> new OpenSection(BORE, 0.91, 1e-3));
  }

  /** κ = 1/2: (2/π)(0.5 · 0.866025 + π/6) = 0.608998; at κ = 1 every strip has lost its sand. */
  @Test
  void theShareThatReachesTheFloor() {
    assertThat(LaminarTransport.floorShare(0.002, 30, BORE, 0.6)).isCloseTo(0.608998, within(1e-6));
    assertThat(LaminarTransport.floorShare(0.004, 30, BORE, 0.6)).isEqualTo(1);
    assertThat(LaminarTransport.floorShare(0, 30, BORE, 0.6)).isZero();
    assertThat(LaminarTransport.floorShare(0.002, 0, BORE, 0.6)).isZero();
    for (double bad : new double[] {-1e-9, Double.NaN}) {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> LaminarTransport.floorShare(bad, 30, BORE, 0.6));
      assertThatIllegalArgumentException()
          .isThrownBy(() -> LaminarTransport.floorShare(0.002, bad, BORE, 0.6));
    }
    assertThatIllegalArgumentException()
        .isThrownBy(() -> LaminarTransport.floorShare(0.002, 30, BORE, 0));
  }

  /**
   * The liquid beside a plug of half the bore is as slow as 3/4 of the plug, 0.9375 m/s, from
   * halfway to the wall, where 1 − y² is 1/4. The flow there, from y = 1/2 to 1, is 2 · 1.25 · 0.5
   * (0.5 [y − y³/3] + 0.5 [y²/2 − y⁴/4]) = 1.25 · 0.174479 over V = 0.885417. Without a plug and
   * with n = 1/2 it is plug (1 − y³), plug 5/3 V: 10/3 [y²/2 − y⁵/5] = 0.604167 is slower than 7/8.
   */
  @Test
  void theShareOfTheSlowLayerAtTheWall() {
    assertThat(LaminarTransport.sinkingBackShare(stiff(), 0.9375))
        .isCloseTo(0.246324, within(1e-6));
    LaminarPipeFlow thinning = LaminarPipeFlow.at(new PowerLaw(3, 0.5), 0.2, 0.6);
    assertThat(thinning.velocityMps(0.0)).isCloseTo(1, within(1e-12));
    assertThat(LaminarTransport.sinkingBackShare(thinning, 0.875))
        .isCloseTo(0.604167, within(1e-6));
    assertThat(LaminarTransport.sinkingBackShare(thinning, 1.0001)).isEqualTo(1);
  }

  private static final double STIFF_MPS = 200 * 0.2 * (1 - 2.0 / 3 + 1.0 / 48) / 16;

  private static LaminarPipeFlow stiff() {
    return LaminarPipeFlow.at(new Bingham(100, 2), 0.2, STIFF_MPS);
  }

  private static double floor(
      Rheology liquid, double velocity, double coreFall, List<Part> sand, Run... runs) {
    double[] cores = new double[sand.size()];
    Arrays.fill(cores, coreFall);
    return LaminarTransport.floorShare(
        sand,
        () -> cores,
        0.01,
        liquid,
        1000,
        velocity * BORE.areaM2(),
        List.of(runs),
        new Rowe1987());
  }

  /**
   * A plug of 0.1 m at 1.25 m/s loses what falls at 0.625 mm/s over 100 m, κ = 1/2, by 0.608998;
   * 11/17 of the flow are outside and lose all of a grain of 5 mm. Over two such runs the plug
   * keeps 0.391002². Where a run is upright nothing falls to a side, but what sinks as fast as the
   * plug rises does not come up.
   */
  @Test
  void whatSinksOutOfThePlug() {
    List<Part> sand = List.of(new Part(new Grain(5e-3, 2650, GrainShape.NATURAL), 1));
    Bingham liquid = new Bingham(100, 2);
    Run level = new Run(BORE, 100, 0);
    assertThat(floor(liquid, STIFF_MPS, 6.25e-4, sand, level))
        .isCloseTo(11.0 / 17 + 6.0 / 17 * 0.608998, within(1e-6));
    assertThat(floor(liquid, STIFF_MPS, 6.25e-4, sand, level, level))
        .isCloseTo(11.0 / 17 + 6.0 / 17 * (1 - 0.391002 * 0.391002), within(1e-6));
    assertThat(floor(liquid, STIFF_MPS, 6.25e-4, sand, new Run(BORE, 200, Math.PI / 3)))
        .isCloseTo(11.0 / 17 + 6.0 / 17 * 0.608998, within(1e-6));
  }

  /**
   * In a riser nothing falls to a side: what the plug holds comes up, 6/17, until it sinks as fast
   * as the plug rises, 1.25 m/s. An iron ball of 100 mm outruns all that is sheared.
   */
  @Test
  void whatSinksBackOutOfThePlug() {
    List<Part> balls = List.of(new Part(new Grain(0.1, 7800, GrainShape.SPHERE), 1));
    Bingham liquid = new Bingham(100, 2);
    Run riser = new Run(BORE, 1, Math.PI / 2);
    assertThat(floor(liquid, STIFF_MPS, 1.24, balls, riser)).isCloseTo(11.0 / 17, within(1e-9));
    assertThat(floor(liquid, STIFF_MPS, 1.26, balls, riser)).isEqualTo(1);
  }

  /**
   * Liquid that thins with shear lets a grain of 0.3 mm fall as in a plain one of n K γ̇ⁿ⁻¹: 8V/D
   * (3n + 1)/(4n) = 15 1/s at the wall, 0.5 · 3 · 15^−0.5 = 0.387298 Pa.s. The shear of the fall
   * itself adds a hundredth.
   */
  @Test
  void theFallInLiquidThatThinsIsThatOfTheTangent() {
    Grain fine = new Grain(0.3e-3, 2650, GrainShape.NATURAL);
    LaminarPipeFlow flow = LaminarPipeFlow.at(new PowerLaw(3, 0.5), 0.2, 0.3);
    double plain =
        SettlingVelocities.DEFAULT.velocityMps(fine, new Liquid(1000, 0.3872983)).value();
    assertThat(
            LaminarTransport.shearedFallMps(
                fine, 0, 1000, flow, SettlingVelocities.DEFAULT, new Rowe1987()))
        .isCloseTo(plain, within(0.01 * plain));
  }

  /**
   * Two bores, two slopes, two classes: each run takes its share of what the runs before it left,
   * of the finer class a quarter of the mass, of the coarser three.
   */
  @Test
  void everyRunTakesItsShareOfWhatIsAfloat() {
    PowerLaw liquid = new PowerLaw(3, 0.5);
    Bore wide = new Bore(0.3, 0);
    double flow = 0.6 * BORE.areaM2();
    double expected = 0;
    for (int i = 0; i < 2; i++) {
      Grain grain = TWO.get(i).grain();
      double left = 1;
      for (Bore bore : List.of(BORE, wide)) {
        LaminarPipeFlow there =
            LaminarPipeFlow.at(liquid, bore.diameterM(), bore.velocityMps(flow));
        double fall =
            LaminarTransport.shearedFallMps(
                grain, 0.01, 1000, there, SettlingVelocities.DEFAULT, new Rowe1987());
        double angle = bore.equals(wide) ? Math.PI / 3 : 0;
        left *=
            1 - LaminarTransport.floorShare(fall, 20 * Math.cos(angle), bore, there.velocityMps());
        left *= 1 - LaminarTransport.sinkingBackShare(there, fall * Math.sin(angle));
      }
      expected += (i == 0 ? 0.25 : 0.75) * (1 - left);
    }
    assertThat(expected).isBetween(0.1, 0.9);
    assertThat(floor(liquid, 0.6, 0, TWO, new Run(BORE, 20, 0), new Run(wide, 20, Math.PI / 3)))
        .isCloseTo(expected, within(1e-12));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> floor(liquid, 0, 0, TWO, new Run(BORE, 20, 0)));
  }

  private static final List<Part> TWO =
      List.of(new Part(new Grain(0.3e-3, 2650, GrainShape.NATURAL), 0.25), new Part(COARSE, 0.75));

  private static SlidingBed bed(double share, double grain, double angle) {
    return new SlidingBed(BORE, share, grain, angle, 2650, 1000);
  }

  /**
   * A pipe half full: β = π/2, A = πD²/8 = 0.0157080 m²; S = D; Dh = πD/(π + 2) = 0.122203 m; A + S
   * Rh = 0.0218181 m². The submerged bed weighs 9708.58 N/m³: normal to the wall D²/2 of it,
   * 194.172 N/m. Level 0.4 · 194.172/0.0218181 = 3559.82 Pa/m; up 0.3 rad (77.6687 · 0.955336 +
   * 152.502 · 0.295520)/0.0218181 = 5466.43; 10 Pa of yield stress 10 · 0.314159/0.0218181 = 143.99
   * more. Over it 0.5 m/s, of which the bed has half its share of half, are 0.75: by Hagen and
   * Poiseuille 32 · 2 · 0.75/0.122203² = 3214.23 Pa/m.
   */
  @Test
  void aBedThatFillsHalfThePipe() {
    assertThat(bed(0.5, 1e-3, 0).balancePaPm(0)).isCloseTo(3559.824, within(1e-3));
    assertThat(bed(0.5, 1e-3, 0.3).balancePaPm(0)).isCloseTo(5466.427, within(1e-3));
    assertThat(bed(0.5, 1e-3, 0.3).balancePaPm(10)).isCloseTo(5610.417, within(1e-3));
    assertThat(bed(0.5, 1e-3, 0).availablePaPm(new Newtonian(2), 0.5))
        .isCloseTo(3214.229, within(1e-3));
  }

  /** The worst of all beds up to one: of a fifth of the pipe it is the last, of nine tenths not. */
  @Test
  void aBedIsJudgedByTheWorstOnItsWay() {
    Bingham liquid = new Bingham(100, 2);
    SlidingBed fifth = bed(0.2, 1e-3, 0);
    double alone = fifth.neededPaPm(100) / fifth.availablePaPm(liquid, 0.1);
    SlidingBed before = bed(0.175, 1e-3, 0);
    assertThat(before.neededPaPm(100) / before.availablePaPm(liquid, 0.1)).isLessThan(alone);
    assertThat(fifth.demand(liquid, 0.1)).isCloseTo(alone, within(1e-12));
    assertThat(bed(0.9, 1e-3, 0).demand(liquid, 0.1)).isGreaterThan(alone);
  }

  /**
   * A layer of grains of 20 mm, a tenth of the bore, takes 893.91 Pa/m; half of it in patches half.
   */
  @Test
  void aPatchyLayerCountsByItsSand() {
    double layer = 1.635011e-3 / (Math.PI * 0.01);
    assertThat(bed(layer, 0.02, 0).balancePaPm(0)).isCloseTo(893.915, within(1e-3));
    assertThat(bed(layer / 2, 0.02, 0).balancePaPm(0)).isCloseTo(446.957, within(1e-3));
  }

  /** The wall bears a thin bed by its plain weight: the area of the bed is 2 β³/3 of D²/4. */
  @ParameterizedTest
  @CsvSource({"2.5e-11", "2e-10", "1e-9"})
  void aThinBedBearsByItsWeight(double share) {
    assertThat(bed(share, 1e-3, 0).frictionPaPm())
        .isCloseTo(0.4 * 9.80665 * 1650 * 0.6 * share, within(1e-5 * 3883.4 * share));
  }

  /** From the crown of a pipe half full of sand 0.1 m at 0.05 m/s. */
  @Test
  void theTimeToSettle() {
    StoppedLine line = new StoppedLine(BORE, 30, 0.3);
    assertThat(line.settlingTimeS(0.05)).isCloseTo(2, within(1e-9));
    assertThatIllegalArgumentException().isThrownBy(() -> line.settlingTimeS(0));
    assertThatIllegalArgumentException().isThrownBy(() -> line.sandMassKg(0));
  }

  /**
   * 30 m at 30 degrees, a tenth packed: D cos θ = 0.173205 m, A/sin θ = 0.0628319 m²; 27 · 0.173205
   * over 3 · 0.173205 + 0.0628319 is 8.02912; 0.0314159/(0.03 · 0.173205) ln 9.02912 = 13.3039 s.
   */
  @Test
  void theTimeToSlideDown() {
    StoppedLine line = new StoppedLine(BORE, 30, 0.06);
    assertThat(line.slidingTimeS(0.03, Math.PI / 6)).isCloseTo(13.303945, within(1e-5));
    assertThatIllegalArgumentException().isThrownBy(() -> line.slidingTimeS(0.03, 0));
    // A pipe that is upright but for a ten-millionth of a degree differs from none that is.
    assertThat(line.slidingTimeS(0.03, Math.PI / 2 - 1e-9)).isCloseTo(900, within(1e-4));
    assertThat(line.slidingTimeS(0.03, Math.PI / 2 - 1e-13)).isCloseTo(900, within(1e-6));
  }

  @Test
  void aPlugIsAsLongAsItsParts() {
    PackedPlug plug =
        new PackedPlug(
            List.of(new PackedPlug.Part(0.2, 3, 0), new PackedPlug.Part(0.15, 1.5, 1)), 1, 1, 1);
    assertThat(plug.lengthM()).isEqualTo(4.5);
    assertThat(plug.longestPushedM(0.2, 0, 0)).hasValue(0);
  }

  /** Friction is known up to a roughness of a tenth of the bore: 0.0122203 m of grains of 50 mm. */
  @Test
  void stonesAreNoRougherThanATenthOfWhatIsOpen() {
    assertThat(new OpenSection(BORE, 0.5, 0.05).roughest().roughnessM())
        .isCloseTo(0.0122203, within(1e-7));
  }
}
