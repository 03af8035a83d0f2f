package sandslurry.assessment.plant;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** Maps that keep their order: units and accounts are read in the order in which they stand. */
public final class PlantMaps {
  private PlantMaps() {}

  /**
   * A map that cannot be changed and keeps its order.
   *
   * @param map entries in their order
   * @param <K> type of the keys
   * @param <V> type of the values
   * @return a copy
   */
  public static <K, V> Map<K, V> ordered(Map<K, V> map) {
    return Collections.unmodifiableMap(new LinkedHashMap<>(map));
  }
}
