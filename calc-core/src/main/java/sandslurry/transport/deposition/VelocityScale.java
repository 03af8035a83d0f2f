package sandslurry.transport.deposition;

import java.util.function.DoubleUnaryOperator;
import sandslurry.correlation.Physics;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.Slurry;
import sandslurry.numeric.Roots;
import sandslurry.pipe.Bore;
import sandslurry.transport.friction.PipeFriction;
import sandslurry.units.Kind;

/**
 * The two velocities by which deposition velocities are made dimensionless. They differ by √2, and
 * mixing them up is the commonest slip in this field, so both live here under names.
 */
final class VelocityScale {
  private static final double FIRST_FACTOR = 0.02;

  /** ln 1e6: as far from a friction factor of 1 the root is looked for at the most. */
  private static final double FARTHEST = Math.log(1e6);

  private VelocityScale() {}

  private static final Equation REYNOLDS =
      Equation.of(
          "Re",
          "Reynolds number of the carrier at that velocity",
          "V D / nu",
          Kind.NUMBER,
          Equation.DEFINITION,
          "V m/s, D m, nu m2/s");

  /** The Darcy friction factor of the carrier at a velocity that was searched for. */
  static double friction(Slurry slurry, Bore bore, double velocityMps, Trace trace) {
    if (!trace.records()) {
      return friction(slurry, bore, velocityMps);
    }
    double reynolds = reynolds(slurry, bore, velocityMps);
    trace.step(
        REYNOLDS,
        reynolds,
        velocityMps,
        bore.diameterM(),
        slurry.liquid().kinematicViscosityM2ps());
    return PipeFriction.darcyFactor(reynolds, bore.roughnessM() / bore.diameterM(), trace);
  }

  /** √(2 g D (s − 1)) of Durand [m/s]. */
  static double durandMps(Slurry slurry, Bore bore) {
    return Math.sqrt(2) * withoutTwoMps(slurry, bore);
  }

  /** √(g D (s − 1)), without the 2, of the Saskatchewan laboratory [m/s]. */
  static double withoutTwoMps(Slurry slurry, Bore bore) {
    return Math.sqrt(Physics.GRAVITY * bore.diameterM() * (slurry.densityRatio() - 1));
  }

  /** Reynolds number V D/ν of the carrier. */
  static double reynolds(Slurry slurry, Bore bore, double velocityMps) {
    return velocityMps * bore.diameterM() / slurry.liquid().kinematicViscosityM2ps();
  }

  /**
   * The velocity at which V λ(V)^p has a given value, λ the Darcy friction factor of the carrier
   * alone (Churchill): the form that Wilson's bound and the relations of Macke and of Ab Ghani
   * share. As λ falls with V by at most 1/V, V λ^p rises with V for every p below 1 and there is
   * one root.
   *
   * @param slurry the carrier of which
   * @param bore the pipe
   * @param exponent p, 0 to below 1
   * @param value what V λ^p shall be, positive [m/s]
   * @return V [m/s]
   */
  static double atFrictionMps(Slurry slurry, Bore bore, double exponent, double value) {
    double target = Math.log(value);
    DoubleUnaryOperator gap = logVelocity -> gap(slurry, bore, exponent, target, logVelocity);
    return Math.exp(
        Roots.near(gap, target - exponent * Math.log(FIRST_FACTOR), 1)
            .orElseGet(
                () ->
                    Roots.between(
                        "velocity by its friction factor",
                        gap,
                        target - FARTHEST,
                        target + FARTHEST)));
  }

  /** ln(V λ^p) less what it shall be. */
  private static double gap(
      Slurry slurry, Bore bore, double exponent, double target, double logVelocity) {
    return logVelocity
        + exponent * Math.log(friction(slurry, bore, Math.exp(logVelocity)))
        - target;
  }

  /** Darcy friction factor of the carrier at a velocity. */
  static double friction(Slurry slurry, Bore bore, double velocityMps) {
    return PipeFriction.darcyFactor(
        reynolds(slurry, bore, velocityMps), bore.roughnessM() / bore.diameterM());
  }
}
