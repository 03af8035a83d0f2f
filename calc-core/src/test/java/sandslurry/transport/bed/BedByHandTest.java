package sandslurry.transport.bed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sandslurry.material.liquid.Bingham;
import sandslurry.material.sand.Grain;
import sandslurry.material.sand.GrainShape;
import sandslurry.pipe.Bore;
import sandslurry.settling.SettlingVelocities;
import sandslurry.transport.bed.SandCarriage.Support;
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
}
