package sandslurry.units;

import java.math.RoundingMode;
import java.util.Locale;
import javax.measure.Quantity;

/** The two families of units in which results are shown. */
public enum UnitSystem {
  /** Metres, litres per second, kilopascals. */
  METRIC,
  /** Feet, gallons per minute, pounds per square inch. */
  US;

  /**
   * Writes a quantity for a person, rounded, with its unit.
   *
   * @param kind what the quantity is, which decides unit and digits
   * @param quantity the quantity
   * @return for example {@code 91.4 m}
   * @param <Q> the type of quantity
   */
  public <Q extends Quantity<Q>> String show(Kind<Q> kind, Quantity<Q> quantity) {
    return show(kind, kind.measure().si(quantity));
  }

  /**
   * Writes an SI value for a person, rounded, with its unit.
   *
   * @param kind what the value is, which decides unit and digits
   * @param si the value in SI; must be finite
   * @return for example {@code 91.4 m}
   * @throws IllegalArgumentException if the value is not finite: no NaN ever reaches a person
   */
  public String show(Kind<?> kind, double si) {
    String symbol = kind.symbol(this);
    return symbol.isEmpty() ? number(kind, si) : number(kind, si) + " " + symbol;
  }

  /**
   * Writes a required minimum: rounded up, so that who keeps the number shown keeps the minimum.
   *
   * @param kind what the value is
   * @param si the value in SI; must be finite
   * @return the number with its unit
   */
  public String showAtLeast(Kind<?> kind, double si) {
    return show(kind, si, RoundingMode.CEILING);
  }

  /**
   * Writes an allowed maximum: rounded down, so that who keeps the number shown keeps the maximum.
   *
   * @param kind what the value is
   * @param si the value in SI; must be finite
   * @return the number with its unit
   */
  public String showAtMost(Kind<?> kind, double si) {
    return show(kind, si, RoundingMode.FLOOR);
  }

  private String show(Kind<?> kind, double si, RoundingMode rounding) {
    String symbol = kind.symbol(this);
    String number = NumberText.rounded(kind.number(this, si), kind.digits(), rounding);
    return symbol.isEmpty() ? number : number + " " + symbol;
  }

  /**
   * Writes a value in its SI unit, rounded to five digits, for a working that is followed by hand.
   *
   * @param kind what the value is
   * @param si the value in SI; must be finite
   * @return for example {@code 0.02839 m3/s}
   */
  public static String siText(Kind<?> kind, double si) {
    String symbol = kind.measure().units().get(0).symbol();
    String number = NumberText.rounded(si, 5);
    return symbol.isEmpty() ? number : number + " " + symbol;
  }

  /**
   * Writes only the number, for a table whose heading holds the unit.
   *
   * @param kind what the value is
   * @param si the value in SI; must be finite
   * @return the rounded number in the unit that {@link Kind#symbol} names
   */
  public String number(Kind<?> kind, double si) {
    return NumberText.rounded(kind.number(this, si), kind.digits());
  }

  /**
   * Writes a time of day in hours, with which both systems count it.
   *
   * @param seconds the time since midnight [s]
   * @return for example {@code 13.5}
   */
  public static String clock(double seconds) {
    return String.format(Locale.ROOT, "%.1f", InUnit.hours(seconds));
  }
}
