package sandslurry.material.liquid;

import static org.assertj.core.api.Assertions.within;
import static sandslurry.outside.Ours.ours;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sandslurry.units.Measure;

class WaterReferenceTest {
  /**
   * Water at 101.325 kPa by the general-purpose library iapws 1.5.3 (formulations IAPWS-95 for
   * density, IAPWS R12-08 for viscosity), other equations than those of {@link Water}. The
   * tolerances of 2 parts in a million for density and 0.02 % for viscosity and vapour pressure are
   * what the two sets of equations were found to agree to; a wrong digit in a coefficient shows.
   */
  @ParameterizedTest
  @CsvSource({
    "0.01, 999.84376, 1.7911320e-03, 611.657",
    "1, 999.90184, 1.7310213e-03, 657.088",
    "2, 999.94300, 1.6735154e-03, 705.988",
    "4, 999.97487, 1.5672918e-03, 813.549",
    "5, 999.96663, 1.5181728e-03, 872.575",
    "8, 999.85102, 1.3847241e-03, 1072.988",
    "10, 999.70247, 1.3058997e-03, 1228.184",
    "12, 999.50035, 1.2340432e-03, 1402.822",
    "15, 999.10262, 1.1375676e-03, 1705.745",
    "18, 998.59863, 1.0526742e-03, 2064.657",
    "20, 998.20715, 1.0015961e-03, 2339.215",
    "22, 997.77349, 9.5439619e-04, 2645.211",
    "25, 997.04764, 8.9002249e-04, 3169.747",
    "30, 995.64945, 7.9722180e-04, 4246.688",
    "35, 994.03331, 7.1912562e-04, 5628.620",
    "40, 992.21635, 6.5272873e-04, 7384.427",
    "45, 990.21290, 5.9576931e-04, 9594.389",
    "50, 988.03505, 5.4651626e-04, 12351.270",
    "60, 983.19582, 4.6603508e-04, 19945.802"
  })
  void waterIsThatOfTheGeneralFormulations(
      double celsius, double densityKgM3, double viscosityPaS, double vapourPressurePa) {
    double temperatureK = Measure.TEMPERATURE.entry("degC").toSi(celsius);
    ours(Water.densityKgM3(temperatureK)).isCloseTo(densityKgM3, within(2e-6 * densityKgM3));
    ours(Water.viscosityPaS(temperatureK)).isCloseTo(viscosityPaS, within(2e-4 * viscosityPaS));
    ours(Water.vapourPressurePa(temperatureK))
        .isCloseTo(vapourPressurePa, within(2e-4 * vapourPressurePa));
  }

  /**
   * IAPWS R7-97(2012), Table 35: saturation pressure 0.353658941e-2 MPa at 300 K, nine digits
   * printed (from memory, unverified; the other two of the table lie above the boiling point).
   */
  @ParameterizedTest
  @CsvSource({"300, 3536.58941"})
  void saturationPressureIsTheCheckValueOfTheRelease(double temperatureK, double pressurePa) {
    ours(Water.vapourPressurePa(temperatureK)).isCloseTo(pressurePa, within(0.5e-5));
  }

  /**
   * IAPWS SR6-08(2011), Table 8, at 298.15 K: density 997.047013 kg/m3, viscosity 889.996774e-6
   * Pa.s, as printed (from memory, unverified).
   */
  @ParameterizedTest
  @CsvSource({"298.15, 997.047013, 889.996774e-6"})
  void densityAndViscosityAreTheCheckValuesOfTheRelease(
      double temperatureK, double densityKgM3, double viscosityPaS) {
    ours(Water.densityKgM3(temperatureK)).isCloseTo(densityKgM3, within(0.5e-6));
    ours(Water.viscosityPaS(temperatureK)).isCloseTo(viscosityPaS, within(0.5e-12));
  }
}
