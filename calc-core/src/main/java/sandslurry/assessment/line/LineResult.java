package sandslurry.assessment.line;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.fact.finding.Severity;
import sandslurry.transport.bed.SandCarriage;
import sandslurry.transport.deposition.DepositionJudgement;
import sandslurry.transport.friction.ClearLiquid.Regime;

/**
 * What was found of the line.
 *
 * @param states the line at each flow that it is judged at
 * @param worst each run in the case that it is judged by
 * @param systemCurve head asked against flow, at the design concentration
 * @param window the flow rates at which the line works
 * @param lineVolumeM3 volume of the line in its mean bores
 */
public record LineResult(
    List<LineState> states,
    List<JudgedRun> worst,
    List<SystemPoint> systemCurve,
    OperatingWindow window,
    double lineVolumeM3) {
  /** Copies the lists. */
  public LineResult {
    states = List.copyOf(states);
    worst = List.copyOf(worst);
    systemCurve = List.copyOf(systemCurve);
  }

  /**
   * A run of pipe in the case that it is judged by: the worst of all flow rates and temperatures.
   *
   * @param run its name
   * @param flowCase the flow rate
   * @param temperatureK temperature of the liquid [K]; empty for that of the design
   * @param severity how grave it is
   * @param regime flow regime of the carrier
   * @param deposition the judgement on deposition; empty when there is no sand
   * @param carriage what carries the sand; empty when there is no sand
   */
  public record JudgedRun(
      String run,
      FlowCase flowCase,
      OptionalDouble temperatureK,
      Severity severity,
      Regime regime,
      Optional<DepositionJudgement> deposition,
      Optional<SandCarriage> carriage) {}

  /**
   * One point of the system curve.
   *
   * @param flowM3ps flow of mixture
   * @param headM head asked, in metres of mixture
   * @param liquidHeadM head that the carrier alone would ask, in metres of carrier
   * @param overBed true when sand lies in some run at this flow
   */
  public record SystemPoint(double flowM3ps, double headM, double liquidHeadM, boolean overBed) {}

  /** Flow rates closer than this, as a share, are the same to a flow meter (common practice). */
  public static final double SAME_FLOW = 0.05;

  /**
   * The flow rates judged: those up to the duty point, where a pump gives one. More than that the
   * pump cannot give, whatever was typed.
   *
   * @return the line at each of them
   */
  public List<LineState> judged() {
    double most =
        at(FlowCase.DUTY).map(duty -> mostM3ps(duty.flowM3ps())).orElse(Double.POSITIVE_INFINITY);
    return states.stream().filter(state -> state.flowM3ps() <= most).toList();
  }

  /** The highest flow rate that is judged where a pump gives one. */
  static double mostM3ps(double dutyM3ps) {
    return dutyM3ps * (1 + SAME_FLOW);
  }

  /**
   * The line at a case.
   *
   * @param flowCase the case
   * @return its state, when the line was judged at it
   */
  public Optional<LineState> at(FlowCase flowCase) {
    return states.stream().filter(s -> s.flowCase() == flowCase).findFirst();
  }
}
