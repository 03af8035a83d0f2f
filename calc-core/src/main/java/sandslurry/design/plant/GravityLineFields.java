package sandslurry.design.plant;

import java.util.Optional;
import sandslurry.design.plant.PlantSpec.GravityLineSpec;
import sandslurry.design.station.ConduitFields;
import sandslurry.design.station.GravitySpec;
import sandslurry.fact.CommonLimits;
import sandslurry.fact.Field;
import sandslurry.fact.Type;
import sandslurry.fact.Values;
import sandslurry.units.Measure;

/** The fields of a pipe or channel in which a stream of the plant runs by gravity. */
final class GravityLineFields extends ConduitFields<GravityLineSpec> {
  /** The stream that runs in it. */
  final Field<String> stream =
      needed("stream", Type.name("a stream of the plant"))
          .label("Stream")
          .means(
              "name of the stream of the plant that runs in it: flow rates and sand come from the"
                  + " plant, at every time")
          .such("pressed");

  private final Field<Optional<Double>> width =
      optional("width", Type.quantity(Measure.LENGTH, "50 mm", "10 m"), "a pipe")
          .label("Width of channel")
          .means("width of the floor of an open channel")
          .such("400 mm", "16 in");
  private final Field<Double> side =
      standard("sideSlope", Type.quantity(Measure.NUMBER, "0", "5"), "0")
          .label("Side slope, run to rise")
          .means("run over rise of the walls of the channel, 0 for upright ones")
          .such("1");
  private final Field<Optional<Double>> wall =
      optional("wallHeight", Type.quantity(Measure.LENGTH, "50 mm", "5 m"), "needed with a channel")
          .label("Height of walls")
          .means("height of the walls of the channel")
          .such("400 mm", "16 in");
  private final Field<Optional<Double>> length =
      optional("length", CommonLimits.SIDE, "its fall is not compared with the levels")
          .label("Length of gravity pipe")
          .means("length from unit to unit; its fall is held against their levels")
          .such("20 m", "65 ft");
  private final Field<Double> freeboard =
      standard("freeboard", Type.quantity(Measure.LENGTH, "0 mm", "5 m"), "50 mm")
          .label("Freeboard at its end")
          .means(
              "how far it ends above the highest water that it flows into (default: common"
                  + " practice, no source)")
          .such("50 mm", "2 in");

  GravityLineFields() {
    super("gravityLine", "line by gravity");
    exactlyOne(bore, width);
    neededWhen(wall, seen -> seen.has(width), "a channel has walls");
    onlyWhen(wall, seen -> seen.has(width), "belongs to a channel");
    onlyWhen(side, seen -> seen.has(width), "belongs to a channel");
    neededWhen(length, seen -> !seen.has(slope), "without a slope the levels give it");
  }

  @Override
  protected Optional<GravityLineSpec> make(Values values) {
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
        new GravityLineSpec(
            values.get(stream),
            conduit(values, section, values.number(length), values.get(freeboard))));
  }
}
