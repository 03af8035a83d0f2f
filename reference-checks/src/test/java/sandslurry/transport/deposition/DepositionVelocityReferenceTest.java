package sandslurry.transport.deposition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;
import static sandslurry.outside.Ours.ours;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import sandslurry.material.Slurry;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.GrainShape;
import sandslurry.numeric.Roots;
import sandslurry.pipe.Bore;
import sandslurry.settling.SettlingVelocities;
import sandslurry.transport.friction.PipeFriction;

class DepositionVelocityReferenceTest {
  // Water at 20 degC and 101.325 kPa: IAPWS-95 and IAPWS R12-08, 998.207 kg/m3 and 1.0016 mPa.s.
  private static final Liquid WATER = new Liquid(998.207, 1.0016e-3);

  private static Slurry sand(Liquid liquid, double density, double sizeMm, double fraction) {
    double size = sizeMm / 1000;
    return new Slurry(liquid, density, GrainShape.NATURAL, size, size, fraction);
  }

  private static Slurry quartz(double sizeMm, double fraction) {
    return sand(WATER, 2650, sizeMm, fraction);
  }

  private static Bore steel(double diameterM) {
    return new Bore(diameterM, 4.5e-5);
  }

  private static double value(DepositionVelocityModel model, Slurry slurry, double diameterM) {
    return model.velocityMps(slurry, steel(diameterM)).value();
  }

  // Miedema, Slurry Transport, section 10.2: V = F_L sqrt(2 g R D); for D = 0.762 m and R = 1.585
  // with g = 9.81 m/s2 the root is 4.87 m/s. Tolerance: three printed digits.
  @Test
  void durandsRootIsThatOfMiedemasExample() {
    Slurry slurry = sand(new Liquid(1000, 1e-3), 2585, 1, 0.1);
    ours(value(DurandPlateau.FRENCH, slurry, 0.762) / 1.05).isCloseTo(4.87, withPercentage(0.1));
    ours(value(DurandPlateau.ENGLISH, slurry, 0.762) / 1.34).isCloseTo(4.87, withPercentage(0.1));
  }

  // Secondary summaries of slurry correlations, after Miedema: the English print of 1953 predicts
  // a deposition velocity "about 1.3 times" that of the French article. Tolerance: two digits.
  @Test
  void theEnglishPlateauIsAboutOnePointThreeTimesTheFrench() {
    ours(value(DurandPlateau.ENGLISH, quartz(1, 0.1), 0.15)
            / value(DurandPlateau.FRENCH, quartz(1, 0.1), 0.15))
        .isCloseTo(1.3, withPercentage(4));
  }

  // That the closed form of Schiller and Herbich (1991) returns the French plateau for coarse sand
  // at 10 to 20 % is from memory, unverified. Tolerance: the curves of the chart spread by 10 %.
  @ParameterizedTest
  @CsvSource({"0.10", "0.15", "0.20"})
  void theCurveOfSchillerAndHerbichReachesTheFrenchPlateau(double fraction) {
    Slurry coarse = quartz(2, fraction);
    ours(value(new Durand1953(), coarse, 0.15))
        .isCloseTo(value(DurandPlateau.FRENCH, coarse, 0.15), withPercentage(8));
  }

  // The regression of Oroskar and Turian (1980) as printed in Poloski et al. (2009), PNNL-17639
  // (WTP-RPT-175), seen as quoted in an open function of general use: exponent 0.3567 of 1 - C,
  // chi 1, g 9.81. Evaluated outside this project. Our chi of 0.96 lowers the value by 0.96^0.3.
  // Tolerance: its g.
  @ParameterizedTest
  @CsvSource({
    "0.1023, 0.2, 2650, 0.05, 1000, 0.001, 1.5041",
    "0.1541, 0.3, 2650, 0.10, 1000, 0.001, 2.1272",
    "0.1541, 0.5, 2650, 0.02, 1000, 0.001, 1.8650",
    "0.2027, 0.5, 2650, 0.15, 1000, 0.001, 2.7464",
    "0.1541, 0.3, 2652, 0.10, 1020, 0.005, 1.8130",
    "0.0779, 0.2, 2625, 0.10, 1050, 0.010, 1.1197"
  })
  void oroskarAndTurianAgreesWithThePrintOfPnnl(
      double bore,
      double sizeMm,
      double density,
      double fraction,
      double liquidDensity,
      double viscosity,
      double printed) {
    Slurry slurry = sand(new Liquid(liquidDensity, viscosity), density, sizeMm, fraction);
    ours(value(new OroskarTurian1980Regression(), slurry, bore))
        .isCloseTo(printed * Math.pow(0.96, 0.3), withPercentage(0.1));
  }

