package sandslurry.units;

import java.math.RoundingMode;
import java.util.Locale;
import java.util.stream.Stream;
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
    return siText(kind.measure().units().get(0).symbol(), si);
  }

  /**
   * Writes a value in SI with five figures, for a line of the working.
   *
   * @param unit the SI unit, empty for a pure number
   * @param si the value; must be finite
   * @return for example {@code 0.02839 m3/s}
   */
  public static String siText(String unit, double si) {
    String number = NumberText.rounded(si, 5);
    return unit.isEmpty() ? number : number + " " + unit;
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
   * Writes only the number, with no more digits than its range supports.
   *
   * @param kind what the value is
   * @param si the value in SI; must be finite
   * @param lowSi the least that it may be
   * @param highSi the most that it may be
   * @return the rounded number in the unit that {@link Kind#symbol} names
   */
  public String number(Kind<?> kind, double si, double lowSi, double highSi) {
    return NumberText.within(
        kind.number(this, si), kind.number(this, lowSi), kind.number(this, highSi), kind.digits());
  }

  /**
   * Writes only the number, within its range and beside what it is compared with: with more digits
   * where it would seem to lie on the other side.
   *
   * @param kind what the value is
   * @param si the value in SI; must be finite
   * @param lowSi the least that it may be
   * @param highSi the most that it may be
   * @param limitSi what it is compared with
   * @return the rounded number in the unit that {@link Kind#symbol} names
   */
  public String number(Kind<?> kind, double si, double lowSi, double highSi, double limitSi) {
    double limit = kind.number(this, limitSi);
    double side = Double.compare(kind.number(this, si), limit);
    return Stream.of(
            number(kind, si, lowSi, highSi),
            number(kind, si),
            NumberText.rounded(
                kind.number(this, si),
                kind.digits(),
                side < 0 ? RoundingMode.FLOOR : RoundingMode.CEILING))
        .filter(text -> side == 0 || Double.compare(Double.parseDouble(text), limit) == side)
        .findFirst()
        .orElseGet(() -> number(kind, si));
  }

  /**
   * Writes a value with its unit, the range in brackets where there is one, and no more digits than
   * the range supports.
   *
   * @param kind what the value is
   * @param si the value in SI; must be finite
   * @param lowSi the least that it may be
   * @param highSi the most that it may be
   * @return for example {@code 12 % (9 to 18)}
   */
  public String show(Kind<?> kind, double si, double lowSi, double highSi) {
    String symbol = kind.symbol(this);
    return number(kind, si, lowSi, highSi)
        + (symbol.isEmpty() ? "" : " " + symbol)
        + ends(kind, lowSi, highSi);
  }

  /**
   * The low end of a range with its unit, and no more digits than the range supports.
   *
   * @param kind what the value is
   * @param lowSi the least that it may be
   * @param highSi the most that it may be
   * @return for example {@code 9 %}
   */
  public String low(Kind<?> kind, double lowSi, double highSi) {
    String symbol = kind.symbol(this);
    return number(kind, lowSi, lowSi, highSi) + (symbol.isEmpty() ? "" : " " + symbol);
  }

  /**
   * The ends of a range, for a table whose heading holds the unit.
   *
   * @param kind what the value is
   * @param lowSi the least that it may be
   * @param highSi the most that it may be
   * @return for example {@code " (9 to 18)"}, with a space before it; empty without width
   */
  public String ends(Kind<?> kind, double lowSi, double highSi) {
    String low = number(kind, lowSi, lowSi, highSi);
    String high = number(kind, highSi, lowSi, highSi);
    return low.equals(high) ? "" : " (" + span(low, high) + ")";
  }

  /**
   * Writes the numbers from one value to another.
   *
   * @param kind what the values are
   * @param lowSi the least
   * @param highSi the greatest
   * @return for example {@code 3.2 to 4.1}, or one number where both are written alike
   */
  public String span(Kind<?> kind, double lowSi, double highSi) {
    return span(number(kind, lowSi), number(kind, highSi));
  }

  /**
   * Writes the numbers from one value to another, with their unit.
   *
   * @param kind what the values are
   * @param lowSi the least
   * @param highSi the greatest
   * @return for example {@code 3.2 to 4.1 m}, or one number where both are written alike
   */
  public String showSpan(Kind<?> kind, double lowSi, double highSi) {
    String symbol = kind.symbol(this);
    return span(kind, lowSi, highSi) + (symbol.isEmpty() ? "" : " " + symbol);
  }

  /**
   * Two numbers as a range.
   *
   * @param low the least, as written
   * @param high the greatest, as written
   * @return for example {@code 3.2 to 4.1}, or one number where both are alike
   */
  public static String span(String low, String high) {
    return low.equals(high) ? low : low + " to " + high;
  }

  /**
   * Writes a time of day in hours, with which both systems count it.
   *
   * @param seconds the time since midnight [s]
   * @return for example {@code 13.5} or {@code 14}
   */
  public static String clock(double seconds) {
    return String.format(Locale.ROOT, "%.1f", InUnit.HOUR.of(seconds)).replaceFirst("\\.0$", "");
  }
}
