package sandslurry.transport.friction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

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

class LaminarPipeFlowProperties {
  @Property(tries = 200)
  void theClosedFormIsTheIntegralOfTheRheogram(
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 30) double yield,
      @ForAll @Scale(6) @DoubleRange(min = 1e-3, max = 10) double consistency,
      @ForAll @Scale(6) @DoubleRange(min = 0.25, max = 1.5) double index,
      @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 0.4) double diameter,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 5) double velocity) {
    Rheology liquid = new HerschelBulkley(yield, consistency, index);
    LaminarPipeFlow flow = LaminarPipeFlow.at(liquid, diameter, velocity);
    // V = R/τw³ ∫ τ² γ̇ dτ from τy to τw, by Simpson's rule in the variable that makes γ̇ smooth.
    double above = flow.wallStressPa() - yield;
    int steps = 4000;
    double sum = 0;
    for (int i = 0; i <= steps; i++) {
      double t = (double) i / steps;
      double stress = yield + above * Math.pow(t, 4);
      double term = stress * stress * liquid.shearRatePs(stress) * 4 * Math.pow(t, 3) * above;
      sum += term * (i == 0 || i == steps ? 1 : i % 2 == 1 ? 4 : 2);
    }
    double mean = diameter / 2 / Math.pow(flow.wallStressPa(), 3) * sum / (3 * steps);
    // The flowing part of the stress loses digits beside a great yield stress.
    double lost = 1e-14 * flow.wallStressPa() / above * 4 / index;
    assertThat(mean).isCloseTo(velocity, within(velocity * (1e-8 + lost)));
    assertThat(LaminarPipeFlow.velocityMps(liquid, diameter, flow.wallStressPa()))
        .isCloseTo(velocity, within(velocity * (1e-10 + lost)));
  }

  @Property(tries = 100)
  void aHerschelBulkleyLiquidOfIndexOneIsABinghamLiquid(
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 30) double yield,
      @ForAll @Scale(6) @DoubleRange(min = 1e-3, max = 1) double viscosity,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 5) double velocity) {
    double general =
        LaminarPipeFlow.at(new HerschelBulkley(yield, viscosity, 1), 0.15, velocity).wallStressPa();
    double bingham =
        LaminarPipeFlow.at(new Bingham(yield, viscosity), 0.15, velocity).wallStressPa();
    assertThat(general).isCloseTo(bingham, within(1e-9 * bingham));
    // Buckingham and Reiner: 8V/D = τw/μ (1 − 4/3 ξ + ξ⁴/3).
    double xi = yield / bingham;
    double rate = (bingham - 4.0 / 3 * yield + Math.pow(xi, 3) * yield / 3) / viscosity;
    assertThat(rate)
        .isCloseTo(
            8 * velocity / 0.15, within(8 * velocity / 0.15 * 1e-9 + 1e-13 * bingham / viscosity));
  }

  @Property(tries = 100)
  void aVanishingYieldStressGivesThePowerLawAndIndexOneTheNewtonianLaw(
      @ForAll @Scale(6) @DoubleRange(min = 1e-3, max = 10) double consistency,
      @ForAll @Scale(6) @DoubleRange(min = 0.25, max = 1.5) double index,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 5) double velocity) {
    double power =
        LaminarPipeFlow.at(new PowerLaw(consistency, index), 0.15, velocity).wallStressPa();
    double tiny =
        LaminarPipeFlow.at(new HerschelBulkley(1e-12 * power, consistency, index), 0.15, velocity)
            .wallStressPa();
    assertThat(tiny).isCloseTo(power, within(1e-9 * power));
    assertThat(LaminarPipeFlow.at(new PowerLaw(consistency, 1), 0.15, velocity).wallStressPa())
        .isCloseTo(
            LaminarPipeFlow.at(new Newtonian(consistency), 0.15, velocity).wallStressPa(),
            within(1e-9 * consistency));
    LaminarPipeFlow newtonian = LaminarPipeFlow.at(new Newtonian(consistency), 0.15, velocity);
    assertThat(newtonian.wallStressPa())
        .isCloseTo(8 * consistency * velocity / 0.15, within(1e-12 * newtonian.wallStressPa()));
    assertThat(newtonian.reynolds(1000))
        .isCloseTo(1000 * velocity * 0.15 / consistency, within(1e-9 * newtonian.reynolds(1000)));
  }

  @Property(tries = 100)
  void theProfileCarriesTheFlowAndTheLocalIndexIsTheSlope(
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 20) double yield,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 5) double consistency,
      @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 1) double index,
      @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 3) double velocity) {
    Rheology liquid = new HerschelBulkley(yield, consistency, index);
    LaminarPipeFlow flow = LaminarPipeFlow.at(liquid, 0.2, velocity);
    double sum = 0;
    int steps = 20_000;
    for (int i = 0; i < steps; i++) {
      double radius = 0.1 * (i + 0.5) / steps;
      sum += flow.velocityMps(radius) * 2 * Math.PI * radius * 0.1 / steps;
    }
    assertThat(sum).isCloseTo(velocity * Math.PI * 0.01, within(1e-6 * velocity));
    double up = LaminarPipeFlow.at(liquid, 0.2, velocity * 1.0001).wallStressPa();
    double down = LaminarPipeFlow.at(liquid, 0.2, velocity / 1.0001).wallStressPa();
    assertThat(Math.log(up / down) / (2 * Math.log(1.0001)))
        .isCloseTo(flow.localIndex(), within(1e-5));
    assertThat(flow.plugFlowShare()).isBetween(0.0, 1.0);
  }

  @Example
  void aYieldStressThatSwampsTheFlowStillGivesAFiniteAnswer() {
    LaminarPipeFlow flow = LaminarPipeFlow.at(new HerschelBulkley(1e4, 1e-3, 0.8), 0.1, 1e-9);
    assertThat(flow.wallStressPa()).isGreaterThan(1e4).isLessThan(1e4 * (1 + 1e-6));
    assertThat(flow.plugFlowShare()).isCloseTo(1, within(1e-6));
    assertThat(LaminarPipeFlow.velocityMps(new Bingham(5, 0.1), 0.1, 5)).isZero();
  }

  @Example
  void aPowerLawThatHardlyThickensWithShearHasAFiniteVelocityAtTheAxis() {
    double n = 0.002;
    LaminarPipeFlow flow = LaminarPipeFlow.at(new PowerLaw(55.3, n), 0.13, 0.5);
    assertThat(flow.velocityMps(0.0))
        .isCloseTo(0.5 * (3 * n + 1) / (n + 1), withinPercentage(1e-6));
    assertThat(flow.plugFlowShare()).isZero();
  }
}
