package sandslurry.pump.rotodynamic;

/**
 * Rate of erosive wear relative to a design state: by how much faster, never how fast.
 *
 * <pre>index = (V/V_design)ⁿ,   n = 2 to 3.5</pre>
 *
 * <p>The range of the power n is that of Wiedenroth (1984) for the abrasive wear of a given slurry,
 * read at pumpandflow.com.au/rules-of-thumb (read). No reliable figures exist for the wear itself.
 * For a pump at another speed take the ratio of the speeds.
 *
 * @param low the lower of the two values
 * @param high the higher of the two values
 */
public record WearIndex(double low, double high) {
  /** Where the range of the power comes from. */
  public static final String SOURCE =
      "Wiedenroth (1984), power 2 to 3.5, read at pumpandflow.com.au/rules-of-thumb";

  /** Lower power. */
  public static final double LOW_POWER = 2;

  /** Higher power. */
  public static final double HIGH_POWER = 3.5;

  /**
   * The index of a state.
   *
   * @param velocityMps V, not negative [m/s]
   * @param designVelocityMps V_design, positive [m/s]
   * @return the index by both powers; 1 at the design state
   */
  public static WearIndex of(double velocityMps, double designVelocityMps) {
    if (!(velocityMps >= 0 && Double.isFinite(velocityMps))
        || !(designVelocityMps > 0 && Double.isFinite(designVelocityMps))) {
      throw new IllegalArgumentException(
          "an index of wear needs a velocity >= 0 and one of design > 0 but has "
              + velocityMps
              + " and "
              + designVelocityMps
              + " m/s");
    }
    double ratio = velocityMps / designVelocityMps;
    double slow = Math.pow(ratio, LOW_POWER);
    double fast = Math.pow(ratio, HIGH_POWER);
    return new WearIndex(Math.min(slow, fast), Math.max(slow, fast));
  }
}
