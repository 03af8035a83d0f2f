package sandslurry.plant.unit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import sandslurry.fact.CommonLimits;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Type;
import sandslurry.fact.Values;

/** A pump of a pit or a storage. */
public final class DrawFields extends Fields<Map.Entry<String, Double>> {
  final Field<String> stream =
      needed("stream", Type.name("the stream that is pumped"))
          .label("Stream")
          .means("name of the stream that is pumped")
          .such("recycle");
  private final Field<Double> flow =
      needed("flow", CommonLimits.WATER)
          .label("Flow rate")
          .means("flow rate of the pump")
          .such("8 m3/h", "35 gpm");

  DrawFields() {
    super("pump", "pump");
  }

  /**
   * The pumps by their streams.
   *
   * @param pumps the pumps with their flow rates [m3/s]
   * @return flow rates by stream, in the order in which they are served
   */
  public static Map<String, Double> draws(List<Map.Entry<String, Double>> pumps) {
    return pumps.stream()
        .collect(
            Collectors.toMap(
                Map.Entry::getKey, Map.Entry::getValue, (a, b) -> b, LinkedHashMap::new));
  }

  /** The streams that are pumped; one that stands twice is told. */
  List<String> streams(List<Values> pumps) {
    List<String> streams = new ArrayList<>();
    for (Values pump : pumps) {
      pump.maybe(stream).ifPresent(streams::add);
    }
    return streams;
  }

  void tellTwice(List<Values> pumps) {
    List<String> before = new ArrayList<>();
    for (Values pump : pumps) {
      pump.maybe(stream)
          .ifPresent(
              name -> {
                if (before.contains(name)) {
                  pump.problem(stream, "another pump of this pit has this stream");
                }
                before.add(name);
              });
    }
  }

  @Override
  protected Optional<Map.Entry<String, Double>> make(Values values) {
    return Optional.of(Map.entry(values.get(stream), values.get(flow)));
  }
}
