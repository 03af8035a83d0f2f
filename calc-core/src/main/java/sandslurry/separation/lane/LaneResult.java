package sandslurry.separation.lane;

import java.util.List;
import sandslurry.correlation.Bound;
import sandslurry.separation.capture.BasinFlow;
import sandslurry.separation.capture.CaughtSize;
import sandslurry.separation.channel.ChannelFlow;

/**
 * What a settling lane does with its feed: the clean lane, class by class, and its cleaning cycle,
 * by which it is judged.
 *
 * @param flow depth, velocity and friction in the clean lane
 * @param reynoldsNumber Reynolds number on four times the hydraulic radius
 * @param basin overflow and shear velocity of the clean lane
 * @param classes the classes of the sand, in the order of the feed
 * @param caughtHalf the size of which half reaches the floor
 * @param caughtMost the size of which 95 % reaches the floor
 * @param sandKgPs mean mass flow of sand into the lane over the whole day [kg/s]
 * @param storageKg dry sand that the storage depth holds [kg]
 * @param cycle from clean to clean-out
 * @param excesses what lay outside the published ranges, each once
 */
public record LaneResult(
    ChannelFlow flow,
    double reynoldsNumber,
    BasinFlow basin,
    List<LaneClass> classes,
    CaughtSize caughtHalf,
    CaughtSize caughtMost,
    double sandKgPs,
    double storageKg,
    LaneCycle cycle,
    List<Bound.Excess> excesses) {
  /** Copies the lists. */
  public LaneResult {
    classes = List.copyOf(classes);
    excesses = List.copyOf(excesses);
  }

  /**
   * Time that the water spends in the clean lane.
   *
   * @return volume of water over flow [s]
   */
  public double residenceTimeS() {
    return flow.depthM() / basin.overflowVelocityMps();
  }

  /**
   * Share of the sand that a mean velocity moves on the floor.
   *
   * @param velocityMps the velocity [m/s]
   * @return the share by mass of the classes that begin to move below it
   */
  public double movedShare(double velocityMps) {
    return classes.stream()
        .filter(one -> velocityMps > one.scourVelocityMps())
        .mapToDouble(LaneClass::share)
        .sum();
  }
}
