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

  double of(CaptureBand band) {
    return switch (this) {
      case CAUTIOUS -> band.vetter();
      case LIKELY -> band.campDobbins();
      case HOPEFUL -> band.ideal();
    };
  }
}
