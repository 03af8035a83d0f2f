package sandslurry.plant.network;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sandslurry.plant.Stream;

/**
 * The steady balance of a network.
 *
 * @param streams every stream by name, feeds first
 * @param feeds what each unit is fed, its inlets mixed, by name of the unit
 * @param products the streams that leave, by name
 * @param running share of the time that each pump of a pit runs, by its stream; pumps that are set
 *     to nothing are left out
 * @param duties share of the time in which each unit that is no pit sees its feed, by name
 * @param imbalance the worst of all constituents and units: what comes in less what goes out, over
 *     what comes in
 * @param passes how often the units were asked how they divide their feeds
 * @param notes what the units say of their feeds, each once
 */
public record SteadyBalance(
    Map<String, Stream> streams,
    Map<String, Stream> feeds,
    Map<String, Stream> products,
    Map<String, Double> running,
    Map<String, Double> duties,
    double imbalance,
    int passes,
    List<UnitNote> notes)
    implements SteadyState {
  /** Copies the maps and the list, order kept. */
  public SteadyBalance {
    streams = Collections.unmodifiableMap(new LinkedHashMap<>(streams));
    feeds = Collections.unmodifiableMap(new LinkedHashMap<>(feeds));
    running = Collections.unmodifiableMap(new LinkedHashMap<>(running));
    duties = Map.copyOf(duties);
    products = Collections.unmodifiableMap(new LinkedHashMap<>(products));
    notes = List.copyOf(notes);
  }

  /**
   * A stream.
   *
   * @param name its name
   * @return the stream
   * @throws IllegalArgumentException if the network has no such stream
   */
  public Stream stream(String name) {
    return found(streams, name, "stream");
  }

  /**
   * What a unit is fed.
   *
   * @param unit its name
   * @return all its inlets, mixed
   * @throws IllegalArgumentException if the network has no such unit
   */
  public Stream feed(String unit) {
    return found(feeds, unit, "unit");
  }

  private static Stream found(Map<String, Stream> map, String name, String what) {
    Stream stream = map.get(name);
    if (stream == null) {
      throw new IllegalArgumentException(
          "there is no " + what + " \"" + name + "\" among " + map.keySet());
    }
    return stream;
  }

  @Override
  public Optional<SteadyBalance> balance() {
    return Optional.of(this);
  }
}
