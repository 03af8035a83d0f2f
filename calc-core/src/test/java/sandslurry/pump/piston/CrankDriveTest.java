package sandslurry.pump.piston;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CrankDriveTest {
  private static final double SINE = Double.POSITIVE_INFINITY;

  @ParameterizedTest
  @CsvSource({
    "1, false, 0, Infinity",
    "1, true, 0.1, 5",
    "2, true, 0.2, 6",
    "3, false, 0, 4",
    "4, false, 0, 6",
    "5, false, 0, Infinity",
    "3, true, 0.05, 6",
  })
  void theFlowOverATurnAveragesToItsMean(int z, boolean acting, double rod, double lambda) {
    CrankDrive drive = new CrankDrive(z, acting, rod, lambda);
    double sum = 0;
    int steps = 100000;
    for (int i = 0; i < steps; i++) {
      sum += drive.relativeFlow(2 * Math.PI * (i + 0.5) / steps);
    }
    assertThat(sum / steps).isCloseTo(1, within(1e-8));
  }

  @Test
  void aSineHasThePeaksOfThePaperCalculation() {
    // One cylinder: π and π/2. Three: (π/3) cos 30° × 2 × ... by the sum of sines.
    assertThat(new CrankDrive(1, false, 0, SINE).ripple().greatestRatio())
        .isCloseTo(Math.PI, within(1e-6));
    assertThat(new CrankDrive(1, false, 0, SINE).ripple().leastRatio()).isZero();
    assertThat(new CrankDrive(2, false, 0, SINE).ripple().greatestRatio())
        .isCloseTo(Math.PI / 2, within(1e-6));
    assertThat(new CrankDrive(1, true, 0, SINE).ripple().greatestRatio())
        .isCloseTo(Math.PI / 2, within(1e-6));
    FlowRipple duplex = new CrankDrive(2, true, 0, SINE).ripple();
    assertThat(duplex.greatestRatio()).isCloseTo(Math.PI / 4 * Math.sqrt(2), within(1e-6));
    assertThat(duplex.leastRatio()).isCloseTo(Math.PI / 4, within(1e-6));
    FlowRipple triplex = new CrankDrive(3, false, 0, SINE).ripple();
    assertThat(triplex.greatestRatio()).isCloseTo(Math.PI / 3, within(1e-6));
    assertThat(triplex.leastRatio()).isCloseTo(Math.PI / 3 * Math.sqrt(3) / 2, within(1e-6));
  }

  @Test
  void theGreatestAccelerationIsThatOfADifferenceQuotient() {
    for (double lambda : new double[] {3, 6, SINE}) {
      CrankDrive drive = new CrankDrive(2, true, 0.15, lambda);
      double greatest = 0;
      double h = 1e-5;
      for (int i = 0; i < 60000; i++) {
        double at = 2 * Math.PI * (i + 0.5) / 60000;
        double slope = (drive.relativeFlow(at + h) - drive.relativeFlow(at - h)) / (2 * h);
        greatest = Math.max(greatest, Math.abs(slope));
      }
      assertThat(drive.greatestAccelerationPerRad()).isCloseTo(greatest, within(2e-3 * greatest));
    }
  }

  @Test
  void aShortConnectingRodMakesTheFlowRougher() {
    FlowRipple shortRod = new CrankDrive(3, false, 0, 3).ripple();
    FlowRipple longRod = new CrankDrive(3, false, 0, 12).ripple();
    assertThat(shortRod.greatestRatio()).isGreaterThan(longRod.greatestRatio());
    assertThat(shortRod.leastRatio()).isLessThan(longRod.leastRatio());
  }

  @Test
  void aRamThatPausesLeavesTheLineStandingAndAVesselSmooths() {
    FlowRipple ram = new FlowRipple(0, 2.5);
    assertThat(ram.leastVelocityMps(1.2)).isZero();
    assertThat(ram.greatestVelocityMps(1.2)).isCloseTo(3, within(1e-12));
    FlowRipple calm = ram.damped(0.1);
    assertThat(calm.leastRatio()).isCloseTo(0.9, within(1e-12));
    assertThat(calm.greatestRatio()).isCloseTo(1.15, within(1e-12));
  }

  @Test
  void accelerationHeadGrowsWithLengthVelocityAndRate() {
    CrankDrive drive = new CrankDrive(1, false, 0, 6);
    double head = drive.accelerationHeadM(5, 1, 0.5);
    assertThat(drive.accelerationHeadM(10, 1, 0.5)).isCloseTo(2 * head, within(1e-9));
    assertThat(drive.accelerationHeadM(5, 2, 0.5)).isCloseTo(2 * head, within(1e-9));
    assertThat(drive.accelerationHeadM(5, 1, 1)).isCloseTo(2 * head, within(1e-9));
  }

  @Test
  void aReliefNeedsRoomBetweenWorkAndRating() {
    ReliefWindow window = ReliefWindow.of(5e5, 11e5).orElseThrow();
    assertThat(window.leastPa()).isCloseTo(5.5e5, within(1e-6));
    assertThat(window.greatestPa()).isCloseTo(10e5, within(1e-6));
    assertThat(ReliefWindow.of(10e5, 11e5)).isEmpty();
  }

  @Test
  void nonsenseIsRefused() {
    assertThatThrownBy(() -> new CrankDrive(0, false, 0, 6)).hasMessageContaining("cylinder");
    assertThatThrownBy(() -> new CrankDrive(1, false, 0.1, 6)).hasMessageContaining("0.1");
    assertThatThrownBy(() -> new CrankDrive(1, true, 0, 1)).hasMessageContaining("longer");
    assertThatThrownBy(() -> new FlowRipple(1.1, 2)).hasMessageContaining("1.1");
    assertThatThrownBy(() -> ReliefWindow.of(Double.NaN, 1)).hasMessageContaining("NaN");
  }
}
