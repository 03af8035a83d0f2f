package sandslurry.settling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import sandslurry.correlation.Correlation;
import sandslurry.correlation.Estimate;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;
import sandslurry.material.sand.GrainShape;

class SettlingVelocitiesTest {
  private static final Liquid WATER = new Liquid(998.2, 1.0016e-3);

  static List<SettlingVelocityModel> models() {
    return SettlingVelocities.FAMILY.all();
  }

  private static Grain quartz(double diameterM) {
    return new Grain(diameterM, 2650, GrainShape.NATURAL);
  }

  private static Grain bead(double diameterM) {
    return new Grain(diameterM, 2650, GrainShape.SPHERE);
  }

  private static double mps(SettlingVelocityModel model, Grain grain, Liquid liquid) {
    return model.velocityMps(grain, liquid).value();
  }

  @Test
  void defaultComesFirstInTheCatalogue() {
    assertThat(SettlingVelocities.FAMILY.all().get(0)).isSameAs(SettlingVelocities.DEFAULT);
  }

  @Test
  void everyKeyFindsItsModelAndNoTwoAreAlike() {
    assertThat(SettlingVelocities.FAMILY.all()).extracting(Correlation::id).doesNotHaveDuplicates();
    assertThat(SettlingVelocities.FAMILY.all())
        .allSatisfy(
            model ->
                assertThat(SettlingVelocities.FAMILY.find(model.id()).orElseThrow())
                    .isSameAs(model));
  }

