package sandslurry.separation.capture;

/**
 * What a capture relation needs to know of the flow through a lane or basin.
 *
 * @param overflowVelocityMps surface overflow velocity: flow over plan area, Q/A [m/s]
 * @param shearVelocityMps shear velocity, 0 for a flow without turbulence [m/s]
 */
public record BasinFlow(double overflowVelocityMps, double shearVelocityMps) {
  /** Checks that the overflow velocity is positive and the shear velocity not negative. */
  public BasinFlow {
    if (!(overflowVelocityMps > 0 && Double.isFinite(overflowVelocityMps))
        || !(shearVelocityMps >= 0 && Double.isFinite(shearVelocityMps))) {
      throw new IllegalArgumentException(
          "need an overflow velocity > 0 and a shear velocity >= 0 but have "
              + overflowVelocityMps
              + " m/s and "
              + shearVelocityMps
              + " m/s");
    }
  }

  /**
   * The number that rules capture: how many times over a grain could fall through the full depth
   * while the water passes.
   *
   * @param settlingVelocityMps settling velocity of the grain, 0 or more [m/s]
   * @return w A / Q
   */
  public double fallNumber(double settlingVelocityMps) {
    if (!(settlingVelocityMps >= 0 && Double.isFinite(settlingVelocityMps))) {
      throw new IllegalArgumentException(
          "the settling velocity must be >= 0 but was " + settlingVelocityMps + " m/s");
    }
    return Math.min(settlingVelocityMps / overflowVelocityMps, Double.MAX_VALUE);
  }
}
