package sandslurry.separation.lane;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import sandslurry.separation.Numbers;
import sandslurry.separation.OrganicMatter;
import sandslurry.separation.UnitFeed;
import sandslurry.separation.capture.Outlook;
import sandslurry.separation.channel.ChannelFlow;
import sandslurry.separation.channel.OpenChannel;

/**
 * The trade that a settling lane is designed by: a slower lane keeps more sand, and more organic
 * matter in it.
 *
 * @param velocityMps mean velocity [m/s]
 * @param depthM depth of water that gives it [m]
 * @param sandRecovery share of the sand that stays
 * @param fibreRetained share of the fibre that stays
 * @param foreignMatter dry matter that is not sand over all dry matter of the deposit
 */
public record LaneTrade(
    double velocityMps,
    double depthM,
    double sandRecovery,
    double fibreRetained,
    double foreignMatter) {
  /**
   * The curve for one lane and feed: width, length and flow stay, the depth is what a weir would
   * have to hold for each velocity.
   *
   * @param reach the lane, clean; its own level of water is not used
   * @param velocitiesMps the velocities asked for, positive [m/s]
   * @param feed the feed
   * @param organic how the fibre settles
   * @param porosity share of the deposit that is not sand, 0 to below 1
   * @param outlook which relation of the band
   * @return one point for each velocity
   */
  public static List<LaneTrade> curve(
      LaneReach reach,
      List<Double> velocitiesMps,
      UnitFeed feed,
      OrganicMatter organic,
      double porosity,
      Outlook outlook) {
    // A level floor, so that the depth asked for is the depth there is, below critical depth too.
    OpenChannel level = new OpenChannel(reach.channel().widthM(), 0, reach.channel().manningN());
    List<LaneTrade> points = new ArrayList<>();
    for (double velocity : velocitiesMps) {
      Numbers.positive("the velocity", velocity, "m/s");
      double depth = feed.mixtureM3ps() / level.widthM() / velocity;
      LaneReach at =
          new LaneReach(
              level, reach.lengthM(), OptionalDouble.of(depth), 1, reach.effectiveShare());
      LaneDeposit deposit =
          LaneDeposit.of(List.of(at), List.of(0.0), feed, organic, porosity, outlook);
      ChannelFlow flow = deposit.flows().get(0);
      points.add(
          new LaneTrade(
              flow.velocityMps(),
              flow.depthM(),
              deposit.sandRecovery(feed),
              deposit.partition().fibre(),
              deposit.foreignMatter()));
    }
    return List.copyOf(points);
  }
}
