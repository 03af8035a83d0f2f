package sandslurry.design.station;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.design.station.ServiceSpec.GravityRunSpec;
import sandslurry.fact.CommonLimits;
import sandslurry.fact.Field;
import sandslurry.fact.Values;

/** The fields of a pipe or channel by gravity with a flow rate of its own. */
public final class GravityFields extends ConduitFields<GravityRunSpec> {
  private final Field<Double> flow =
      needed("flow", CommonLimits.FLOW)
          .label("Flow rate in it")
          .means("flow rate that it must carry")
          .such("30 L/s", "480 gal/min");
  private final Field<Optional<Double>> least =
      optional(
              "leastFlow",
              CommonLimits.FLOW,
              "default: 30 % of the flow rate (common practice, no source)")
          .label("Least hour")
          .means(
              "least flow rate that still brings sand, averaged over an hour; by it the sand is"
                  + " judged")
          .such("10 L/s", "160 gal/min");
  private final Field<Optional<Double>> sand =
      optional(
              "sandFraction",
              CommonLimits.VOLUME_FRACTION,
              "default: that of the mixture or the lane; without them any concentration")
          .label("Most sand in it")
          .means("highest volume of sand over volume of mixture that comes in the least hour")
          .such("0.5 %");

  /** Declares the fields and the rules between them. */
  public GravityFields() {
    super("gravityRun", "gravity pipe");
    neededWhen(bore, seen -> true, "a pipe has one");
    neededWhen(slope, seen -> true, "only between two units of a plant do levels give it");
    rule(
        least,
        List.of(flow),
        values -> values.get(least).isEmpty() || values.get(least).get() <= values.get(flow),
        values -> "must not be above the flow rate of " + values.written(flow));
  }

  @Override
  protected Optional<GravityRunSpec> make(Values values) {
    return Optional.of(
        new GravityRunSpec(
            conduit(
                values,
                new GravitySpec.Round(values.get(bore).orElseThrow()),
                OptionalDouble.empty(),
                0),
            values.get(flow),
            values.get(least),
            values.get(sand)));
  }
}
