package sandslurry.separation.channel;

import sandslurry.separation.Numbers;
import sandslurry.separation.UnitFeed;

/**
 * A flush: a volume let go over a time, faster at first than in the mean.
 *
 * <p>A lane sees neither its mean nor its peak but all flows between; judged at both, the truth
 * lies between. Nothing is said of how the wave flattens on its way.
 *
 * @param volumeM3 volume of the flush [m3]
 * @param durationS time in which it arrives [s]
 * @param peakOverMean highest flow over mean flow, 1 or more: 1 for a tank that empties evenly, 2
 *     for a wave that rises at once and falls evenly to nothing, or any triangle
 */
public record FlushWave(double volumeM3, double durationS, double peakOverMean) {
  /** Peak over mean of a wave of triangular shape. */
  public static final double TRIANGLE = 2;

  /** Checks the bounds. */
  public FlushWave {
    Numbers.positive("the volume of the flush", volumeM3, "m3");
    Numbers.positive("the duration of the flush", durationS, "s");
    if (!(peakOverMean >= 1 && Double.isFinite(peakOverMean))) {
      throw new IllegalArgumentException("peak over mean is 1 or more but was " + peakOverMean);
    }
  }

  /**
   * A flush of given speed and depth in an alley.
   *
   * @param flow the flow in the alley
   * @param durationS how long it runs [s]
   * @return an even flush
   */
  public static FlushWave of(ChannelFlow flow, double durationS) {
    return new FlushWave(flow.flowM3ps() * durationS, durationS, 1);
  }

  /**
   * Mean flow.
   *
   * @return volume over duration [m3/s]
   */
  public double meanM3ps() {
    return volumeM3 / durationS;
  }

  /**
   * Peak flow.
   *
   * @return the mean times the peak over it [m3/s]
   */
  public double peakM3ps() {
    return meanM3ps() * peakOverMean;
  }

  /**
   * A feed at the flow of the wave, with the same concentration of sand and fibre.
   *
   * @param feed the feed at any flow
   * @param flowM3ps flow of the mixture: the mean or the peak [m3/s]
   * @return the feed at that flow
   */
  public static UnitFeed at(UnitFeed feed, double flowM3ps) {
    double factor = Numbers.positive("the flow", flowM3ps, "m3/s") / feed.mixtureM3ps();
    return new UnitFeed(
        feed.liquidM3ps() * factor,
        feed.liquid(),
        feed.finesFraction(),
        feed.dissolvedFraction(),
        feed.fibreKgps() * factor,
        feed.sandDensityKgM3(),
        feed.shape(),
        feed.sizes(),
        feed.sandKgps().stream().map(flow -> flow * factor).toList(),
        feed.settlingFactor());
  }
}
