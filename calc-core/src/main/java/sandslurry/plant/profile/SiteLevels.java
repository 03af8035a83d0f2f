package sandslurry.plant.profile;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The levels of a site, above the datum of its plant.
 *
 * @param yardM the yard, from which the height of platforms is measured [m]
 * @param units the units that have levels, by name, in the order of the plant
 */
public record SiteLevels(double yardM, Map<String, Levels> units) {
  /** Copies the map, order kept. */
  public SiteLevels {
    units = Collections.unmodifiableMap(new LinkedHashMap<>(units));
  }
}
