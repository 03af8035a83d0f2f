package sandslurry.pump.drive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Motors, days of pumping and screw conveyors, with numbers worked by hand. */
class DriveByHandTest {
  private static final ScrewConveyor LEVEL = new ScrewConveyor(0.3, 0.1, 0.3, 0);

  /** 2 kg/s over 10 m: 2 · 9.80665 · 4 · 10 W for the sand, 50 · 0.3 · 10 W for the empty screw. */
  @Test
  void aScrewConveyorNeedsPowerForItsSandItsLiftAndItself() {
    assertThat(LEVEL.powerW(2, 10, 4)).isCloseTo(784.532 + 150, within(1e-9));
    assertThat(LEVEL.powerW(0, 10, 4)).isCloseTo(150, within(1e-9));
    // At 30 degrees the sand is lifted by half the length besides: 2 · 9.80665 · 5 W.
    assertThat(new ScrewConveyor(0.3, 0.1, 0.3, Math.PI / 6).powerW(2, 10, 4))
        .isCloseTo(784.532 + 98.0665 + 150, within(1e-9));
  }

  /** π/4 (0.3² − 0.1²) 0.3 m = 0.0188496 m3 a turn, 1 turn in a second. */
  @Test
  void aScrewConveyorCarriesAShareOfWhatItSweeps() {
    assertThat(LEVEL.capacityM3ps(1, 1).value()).isCloseTo(0.0188496, within(1e-7));
    assertThat(LEVEL.capacityM3ps(1, 0).value()).isZero();
    assertThat(LEVEL.capacityM3ps(0, 0.15).value()).isZero();
    assertThat(LEVEL.loading(0.0188496 / 2, 1).value()).isCloseTo(0.5, within(1e-5));
    assertThat(LEVEL.loading(0, 1).value()).isZero();
  }

  @Test
  void aScrewConveyorRefusesNonsense() {
    assertThatThrownBy(() -> LEVEL.capacityM3ps(1, 1.01)).hasMessageContaining("1.01");
    assertThatThrownBy(() -> LEVEL.capacityM3ps(1, -0.01)).hasMessageContaining("-0.01");
    assertThatThrownBy(() -> LEVEL.capacityM3ps(-1, 0.1)).hasMessageContaining("-1.0 1/s");
    assertThatThrownBy(() -> LEVEL.capacityM3ps(Double.POSITIVE_INFINITY, 0.1))
        .hasMessageContaining("Infinity");
    assertThatThrownBy(() -> LEVEL.loading(0.01, -1)).hasMessageContaining("-1.0 1/s");
    assertThatThrownBy(() -> LEVEL.loading(-0.01, 1)).hasMessageContaining("-0.01 m3/s");
    assertThatThrownBy(() -> LEVEL.loading(Double.POSITIVE_INFINITY, 1))
        .hasMessageContaining("Infinity");
    assertThatThrownBy(() -> LEVEL.powerW(-1, 10, 4)).hasMessageContaining("-1.0 kg/s");
    assertThatThrownBy(() -> LEVEL.powerW(2, 0, 4)).hasMessageContaining("0.0 m");
    assertThatThrownBy(() -> LEVEL.powerW(2, 10, 0)).hasMessageContaining("0.0");
  }

  @Test
  void aPumpAtRestAndAPerfectOneHaveAPower() {
    assertThat(MotorPower.of(1000, 0, 0, 1, 1).inputW()).isZero();
    assertThat(MotorPower.of(1000, 0.01, 10, 1, 1).inputW()).isCloseTo(980.665, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"-0.01, 10, 0.5, 0.9", "0.01, -10, 0.5, 0.9", "0.01, 10, 1.01, 0.9"})
  void aPowerOfNonsenseIsRefused(double flow, double head, double pump, double drive) {
    assertThatThrownBy(() -> MotorPower.of(1000, flow, head, pump, drive))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void aDriveBetterThanPerfectIsRefused() {
    assertThatThrownBy(() -> MotorPower.of(1000, 0.01, 10, 0.5, 1.01)).hasMessageContaining("1.01");
  }

  /** 100 m3 at 0.01 m3/s run 10,000 s; at 5 kW that is 50 MJ, and with 20 kg/m3 25 kJ/kg. */
  @Test
  void aDayOfPumpingTakesItsEnergy() {
    DailyDuty day = new DailyDuty(100, 2, 0.01);
    assertThat(day.runningS()).isCloseTo(10_000, within(1e-9));
    assertThat(day.energyJ(5000)).isCloseTo(50e6, within(1e-6));
    assertThat(day.energyJ(0)).isZero();
    assertThat(day.energyPerSandJpKg(5000, 20).orElseThrow()).isCloseTo(25_000, within(1e-9));
    assertThatThrownBy(() -> day.energyJ(Double.POSITIVE_INFINITY)).hasMessageContaining("power");
    assertThatThrownBy(() -> day.energyPerSandJpKg(5000, Double.POSITIVE_INFINITY))
        .hasMessageContaining("content of sand");
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void aMotorWithoutARatingIsRefused(double rating) {
    assertThatThrownBy(() -> MotorStarts.mostPs(rating)).hasMessageContaining("rating");
  }

  /** A slope of 10 degrees costs 2 % a degree: 0.8 of 0.0188496 m3 a turn, at 2 turns a second. */
  @Test
  void aScrewOnASlopeCarriesLess() {
    ScrewConveyor slope =
        new ScrewConveyor(
            LEVEL.diameterM(), LEVEL.shaftDiameterM(), LEVEL.pitchM(), Math.toRadians(10));
    assertThat(slope.loading(0.0188496 * 0.8 * 2 * 0.3, 2).value()).isCloseTo(0.3, within(1e-5));
  }
}
