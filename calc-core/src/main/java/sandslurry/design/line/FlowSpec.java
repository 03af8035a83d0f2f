package sandslurry.design.line;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Temperature;
import si.uom.quantity.VolumetricFlowRate;

/**
 * The flow rates of the mixture through the line, and the extremes of what flows.
 *
 * @param minimum the least flow rate at which the line really runs
 * @param design the flow rate that it is designed for
 * @param maximum the greatest flow rate at which it really runs
 * @param extremes the worst that comes along
 */
public record FlowSpec(
    Quantity<VolumetricFlowRate> minimum,
    Quantity<VolumetricFlowRate> design,
    Quantity<VolumetricFlowRate> maximum,
    Extremes extremes) {
  /**
   * The worst that comes along, as far as it is known.
   *
   * @param minimumGiven whether the minimum flow rate was told; otherwise it stands at the design
   *     flow rate
   * @param highestSand highest volume fraction of sand
   * @param coldest coldest temperature of the liquid
   * @param warmest warmest temperature of the liquid
   * @param frost whether the line lies in reach of frost or stands full in it
   */
  public record Extremes(
      boolean minimumGiven,
      Optional<Quantity<Dimensionless>> highestSand,
      Optional<Quantity<Temperature>> coldest,
      Optional<Quantity<Temperature>> warmest,
      boolean frost) {}

  /**
   * The same flow rates where the sand never exceeds a concentration.
   *
   * @param fraction highest volume fraction of sand
   * @return the flow rates
   */
  public FlowSpec withHighestSand(Quantity<Dimensionless> fraction) {
    return new FlowSpec(
        minimum,
        design,
        maximum,
        new Extremes(
            extremes.minimumGiven(),
            Optional.of(fraction),
            extremes.coldest(),
            extremes.warmest(),
            extremes.frost()));
  }
}
