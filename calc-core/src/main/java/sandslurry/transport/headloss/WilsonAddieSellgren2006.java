package sandslurry.transport.headloss;

import java.util.List;
import sandslurry.correlation.About;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Estimate;
import sandslurry.correlation.Physics;
import sandslurry.material.Slurry;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;
import sandslurry.pipe.Bore;
import sandslurry.settling.SettlingVelocities;
import sandslurry.transport.friction.ClearLiquid;
import sandslurry.units.Kind;

/**
 * Friction of a heterogeneous sand slurry by the velocity V50 at which half of the sand rubs on the
 * floor, after Wilson, Addie, Sellgren and Clift.
 *
 * <pre>
 * im = if + 0.22 (s − 1) C (V50/V)^M
 * V50 = w50 √(8/f) cosh(60 d50/D)
 * w   = 0.9 w_t + 2.7 [(ρs − ρ) g μ/ρ²]^⅓
 * M   = (0.25 + 13 σ²)^−½, not more than 1.7 and not less than 0.25
 * σ   = log10 {w85 cosh(60 d85/D) / [w50 cosh(60 d50/D)]}
 * </pre>
 *
 * <p>im gradient of the slurry and if of the clear carrier, both in metres of carrier per metre of
 * pipe; C delivered volume fraction; s density of the sand over that of the carrier; V mean
 * velocity [m/s]; f Darcy friction factor of the carrier at V; w50 and w85 the particle-associated
 * velocity w [m/s] of the d50 and d85 grain; w_t settling velocity of one grain, by the default
 * correlation [m/s]; ρs, ρ densities [kg/m³]; μ viscosity of the carrier [Pa·s]; D bore [m].
 *
 * <p>The sand that is not held up by turbulence rests on the floor and rubs on it with a friction
 * coefficient of 0.44; at V50 that is half of it, hence 0.22. M tells how sharply the rest is
 * lifted with rising velocity: 1.7 for sand of one size, less for a wide grading. The two bounds on
 * M are part of the published method.
 *
 * <p>Range: grains d50 of 0.2 to 6 mm, d50/D up to 0.018 (above it the sand travels fully
 * stratified), volume fractions up to 25 %, velocities above deposition. Below deposition the value
 * is that of a pipe over a bed and not for design. Far above V50 the excess tends to zero, that is
 * to the carrier alone; fully suspended sand then loses somewhat more, by {@link EquivalentLiquid}.
 * Without sand it is the carrier exactly.
 */
final class WilsonAddieSellgren2006 implements HeadLossModel {
  private static final double HALF_FRICTION = 0.22;
  private static final double LEAST_POWER = 0.25;
  private static final double GREATEST_POWER = 1.7;
  private static final Bound SIZE = new Bound("grain size d50", Kind.GRAIN, 2e-4, 6e-3);
  private static final Bound RELATIVE_SIZE =
      new Bound("grain size d50 over bore", Kind.NUMBER, 0, 0.018);
  private static final Bound CONCENTRATION =
      new Bound("volume fraction of sand", Kind.PERCENT, 0, 0.25);

  private static final About ABOUT =
      new About(
          "wilson-addie-sellgren-2006",
          "Wilson, Addie, Sellgren and Clift, V50",
          "im = if + 0.22 (s - 1) C (V50/V)^M, V50 = w50 sqrt(8/f) cosh(60 d50/D)",
          new Citation(
              "Wilson, Addie, Sellgren and Clift",
              2006,
              "Slurry Transport Using Centrifugal Pumps, 3rd edition, Springer; the form and the 0.22"
                  + " as told in the chapter on solids transport of a pump handbook; the other"
                  + " coefficients from memory, unverified"),
          List.of(ClearLiquid.TURBULENT, SIZE, RELATIVE_SIZE, CONCENTRATION));

  /**
   * The velocity at which half of the sand is held up by turbulence and half rests on the floor.
   *
   * @param slurry sand and carrier
   * @param bore the pipe
   * @param velocityMps mean velocity at which the friction factor is taken, positive [m/s]
   * @return V50 [m/s]
   */
  public double halfSuspendedVelocityMps(Slurry slurry, Bore bore, double velocityMps) {
    double factor = ClearLiquid.of(slurry.liquid(), bore, velocityMps).darcyFactor();
    return Math.sqrt(8 / factor) * scaled(slurry.d50Grain(), slurry.liquid(), bore);
  }

  /**
   * The power M with which the excess falls with velocity.
   *
   * @param slurry sand and carrier
   * @param bore the pipe
   * @return M, 0.25 to 1.7
   */
  public double power(Slurry slurry, Bore bore) {
    double sigma =
        Math.log10(
            scaled(slurry.d85Grain(), slurry.liquid(), bore)
                / scaled(slurry.d50Grain(), slurry.liquid(), bore));
    double power = 1 / Math.sqrt(0.25 + 13 * sigma * sigma);
    return Math.min(GREATEST_POWER, Math.max(LEAST_POWER, power));
  }

  private static double scaled(Grain grain, Liquid liquid, Bore bore) {
    double fall = SettlingVelocities.DEFAULT.velocityMps(grain, liquid).value();
    double buoyancy = grain.densityKgM3() / liquid.densityKgM3() - 1;
    double associated =
        0.9 * fall + 2.7 * Math.cbrt(buoyancy * Physics.GRAVITY * liquid.kinematicViscosityM2ps());
    return associated * Math.cosh(60 * grain.diameterM() / bore.diameterM());
  }

  @Override
  public Estimate gradient(Slurry slurry, Bore bore, double velocityMps) {
    ClearLiquid clear = ClearLiquid.of(slurry.liquid(), bore, velocityMps);
    double concentration = slurry.volumeFraction();
    if (concentration == 0) {
      return Estimate.checks().value(clear.gradient());
    }
    return Estimate.checks()
        .check(ClearLiquid.TURBULENT, clear.reynolds())
        .check(SIZE, slurry.d50M())
        .check(RELATIVE_SIZE, slurry.d50M() / bore.diameterM())
        .check(CONCENTRATION, concentration)
        .value(curve(slurry, bore).gradient(clear, velocityMps));
  }

  @Override
  public Curve curve(Slurry slurry, Bore bore) {
    double associated = scaled(slurry.d50Grain(), slurry.liquid(), bore);
    double power = power(slurry, bore);
    double sand = HALF_FRICTION * (slurry.densityRatio() - 1) * slurry.volumeFraction();
    return (clear, velocityMps) -> {
      double half = Math.sqrt(8 / clear.darcyFactor()) * associated;
      return clear.gradient() + sand * Math.pow(half / velocityMps, power);
    };
  }

  @Override
  public About about() {
    return ABOUT;
  }
}
