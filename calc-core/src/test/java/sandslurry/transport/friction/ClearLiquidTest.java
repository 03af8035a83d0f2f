package sandslurry.transport.friction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sandslurry.material.liquid.Liquid;
import sandslurry.pipe.Bore;

class ClearLiquidTest {
  private static final Liquid LIQUID = new Liquid(1000, 1e-3);
  private static final Bore BORE = new Bore(0.1, 0);

  @ParameterizedTest
  @CsvSource({"2099, LAMINAR", "2101, TRANSITIONAL", "3999, TRANSITIONAL", "4001, TURBULENT"})
  void namesTheRegimeByTheReynoldsNumber(double reynolds, ClearLiquid.Regime expected) {
    ClearLiquid flow = ClearLiquid.of(LIQUID, BORE, reynolds * 1e-6 / 0.1);
    assertThat(flow.reynolds()).isCloseTo(reynolds, withPercentage(1e-9));
    assertThat(ClearLiquid.regime(flow.reynolds())).isEqualTo(expected);
    assertThat(expected.words()).isNotBlank();
  }

  @Test
  void isHagenAndPoiseuilleWhenLaminar() {
    double velocity = 0.01;
    assertThat(ClearLiquid.of(LIQUID, BORE, velocity).pressureGradientPaPm())
        .isCloseTo(32 * 1e-3 * velocity / (0.1 * 0.1), withPercentage(0.001));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesWhatIsNotAVelocity(double velocity) {
    assertThatThrownBy(() -> ClearLiquid.of(LIQUID, BORE, velocity))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("velocity must be > 0 but was " + velocity);
  }
}
