package sandslurry.transport.headloss;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class InclinationTest {
  @Test
  void changesNothingOnTheLevel() {
    assertThat(Inclination.frictionGradient(0.02, 0.07, 0)).isEqualTo(0.07);
  }

  @Test
  void isCarrierFrictionInAVerticalPipe() {
    assertThat(Inclination.frictionGradient(0.02, 0.07, Math.PI / 2))
        .isCloseTo(0.02, within(1e-15));
  }

  @Test
  void rubsAlikeUpAndDown() {
    assertThat(Inclination.frictionGradient(0.02, 0.07, -0.5))
        .isEqualTo(Inclination.frictionGradient(0.02, 0.07, 0.5))
        .isBetween(0.02, 0.07);
  }

  @Test
  void refusesASlopeBeyondTheVertical() {
    assertThatThrownBy(() -> Inclination.frictionGradient(0, 0, 2)).hasMessageContaining("2.0");
    assertThatThrownBy(() -> Inclination.frictionGradient(0, 0, Double.NaN))
        .hasMessageContaining("NaN");
  }
}
