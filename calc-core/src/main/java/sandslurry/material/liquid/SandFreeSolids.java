package sandslurry.material.liquid;

/**
 * Total solids without sand from a laboratory value that counts the sand as solids.
 *
 * <p>Rheology follows the manure's own solids. A laboratory dries and weighs the whole sample, so
 * that sand-laden manure of 13 % sand-free solids may be reported as 30 % and more. With TS the
 * total solids reported and x the sand, both over the mass of the whole sample, a balance of mass
 * gives
 *
 * <pre>TS_free = (TS − x) / (1 − x)</pre>
 *
 * <p>Where the sand was not weighed, volatile solids tell it: sand does not burn. With VS volatile
 * solids over the mass of the sample and r the volatile share of dry manure, x = TS − VS/r.
 */
public final class SandFreeSolids {
  /**
   * Volatile share of the dry matter of fresh dairy manure, 0.85: 16 of 19 lb and 18 of 21 lb a day
   * in the Agricultural Waste Management Field Handbook, ch. 4 (2008), table 4-5; from memory,
   * unverified. Digested or stored manure has less.
   */
  public static final double VOLATILE_SHARE = 0.85;

  /** A sample without sand, but for the rounding of the difference. */
  private static final double ROUNDING = 1e-12;

  private SandFreeSolids() {}

  /**
   * From the sand weighed in the sample.
   *
   * @param totalSolids dry matter with sand over mass of the sample
   * @param sand dry sand over mass of the sample
   * @return dry matter without sand over mass without sand
   * @throws IllegalArgumentException unless 0 ≤ sand ≤ total solids ≤ 1 and sand is less than 1
   */
  public static double fromSand(double totalSolids, double sand) {
    if (!(sand >= 0 && sand <= totalSolids && totalSolids <= 1 && sand < 1)) {
      throw new IllegalArgumentException(
          "need 0 <= sand <= total solids <= 1 but have sand "
              + sand
              + " and total solids "
              + totalSolids);
    }
    return (totalSolids - sand) / (1 - sand);
  }

  /**
   * From the volatile solids of the sample.
   *
   * @param totalSolids dry matter with sand over mass of the sample
   * @param volatileSolids what burns off the dry matter, over mass of the sample
   * @return dry matter without sand over mass without sand
   * @throws IllegalArgumentException if there are more volatile solids than {@link #VOLATILE_SHARE}
   *     of the total solids: then there is no sand in the sample, or the share does not hold
   */
  public static double fromVolatileSolids(double totalSolids, double volatileSolids) {
    double sand = totalSolids - volatileSolids / VOLATILE_SHARE;
    return fromSand(totalSolids, Math.abs(sand) < ROUNDING ? 0 : sand);
  }
}
