package sandslurry.material.sand;

/**
 * The grains between two sizes, spread evenly over the logarithm of size.
 *
 * @param lowM the lower size, positive [m]
 * @param highM the upper size, the same for grains of one size [m]
 */
public record GrainRange(double lowM, double highM) {
  /** Checks the order of the sizes. */
  public GrainRange {
    if (!(lowM > 0 && highM >= lowM && Double.isFinite(highM))) {
      throw new IllegalArgumentException(
          "sizes of grains must be > 0 and in order but are " + lowM + " m and " + highM + " m");
    }
  }

  /**
   * The size that stands for the range.
   *
   * @return the geometric mean of its ends [m]
   */
  public double meanM() {
    return Math.sqrt(lowM * highM);
  }
}
