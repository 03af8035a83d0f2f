package sandslurry.units;

import java.util.List;
import java.util.regex.Pattern;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * One line of the closed table of units: how a unit is written, which other spellings people type,
 * and what it is worth in SI.
 *
 * @param symbol the spelling that is printed
 * @param aliases other spellings that are accepted on input
 * @param factor SI value of one unit (for temperatures: of one degree)
 * @param offset SI value of the unit's zero; 0 for everything but temperatures
 * @param unit the same unit as an object of the units library
 * @param <Q> the quantity that the unit measures
 */
public record UnitEntry<Q extends Quantity<Q>>(
    String symbol, List<String> aliases, double factor, double offset, Unit<Q> unit) {

  private static final Pattern MILLI_OR_MEGA = Pattern.compile("[mM](Pa|bar).*");

  /** Copies the aliases, so that the table cannot be changed from outside. */
  public UnitEntry {
    aliases = List.copyOf(aliases);
  }

  /**
   * Converts a number in this unit to SI.
   *
   * @param number a number in this unit
   * @return the value in the SI unit of the measure
   */
  public double toSi(double number) {
    return number * factor + offset;
  }

  /**
   * Converts an SI value to this unit.
   *
   * @param si a value in the SI unit of the measure
   * @return the number in this unit
   */
  public double fromSi(double si) {
    return (si - offset) / factor;
  }

  boolean isWrittenAs(String text) {
    return symbol.equals(text) || aliases.contains(text);
  }

  boolean isWrittenAsIgnoringCase(String text) {
    return sameButCase(symbol, text) || aliases.stream().anyMatch(a -> sameButCase(a, text));
  }

  /** The case of a leading m is never ignored where it tells milli from mega. */
  private static boolean sameButCase(String spelling, String text) {
    return spelling.equalsIgnoreCase(text)
        && (!MILLI_OR_MEGA.matcher(spelling).matches() || spelling.charAt(0) == text.charAt(0));
  }
}
