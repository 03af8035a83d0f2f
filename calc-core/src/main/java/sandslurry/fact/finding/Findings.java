package sandslurry.fact.finding;

import java.util.ArrayList;
import java.util.List;
import sandslurry.units.UnitSystem;

/**
 * Findings as they are made.
 *
 * @param units the units in which their sentences show numbers
 * @param all those made so far
 */
public record Findings(UnitSystem units, List<Finding> all) {
  /**
   * Begins with no findings.
   *
   * @param units the units in which findings are read
   */
  public Findings(UnitSystem units) {
    this(units, new ArrayList<>());
  }
}
