package sandslurry.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ManureReferenceTest {
  /**
   * Achkari-Begdouri and Goodrich (1992), dairy manure at 35 degC, as tabulated by Wu and Chen
   * (2008): range of shear rates and, in columns of their own, greatest and least apparent
   * viscosity. From memory, unverified. The viscosities are held to half a unit of their last digit
   * and, because they were rounded from other roundings of K and n, 3 % besides.
   */
  @ParameterizedTest
  @CsvSource({
    "0.025, 226, 702, 0.008, 0.006, 0.0005",
    "0.054, 50, 702, 0.03, 0.01, 0.005",
    "0.075, 11, 399, 0.17, 0.03, 0.005",
    "0.091, 11, 156, 0.29, 0.07, 0.005",
    "0.121, 3, 149, 2.93, 0.25, 0.005"
  })
  void apparentViscositySpansThePublishedRange(
      double totalSolids,
      double lowRatePs,
      double highRatePs,
      double mostPaS,
      double leastPaS,
      double halfDigitPaS) {
    Carrier manure = Carriers.manure(totalSolids, Carriers.MEASURED_K);
    assertThat(manure.liquidAt(lowRatePs).viscosityPaS())
        .isEqualTo(mostPaS, within(halfDigitPaS + 0.03 * mostPaS));
    assertThat(manure.liquidAt(highRatePs).viscosityPaS())
        .isEqualTo(leastPaS, within(halfDigitPaS + 0.03 * leastPaS));
  }

  /**
   * Wang, Aguirre-Villegas, Larson and Alkan-Ozkaynak (2019), Applied Sciences 9(13):2703, abstract
   * (read): density of dairy manure rose from 990 to 1065 kg/m3 as total solids rose from 1.5 to 13
   * %. The first lies below the density of water (gas, presumably), so that a law of mixing cannot
   * meet it; 2.5 % covers both ends.
   */
  @ParameterizedTest
  @CsvSource({"0.015, 990", "0.13, 1065"})
  void densityIsNearThatOfSevenFarms(double totalSolids, double densityKgM3) {
    assertThat(Carriers.manure(totalSolids, 293.15).densityKgM3())
        .isEqualTo(densityKgM3, within(0.025 * densityKgM3));
  }
}
