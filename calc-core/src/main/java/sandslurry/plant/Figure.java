package sandslurry.plant;

import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/**
 * One number of a plant with its range.
 *
 * @param what what it is, in words
 * @param kind how it is shown
 * @param range its least, expected and greatest value in SI
 */
public record Figure(String what, Kind<?> kind, Range range) {
  /**
   * The number with its unit, and the range where there is one.
   *
   * @param units the units of the report
   * @return for example {@code 12 % (10 to 14)}
   */
  public String shown(UnitSystem units) {
    return units.show(kind, range.base(), range.low(), range.high());
  }
}
