package sandslurry.pump.piston;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PistonPumpTest {
  private final PistonPump pump = new PistonPump(0.02, 0.9, 1e6);

  @Test
  void flowFollowsTheStrokes() {
    assertThat(pump.flowM3ps(0.25)).isCloseTo(0.0045, within(1e-15));
    assertThat(pump.flowM3ps(0)).isZero();
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
  }
}
