package sandslurry.separation.capture;

import sandslurry.separation.Numbers;

/**
 * What a moving flow leaves of the rate of deposition, after Krone.
 *
 * <pre>w' = w max(0, 1 − τ/τc) = w max(0, 1 − (V/Vc)²)</pre>
 *
 * <p>w settling velocity [m/s]; w' velocity at which matter comes to rest on the floor [m/s]; τ
 * stress on the floor and τc that at which a particle is lost again [Pa]; V mean velocity and Vc
 * that at which it is lost again [m/s]. At rest all that reaches the floor stays, at Vc nothing
 * does, and in between the share falls without a step.
 *
 * <p>Krone measured it for mud. We use it for sand too, in the place of a cliff, as a smooth
 * reading that has the same two ends; no range is published for that.
 *
 * <p>Source: Krone (1962), Flume studies of the transport of sediment in estuarial shoaling
 * processes, University of California, Berkeley; the formula in τ was read in the documentation of
 * a public model of sediment in estuaries.
 */
public final class Krone1962 {
  private Krone1962() {}

  /**
   * The factor on the settling velocity.
   *
   * @param nearness V/Vc, 0 or more
   * @return the factor, 1 at rest, 0 from V = Vc on
   */
  public static double factor(double nearness) {
    double ratio = Numbers.notNegative("velocity over critical velocity", nearness, "");
    return Math.max(0, 1 - ratio * ratio);
  }
}
