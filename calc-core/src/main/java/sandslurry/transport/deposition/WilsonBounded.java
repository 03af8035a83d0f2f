package sandslurry.transport.deposition;

import sandslurry.correlation.Citation;
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
final class WilsonBounded extends DepositionVelocityModel {
  private static final DepositionVelocityModel NOMOGRAPH = new Wilson1986Fit();

  private static final Citation SOURCE =
      new Citation(
          "Wilson",
          1979,
          "Hydrotransport 6, BHRA, Canterbury, with the bound of Wilson (1988) and Wilson and"
              + " Nnadi (1990); that the lower of the two holds was read in a handbook chapter on"
              + " slurry pumps, 0.018 and 0.13 in R. Ramsdell's open implementation of Miedema,"
              + " Slurry Transport");
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
        Limit.STATIONARY_BED,
        SOURCE,
        Wilson1986Fit.WITHIN.turbulent(),
        V,
        BOUND);
  }

  @Override
  double valueMps(Slurry slurry, Bore bore, Trace trace) {
    double nomograph = NOMOGRAPH.valueMps(slurry, bore, trace);
    double bound = upperBoundMps(slurry, bore, trace);
    return trace.step(V, Math.min(nomograph, bound), nomograph, bound);
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
}
