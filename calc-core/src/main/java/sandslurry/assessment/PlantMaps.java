package sandslurry.assessment;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** Maps that keep their order: units and accounts are read in the order in which they stand. */
final class PlantMaps {
  private PlantMaps() {}

  static <K, V> Map<K, V> ordered(Map<K, V> map) {
    return Collections.unmodifiableMap(new LinkedHashMap<>(map));
  }
}
