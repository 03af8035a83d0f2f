package sandslurry.separation.lane;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Estimate;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;
import sandslurry.material.sand.SizeClass;
import sandslurry.numeric.Roots;
import sandslurry.separation.LaneFeed;
import sandslurry.separation.capture.BasinFlow;
import sandslurry.separation.capture.CaptureBand;
import sandslurry.separation.capture.CaptureRelations;
import sandslurry.separation.capture.CaughtSize;
import sandslurry.separation.capture.Suspension;
import sandslurry.separation.channel.ChannelFlow;
import sandslurry.separation.channel.OpenChannel;
import sandslurry.separation.channel.ScourModel;
import sandslurry.separation.channel.ScourModels;
import sandslurry.settling.HinderedSettling;
import sandslurry.settling.Rowe1987;
import sandslurry.settling.SettlingVelocities;
import sandslurry.settling.SettlingVelocityModel;
import sandslurry.settling.Stokes1851;

/**
 * A settling lane: a wide shallow channel in which sand drops out of diluted manure.
 *
 * <p>The flow is taken as steady. A flush wave is not: evaluate it at its mean and at its peak.
 *
 * @param channel width, slope and roughness
 * @param lengthM length [m]
 * @param waterDepthM depth of water above the deposit where a weir or screen sets it [m]; empty for
 *     the depth of uniform flow
 * @param storageDepthM depth of deposit that the lane may hold before it is cleaned, 0 or more [m]
 * @param depositPorosity share of the deposit that is not sand
 * @param effectiveShare share of the plan area that works: 1 for an even flow; 0.6 to 0.8 where a
 *     turbulent inlet spoils the start (from memory, unverified)
 */
