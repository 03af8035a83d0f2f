package sandslurry.separation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static sandslurry.outside.Ours.ours;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;
import sandslurry.material.sand.GrainShape;
import sandslurry.separation.channel.CampScour1946;
import sandslurry.separation.channel.ScourModel;
import sandslurry.separation.channel.ScourModels;
import sandslurry.separation.channel.ShieldsSoulsby1997;

class ScourReferenceTest {
  private static final Liquid WATER = new Liquid(1000, 1e-3);

  private static Grain grain(double diameterM, double relativeDensity) {
    return new Grain(diameterM, 1000 * relativeDensity, GrainShape.NATURAL);
  }

  @ParameterizedTest
  @CsvSource({
    // beta, f, s, d [mm], published V [m/s], tolerance [%].
    // Hendricks, Fundamentals of Water Treatment Unit Processes, example 7.1 (a) after Camp (1946),
    // read at digilib.universitaspertamina.ac.id; two digits printed.
    "0.06, 0.03, 2.65, 0.2, 0.23, 2",
    // Example 2 of a set of grit-chamber designs (scribd.com/document/670831329): 22.76 cm/s; that
    // is with g = 981 cm/s2, so half a unit of the last digit.
    "0.06, 0.03, 2.65, 0.2, 0.2276, 0.05",
    // Scour in a primary tank, Metcalf and Eddy, Wastewater Engineering; from memory, unverified.
    "0.05, 0.025, 1.25, 0.1, 0.063, 1",
  })
  void campsScourVelocityIsReproduced(
      double beta, double f, double s, double millimetres, double v, double percent) {
    ours(new CampScour1946(beta).velocityMps(grain(millimetres * 1e-3, s), WATER, f).value())
        .isCloseTo(v, withinPercentage(percent));
  }

  @ParameterizedTest
  @CsvSource({
    // Hendricks, example 7.1 (b) and (c): the grain that 0.30 m/s scours. beta, f, s, d [mm] as
    // printed to one digit (12: two); half a unit of it. In (b) the print 0.4 is 0.348 by the
    // formula: rounded up, 0.06.
    "0.06, 0.03, 2.65, 0.4, 0.06",
    "0.08, 0.023, 2.65, 0.2, 0.05",
    "0.06, 0.03, 1.2, 3, 0.5",
    "0.06, 0.03, 1.05, 12, 0.6",
  })
  void theGrainThatAGritChamberScoursIsReproduced(
      double beta, double f, double s, double millimetres, double slack) {
    ScourModel camp = new CampScour1946(beta);
    Grain finer = grain(1e-3 * (millimetres - slack), s);
    Grain coarser = grain(1e-3 * (millimetres + slack), s);
    assertThat(camp.velocityMps(finer, WATER, f).value()).isLessThan(0.30);
    assertThat(camp.velocityMps(coarser, WATER, f).value()).isGreaterThan(0.30);
  }

  /**
   * Shields's own curve as fitted by Brownlie (1981), 0.22 Re_p^-0.6 + 0.06 · 10^(-7.7 Re_p^-0.6):
   * read in Parker, 1D Sediment Transport Morphodynamics, chapter 6 (studylib.net/doc/9626909).
   */
  private static double brownlie(Grain grain) {
    double r = grain.densityKgM3() / WATER.densityKgM3() - 1;
    double d = grain.diameterM();
    double re = Math.sqrt(r * 9.80665 * d) * d / WATER.kinematicViscosityM2ps();
    double power = Math.pow(re, -0.6);
    return 0.22 * power + 0.06 * Math.pow(10, -7.7 * power);
  }

  @ParameterizedTest
  @CsvSource({"0.10", "0.15", "0.20", "0.30", "0.50", "0.85", "1.0", "2.0", "4.0"})
  void soulsbysCurveIsNearBrownliesFitOfTheSameData(double millimetres) {
    // Two fits through one cloud of points; the data scatter more than 20 % about either: the
    // tolerance.
    Grain sand = grain(millimetres * 1e-3, 2.65);
    ours(ScourModels.SHIELDS.shieldsNumber(sand, WATER).value())
        .isCloseTo(brownlie(sand), withinPercentage(20));
  }

  @Test
  void soulsbysOwnExampleIsReproduced() {
    // Soulsby (1997), Dynamics of Marine Sands, example of the threshold of motion: 0.2 mm quartz
    // in sea water of 10 degC (1027 kg/m3, 1.36e-6 m2/s): D* = 4.06, theta = 0.055, tau = 0.176
    // N/m2; from memory, unverified. Half a unit of the last digit.
    Liquid sea = new Liquid(1027, 1.36e-6 * 1027);
    Grain sand = new Grain(0.2e-3, 2650, GrainShape.NATURAL);
    double theta = ScourModels.SHIELDS.shieldsNumber(sand, sea).value();
    ours(ShieldsSoulsby1997.dimensionlessSize(sand, sea)).isCloseTo(4.06, within(0.005));
    ours(theta).isCloseTo(0.055, within(0.0005));
    ours(theta * 9.81 * (2650 - 1027) * 0.2e-3).isCloseTo(0.176, within(0.0005));
  }

  @Test
  void soulsbysCurveLiesWhereEightDecadesOfTestsLie() {
    // Buffington and Montgomery (1997), Water Resources Research 33:1993, abstract: visually based
    // critical Shields numbers of gravel at high grain Reynolds number 0.030 to 0.073.
    ours(ScourModels.SHIELDS.shieldsNumber(grain(0.02, 2.65), WATER).value())
        .isBetween(0.030, 0.073);
  }

  @Test
  void thirtyCentimetresASecondIsTheSpeedOfGritChambers() {
    // Horizontal grit chambers run at 0.2 to 0.4, usually 0.3 m/s, to keep 0.2 mm grit (Vesilind
    // 2003, as quoted at scribd.com/document/333873839). Camp's two ends of beta and f bracket it.
    Grain grit = grain(0.2e-3, 2.65);
    assertThat(new CampScour1946(0.04).velocityMps(grit, WATER, 0.03).value()).isLessThan(0.2);
    ours(new CampScour1946(0.06).velocityMps(grit, WATER, 0.02).value()).isBetween(0.2, 0.4);
  }
}
