package sandslurry.pump.piston;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Strokes of piston pumps and the gas that smooths them, with numbers worked by hand. */
class StrokesByHandTest {
  private static final double SIXTY_DEGREES = Math.PI / 3;

  /** sin 60° (1 + cos 60°/√(9 − 0.75)) = 0.866025 · 1.174078 = 1.016781, times π. */
  @Test
  void aShortRodIsAheadOfTheSine() {
    assertThat(new CrankDrive(1, false, 0, 3).relativeFlow(SIXTY_DEGREES))
        .isCloseTo(3.194312, within(1e-5));
  }

  /**
   * Two double-acting cylinders a quarter of a turn apart, the rod 15 % of the piston: at 60° they
   * give sin 60° + sin 150° = 1.366025 over a mean of 2 · 1.85/π; at 150°, sin 150° + 0.85 sin 60°.
   */
  @Test
  void theSideOfTheRodGivesLess() {
    CrankDrive duplex = new CrankDrive(2, true, 0.15, Double.POSITIVE_INFINITY);
    assertThat(duplex.relativeFlow(SIXTY_DEGREES)).isCloseTo(1.159859, within(1e-5));
    assertThat(duplex.relativeFlow(5 * Math.PI / 6)).isCloseTo(1.049560, within(1e-5));
    assertThat(duplex.pulsesPerCycle()).isEqualTo(4);
    assertThat(new CrankDrive(3, false, 0, 5).pulsesPerCycle()).isEqualTo(3);
  }

  /** At the dead centre the flow grows with π (1 + 1/3) in a radian; 10 m at 1 m/s and 1 turn/s. */
  @Test
  void theHeadOfAnAccelerationIsWorkedByHand() {
    CrankDrive drive = new CrankDrive(1, false, 0, 3);
    assertThat(drive.greatestAccelerationPerRad()).isCloseTo(4.188790, within(1e-5));
    assertThat(drive.accelerationHeadM(10, 1, 1)).isCloseTo(26.8380, within(1e-3));
    assertThatThrownBy(() -> drive.accelerationHeadM(-1, 1, 1)).hasMessageContaining("-1.0");
  }

