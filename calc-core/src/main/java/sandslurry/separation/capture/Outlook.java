package sandslurry.separation.capture;

/** Which edge of a band of captures is taken for a balance that needs one number. */
public enum Outlook {
  /** The least that the band promises. */
  CAUTIOUS,
  /** The best estimate. */
  LIKELY,
  /** The most that physics allows. */
  HOPEFUL;

  /**
   * The share caught by the relation of this edge alone.
   *
   * @param flow flow and area of the basin
   * @param settlingVelocityMps settling velocity [m/s]
   * @return the share, 0 to 1
   */
  public double caught(BasinFlow flow, double settlingVelocityMps) {
    return switch (this) {
      case CAUTIOUS -> CaptureRelations.MIXED.fraction(flow, settlingVelocityMps).value();
      case LIKELY -> CaptureRelations.TURBULENT.fraction(flow, settlingVelocityMps).value();
      case HOPEFUL -> CaptureRelations.IDEAL.fraction(flow, settlingVelocityMps).value();
    };
  }

  /**
   * The settling velocity at which a share is caught by the relation of this edge.
   *
   * @param flow flow and area of the basin
   * @param share the share, above 0 to below 1
   * @return the velocity: from the overflow velocity times the share (ideal) to times −ln(1 −
   *     share) (mixed) [m/s]
   */
  public double velocityCaughtMps(BasinFlow flow, double share) {
    double fall =
        switch (this) {
          case CAUTIOUS -> -Math.log1p(-share);
          case LIKELY -> CaughtFall.of(share).at(CampDobbins1946.weightOverFall(flow));
          case HOPEFUL -> share;
        };
    return fall * flow.overflowVelocityMps();
  }
}
