package sandslurry.design;

import javax.measure.Quantity;
import si.uom.quantity.VolumetricFlowRate;

/**
 * The flow of mixture through the line.
 *
 * @param minimum the least flow at which the line really runs
 * @param design the flow that it is designed for
 * @param maximum the greatest flow at which it really runs
 */
public record FlowSpec(
    Quantity<VolumetricFlowRate> minimum,
    Quantity<VolumetricFlowRate> design,
    Quantity<VolumetricFlowRate> maximum) {}
