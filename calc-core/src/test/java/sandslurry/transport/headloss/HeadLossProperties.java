package sandslurry.transport.headloss;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import sandslurry.material.Slurry;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.GrainShape;
import sandslurry.numeric.Roots;
import sandslurry.pipe.Bore;
import sandslurry.transport.friction.ClearLiquid;
import sandslurry.transport.friction.PipeFriction;

class HeadLossProperties {
  private static Slurry slurry(double d50M, double spread, double fraction, double viscosityPaS) {
    return new Slurry(
        new Liquid(1005, viscosityPaS), 2650, GrainShape.NATURAL, d50M, d50M * spread, fraction);
  }

  @Provide
  Arbitrary<HeadLossModel> models() {
    return Arbitraries.of(HeadLosses.FAMILY.all());
  }

  @Property
  void losesMoreWithSandThanWithoutAndMoreWithMoreSand(
      @ForAll("models") HeadLossModel model,
      @ForAll @Scale(7) @DoubleRange(min = 1e-4, max = 3e-3) double d50,
      @ForAll @Scale(7) @DoubleRange(min = 1, max = 4) double spread,
      @ForAll @Scale(7) @DoubleRange(min = 1e-3, max = 0.15) double fraction,
      @ForAll @Scale(7) @DoubleRange(min = 0.05, max = 0.3) double diameter,
      @ForAll @Scale(7) @DoubleRange(min = 0.8, max = 5) double velocity) {
    Slurry thin = slurry(d50, spread, fraction, 1.2e-3);
    Slurry thick = thin.withVolumeFraction(1.5 * fraction);
    Bore bore = new Bore(diameter, 1e-5);
    double clear = ClearLiquid.of(thin.liquid(), bore, velocity).gradient();
    double some = model.gradient(thin, bore, velocity).value();
    double more = model.gradient(thick, bore, velocity).value();
    assertThat(some).isGreaterThan(clear);
    assertThat(more).isGreaterThan(some);
  }

  @Property
  void tendsToTheClearLiquidAsTheSandVanishes(
      @ForAll("models") HeadLossModel model,
      @ForAll @Scale(7) @DoubleRange(min = 1e-4, max = 3e-3) double d50,
      @ForAll @Scale(7) @DoubleRange(min = 1, max = 4) double spread,
      @ForAll @Scale(7) @DoubleRange(min = 0.05, max = 0.3) double diameter,
      @ForAll @Scale(7) @DoubleRange(min = 0.5, max = 5) double velocity) {
    Slurry slurry = slurry(d50, spread, 1e-14, 1.2e-3);
    Bore bore = new Bore(diameter, 1e-5);
    assertThat(model.gradient(slurry, bore, velocity).value())
        .isCloseTo(
            ClearLiquid.of(slurry.liquid(), bore, velocity).gradient(), withPercentage(0.05));
  }

  @Property
  void staysFiniteForEveryLiquidAndVelocity(
      @ForAll("models") HeadLossModel model,
      @ForAll @Scale(7) @DoubleRange(min = 1e-6, max = 2e-2) double d50,
      @ForAll @Scale(7) @DoubleRange(min = 1, max = 20) double spread,
      @ForAll @Scale(7) @DoubleRange(min = 0, max = 0.6) double fraction,
      @ForAll @Scale(7) @DoubleRange(min = -4, max = 2) double logViscosity,
      @ForAll @Scale(7) @DoubleRange(min = 0.025, max = 1) double diameter,
      @ForAll @Scale(7) @DoubleRange(min = 0.01, max = 20) double velocity) {
    Slurry slurry = slurry(d50, spread, fraction, Math.pow(10, logViscosity));
    assertThat(model.gradient(slurry, new Bore(diameter, 1e-4), velocity).value()).isPositive();
  }

  @Property
  void clearLiquidLosesMoreWhenItFlowsFaster(
      @ForAll @Scale(7) @DoubleRange(min = -4, max = 1) double logViscosity,
      @ForAll @Scale(7) @DoubleRange(min = 0.025, max = 1) double diameter,
      @ForAll @Scale(7) @DoubleRange(min = 0, max = 0.05) double relativeRoughness,
      @ForAll @Scale(7) @DoubleRange(min = 1e-3, max = 10) double velocity,
      @ForAll @Scale(7) @DoubleRange(min = 1.001, max = 3) double faster) {
    Liquid liquid = new Liquid(1000, Math.pow(10, logViscosity));
    Bore bore = new Bore(diameter, relativeRoughness * diameter);
    assertThat(ClearLiquid.of(liquid, bore, velocity * faster).gradient())
        .isGreaterThan(ClearLiquid.of(liquid, bore, velocity).gradient());
  }

  // Measured on grids against Colebrook: at most 0.95 % apart for Re of 1e4 to 1e7 and roughness to
  // 0.001 of the bore; at most 3.2 % (Re = 4200, roughness 0.017) for all Re of 4000 to 1e8 and
  // roughness to 0.05.
  @Property
  void churchillFollowsColebrookInTurbulentFlow(
      @ForAll @Scale(7) @DoubleRange(min = 3.603, max = 8) double logReynolds,
      @ForAll @Scale(7) @DoubleRange(min = 0, max = 0.05) double roughness) {
    double reynolds = Math.pow(10, logReynolds);
    double percent = reynolds >= 1e4 && reynolds <= 1e7 && roughness <= 1e-3 ? 1 : 3.2;
    assertThat(PipeFriction.darcyFactor(reynolds, roughness))
        .isCloseTo(colebrook(reynolds, roughness), withPercentage(percent));
  }

  /** Colebrook's equation (1939), solved for 1/sqrt(f). */
  private static double colebrook(double reynolds, double roughness) {
    double x =
        Roots.between(
            "Colebrook", y -> y + 2 * Math.log10(roughness / 3.7 + 2.51 * y / reynolds), 1e-3, 100);
    return 1 / (x * x);
  }
}
