package sandslurry.separation.lane;

import java.util.List;
import java.util.OptionalDouble;
import sandslurry.correlation.Bound;
import sandslurry.separation.capture.BasinFlow;
import sandslurry.separation.capture.CaptureBand;
import sandslurry.separation.capture.CaughtSize;
import sandslurry.separation.channel.ChannelFlow;

/**
 * What a settling lane does with its feed.
 *
 * <p>Two totals are given. {@link #capture} is what reaches the floor. {@link #retained} leaves out
 * every class that the mean velocity would move again once it lies there. The lane is judged by
 * {@link #retained}, between Vetter (low) and Camp-Dobbins (high): a cautious reading, since a
 * grain that begins to move may still travel only a little way along the floor.
 *
 * @param flow depth, velocity and friction
 * @param depthIsUniform true when the depth is that of uniform flow, false when it was given
 * @param reynoldsNumber Reynolds number on four times the hydraulic radius
 * @param residenceTimeS volume of water over flow [s]
 * @param basin overflow and shear velocity, as the capture relations used them
 * @param classes the classes of the sand, in the order of the feed
 * @param capture shares of all sand caught when nothing is scoured
 * @param retained shares of all sand caught and not scoured
 * @param caughtHalf the size of which half is caught
 * @param caughtMost the size of which 95 % is caught
 * @param largestScouredM the largest grain that the flow would move, by the more cautious of Camp
 *     (β = 0.04) and Shields [m]
 * @param sandKgPs mean mass flow of sand into the lane over the whole day [kg/s]
 * @param storageKg dry sand that the storage depth holds [kg]
 * @param excesses what lay outside the published ranges, each once
 */
public record LaneResult(
    ChannelFlow flow,
    boolean depthIsUniform,
    double reynoldsNumber,
    double residenceTimeS,
    BasinFlow basin,
    List<LaneClass> classes,
    CaptureBand capture,
    CaptureBand retained,
    CaughtSize caughtHalf,
    CaughtSize caughtMost,
    double largestScouredM,
    double sandKgPs,
    double storageKg,
    List<Bound.Excess> excesses) {
  /** Copies the lists. */
  public LaneResult {
    classes = List.copyOf(classes);
    excesses = List.copyOf(excesses);
  }

  /**
   * Sand left on the floor.
   *
   * @param share the share retained, from {@link #retained} or {@link #capture}
   * @return mean mass flow over the whole day [kg/s]
   */
  public double depositedKgPs(double share) {
    return sandKgPs * share;
  }

  /**
   * Time until the storage depth is full of sand.
   *
   * @param share the share retained, from {@link #retained} or {@link #capture}; the greater share
   *     fills the lane sooner
   * @return the time [s], or nothing when no sand is left on the floor
   */
  public OptionalDouble fillTimeS(double share) {
    double time = storageKg / depositedKgPs(share);
    return Double.isFinite(time) ? OptionalDouble.of(time) : OptionalDouble.empty();
  }
}
