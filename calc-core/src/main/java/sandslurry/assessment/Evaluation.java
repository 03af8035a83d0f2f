package sandslurry.assessment;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.FutureTask;
import java.util.function.Function;
import sandslurry.assessment.LiquidEvaluation.Depth;
import sandslurry.assessment.feed.FeedWorking;
import sandslurry.assessment.lane.LaneCourses;
import sandslurry.assessment.materials.DesignCarrier;
import sandslurry.assessment.materials.Materials;
import sandslurry.assessment.plant.CarriedStream;
import sandslurry.assessment.plant.CarriedStreams;
import sandslurry.assessment.plant.PlantModel;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.assessment.plant.PlantWorking;
import sandslurry.assessment.plant.judged.PlantFindings;
import sandslurry.assessment.plant.profile.ProfileEvaluation;
import sandslurry.assessment.plant.profile.ProfileEvaluation.StreamLine;
import sandslurry.assessment.plant.profile.ProfileFindings;
import sandslurry.assessment.service.ServiceResult.GravityRun;
import sandslurry.design.Design;
import sandslurry.design.LineSpec;
import sandslurry.design.material.MixtureSpec;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Findings;
import sandslurry.fact.step.Trace;
import sandslurry.material.liquid.Carrier;

/** Turns a Design into its Assessment. */
public final class Evaluation {
  private Evaluation() {}

  /**
   * Evaluates a design on the calling thread alone. When that thread is interrupted the evaluation
   * ends within about 10 ms with a {@link java.util.concurrent.CancellationException}.
   *
   * @param design the design
   * @return results, findings, cautions and working
   */
  public static Assessment assess(Design design) {
    if (design.plant().isEmpty()) {
      return lines(design, Optional.empty());
    }
    PlantEvaluation plant = new PlantEvaluation(design);
    return beside(plant, plant.result(), design);
  }

  /**
   * The evaluation of many lines for their findings alone, beside one plant that is worked out
   * once. A line that carries a stream of the plant is looked at for its worst time first.
   *
   * @param atFirst a glance: a line that fails here fails as a whole
   * @param whole as {@link #assess} does, but for what a line changes in the accounts of the plant
   */
  public record Lines(
      Optional<Function<Design, Assessment>> atFirst, Function<Design, Assessment> whole) {}

  /**
   * Prepares the evaluation of many lines.
   *
   * @param base the design, which names the stream that its line carries
   * @param before what came of it, with its plant if it has one
   * @return evaluates designs; of one with a plant they must differ in route, flow rates and pump
   *     alone
   */
  public static Lines ofLinesBeside(Design base, Assessment before) {
    if (before.plant().isEmpty()) {
      return new Lines(Optional.empty(), design -> line(design, Depth.JUDGED));
    }
    PlantModel model = new PlantModel(base);
    PlantResult result = before.plant().get();
    List<Finding> ofPlant =
        before.findings().stream().filter(f -> f.topic() == Finding.Topic.PLANT).toList();
    Optional<CarriedStreams> carried = carried(base, model, result);
    Optional<CarriedStream> worst =
        base.line()
            .flatMap(LineSpec::stream)
            .flatMap(stream -> governing(judged(base, carried.orElseThrow().of(stream))));
    return new Lines(
        worst.map(
            time ->
                design ->
                    line(time.in(design).orElse(design.withoutLine()), Depth.JUDGED).with(ofPlant)),
        design -> oneLine(design, carried, Depth.JUDGED).with(ofPlant));
  }

  private static Optional<CarriedStream> governing(Map<CarriedStream, Assessment> judged) {
    return judged.isEmpty() ? Optional.empty() : Optional.of(CarriedFindings.governing(judged));
  }

  private static Map<CarriedStream, Assessment> judged(Design design, List<CarriedStream> times) {
    Map<CarriedStream, Assessment> judged = new LinkedHashMap<>();
    for (CarriedStream time : times) {
      time.in(design).ifPresent(carried -> judged.put(time, line(carried, Depth.JUDGED)));
    }
    return judged;
  }

  /** The streams of the plant at every time, where a line carries one. */
  private static Optional<CarriedStreams> carried(
      Design design, PlantModel model, PlantResult result) {
    boolean gravity = !model.spec().gravityLines().isEmpty();
    return gravity || design.lines().stream().anyMatch(line -> line.stream().isPresent())
        ? Optional.of(new CarriedStreams(model, result))
        : Optional.empty();
  }

