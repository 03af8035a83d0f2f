package sandslurry.circuit;

import sandslurry.separation.OpenChannel;

/**
 * A flush of an alley: uniform flow of a given depth for a given time.
 *
 * <p>Practice: 5 ft/s, 3 in deep, at least 10 s (University of Missouri Extension WQ313 and WQ314).
 *
 * @param alley the alley
 * @param depthM depth of the flush [m]
 * @param durationS time that it runs [s]
 */
public record Flush(OpenChannel alley, double depthM, double durationS) {
  /** Checks depth and time. */
  public Flush {
    if (!(depthM > 0 && Double.isFinite(depthM)) || !(durationS > 0)) {
      throw new IllegalArgumentException(
          "depth and time must be > 0 but were " + depthM + " m and " + durationS + " s");
    }
  }

  /**
   * Velocity.
   *
   * @return that of uniform flow [m/s]
   */
  public double velocityMps() {
    return alley.uniformVelocityMps(depthM);
  }

  /**
   * Rate.
   *
   * @return width times depth times velocity [m3/s]
   */
  public double flowM3ps() {
    return alley.widthM() * depthM * velocityMps();
  }

  /**
   * Volume of one flush.
   *
   * @return rate times time [m3]
   */
  public double volumeM3() {
    return flowM3ps() * durationS;
  }

  /**
   * The slope that gives a velocity at this depth.
   *
   * @param velocityMps velocity wanted [m/s]
   * @return (n V)² / R^(4/3) [m/m]
   */
  public double slopeFor(double velocityMps) {
    double friction = alley.manningN() * velocityMps;
    return friction * friction / Math.pow(alley.hydraulicRadiusM(depthM), 4.0 / 3);
  }
}