  // A handbook chapter on slurry pumps says of Thomas (1979) that the factor 9.0 holds in any
  // consistent system of units. Evaluated outside this project in feet and seconds with g = 32.174
  // ft/s2, answer in ft/s. Tolerance: digits.
  @ParameterizedTest
  @CsvSource({
    "0.15408, 1.0034e-6, 2650, 1.8561",
    "0.10226, 1.3e-6, 2650, 1.8978",
    "0.3048, 5e-6, 2500, 2.9324"
  })
  void thomasGivesTheSameInFeet(double bore, double nu, double density, double feetPerSecond) {
    Slurry slurry = sand(new Liquid(1000, nu * 1000), density, 0.05, 0.1);
    ours(value(new Thomas1979(), slurry, bore))
        .isCloseTo(feetPerSecond * 0.3048, withPercentage(0.05));
  }

  // Wilson, Addie, Sellgren and Clift, Slurry Transport Using Centrifugal Pumps, 2nd edition,
  // example 5.1, p. 112, and case study 5.1, p. 117, as quoted in the tests of R. Ramsdell's open
  // implementation of Miedema, Slurry Transport (read there). The nomograph: 1 mm in a 0.5 m pipe,
  // then 0.7 mm. Tolerance: 2.5 % of a reading, by which the fit itself parts from it.
  @ParameterizedTest
  @CsvSource({
    "0.50, 1.0, 2650, 5.0",
    "0.50, 1.0, 1400, 2.3",
    "0.55, 0.7, 2650, 5.4",
    "0.60, 0.7, 2650, 5.8",
    "0.65, 0.7, 2650, 6.1"
  })
  void wilsonsNomographAsItsAuthorsReadIt(double bore, double sizeMm, double density, double read) {
    ours(value(new Wilson1986Fit(), sand(WATER, density, sizeMm, 0.2), bore))
        .isCloseTo(read, withPercentage(2.5));
  }

  // The same case study: the bound (0.018/f)^0.13 sqrt(2 g D (s - 1)) at f = 0.012. Ours finds f
  // itself, 0.0115 to 0.0120 here, which is the tolerance of 1 %.
  @ParameterizedTest
  @CsvSource({"0.55, 4.45", "0.60, 4.65", "0.65, 4.84"})
  void wilsonsBoundOfCaseStudyFiveOne(double bore, double printed) {
    ours(value(new WilsonBounded(), quartz(0.7, 0.2), bore)).isCloseTo(printed, withPercentage(1));
  }

  // Example 5.1 (b): grains of 1 mm and 1400 kg/m3 in a 0.5 m pipe deposit most readily at 0.15 of
  // the concentration of a packed bed. Ours is all of the greatest velocity from there on and less
  // below. Tolerance: half a unit of the printed digit either way.
  @Test
  void theWorstConcentrationOfExampleFiveOne() {
    double most = value(new WilsonConcentration2006(), sand(WATER, 1400, 1, 0.3), 0.5);
    double worst =
        Roots.between(
            "worst concentration",
            c ->
                value(new WilsonConcentration2006(), sand(WATER, 1400, 1, 0.6 * c), 0.5) / most
                    - (1 - 1e-9),
            0.05,
            0.3);
    ours(worst).isBetween(0.145, 0.155);
  }

