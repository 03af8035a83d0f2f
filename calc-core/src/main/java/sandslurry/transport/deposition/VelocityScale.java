package sandslurry.transport.deposition;

import sandslurry.correlation.Physics;
import sandslurry.material.Slurry;
import sandslurry.pipe.Bore;

/**
 * The two velocities by which deposition velocities are made dimensionless. They differ by √2, and
 * mixing them up is the commonest slip in this field, so both live here under names.
 */
final class VelocityScale {
  private VelocityScale() {}

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
}
