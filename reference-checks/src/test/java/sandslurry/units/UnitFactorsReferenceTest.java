package sandslurry.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Every unit of the table that is not a power of ten of the SI unit, against NIST Special
 * Publication 811 (2008 edition), Appendix B.
 *
 * <p>The column "exact" is a decimal literal worked out in rational arithmetic, apart from the
 * program, from the definitions that the Appendix gives as exact: inch 0.0254 m, avoirdupois pound
 * 0.453 592 37 kg, US gallon 231 in³, standard gravity 9.806 65 m/s², standard atmosphere 101 325
 * Pa. It is held to a few units in the sixteenth digit. The column "printed" is the seven-digit
 * factor as Appendix B.8 prints it (from memory, unverified; "-" where the Appendix has no such
 * line) and guards against a slip in the working out.
 */
class UnitFactorsReferenceTest {
  private static final String TABLE =
      """
      length            | ft         | 0.3048                  | 3.048E-01
      length            | in         | 0.0254                  | 2.54E-02
      length            | yd         | 0.9144                  | 9.144E-01
      speed             | m/h        | 0.00027777777777777778  | -
      speed             | m/min      | 0.016666666666666667    | -
      speed             | ft/s       | 0.3048                  | 3.048E-01
      speed             | ft/min     | 0.00508                 | 5.08E-03
      speed             | in/min     | 0.00042333333333333333  | -
      speed             | gal/d/ft2  | 4.7159529320987654e-7   | -
      flow rate         | m3/min     | 0.016666666666666667    | -
      flow rate         | m3/h       | 0.00027777777777777778  | -
      flow rate         | m3/d       | 1.1574074074074074e-5   | -
      flow rate         | L/min      | 1.6666666666666667e-5   | -
      flow rate         | gal/min    | 6.30901964e-5           | 6.309020E-05
      flow rate         | gal/h      | 1.0515032733333333e-6   | -
      flow rate         | gal/d      | 4.3812636388888889e-8   | 4.381264E-08
      flow rate         | ft3/s      | 0.028316846592          | 2.831685E-02
      flow rate         | ft3/min    | 0.0004719474432         | 4.719474E-04
      mass flow         | kg/min     | 0.016666666666666667    | -
      mass flow         | kg/h       | 0.00027777777777777778  | -
      mass flow         | kg/d       | 1.1574074074074074e-5   | -
      mass flow         | t/h        | 0.27777777777777778     | 2.777778E-01
      mass flow         | t/d        | 0.011574074074074074    | -
      mass flow         | lb/s       | 0.45359237              | 4.535924E-01
      mass flow         | lb/min     | 0.0075598728333333333   | 7.559873E-03
      mass flow         | lb/h       | 0.00012599788055555556  | 1.259979E-04
      mass flow         | lb/d       | 5.2499116898148148e-6   | -
      mass flow         | ton/h      | 0.25199576111111111     | 2.519958E-01
      mass flow         | ton/d      | 0.010499823379629630    | -
      mass              | lb         | 0.45359237              | 4.535924E-01
      mass              | ton        | 907.18474               | 9.071847E+02
      area              | ft2        | 0.09290304              | 9.290304E-02
      volume            | gal        | 0.003785411784          | 3.785412E-03
      volume            | ft3        | 0.028316846592          | 2.831685E-02
      volume            | yd3        | 0.764554857984          | 7.645549E-01
      density           | lb/ft3     | 16.018463373960140      | 1.601846E+01
      density           | lb/gal     | 119.82642731689663      | 1.198264E+02
      dynamic viscosity | lb/ft/s    | 1.4881639435695538      | 1.488164E+00
      kinematic viscosity | ft2/s    | 0.09290304              | 9.290304E-02
      pressure          | atm        | 101325                  | 1.01325E+05
      pressure          | psi        | 6894.7572931683613      | 6.894757E+03
      pressure gradient | psi/ft     | 22620.594793859453      | -
      pressure gradient | psi/100 ft | 226.20594793859453      | -
      time              | min        | 60                      | 6.0E+01
      time              | h          | 3600                    | 3.6E+03
      time              | d          | 86400                   | 8.64E+04
      rate of strokes   | 1/min      | 0.016666666666666667 | -
      rotational speed  | rpm        | 0.016666666666666667 | -
      rate of strokes   | 1/h        | 2.7777777777777778e-4 | -
      energy            | kWh        | 3600000                 | -
      power             | hp         | 745.69987158227022      | 7.456999E+02
      specific energy   | kWh/t      | 3600                    | -
      specific energy   | kWh/ton    | 3968.3207193277965      | -
      """;

