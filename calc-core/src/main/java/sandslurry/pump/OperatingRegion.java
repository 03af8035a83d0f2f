package sandslurry.pump;

/**
 * Where on its curve a pump may work, by shares of the flow at its best efficiency.
 *
 * <p>ANSI/HI 9.6.3 defines a preferred region, 70 to 120 % for pumps of low specific speed and 80
 * to 115 % for others (numbers from memory, unverified), and an allowable region, which only the
 * maker can state. Below the allowable region the liquid recirculates in the impeller, shakes shaft
 * and seal, and sand is milled; above it the pump may cavitate and the motor be overloaded.
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
  /** Least preferred flow of ANSI/HI 9.6.3 over the best, low specific speed. */
  public static final double PREFERRED_LOW = 0.7;

  /** Greatest preferred flow of ANSI/HI 9.6.3 over the best, low specific speed. */
  public static final double PREFERRED_HIGH = 1.2;

  /** Least allowable flow over the best when the maker states none (common practice, no source). */
  public static final double ALLOWABLE_LOW = 0.5;

  /** Greatest allowable flow over the best when the maker states none (common practice). */
  public static final double ALLOWABLE_HIGH = 1.25;

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
   * @param curve the curve, of clear liquid or with solids
   * @return the region about {@link PumpCurve#bestEfficiencyFlowM3ps}
   * @throws IllegalArgumentException if the curve has its best efficiency at no flow
   */
  public static OperatingRegion of(PumpCurve curve) {
    return new OperatingRegion(
        curve.bestEfficiencyFlowM3ps(),
        ALLOWABLE_LOW,
        PREFERRED_LOW,
        PREFERRED_HIGH,
        ALLOWABLE_HIGH);
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
