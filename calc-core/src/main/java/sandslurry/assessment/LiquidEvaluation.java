package sandslurry.assessment;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
import sandslurry.assessment.line.WarmStates;
import sandslurry.assessment.materials.DesignCarrier;
import sandslurry.assessment.materials.MaterialWorking;
import sandslurry.assessment.materials.Materials;
import sandslurry.assessment.materials.SettlingResult;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.states.WindowEvaluation;
import sandslurry.assessment.states.WindowFindings;
import sandslurry.assessment.station.PumpEvaluation;
import sandslurry.assessment.station.PumpFindings;
import sandslurry.assessment.station.PumpResult;
import sandslurry.assessment.station.PumpWorking;
import sandslurry.design.lane.LaneSpec;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Findings;
import sandslurry.fact.finding.Severity;
import sandslurry.fact.step.Trace;
import sandslurry.separation.lane.LaneResult;

/** Everything of a design but its plant, in one liquid. */
final class LiquidEvaluation {
  private final Materials materials;
  private final Depth depth;
  private final Trace trace;
  private final Findings findings;
  private Optional<LineResult> line = Optional.empty();
  private Optional<PumpResult> pump = Optional.empty();
  private Optional<ServiceEvaluation> inService = Optional.empty();
  private Optional<WindowFindings> headline = Optional.empty();
  private Optional<LaneResult> lane = Optional.empty();
  private final Map<String, LaneCourse> courses = new LinkedHashMap<>();

  /** How far it goes. */
  enum Depth {
    /** One of the liquids that a design is compared with: without the states of its pump. */
    COMPARED,
    /** All that the findings of a design rest on. */
    JUDGED,
    /** With what is shown beside: working, dilution, system curve, models that do not govern. */
    SHOWN
  }

  /** A design in a liquid. */
  LiquidEvaluation(Materials materials, Depth depth) {
    this.materials = materials;
    this.depth = depth;
    this.findings = new Findings(materials.design().units());
    this.trace = shown() ? Trace.recording() : Trace.NONE;
  }

  /**
   * Evaluates it, once.
   *
   * @param band the same with a thinner and a thicker liquid
   * @param byOtherLaws the same with other laws fitted to the readings, by name
   */
  Assessment assessment(Optional<Assessment.Band> band, Map<String, Assessment> byOtherLaws) {
    double crowd = crowd();
    SettlingResult settling = SettlingResult.of(materials, crowd);
    if (shown()) {
      MaterialWorking.steps(trace, materials, settling, crowd);
    }
    if (materials.design().line().isPresent()) {
      line();
    }
    ServiceResult service = service();
    if (materials.design().lane().isPresent()) {
      lane();
    }
    Optional<DilutionCurve> dilution = dilution();
    new DataFindings(materials, line, findings).all();
    BandFindings ofBand = new BandFindings(List.copyOf(findings.all()), findings);
    band.ifPresent(ofBand::of);
    byOtherLaws.forEach(ofBand::byAnotherLaw);
    List<Finding> all = findings.all();
    withoutContradictions(all);
    all.sort(
        Comparator.comparing(Finding::severity)
            .reversed()
            .thenComparing(LiquidEvaluation::headlinePlace));
    return new Assessment(
        materials.design(),
        materials.carrier(),
        settling,
        line,
        pump,
        service,
        lane,
        courses,
        Map.of(),
        Optional.empty(),
        materials.design().carrier().fromReadings().map(DesignCarrier::fit),
        dilution,
        band,
        all,
        SafetyCautions.of(materials.design(), service),
        trace.steps());
  }

  private boolean shown() {
    return depth == Depth.SHOWN;
  }

  private void line() {
    LineModel model = new LineModel(materials);
    LineWarmths warmths = LineWarmths.of(model);
    Optional<PumpEvaluation> pumps = Optional.empty();
    boolean flows = materials.flows(materials.design().oneLine().flow().designM3ps());
    if (materials.design().pump().isPresent() && flows) {
      pumps = Optional.of(new PumpEvaluation(model));
      pump = pumps.map(PumpEvaluation::result);
    }
    Optional<Double> dutyFlow = pump.flatMap(PumpResult::governing).map(duty -> duty.flowM3ps());
    LineEvaluation evaluation = new LineEvaluation(model, dutyFlow);
    OperatingWindow window = new WindowEvaluation(warmths, pumps, pump).window();
    boolean inStates = depth != Depth.COMPARED;
    WarmStates judged = WarmStates.of(warmths, evaluation.judged(), inStates);
    LineResult result =
        shown() ? evaluation.result(judged, window) : evaluation.judgedAlone(judged, window);
    line = Optional.of(result);
    new LineFindings(materials, warmths, judged, result, findings).all();
    if (shown()) {
      LineWorking.steps(trace, model, evaluation.states());
    }
    if (pump.isPresent()) {
      new PumpFindings(model, pump.get(), findings).all();
      if (shown()) {
        PumpWorking.steps(trace, pump.get(), model);
      }
    }
    if (flows) {
      inService = Optional.of(ServiceEvaluation.of(model, evaluation.judged(), inStates));
    }
    if (!result.states().isEmpty()) {
      headline = Optional.of(new WindowFindings(model, window, findings));
    }
  }

  private ServiceResult service() {
    ServiceEvaluation service = inService.orElseGet(() -> ServiceEvaluation.withoutLine(materials));
    ServiceFindings.of(materials.design(), service, findings);
    headline.ifPresent(WindowFindings::all);
    if (shown()) {
      ServiceWorking.steps(trace, materials, service.result());
    }
    return service.result();
  }

  private void lane() {
    LaneEvaluation evaluation = new LaneEvaluation(materials);
    if (!evaluation.flows()) {
      LaneFindings.tooThick(findings, evaluation.sandFraction());
      return;
    }
    LaneResult result = evaluation.result();
    lane = Optional.of(result);
    new LaneFindings(evaluation, result, findings).all();
    if (shown()) {
      LaneWorking.steps(trace, evaluation, result);
      courses.put(LaneCourse.OWN, LaneCourses.of(evaluation, result));
    }
  }

  private Optional<DilutionCurve> dilution() {
    return shown()
            && line.isPresent()
            && materials.design().oneLine().dilution().isPresent()
            && !line.get().states().isEmpty()
        ? Optional.of(new DilutionEvaluation(materials).curve())
        : Optional.empty();
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
  private double crowd() {
    if (materials.design().line().isPresent()) {
      double flow = materials.design().oneLine().flow().designM3ps();
      return materials.flows(flow) ? materials.sandFraction(flow) : 0;
    }
    return materials.design().lane().flatMap(LaneSpec::sandFraction).orElse(0.0);
  }
}
