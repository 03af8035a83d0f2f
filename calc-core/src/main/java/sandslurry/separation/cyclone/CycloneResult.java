package sandslurry.separation.cyclone;

import sandslurry.separation.Partition;

/**
 * What hydrocyclones do with their feed.
 *
 * @param performance cut size, pressure drop, split and sharpness by the model
 * @param feed what flows into one of them
 * @param partition shares of the feed that go to the underflow
 * @param underflowSand volume fraction of sand in the underflow
 * @param overflowSand volume fraction of sand in the overflow
 * @param underflowMedianM median size of the sand in the underflow, 0 without sand [m]
 * @param ropingPlitt volume fraction above which it ropes by {@link Roping#plittFlintoffStuffco}
 * @param ropingMularJull the same by {@link Roping#mularJull}
 * @param packed whether the apex cannot pass the sand, so that the rest goes out above
 * @param hydraulicPowerW pressure drop times flow of all of them; the pump adds its own loss [W]
 * @param headM pressure drop as head of the mixture [m]
 */
// More than ten components: each is shown, and made in one pass.
public record CycloneResult(
    CyclonePerformance performance,
    CycloneFeed feed,
    Partition partition,
    double underflowSand,
    double overflowSand,
    double underflowMedianM,
    double ropingPlitt,
    double ropingMularJull,
    boolean packed,
    double hydraulicPowerW,
    double headM) {
  /**
   * The lower of the two roping limits.
   *
   * @return the volume fraction of sand in the underflow
   */
  public double ropingLimit() {
    return Math.min(ropingPlitt, ropingMularJull);
  }

  /**
   * Whether the underflow comes as a rope by either limit.
   *
   * @return true when it holds more sand than the lower limit
   */
  public boolean ropes() {
    return underflowSand > ropingLimit();
  }
}
