package sandslurry.transport.headloss;

import java.util.List;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Estimate.Checks;
import sandslurry.correlation.Physics;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
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
final class WilsonAddieSellgren2006 extends HeadLossModel {
  private static final double HALF_FRICTION = 0.22;
  private static final double LEAST_POWER = 0.25;
  private static final double GREATEST_POWER = 1.7;
  private static final Bound SIZE = new Bound("grain size d50", Kind.GRAIN, 2e-4, 6e-3);
  private static final Bound RELATIVE_SIZE =
      new Bound("grain size d50 over bore", Kind.NUMBER, 0, 0.018);
  private static final Bound CONCENTRATION =
      new Bound("volume fraction of sand", Kind.PERCENT, 0, 0.25);

  private static final Citation SOURCE =
      new Citation(
          "Wilson, Addie, Sellgren and Clift",
          2006,
          "Slurry Transport Using Centrifugal Pumps, 3rd edition, Springer; the 0.22 read in the"
              + " chapter on solids transport of a pump handbook, the rest in R. Ramsdell's open"
              + " implementation of Miedema, Slurry Transport");
  private static final Equation FALL50 =
      SOURCE.equation(
          "w50",
          "velocity of the middle grain that counts",
          "0.9 w + 2.7 (R g nu)^(1/3)",
          Kind.FALL,
          "w m/s, R, nu m2/s");
  private static final Equation FALL85 =
      SOURCE.equation(
          "w85",
          "velocity of the coarse grain that counts",
          "0.9 w + 2.7 (R g nu)^(1/3)",
          Kind.FALL,
          "w m/s, R, nu m2/s");
  private static final Equation SIGMA =
      SOURCE.equation(
          "sigma",
          "spread of the sand",
          "log10(w85 cosh(60 d85/D) / (w50 cosh(60 d50/D)))",
          Kind.NUMBER,
          "w85 m/s, d85 m, w50 m/s, d50 m, D m");
  private static final Equation POWER =
      SOURCE.equation(
          "M",
          "power with which the friction of the sand falls",
          "min(1.7, max(0.25, (0.25 + 13 sigma^2)^-0.5))",
          Kind.NUMBER,
          "sigma");
  private static final Equation HALF =
      SOURCE.equation(
          "V50",
          "velocity at which half of the sand rests on the floor",
          "w50 sqrt(8/f) cosh(60 d50/D)",
          Kind.VELOCITY,
          "w50 m/s, f, d50 m, D m");
  private static final Equation GRADIENT =
      SOURCE.equation(
          "i_m",
          "gradient with sand, metres of carrier per metre",
          "i_f + 0.22 (s - 1) C (V50/V)^M",
          Kind.NUMBER,
          "i_f, s, C, V50 m/s, V m/s, M");

  WilsonAddieSellgren2006() {
    super(
        "wilson-addie-sellgren-2006",
        "Wilson, Addie, Sellgren and Clift, V50",
        SOURCE,
        List.of(ClearLiquid.TURBULENT, SIZE, RELATIVE_SIZE, CONCENTRATION),
        GRADIENT,
        HALF,
        FALL50,
        POWER,
        SIGMA,
        FALL85);
  }

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
    double sigma = sigma(slurry, bore);
    double power = 1 / Math.sqrt(0.25 + 13 * sigma * sigma);
    return Math.min(GREATEST_POWER, Math.max(LEAST_POWER, power));
  }

  private static double sigma(Slurry slurry, Bore bore) {
    return Math.log10(
        scaled(slurry.d85Grain(), slurry.liquid(), bore)
            / scaled(slurry.d50Grain(), slurry.liquid(), bore));
  }

  private static double scaled(Grain grain, Liquid liquid, Bore bore) {
    return associated(grain, liquid, Trace.NONE, FALL50)
        * Math.cosh(60 * grain.diameterM() / bore.diameterM());
  }

  /** w [m/s]. */
  private static double associated(Grain grain, Liquid liquid, Trace trace, Equation equation) {
    double fall = SettlingVelocities.DEFAULT.velocityMps(grain, liquid, trace).value();
    double buoyancy = grain.densityKgM3() / liquid.densityKgM3() - 1;
    double nu = liquid.kinematicViscosityM2ps();
    return trace.step(
        equation,
        0.9 * fall + 2.7 * Math.cbrt(buoyancy * Physics.GRAVITY * nu),
        fall,
        buoyancy,
        nu);
  }

  @Override
  double gradient(
      Slurry slurry, Bore bore, double velocityMps, ClearLiquid clear, Checks checks, Trace trace) {
    double concentration = slurry.volumeFraction();
    checks
        .check(SIZE, slurry.d50M())
        .check(RELATIVE_SIZE, slurry.d50M() / bore.diameterM())
        .check(CONCENTRATION, concentration);
    return steps(slurry, bore, clear, velocityMps, trace);
  }

  private double steps(
      Slurry slurry, Bore bore, ClearLiquid clear, double velocityMps, Trace trace) {
    double gradient = curve(slurry, bore).gradient(clear, velocityMps);
    if (trace.records()) {
      double d = bore.diameterM();
      double w50 = associated(slurry.d50Grain(), slurry.liquid(), trace, FALL50);
      double w85 = associated(slurry.d85Grain(), slurry.liquid(), trace, FALL85);
      double sigma =
          trace.step(SIGMA, sigma(slurry, bore), w85, slurry.d85M(), w50, slurry.d50M(), d);
      double power = trace.step(POWER, power(slurry, bore), sigma);
      double half =
          Math.sqrt(8 / clear.darcyFactor()) * scaled(slurry.d50Grain(), slurry.liquid(), bore);
      trace.step(HALF, half, w50, clear.darcyFactor(), slurry.d50M(), d);
      double c = slurry.volumeFraction();
      trace.step(
          GRADIENT, gradient, clear.gradient(), slurry.densityRatio(), c, half, velocityMps, power);
    }
    return gradient;
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
}
