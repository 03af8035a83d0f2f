package sandslurry.plant;

/**
 * How the dry matter of manure is divided.
 *
 * @param dissolvedShare dissolved solids over all dry matter
 * @param fibreShare what a fine screen could hold over all dry matter; the rest are organic fines
 */
public record ManureSolids(double dissolvedShare, double fibreShare) {
  /**
   * Fresh manure of lactating cows. Sieved wet, 54 % of its dry matter is coarser than 0.125 mm
   * (Meyer, Ristow and Lie 2007, Applied Engineering in Agriculture 23:113, abstract read: 46 % is
   * finer). How much of the finer part is dissolved is not said there; 20 % of all dry matter is
   * from memory, unverified.
   */
  public static final ManureSolids FRESH = new ManureSolids(0.20, 0.54);

  /** Checks that both are shares of one whole. */
  public ManureSolids {
    if (!(dissolvedShare >= 0) || !(fibreShare >= 0) || !(dissolvedShare + fibreShare <= 1)) {
      throw new IllegalArgumentException(
          "shares of dissolved solids and fibre must be >= 0 and sum to 1 at most but were "
              + dissolvedShare
              + " and "
              + fibreShare);
    }
  }

  /**
   * The share of organic fines.
   *
   * @return what is neither dissolved nor fibre
   */
  public double finesShare() {
    return 1 - dissolvedShare - fibreShare;
  }
}
