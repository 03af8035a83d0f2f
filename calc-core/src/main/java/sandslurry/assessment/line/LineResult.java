package sandslurry.assessment.line;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import sandslurry.units.Measure;
import si.uom.quantity.VolumetricFlowRate;

/**
 * What was found of the line.
 *
 * @param states the line at each flow that it is judged at
 * @param systemCurve head asked against flow, at the design concentration
 * @param window the flow rates at which the line works
 * @param lineVolume volume of the line in its mean bores
 */
public record LineResult(
    List<LineState> states,
    List<SystemPoint> systemCurve,
    OperatingWindow window,
    Quantity<Volume> lineVolume) {
  /** Copies the lists. */
  public LineResult {
    states = List.copyOf(states);
    systemCurve = List.copyOf(systemCurve);
  }

  /**
   * One point of the system curve.
   *
   * @param flow flow of mixture
   * @param head head asked, in metres of mixture
   * @param liquidHead head that the carrier alone would ask, in metres of carrier
   * @param overBed true when sand lies in some run at this flow
   */
  public record SystemPoint(
      Quantity<VolumetricFlowRate> flow,
      Quantity<Length> head,
      Quantity<Length> liquidHead,
      boolean overBed) {}

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
        at(FlowCase.DUTY)
            .map(duty -> mostM3ps(Measure.FLOW.si(duty.flow())))
            .orElse(Double.POSITIVE_INFINITY);
    return states.stream().filter(state -> Measure.FLOW.si(state.flow()) <= most).toList();
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
