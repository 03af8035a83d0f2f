package sandslurry.assessment.line;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import sandslurry.material.Proportions;
import sandslurry.plant.Range;
import sandslurry.transport.headloss.HeadLosses;

/** Evaluates the line of a design at every flow at which it is judged. */
public final class LineEvaluation {
  private static final int CURVE_POINTS = 40;

  private final LineModel model;
  private final List<State> states = new ArrayList<>();

  /**
   * The line at one flow, in plain SI.
   *
   * @param flowCase which flow it is
   * @param flowM3ps the flow
   * @param sandFraction volume fraction of all sand
   * @param runs the runs
   */
  public record State(
      FlowCase flowCase, double flowM3ps, double sandFraction, List<RunPoint> runs) {
    static State of(LineModel line, FlowCase flowCase, double flowM3ps, double sandFraction) {
      return new State(flowCase, flowM3ps, sandFraction, line.runs(flowM3ps, sandFraction));
    }

    /** The same flow rate and sand in the line with another liquid. */
    State in(LineModel line) {
      return of(line, flowCase, flowM3ps, sandFraction);
    }
  }

  /**
   * Evaluates the line at its minimum, design and maximum flow rates and at the duty point.
   *
   * @param model the physics of its line
   * @param dutyFlow flow rate at which the pump meets the line [m3/s]; empty without a duty point
   */
  public LineEvaluation(LineModel model, Optional<Double> dutyFlow) {
    this.model = model;
    add(FlowCase.MINIMUM, model.design().oneLine().flow().minimumM3ps());
    add(FlowCase.DESIGN, model.design().oneLine().flow().designM3ps());
    add(FlowCase.MAXIMUM, model.design().oneLine().flow().maximumM3ps());
    dutyFlow.ifPresent(flow -> add(FlowCase.DUTY, flow));
  }

  private void add(FlowCase flowCase, double flowM3ps) {
    if (model.materials().flows(flowM3ps)) {
      states.add(State.of(model, flowCase, flowM3ps, model.materials().sandFraction(flowM3ps)));
    }
  }

  /**
   * The line at each flow rate at which its mixture flows.
   *
   * @return minimum, design, maximum, then the duty point
   */
  public List<State> states() {
    return states;
  }

  /**
   * The flow rates judged: those up to the duty point, where a pump gives one.
   *
   * @return of {@link #states} those that the pump can give
   */
  public List<State> judged() {
    double most =
        states.stream()
            .filter(state -> state.flowCase() == FlowCase.DUTY)
            .mapToDouble(state -> LineResult.mostM3ps(state.flowM3ps()))
            .findFirst()
            .orElse(Double.POSITIVE_INFINITY);
    return states.stream().filter(state -> state.flowM3ps() <= most).toList();
  }

  /**
   * The line at each of them as its assessment shows it.
   *
   * @return velocities, pressures and head
   */
  public List<LineState> shown() {
    return states.stream().map(state -> shown(state, true)).toList();
  }

  /**
   * The line as its assessment shows it.
   *
   * @param judged the states judged, at every temperature
   * @param window the flow rates at which it works
   * @return flow rates, system curve, operating window and volume
   */
  public LineResult result(WarmStates judged, OperatingWindow window) {
    return new LineResult(shown(), judged.worstOfEach(), systemCurve(), window, model.volumeM3());
  }

  /**
   * The line as it is judged, without what an assessment shows for comparison alone: the system
   * curve and the models that do not govern.
   *
   * @param judged the states judged, at every temperature
   * @param window the flow rates at which it works
   * @return flow rates, operating window and volume
   */
  public LineResult judgedAlone(WarmStates judged, OperatingWindow window) {
    return new LineResult(
        states.stream().map(state -> shown(state, false)).toList(),
        judged.worstOfEach(),
        List.of(),
        window,
        model.volumeM3());
  }

  private LineState shown(State state, boolean compared) {
    double density = model.materials().mixtureDensityKgM3(state.sandFraction());
    List<LineModel.Pressures> pressures = model.pressures(state.runs());
    List<RunState> runs = new ArrayList<>();
    for (int i = 0; i < state.runs().size(); i++) {
      runs.add(shown(state.runs().get(i), pressures.get(i), compared));
    }
    return new LineState(
        state.flowCase(),
        state.flowM3ps(),
        state.sandFraction(),
        Proportions.massFraction(
            state.sandFraction(),
            model.materials().carrier().densityKgM3(),
            model.materials().sandDensityKgM3()),
        state.sandFraction() * state.flowM3ps() * model.materials().sandDensityKgM3(),
        density,
        model.systemHeadM(state.runs()),
        headByModels(state.runs(), compared),
        runs);
  }

  /** The head over the models beside the default one; each takes the whole line by its own. */
  private Range headByModels(List<RunPoint> runs, boolean compared) {
    double head = model.systemHeadM(runs);
    if (!compared || model.overBed(runs)) {
      return Range.of(head);
    }
    double[] beside = new double[HeadLosses.bracket().size()];
    for (RunPoint run : runs) {
      double[] one = run.lossesBesideM();
      Arrays.setAll(beside, i -> beside[i] + one[i]);
    }
    DoubleSummaryStatistics all = Arrays.stream(beside).summaryStatistics();
    return new Range(head + all.getMin(), head, head + all.getMax());
  }

  private static RunState shown(RunPoint run, LineModel.Pressures pressures, boolean compared) {
    return new RunState(
        run.velocityMps(),
        run.leastVelocityMps(),
        run.regime(),
        run.flow(),
        run.deposition(),
        compared ? run.depositionModels() : List.of(),
        run.carriage(),
        compared ? run.headLosses() : List.of(),
        run.friction(),
        pressures,
        run.overBed(),
        run.severity());
  }

  /** The system curve at the design concentration, past the greatest flow that is judged. */
  private List<LineResult.SystemPoint> systemCurve() {
    double designFlow = model.design().oneLine().flow().designM3ps();
    if (!model.materials().flows(designFlow)) {
      return List.of();
    }
    double fraction = model.materials().sandFraction(designFlow);
    double most = states.stream().mapToDouble(State::flowM3ps).max().orElse(designFlow);
    double greatest = 1.3 * most;
    List<LineResult.SystemPoint> points = new ArrayList<>();
    for (int i = 1; i <= CURVE_POINTS; i++) {
      double flow = greatest * i / CURVE_POINTS;
      List<RunPoint> runs = model.runs(flow, fraction);
      points.add(
          new LineResult.SystemPoint(
              flow, model.systemHeadM(runs), model.liquidHeadM(flow), model.overBed(runs)));
    }
    return points;
  }
}
