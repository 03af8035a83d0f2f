package sandslurry.assessment.line;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
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
