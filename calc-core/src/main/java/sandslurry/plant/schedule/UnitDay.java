package sandslurry.plant.schedule;

import sandslurry.plant.Stream;

/**
 * What a unit that separates went through in a day.
 *
 * @param name the unit
 * @param meanM3ps flow into it, meant over the day [m3/s]
 * @param peakFeed what it was fed in the step in which most flowed
 * @param peakAtS start of that step since midnight [s]
 * @param captureAtPeak share of the sand fed in that step that left by the first outlet; 0 without
 *     sand
 * @param capture share of the sand fed in the day that left by the first outlet; 0 without sand
 */
public record UnitDay(
    String name,
    double meanM3ps,
    Stream peakFeed,
    double peakAtS,
    double captureAtPeak,
    double capture) {
  /**
   * The greatest flow over the mean of the day.
   *
   * @return the ratio; 1 when nothing flows
   */
  public double peakOverMean() {
    return meanM3ps > 0 ? peakFeed.volumeM3ps() / meanM3ps : 1;
  }
}