  /** n p (1 + 1/k) / (I ω²): 1e5 · 2 / (1e6 · 39.4784) = 5.06606 L. */
  @Test
  void theGasThatHalvesNothingIsWorkedByHand() {
    assertThat(AirVessel.gasForM3(1e5, 1, 1e6, 1, 1)).isCloseTo(5.06606e-3, within(1e-7));
    assertThat(AirVessel.gasForM3(1e5, 1.4, 1e6, 1, 0.1))
        .isCloseTo(1.4 * 5.5 * 5.06606e-3, within(1e-6));
    AirVessel vessel = new AirVessel(5.06606e-3, 1e5, 1);
    assertThat(vessel.passedShare(1e6, 1.0001)).isPresent();
    assertThat(vessel.passedShare(1e6, 0.9)).as("near its own frequency").isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "0, 1e6, 1, 0.5",
    "1e5, 0, 1, 0.5",
    "1e5, 1e6, 0, 0.5",
    "1e5, 1e6, 1, 0",
    "1e5, 1e6, 1, 1.01",
    "NaN, 1e6, 1, 0.5"
  })
  void aVesselOfNonsenseIsRefused(double pressure, double inertance, double swells, double share) {
    assertThatThrownBy(() -> AirVessel.gasForM3(pressure, 1, inertance, swells, share))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void swellsThatAreNoneAreRefused() {
    AirVessel vessel = new AirVessel(0.01, 1e5, 1);
    assertThatThrownBy(() -> vessel.passedShare(1e6, 0)).hasMessageContaining("0.0 1/s");
    assertThatThrownBy(() -> vessel.passedShare(0, 1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> vessel.ownFrequencyPs(0)).isInstanceOf(IllegalArgumentException.class);
  }

  /**
   * One cylinder, π sin θ: above the mean from θ1 = asin(1/π) = 0.323946 to π − θ1; (2π cos θ1 − π
   * + 2 θ1)/2π = 0.551106 of the volume of a turn.
   */
  @Test
  void theSurplusOfOneCylinder() {
    assertThat(new CrankDrive(1, false, 0, Double.POSITIVE_INFINITY).surplusShare())
        .isCloseTo(0.551106, within(1e-5));
  }

  /** 1 - 0.5 · 0.4 and 1 + 0.5 · 0.5; a vessel that passes all or nothing. */
  @Test
  void aVesselHalvesTheRipple() {
    FlowRipple ripple = new FlowRipple(0.6, 1.5);
    assertThat(ripple.damped(0.5).leastRatio()).isCloseTo(0.8, within(1e-12));
    assertThat(ripple.damped(0.5).greatestRatio()).isCloseTo(1.25, within(1e-12));
    assertThat(ripple.damped(1)).isEqualTo(ripple);
    assertThat(ripple.damped(0)).isEqualTo(new FlowRipple(1, 1));
    assertThatThrownBy(() -> ripple.damped(1.001)).hasMessageContaining("1.001");
    assertThatThrownBy(() -> ripple.damped(-0.001)).hasMessageContaining("-0.001");
    assertThat(ripple.leastVelocityMps(1.5)).isCloseTo(0.9, within(1e-12));
    assertThat(ripple.greatestVelocityMps(0)).isZero();
    assertThatThrownBy(() -> ripple.leastVelocityMps(-1)).hasMessageContaining("-1.0 m/s");
  }

  /**
   * One cylinder that pushes with both sides, the rod 30 % of the piston, dwell 0.05 and ramps of
   * 0.1 of a cycle: mean (0.5 - 0.05 - 0.1) · 1.7 = 0.595 of the forward stroke.
   */
  @Test
  void theReturnOfAHydraulicCylinderGivesLessByItsRod() {
    HydraulicDrive drive = new HydraulicDrive(1, true, 0.3, 0.05, 0.1);
    assertThat(drive.relativeFlow(2 * Math.PI * 0.2)).isCloseTo(1 / 0.595, within(1e-9));
    assertThat(drive.relativeFlow(2 * Math.PI * 0.7)).isCloseTo(0.7 / 0.595, within(1e-9));
    assertThat(drive.relativeFlow(2 * Math.PI * 1.2)).isCloseTo(1 / 0.595, within(1e-9));
    assertThat(drive.relativeFlow(2 * Math.PI * -0.3)).isCloseTo(0.7 / 0.595, within(1e-9));
    assertThat(drive.pulsesPerCycle()).isEqualTo(2);
    // 20 m; to 2/0.595 m/s within a tenth of a cycle of 4 s.
    assertThat(drive.accelerationHeadM(20, 2, 0.25))
        .isCloseTo(20 / 9.80665 * (2 / 0.595) / 0.4, within(1e-9));
    assertThatThrownBy(() -> drive.accelerationHeadM(-1, 1, 1)).hasMessageContaining("-1.0 m");
  }

  /** A line without length, flow or strokes takes no head. */
  @ParameterizedTest
  @CsvSource({"0, 1, 1", "10, 0, 1", "10, 1, 0"})
  void nothingThatMovesTakesNoHead(double length, double velocity, double rate) {
    assertThat(new CrankDrive(3, false, 0, 5).accelerationHeadM(length, velocity, rate)).isZero();
  }

  /** 1.1 · 5 bar to 11/1.1 bar; 10 bar of work need 1.21 · 10 bar. */
  @Test
  void aReliefHoldsWithinItsWindow() {
    ReliefWindow window = new ReliefWindow(5.5e5, 10e5);
    assertThat(window.holds(5.5e5)).isTrue();
    assertThat(window.holds(10e5)).isTrue();
    assertThat(window.holds(5.49e5)).isFalse();
    assertThat(window.holds(10.01e5)).isFalse();
    assertThat(ReliefWindow.neededRatingPa(10e5)).isCloseTo(12.1e5, within(1e-3));
    assertThat(ReliefWindow.neededRatingPa(-1)).isZero();
    assertThat(ReliefWindow.of(0, 11e5).orElseThrow().leastPa()).isZero();
    assertThatThrownBy(() -> ReliefWindow.of(1e5, 0)).hasMessageContaining("rating");
  }

  /** A working pressure of 10 bar and a rating of just 12.1 bar leave one setting, 11 bar. */
  @Test
  void aWindowOfOneSettingIsOne() {
    double working = 10e5;
    double setting = ReliefWindow.MARGIN * working;
    ReliefWindow one = ReliefWindow.of(working, ReliefWindow.MARGIN * setting).orElseThrow();
    assertThat(one.leastPa()).isEqualTo(one.greatestPa()).isCloseTo(11e5, within(1e-3));
  }

  /** Three cylinders, rod twice the crank: worked apart by differences of their flow, at 126.4°. */
  @Test
  void theGreatestAccelerationOfThreeCylinders() {
    CrankDrive triplex = new CrankDrive(3, false, 0, 2);
    assertThat(triplex.greatestAccelerationPerRad()).isCloseTo(0.802033, within(2e-6));
  }

  /** Heat capacities of an ideal gas of two atoms, 7/2 R and 5/2 R: textbooks of physics. */
  @Test
  void airCompressedFastHasTheExponentOfTwoAtoms() {
    assertThat(AirVessel.FAST).isCloseTo(7.0 / 5, within(1e-12));
  }
}
