package sandslurry.separation;

/**
 * What a moving flow leaves of the rate of deposition, after Krone.
 *
 * <pre>w' = w max(0, 1 − τ/τc) = w max(0, 1 − (V/Vc)²)</pre>
 *
 * <p>w settling velocity [m/s]; w' velocity at which matter comes to rest on the floor [m/s]; τ
 * stress on the floor and τc that at which a particle moves [Pa]; V mean velocity and Vc scour
 * velocity [m/s]. At rest all that reaches the floor stays; at the scour velocity nothing does; in
 * between the share falls without a step. Krone measured it for mud; we use it for sand too, in the
 * place of a cliff at the scour velocity, as a smooth reading that has the same two ends. No range
 * is published for sand.
 *
 * <p>Source: Krone (1962), Flume studies of the transport of sediment in estuarial shoaling
 * processes, University of California, Berkeley; from memory, unverified.
 */
public final class Krone1962 {
  private Krone1962() {}

  /**
   * The factor on the settling velocity.
   *
   * @param velocityMps mean velocity of the flow, 0 or more [m/s]
   * @param scourVelocityMps mean velocity at which the particle moves, positive [m/s]
   * @return the factor, 1 at rest, 0 at the scour velocity and above
   */
  public static double factor(double velocityMps, double scourVelocityMps) {
    double ratio =
        Numbers.notNegative("the velocity", velocityMps, "m/s")
            / Numbers.positive("the scour velocity", scourVelocityMps, "m/s");
    return Math.max(0, 1 - ratio * ratio);
  }
}
