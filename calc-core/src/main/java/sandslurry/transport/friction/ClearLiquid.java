package sandslurry.transport.friction;

import sandslurry.correlation.Bound;
import sandslurry.correlation.Physics;
import sandslurry.material.liquid.Liquid;
import sandslurry.pipe.Bore;
import sandslurry.units.Kind;

/**
 * Friction of a liquid without sand in a full pipe: the floor on which every head loss with sand
 * stands.
 *
 * <pre>
 * Re = ρ V D/μ,   i = f V²/(2 g D),   dp/dx = ρ g i
 * </pre>
 *
 * @param reynolds Reynolds number Re
 * @param darcyFactor Darcy friction factor f, by {@link PipeFriction#darcyFactor}
 * @param gradient hydraulic gradient i, metres of this liquid lost per metre of pipe
 * @param pressureGradientPaPm pressure lost per length [Pa/m]
 */
public record ClearLiquid(
    double reynolds, double darcyFactor, double gradient, double pressureGradientPaPm) {
  private static final double LAMINAR_BELOW = 2100;
  private static final double TURBULENT_FROM = 4000;

  /** Correlations of head loss with sand were all fitted to turbulent flow. */
  public static final Bound TURBULENT =
      new Bound(
          "Reynolds number of the carrier", Kind.NUMBER, TURBULENT_FROM, Double.POSITIVE_INFINITY);

  /**
   * The friction of a case.
   *
   * @param liquid the liquid
   * @param bore the pipe
   * @param velocityMps mean velocity, positive [m/s]
   * @return the friction
   * @throws IllegalArgumentException if the velocity is not a positive number
   */
  public static ClearLiquid of(Liquid liquid, Bore bore, double velocityMps) {
    if (!(velocityMps > 0 && Double.isFinite(velocityMps))) {
      throw new IllegalArgumentException("velocity must be > 0 but was " + velocityMps + " m/s");
    }
    double reynolds = velocityMps * bore.diameterM() / liquid.kinematicViscosityM2ps();
    double factor = PipeFriction.darcyFactor(reynolds, bore.roughnessM() / bore.diameterM());
    double gradient = factor * velocityMps * velocityMps / (2 * Physics.GRAVITY * bore.diameterM());
    return new ClearLiquid(
        reynolds, factor, gradient, liquid.densityKgM3() * Physics.GRAVITY * gradient);
  }

  /**
   * The flow regime of a Newtonian liquid.
   *
   * @param reynolds Reynolds number
   * @return the regime that belongs to it
   */
  public static Regime regime(double reynolds) {
    if (reynolds < LAMINAR_BELOW) {
      return Regime.LAMINAR;
    }
    return reynolds < TURBULENT_FROM ? Regime.TRANSITIONAL : Regime.TURBULENT;
  }

  /** How the liquid flows. */
  public enum Regime {
    /** Reynolds number below 2100: no eddies, so nothing holds sand up. */
    LAMINAR("laminar"),
    /** Reynolds number 2100 to 4000: the flow switches back and forth and friction is a guess. */
    TRANSITIONAL("transitional"),
    /** Reynolds number of 4000 or more. */
    TURBULENT("turbulent");

    private final String words;

    Regime(String words) {
      this.words = words;
    }

    /**
     * The regime in words.
     *
     * @return for example "laminar"
     */
    public String words() {
      return words;
    }
  }
}