public record SettlingLane(
    OpenChannel channel,
    double lengthM,
    OptionalDouble waterDepthM,
    double storageDepthM,
    double depositPorosity,
    double effectiveShare) {
  /** Porosity of a loose deposit of sand; from memory, unverified. */
  public static final double USUAL_POROSITY = 0.40;

  private static final HinderedSettling HINDERED = new Rowe1987();
  private static final SettlingVelocityModel STOKES = new Stokes1851();

  /** Checks every bound. */
  public SettlingLane {
    if (!(lengthM > 0 && Double.isFinite(lengthM))) {
      throw new IllegalArgumentException("the length must be > 0 but was " + lengthM + " m");
    }
    if (waterDepthM.isPresent()) {
      OpenChannel.requireDepth(waterDepthM.getAsDouble());
    }
    if (!(storageDepthM >= 0 && Double.isFinite(storageDepthM))) {
      throw new IllegalArgumentException(
          "the storage depth must be >= 0 but was " + storageDepthM + " m");
    }
    if (!(depositPorosity >= 0 && depositPorosity < 1)) {
      throw new IllegalArgumentException("porosity lies in 0 to 1 but was " + depositPorosity);
    }
    if (!(effectiveShare > 0 && effectiveShare <= 1)) {
      throw new IllegalArgumentException(
          "the effective share lies in 0 (excluded) to 1 but was " + effectiveShare);
    }
  }

  /**
   * Works out what the lane does with a feed.
   *
   * @param feed the feed
   * @return the result
   * @throws IllegalArgumentException if the floor is level and no depth of water is given
   */
  public LaneResult evaluate(LaneFeed feed) {
    ChannelFlow flow =
        waterDepthM.isPresent()
            ? channel.flow(feed.flowM3ps(), waterDepthM.getAsDouble())
            : channel.uniformFlow(feed.flowM3ps());
    double reynolds = flow.reynoldsNumber(feed.liquid());
    Set<Bound.Excess> excesses = new LinkedHashSet<>();
    ChannelFlow.TURBULENT.check(reynolds).ifPresent(excesses::add);
    BasinFlow basin =
        new BasinFlow(
            feed.flowM3ps() / (channel.widthM() * lengthM * effectiveShare),
            flow.shearVelocityMps());

    List<LaneClass> classes = new ArrayList<>();
    CaptureBand capture = CaptureBand.NONE;
    CaptureBand retained = CaptureBand.NONE;
    for (SizeClass size : feed.classes()) {
      LaneClass judged = judge(size, feed, flow, basin, excesses);
      classes.add(judged);
      capture = capture.plus(judged.capture(), size.massFraction());
      retained = retained.plus(judged.retained(), size.massFraction());
    }

    double volume = channel.widthM() * lengthM * storageDepthM * (1 - depositPorosity);
    return new LaneResult(
        flow,
        waterDepthM.isEmpty(),
        reynolds,
        lengthM / flow.velocityMps(),
        basin,
        classes,
        capture,
        retained,
        caughtSize(0.50, feed, basin),
        caughtSize(0.95, feed, basin),
        largestScouredM(feed, flow),
        feed.sandKgPs(),
        volume * feed.sandDensityKgM3(),
        List.copyOf(excesses));
  }

  private static LaneClass judge(
      SizeClass size,
      LaneFeed feed,
      ChannelFlow flow,
      BasinFlow basin,
      Set<Bound.Excess> excesses) {
    Grain grain = feed.grain(size.meanM());
    Liquid liquid = feed.liquid();
    Estimate alone = SettlingVelocities.DEFAULT.velocityMps(grain, liquid);
    excesses.addAll(alone.excesses());
    double coated = alone.value() * feed.settlingFactor();
    double hindered = hinderedVelocityMps(size.meanM(), feed, excesses);
    double friction = flow.darcyFrictionFactor();
    Estimate camp = ScourModels.CAMP.velocityMps(grain, liquid, friction);
    Estimate shields = ScourModels.SHIELDS.velocityMps(grain, liquid, friction);
    return new LaneClass(
        size,
        feed.sandKgPs() * size.massFraction(),
        coated,
        hindered,
        flow.depthM() / hindered,
        flow.depthM() / STOKES.velocityMps(grain, liquid).value(),
        hindered / basin.shearVelocityMps(),
        Suspension.of(hindered, basin.shearVelocityMps()),
        CaptureBand.of(basin, hindered),
        camp.value(),
        shields.value(),
        flow.velocityMps() > Math.min(camp.value(), shields.value()));
  }

  /** Velocity of a coated grain among its neighbours. */
  private static double hinderedVelocityMps(
      double diameterM, LaneFeed feed, Set<Bound.Excess> excesses) {
    double alone =
        SettlingVelocities.DEFAULT.velocityMps(feed.grain(diameterM), feed.liquid()).value()
            * feed.settlingFactor();
    double reynolds = alone * diameterM / feed.liquid().kinematicViscosityM2ps();
    Estimate exponent = HINDERED.exponent(reynolds, feed.volumeFraction());
    excesses.addAll(exponent.excesses());
    return alone * Math.pow(1 - feed.volumeFraction(), exponent.value());
  }

  private static double largestScouredM(LaneFeed feed, ChannelFlow flow) {
    double largest = 0;
    for (ScourModel model : List.of(ScourModels.CAMP, ScourModels.SHIELDS)) {
      largest =
          Math.max(
              largest,
              model.largestScouredM(
                  flow.velocityMps(), feed.grain(1e-3), feed.liquid(), flow.darcyFrictionFactor()));
    }
    return largest;
  }

  private static CaughtSize caughtSize(double share, LaneFeed feed, BasinFlow basin) {
    return new CaughtSize(
        share,
        sizeOf(share, feed, w -> CaptureRelations.IDEAL.fraction(basin, w).value(), basin),
        sizeOf(share, feed, w -> CaptureRelations.TURBULENT.fraction(basin, w).value(), basin),
        sizeOf(share, feed, w -> CaptureRelations.MIXED.fraction(basin, w).value(), basin));
  }

  /**
   * First the velocity of which the share is caught, which lies between the overflow velocity times
   * the share (ideal) and times −ln(1 − share) (mixed); then the size that has it.
   */
  private static double sizeOf(
      double share, LaneFeed feed, DoubleUnaryOperator caught, BasinFlow basin) {
    double velocity =
        Roots.betweenDecades(
            "settling velocity caught",
            w -> caught.applyAsDouble(w) - share,
            basin.overflowVelocityMps() * share * 0.99,
            basin.overflowVelocityMps() * -Math.log1p(-share) * 1.01);
    // The size is not bounded by experience: a huge lane catches clay, a mill race only boulders.
    return Roots.betweenDecades(
        "grain size caught",
        d -> Math.log(hinderedVelocityMps(d, feed, new LinkedHashSet<>()) / velocity),
        1e-15,
        1e15);
  }
}