  @Test
  void unknownKeyFindsNothing() {
    assertThat(SettlingVelocities.FAMILY.find("nobody-1900")).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("models")
  void everyModelTellsItsNameEquationSourceAndRange(SettlingVelocityModel model) {
    assertThat(model.name()).isNotBlank();
    assertThat(model.about().equation()).contains("=");
    assertThat(model.citation().authors()).isNotBlank();
    assertThat(model.id()).endsWith(Integer.toString(model.citation().year()));
    assertThat(model.about().bounds()).isNotEmpty();
  }

  @ParameterizedTest
  @MethodSource("models")
  void grainThatFloatsIsRefused(SettlingVelocityModel model) {
    assertThatThrownBy(() -> model.velocityMps(new Grain(1e-3, 900, GrainShape.NATURAL), WATER))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("900");
  }

  @ParameterizedTest
  @MethodSource("models")
  void sphereInSyrupFallsByTheLawOfStokesUpToTheConstantOfTheModel(SettlingVelocityModel model) {
    // Creeping flow: w = R g d² / (k ν). Sphere laws have k = 18; Cheng joins C_D = 32.1/Re, so
    // k = 24.06; Soulsby has 2 · 10.36 / 1.049 = 19.75; Dietrich's polynomial is 4.6 % below
    // Stokes' law at D* = 0.05, so k = 18.87.
    double constant =
        switch (model.id()) {
          case "cheng-1997" -> 24.06;
          case "soulsby-1997" -> 19.75;
          case "dietrich-1982" -> 18.87;
          default -> 18;
        };
    Liquid syrup = new Liquid(1300, 10);
    double expected = (2650.0 / 1300 - 1) * 9.80665 * 1e-8 / (constant * 10 / 1300);
    assertThat(mps(model, bead(1e-4), syrup)).isCloseTo(expected, withinPercentage(0.1));
  }

  @ParameterizedTest
  @CsvSource({
    // drag coefficients that the formulas tend to: 1.0; 4/3 / 1.2^1.5; 4/3 / 1.049; 0.44
    "ferguson-church-2004, 1.0",
    "cheng-1997,           1.0143",
    "soulsby-1997,         1.2711",
    "schiller-naumann-1933, 0.44",
  })
  void coarseStoneFallsWithTheDragCoefficientOfNewtonsRegime(String id, double drag) {
    Liquid thin = new Liquid(1000, 1e-9);
    double expected = Math.sqrt(4 * 9.80665 * 1.65 * 0.02 / (3 * drag));
    assertThat(mps(SettlingVelocities.FAMILY.find(id).orElseThrow(), quartz(0.02), thin))
        .isCloseTo(expected, withinPercentage(0.1));
  }

  @Test
  void dragCoefficientAndReynoldsNumberBelongToTheDefaultVelocity() {
    Grain grain = quartz(5e-4);
    double w = mps(SettlingVelocities.DEFAULT, grain, WATER);
    double buoyancy = 2650 / 998.2 - 1;
    assertThat(SettlingVelocities.reynoldsNumber(grain, WATER))
        .isCloseTo(w * 5e-4 / (1.0016e-3 / 998.2), withinPercentage(1e-9));
    assertThat(SettlingVelocities.dragCoefficient(grain, WATER))
        .isCloseTo(4.0 / 3 * 9.80665 * 5e-4 * buoyancy / (w * w), withinPercentage(1e-9));
  }

  @ParameterizedTest
  @ValueSource(doubles = {1e-4, 1.5e-4, 2e-4, 3e-4, 5e-4, 7e-4, 1e-3, 1.5e-3, 2e-3})
  void formulasOfNaturalSandAgreeWithinTheirKnownSpread(double diameterM) {
    // The scatter of the formulas themselves in water at 20 °C: Dietrich within 7 % of the default
    // (both are fits of natural grains), Soulsby within 14 %, Cheng 8 to 20 % slower.
    double w = mps(SettlingVelocities.DEFAULT, quartz(diameterM), WATER);
    assertThat(mps(new Dietrich1982(), quartz(diameterM), WATER)).isCloseTo(w, withinPercentage(7));
    assertThat(mps(new Soulsby1997(), quartz(diameterM), WATER)).isCloseTo(w, withinPercentage(14));
    assertThat(mps(new Cheng1997(), quartz(diameterM), WATER) / w).isBetween(0.80, 0.93);
    assertThat(mps(new HaiderLevenspiel1989(), quartz(diameterM), WATER))
        .isCloseTo(w, withinPercentage(16));
  }

  @ParameterizedTest
  @ValueSource(doubles = {1e-5, 1e-4, 3e-4, 1e-3})
  void sphereLawsAgreeBelowTheLimitOfTheReference(double diameterM) {
    double reference = mps(new SchillerNaumann1933(), bead(diameterM), WATER);
    assertThat(mps(new TurtonLevenspiel1986(), bead(diameterM), WATER))
        .isCloseTo(reference, withinPercentage(2.5));
    assertThat(mps(new HaiderLevenspiel1989(), bead(diameterM), WATER))
        .isCloseTo(reference, withinPercentage(3));
  }

  @Test
  void schillerNaumannHasNoStepWhereItTurnsConstant() {
    SchillerNaumann1933 law = new SchillerNaumann1933();
    double before = law.dragCoefficient(900);
    double step = 1e-3;
    for (double re = 900; re < 1100; re += 0.1) {
      double after = law.dragCoefficient(re);
      assertThat(after).isCloseTo(before, within(step));
      before = after;
    }
    assertThat(law.dragCoefficient(2e3)).isEqualTo(0.44);
  }

  @Test
  void grainsFallSlowerTheLessSphericalTheyAre() {
    HaiderLevenspiel1989 model = new HaiderLevenspiel1989();
    double round = mps(model, new Grain(1e-3, 2650, new GrainShape(1, 6, 0.95)), WATER);
    double worn = mps(model, new Grain(1e-3, 2650, new GrainShape(1, 6, 0.8)), WATER);
    double angular = mps(model, new Grain(1e-3, 2650, new GrainShape(1, 6, 0.67)), WATER);
    assertThat(round).isGreaterThan(worn);
    assertThat(worn).isGreaterThan(angular);
  }

  @Test
  void lineOfSpheresIsNotTheGeneralLineAtSphericityOne() {
    // by hand at Re = 100: 1.0947 on the line of spheres, 1.1498 on the general line
    double sphere = HaiderLevenspiel1989.dragLaw(1).dragCoefficient(100);
    double almost = HaiderLevenspiel1989.dragLaw(1 - 1e-12).dragCoefficient(100);
    assertThat(sphere).isCloseTo(1.0947, within(5e-5));
    assertThat(almost).isCloseTo(1.1498, within(5e-5));
  }

  @Test
  void coarseGrainsFallSlowerTheFlatterAndTheMoreAngularTheyAre() {
    Dietrich1982 model = new Dietrich1982();
    // roundness at one sieve size; flatness at one nominal diameter, so that the weight is equal
    double round = mps(model, new Grain(2e-3, 2650, new GrainShape(0.7, 6, 0.8)), WATER);
    double worn = mps(model, new Grain(2e-3, 2650, new GrainShape(0.7, 3.5, 0.8)), WATER);
    double angular = mps(model, new Grain(2e-3, 2650, new GrainShape(0.7, 1, 0.8)), WATER);
    assertThat(round).isGreaterThan(worn);
    assertThat(worn).isGreaterThan(angular);

    double compact = mps(model, nominal(2e-3, 0.9), WATER);
    double flat = mps(model, nominal(2e-3, 0.5), WATER);
    assertThat(compact).isGreaterThan(flat);
  }

  private static Grain nominal(double nominalM, double corey) {
    double sieve = nominalM * Math.sqrt((1 + Math.pow(corey, 4.0 / 3)) / 2);
    return new Grain(sieve, 2650, new GrainShape(corey, 3.5, 0.8));
  }

  @Test
  void nominalDiameterOfASphereIsItsSieveSize() {
    assertThat(NominalDiameter.grain(bead(1e-3)).diameterM()).isCloseTo(1e-3, within(1e-15));
  }

  @Test
  void sieveSizeOfNaturalSandIsNineTenthsOfItsNominalDiameter() {
    double nominal = NominalDiameter.grain(quartz(1e-3)).diameterM();
    assertThat(1e-3 / nominal).isCloseTo(0.9, within(0.001));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.05, 5e9})
  void dietrichIsContinuousWhereItsPublishedRangeEnds(double size) {
    Dietrich1982 model = new Dietrich1982();
    double viscosityM2ps = 1e-6;
    double diameter = Math.cbrt(size * viscosityM2ps * viscosityM2ps / (1.65 * 9.80665));
    Liquid liquid = new Liquid(1000, 1000 * viscosityM2ps);
    Estimate below = model.velocityMps(bead(diameter * (1 - 1e-9)), liquid);
    Estimate above = model.velocityMps(bead(diameter * (1 + 1e-9)), liquid);
    assertThat(above.value()).isCloseTo(below.value(), withinPercentage(1e-5));
    assertThat(below.inRange()).isNotEqualTo(above.inRange());
  }

