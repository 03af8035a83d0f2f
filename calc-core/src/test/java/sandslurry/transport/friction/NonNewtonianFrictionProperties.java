package sandslurry.transport.friction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import sandslurry.material.liquid.Bingham;
import sandslurry.material.liquid.HerschelBulkley;
import sandslurry.material.liquid.Newtonian;
import sandslurry.material.liquid.PowerLaw;
import sandslurry.material.liquid.Rheology;
import sandslurry.pipe.Bore;

class NonNewtonianFrictionProperties {
  @Property(tries = 300)
  void indexOneWithoutYieldStressIsTheNewtonianCurve(
      @ForAll @Scale(6) @DoubleRange(min = 1e-4, max = 1) double viscosity,
      @ForAll @Scale(6) @DoubleRange(min = 1e-4, max = 8) double velocity,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.02) double relativeRoughness) {
    double diameter = 0.15;
    Bore bore = new Bore(diameter, relativeRoughness * diameter);
    double expected =
        PipeFriction.darcyFactor(1000 * velocity * diameter / viscosity, relativeRoughness)
            * 1000
            * velocity
            * velocity
            / 8;
    for (Rheology liquid :
        List.of(
            new Newtonian(viscosity),
            new PowerLaw(viscosity, 1),
            new Bingham(0, viscosity),
            new HerschelBulkley(0, viscosity, 1))) {
      assertThat(new NonNewtonianFriction(liquid, 1000, bore).at(velocity).wallStressPa())
          .isCloseTo(expected, within(1e-9 * expected));
    }
  }

  @Property(tries = 60)
  void pressureRisesSteadilyAndWithoutJumpsWithTheFlow(
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 20) double yield,
      @ForAll @Scale(6) @DoubleRange(min = 1e-3, max = 6) double consistency,
      @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 1.2) double index,
      @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 0.4) double diameter,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.01) double relativeRoughness) {
    NonNewtonianFriction pipe =
        new NonNewtonianFriction(
            new HerschelBulkley(yield, consistency, index),
            1020,
            new Bore(diameter, relativeRoughness * diameter));
    double before = pipe.at(0).wallStressPa();
    assertThat(before).isEqualTo(yield);
    for (double v = 1e-4; v < 20; v *= 1.03) {
      NonNewtonianFriction.Friction friction = pipe.at(v);
      assertThat(friction.wallStressPa()).isGreaterThan(before);
      if (v > 1e-4) {
        // A step of 3 % in velocity: water in the transition rises as the 4th power at most.
        assertThat(friction.wallStressPa()).isLessThan(before * Math.pow(1.03, 5));
      }
      before = friction.wallStressPa();
    }
  }

  @Property(tries = 60)
  void aVanishingYieldStressLeavesThePowerLaw(
      @ForAll @Scale(6) @DoubleRange(min = 1e-3, max = 3) double consistency,
      @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 1) double index,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 6) double velocity) {
    Bore bore = new Bore(0.15, 1e-4);
    double power =
        new NonNewtonianFriction(new PowerLaw(consistency, index), 1010, bore)
            .at(velocity)
            .wallStressPa();
    double tiny =
        new NonNewtonianFriction(new HerschelBulkley(1e-13, consistency, index), 1010, bore)
            .at(velocity)
            .wallStressPa();
    assertThat(tiny).isCloseTo(power, within(1e-8 * power));
  }

  @Property(tries = 60)
  void regimesFollowEachOtherAndTurbulenceLosesAtLeastTheLaminarStress(
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 20) double yield,
      @ForAll @Scale(6) @DoubleRange(min = 1e-3, max = 6) double consistency,
      @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 1) double index) {
    NonNewtonianFriction pipe =
        new NonNewtonianFriction(
            new HerschelBulkley(yield, consistency, index), 1020, new Bore(0.15, 0));
    assertThat(pipe.turbulentAboveMps()).isGreaterThan(pipe.laminarBelowMps());
    assertThat(pipe.at(pipe.laminarBelowMps() * 0.99).regime())
        .isEqualTo(ClearLiquid.Regime.LAMINAR);
    assertThat(pipe.at(pipe.laminarBelowMps() * 1.001).regime())
        .isEqualTo(ClearLiquid.Regime.TRANSITIONAL);
    double fast = pipe.turbulentAboveMps() * 1.001;
    NonNewtonianFriction.Friction friction = pipe.at(fast);
    assertThat(friction.regime()).isEqualTo(ClearLiquid.Regime.TURBULENT);
    assertThat(friction.wallStressPa())
        .isGreaterThan(LaminarPipeFlow.at(pipe.rheology(), 0.15, fast).wallStressPa());
    assertThat(friction.wallViscosityPaS())
        .isCloseTo(
            pipe.rheology().apparentViscosityPaS(friction.wallShearRatePs()),
            within(1e-9 * friction.wallViscosityPaS()));
  }

  @Property(tries = 60)
  void everyTurbulentLawIsFiniteAndPositiveAtAnyVelocity(
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 20) double yield,
      @ForAll @Scale(6) @DoubleRange(min = 1e-3, max = 6) double consistency,
      @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 1.5) double index,
      @ForAll @Scale(6) @DoubleRange(min = 1e-3, max = 10) double velocity) {
    Rheology liquid = new HerschelBulkley(yield, consistency, index);
    for (TurbulentFrictionModel model : NonNewtonianModels.TURBULENT.all()) {
      assertThat(model.wallStressPa(liquid, 1020, new Bore(0.15, 1e-4), velocity).value())
          .isPositive();
    }
    for (TransitionCriterion criterion : NonNewtonianModels.TRANSITIONS.all()) {
      assertThat(criterion.velocityMps(liquid, 1020, new Bore(0.15, 1e-4)).value()).isNotNegative();
    }
  }

  @Property(tries = 60)
  void aRoughWallCostsMoreAndAFullyRoughOneDoesNotSeeTheRheology(
      @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 0.95) double index) {
    Rheology liquid = new PowerLaw(0.05, index);
    double smooth =
        NonNewtonianModels.DEFAULT.wallStressPa(liquid, 1000, new Bore(0.15, 0), 5).value();
    double rough =
        NonNewtonianModels.DEFAULT.wallStressPa(liquid, 1000, new Bore(0.15, 5e-4), 5).value();
    assertThat(rough).isGreaterThan(smooth);
    double veryRough = 1e6;
    double fully =
        NonNewtonianModels.DEFAULT
            .wallStressPa(liquid, 1000, new Bore(0.15, 5e-3), veryRough)
            .value();
    double root = 2.457 * Math.log(1 / (0.27 * 5e-3 / 0.15));
    assertThat(fully).isCloseTo(1000 * veryRough * veryRough / (root * root), within(0.01 * fully));
  }

  @Example
  void refusesAFlowIndexOfTwoAndNonsense() {
    Bore bore = new Bore(0.1, 0);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new NonNewtonianFriction(new PowerLaw(1, 2), 1000, bore))
        .withMessageContaining("n is 2.0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new NonNewtonianFriction(new Newtonian(1), Double.NaN, bore));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new NonNewtonianFriction(new Newtonian(1), 1000, bore).at(Double.NaN));
  }
}
