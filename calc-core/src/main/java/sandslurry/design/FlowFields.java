package sandslurry.design;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Values;
import sandslurry.units.Measure;
import si.uom.quantity.VolumetricFlowRate;

/** The fields of the flow rates of a line. */
final class FlowFields extends Fields<FlowSpec> {
  private final Field<Optional<Quantity<VolumetricFlowRate>>> minimum =
      optional(
          "minimum",
          CommonLimits.FLOW,
          "default: the design flow",
          "Minimum",
          "least flow rate of mixture that really occurs; it decides whether sand settles",
          "26 L/s",
          "420 gal/min");
  private final Field<Quantity<VolumetricFlowRate>> design =
      needed(
          "design",
          CommonLimits.FLOW,
          "Design",
          "flow rate of mixture that the line is designed for",
          "30 L/s",
          "470 gal/min");
  private final Field<Optional<Quantity<VolumetricFlowRate>>> maximum =
      optional(
          "maximum",
          CommonLimits.FLOW,
          "default: the design flow",
          "Maximum",
          "greatest flow rate of mixture that really occurs",
          "33 L/s",
          "520 gal/min");

  FlowFields() {
    super("flow", "flow rates");
    rule(
        minimum,
        List.of(design),
        values -> Measure.FLOW.si(least(values)) <= Measure.FLOW.si(values.get(design)),
        values -> "must not be above the design flow of " + written(values));
    rule(
        maximum,
        List.of(design),
        values -> Measure.FLOW.si(most(values)) >= Measure.FLOW.si(values.get(design)),
        values -> "must not be below the design flow of " + written(values));
  }

  private Quantity<VolumetricFlowRate> least(Values values) {
    return values.get(minimum).orElse(values.get(design));
  }

  private Quantity<VolumetricFlowRate> most(Values values) {
    return values.get(maximum).orElse(values.get(design));
  }

  private String written(Values values) {
    return Measure.FLOW.write(values.get(design));
  }

  @Override
  protected Optional<FlowSpec> make(Values values) {
    return Optional.of(new FlowSpec(least(values), values.get(design), most(values)));
  }
}
