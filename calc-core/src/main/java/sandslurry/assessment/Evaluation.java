package sandslurry.assessment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.FutureTask;
import java.util.function.Function;
import sandslurry.assessment.lane.LaneCourse;
import sandslurry.assessment.lane.LaneCourses;
import sandslurry.assessment.lane.LaneEvaluation;
import sandslurry.assessment.lane.LaneFindings;
import sandslurry.assessment.lane.LaneWorking;
import sandslurry.assessment.line.DataFindings;
import sandslurry.assessment.line.DilutionCurve;
import sandslurry.assessment.line.DilutionEvaluation;
import sandslurry.assessment.line.LineEvaluation;
import sandslurry.assessment.line.LineFindings;
import sandslurry.assessment.line.LineModel;
import sandslurry.assessment.line.LineResult;
import sandslurry.assessment.line.LineWarmths;
import sandslurry.assessment.line.LineWorking;
import sandslurry.assessment.line.OperatingWindow;
import sandslurry.assessment.materials.DesignCarrier;
import sandslurry.assessment.materials.MaterialWorking;
import sandslurry.assessment.materials.Materials;
import sandslurry.assessment.materials.SettlingResult;
import sandslurry.assessment.plant.CarriedStream;
import sandslurry.assessment.plant.PlantModel;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.assessment.plant.PlantWorking;
import sandslurry.assessment.plant.judged.PlantFindings;
import sandslurry.assessment.plant.profile.ProfileEvaluation;
import sandslurry.assessment.plant.profile.ProfileFindings;
import sandslurry.assessment.states.WindowEvaluation;
import sandslurry.assessment.states.WindowFindings;
import sandslurry.assessment.station.PumpEvaluation;
import sandslurry.assessment.station.PumpFindings;
import sandslurry.assessment.station.PumpResult;
import sandslurry.assessment.station.PumpWorking;
import sandslurry.design.Design;
import sandslurry.design.lane.LaneSpec;
import sandslurry.design.material.CarrierSpec.ReadingsSpec;
import sandslurry.design.material.MixtureSpec;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Severity;
import sandslurry.fact.step.Trace;
import sandslurry.material.liquid.Carrier;
import sandslurry.separation.lane.LaneResult;
import sandslurry.units.Measure;

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
      return line(design);
    }
    PlantEvaluation plant = new PlantEvaluation(design);
    return beside(plant, plant.result(), design);
  }

  /**
   * The evaluation of many lines beside one plant, which is worked out once. A line that carries a
   * stream of the plant is looked at for its worst time first.
   *
   * @param atFirst a glance: a line that fails here fails as a whole
   * @param whole as {@link #assess} does, but for what a line changes in the accounts of the plant
   */
  public record Lines(
      Optional<Function<Design, Assessment>> atFirst, Function<Design, Assessment> whole) {}

  /**
   * Prepares the evaluation of many lines.
   *
   * @param before what came of the design, with its plant if it has one
   * @return evaluates designs; of one with a plant they must differ in route, flow rates and pump
   *     alone
   */
  public static Lines ofLinesBeside(Assessment before) {
    if (before.plant().isEmpty()) {
      return new Lines(Optional.empty(), Evaluation::assess);
    }
    Design base = before.design();
    PlantModel model = new PlantModel(base);
    PlantResult result = before.plant().get();
    List<Finding> ofPlant =
        before.findings().stream().filter(f -> f.topic() == Finding.Topic.PLANT).toList();
    Optional<CarriedStream> worst =
        base.mixture().orElse(null) instanceof MixtureSpec.OfStream mixture
            ? governing(judged(base, CarriedStream.of(mixture, model, result)))
            : Optional.empty();
    return new Lines(
        worst.map(
            time -> design -> line(time.in(design).orElse(design.withoutLine())).with(ofPlant)),
        design -> lineBeside(model, result, design).with(ofPlant));
  }

  private static Optional<CarriedStream> governing(Map<CarriedStream, Assessment> judged) {
    return judged.isEmpty() ? Optional.empty() : Optional.of(CarriedFindings.governing(judged));
  }

  private static Map<CarriedStream, Assessment> judged(Design design, List<CarriedStream> times) {
    Map<CarriedStream, Assessment> judged = new LinkedHashMap<>();
    for (CarriedStream time : times) {
      time.in(design).ifPresent(carried -> judged.put(time, line(carried)));
    }
    return judged;
  }

  private static Assessment lineBeside(PlantModel model, PlantResult result, Design design) {
    return design.mixture().orElse(null) instanceof MixtureSpec.OfStream mixture
        ? ofStream(design, mixture, model, result)
        : line(design);
  }

  private static Assessment beside(PlantEvaluation plant, PlantResult result, Design design) {
    PlantModel model = plant.model();
    Assessment line = lineBeside(model, result, design);
    PlantResult whole =
        plant
            .withLine(result, line)
            .with(ProfileEvaluation.of(model.spec(), StreamLines.of(design, List.of(line))));
    List<Finding> ofPlant = new ArrayList<>(new PlantFindings(model, whole, design.units()).all());
    whole.profile().ifPresent(p -> ofPlant.addAll(new ProfileFindings(p, design.units()).all()));
    Trace trace = Trace.recording();
    PlantWorking.tell(trace, model, whole);
    return line.with(
        whole,
        whole.main().balance().map(balance -> LaneCourses.of(model, balance)).orElse(Map.of()),
        ofPlant,
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
      Design design, MixtureSpec.OfStream mixture, PlantModel model, PlantResult plant) {
    List<CarriedStream> times = CarriedStream.of(mixture, model, plant);
    Map<CarriedStream, Assessment> judged = judged(design, times);
    Assessment shown =
        governing(judged).map(judged::get).orElseGet(() -> line(design.withoutLine()));
    return shown.with(new CarriedFindings(design, mixture).of(times, judged));
  }

  /** Everything but the plant, which makes its own liquor that another carrier does not change. */
  static Assessment line(Design design) {
    Materials materials = Materials.of(design);
    Optional<Assessment.Band> band = Optional.empty();
    Carrier.Scatter scatter = DesignCarrier.scatter(design.carrier(), materials.carrier());
    if (scatter.matters()) {
      List<Assessment> ends =
          List.of(scatter.thinner(), scatter.thicker()).stream()
              .map(end -> one(design, materials.in(materials.carrier().of(end))))
              .toList();
      band = Optional.of(new Assessment.Band(scatter, ends.get(0), ends.get(1)));
    }
    Map<String, Assessment> byOtherLaws = new LinkedHashMap<>();
    if (design.carrier() instanceof ReadingsSpec readings) {
      DesignCarrier.others(readings)
          .forEach((law, carrier) -> byOtherLaws.put(law, one(design, materials.in(carrier))));
    }
    return assess(design, materials, band, byOtherLaws, true);
  }

  /** No pass on plugging stands beside something graver on plugging of the same or the whole. */
  private static void withoutContradictions(List<Finding> findings) {
    List<Finding> grave =
        findings.stream()
            .filter(f -> f.topic() == Finding.Topic.PLUGGING)
            .filter(f -> f.severity().compareTo(Severity.PASS) > 0)
            .toList();
    findings.removeIf(
        f ->
            f.topic() == Finding.Topic.PLUGGING
                && f.severity() == Severity.PASS
                && grave.stream()
                    .anyMatch(
                        g ->
                            g.element().equals(f.element())
                                || g.severity() == Severity.FAIL
                                    && (g.element().equals("carrier")
                                        || g.element().equals("line"))));
    // No derating keeps the sand in motion where it does not stay so anyway.
    if (!grave.isEmpty()) {
      findings.removeIf(f -> f.element().equals("pump derating") && f.severity() == Severity.PASS);
    }
    List<Finding> failed =
        findings.stream()
            .filter(f -> f.topic() == Finding.Topic.PUMP && f.severity() == Severity.FAIL)
            .toList();
    findings.removeIf(
        f ->
            f.topic() == Finding.Topic.PUMP
                && f.severity() == Severity.PASS
                && failed.stream().anyMatch(g -> g.element().equals(f.element())));
  }

  private static Assessment one(Design design, Materials materials) {
    return assess(design, materials, Optional.empty(), Map.of(), false);
  }

  private static Assessment assess(
      Design design,
      Materials materials,
      Optional<Assessment.Band> band,
      Map<String, Assessment> byOtherLaws,
      boolean whole) {
    SettlingResult settling = SettlingResult.of(materials, crowd(design, materials));
    List<Finding> findings = new ArrayList<>();
    Trace trace = whole ? Trace.recording() : Trace.NONE;
    if (whole) {
      MaterialWorking.tell(trace, materials, settling, crowd(design, materials));
    }
    Optional<PumpResult> pump = Optional.empty();
    Optional<LineResult> line = Optional.empty();
    Optional<ServiceEvaluation> inService = Optional.empty();
    WindowFindings headline = null;
    if (design.route().isPresent()) {
      LineModel model = new LineModel(design, materials);
      LineWarmths warmths = LineWarmths.of(design, materials, model);
      Optional<PumpEvaluation> pumps = Optional.empty();
      boolean flows = materials.flows(Measure.FLOW.si(design.flow().orElseThrow().design()));
      if (design.pump().isPresent() && flows) {
        pumps = Optional.of(new PumpEvaluation(design, materials, model));
        pump = pumps.map(PumpEvaluation::result);
      }
      Optional<Double> dutyFlow =
          pump.flatMap(PumpResult::governing).map(duty -> Measure.FLOW.si(duty.flow()));
      LineEvaluation evaluation = new LineEvaluation(design, materials, model, dutyFlow);
      OperatingWindow window =
          new WindowEvaluation(design, materials, warmths, pumps, pump).window();
      LineResult result = evaluation.result(window);
      line = Optional.of(result);
      findings.addAll(
          new LineFindings(design, materials, warmths, evaluation.judged(), result, whole).all());
      if (whole) {
        LineWorking.tell(trace, model, materials, evaluation.states());
      }
      if (pump.isPresent()) {
        findings.addAll(new PumpFindings(design, materials, model, pump.get()).all());
        if (whole) {
          PumpWorking.tell(trace, design, pump.get(), model, materials);
        }
      }
      if (flows) {
        inService =
            Optional.of(ServiceEvaluation.of(design, materials, model, evaluation.judged(), whole));
      }
      if (!result.states().isEmpty()) {
        headline = new WindowFindings(design, model, window);
      }
    }
    ServiceEvaluation service =
        inService.orElseGet(() -> ServiceEvaluation.withoutLine(design, materials));
    findings.addAll(ServiceFindings.of(design, service));
    if (headline != null) {
      findings.addAll(headline.all(findings));
    }
    if (whole) {
      ServiceWorking.tell(trace, design, materials, service.result());
    }
    Optional<LaneResult> lane = Optional.empty();
    Map<String, LaneCourse> courses = new LinkedHashMap<>();
    if (design.lane().isPresent()) {
      LaneEvaluation evaluation = new LaneEvaluation(design, materials);
      if (evaluation.flows()) {
        LaneResult result = evaluation.result();
        lane = Optional.of(result);
        findings.addAll(new LaneFindings(design, evaluation, result).all());
        if (whole) {
          LaneWorking.tell(trace, design, evaluation, result);
          courses.put(LaneCourse.OWN, LaneCourses.of(evaluation, result));
        }
      } else {
        findings.add(LaneFindings.tooThick(design.units(), evaluation.sandFraction()));
      }
    }
    Optional<DilutionCurve> dilution = Optional.empty();
    // Only the design itself shows a dilution curve, not the ends of its band.
    if (whole
        && design.dilution().isPresent()
        && line.isPresent()
        && !line.get().states().isEmpty()) {
      dilution = Optional.of(new DilutionEvaluation(design, materials).curve());
    }
    findings.addAll(DataFindings.of(design, materials, line));
    List<Finding> base = List.copyOf(findings);
    band.ifPresent(b -> findings.addAll(new BandFindings(design.units(), base).of(b)));
    byOtherLaws.forEach(
        (law, by) -> findings.addAll(new BandFindings(design.units(), base).byAnotherLaw(law, by)));
    withoutContradictions(findings);
    findings.sort(
        Comparator.comparing(Finding::severity)
            .reversed()
            .thenComparing(Evaluation::headlinePlace));
    return new Assessment(
        design,
        materials.carrier(),
        settling,
        line,
        pump,
        service.result(),
        lane,
        courses,
        Optional.empty(),
        design.carrier() instanceof ReadingsSpec readings
            ? Optional.of(DesignCarrier.fit(readings))
            : Optional.empty(),
        dilution,
        band,
        findings,
        SafetyCautions.of(design, service.result()),
        trace.steps());
  }

  /**
   * Of findings as grave as others first comes what a reading on site shows, then that no flow rate
   * works, then that the pump gives another flow rate than typed.
   */
  private static int headlinePlace(Finding finding) {
    int place =
        List.of("observed", WindowFindings.ID, PumpFindings.DIFFERS, PumpFindings.SETTLES)
            .indexOf(finding.topic() == Finding.Topic.OBSERVED ? "observed" : finding.id());
    return place < 0 ? Integer.MAX_VALUE : place;
  }

  /** The concentration in which grains fall: that of the line, or of the lane, or none. */
  private static double crowd(Design design, Materials materials) {
    if (design.flow().isPresent()) {
      double flow = Measure.FLOW.si(design.flow().get().design());
      return materials.flows(flow) ? materials.sandFraction(flow) : 0;
    }
    return design.lane().flatMap(LaneSpec::sandFraction).map(Measure.FRACTION::si).orElse(0.0);
  }
}
