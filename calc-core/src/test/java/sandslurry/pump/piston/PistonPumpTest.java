package sandslurry.pump.piston;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PistonPumpTest {
  private final PistonPump pump = new PistonPump(0.02, 0.9, 1e6);

  @Test
  void flowFollowsTheStrokesAndTheStrokesTheFlow() {
    assertThat(pump.flowM3ps(0.25)).isCloseTo(0.0045, within(1e-15));
    assertThat(pump.cyclesPerSecond(pump.flowM3ps(0.25))).isCloseTo(0.25, within(1e-15));
    assertThat(pump.flowM3ps(0)).isZero();
  }

  @Test
  void aDoubleActingPumpWithoutARodSweepsTwiceAndWithOneLess() {
    double single = PistonPump.singleActingDisplacementM3(0.2, 0.4, 2);
    double without = PistonPump.doubleActingDisplacementM3(0.2, 0, 0.4, 2);
    double with = PistonPump.doubleActingDisplacementM3(0.2, 0.05, 0.4, 2);
    assertThat(single).isCloseTo(2 * Math.PI * 0.01 * 0.4, within(1e-15));
    assertThat(without).isCloseTo(2 * single, within(1e-15));
    assertThat(without - with).isCloseTo(2 * Math.PI / 4 * 0.0025 * 0.4, within(1e-15));
  }

  @Test
  void slipCostsPower() {
    assertThat(pump.rodPowerW(0.0045, 4e5)).isCloseTo(2000, within(1e-9));
    assertThat(new PistonPump(0.02, 1, 1e6).rodPowerW(0.0045, 4e5)).isCloseTo(1800, within(1e-9));
  }

  @Test
  void thePressureLimitIsInclusiveAndNothingIsAllowedAboveIt() {
    assertThat(pump.allows(1e6)).isTrue();
    assertThat(pump.allows(1.000001e6)).isFalse();
    assertThat(pump.allows(Double.NaN)).isFalse();
  }

  @Test
  void nonsenseIsRefused() {
    assertThatThrownBy(() -> new PistonPump(0, 0.9, 1e6)).hasMessageContaining("displacement");
    assertThatThrownBy(() -> new PistonPump(0.02, 1.1, 1e6)).hasMessageContaining("1.1");
    assertThatThrownBy(() -> new PistonPump(0.02, 0.9, Double.NaN)).hasMessageContaining("limit");
    assertThatThrownBy(() -> pump.flowM3ps(-1)).hasMessageContaining("-1.0");
    assertThatThrownBy(() -> pump.cyclesPerSecond(Double.NaN)).hasMessageContaining("NaN");
    assertThatThrownBy(() -> pump.rodPowerW(-1, 1)).hasMessageContaining("-1.0");
    assertThatThrownBy(() -> PistonPump.doubleActingDisplacementM3(0.2, 0.2, 0.4, 1))
        .hasMessageContaining("thinner");
    assertThatThrownBy(() -> PistonPump.singleActingDisplacementM3(0.2, 0.4, 0))
        .hasMessageContaining("cylinders");
  }
}
