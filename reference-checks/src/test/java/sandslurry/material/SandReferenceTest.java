package sandslurry.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sandslurry.outside.Ours.ours;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sandslurry.material.sand.Gradation;
import sandslurry.material.sand.SievePoint;
import sandslurry.material.sand.SizeClass;
import sandslurry.material.sand.StandardSand;
import sandslurry.units.InUnit;
import sandslurry.units.Measure;

class SandReferenceTest {
  private static final double[] COARSER = {0.05, 0.16, 0.25, 0.50, 0.75, 0.84, 0.95};
  private static final double[] PHI = {0.56, 0.80, 0.93, 1.37, 1.87, 2.08, 2.48};

  /** Size on the phi scale of Krumbein: millimetres to the power of two, downwards. */
  private static double phi(double sizeM) {
    return -Math.log(InUnit.MILLIMETRE.of(sizeM)) / Math.log(2);
  }

  private static double metres(double phi) {
    return Measure.LENGTH.entry("mm").toSi(Math.pow(2, -phi));
  }

  private static Gradation beachSand(boolean withMiddle) {
    List<SievePoint> points = new ArrayList<>();
    for (int i = 0; i < PHI.length; i++) {
      if (withMiddle || i != 3) {
        points.add(new SievePoint(metres(PHI[i]), 1 - COARSER[i]));
      }
    }
    return Gradation.of(points);
  }

  /**
   * US Army Corps of Engineers, Coastal Engineering Manual EM 1110-2-1100, example III-1-1 (read):
   * the seven sizes on the phi scale are given; results median 0.39 mm, mean 1.42 phi or 0.37 mm,
   * standard deviation 0.64 phi, by Folk's graphic formulas. Tolerances: half a unit of the last
   * digit printed.
   */
  @Test
  void gradingStatisticsAreThoseOfTheCoastalEngineeringManual() {
    Gradation sand = beachSand(true);
    ours(InUnit.MILLIMETRE.of(sand.d50M())).isCloseTo(0.39, within(0.005));
    double phi16 = phi(sand.sizePassingM(0.84));
    double phi50 = phi(sand.d50M());
    double phi84 = phi(sand.sizePassingM(0.16));
    double mean = (phi16 + phi50 + phi84) / 3;
    ours(mean).isCloseTo(1.42, within(0.005));
    ours(InUnit.MILLIMETRE.of(metres(mean))).isCloseTo(0.37, within(0.005));
    ours((phi84 - phi16) / 2).isCloseTo(0.64, within(0.005));
  }

  /**
   * The same example. The mean of the size classes, tails included, has no reason to be exactly
   * Folk's three-point mean; both are 1.42. Tolerance: 1 %.
   */
  @Test
  void theSizeClassesHaveTheMeanOfTheSand() {
    double mean = 0;
    for (SizeClass c : beachSand(true).classes()) {
      mean += c.massFraction() * phi(c.meanM());
    }
    ours(mean).isCloseTo(1.42, within(0.0142));
  }

  /**
   * The same example with the middle point withheld: log-linear interpolation finds it. Tolerance:
   * 3 %, for a straight line over two sieves.
   */
  @Test
  void interpolationFindsTheMedianThatWasWithheld() {
    ours(InUnit.MILLIMETRE.of(beachSand(false).d50M())).isCloseTo(0.39, within(0.03 * 0.39));
  }

  /** By ASTM C136: the mass fractions retained on the sieves from 150 um to 150 mm, added. */
  private static double finenessModulus(StandardSand sand) {
    return DoubleStream.of(0.15, 0.3, 0.6, 1.18, 2.36, 4.75, 9.5, 19, 37.5, 75, 150)
        .map(millimetres -> 1 - sand.middle().fractionPassing(1e-3 * millimetres))
        .sum();
  }

  /**
   * ASTM C33 asks for a fineness modulus of 2.3 to 3.1 (read in a secondary source only). For
   * masonry sand there is no such demand; finer than concrete sand it must be.
   */
  @Test
  void finenessModulusOfConcreteSandLiesInTheBandOfTheStandard() {
    double concrete = finenessModulus(StandardSand.ASTM_C33_FINE_AGGREGATE);
    ours(concrete).isBetween(2.3, 3.1);
    double masonry = finenessModulus(StandardSand.ASTM_C144_NATURAL_MASONRY);
    assertThat(masonry).isLessThan(concrete);
  }

  /**
   * A fineness modulus worked by the rule of ASTM C136 (percentages retained on 150 um and upwards,
   * added, over 100), worked by hand on the middle of the C33 limits: 95 + 82.5 + 57.5 + 32.5 + 10
   * + 2.5 + 0 = 280.
   */
  @Test
  void finenessModulusIsTheSumOfPercentagesRetained() {
    ours(finenessModulus(StandardSand.ASTM_C33_FINE_AGGREGATE)).isCloseTo(2.80, within(1e-9));
  }

  /**
   * ASTM C33: not more than 45 % between successive sieves of the fineness modulus (read in a
   * secondary source only); the middle of its own limits must satisfy it.
   */
  @Test
  void noMoreThanTheAllowedShareLiesBetweenSuccessiveSieves() {
    List<StandardSand.Limit> limits = StandardSand.ASTM_C33_FINE_AGGREGATE.limits();
    Gradation sand = StandardSand.ASTM_C33_FINE_AGGREGATE.middle();
    for (int i = 1; i < limits.size(); i++) {
      double between =
          sand.fractionPassing(limits.get(i - 1).sizeM())
              - sand.fractionPassing(limits.get(i).sizeM());
      assertThat(between).isLessThanOrEqualTo(0.45);
    }
  }

  /**
   * A mixture from published quantities: 30 kg (65 lb) of sand a stall and day (Fulhage 2003, ASAE
   * paper, abstract read) and 68 kg of manure in 0.068 m3 a lactating cow and day (ASAE D384.2,
   * from memory, unverified), sand mineral 2650 kg/m3 (quartz, from memory). By hand: 30/2650 =
   * 0.01132 m3 of sand in 0.07932 m3 is 14.3 % by volume; 98 kg in it weigh 1235 kg/m3; 30.6 % by
   * mass. Tolerance: the last digit.
   */
  @Test
  void sandLadenManureOfACowAndDay() {
    double c = Proportions.volumeFractionInMixtureFlow(30, 0.068 + 30 / 2650.0, 2650);
    ours(c).isCloseTo(0.143, within(0.0005));
    ours(Proportions.mixtureDensityKgM3(c, 1000, 2650)).isCloseTo(1235, within(1.0));
    ours(Proportions.massFraction(c, 1000, 2650)).isCloseTo(0.306, within(0.0005));
  }

  /**
   * Thomas (1965), Journal of Colloid Science 20:267, as published, that is without the constant
   * subtracted: mu_r = 1 + 2.5 C + 10.05 C2 + 0.00273 exp(16.6 C), coefficients as in the mixture
   * viscosity model "slurry" of the general-purpose library OpenFOAM (read). Values worked from it.
   * The subtracted constant is 0.00273, hence the tolerance.
   */
  @ParameterizedTest
  @CsvSource({"0, 1.0027", "0.1, 1.3649", "0.2, 1.9775", "0.3, 3.0516", "0.4, 5.6967"})
  void relativeViscosityIsThatOfThomas(double volumeFraction, double published) {
    ours(new Thomas1965().relativeViscosity(volumeFraction).value())
        .isCloseTo(published, within(0.00273 + 0.00005));
  }
}
