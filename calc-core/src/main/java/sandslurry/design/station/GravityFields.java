package sandslurry.design.station;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import sandslurry.design.station.ServiceSpec.GravityRunSpec;
import sandslurry.fact.CommonLimits;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Limits;
import sandslurry.fact.Type;
import sandslurry.fact.Values;
import sandslurry.units.Measure;
import si.uom.quantity.VolumetricFlowRate;

/** The fields of a pipe that runs part full by gravity, or of an open channel. */
public final class GravityFields extends Fields<GravityRunSpec> {
  private final Field<Optional<Double>> bore =
      optional(
          "bore",
          CommonLimits.BORE.si(),
          "an open channel",
          "Bore of gravity pipe",
          "inside diameter",
          "300 mm",
          "12 in");
  private final Field<Optional<Double>> width =
      optional(
          "width",
          Limits.of(Measure.LENGTH, "50 mm", "10 m").si(),
          "a pipe",
          "Width of channel",
          "width of the floor of an open channel",
          "400 mm",
          "16 in");
  private final Field<Double> side =
      standard(
          "sideSlope",
          Limits.of(Measure.FRACTION, "0", "5").si(),
          "0",
          "Side slope, run to rise",
          "run over rise of the walls of the channel, 0 for upright ones",
          "1");
  private final Field<Optional<Double>> wall =
      optional(
          "wallHeight",
          Limits.of(Measure.LENGTH, "50 mm", "5 m").si(),
          "needed with a channel",
          "Height of walls",
          "height of the walls of the channel",
          "400 mm",
          "16 in");
  private final Field<Optional<Double>> slope =
      optional(
          "slope",
          Limits.of(Measure.FRACTION, "0.01 %", "30 %").si(),
          "what the levels of its two units leave over its length",
          "Slope of gravity pipe",
          "fall over length",
          "1 %");
  private final Field<Optional<Double>> length =
      optional(
          "length",
          CommonLimits.SIDE.si(),
          "its fall is not compared with the levels",
          "Length of gravity pipe",
          "length from unit to unit; its fall is held against their levels",
          "20 m",
          "65 ft");
  private final Field<Double> manning =
      standard(
          "manning",
          CommonLimits.MANNING.si(),
          "0.013",
          "Manning's n of pipe",
          "Manning's roughness n of pipe or channel",
          "0.013");
  private final Field<Double> freeboard =
      standard(
          "freeboard",
          Limits.of(Measure.LENGTH, "0 mm", "5 m").si(),
          "50 mm",
          "Freeboard at its end",
          "how far it ends above the highest water that it flows into (default: common practice, no"
              + " source)",
          "50 mm",
          "2 in");
  private final Field<Optional<String>> stream =
      optional(
          "stream",
          Type.name("a stream of the plant"),
          "a flow rate of its own",
          "Stream of the plant",
          "name of the stream of the plant that runs in it: flow rates and sand come from the plant,"
              + " at every time",
          "pressed");
  private final Field<Optional<Quantity<VolumetricFlowRate>>> flow =
      optional(
          "flow",
          CommonLimits.FLOW,
          "that of its stream",
          "Flow rate in it",
          "flow rate that it must carry",
          "30 L/s",
          "480 gal/min");
  private final Field<Optional<Quantity<VolumetricFlowRate>>> least =
      optional(
          "leastFlow",
          CommonLimits.FLOW,
          "default: 30 % of the flow rate (common practice, no source)",
          "Least hour",
          "least flow rate that still brings sand, averaged over an hour; by it the sand is judged",
          "10 L/s",
          "160 gal/min");
  private final Field<Optional<Quantity<Dimensionless>>> sand =
      optional(
          "sandFraction",
          CommonLimits.VOLUME_FRACTION,
          "default: that of the mixture or the lane; without them any concentration",
          "Most sand in it",
          "highest volume of sand over volume of mixture that comes in the least hour",
          "0.5 %");

  /** Declares the fields and the rules between them. */
  public GravityFields() {
    super("gravityRun", "gravity pipe");
    exactlyOne(bore, width);
    exactlyOne(stream, flow);
    neededWhen(wall, seen -> seen.has(width), "a channel has walls");
    onlyWhen(wall, seen -> seen.has(width), "belongs to a channel");
    onlyWhen(side, seen -> seen.has(width), "belongs to a channel");
    neededWhen(length, seen -> !seen.has(slope), "without a slope the levels give it");
    neededWhen(
        slope, seen -> !seen.has(stream), "only between two units of a plant do levels give it");
    onlyWhen(least, seen -> !seen.has(stream), "comes from the stream");
    onlyWhen(sand, seen -> !seen.has(stream), "comes from the stream");
    rule(
        least,
        List.of(flow),
        values ->
            values.get(least).isEmpty()
                || values.get(flow).isEmpty()
                || Measure.FLOW.si(values.get(least).get())
                    <= Measure.FLOW.si(values.get(flow).get()),
        values ->
            "must not be above the flow rate of "
                + Measure.FLOW.write(values.get(flow).orElseThrow()));
  }

  /**
   * Holds the stream against those of the plant.
   *
   * @param group the values of these fields
   * @param streams the streams of the plant; none without one
   * @return whether it carries a stream
   */
  public boolean checkStream(Values group, List<String> streams) {
    Optional<String> carried = group.maybe(stream).flatMap(s -> s);
    if (carried.isPresent() && !streams.contains(carried.get())) {
      group.problem(
          stream,
          streams.isEmpty()
              ? "needs a plant that has such a stream"
              : "is no stream of the plant; they are: " + String.join(", ", streams));
    }
    return carried.isPresent();
  }

  @Override
  protected Optional<GravityRunSpec> make(Values values) {
    GravitySpec.Section section =
        values
            .get(bore)
            .<GravitySpec.Section>map(GravitySpec.Round::new)
            .orElseGet(
                () ->
                    new GravitySpec.Channel(
                        values.get(width).orElseThrow(),
                        values.get(side),
                        values.get(wall).orElseThrow()));
    return Optional.of(
        new GravityRunSpec(
            new GravitySpec(
                section,
                maybe(values.get(slope)),
                maybe(values.get(length)),
                values.get(manning),
                values.get(freeboard)),
            values.get(stream),
            values.get(flow),
            values.get(least),
            values.get(sand)));
  }

  private static OptionalDouble maybe(Optional<Double> value) {
    return value.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
  }
}