  /** Beyond D* = 5e9 four times the width is twice the fall; below 0.05 half of it a quarter. */
  @Test
  void beyondDietrichAConstantDragAndStokesTakeOver() {
    Dietrich1982 model = new Dietrich1982();
    double per = 1e-12 / (1.65 * 9.80665);
    double coarse = 1.01 * Math.cbrt(5e9 * per);
    assertThat(mps(model, bead(4 * coarse), new Liquid(1000, 1e-3)))
        .isCloseTo(2 * mps(model, bead(coarse), new Liquid(1000, 1e-3)), withinPercentage(1e-9));
    double fine = 0.99 * Math.cbrt(0.05 * per);
    assertThat(mps(model, bead(fine / 2), new Liquid(1000, 1e-3)))
        .isCloseTo(mps(model, bead(fine), new Liquid(1000, 1e-3)) / 4, withinPercentage(1e-9));
  }

  @Test
  void aFlakeFlatterThanAFifthFallsAsOneOfAFifth() {
    Dietrich1982 model = new Dietrich1982();
    assertThat(mps(model, nominal(1e-3, 0.1), WATER))
        .isCloseTo(mps(model, nominal(1e-3, 0.2), WATER), withinPercentage(1e-9));
    assertThat(model.velocityMps(nominal(1e-3, 0.2), WATER).inRange()).isTrue();
    assertThat(model.velocityMps(nominal(1e-3, 0.199), WATER).inRange()).isFalse();
  }

  @Test
  void flakeThatDietrichHasNoValueForIsReportedAndFinite() {
    Grain flake = new Grain(1e-3, 2650, new GrainShape(0.1, 1, 0.3));
    Estimate estimate = new Dietrich1982().velocityMps(flake, WATER);
    assertThat(estimate.excesses())
        .singleElement()
        .satisfies(excess -> assertThat(excess.bound().what()).isEqualTo("Corey shape factor"));
  }

  @Test
  void stokesReportsSandOutsideItsRange() {
    assertThat(new Stokes1851().velocityMps(quartz(3e-5), WATER).inRange()).isTrue();
    assertThat(new Stokes1851().velocityMps(quartz(1e-4), WATER).inRange()).isFalse();
  }

  @Test
  void sphereLawsReportGrainsThatAreNoSpheres() {
    for (SettlingVelocityModel law :
        List.of(new SchillerNaumann1933(), new TurtonLevenspiel1986())) {
      assertThat(law.velocityMps(bead(2e-4), WATER).inRange()).isTrue();
      assertThat(law.velocityMps(quartz(2e-4), WATER).inRange()).isFalse();
    }
  }

  @Test
  void ruleGivesTheDefaultForSandInWaterAndInThickManure() {
    assertThat(SettlingVelocities.applicable(quartz(2e-4), WATER))
        .isSameAs(SettlingVelocities.DEFAULT);
    assertThat(SettlingVelocities.applicable(quartz(1e-3), new Liquid(1020, 1)))
        .isSameAs(SettlingVelocities.DEFAULT);
  }

  @Test
  void ruleGivesStokesOnlyBelowTheSizesOfTheDefault() {
    assertThat(SettlingVelocities.applicable(quartz(2e-6), WATER)).isInstanceOf(Stokes1851.class);
    assertThat(SettlingVelocities.applicable(quartz(1.01e-5), WATER))
        .isSameAs(SettlingVelocities.DEFAULT);
  }

  @Test
  void ruleGivesDietrichForStones() {
    assertThat(SettlingVelocities.applicable(quartz(0.015), WATER))
        .isInstanceOf(Dietrich1982.class);
  }

  @Test
  void ruleGivesTheSphereLawForGlassBeads() {
    assertThat(SettlingVelocities.applicable(bead(3e-4), WATER))
        .isInstanceOf(TurtonLevenspiel1986.class);
  }

  @Test
  void velocityBarelyChangesWhereTheRuleChangesFromStokesToTheDefault() {
    double stokes = mps(new Stokes1851(), quartz(1e-5), WATER);
    assertThat(mps(SettlingVelocities.DEFAULT, quartz(1e-5), WATER))
        .isCloseTo(stokes, withinPercentage(2));
  }
}
