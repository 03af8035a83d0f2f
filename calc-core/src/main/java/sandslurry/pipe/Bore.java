package sandslurry.pipe;

/**
 * The inside of a pipe, in plain SI.
 *
 * @param diameterM inside diameter [m]
 * @param roughnessM equivalent sand roughness of the wall, 0 for a smooth one [m]
 */
public record Bore(double diameterM, double roughnessM) {
  /** Checks that the diameter is positive and the roughness small beside it. */
  public Bore {
    if (!(diameterM > 0) || !(roughnessM >= 0 && roughnessM < diameterM / 2)) {
      throw new IllegalArgumentException(
          "a bore needs a diameter > 0 and a roughness of 0 to half of it but has "
              + diameterM
              + " m and "
              + roughnessM
              + " m");
    }
  }

  /**
   * Cross-section.
   *
   * @return π D²/4 [m2]
   */
  public double areaM2() {
    return Math.PI * diameterM * diameterM / 4;
  }

  /**
   * Mean velocity of a flow.
   *
   * @param flowM3ps the flow [m3/s]
   * @return flow over cross-section [m/s]
   */
  public double velocityMps(double flowM3ps) {
    return flowM3ps / areaM2();
  }
}
