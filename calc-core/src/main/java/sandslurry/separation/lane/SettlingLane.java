package sandslurry.separation.lane;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Estimate;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;
import sandslurry.material.sand.GrainRange;
import sandslurry.numeric.Roots;
import sandslurry.separation.OrganicMatter;
import sandslurry.separation.UnitFeed;
import sandslurry.separation.capture.BasinFlow;
import sandslurry.separation.capture.CaptureBand;
import sandslurry.separation.capture.CaughtSize;
import sandslurry.separation.capture.Outlook;
import sandslurry.separation.channel.ChannelFlow;
import sandslurry.separation.channel.ScourModels;
import sandslurry.settling.SettlingVelocityModel;
import sandslurry.settling.Stokes1851;

/**
 * A settling lane that stands alone: one reach in which sand drops out of diluted manure.
 *
 * <p>The flow is taken as steady. A flush wave is not: evaluate it at its mean and at its peak.
 *
 * @param reach the lane
 * @param porosity share of the deposit that is not sand, 0 to below 1
 */
public record SettlingLane(LaneReach reach, double porosity) {
  /** Porosity of a loose deposit of sand; from memory, unverified. */
  public static final double USUAL_POROSITY = 0.40;

  private static final SettlingVelocityModel STOKES = new Stokes1851();

  /**
   * Works out what the lane does with a feed.
   *
   * @param feed the feed while the lane runs
   * @param organic how the fibre settles in its liquor
   * @param runningShare share of the day that the lane runs, above 0 to 1
   * @return the result
   */
  public LaneResult evaluate(UnitFeed feed, OrganicMatter organic, double runningShare) {
    ChannelFlow flow = reach.flow(feed.mixtureM3ps(), 0);
    double reynolds = flow.reynoldsNumber(feed.liquid());
    Set<Bound.Excess> excesses = new LinkedHashSet<>();
    BasinFlow basin = reach.basin(flow);
    List<KeptClass> kept = KeptClass.of(List.of(reach), List.of(0.0), feed);
    List<LaneClass> classes = new ArrayList<>();
    double sand = feed.sandTotalKgps();
    for (int i = 0; i < kept.size(); i++) {
      classes.add(
          judge(
              feed.sizes().get(i),
              sand > 0 ? feed.sandKgps().get(i) / sand : 0,
              feed,
              flow,
              basin,
              kept.get(i),
              excesses));
    }
    return new LaneResult(
        flow,
        reynolds,
        basin,
        classes,
        caughtSize(0.50, feed, basin),
        caughtSize(0.95, feed, basin),
        sand * runningShare,
        reach.areaM2() * reach.storageDepthM() * (1 - porosity) * feed.sandDensityKgM3(),
        LaneCycle.of(List.of(reach), feed, organic, runningShare, porosity),
        List.copyOf(excesses));
  }

  private static LaneClass judge(
      GrainRange size,
      double share,
      UnitFeed feed,
      ChannelFlow flow,
      BasinFlow basin,
      KeptClass kept,
      Set<Bound.Excess> excesses) {
    Grain grain = new Grain(size.meanM(), feed.sandDensityKgM3(), feed.shape());
    Liquid liquid = feed.liquid();
    Estimate hindered = feed.hinderedVelocityMps(size.meanM());
    excesses.addAll(hindered.excesses());
    double friction = flow.darcyFrictionFactor();
    return new LaneClass(
        size,
        share,
        feed.coatedVelocityMps(size.meanM()).value(),
        hindered.value(),
        flow.depthM() / hindered.value(),
        flow.depthM() / STOKES.velocityMps(grain, liquid).value(),
        hindered.value() / basin.shearVelocityMps(),
        CaptureBand.of(basin, hindered.value()),
        ScourModels.CAMP.velocityMps(grain, liquid, friction).value(),
        ScourModels.SHIELDS.velocityMps(grain, liquid, friction).value(),
        kept);
  }

  private static CaughtSize caughtSize(double share, UnitFeed feed, BasinFlow basin) {
    return new CaughtSize(
        share,
        sizeOf(Outlook.HOPEFUL.velocityCaughtMps(basin, share), feed),
        sizeOf(Outlook.LIKELY.velocityCaughtMps(basin, share), feed),
        sizeOf(Outlook.CAUTIOUS.velocityCaughtMps(basin, share), feed));
  }

  private static double sizeOf(double velocityMps, UnitFeed feed) {
    // The size is not bounded by experience: a huge lane catches clay, a mill race only boulders.
    return Roots.betweenDecades(
        "grain size caught",
        d -> Math.log(feed.hinderedVelocityMps(d).value() / velocityMps),
        1e-15,
        1e15);
  }
}
