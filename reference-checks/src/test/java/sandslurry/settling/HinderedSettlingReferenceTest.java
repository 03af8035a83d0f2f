package sandslurry.settling;

import static org.assertj.core.api.Assertions.withinPercentage;
import static sandslurry.outside.Ours.ours;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Exponents of hindered settling against the measurements that started the subject. */
class HinderedSettlingReferenceTest {
  private static final HinderedSettling RICHARDSON_ZAKI = new RichardsonZaki1954();
  private static final HinderedSettling ROWE = new Rowe1987();
  private static final HinderedSettling GARSIDE = new GarsideAlDibouni1977();

  private static double exponent(HinderedSettling law, double reynolds) {
    return law.exponent(reynolds, 0.1).value();
  }

  // Richardson and Zaki (1954), Trans. Instn Chem. Engrs 32:35, Table VI: n0 read from the measured
  // slopes extrapolated to d/D = 0. Transcribed from the paper's reprint in the open collection
  // computational-chemical-engineering/pymrm-gallery, page A1.5, rz1954_n0_vs_re.csv (read). The
  // formulas of the paper are fits of this table and miss its rows by up to 4.4 %: the tolerance.
  @ParameterizedTest
  @CsvFileSource(resources = "/measured-exponents.csv", numLinesToSkip = 1)
  void lawsReproduceTheTableOfRichardsonAndZaki(double reynolds, double measured) {
    ours(exponent(RICHARDSON_ZAKI, reynolds)).isCloseTo(measured, withinPercentage(4.5));
    ours(exponent(ROWE, reynolds)).isCloseTo(measured, withinPercentage(4));
    // Garside and Al-Dibouni found higher exponents in their own tests
    ours(exponent(GARSIDE, reynolds) / measured).isBetween(1.07, 1.17);
  }

  // The same paper and collection, Tables I and II, rz1954_sedimentation.csv (read): slopes n as
  // measured in the widest tube, d/D of 0.002 to 0.021. The walls raise n by up to 9 % there, by
  // the
  // paper's own terms, which the laws leave out.
  @ParameterizedTest
  @CsvSource({
    "0.0789, 4.76",
    "0.00218, 4.69",
    "0.000261, 4.65",
    "0.302, 4.65",
    "1.227, 4.41",
    "2.021, 4.24",
    "6.53, 4.00",
    "18.18, 3.64",
    "38.26, 3.34",
  })
  void slopesMeasuredInTubesAreThoseOfTheLawsOrAWallTermMore(double reynolds, double measured) {
    ours(exponent(RICHARDSON_ZAKI, reynolds) / measured).isBetween(0.90, 1.01);
    ours(exponent(ROWE, reynolds) / measured).isBetween(0.89, 1.02);
  }

  // The same, Tables III and VIII (read): steel balls at Re = 7150, n = 2.38 in the wide tube.
  // Tolerance: the digits of n; 1.5 % for Rowe, who ends at 2.35.
  @Test
  void steelBallsHaveTheExponentOfNewtonsRegime() {
    ours(exponent(RICHARDSON_ZAKI, 7000)).isCloseTo(2.38, withinPercentage(0.5));
    ours(exponent(ROWE, 7150)).isCloseTo(2.38, withinPercentage(1.5));
  }

  // Rowe's curve in the form printed in the documentation of the open coastal model XBeach, eq.
  // 2.86 (read): 2.35 (2 + 0.175 Re^0.75)/(1 + 0.175 Re^0.75). The product 2.35 · 0.175 is rounded
  // to 0.41 in the form used: 0.4 %.
  @ParameterizedTest
  @CsvSource({"0.01", "0.3", "1", "10", "100", "1000", "10000"})
  void roweIsTheCurveOfTheOpenCoastalModel(double reynolds) {
    double power = 0.175 * Math.pow(reynolds, 0.75);
    ours(exponent(ROWE, reynolds))
        .isCloseTo(2.35 * (2 + power) / (1 + power), withinPercentage(0.4));
  }

  // A published exercise, curioustab.com 78014 (read): 4.44 um/s measured at a volume fraction of
  // 0.30 with n = 4.5 is 22.1 um/s for the lone particle. The exponent is 4.5 at Re = (4.35/4.5)^(1
  // /
  // 0.03) = 0.3231. Three printed digits: 0.5 %.
  @Test
  void loneVelocityIsRegainedFromTheHinderedOne() {
    double factor = RICHARDSON_ZAKI.factor(0.3231, 0.30).value();
    ours(4.44 / factor).isCloseTo(22.1, withinPercentage(0.5));
  }

  // Documentation of the open flow code GOMA, gravity-based diffusivity (read): n = 5.1 fits
  // suspensions of equal spheres at low Reynolds number, after Garside and Al-Dibouni (1977).
  @Test
  void garsideAndAlDibouniTendToFivePointOneInCreepingFlow() {
    ours(exponent(GARSIDE, 1e-6)).isCloseTo(5.1, withinPercentage(0.01));
  }
}
