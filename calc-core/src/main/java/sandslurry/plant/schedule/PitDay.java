package sandslurry.plant.schedule;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sandslurry.plant.Stream;

/**
 * What a pit went through in a day.
 *
 * @param name the pit
 * @param volumesM3 volume at the end of each step [m3]
 * @param leastM3 least volume [m3]
 * @param mostM3 most volume [m3]
 * @param spilledM3 volume that ran over the brim [m3]
 * @param running share of the time that each pump was set to run in which it did run, by stream
 * @param endContents what it holds at the end; flows are to be read as masses [kg]
 */
public record PitDay(
    String name,
    List<Double> volumesM3,
    double leastM3,
    double mostM3,
    double spilledM3,
    Map<String, Double> running,
    Stream endContents) {
  /** Copies list and map. */
  public PitDay {
    volumesM3 = List.copyOf(volumesM3);
    running = Collections.unmodifiableMap(new LinkedHashMap<>(running));
  }

  /**
   * Says whether the pit ran over.
   *
   * @return true when anything spilled
   */
  public boolean overflowed() {
    return spilledM3 > 0;
  }
}
