package sandslurry.separation.lane;

import java.util.List;
import java.util.function.BiFunction;
import sandslurry.separation.OrganicMatter;
import sandslurry.separation.UnitFeed;
import sandslurry.separation.capture.Outlook;

/**
 * One cleaning cycle of a lane, from clean to clean-out, in each outlook.
 *
 * <p>The likely course sets the time of the clean-out: when the lane is full, or keeps too little.
 * In the other outlooks it is cleaned at the same time, or before when it is full.
 *
 * @param cautious where every grain that the flow moves is lost again
 * @param likely where what turbulence holds up is lost again
 * @param hopeful where nothing is lost again
 */
public record LaneCycle(LaneFilling cautious, LaneFilling likely, LaneFilling hopeful) {
  /**
   * Follows a lane through its cycle.
   *
   * @param reaches the reaches, from the inlet on
   * @param feed what enters while the lane runs
   * @param organic how the fibre settles in its liquor
   * @param runningShare share of the day that it runs, above 0 to 1
   * @param porosity share of the deposit that is not sand, 0 to below 1
   * @return the cycle
   */
  static LaneCycle of(
      List<LaneReach> reaches,
      UnitFeed feed,
      OrganicMatter organic,
      double runningShare,
      double porosity) {
    return of(reaches, feed, organic, runningShare, porosity, LaneFilling.STEPS);
  }

  /**
   * Follows a lane through its cycle by few steps, to try out many lanes; it differs from {@link
   * #of} by about a hundredth.
   *
   * @param reaches the reaches, from the inlet on
   * @param feed what enters while the lane runs
   * @param organic how the fibre settles in its liquor
   * @param runningShare share of the day that it runs, above 0 to 1
   * @return the cycle
   */
  public static LaneCycle coarse(
      List<LaneReach> reaches, UnitFeed feed, OrganicMatter organic, double runningShare) {
    return of(
        reaches, feed, organic, runningShare, SettlingLane.USUAL_POROSITY, LaneFilling.COARSE);
  }

  private static LaneCycle of(
      List<LaneReach> reaches,
      UnitFeed feed,
      OrganicMatter organic,
      double runningShare,
      double porosity,
      int steps) {
    BiFunction<Outlook, LaneFilling.CleanOut, LaneFilling> filled =
        (outlook, cleanOut) ->
            LaneFilling.filled(
                reaches, feed, organic, runningShare, porosity, outlook, cleanOut, steps);
    LaneFilling likely =
        filled.apply(
            Outlook.LIKELY,
            new LaneFilling.CleanOut(LaneFilling.LEAST_KEPT, Double.POSITIVE_INFINITY));
    LaneFilling.CleanOut same =
        new LaneFilling.CleanOut(0, likely.intervalS().orElse(Double.POSITIVE_INFINITY));
    return new LaneCycle(
        filled.apply(Outlook.CAUTIOUS, same), likely, filled.apply(Outlook.HOPEFUL, same));
  }

  /**
   * Whether the lane keeps a share of the sand for certain: on average over the cycle even in the
   * cautious outlook, and just before it is cleaned in the likely one.
   *
   * @param share the share wanted
   * @return true when it does
   */
  public boolean keeps(double share) {
    return cautious.meanRecovery() >= share && likely.lastRecovery() >= share;
  }
}
