package sandslurry.material.liquid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class WaterProperties {
  @Property
  void warmWaterIsThinnerAndBoilsMoreEasily(
      @ForAll @Scale(9) @DoubleRange(min = 273.15, max = 373.14) double temperatureK) {
    double warmer = temperatureK + 0.01;
    assertThat(Water.viscosityPaS(warmer)).isLessThan(Water.viscosityPaS(temperatureK));
    assertThat(Water.vapourPressurePa(warmer)).isGreaterThan(Water.vapourPressurePa(temperatureK));
  }

  @Property
  void waterIsDensestNearFourDegrees(
      @ForAll @Scale(9) @DoubleRange(min = 273.15, max = 373.15) double temperatureK) {
    assertThat(Water.densityKgM3(temperatureK)).isLessThanOrEqualTo(Water.densityKgM3(277.13));
  }

  @Property
  void waterThatIsNotLiquidIsRefused(@ForAll @Scale(9) double temperatureK) {
    if (!(temperatureK >= Water.LOWEST_K && temperatureK <= Water.HIGHEST_K)) {
      assertThatIllegalArgumentException().isThrownBy(() -> Water.at(temperatureK));
      assertThatIllegalArgumentException().isThrownBy(() -> Water.vapourPressurePa(temperatureK));
    }
  }

  @Example
  void theRefusalSaysWhyAndWhatToGive() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Water.densityKgM3(268.15))
        .withMessageContaining("-5.00 degC (23.0 degF)")
        .withMessageContaining("freezes")
        .withMessageContaining("100 degC (212 degF)");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Water.viscosityPaS(380))
        .withMessageContaining("boils");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Water.viscosityPaS(Double.NaN))
        .withMessageContaining("NaN");
  }

  @Example
  void waterBoilsAtTheStandardAtmosphereNearTheSteamPoint() {
    assertThat(Water.vapourPressurePa(Water.HIGHEST_K)).isEqualTo(101_325, within(150.0));
  }
}
