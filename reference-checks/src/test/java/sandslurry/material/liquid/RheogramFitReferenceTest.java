package sandslurry.material.liquid;

import static org.assertj.core.api.Assertions.within;
import static sandslurry.outside.Ours.ours;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RheogramFitReferenceTest {
  @Test
  void reproducesTheCertifiedFitOfAPowerLaw() {
    // NIST Statistical Reference Datasets, nonlinear regression, DanWood (y = b1 x^b2): six
    // observations and certified values, read in public copies of the data file. To 10 printed
    // digits; 1e-8 is asked for, which is what double precision leaves of them.
    RheogramFit.Candidate fit =
        RheogramFit.of(
                List.of(
                    new ViscometerReading(1.309, 2.138),
                    new ViscometerReading(1.471, 3.421),
                    new ViscometerReading(1.490, 3.597),
                    new ViscometerReading(1.565, 4.340),
                    new ViscometerReading(1.611, 4.882),
                    new ViscometerReading(1.680, 5.660)),
                RheogramFit.Weighting.SAME_PASCALS)
            .candidates()
            .stream()
            .filter(c -> c.model().equals("power law"))
            .findFirst()
            .orElseThrow();
    close(fit.parameters().get(0).value(), 7.6886226176E-01);
    close(fit.parameters().get(0).standardError(), 1.8281973860E-02);
    close(fit.parameters().get(1).value(), 3.8604055871E+00);
    close(fit.parameters().get(1).standardError(), 5.1726610913E-02);
    close(fit.residualsPa().stream().mapToDouble(r -> r * r).sum(), 4.3173084083E-03);
  }

  private static void close(double actual, double certified) {
    ours(actual).isCloseTo(certified, within(1e-8 * certified));
  }

  // Achkari-Begdouri and Goodrich (1992), dairy manure at 35 degC, as tabulated by Wu and Chen
  // (2008), Biotechnology and Bioengineering 99:700: K, n, ends of the shear rates and the printed
  // apparent viscosities; from memory, unverified, but the printed columns follow from K and n.
  // Tolerance: half a unit of the last printed digit, and 2 % for the digits of K and n.
  @ParameterizedTest(name = "{0} % solids at {3} 1/s")
  @CsvSource({
    " 2.5, 0.042, 0.710, 702, 0.006, 0.0005",
    " 2.5, 0.042, 0.710, 226, 0.008, 0.0008",
    " 5.4, 0.192, 0.562, 702, 0.01, 0.005",
    " 5.4, 0.192, 0.562,  50, 0.03, 0.005",
    " 7.5, 0.525, 0.533, 399, 0.03, 0.005",
    " 7.5, 0.525, 0.533,  11, 0.17, 0.005",
    " 9.1, 1.052, 0.467, 156, 0.07, 0.005",
    " 9.1, 1.052, 0.467,  11, 0.29, 0.005",
    "12.1, 5.885, 0.367, 149, 0.25, 0.005",
    "12.1, 5.885, 0.367,   3, 2.93, 0.03",
  })
  void powerLawReproducesThePublishedViscosityOfManure(
      double solids, double k, double n, double rate, double viscosity, double tolerance) {
    ours(new PowerLaw(k, n).apparentViscosityPaS(rate)).isCloseTo(viscosity, within(tolerance));
  }
}
