package sandslurry.pump.piston;

/**
 * How far the flow of a piston pump swings within one cycle.
 *
 * @param leastRatio least momentary flow over the mean flow, 0 to 1
 * @param greatestRatio greatest momentary flow over the mean flow, 1 or more
 */
public record FlowRipple(double leastRatio, double greatestRatio) {
  /** Checks that the mean lies between. */
  public FlowRipple {
    if (!(leastRatio >= 0 && leastRatio <= 1)
        || !(greatestRatio >= 1 && Double.isFinite(greatestRatio))) {
      throw new IllegalArgumentException(
          "the mean flow lies between the least and the greatest, but their ratios to it were "
              + leastRatio
              + " and "
              + greatestRatio);
    }
  }

  /**
   * What is left of the ripple behind an air vessel.
   *
   * @param residualShare share of the swing that the vessel lets through, 0 to 1
   * @return the ripple
   */
  public FlowRipple damped(double residualShare) {
    if (!(residualShare >= 0 && residualShare <= 1)) {
      throw new IllegalArgumentException(
          "the share that a vessel lets through lies in 0 to 1 but was " + residualShare);
    }
    return new FlowRipple(
        1 - residualShare * (1 - leastRatio), 1 + residualShare * (greatestRatio - 1));
  }

  /**
   * Least momentary velocity: the one to hold against the deposition velocity.
   *
   * @param meanVelocityMps mean velocity, not negative [m/s]
   * @return velocity [m/s]
   */
  public double leastVelocityMps(double meanVelocityMps) {
    return leastRatio * requireVelocity(meanVelocityMps);
  }

  /**
   * Greatest momentary velocity: the one for friction and pressure.
   *
   * @param meanVelocityMps mean velocity, not negative [m/s]
   * @return velocity [m/s]
   */
  public double greatestVelocityMps(double meanVelocityMps) {
    return greatestRatio * requireVelocity(meanVelocityMps);
  }

  private static double requireVelocity(double velocity) {
    if (!(velocity >= 0 && Double.isFinite(velocity))) {
      throw new IllegalArgumentException("a velocity must be >= 0 but was " + velocity + " m/s");
    }
    return velocity;
  }
}
