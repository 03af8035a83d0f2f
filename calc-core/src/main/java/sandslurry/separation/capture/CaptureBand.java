package sandslurry.separation.capture;

/**
 * Shares caught by three relations, from the most to the least hopeful.
 *
 * @param ideal by {@link HazenIdeal1904}: no lane of the same area does better
 * @param campDobbins by {@link CampDobbins1946}: with the turbulence of the lane
 * @param vetter by {@link Vetter1940}: turbulence without limit
 */
public record CaptureBand(double ideal, double campDobbins, double vetter) {
  /** Checks that the shares lie in 0 to 1 and in their order. */
  public CaptureBand {
    // The sums of many classes may pass 1, or each other, by rounding.
    double slack = 1e-9;
    if (!(vetter >= 0
        && vetter <= campDobbins + slack
        && campDobbins <= ideal + slack
        && ideal <= 1 + slack)) {
      throw new IllegalArgumentException(
          "need 0 <= Vetter <= Camp-Dobbins <= ideal <= 1 but have "
              + vetter
              + ", "
              + campDobbins
              + ", "
              + ideal);
    }
  }

  /**
   * The band of a basin for one settling velocity.
   *
   * @param flow flow and area of the basin
   * @param settlingVelocityMps settling velocity [m/s]
   * @return the captures, each 0 to 1
   */
  public static CaptureBand of(BasinFlow flow, double settlingVelocityMps) {
    return new CaptureBand(
        CaptureRelations.IDEAL.fraction(flow, settlingVelocityMps).value(),
        CaptureRelations.TURBULENT.fraction(flow, settlingVelocityMps).value(),
        CaptureRelations.MIXED.fraction(flow, settlingVelocityMps).value());
  }
}
