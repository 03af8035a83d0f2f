package sandslurry.transport.headloss;

import sandslurry.material.Slurry;

/**
 * Pressure lost by a settling slurry in a pipe that rises or falls, after Worster and Denny (1955),
 * Proceedings of the Institution of Mechanical Engineers 169:563-586 (from memory, unverified).
 *
 * <pre>
 * friction   iθ = iw + (im − iw) cos θ
 * static     [1 + C (s − 1)] sin θ
 * </pre>
 *
 * <p>iw and im gradients of the clear carrier and of the slurry in a horizontal pipe, iθ in the
 * inclined one, all in metres of carrier per metre of pipe; θ angle above the horizontal, negative
 * where the pipe falls; C volume fraction of the sand; s density of the sand over that of the
 * carrier. The sand's weight presses on the wall only by its component across the pipe, hence cos
 * θ; along the pipe the whole mixture has to be lifted. In a vertical pipe no sand rubs on a floor
 * and the friction is that of the carrier.
 *
 * <p>Two cautions. Where sand climbs slower than the liquid there is more of it in the pipe than is
 * delivered, and the static part is somewhat larger than this. And the rule is about friction above
 * deposition: the deposition velocity itself rises on an upward slope, by as much as a half at 20
 * to 35 degrees (Wilson and Tse, 1984; from memory, unverified).
 */
public final class Inclination {
  private Inclination() {}

  /**
   * Friction in the inclined pipe.
   *
   * @param liquidGradient iw, metres of carrier per metre of horizontal pipe
   * @param slurryGradient im, metres of carrier per metre of horizontal pipe
   * @param angleRad angle above the horizontal, −π/2 to π/2 [rad]
   * @return metres of carrier per metre of pipe
   * @throws IllegalArgumentException if the angle is not within a quarter turn
   */
  public static double frictionGradient(
      double liquidGradient, double slurryGradient, double angleRad) {
    check(angleRad);
    return liquidGradient + (slurryGradient - liquidGradient) * Math.cos(angleRad);
  }

  /**
   * Pressure that lifts the mixture.
   *
   * @param slurry sand and carrier
   * @param angleRad angle above the horizontal, −π/2 to π/2 [rad]
   * @return metres of carrier per metre of pipe, negative where the pipe falls
   * @throws IllegalArgumentException if the angle is not within a quarter turn
   */
  public static double staticGradient(Slurry slurry, double angleRad) {
    check(angleRad);
    return slurry.mixtureDensityKgM3() / slurry.liquid().densityKgM3() * Math.sin(angleRad);
  }

  private static void check(double angleRad) {
    if (!(Math.abs(angleRad) <= Math.PI / 2)) {
      throw new IllegalArgumentException(
          "the slope of a pipe lies within a quarter turn but was " + angleRad + " rad");
    }
  }
}
