package sandslurry.assessment.feed;

import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.materials.Materials;
import sandslurry.assessment.plant.PlantModel;
import sandslurry.assessment.service.ServiceResult.GravityRun;
import sandslurry.assessment.service.ServiceResult.PenFeed;
import sandslurry.assessment.service.ServiceResult.Screw;
import sandslurry.correlation.Estimate;
import sandslurry.design.Design;
import sandslurry.design.station.ServiceSpec.GravityRunSpec;
import sandslurry.design.station.ServiceSpec.ScrewSpec;
import sandslurry.material.Vehicle;
import sandslurry.material.liquid.Liquid;
import sandslurry.plant.pen.PenLoad;
import sandslurry.pump.drive.ScrewConveyor;
import sandslurry.separation.channel.PartFullPipe;
import sandslurry.separation.channel.PartFullPipe.PartFullFlow;
import sandslurry.separation.channel.ScourModels;
import sandslurry.separation.channel.SelfCleansing;
import sandslurry.units.Measure;

/** What feeds the pit: screw conveyor and gravity pipe. */
public final class FeedEvaluation {
  private FeedEvaluation() {}

  public static Screw screw(Design design, ScrewSpec spec) {
    ScrewConveyor screw =
        new ScrewConveyor(
            Measure.LENGTH.si(spec.diameter()),
            Measure.LENGTH.si(spec.shaft()),
            Measure.LENGTH.si(spec.pitch()),
            Math.atan(Measure.FRACTION.si(spec.slope())));
    double turns = Measure.FREQUENCY.si(spec.speed());
    Optional<PenFeed> pens = spec.scrapeTime().map(time -> pens(design, Measure.TIME.si(time)));
    double load =
        spec.load().map(l -> Measure.FLOW.si(l)).orElseGet(() -> pens.orElseThrow().loadM3ps());
    double bulk =
        spec.bulkDensity()
            .map(d -> Measure.DENSITY.si(d))
            .orElseGet(() -> pens.orElseThrow().densityKgM3());
    Estimate loading = screw.loading(load, turns);
    return new Screw(
        loading,
        screw.capacityM3ps(turns, ScrewConveyor.ABRASIVE_LOADING).value(),
        screw.powerW(
            load * bulk, Measure.LENGTH.si(spec.length()), ScrewConveyor.ABRASIVE_RESISTANCE),
        load,
        bulk,
        spec.load().isPresent(),
        pens);
  }

  /** All pens scraped at once: the most that the screw can be asked for. */
  private static PenFeed pens(Design design, double scrapeS) {
    PlantModel plant = new PlantModel(design);
    PenLoad load = PenLoad.sum("all pens", plant.spec().pens().stream().map(plant::load).toList());
    return new PenFeed(load.volumePerBatchM3().high(), scrapeS, load.densityKgM3().base());
  }

  public static GravityRun gravityRun(Materials materials, GravityRunSpec spec) {
    PartFullPipe pipe =
        new PartFullPipe(
            Measure.LENGTH.si(spec.bore()),
            Measure.FRACTION.si(spec.slope()),
            Measure.FRACTION.si(spec.manning()));
    OptionalDouble depth = pipe.depthShare(Measure.FLOW.si(spec.flow()));
    if (depth.isEmpty()) {
      return new GravityRun(pipe.greatestFlowM3ps(), Optional.empty(), Optional.empty(), 0);
    }
    PartFullFlow flow = pipe.atDepth(depth.getAsDouble());
    Vehicle vehicle = materials.vehicle(8 * flow.velocityMps() / (4 * flow.hydraulicRadiusM()), 0);
    Liquid liquid = vehicle.liquid();
    return new GravityRun(
        pipe.greatestFlowM3ps(),
        Optional.of(flow),
        Optional.of(
            SelfCleansing.of(
                flow, materials.slurry(liquid, 0).d85Grain(), liquid, ScourModels.SHIELDS)),
        flow.reynoldsNumber(liquid));
  }
}
