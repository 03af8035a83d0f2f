package sandslurry.settling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import sandslurry.material.liquid.Bingham;
import sandslurry.material.liquid.HerschelBulkley;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.liquid.Newtonian;
import sandslurry.material.liquid.PowerLaw;
import sandslurry.material.sand.Grain;
import sandslurry.material.sand.GrainShape;
import sandslurry.settling.ShearSettling.Assumption;

class ShearSettlingProperties {
  private static final SettlingVelocityModel LAW = SettlingVelocities.DEFAULT;

  private static Grain quartz(double diameterM) {
    return new Grain(diameterM, 2650, GrainShape.NATURAL);
  }

  private static double sheared(
      Grain grain, sandslurry.material.liquid.Rheology liquid, double rate, Assumption assumption) {
    return ShearSettling.sheared(grain, liquid, 1020, rate, assumption, LAW).value();
  }

  @Property(tries = 100)
  void aNewtonianLiquidIsAsItWasAtRestAndSheared(
      @ForAll @Scale(6) @DoubleRange(min = 5e-5, max = 5e-3) double diameter,
      @ForAll @Scale(6) @DoubleRange(min = 5e-4, max = 1) double viscosity,
      @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 500) double rate) {
    Grain grain = quartz(diameter);
    double expected = LAW.velocityMps(grain, new Liquid(1020, viscosity)).value();
    Newtonian liquid = new Newtonian(viscosity);
    assertThat(ShearSettling.atRest(grain, liquid, 1020, LAW).value())
        .isCloseTo(expected, within(1e-9 * expected));
    for (Assumption assumption : Assumption.values()) {
      assertThat(sheared(grain, liquid, rate, assumption))
          .isCloseTo(expected, within(1e-9 * expected));
    }
    HerschelBulkley same = new HerschelBulkley(0, viscosity, 1);
    assertThat(ShearSettling.atRest(grain, same, 1020, LAW).value())
        .isCloseTo(expected, within(1e-9 * expected));
  }

  @Property(tries = 100)
  void theDesignValueLiesBetweenTheBoundsAndShearSpeedsTheFall(
      @ForAll @Scale(6) @DoubleRange(min = 1e-4, max = 3e-3) double diameter,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 20) double yield,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 6) double consistency,
      @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 0.99) double index,
      @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 200) double rate) {
    Grain grain = quartz(diameter);
    HerschelBulkley liquid = new HerschelBulkley(yield, consistency, index);
    double slowest = sheared(grain, liquid, rate, Assumption.SLOWEST);
    double design = sheared(grain, liquid, rate, Assumption.DESIGN);
    double fastest = sheared(grain, liquid, rate, Assumption.FASTEST);
    assertThat(design).isGreaterThanOrEqualTo(slowest * (1 - 1e-12)).isLessThan(fastest);
    assertThat(design).isPositive();
    assertThat(sheared(grain, liquid, 2 * rate, Assumption.DESIGN)).isGreaterThan(design);
    assertThat(slowest).isGreaterThan(ShearSettling.atRest(grain, liquid, 1020, LAW).value());
  }

  @Property(tries = 100)
  void stokesFallInAPowerLawLiquidIsTheClosedForm(
      @ForAll @Scale(6) @DoubleRange(min = 0.4, max = 1) double index) {
    double d = 1e-4;
    double consistency = 5;
    double weight = 9.80665 * (2650 - 1020) * d;
    double expected = d * Math.pow(weight / (18 * consistency), 1 / index);
    assertThat(ShearSettling.atRest(quartz(d), new PowerLaw(consistency, index), 1020, LAW).value())
        .isCloseTo(expected, within(1e-4 * expected));
  }

  @Example
  void aYieldStressHoldsAtRestAndNotUnderShear() {
    Grain grain = quartz(1e-3);
    double weight = 9.80665 * (2650 - 1020) * 1e-3;
    Bingham holds = new Bingham(weight / 18 * 1.001, 0.05);
    Bingham letsGo = new Bingham(weight / 18 * 0.999, 0.05);
    assertThat(ShearSettling.atRest(grain, holds, 1020, LAW).value()).isZero();
    assertThat(ShearSettling.atRest(grain, letsGo, 1020, LAW).value()).isPositive();
    assertThat(sheared(grain, holds, 20, Assumption.SLOWEST)).isPositive();
    assertThat(1.0 / 18).isBetween(0.04, StaticSuspension.GREATEST_CONSTANT);
  }

  @Property(tries = 50)
  void aCrowdFallsSlower(@ForAll @Scale(6) @DoubleRange(min = 0.01, max = 0.4) double fraction) {
    Grain grain = quartz(5e-4);
    PowerLaw liquid = new PowerLaw(0.5, 0.5);
    double alone = sheared(grain, liquid, 10, Assumption.DESIGN);
    double crowd =
        ShearSettling.shearedHindered(
                grain, liquid, 1020, 10, fraction, Assumption.DESIGN, LAW, new Rowe1987())
            .value();
    // In creeping flow the exponent is close to 4.7.
    assertThat(crowd).isCloseTo(alone * Math.pow(1 - fraction, 4.7), within(0.02 * alone));
    assertThat(crowd).isLessThan(alone);
  }
}