  // Thomas (1979) in two forms: 9.0 [g nu (s-1)]^0.37 (D/nu)^0.11 and u* = 1.1 [g nu (s-1)]^(1/3)
  // in a smooth pipe; the second from memory, unverified. They were found apart, so that they agree
  // supports both. Tolerance: the power law in D stands for the friction law of a smooth pipe.
  @ParameterizedTest
  @CsvSource({"0.05", "0.1", "0.15", "0.3", "0.5"})
  void theTwoFormsOfThomasAgree(double bore) {
    Slurry fines = quartz(0.05, 0.1);
    double shear = Thomas1979.shearVelocityMps(fines);
    double nu = fines.liquid().kinematicViscosityM2ps();
    double smooth =
        Roots.between(
            "velocity at the shear velocity of Thomas",
            v -> v * Math.sqrt(PipeFriction.darcyFactor(v * bore / nu, 0) / 8) - shear,
            shear,
            1e3 * shear);
    ours(smooth).isCloseTo(value(new Thomas1979(), fines, bore), withPercentage(4));
  }

  // Miedema, Slurry Transport, section 8.11, prints 1.4 (nu R g)^(1/3) for the shear velocity at
  // the same limit: 27 % above Thomas. A note of disagreement in print, not of truth. Tolerance:
  // digits.
  @Test
  void thomasLiesBelowMiedemasPrintOfTheLimit() {
    Slurry fines = quartz(0.05, 0.1);
    double nu = WATER.kinematicViscosityM2ps();
    double printed = 1.4 * Math.cbrt(nu * (fines.densityRatio() - 1) * 9.81);
    ours(printed / Thomas1979.shearVelocityMps(fines)).isCloseTo(1.27, withPercentage(1));
  }

  // The fit to Wilson's nomograph as printed by Miedema, Slurry Transport, eq. 6.20-34, evaluated
  // outside this project.
  @ParameterizedTest
  @CsvSource({"0.15, 0.45, 2650, 2.4891", "0.3, 0.2, 2650, 2.5940", "0.2, 2, 2400, 2.1719"})
  void wilsonsFitIsAsPrinted(double bore, double sizeMm, double density, double printed) {
    Slurry slurry = sand(new Liquid(1000, 1e-3), density, sizeMm, 0.1);
    ours(value(new Wilson1986Fit(), slurry, bore)).isCloseTo(printed, withPercentage(0.01));
  }

  // (0.018/f)^0.13 with f by Colebrook, iterated outside this project to convergence. Tolerance:
  // Churchill's f differs from Colebrook's by up to 1 %, to the power of 0.13.
  @ParameterizedTest
  @CsvSource({
    "0.10226, 4.5e-5, 1.8107",
    "0.15408, 4.5e-5, 2.2549",
    "0.2, 1.5e-6, 2.6503",
    "0.3, 1e-4, 3.1643"
  })
  void wilsonsBoundAgreesWithColebrook(double bore, double roughness, double expected) {
    Slurry slurry = sand(new Liquid(1000, 1.0034e-3), 2650, 0.5, 0.1);
    ours(WilsonBounded.upperBoundMps(slurry, new Bore(bore, roughness)))
        .isCloseTo(expected, withPercentage(0.3));
  }

  // Two correlations of one laboratory, ten years of data apart: Gillies et al. (2000), Can. J.
  // Chem. Eng. 78:704, and Shook, Gillies and Sanders (2002). Both from memory, unverified; that
  // they agree over a decade of size, with different groups and exponents, supports both.
  // Tolerance: the most that they differ by.
  @ParameterizedTest
  @CsvSource({"0.2", "0.3", "0.5", "1", "2"})
  void theTwoCorrelationsOfSaskatchewanAgree(double sizeMm) {
    Slurry slurry = quartz(sizeMm, 0.1);
    ours(value(new Gillies2000(), slurry, 0.15408))
        .isCloseTo(value(new GilliesShook(), slurry, 0.15408), withPercentage(7));
  }

