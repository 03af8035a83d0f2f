package sandslurry.plant.schedule;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sandslurry.plant.Stream;
import sandslurry.plant.network.UnitNote;

/**
 * One day by schedule.
 *
 * @param number 1 for the first day
 * @param meanFlows every stream, its flow meant over the whole day
 * @param streams every stream that flowed, at its sandiest, its least and its greatest moment
 * @param pits the pits by name
 * @param units the units other than pits that divide their feed, by name
 * @param imbalance the worst of all constituents: what came in less what went out, spilled or was
 *     left, over what came in and was there
 * @param notes what the units say of their feeds, each once
 */
public record Day(
    int number,
    Map<String, Stream> meanFlows,
    Map<String, StreamDay> streams,
    Map<String, PitDay> pits,
    Map<String, UnitDay> units,
    double imbalance,
    List<UnitNote> notes) {
  /** Copies lists and maps. */
  public Day {
    meanFlows = Collections.unmodifiableMap(new LinkedHashMap<>(meanFlows));
    streams = Collections.unmodifiableMap(new LinkedHashMap<>(streams));
    pits = Collections.unmodifiableMap(new LinkedHashMap<>(pits));
    units = Collections.unmodifiableMap(new LinkedHashMap<>(units));
    notes = List.copyOf(notes);
  }
}
