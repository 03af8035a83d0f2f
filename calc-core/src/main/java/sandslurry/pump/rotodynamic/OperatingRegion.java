package sandslurry.pump.rotodynamic;

import java.util.OptionalDouble;

/**
 * Where on its curve a pump may work, by shares of the flow at its best efficiency.
 *
 * <p>ANSI/HI 9.6.3 defines a preferred region by the specific speed: 70 to 120 % up to {@value
 * #HIGH_SPECIFIC_SPEED} metric (4500 US), read in a trade article on its 2012 edition and in the
 * open Engineering Data Library of the Hydraulic Institute; 80 to 115 % above, of which the lower
 * end was read there too and the upper is from memory, unverified (two trade articles say 110 and
 * 120 %). It also defines an allowable region, which only the maker can state. Below the allowable
 * region the liquid recirculates in the impeller, shakes shaft and seal, and sand is milled; above
 * it the pump may cavitate and the motor be overloaded.
 *
 * @param bestFlowM3ps flow at the best efficiency [m3/s]
 * @param allowableLow least allowable flow over the best; with it times the best flow as minimum
 *     continuous flow
 * @param preferredLow least preferred flow over the best
 * @param preferredHigh greatest preferred flow over the best
 * @param allowableHigh greatest allowable flow over the best
 */
public record OperatingRegion(
    double bestFlowM3ps,
    double allowableLow,
    double preferredLow,
    double preferredHigh,
    double allowableHigh) {
  private static final double HAIR = 1e-9;

  /** Specific speed, metric, above which the preferred region is narrower: 4500 US over 51.6. */
  static final double HIGH_SPECIFIC_SPEED = 87.2;

  /** Least preferred flow over the best at a high specific speed. */
  static final double NARROW_LOW = 0.8;

  /** Greatest preferred flow over the best at a high specific speed (from memory, unverified). */
  static final double NARROW_HIGH = 1.15;

  /** Least preferred flow of ANSI/HI 9.6.3 over the best, low specific speed. */
  public static final double PREFERRED_LOW = 0.7;

  /** Greatest preferred flow of ANSI/HI 9.6.3 over the best, low specific speed. */
  static final double PREFERRED_HIGH = 1.2;

  /** Least allowable flow over the best when the maker states none (common practice, no source). */
  static final double ALLOWABLE_LOW = 0.5;

  /** Greatest allowable flow over the best when the maker states none (common practice). */
  static final double ALLOWABLE_HIGH = 1.25;

  /** Checks that the limits are in order. */
  public OperatingRegion {
    if (!(bestFlowM3ps > 0 && Double.isFinite(bestFlowM3ps))
        || !(allowableLow >= 0)
        || !(allowableLow <= preferredLow)
        || !(preferredLow < preferredHigh)
        || !(preferredHigh <= allowableHigh)) {
      throw new IllegalArgumentException(
          "a region of operation needs a best flow > 0 and limits in order but has "
              + bestFlowM3ps
              + " m3/s and "
              + allowableLow
              + ", "
              + preferredLow
              + ", "
              + preferredHigh
              + ", "
              + allowableHigh);
    }
  }

  /**
   * The region of a pump whose maker has stated none.
   *
   * @param bestFlowM3ps flow at the best efficiency in the liquid pumped, positive [m3/s]
   * @param specificSpeed specific speed in water, metric, see {@link BestPoint#specificSpeed}
   * @return the region
   */
  public static OperatingRegion common(double bestFlowM3ps, double specificSpeed) {
    boolean narrow = specificSpeed > HIGH_SPECIFIC_SPEED;
    return new OperatingRegion(
        bestFlowM3ps,
        ALLOWABLE_LOW,
        narrow ? NARROW_LOW : PREFERRED_LOW,
        narrow ? NARROW_HIGH : PREFERRED_HIGH,
        ALLOWABLE_HIGH);
  }

  /**
   * The region with the limits that the maker allows. Where the maker allows less than is
   * preferred, the preferred region shrinks with it.
   *
   * @param leastM3ps least flow allowed, if known, not negative [m3/s]
   * @param mostM3ps greatest flow allowed, if known, above the least [m3/s]
   * @return the region
   */
  public OperatingRegion within(OptionalDouble leastM3ps, OptionalDouble mostM3ps) {
    double low = leastM3ps.isPresent() ? leastM3ps.getAsDouble() / bestFlowM3ps : allowableLow;
    double high = mostM3ps.isPresent() ? mostM3ps.getAsDouble() / bestFlowM3ps : allowableHigh;
    if (!(high > low)) {
      if (mostM3ps.isPresent() && leastM3ps.isPresent()) {
        throw new IllegalArgumentException(
            "the greatest flow allowed must be above the least, but they are "
                + mostM3ps.getAsDouble()
                + " and "
                + leastM3ps.getAsDouble()
                + " m3/s");
      }
      // A stated limit beyond the customary other one moves that one along.
      low = leastM3ps.isPresent() ? low : Math.min(low, high * (1 - HAIR));
      high = mostM3ps.isPresent() ? high : Math.max(high, low * (1 + HAIR));
    }
    double from = Math.min(Math.max(preferredLow, low), high * (1 - HAIR));
    double to = Math.max(Math.min(preferredHigh, high), from * (1 + HAIR));
    return new OperatingRegion(bestFlowM3ps, Math.min(low, from), from, to, Math.max(high, to));
  }

  /**
   * The least flow at which the pump may run for long.
   *
   * @return the flow [m3/s]
   */
  public double minimumFlowM3ps() {
    return allowableLow * bestFlowM3ps;
  }

  /**
   * Where a flow lies.
   *
   * @param flowM3ps flow of the pump, not negative [m3/s]
   * @return the place; a limit belongs to the better side
   */
  public Place place(double flowM3ps) {
    if (!(flowM3ps >= 0 && Double.isFinite(flowM3ps))) {
      throw new IllegalArgumentException("a flow must be >= 0 but was " + flowM3ps + " m3/s");
    }
    double ratio = flowM3ps / bestFlowM3ps;
    if (ratio < allowableLow) {
      return Place.BELOW_ALLOWABLE;
    }
    if (ratio < preferredLow) {
      return Place.BELOW_PREFERRED;
    }
    if (ratio <= preferredHigh) {
      return Place.PREFERRED;
    }
    return ratio <= allowableHigh ? Place.ABOVE_PREFERRED : Place.ABOVE_ALLOWABLE;
  }

  /** Where on its curve a pump works. */
  public enum Place {
    /** Below the allowable region. */
    BELOW_ALLOWABLE("below the allowable region", false),
    /** Allowable, but below the preferred region. */
    BELOW_PREFERRED("below the preferred region", true),
    /** In the preferred region. */
    PREFERRED("in the preferred region", true),
    /** Allowable, but above the preferred region. */
    ABOVE_PREFERRED("above the preferred region", true),
    /** Above the allowable region. */
    ABOVE_ALLOWABLE("above the allowable region", false);

    private final String words;
    private final boolean allowable;

    Place(String words, boolean allowable) {
      this.words = words;
      this.allowable = allowable;
    }

    /**
     * The place in words.
     *
     * @return for example "in the preferred region"
     */
    public String words() {
      return words;
    }

    /**
     * Says whether the pump may work there for long.
     *
     * @return true in the allowable region
     */
    public boolean allowable() {
      return allowable;
    }
  }
}
