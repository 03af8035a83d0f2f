package sandslurry.separation.lane;

import java.util.List;
import java.util.OptionalDouble;
import sandslurry.correlation.Physics;
import sandslurry.separation.Numbers;
import sandslurry.separation.OrganicMatter;
import sandslurry.separation.UnitFeed;
import sandslurry.separation.capture.BasinFlow;
import sandslurry.separation.capture.Krone1962;
import sandslurry.separation.capture.Outlook;
import sandslurry.separation.channel.ChannelFlow;
import sandslurry.separation.channel.OpenChannel;

/**
 * A length of settling lane of one width. A lane that steps in width is a series of them.
 *
 * <p>A weir at the end of the reach holds the water at one level while the deposit rises under it,
 * so depth is lost and velocity gained. The depth never falls below that of uniform flow, or of
 * critical flow, (q²/g)^(1/3), on a level floor: then the water rises with the bed.
 *
 * @param channel width, slope and roughness
 * @param lengthM length [m]
 * @param waterLevelM level of the water above the clean floor where a weir sets it; empty for
 *     uniform flow [m]
 * @param storageDepthM deposit that the reach may hold before it is cleaned, 0 or more [m]
 * @param effectiveShare share of the plan area that works, above 0 to 1
 */
public record LaneReach(
    OpenChannel channel,
    double lengthM,
    OptionalDouble waterLevelM,
    double storageDepthM,
    double effectiveShare) {
  /** Checks every bound. */
  public LaneReach {
    Numbers.positive("the length", lengthM, "m");
    waterLevelM.ifPresent(level -> Numbers.positive("the level of the water", level, "m"));
    Numbers.notNegative("the storage depth", storageDepthM, "m");
    if (!(effectiveShare > 0 && effectiveShare <= 1)) {
      throw new IllegalArgumentException(
          "the effective share lies in 0 (excluded) to 1 but was " + effectiveShare);
    }
    if (waterLevelM.isEmpty() && !(channel.slope() > 0)) {
      throw new IllegalArgumentException(
          "a level floor has no depth of uniform flow: give a slope > 0 or the level of the water");
    }
  }

  /**
   * Plan area.
   *
   * @return width times length [m2]
   */
  public double areaM2() {
    return channel.widthM() * lengthM;
  }

  /**
   * The flow above a deposit.
   *
   * @param flowM3ps flow of the mixture, positive [m3/s]
   * @param depositM thickness of the deposit [m]
   * @return the flow
   */
  public ChannelFlow flow(double flowM3ps, double depositM) {
    double least = channel.slope() > 0 ? channel.normalDepthM(flowM3ps) : criticalDepthM(flowM3ps);
    double left = waterLevelM.isPresent() ? waterLevelM.getAsDouble() - depositM : 0;
    return channel.flow(flowM3ps, Math.max(left, least));
  }

  private double criticalDepthM(double flowM3ps) {
    double perWidth = flowM3ps / channel.widthM();
    return Math.cbrt(perWidth * perWidth / Physics.GRAVITY);
  }

  /**
   * Shares of a feed that come to rest in the reach: what is caught, with the settling velocity
   * lessened by {@link Krone1962} for the nearness of the velocity at which a grain is lost again.
   *
   * <p>That velocity is what the outlooks differ in. Cautious: the grain moves along the floor (the
   * lower of Camp's, β = 0.04, and Shields's velocity), as where nothing at the end holds it back.
   * Likely: turbulence also holds it up, its settling velocity being below the shear velocity
   * (Bagnold 1966), as where a weir or a porous wall stops what creeps. Hopeful: nothing is lost
   * again.
   *
   * @param feed what enters the reach
   * @param grains its settling and scour velocities by grain size
   * @param flow the flow in it
   * @param outlook which relation of the band, and what is lost again
   * @return the share of each class, 0 to 1
   */
  List<Double> retained(UnitFeed feed, GrainCurves grains, ChannelFlow flow, Outlook outlook) {
    return new RestingSand(
            feed, grains, flow.velocityMps(), flow.darcyFrictionFactor(), basin(flow), outlook)
        .shares();
  }

  /**
   * Share of the fibre that comes to rest in the reach: lessened by {@link Krone1962} for the
   * nearness of the velocity at which organic matter moves, save in the hopeful outlook.
   *
   * @param organic how it settles
   * @param flow the flow in the reach
   * @param outlook which relation of the band
   * @return the share of all fibre, 0 to 1
   */
  public double retainedFibre(OrganicMatter organic, ChannelFlow flow, Outlook outlook) {
    double nearness =
        outlook == Outlook.HOPEFUL ? 0 : flow.velocityMps() / organic.scourVelocityMps();
    double velocity = organic.settlingVelocityMps() * Krone1962.factor(nearness);
    return organic.settleableShare() * outlook.caught(basin(flow), velocity);
  }

  BasinFlow basin(ChannelFlow flow) {
    return new BasinFlow(flow.flowM3ps() / (areaM2() * effectiveShare), flow.shearVelocityMps());
  }
}