  private static Measure<?> measure(String name) {
    return Measure.all().stream().filter(m -> m.name().equals(name)).findFirst().orElseThrow();
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = TABLE)
  void theFactorIsThatOfTheStandard(String measure, String unit, double exact, String printed) {
    double factor = measure(measure).entry(unit).factor();
    assertThat(factor).isEqualTo(exact, within(5e-16 * exact));
    if (!printed.equals("-")) {
      BigDecimal sevenDigits = new BigDecimal(printed);
      double halfOfLastDigit = 0.5 * Math.pow(10, Math.floor(Math.log10(exact)) - 6);
      assertThat(exact).isEqualTo(sevenDigits.doubleValue(), within(halfOfLastDigit));
    }
  }

  /** Powers of ten: SP 811 sections 4 and 5; centipoise, poise and centistokes, bar: B.8. */
  @ParameterizedTest
  @CsvSource({
    "length, mm, 1e-3",
    "length, um, 1e-6",
    "length, cm, 1e-2",
    "length, km, 1e3",
    "flow rate, L/s, 1e-3",
    "mass, g, 1e-3",
    "mass, t, 1e3",
    "volume, L, 1e-3",
    "density, g/cm3, 1e3",
    "dynamic viscosity, mPa.s, 1e-3",
    "dynamic viscosity, cP, 1e-3",
    "dynamic viscosity, P, 0.1",
    "kinematic viscosity, mm2/s, 1e-6",
    "kinematic viscosity, cSt, 1e-6",
    "pressure, kPa, 1e3",
    "pressure, MPa, 1e6",
    "pressure, bar, 1e5",
    "pressure, mbar, 1e2",
    "power, kW, 1e3",
    "fraction, %, 1e-2",
  })
  void powersOfTenAreExact(String measure, String unit, double factor) {
    assertThat(measure(measure).entry(unit).factor()).isEqualTo(factor);
  }

  /**
   * SP 811 section B.8: T/K = t/degC + 273.15 and T/K = (t/degF + 459.67)/1.8; the fixed points are
   * absolute zero, ice point, 20 degC and steam point by definition of the two scales.
   */
  @ParameterizedTest
  @CsvSource({
    "-459.67, -273.15, 0",
    "32, 0, 273.15",
    "68, 20, 293.15",
    "95, 35, 308.15",
    "212, 100, 373.15"
  })
  void theTemperatureScalesMeet(double fahrenheit, double celsius, double kelvin) {
    assertThat(Measure.TEMPERATURE.entry("degF").toSi(fahrenheit)).isEqualTo(kelvin, within(1e-12));
    assertThat(Measure.TEMPERATURE.entry("degC").toSi(celsius)).isEqualTo(kelvin, within(1e-12));
    assertThat(Measure.TEMPERATURE.entry("degF").fromSi(kelvin))
        .isEqualTo(fahrenheit, within(1e-12));
  }

  @Test
  void noUnitEscapesTheCheck() {
    Set<String> checked = new HashSet<>();
    for (String line : TABLE.split("\n")) {
      String[] cells = line.split("\\|");
      checked.add(
          cells[0].strip() + ": " + measure(cells[0].strip()).entry(cells[1].strip()).symbol());
    }
    for (Measure<?> measure : Measure.all()) {
      for (UnitEntry<?> unit : measure.units()) {
        double decade = Math.log10(unit.factor());
        if (Math.abs(decade - Math.rint(decade)) > 1e-9) {
          boolean scale = unit.offset() != 0;
          assertThat(scale || checked.contains(measure.name() + ": " + unit.symbol()))
              .as(measure.name() + " in " + unit.symbol())
              .isTrue();
        }
      }
    }
  }
}
