package sandslurry.settling;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import sandslurry.correlation.Estimate;
import sandslurry.fact.step.Trace;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;
import sandslurry.material.sand.GrainShape;

class SettlingVelocityProperties {
  @Provide
  Arbitrary<SettlingVelocityModel> models() {
    return Arbitraries.of(SettlingVelocities.FAMILY.all());
  }

  private static double decades(double least, double share, double decades) {
    return least * Math.pow(10, share * decades);
  }

  @Property(tries = 2000)
  void everyModelGivesAPositiveVelocityFromClayToGravelInAnyLiquid(
      @ForAll("models") SettlingVelocityModel model,
      @ForAll @DoubleRange(min = 0, max = 1) double size,
      @ForAll @DoubleRange(min = 0, max = 1) double thickness,
      @ForAll @DoubleRange(min = 1250, max = 7900) double mineral,
      @ForAll @DoubleRange(min = 950, max = 1200) double liquid,
      @ForAll @DoubleRange(min = 0.02, max = 1) double corey,
      @ForAll @DoubleRange(min = 0, max = 6) double roundness,
      @ForAll @DoubleRange(min = 0.05, max = 1) double sphericity) {
    // 1 um to 20 mm, 0.3 mPa.s to 10 Pa.s
    Grain grain =
        new Grain(
            decades(1e-6, size, Math.log10(2e4)),
            mineral,
            new GrainShape(corey, roundness, sphericity));
    Liquid in = new Liquid(liquid, decades(3e-4, thickness, Math.log10(1e4 / 0.3)));
    Estimate estimate = model.velocityMps(grain, in);
    assertThat(estimate.value()).isFinite().isPositive();
  }

  @Property(tries = 2000)
  void aCreepingGrainFallsInALiquidHoweverThick(
      @ForAll("models") SettlingVelocityModel model,
      @ForAll @DoubleRange(min = 0, max = 1) double size,
      @ForAll @DoubleRange(min = 0, max = 1) double thickness) {
    // As a liquid of a small flow index is thick to a slow grain: 1 Pa.s to 1e12 Pa.s.
    Grain grain = new Grain(decades(1e-5, size, 3), 2650, GrainShape.NATURAL);
    Liquid liquid = new Liquid(1020, decades(1, thickness, 12));
    assertThat(model.velocityMps(grain, liquid).value()).isFinite().isNotNegative();
  }

  @Property(tries = 1000)
  void coarserGrainsFallFaster(
      @ForAll("models") SettlingVelocityModel model,
      @ForAll @DoubleRange(min = 0, max = 1) double size,
      @ForAll @DoubleRange(min = 0, max = 1) double thickness) {
    double diameter = decades(1e-6, size, 4.2);
    Liquid liquid = new Liquid(1010, decades(3e-4, thickness, 4.5));
    double fine = model.velocityMps(new Grain(diameter, 2650, GrainShape.NATURAL), liquid).value();
    double coarse =
        model.velocityMps(new Grain(diameter * 1.02, 2650, GrainShape.NATURAL), liquid).value();
    assertThat(coarse).isGreaterThan(fine);
  }

  @Property(tries = 1000)
  void denserGrainsFallFaster(
      @ForAll("models") SettlingVelocityModel model,
      @ForAll @DoubleRange(min = 0, max = 1) double size,
      @ForAll @DoubleRange(min = 0, max = 1) double thickness,
      @ForAll @DoubleRange(min = 1100, max = 5000) double density) {
    double diameter = decades(1e-6, size, 4.3);
    Liquid liquid = new Liquid(1010, decades(3e-4, thickness, 4.5));
    double light =
        model.velocityMps(new Grain(diameter, density, GrainShape.NATURAL), liquid).value();
    double heavy =
        model.velocityMps(new Grain(diameter, density + 20, GrainShape.NATURAL), liquid).value();
    assertThat(heavy).isGreaterThan(light);
  }

  /**
   * Up to 2 mm and from the viscosity of warm water on: a coarse grain in a thin liquid is in
   * Newton's regime, where measured drag rises slightly with the Reynolds number.
   */
  @Property(tries = 1000)
  void sandFallsSlowerInAThickerLiquid(
      @ForAll("models") SettlingVelocityModel model,
      @ForAll @DoubleRange(min = 0, max = 1) double size,
      @ForAll @DoubleRange(min = 0, max = 1) double thickness) {
    Grain grain = new Grain(decades(1e-6, size, Math.log10(1000)), 2650, GrainShape.NATURAL);
    double viscosity = decades(8e-4, thickness, 4);
    double thin = model.velocityMps(grain, new Liquid(1010, viscosity)).value();
    double thick = model.velocityMps(grain, new Liquid(1010, viscosity * 1.02)).value();
    assertThat(thick).isLessThan(thin);
  }

  /** Dietrich's polynomial itself tops the law of Stokes by under 1 % where D* is about 1. */
  @Property(tries = 1000)
  void noBallFallsFasterThanByTheLawOfStokes(
      @ForAll("models") SettlingVelocityModel model,
      @ForAll @DoubleRange(min = 0, max = 1) double size,
      @ForAll @DoubleRange(min = 0, max = 1) double thickness) {
    Grain grain = new Grain(decades(1e-6, size, 4.3), 2650, GrainShape.SPHERE);
    Liquid liquid = new Liquid(1010, decades(3e-4, thickness, 4.5));
    double stokes = new Stokes1851().velocityMps(grain, liquid).value();
    assertThat(model.velocityMps(grain, liquid).value()).isLessThanOrEqualTo(stokes * 1.01);
  }

  @Property(tries = 500)
  void solvedVelocityBalancesWeightAndDrag(
      @ForAll @DoubleRange(min = 0.3, max = 1) double sphericity,
      @ForAll @DoubleRange(min = 0, max = 1) double size,
      @ForAll @DoubleRange(min = 0, max = 1) double thickness) {
    DragLaw law = HaiderLevenspiel1989.dragLaw(sphericity);
    double d = decades(1e-6, size, 4.3);
    double viscosity = decades(3e-4, thickness, 4.5);
    double w =
        law.terminalVelocityMps(
            new Grain(d, 2650, GrainShape.NATURAL), new Liquid(1000, viscosity), Trace.NONE);
    double drag =
        law.dragCoefficient(1000 * w * d / viscosity) * Math.PI / 4 * d * d * 1000 * w * w / 2;
    double weight = Math.PI / 6 * d * d * d * 1650 * 9.80665;
    assertThat(drag / weight).isBetween(1 - 1e-10, 1 + 1e-10);
  }

  @Property(tries = 500)
  void ruleNeverGivesStokesAboveItsLimit(
      @ForAll @DoubleRange(min = 0, max = 1) double size,
      @ForAll @DoubleRange(min = 0, max = 1) double thickness) {
    Grain grain = new Grain(decades(1e-6, size, 4.3), 2650, GrainShape.NATURAL);
    Liquid liquid = new Liquid(1010, decades(3e-4, thickness, 4.5));
    SettlingVelocityModel model = SettlingVelocities.applicable(grain, liquid);
    assertThat(!(model instanceof Stokes1851) || model.velocityMps(grain, liquid).inRange())
        .isTrue();
  }
}