  // Turian and Yuan (1977), AIChE J. 23:232: stationary bed gives way to saltation where
  // V^2 = 31.93 C^1.083 f^1.064 C_D^-0.0616 g D (s - 1), C in per cent, f the Fanning factor of the
  // carrier; from memory, unverified, but the constants follow from the friction laws of the two
  // regimes. The critical velocity of Oroskar and Turian ends full suspension, so it must be
  // higher;
  // tolerance: errors of about 30 % are stated for either.
  @ParameterizedTest
  @CsvSource({
    "0.3, 0.10226", "0.3, 0.15408", "0.3, 0.20274",
    "0.5, 0.10226", "0.5, 0.15408", "0.5, 0.20274",
    "1.0, 0.10226", "1.0, 0.15408", "1.0, 0.20274"
  })
  void suspensionEndsAboveTheStationaryBedOfTurianAndYuan(double sizeMm, double bore) {
    Slurry slurry = quartz(sizeMm, 0.1);
    double drag = SettlingVelocities.dragCoefficient(slurry.d50Grain(), WATER);
    double v = 2;
    for (int i = 0; i < 100; i++) {
      double reynolds = v * bore / WATER.kinematicViscosityM2ps();
      double fanning = PipeFriction.darcyFactor(reynolds, 4.5e-5 / bore) / 4;
      double square = 31.93 * Math.pow(10, 1.083) * Math.pow(fanning, 1.064);
      square *= Math.pow(drag, -0.0616) * 9.80665 * bore * (slurry.densityRatio() - 1);
      v = Math.sqrt(square);
    }
    ours(value(new OroskarTurian1980Regression(), slurry, bore) / v).isBetween(1.0, 1.6);
    ours(value(new GilliesShook(), slurry, bore) / v).isBetween(1.0, 1.6);
  }

  static Stream<Object[]> sideBySide() {
    return Stream.of(
        new Object[] {new Durand1953(), 1.905},
        new Object[] {DurandPlateau.FRENCH, 2.348},
        new Object[] {DurandPlateau.ENGLISH, 2.997},
        new Object[] {new Wasp1977(), 1.605},
        new Object[] {new OroskarTurian1980Analytic(), 1.833},
        new Object[] {new OroskarTurian1980Regression(), 2.104},
        new Object[] {new TurianHsuMa1987(), 2.059},
        new Object[] {new ZandiGovatos1967(), 2.238},
        new Object[] {new Thomas1979(), 0.566},
        new Object[] {new Wilson1986Fit(), 2.418},
        new Object[] {new WilsonBounded(), 2.258},
        new Object[] {new WilsonJudge1978(), 2.251},
        new Object[] {new GilliesShook(), 2.494},
        new Object[] {new Gillies2000(), 2.550});
  }

  // The correlations side by side for 0.3 mm quartz at 10 % in a 6-inch schedule 40 pipe with water
  // at 20 degC, worked out in a separate script from the same equations: this tests that the code
  // says what the equations say, not that the equations are true. Tolerance: their four digits.
  @ParameterizedTest
  @MethodSource("sideBySide")
  void agreesWithHandCalculation(DepositionVelocityModel model, double expected) {
    ours(value(model, quartz(0.3, 0.1), 0.15408)).isCloseTo(expected, withPercentage(0.1));
  }

  // Wilson and Tse (1984): the increase of the deposition velocity is about 50 % at most, near 30
  // to
  // 35 degrees upward; from memory, unverified. Independent check: in the force balance of a
  // sliding
  // bed a slope multiplies the driving shear by cos + sin/mu, mu = 0.4, so V by the root of it; the
  // Durand number of the level pipe is taken as 0.75, that of coarse sand in small pipe.
  @ParameterizedTest
  @CsvSource({"0", "5", "10", "20", "30", "35"})
  void theSlopeIncrementFollowsTheForceBalance(double degrees) {
    double angle = Math.toRadians(degrees);
    double shear = Math.cos(angle) + Math.sin(angle) / 0.4;
    double balance = 0.75 * (Math.sqrt(shear) - 1);
    double increment = new WilsonTse1984().durandIncrement(angle).value();
    ours(increment).isBetween(balance - 0.03, balance + 0.03);
    assertThat(increment / 0.75).isLessThanOrEqualTo(0.5);
  }
}
