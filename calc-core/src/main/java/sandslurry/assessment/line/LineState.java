package sandslurry.assessment.line;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import si.uom.quantity.Density;
import si.uom.quantity.MassFlowRate;
import si.uom.quantity.VolumetricFlowRate;

/**
 * The whole line at one flow.
 *
 * @param flowCase which flow it is
 * @param flow flow of mixture
 * @param sandFraction volume of sand over volume of mixture
 * @param massFraction mass of sand over mass of mixture
 * @param sandRate sand moved
 * @param mixtureDensity density of the mixture
 * @param systemHead head that the line asks of a pump, in metres of mixture, from the level of the
 *     source
 * @param runs the runs in the order of flow
 */
public record LineState(
    FlowCase flowCase,
    Quantity<VolumetricFlowRate> flow,
    Quantity<Dimensionless> sandFraction,
    Quantity<Dimensionless> massFraction,
    Quantity<MassFlowRate> sandRate,
    Quantity<Density> mixtureDensity,
    Quantity<Length> systemHead,
    List<RunState> runs) {
  /** Copies the list. */
  public LineState {
    runs = List.copyOf(runs);
  }
}
