package sandslurry.assessment.feed;

import java.util.List;
import java.util.Optional;
import sandslurry.assessment.feed.GravityEvaluation.Time;
import sandslurry.assessment.materials.Materials;
import sandslurry.assessment.plant.PlantModel;
import sandslurry.assessment.service.ServiceResult.GravityRun;
import sandslurry.assessment.service.ServiceResult.PenFeed;
import sandslurry.assessment.service.ServiceResult.Screw;
import sandslurry.correlation.Estimate;
import sandslurry.design.Design;
import sandslurry.design.lane.LaneSpec;
import sandslurry.design.station.ServiceSpec.GravityRunSpec;
import sandslurry.design.station.ServiceSpec.ScrewSpec;
import sandslurry.plant.pen.PenLoad;
import sandslurry.pump.drive.ScrewConveyor;

/** What feeds the pit: screw conveyor and gravity pipe. */
public final class FeedEvaluation {
  private FeedEvaluation() {}

  /**
   * The screw conveyor of a design.
   *
   * @param design the design
   * @param spec the screw
   * @return loading, capacity and power
   */
  public static Screw screw(Design design, ScrewSpec spec) {
    ScrewConveyor screw =
        new ScrewConveyor(spec.diameterM(), spec.shaftM(), spec.pitchM(), Math.atan(spec.slope()));
    double turns = spec.speedPs();
    Optional<PenFeed> pens = spec.scrapeTimeS().map(time -> pens(design, time));
    double load = spec.loadM3ps().map(l -> l).orElseGet(() -> pens.orElseThrow().loadM3ps());
    double bulk =
        spec.bulkDensityKgM3().map(d -> d).orElseGet(() -> pens.orElseThrow().densityKgM3());
    Estimate loading = screw.loading(load, turns);
    return new Screw(
        loading,
        screw.capacityM3ps(turns, ScrewConveyor.ABRASIVE_LOADING).value(),
        screw.powerW(load * bulk, spec.lengthM(), ScrewConveyor.ABRASIVE_RESISTANCE),
        load,
        bulk,
        spec.loadM3ps().isPresent(),
        pens);
  }

  /** All pens scraped at once: the most that the screw can be asked for. */
  private static PenFeed pens(Design design, double scrapeS) {
    PlantModel plant = new PlantModel(design);
    PenLoad load = PenLoad.sum("all pens", plant.spec().pens().stream().map(plant::load).toList());
    return new PenFeed(load.volumePerBatchM3().high(), scrapeS, load.densityKgM3().base());
  }

  /**
   * The gravity pipe of a design with a flow rate of its own, judged in its least hour and at its
   * full flow rate.
   *
   * @param materials its liquid and sand
   * @param spec the pipe
   * @return what comes of it
   */
  public static GravityRun gravityRun(Materials materials, GravityRunSpec spec) {
    Sand sand = sand(materials, spec);
    double full = spec.flowM3ps();
    double least = spec.leastFlowM3ps().orElse(GravityRun.LEAST_SHARE * full);
    return GravityEvaluation.run(
        materials.design(),
        spec.gravity(),
        spec.gravity().slope().orElseThrow(),
        List.of(
            new Time("in its least hour", least, sand.materials(), sand.known()),
            new Time("at its full flow rate", full, sand.materials(), sand.known())));
  }

  private record Sand(Materials materials, boolean known) {}

  /** What the pipe carries; sand of which nothing is known comes at any concentration. */
  private static Sand sand(Materials materials, GravityRunSpec spec) {
    if (spec.sandFraction().isPresent()) {
      double typed = spec.sandFraction().get();
      return new Sand(materials.diluted(materials.carrier(), typed, typed), true);
    }
    if (materials.design().line().isPresent()) {
      return new Sand(materials, true);
    }
    Optional<Double> lane = materials.design().lane().flatMap(LaneSpec::sandFraction);
    double usual = lane.orElse(Materials.BED_FRACTION);
    double highest = lane.map(share -> Materials.PEAK * share).orElse(Materials.BED_FRACTION);
    return new Sand(materials.diluted(materials.carrier(), usual, highest), lane.isPresent());
  }
}
