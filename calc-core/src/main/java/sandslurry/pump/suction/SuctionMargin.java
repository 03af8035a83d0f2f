package sandslurry.pump.suction;

import sandslurry.pump.rotodynamic.BestPoint;

/**
 * How much NPSH must be left over: a ratio and a difference, of which the greater counts.
 *
 * <pre>NPSH needed = max(ratio × NPSHr, NPSHr + margin)</pre>
 *
 * <p>At NPSHr itself the pump already cavitates and has lost 3 % of its head. The numbers for water
 * and wastewater are those of ANSI/HI 9.6.1 as tabulated in a public summary of it (read at
 * studylib.net, document 26301095).
 *
 * @param leastRatio NPSH available over required, at least 1
 * @param leastDifferenceM NPSH available less required, not negative [m]
 */
public record SuctionMargin(double leastRatio, double leastDifferenceM) {
  /** Water and wastewater, suction specific speed below 145 (metric) or 7500 (US). */
  public static final SuctionMargin WASTEWATER = new SuctionMargin(1.1, 0.6);

  /** Water and wastewater, suction specific speed above 145 (metric) or 7500 (US). */
  public static final SuctionMargin WASTEWATER_HIGH_SUCTION_SPEED = new SuctionMargin(1.2, 1);

  /** Liquor with sand and gas: the wide end of 1.2 to 1.5 (from memory, unverified), and 1 m. */
  public static final SuctionMargin SOLIDS = new SuctionMargin(1.5, 1);

  /**
   * Pump of high suction energy in water or wastewater, by ANSI/HI 9.6.1-1998 (from memory,
   * unverified).
   */
  static final SuctionMargin HIGH_ENERGY = new SuctionMargin(1.3, 1.5);

  /** The same, of very high suction energy (from memory, unverified). */
  public static final SuctionMargin VERY_HIGH_ENERGY = new SuctionMargin(2, 1.5);

  /** Suction specific speed, metric, above which water and wastewater ask for more margin. */
  static final double HIGH_SUCTION_SPECIFIC_SPEED = 145;

  /**
   * What a pump asks for in water and wastewater.
   *
   * @param suctionSpecificSpeed metric, see {@link BestPoint#suctionSpecificSpeed}
   * @param energy how hard its inlet works
   * @return the greater of what both ask for
   */
  public static SuctionMargin of(double suctionSpecificSpeed, SuctionEnergy.Grade energy) {
    SuctionMargin bySpeed =
        suctionSpecificSpeed > HIGH_SUCTION_SPECIFIC_SPEED
            ? WASTEWATER_HIGH_SUCTION_SPEED
            : WASTEWATER;
    return switch (energy) {
      case LOW -> bySpeed;
      case HIGH -> bySpeed.or(HIGH_ENERGY);
      case VERY_HIGH -> bySpeed.or(VERY_HIGH_ENERGY);
    };
  }

  /**
   * Both margins at once.
   *
   * @param other another margin
   * @return a margin that is kept when both are
   */
  public SuctionMargin or(SuctionMargin other) {
    return new SuctionMargin(
        Math.max(leastRatio, other.leastRatio), Math.max(leastDifferenceM, other.leastDifferenceM));
  }

  /** Checks the bounds. */
  public SuctionMargin {
    if (!(leastRatio >= 1 && Double.isFinite(leastRatio))
        || !(leastDifferenceM >= 0 && Double.isFinite(leastDifferenceM))) {
      throw new IllegalArgumentException(
          "a margin of NPSH needs a ratio >= 1 and a difference >= 0 but has "
              + leastRatio
              + " and "
              + leastDifferenceM
              + " m");
    }
  }

  /**
   * NPSH that must be available.
   *
   * @param requiredM NPSH that the pump requires, positive [m]
   * @return NPSH needed with the margin [m]
   */
  public double neededM(double requiredM) {
    if (!(requiredM > 0 && Double.isFinite(requiredM))) {
      throw new IllegalArgumentException("NPSH required must be > 0 but was " + requiredM + " m");
    }
    return Math.max(leastRatio * requiredM, requiredM + leastDifferenceM);
  }
}
