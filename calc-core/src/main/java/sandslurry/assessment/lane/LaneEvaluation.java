package sandslurry.assessment.lane;

import java.util.List;
import java.util.OptionalDouble;
import sandslurry.assessment.materials.Materials;
import sandslurry.design.lane.LaneSpec;
import sandslurry.material.Vehicle;
import sandslurry.material.liquid.Water;
import sandslurry.material.sand.SizeClass;
import sandslurry.plant.ManureSolids;
import sandslurry.separation.OrganicMatter;
import sandslurry.separation.UnitFeed;
import sandslurry.separation.channel.OpenChannel;
import sandslurry.separation.lane.LaneCycle;
import sandslurry.separation.lane.LaneReach;
import sandslurry.separation.lane.LaneResult;
import sandslurry.separation.lane.SettlingLane;
import sandslurry.units.Measure;

/**
 * Evaluates the settling lane of a design.
 *
 * @param materials its liquid, sand and mixture
 */
public record LaneEvaluation(Materials materials) {

  private LaneSpec spec() {
    return materials.design().lane().orElseThrow();
  }

  /**
   * What the lane captures, clean and over its cleaning cycle.
   *
   * @return the lane as its assessment shows it
   */
  public LaneResult result() {
    return new SettlingLane(reach(), SettlingLane.USUAL_POROSITY)
        .evaluate(feed(), organic(), runningShare());
  }

  /** The lane as designed. */
  LaneReach reach() {
    return reach(spec().lengthM(), spec().depthM(), spec().sandStorageDepthM());
  }

  LaneReach reach(double lengthM, OptionalDouble waterLevelM, double storageDepthM) {
    return new LaneReach(channel(), lengthM, waterLevelM, storageDepthM, 1);
  }

  /** The cleaning cycle of another lane with the same feed, roughly. */
  LaneCycle cycle(LaneReach other) {
    return LaneCycle.coarse(List.of(other), feed(), organic(), runningShare());
  }

  /** Share of the day that the lane runs. */
  double runningShare() {
    return spec().runningTimeS() / Measure.TIME.si(Measure.TIME.of(1, "d"));
  }

  /** How the fibre settles in the liquor. */
  OrganicMatter organic() {
    return OrganicMatter.FEEDLOT.in(
        feed().liquid().viscosityPaS() / Water.viscosityPaS(materials.carrier().temperatureK()));
  }

  /** Whether the carrier is described with its solids, so that its organic matter is known. */
  boolean solidsKnown() {
    return materials.carrier().totalSolids().orElse(0) > 0;
  }

  OpenChannel channel() {
    return new OpenChannel(spec().widthM(), spec().slope(), spec().manning());
  }

  /**
   * Volume fraction of sand in the feed: that of the lane, else that of the line at its design flow
   * rate.
   *
   * @return share of the mixture
   */
  public double sandFraction() {
    return spec().sandFraction().isPresent()
        ? spec().sandFraction().get()
        : materials.sandFraction(materials.design().oneLine().flow().designM3ps());
  }

  /**
   * Whether the sand leaves the feed a slurry.
   *
   * @return false above {@link Materials#THICKEST}
   */
  public boolean flows() {
    return sandFraction() <= Materials.THICKEST;
  }

  /** The shear rate at which the carrier's viscosity is read: mean velocity over depth. */
  double shearRatePs() {
    double flow = spec().flowM3ps();
    double depth =
        spec().depthM().isPresent() ? spec().depthM().getAsDouble() : channel().normalDepthM(flow);
    double velocity = flow / (spec().widthM() * depth);
    return 3 * velocity / depth;
  }

  /** What enters while the lane runs. */
  UnitFeed feed() {
    double flow = spec().flowM3ps();
    double fraction = sandFraction();
    Vehicle vehicle = materials.vehicle(shearRatePs(), fraction);
    ManureSolids solids = ManureSolids.FRESH;
    double totalSolids = materials.carrier().totalSolids().orElse(0);
    double liquidM3ps = flow * (1 - fraction);
    double sandKgps = flow * fraction * materials.sandDensityKgM3();
    List<SizeClass> classes = materials.gradation().classes();
    return new UnitFeed(
        liquidM3ps,
        vehicle.liquid(),
        totalSolids * solids.finesShare(),
        totalSolids * solids.dissolvedShare(),
        totalSolids * solids.fibreShare() * liquidM3ps * vehicle.liquid().densityKgM3(),
        materials.sandDensityKgM3(),
        materials.design().sand().shape(),
        classes.stream().map(SizeClass::range).toList(),
        classes.stream().map(c -> sandKgps * c.massFraction()).toList(),
        spec().coatingFactor(),
        materials.carrier().yieldStressPa());
  }
}
