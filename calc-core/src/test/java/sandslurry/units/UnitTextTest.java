package sandslurry.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitTextTest {
  private static double metres(String text) {
    return Measure.LENGTH.si(Measure.LENGTH.parse(text));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          3 m            | 3
          3m             | 3
          3 metres       | 3
          3  m           | 3
          +5 m           | 5
          -5 m           | -5
          1e-3 m         | 0.001
          1E-3 m         | 0.001
          1.5e2 m        | 150
          .5 m           | 0.5
          5. m           | 5
          1000 mm        | 1
          1000 MM        | 1
          1/2 in         | 0.0127
          1-1/2 in       | 0.0381
          1 1/2 in       | 0.0381
          12.5ft         | 3.81
          10 FEET        | 3.048
          10 '           | 3.048
          75 µm          | 75e-6
          """,
      quoteCharacter = '~')
  void readsWhatPeopleType(String text, double metres) {
    assertThat(metres(text)).isEqualTo(metres, within(1e-12));
    assertThat(metres("  " + text + "\t")).isEqualTo(metres, within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "12,5 m",
        "1,000 m",
        "1.2.3 m",
        "12 5 m",
        "1 000 m",
        "0x10 m",
        "12abc m",
        "m)",
        "3 m)",
        "m",
        "NaN m",
        "nan m",
        "Infinity m",
        "1e400 m",
        "--3 m",
        "3 m m",
        "3 m/s/s",
        "1/0 in",
        "1/2/3 in",
        "3/4.5 in",
        "3 ^m",
        "1e m",
        "",
        "   ",
        "#3 m",
        "3 m # note",
        "٣ m",
        "3 0.5 m"
      })
  void refusesWhatIsNotOneNumberAndOneUnit(String text) {
    assertThatExceptionOfType(UnitTextException.class).isThrownBy(() -> metres(text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"3 kg/m/s", "3 kg m/s", "3 Pa/s", "3 kg·s/m"})
  void refusesUnitsThatTheUnitsLibraryReadsWrong(String text) {
    assertThatExceptionOfType(UnitTextException.class)
        .isThrownBy(() -> Measure.VISCOSITY.parse(text));
  }

  @Test
  void saysThatTheDecimalMarkIsAPoint() {
    assertThatExceptionOfType(UnitTextException.class)
        .isThrownBy(() -> metres("12,5 m"))
        .withMessageContaining("12,5 m")
        .withMessageContaining("point");
  }

  @Test
  void readsTheSameWhateverTheLocale() {
    Locale before = Locale.getDefault();
    try {
      for (Locale locale :
          new Locale[] {Locale.GERMANY, Locale.forLanguageTag("tr"), Locale.forLanguageTag("ar")}) {
        Locale.setDefault(locale);
        assertThat(metres("1.5 m")).isEqualTo(1.5);
        assertThat(metres("3 MICRONS")).isEqualTo(3e-6, within(1e-18));
        assertThat(Measure.LENGTH.write(Measure.LENGTH.of(1.5, "ft"))).isEqualTo("1.5 ft");
        assertThat(UnitSystem.METRIC.show(Kind.LENGTH, 1234.5)).isEqualTo("1234 m");
        assertThat(UnitSystem.METRIC.show(Kind.HEAD, 1.25)).isEqualTo("1.25 m");
        assertThatExceptionOfType(UnitTextException.class).isThrownBy(() -> metres("12,5 m"));
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void namesBothMeasuresWhenTheDimensionIsWrong() {
    assertThatExceptionOfType(UnitTextException.class)
        .isThrownBy(() -> metres("3 gal/min"))
        .withMessageContaining("flow")
        .withMessageContaining("length")
        .withMessageContaining("ft");
  }

  @Test
  void saysWhichUnitsAreKnownWhenTheUnitIsNot() {
    assertThatExceptionOfType(UnitTextException.class)
        .isThrownBy(() -> metres("3 cubits"))
        .withMessageContaining("cubits")
        .withMessageContaining("mm, cm, um, km, ft, in, yd");
  }

  @Test
  void asksForTheUnitWhenThereIsNone() {
    assertThatExceptionOfType(UnitTextException.class)
        .isThrownBy(() -> metres("300"))
        .withMessageContaining("no unit")
        .withMessageContaining("\"300 m\"");
  }

  @Test
  void saysThatNothingIsWritten() {
    assertThatExceptionOfType(UnitTextException.class)
        .isThrownBy(() -> metres(" "))
        .withMessageContaining("nothing is written");
  }

  @Test
  void readsABareNumberOnlyWhereAPureNumberIsMeant() {
    assertThat(Measure.FRACTION.si(Measure.FRACTION.parse("0.12"))).isEqualTo(0.12);
    assertThat(Measure.FRACTION.si(Measure.FRACTION.parse("12 %"))).isEqualTo(0.12, within(1e-15));
    assertThat(Measure.SLOPE.si(Measure.SLOPE.parse("2 ft/100 ft"))).isEqualTo(0.02, within(1e-15));
  }

  /** A herd of 30000 %, solids of 3 m/m, a shaft of 60 Hz: what nobody can mean. */
  @Test
  void refusesAUnitThatMakesNoSense() {
    assertThatExceptionOfType(UnitTextException.class)
        .isThrownBy(() -> Measure.NUMBER.parse("30000 %"))
        .withMessageContaining("a number is needed here: a bare number");
    assertThatExceptionOfType(UnitTextException.class)
        .isThrownBy(() -> Measure.FRACTION.parse("0.03 m/m"))
        .withMessageContaining("unit of slope");
    assertThatExceptionOfType(UnitTextException.class)
        .isThrownBy(() -> Measure.ROTATION.parse("60 Hz"))
        .withMessageContaining("rpm");
    assertThatExceptionOfType(UnitTextException.class)
        .isThrownBy(() -> Measure.ROTATION.parse("60 strokes/min"))
        .withMessageContaining("a rotational speed is needed here");
  }

  @Test
  void readsAUnitThatBeginsWithAFigure() {
    assertThat(Measure.FREQUENCY.si(Measure.FREQUENCY.parse("30 1/min"))).isEqualTo(0.5);
    assertThat(Measure.ROTATION.si(Measure.ROTATION.parse("30 rpm"))).isEqualTo(0.5);
    assertThat(Measure.SHEAR_RATE.si(Measure.SHEAR_RATE.parse("226 1/s"))).isEqualTo(226);
    assertThatExceptionOfType(UnitTextException.class)
        .isThrownBy(() -> Measure.SHEAR_RATE.parse("2261/s"));
  }

  @Test
  void neverTakesMilliForMega() {
    assertThat(Measure.PRESSURE.si(Measure.PRESSURE.parse("2 MPa"))).isEqualTo(2e6);
    assertThat(Measure.VISCOSITY.si(Measure.VISCOSITY.parse("2 mpa.s"))).isEqualTo(2e-3);
    assertThatExceptionOfType(UnitTextException.class)
        .isThrownBy(() -> Measure.PRESSURE.parse("2 mPa"));
    assertThatExceptionOfType(UnitTextException.class)
        .isThrownBy(() -> Measure.PRESSURE.parse("2 Mbar"));
    assertThatExceptionOfType(UnitTextException.class)
        .isThrownBy(() -> Measure.VISCOSITY.parse("2 MPa.s"));
  }

  @Test
  void readsSpellingsThatComeFromPrintedText() {
    assertThat(Measure.FLOW.si(Measure.FLOW.parse("36 m³/h"))).isEqualTo(0.01, within(1e-17));
    assertThat(Measure.FLOW.si(Measure.FLOW.parse("36 m^3 / h"))).isEqualTo(0.01, within(1e-17));
    assertThat(Measure.TEMPERATURE.si(Measure.TEMPERATURE.parse("\u22125\u00a0°C")))
        .isEqualTo(268.15, within(1e-12));
    // The sign for the masculine ordinal stands beside the figures of some keyboards.
    assertThat(Measure.TEMPERATURE.si(Measure.TEMPERATURE.parse("10 ºC"))).isEqualTo(283.15);
    assertThat(Measure.VISCOSITY.si(Measure.VISCOSITY.parse("1 Pa·s"))).isEqualTo(1);
  }

  @Test
  void readsTemperaturesOnTheirOwnZero() {
    assertThat(Measure.TEMPERATURE.si(Measure.TEMPERATURE.parse("32 °F")))
        .isEqualTo(273.15, within(1e-12));
    assertThat(Measure.TEMPERATURE.si(Measure.TEMPERATURE.parse("212 degF")))
        .isEqualTo(373.15, within(1e-12));
    assertThat(Measure.TEMPERATURE.si(Measure.TEMPERATURE.parse("-40 C")))
        .isEqualTo(Measure.TEMPERATURE.si(Measure.TEMPERATURE.parse("-40 F")), within(1e-12));
  }
}
