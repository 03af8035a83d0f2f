package sandslurry.pump.piston;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import sandslurry.pump.drive.MotorStarts;

/** Pumps pushed by hydraulic cylinders, and air vessels. */
class HydraulicDriveTest {
  private static final HydraulicDrive ONE = new HydraulicDrive(1, false, 0, 0.1, 0.05);
  private static final HydraulicDrive TWO = new HydraulicDrive(2, false, 0, 0.1, 0.05);

  private static double mean(StrokeDrive drive) {
    double sum = 0;
    int steps = 200000;
    for (int i = 0; i < steps; i++) {
      sum += drive.relativeFlow(2 * Math.PI * (i + 0.5) / steps);
    }
    return sum / steps;
  }

  @Test
  void theMeanOfTheFlowIsOne() {
    for (StrokeDrive drive :
        List.of(
            ONE,
            TWO,
            new HydraulicDrive(1, true, 0.3, 0.05, 0.1),
            new HydraulicDrive(1, false, 0, 0, 0.25),
            new CrankDrive(2, false, 0, 6))) {
      assertThat(mean(drive)).as("%s", drive).isCloseTo(1, within(1e-6));
    }
  }

  @Test
  void theFlowIsLevelInAStrokeAndStandsInTheDwell() {
    double level = TWO.ripple().greatestRatio();
    assertThat(level).isCloseTo(1 / (2 * 0.35), within(1e-12));
    for (double place : new double[] {0.06, 0.2, 0.34, 0.6}) {
      assertThat(TWO.relativeFlow(2 * Math.PI * place)).isCloseTo(level, within(1e-12));
    }
    for (double place : new double[] {0.41, 0.49, 0.91, 0.99, -0.05}) {
      assertThat(TWO.relativeFlow(2 * Math.PI * place)).isZero();
    }
    assertThat(ONE.relativeFlow(2 * Math.PI * 0.7)).isZero();
    assertThat(ONE.ripple().greatestRatio()).isCloseTo(2 * level, within(1e-12));
  }

  @Test
  void theAccelerationIsThatOfTheRamp() {
    // 20 m, 1 m/s mean, 6 cycles a minute: it rises to 1/0.7 m/s within 0.05 of 10 s.
    double expected = 20 / 9.80665 * (1 / 0.7) / 0.5;
    assertThat(TWO.accelerationHeadM(20, 1, 0.1)).isCloseTo(expected, within(1e-9));
    assertThat(TWO.accelerationHeadM(0, 1, 0.1)).isZero();
  }

  @Test
  void aLongerPauseOrASlowerChangeoverSwellsMore() {
    double before = 0;
    for (double dwell : new double[] {0, 0.05, 0.1, 0.2, 0.3}) {
      double surplus = new HydraulicDrive(2, false, 0, dwell, 0.05).surplusShare();
      assertThat(surplus).isGreaterThan(before);
      before = surplus;
    }
    assertThat(TWO.pulsesPerCycle()).isEqualTo(2);
    assertThat(ONE.pulsesPerCycle()).isEqualTo(1);
  }

  @Test
  void aVesselPassesTheShareThatItsGasWasTakenFor() {
    double inertance = 1050 * 100 / 0.0186;
    for (double share : new double[] {0.02, 0.1, 0.5, 0.99}) {
      double gas = AirVessel.gasForM3(4e5, AirVessel.FAST, inertance, 0.5, share);
      assertThat(new AirVessel(gas, 4e5, AirVessel.FAST).passedShare(inertance, 0.5).orElseThrow())
          .isCloseTo(share, within(1e-9));
    }
  }

  @Test
  void aVesselNearItsOwnFrequencyIsCreditedWithNothing() {
    AirVessel vessel = new AirVessel(0.1, 4e5, AirVessel.FAST);
    double inertance = 1050 * 100 / 0.0186;
    double own = vessel.ownFrequencyPs(inertance);
    assertThat(vessel.passedShare(inertance, own)).isEmpty();
    assertThat(vessel.passedShare(inertance, 0.5 * own)).isEmpty();
    assertThat(vessel.passedShare(inertance, 1.41 * own)).isEmpty();
    assertThat(vessel.passedShare(inertance, 1.42 * own)).isPresent();
    assertThat(vessel.passedShare(inertance, 10 * own).orElseThrow())
        .isCloseTo(1.0 / 99, within(1e-12));
  }

  @Test
  void theSwingOfAColumnOnAGasIsThatOfTheEquationStepped() {
    // Flow in swings by a sine about its mean; the column I dq/dt = p' - p, V' = q - q_in.
    AirVessel vessel = new AirVessel(0.5, 4e5, 1.4);
    double inertance = 5e6;
    double turning = 2 * Math.PI * 3 * vessel.ownFrequencyPs(inertance);
    double compliance = 0.5 / (1.4 * 4e5);
    double share = vessel.passedShare(inertance, turning / (2 * Math.PI)).orElseThrow();
    // Started on the forced swing, the linear column must stay on it.
    double flow = 0;
    double pressure = -share * turning * inertance;
    double dt = 1e-4 / turning;
    double most = 0;
    for (int i = 0; i < 200000; i++) {
      pressure += dt * (Math.sin(turning * i * dt) - flow) / compliance;
      flow += dt * pressure / inertance;
      most = Math.max(most, Math.abs(flow));
    }
    assertThat(most).isCloseTo(share, within(2e-3 * share));
  }

  @Test
  void largerMotorsStartLessOften() {
    assertThat(MotorStarts.mostPs(1e4).orElseThrow())
        .isGreaterThan(MotorStarts.mostPs(5e4).orElseThrow());
    assertThat(MotorStarts.mostPs(5e4).orElseThrow())
        .isGreaterThan(MotorStarts.mostPs(1e5).orElseThrow());
    assertThat(MotorStarts.mostPs(3e5)).isEmpty();
    assertThatThrownBy(() -> MotorStarts.mostPs(0)).hasMessageContaining("0.0");
  }

  @Test
  void nonsenseIsRefused() {
    assertThatThrownBy(() -> new HydraulicDrive(2, true, 0, 0, 0.1)).hasMessageContaining("2");
    assertThatThrownBy(() -> new HydraulicDrive(1, false, 0.2, 0, 0.1)).hasMessageContaining("0.2");
    assertThatThrownBy(() -> new HydraulicDrive(1, true, 0, 0.4, 0.1)).hasMessageContaining("0.4");
    assertThatThrownBy(() -> new HydraulicDrive(1, true, 0, 0.1, 0)).hasMessageContaining("0.0");
    assertThatThrownBy(() -> new AirVessel(0, 1, 1.2)).hasMessageContaining("0.0 m3");
    assertThatThrownBy(() -> new AirVessel(1, 1e5, 1.4).passedShare(1, Double.NaN))
        .hasMessageContaining("NaN");
  }
}
