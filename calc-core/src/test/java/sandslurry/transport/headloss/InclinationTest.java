package sandslurry.transport.headloss;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import sandslurry.material.Slurry;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.GrainShape;

class InclinationTest {
  private static final Slurry SLURRY =
      new Slurry(new Liquid(1000, 1e-3), 2650, GrainShape.NATURAL, 3e-4, 4e-4, 0.1);

  @Test
  void changesNothingOnTheLevel() {
    assertThat(Inclination.frictionGradient(0.02, 0.07, 0)).isEqualTo(0.07);
    assertThat(Inclination.staticGradient(SLURRY, 0)).isZero();
  }

  @Test
  void isCarrierFrictionAndMixtureWeightInAVerticalPipe() {
    assertThat(Inclination.frictionGradient(0.02, 0.07, Math.PI / 2))
        .isCloseTo(0.02, within(1e-15));
    assertThat(Inclination.staticGradient(SLURRY, Math.PI / 2)).isCloseTo(1.165, within(1e-12));
  }

  @Test
  void rubsAlikeUpAndDownButLiftsOnlyUp() {
    assertThat(Inclination.frictionGradient(0.02, 0.07, -0.5))
        .isEqualTo(Inclination.frictionGradient(0.02, 0.07, 0.5))
        .isBetween(0.02, 0.07);
    assertThat(Inclination.staticGradient(SLURRY, -0.5))
        .isEqualTo(-Inclination.staticGradient(SLURRY, 0.5))
        .isNegative();
  }

  @Test
  void refusesASlopeBeyondTheVertical() {
    assertThatThrownBy(() -> Inclination.staticGradient(SLURRY, 2)).hasMessageContaining("2.0");
    assertThatThrownBy(() -> Inclination.frictionGradient(0, 0, Double.NaN))
        .hasMessageContaining("NaN");
  }
}
