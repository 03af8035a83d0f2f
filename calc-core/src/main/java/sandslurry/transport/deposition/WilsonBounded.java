package sandslurry.transport.deposition;

import java.util.List;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Estimate;
import sandslurry.correlation.Published;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.Slurry;
import sandslurry.pipe.Bore;
import sandslurry.transport.friction.PipeFriction;
import sandslurry.units.Kind;

/**
 * Limit of stationary deposition after Wilson: the nomograph, capped by his later theory of the
 * sheared layer on top of the bed.
 *
 * <pre>
 * V = smaller of the nomograph ({@link Wilson1986Fit}) and (0.018/f)^0.13 √(2 g D (s − 1))
 * </pre>
 *
 * <p>V largest deposition velocity over all concentrations [m/s]; f Darcy friction factor of the
 * carrier alone at that velocity and roughness, by Churchill ({@link PipeFriction}); g gravity
 * [m/s²]; D bore [m]; s density of sand over density of carrier. Because f depends on V the cap is
 * solved for; V f^0.13 rises with V in all regimes, so there is one root.
 *
 * <p>Range as in {@link Wilson1986Fit}, and turbulent flow of the carrier at V (Reynolds number
 * above 4000).
 */
final class WilsonBounded extends Published implements DepositionVelocityModel {
  static final Bound TURBULENT =
      new Bound(
          "Reynolds number of the carrier at this velocity",
          Kind.NUMBER,
          4000,
          Double.POSITIVE_INFINITY);
  private static final DepositionVelocityModel NOMOGRAPH = new Wilson1986Fit();

  private static final Citation SOURCE =
      new Citation(
              "Wilson",
              1979,
              "Hydrotransport 6, BHRA, Canterbury, with the bound of Wilson (1988) and Wilson and"
                  + " Nnadi (1990); that the lower of the two holds was read in a handbook chapter"
                  + " on slurry pumps")
          .fromMemory("0.018 and 0.13");
  private static final Equation FOUND =
      Equation.search(
          "V_b",
          "upper bound of Wilson, as found",
          "velocity that agrees with its own friction factor in (0.018/f)^0.13 sqrt(2 g D (s - 1))",
          Kind.VELOCITY,
          SOURCE.toString(),
          "D m, s, nu m2/s");
  private static final Equation BOUND =
      SOURCE.equation(
          "V_b",
          "upper bound of Wilson",
          "(0.018/f)^0.13 sqrt(2 g D (s - 1))",
          Kind.VELOCITY,
          "f, D m, s");
  private static final Equation V =
      SOURCE.equation(
          "V", "deposition velocity by Wilson", "min(V_W, V_b)", Kind.VELOCITY, "V_W m/s, V_b m/s");

  WilsonBounded() {
    super(
        "wilson-bounded",
        "Wilson, nomograph with its bound",
        SOURCE,
        List.of(
            Wilson1986Fit.SIZE,
            Wilson1986Fit.BORE,
            Wilson1986Fit.CONCENTRATION,
            Wilson1986Fit.VISCOSITY,
            TURBULENT),
        V,
        BOUND);
  }

  @Override
  public Estimate velocityMps(Slurry slurry, Bore bore, Trace trace) {
    double nomograph = NOMOGRAPH.velocityMps(slurry, bore, trace).value();
    double bound = upperBoundMps(slurry, bore, trace);
    double value = trace.step(V, Math.min(nomograph, bound), nomograph, bound);
    return Estimate.checks()
        .check(Wilson1986Fit.SIZE, slurry.d50M())
        .check(Wilson1986Fit.BORE, bore.diameterM())
        .check(Wilson1986Fit.CONCENTRATION, slurry.volumeFraction())
        .check(Wilson1986Fit.VISCOSITY, slurry.liquid().kinematicViscosityM2ps())
        .check(TURBULENT, VelocityScale.reynolds(slurry, bore, value))
        .value(value);
  }

  /**
   * The cap alone.
   *
   * @param slurry sand and carrier; grain size and concentration are not used
   * @param bore the pipe
   * @return the root V of V = (0.018/f(V))^0.13 √(2 g D (s − 1)) [m/s]
   */
  public static double upperBoundMps(Slurry slurry, Bore bore) {
    return upperBoundMps(slurry, bore, Trace.NONE);
  }

  static double upperBoundMps(Slurry slurry, Bore bore, Trace trace) {
    double bound =
        VelocityScale.atFrictionMps(
            slurry, bore, 0.13, Math.pow(0.018, 0.13) * VelocityScale.durandMps(slurry, bore));
    if (trace.records()) {
      double d = bore.diameterM();
      double s = slurry.densityRatio();
      trace.step(FOUND, bound, d, s, slurry.liquid().kinematicViscosityM2ps());
      trace.step(BOUND, bound, VelocityScale.friction(slurry, bore, bound, trace), d, s);
    }
    return bound;
  }

  @Override
  public Limit limit() {
    return Limit.STATIONARY_BED;
  }
}
