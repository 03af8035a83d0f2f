package sandslurry.separation.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;
import sandslurry.material.sand.GrainShape;

class ScourModelTest {
  private static final Liquid WATER = new Liquid(1000, 1e-3);

  private static Grain sand(double diameterM) {
    return new Grain(diameterM, 2650, GrainShape.NATURAL);
  }

  @Test
  void theShieldsCurveHasItsPublishedLimits() {
    assertThat(ScourModels.SHIELDS.shieldsNumber(sand(1e-9), WATER).value())
        .isEqualTo(0.30, within(1e-3));
    assertThat(ScourModels.SHIELDS.shieldsNumber(sand(1), WATER).value())
        .isEqualTo(0.055, within(1e-3));
  }

  @Test
  void coarserGrainsAlwaysNeedMoreVelocity() {
    for (ScourModel model : ScourModels.FAMILY.all()) {
      double before = 0;
      for (double d = 1e-6; d < 1; d *= 1.2) {
        double velocity = model.velocityMps(sand(d), WATER, 0.03).value();
        assertThat(velocity).as(model.name()).isGreaterThan(before);
        before = velocity;
      }
    }
  }

  @Test
  void betaOutsideCampsRangeIsReported() {
    assertThat(new CampScour1946(0.08).velocityMps(sand(2e-4), WATER, 0.023).inRange()).isFalse();
    assertThat(ScourModels.CAMP.velocityMps(sand(2e-4), WATER, 0.023).inRange()).isTrue();
  }

  @Test
  void everyCriterionHasItsOwnKey() {
    assertThat(ScourModels.FAMILY.all().stream().map(ScourModel::id))
        .doesNotHaveDuplicates()
        .allMatch(id -> id.matches("[a-z0-9.-]+"));
  }

  @Test
  void grainsThatFloatAreRefused() {
    Grain light = new Grain(1e-3, 900, GrainShape.NATURAL);
    for (ScourModel model : ScourModels.FAMILY.all()) {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> model.velocityMps(light, WATER, 0.03))
          .withMessageContaining("denser");
    }
    assertThatIllegalArgumentException().isThrownBy(() -> new CampScour1946(0));
  }
}