  /** All but the plant: its only line, or each of several in a design of its own. */
  private static Assessment lines(Design design, Optional<CarriedStreams> carried) {
    if (design.lines().size() < 2) {
      return oneLine(design, carried, Depth.SHOWN);
    }
    Map<String, Assessment> each = new LinkedHashMap<>();
    design
        .lines()
        .forEach(line -> each.put(line.name(), oneLine(design.ofLine(line), carried, Depth.SHOWN)));
    return LinesTogether.of(design, line(design.withoutLine()), each);
  }

  private static Assessment oneLine(Design design, Optional<CarriedStreams> carried, Depth depth) {
    return design
        .line()
        .flatMap(line -> line.mixture().ofStream())
        .map(mix -> ofStream(design, mix, carried.orElseThrow().of(mix.stream()), depth))
        .orElseGet(() -> line(design, depth));
  }

  private static Assessment beside(PlantEvaluation plant, PlantResult result, Design design) {
    PlantModel model = plant.model();
    Optional<CarriedStreams> carried = carried(design, model, result);
    Assessment line = lines(design, carried);
    Map<String, StreamLine> lines = StreamLines.of(design, line);
    Map<String, GravityLine> gravity = GravityLine.all(design, model, carried);
    gravity.forEach((stream, judged) -> lines.put(stream, judged.line()));
    Map<String, GravityRun> runs = new LinkedHashMap<>();
    gravity.forEach((stream, judged) -> judged.run().ifPresent(run -> runs.put(stream, run)));
    PlantResult whole =
        plant.withLines(result, design, line).with(ProfileEvaluation.of(model.spec(), lines), runs);
    Findings ofPlant = new Findings(design.units());
    new PlantFindings(model, whole, ofPlant).all();
    whole.profile().ifPresent(p -> new ProfileFindings(p, ofPlant).all());
    gravity.values().forEach(judged -> ofPlant.all().addAll(judged.findings()));
    Trace trace = Trace.recording();
    PlantWorking.steps(trace, model, whole);
    runs.values().forEach(run -> FeedWorking.gravityRun(trace, run));
    return line.with(
        whole,
        whole.main().balance().map(balance -> LaneCourses.of(model, balance)).orElse(Map.of()),
        ofPlant.all(),
        trace.steps());
  }

  /**
   * An evaluation that can be stopped: run it on any thread or executor; {@code cancel(true)} ends
   * it within about 10 ms wherever it stands, and it then gives no assessment.
   *
   * @param design the design
   * @return the evaluation, not yet begun
   */
  public static FutureTask<Assessment> task(Design design) {
    return new FutureTask<>(() -> assess(design));
  }

  /** A line that carries a stream of the plant stands as it does at its worst time. */
  private static Assessment ofStream(
      Design design, MixtureSpec.OfStream mixture, List<CarriedStream> times, Depth depth) {
    Map<CarriedStream, Assessment> judged = judged(design, times);
    Assessment shown =
        line(
            governing(judged).flatMap(worst -> worst.in(design)).orElseGet(design::withoutLine),
            depth);
    Findings findings = new Findings(design.units());
    new CarriedFindings(design, mixture, findings).of(times, judged);
    return shown.with(findings.all());
  }

  /** Everything but the plant, which makes its own liquor that another carrier does not change. */
  static Assessment line(Design design) {
    return line(design, Depth.SHOWN);
  }

  private static Assessment line(Design design, Depth depth) {
    Materials materials = Materials.of(design);
    Optional<Assessment.Band> band = Optional.empty();
    Carrier.Scatter scatter = DesignCarrier.scatter(design.carrier(), materials.carrier());
    if (scatter.matters()) {
      List<Assessment> ends =
          List.of(scatter.thinner(), scatter.thicker()).stream()
              .map(end -> one(materials.in(materials.carrier().of(end))))
              .toList();
      band = Optional.of(new Assessment.Band(scatter, ends.get(0), ends.get(1)));
    }
    Map<String, Assessment> byOtherLaws = new LinkedHashMap<>();
    design
        .carrier()
        .fromReadings()
        .ifPresent(
            readings ->
                DesignCarrier.others(readings)
                    .forEach((law, carrier) -> byOtherLaws.put(law, one(materials.in(carrier)))));
    return new LiquidEvaluation(materials, depth).assessment(band, byOtherLaws);
  }

  private static Assessment one(Materials materials) {
    return new LiquidEvaluation(materials, Depth.COMPARED).assessment(Optional.empty(), Map.of());
  }
}
