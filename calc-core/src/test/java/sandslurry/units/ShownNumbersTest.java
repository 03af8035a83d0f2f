package sandslurry.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ShownNumbersTest {
  @ParameterizedTest
  @CsvSource({
    "0, 4, 0",
    "-0.0, 4, 0",
    "91.44, 4, 91.44",
    "91.44, 3, 91.4",
    "0.5, 4, 0.5000",
    "9999.6, 4, 10000",
    "0.99996, 4, 1.000",
    "-0.0012345, 3, -0.00123",
    "123456, 3, 123000",
    "9999999, 3, 1.00e7",
    "12345678, 3, 1.23e7",
    "0.0001, 3, 0.000100",
    "0.00009999, 3, 0.000100",
    "0.00001, 3, 1.00e-5",
    "-6.022e23, 3, -6.02e23",
    "2.5, 1, 2",
    "3.5, 1, 4"
  })
  void roundsToSignificantDigits(double number, int digits, String text) {
    assertThat(NumberText.rounded(number, digits)).isEqualTo(text);
  }

  /** No digit is shown that is worth less than a twentieth of half the width. */
  @ParameterizedTest
  @CsvSource({
    "0.966, 0.866, 1, 97 % (87 to 100)",
    "0.0231, 0.0209, 0.024, 2.31 % (2.09 to 2.40)",
    "0.0123, 0.00559, 0.129, 1.2 % (0.56 to 13)",
    "0.16, 0.16, 0.16, 16.0 %"
  })
  void digitsFollowTheRange(double value, double low, double high, String text) {
    assertThat(UnitSystem.METRIC.show(Kind.PERCENT, value, low, high)).isEqualTo(text);
  }

  @Test
  void aNumberThatIsNothingBesideItsRangeHasOneDigit() {
    assertThat(UnitSystem.METRIC.show(Kind.MASS, 284, 0, 58000)).isEqualTo("300 kg (0 to 58000)");
    assertThat(UnitSystem.METRIC.show(Kind.VOLUME, 1.2, 3e-5, 6.3)).isEqualTo("1.2 m3 (0 to 6.3)");
    assertThat(UnitSystem.METRIC.show(Kind.TEMPERATURE, 288.15, 277.15, 298.15))
        .isEqualTo("15 degC (4.0 to 25)");
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void neverShowsWhatIsNotANumber(double number) {
    assertThatIllegalArgumentException().isThrownBy(() -> NumberText.rounded(number, 3));
    for (UnitSystem system : UnitSystem.values()) {
      for (Kind<?> kind : Kind.all()) {
        assertThatIllegalArgumentException().isThrownBy(() -> system.show(kind, number));
        assertThatIllegalArgumentException().isThrownBy(() -> system.number(kind, number));
      }
    }
  }

  @Test
  void aNumberBesideALimitIsSeenOnItsOwnSide() {
    UnitSystem units = UnitSystem.METRIC;
    assertThat(units.number(Kind.PERCENT, 0.8972, 0.86, 1, 0.90)).isEqualTo("89.7");
    assertThat(units.number(Kind.PERCENT, 0.89998, 0.86, 1, 0.90)).isEqualTo("89.9");
    assertThat(units.number(Kind.PERCENT, 0.90004, 0.86, 1, 0.90)).isEqualTo("90.1");
    assertThat(units.number(Kind.PERCENT, 0.9312, 0.86, 1, 0.90)).isEqualTo("93");
    assertThat(units.number(Kind.PERCENT, 0.90, 0.86, 1, 0.90)).isEqualTo("90");
  }

  @Test
  void showsTheSameValueInTwoSystems() {
    assertThat(UnitSystem.METRIC.show(Kind.LENGTH, 91.44)).isEqualTo("91.44 m");
    assertThat(UnitSystem.US.show(Kind.LENGTH, 91.44)).isEqualTo("300.0 ft");
    assertThat(UnitSystem.US.show(Kind.TEMPERATURE, 293.15)).isEqualTo("68.0 degF");
    assertThat(UnitSystem.US.show(Kind.FLOW, Measure.FLOW.of(45, "gal/min")))
        .isEqualTo("45.0 gal/min");
    assertThat(UnitSystem.METRIC.show(Kind.NUMBER, 0.0185)).isEqualTo("0.01850");
    assertThat(UnitSystem.METRIC.show(Kind.PERCENT, 0.2)).isEqualTo("20.0 %");
    assertThat(UnitSystem.US.number(Kind.GRAIN, 75e-6)).isEqualTo("0.0750");
  }

  @Test
  void theShownUnitCanBeReadBack() {
    for (UnitSystem system : UnitSystem.values()) {
      for (Kind<?> kind : Kind.all()) {
        assertThat(kind.measure().parse(system.show(kind, 1))).isNotNull();
      }
    }
  }
}
