package sandslurry.design.line;

import java.util.List;
import java.util.Optional;
import sandslurry.fact.CommonLimits;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Type;
import sandslurry.fact.Values;

/** The fields of the flow rates of a line. */
public final class FlowFields extends Fields<FlowSpec> {
  private final Field<Optional<Double>> minimum =
      optional("minimum", CommonLimits.FLOW, "default: the design flow")
          .label("Minimum")
          .means("least flow rate of mixture that really occurs; it decides whether sand settles")
          .such("26 L/s", "420 gal/min");
  private final Field<Double> design =
      needed("design", CommonLimits.FLOW)
          .label("Design")
          .means("flow rate of mixture that the line is designed for")
          .such("30 L/s", "470 gal/min");
  private final Field<Optional<Double>> maximum =
      optional("maximum", CommonLimits.FLOW, "default: the design flow")
          .label("Maximum")
          .means("greatest flow rate of mixture that really occurs")
          .such("33 L/s", "520 gal/min");

  private final Field<Optional<Double>> highestSand =
      optional(
              "highestSandFraction",
              CommonLimits.VOLUME_FRACTION,
              "default: 1.5 times the mixture (common practice, no source)")
          .label("Most sand")
          .means(
              "highest volume of sand over volume of mixture that comes through, as when stirring"
                  + " starts")
          .such("3 %");
  private final Field<Optional<Double>> coldest =
      optional(
              "coldest",
              CommonLimits.TEMPERATURE,
              "default: that of the liquid; the operating window allows for 2 degC")
          .label("Coldest")
          .means("coldest temperature of the liquid in the line")
          .such("2 degC", "36 degF");
  private final Field<Optional<Double>> warmest =
      optional(
              "warmest",
              CommonLimits.TEMPERATURE,
              "default: that of the liquid; the operating window allows for 30 degC")
          .label("Warmest")
          .means("warmest temperature of the liquid in the line; sand is judged at the worst")
          .such("28 degC", "82 degF");
  private final Field<Boolean> frost =
      standard(
              "exposedToFrost",
              Type.yesNo("above frost depth or full in winter", "buried or drained"),
              "no")
          .label("Frost")
          .means("whether the line lies in reach of frost or stands full in it");

  /** Declares the fields and the rules between them. */
  public FlowFields() {
    super("flow", "flow rates");
    rule(
        coldest,
        List.of(warmest),
        values ->
            !values.get(coldest).isPresent()
                || !values.get(warmest).isPresent()
                || values.get(coldest).get() <= values.get(warmest).get(),
        values -> "must not be above the warmest temperature");
    rule(
        minimum,
        List.of(design),
        values -> least(values) <= values.get(design),
        values -> "must not be above the design flow of " + written(values));
    rule(
        maximum,
        List.of(design),
        values -> most(values) >= values.get(design),
        values -> "must not be below the design flow of " + written(values));
  }

  private double least(Values values) {
    return values.get(minimum).orElse(values.get(design));
  }

  private double most(Values values) {
    return values.get(maximum).orElse(values.get(design));
  }

  private String written(Values values) {
    return values.written(design);
  }

  @Override
  protected Optional<FlowSpec> make(Values values) {
    return Optional.of(
        new FlowSpec(
            least(values),
            values.get(design),
            most(values),
            new FlowSpec.Extremes(
                values.get(minimum).isPresent(),
                values.get(highestSand),
                values.get(coldest),
                values.get(warmest),
                values.get(frost))));
  }
}
