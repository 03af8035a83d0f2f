package sandslurry.assessment;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.feed.GravityEvaluation;
import sandslurry.assessment.feed.GravityEvaluation.Time;
import sandslurry.assessment.feed.GravityFindings;
import sandslurry.assessment.materials.Materials;
import sandslurry.assessment.plant.CarriedStream;
import sandslurry.assessment.plant.CarriedStreams;
import sandslurry.assessment.plant.PlantModel;
import sandslurry.assessment.plant.profile.ProfileEvaluation;
import sandslurry.assessment.plant.profile.ProfileEvaluation.StreamLine;
import sandslurry.assessment.service.ServiceResult.GravityRun;
import sandslurry.design.Design;
import sandslurry.design.plant.PlantSpec.GravityLineSpec;
import sandslurry.design.station.GravitySpec;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Findings;
import sandslurry.plant.profile.Fall;

/**
 * A pipe or channel in which a stream of the plant runs by gravity, at every time: in every mode,
 * with the sand that circulates, at the sandiest, the least and the greatest moment of the day by
 * schedule.
 *
 * @param run what came of it; empty when nothing that is known flows, or nothing gives it a slope
 * @param line what it says of the levels of its two units
 * @param findings what was found
 */
record GravityLine(Optional<GravityRun> run, StreamLine line, List<Finding> findings) {
  /** All lines by gravity of a plant, by their streams. */
  static Map<String, GravityLine> all(
      Design design, PlantModel model, Optional<CarriedStreams> carried) {
    Map<String, GravityLine> all = new LinkedHashMap<>();
    for (GravityLineSpec line : model.spec().gravityLines()) {
      all.put(
          line.stream(), of(design, line.conduit(), line.stream(), model, carried.orElseThrow()));
    }
    return all;
  }

  /**
   * Judges it.
   *
   * @param design the design
   * @param spec pipe or channel
   * @param stream the stream
   * @param model the plant
   * @param carried its streams at every time
   */
  private static GravityLine of(
      Design design, GravitySpec spec, String stream, PlantModel model, CarriedStreams carried) {
    Findings findings = new Findings(design.units());
    GravityFindings writer =
        new GravityFindings(GravityFindings.LINE + " \"" + stream + "\"", findings);
    List<Time> times = new ArrayList<>();
    for (CarriedStream time : carried.byGravity(stream)) {
      Optional<Design> there = time.in(design);
      if (there.isPresent()) {
        Materials materials = Materials.of(there.get());
        double sand = time.mineralShare();
        times.add(
            new Time(
                time.when(),
                time.flowM3ps(),
                materials.diluted(materials.carrier(), sand, sand),
                true));
      } else if (time.stream().isEmpty() || time.flowM3ps() > 0) {
        writer.unknown(time);
      }
    }
    Optional<GravityRun> run = Optional.empty();
    Optional<Fall.Need> need = Optional.empty();
    if (times.isEmpty()) {
      writer.idle();
    } else {
      double most = times.stream().mapToDouble(Time::flowM3ps).max().orElseThrow();
      OptionalDouble slope = slope(spec, stream, model, most, writer);
      if (slope.isPresent()) {
        run = Optional.of(GravityEvaluation.run(design, spec, slope.getAsDouble(), times));
        need = GravityEvaluation.need(spec, run.get().conduit(), most);
        writer.of(run.get());
      }
    }
    return new GravityLine(
        run, new StreamLine(false, OptionalDouble.empty(), need), findings.all());
  }

  /** As it is given, or what the levels of the two units leave over its length. */
  private static OptionalDouble slope(
      GravitySpec spec, String stream, PlantModel model, double mostM3ps, GravityFindings writer) {
    if (spec.slope().isPresent()) {
      return spec.slope();
    }
    Optional<Fall> fall =
        ProfileEvaluation.of(model.spec(), Map.of()).stream()
            .flatMap(profile -> profile.falls().stream())
            .filter(f -> f.stream().equals(stream))
            .findFirst();
    OptionalDouble slope =
        fall.isPresent()
            ? GravityEvaluation.slopeOf(spec, fall.get().availableM(), mostM3ps)
            : OptionalDouble.empty();
    if (fall.isEmpty()) {
      writer.noLevels();
    } else if (slope.isEmpty()) {
      writer.noSlope(fall.get(), mostM3ps);
    }
    return slope;
  }
}
