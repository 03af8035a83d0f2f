package sandslurry.plant.profile;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The hydraulic profile of a plant: whether each stream that runs by gravity has fall enough, and
 * how much higher which unit must stand.
 *
 * <p>A unit must rise by r(U) = max(0, needed − available + r(D)) over all streams that run by
 * gravity from it to a unit D, for a unit that rises takes fall from what flows into it. Found from
 * the last unit upwards, the rise is the least that gives every stream its fall while no unit is
 * set lower. Units that flow into each other in a circle by gravity alone can never all have it.
 * Derived from the balance of levels; no source needed.
 *
 * @param levels the levels that are given
 * @param falls the streams that run by gravity
 * @param lifts the streams that are pumped
 * @param risesM how much higher each unit must stand, by name; empty when none must [m]
 * @param circular whether streams run in a circle by gravity alone
 */
public record HydraulicProfile(
    SiteLevels levels,
    List<Fall> falls,
    List<Lift> lifts,
    Map<String, Double> risesM,
    boolean circular) {
  /** Copies lists and map. */
  public HydraulicProfile {
    falls = List.copyOf(falls);
    lifts = List.copyOf(lifts);
    risesM = Collections.unmodifiableMap(new LinkedHashMap<>(risesM));
  }

  /**
   * Finds how much higher units must stand.
   *
   * @param levels the levels that are given
   * @param falls the streams that run by gravity between units that have levels
   * @param lifts the streams that are pumped between them
   * @return the profile
   */
  public static HydraulicProfile of(SiteLevels levels, List<Fall> falls, List<Lift> lifts) {
    Map<String, Double> rises = new LinkedHashMap<>();
    // Without a circle the longest way down has fewer streams than there are units.
    for (int pass = 0; pass <= levels.units().size(); pass++) {
      boolean risen = false;
      for (Fall fall : falls) {
        double least = fall.neededM() - fall.availableM() + rises.getOrDefault(fall.to(), 0.0);
        if (least > rises.getOrDefault(fall.from(), 0.0) + Fall.ROUNDING_M) {
          rises.put(fall.from(), least);
          risen = true;
        }
      }
      if (!risen) {
        return new HydraulicProfile(levels, falls, lifts, rises, false);
      }
    }
    return new HydraulicProfile(levels, falls, lifts, Map.of(), true);
  }

  /**
   * The height of the platform on which a unit stands when it has risen as it must.
   *
   * @param unit its name
   * @return its floor, or the lowest level known of it, above the yard; below 0 in the ground [m]
   */
  public double platformM(String unit) {
    return levels.units().get(unit).footM() + risesM.getOrDefault(unit, 0.0) - levels.yardM();
  }
}
