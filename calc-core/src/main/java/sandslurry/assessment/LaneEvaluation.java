package sandslurry.assessment;

import java.util.OptionalDouble;
import sandslurry.design.Design;
import sandslurry.design.LaneSpec;
import sandslurry.material.Vehicle;
import sandslurry.material.sand.SizeClass;
import sandslurry.plant.ManureSolids;
import sandslurry.separation.LaneFeed;
import sandslurry.separation.UnitFeed;
import sandslurry.separation.channel.OpenChannel;
import sandslurry.separation.lane.LaneResult;
import sandslurry.separation.lane.SettlingLane;
import sandslurry.units.Measure;

/** Evaluates the settling lane of a design. */
final class LaneEvaluation {
  private final LaneSpec spec;
  private final Design design;
  private final Materials materials;

  LaneEvaluation(Design design, Materials materials) {
    this.spec = design.lane().orElseThrow();
    this.design = design;
    this.materials = materials;
  }

  double temperatureK() {
    return materials.carrier().temperatureK();
  }

  LaneResult result() {
    return withLength(Measure.LENGTH.si(spec.length()));
  }

  /** The lane as designed but of another length. */
  LaneResult withLength(double lengthM) {
    SettlingLane lane =
        new SettlingLane(
            channel(),
            lengthM,
            spec.depth().isPresent()
                ? OptionalDouble.of(Measure.LENGTH.si(spec.depth().get()))
                : OptionalDouble.empty(),
            Measure.LENGTH.si(spec.sandStorageDepth()),
            SettlingLane.USUAL_POROSITY,
            1);
    return lane.evaluate(feed());
  }

  OpenChannel channel() {
    return new OpenChannel(
        Measure.LENGTH.si(spec.width()),
        Measure.FRACTION.si(spec.slope()),
        Measure.FRACTION.si(spec.manning()));
  }

  double sandFraction() {
    return spec.sandFraction().isPresent()
        ? Measure.FRACTION.si(spec.sandFraction().get())
        : materials.sandFraction(Measure.FLOW.si(design.flow().orElseThrow().design()));
  }

  /** Says whether the sand that enters leaves the mixture a slurry. */
  boolean flows() {
    return sandFraction() <= Materials.THICKEST;
  }

  /** The shear rate at which the carrier's viscosity is read: mean velocity over depth. */
  double shearRatePs() {
    double flow = Measure.FLOW.si(spec.flow());
    double depth =
        spec.depth().isPresent()
            ? Measure.LENGTH.si(spec.depth().get())
            : channel().normalDepthM(flow);
    double velocity = flow / (Measure.LENGTH.si(spec.width()) * depth);
    return 3 * velocity / depth;
  }

  LaneFeed feed() {
    double fraction = sandFraction();
    Vehicle vehicle = materials.vehicle(shearRatePs(), fraction);
    return new LaneFeed(
        Measure.FLOW.si(spec.flow()),
        Measure.TIME.si(spec.runningTime()) / Measure.TIME.si(Measure.TIME.of(1, "d")),
        vehicle.liquid(),
        fraction,
        materials.sandDensityKgM3(),
        design.sand().shape(),
        materials.gradation().classes(),
        Measure.FRACTION.si(spec.coatingFactor()));
  }

  /** The feed with its organic matter, as the trade of sand against organic matter sees it. */
  UnitFeed unitFeed(ManureSolids solids, double totalSolids) {
    LaneFeed feed = feed();
    double liquidM3ps = feed.flowM3ps() * (1 - feed.volumeFraction());
    double solidsKgps = totalSolids * liquidM3ps * feed.liquid().densityKgM3();
    double sandKgps = feed.flowM3ps() * feed.volumeFraction() * feed.sandDensityKgM3();
    return new UnitFeed(
        liquidM3ps,
        feed.liquid(),
        totalSolids * solids.finesShare(),
        totalSolids * solids.dissolvedShare(),
        solidsKgps * solids.fibreShare(),
        feed.sandDensityKgM3(),
        feed.shape(),
        feed.classes().stream().map(SizeClass::meanM).toList(),
        feed.classes().stream().map(c -> sandKgps * c.massFraction()).toList(),
        feed.settlingFactor());
  }
}
