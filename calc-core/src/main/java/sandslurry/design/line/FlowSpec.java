package sandslurry.design.line;

import java.util.Optional;

/**
 * The flow rates of the mixture through the line, and the extremes of what flows.
 *
 * @param minimumM3ps the least flow rate at which the line really runs
 * @param designM3ps the flow rate that it is designed for
 * @param maximumM3ps the greatest flow rate at which it really runs
 * @param extremes the worst that comes along
 */
public record FlowSpec(
    double minimumM3ps, double designM3ps, double maximumM3ps, Extremes extremes) {
  /**
   * The worst that comes along, as far as it is known.
   *
   * @param minimumGiven whether the minimumM3ps flow rate was told; otherwise it stands at the
   *     designM3ps flow rate
   * @param highestSand highest volume fraction of sand
   * @param coldestK coldest temperature of the liquid
   * @param warmestK warmest temperature of the liquid
   * @param frost whether the line lies in reach of frost or stands full in it
   */
  public record Extremes(
      boolean minimumGiven,
      Optional<Double> highestSand,
      Optional<Double> coldestK,
      Optional<Double> warmestK,
      boolean frost) {}

  /**
   * The same flow rates where the sand never exceeds a concentration.
   *
   * @param fraction highest volume fraction of sand
   * @return the flow rates
   */
  public FlowSpec withHighestSand(double fraction) {
    return new FlowSpec(
        minimumM3ps,
        designM3ps,
        maximumM3ps,
        new Extremes(
            extremes.minimumGiven(),
            Optional.of(fraction),
            extremes.coldestK(),
            extremes.warmestK(),
            extremes.frost()));
  }
}
