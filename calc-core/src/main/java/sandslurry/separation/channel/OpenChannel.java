package sandslurry.separation.channel;

import sandslurry.numeric.Roots;

/**
 * A rectangular open channel, with Manning's formula for uniform flow in it.
 *
 * <pre>V = R^(2/3) S^(1/2) / n,   R = W h / (W + 2 h)</pre>
 *
 * <p>V mean velocity [m/s]; R hydraulic radius [m]; S slope of the floor [m/m]; n Manning's
 * roughness [s/m^(1/3)], the number that every table lists, the same in metric and US practice; W
 * width [m]; h depth [m]. The formula holds for fully rough turbulent flow; see {@link
 * ChannelFlow#TURBULENT}.
 *
 * <p>Source: Manning (1891), Transactions of the Institution of Civil Engineers of Ireland
 * 20:161-207 (citation from memory, unverified); the formula is that of any textbook of open
 * channels, such as Chow (1959).
 *
 * @param widthM width [m]
 * @param slope fall of the floor over length; 0 for a level floor, on which no uniform flow exists
 * @param manningN Manning's roughness n [s/m^(1/3)]
 */
public record OpenChannel(double widthM, double slope, double manningN) {
  /** Checks that width and roughness are positive and the slope not negative. */
  public OpenChannel {
    if (!(widthM > 0 && Double.isFinite(widthM))) {
      throw new IllegalArgumentException("the width must be > 0 but was " + widthM + " m");
    }
    if (!(slope >= 0 && Double.isFinite(slope))) {
      throw new IllegalArgumentException("the slope must be >= 0 but was " + slope);
    }
    if (!(manningN > 0 && Double.isFinite(manningN))) {
      throw new IllegalArgumentException("Manning's n must be > 0 but was " + manningN);
    }
  }

  /**
   * Hydraulic radius.
   *
   * @param depthM depth of water [m]
   * @return W h / (W + 2 h) [m]
   */
  public double hydraulicRadiusM(double depthM) {
    requireDepth(depthM);
    return widthM / (widthM / depthM + 2);
  }

  /**
   * Mean velocity of uniform flow.
   *
   * @param depthM depth of water [m]
   * @return the velocity, 0 on a level floor [m/s]
   */
  public double uniformVelocityMps(double depthM) {
    return Math.pow(hydraulicRadiusM(depthM), 2.0 / 3) * Math.sqrt(slope) / manningN;
  }

  /**
   * Depth of uniform flow: the depth at which the slope just overcomes the friction.
   *
   * <p>The depth lies between two that bound it: R is less than h, so the depth is more than that
   * of a very wide channel; and 1/R = 1/h + 2/W, so R is at least half the lesser of h and W/2.
   *
   * @param flowM3ps the flow [m3/s]
   * @return the depth, 0 without flow [m]
   * @throws IllegalArgumentException if the floor is level: give the depth instead
   */
  public double normalDepthM(double flowM3ps) {
    if (!(flowM3ps >= 0 && Double.isFinite(flowM3ps))) {
      throw new IllegalArgumentException("the flow must be >= 0 but was " + flowM3ps + " m3/s");
    }
    if (!(slope > 0)) {
      throw new IllegalArgumentException(
          "a level floor has no depth of uniform flow: give a slope > 0 or the depth of water");
    }
    if (flowM3ps == 0) {
      return 0;
    }
    double perWidth = flowM3ps * manningN / (widthM * Math.sqrt(slope));
    double wide = Math.pow(perWidth, 0.6);
    double deep = perWidth / Math.pow(widthM / 2, 2.0 / 3);
    return Roots.betweenDecades(
        "depth of uniform flow",
        depth -> Math.log(depth * Math.pow(hydraulicRadiusM(depth), 2.0 / 3) / perWidth),
        0.5 * wide,
        2 * Math.max(wide, deep));
  }

  /**
   * A flow of given depth in this channel, such as a weir at its end imposes.
   *
   * @param flowM3ps the flow [m3/s]
   * @param depthM depth of water [m]
   * @return the flow with what follows from it
   */
  public ChannelFlow flow(double flowM3ps, double depthM) {
    return new ChannelFlow(this, flowM3ps, depthM);
  }

  /**
   * Checks a depth of water.
   *
   * @param depthM the depth [m]
   * @throws IllegalArgumentException unless it is a number above 0
   */
  static void requireDepth(double depthM) {
    if (!(depthM > 0 && Double.isFinite(depthM))) {
      throw new IllegalArgumentException("the depth must be > 0 but was " + depthM + " m");
    }
  }
}
