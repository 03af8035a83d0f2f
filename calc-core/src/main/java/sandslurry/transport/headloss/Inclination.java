package sandslurry.transport.headloss;

/**
 * Friction of a settling slurry in a pipe that rises or falls, after Worster and Denny (1955),
 * Proceedings of the Institution of Mechanical Engineers 169:563-586 (from memory, unverified).
 *
 * <pre>iθ = iw + (im − iw) cos θ</pre>
 *
 * <p>iw and im gradients of the clear carrier and of the slurry in a horizontal pipe, iθ in the
 * inclined one, all in metres of carrier per metre of pipe; θ angle above the horizontal, negative
 * where the pipe falls. The sand's weight presses on the wall only by its component across the
 * pipe, hence cos θ; the weight of the mixture along the pipe is static head and not counted here.
 * In a vertical pipe no sand rubs on a floor and the friction is that of the carrier.
 *
 * <p>Two cautions. Where sand climbs slower than the liquid there is more of it in the pipe than is
 * delivered, and the static head is somewhat larger than that of the mixture delivered. And the
 * rule is about friction above deposition: the deposition velocity itself rises on an upward slope,
 * by as much as a half at 20 to 35 degrees (Wilson and Tse, 1984; from memory, unverified).
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

  private static void check(double angleRad) {
    if (!(Math.abs(angleRad) <= Math.PI / 2)) {
      throw new IllegalArgumentException(
          "the slope of a pipe lies within a quarter turn but was " + angleRad + " rad");
    }
  }
}
