package sandslurry.assessment.feed;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import sandslurry.assessment.line.LineModel;
import sandslurry.assessment.materials.Materials;
import sandslurry.assessment.plant.PlantModel;
import sandslurry.assessment.service.ServiceResult.GravityHour;
import sandslurry.assessment.service.ServiceResult.GravityHour.Outcome;
import sandslurry.assessment.service.ServiceResult.GravityRun;
import sandslurry.assessment.service.ServiceResult.GravitySand;
import sandslurry.assessment.service.ServiceResult.PenFeed;
import sandslurry.assessment.service.ServiceResult.Screw;
import sandslurry.correlation.Estimate;
import sandslurry.design.Design;
import sandslurry.design.lane.LaneSpec;
import sandslurry.design.station.ServiceSpec.GravityRunSpec;
import sandslurry.design.station.ServiceSpec.ScrewSpec;
import sandslurry.material.Slurry;
import sandslurry.material.Vehicle;
import sandslurry.material.sand.Grain;
import sandslurry.pipe.Bore;
import sandslurry.plant.pen.PenLoad;
import sandslurry.pump.drive.ScrewConveyor;
import sandslurry.separation.channel.PartFullPipe;
import sandslurry.separation.channel.PartFullPipe.PartFullFlow;
import sandslurry.separation.channel.ScourModels;
import sandslurry.separation.channel.SelfCleansing;
import sandslurry.transport.deposition.DepositionJudgement;
import sandslurry.transport.deposition.DepositionRule;
import sandslurry.transport.deposition.SandLoad;
import sandslurry.units.Measure;

/** What feeds the pit: screw conveyor and gravity pipe. */
public final class FeedEvaluation {
  /** Steps in which a slope that carries the sand is looked for, up to the steepest told. */
  private static final double SLOPE_STEP = 1.05;

  private static final double STEEPEST = 0.30;

  private static final Set<Outcome> CURABLE =
      EnumSet.of(
          Outcome.SAND_STAYS, Outcome.COARSEST_STAY, Outcome.LACKS_MARGIN, Outcome.TOO_MUCH_SAND);

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

  /**
   * The gravity pipe of a design, judged in its least hour and at its full flow rate.
   *
   * @param design the design
   * @param materials its liquid and sand
   * @param spec the pipe
   * @return what comes of it
   */
  public static GravityRun gravityRun(Design design, Materials materials, GravityRunSpec spec) {
    Sand sand = sand(design, materials, spec);
    double slope = Measure.FRACTION.si(spec.slope());
    GravityRun run = gravityRun(design, sand, spec, slope);
    if (run.worst().filter(hour -> CURABLE.contains(hour.outcome())).isEmpty()) {
      return run;
    }
    return new GravityRun(
        run.greatestM3ps(),
        run.hours(),
        DoubleStream.iterate(slope, tried -> tried <= STEEPEST, tried -> tried * SLOPE_STEP)
            .filter(
                tried ->
                    gravityRun(design, sand, spec, tried).worst().orElseThrow().outcome()
                        == Outcome.CARRIED)
            .findFirst());
  }

  private static GravityRun gravityRun(
      Design design, Sand sand, GravityRunSpec spec, double slope) {
    PartFullPipe pipe =
        new PartFullPipe(
            Measure.LENGTH.si(spec.bore()), slope, Measure.FRACTION.si(spec.manning()));
    double full = Measure.FLOW.si(spec.flow());
    double least = spec.leastFlow().map(Measure.FLOW::si).orElse(GravityRun.LEAST_SHARE * full);
    return new GravityRun(
        pipe.greatestFlowM3ps(),
        pipe.depthShare(full).isEmpty()
            ? List.of()
            : List.of(worst(design, sand, pipe, least), worst(design, sand, pipe, full)),
        OptionalDouble.empty());
  }

  /** A flow rate at the temperature that asks most. */
  private static GravityHour worst(Design design, Sand sand, PartFullPipe pipe, double flowM3ps) {
    PartFullFlow flow = pipe.atDepth(pipe.depthShare(flowM3ps).orElseThrow());
    Materials given = sand.materials();
    return Stream.concat(Stream.of(given), given.temperatureRangeK().stream().map(given::at))
        .map(at -> hour(design, at, flow, sand.known()))
        .min(GravityHour.GRAVEST)
        .orElseThrow();
  }

  private record Sand(Materials materials, boolean known) {}

  /** What the pipe carries; sand of which nothing is known comes at any concentration. */
  private static Sand sand(Design design, Materials materials, GravityRunSpec spec) {
    if (spec.sandFraction().isPresent()) {
      double typed = Measure.FRACTION.si(spec.sandFraction().get());
      return new Sand(materials.diluted(materials.carrier(), typed, typed), true);
    }
    if (design.mixture().isPresent()) {
      return new Sand(materials, true);
    }
    Optional<Double> lane = design.lane().flatMap(LaneSpec::sandFraction).map(Measure.FRACTION::si);
    double usual = lane.orElse(Materials.BED_FRACTION);
    double highest = lane.map(share -> Materials.PEAK * share).orElse(Materials.BED_FRACTION);
    return new Sand(materials.diluted(materials.carrier(), usual, highest), lane.isPresent());
  }

  private static GravityHour hour(
      Design design, Materials materials, PartFullFlow flow, boolean known) {
    double fraction = Math.min(materials.sandFraction(flow.flowM3ps()), Materials.THICKEST);
    Vehicle vehicle =
        materials.vehicle(8 * flow.velocityMps() / (4 * flow.hydraulicRadiusM()), fraction);
    Slurry slurry = materials.slurry(vehicle.liquid(), vehicle.coarseVolumeFraction());
    SandLoad load = materials.load(slurry, fraction);
    DepositionRule rule = LineModel.rule(design.criteria());
    Grain coarsest =
        new Grain(
            materials.sizes().coarsestM(), materials.sandDensityKgM3(), design.sand().shape());
    SelfCleansing cleansing =
        SelfCleansing.of(flow, coarsest, vehicle.liquid(), ScourModels.SHIELDS);
    return new GravityHour(
        flow,
        flow.reynoldsNumber(vehicle.liquid()),
        load.highestFraction(),
        known,
        materials.carrier().totalSolids().orElse(0) >= GravityRun.UNDILUTED_SOLIDS,
        cleansing,
        // Stress goes with the square of the velocity, and so does its margin.
        Math.pow(1 + rule.marginFraction(), 2) * cleansing.neededStressPa(),
        slurry.volumeFraction() > 0 ? Optional.of(sand(rule, load, flow)) : Optional.empty());
  }

  /** The full pipe is taken as smooth, in which the rule asks for most. */
  private static GravitySand sand(DepositionRule rule, SandLoad load, PartFullFlow flow) {
    DepositionJudgement full =
        rule.judge(
            load,
            new Bore(flow.pipe().widestHydraulicDiameterM(), 0),
            flow.velocityMps(),
            -Math.atan(flow.pipe().slope()));
    SandLoad.SewerLimit sewers = load.sewerLimit(flow.wetted(), flow.darcyFrictionFactor());
    double governing = sewers.governingMps();
    return new GravitySand(
        sewers,
        full,
        Math.min(governing, full.limitMps()),
        Math.min(
            Math.max((1 + rule.marginFraction()) * governing, governing + rule.marginMps()),
            full.velocityToPassMps()));
  }
}
