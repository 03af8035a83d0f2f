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
 * @param ropingLimit volume fraction above which it ropes, the lower of {@link Roping}
 * @param packed whether the apex cannot pass the sand, so that the rest goes out above
 * @param hydraulicPowerW pressure drop times flow of all of them; the pump adds its own loss [W]
 * @param headM pressure drop as head of the mixture [m]
 */
public record CycloneResult(
    CyclonePerformance performance,
    CycloneFeed feed,
    Partition partition,
    double underflowSand,
    double overflowSand,
    double underflowMedianM,
    double ropingLimit,
    boolean packed,
    double hydraulicPowerW,
    double headM) {
  /**
   * Whether the underflow comes as a rope.
   *
   * @return true when it holds more sand than the lower limit
   */
  public boolean ropes() {
    return underflowSand > ropingLimit;
  }
}
