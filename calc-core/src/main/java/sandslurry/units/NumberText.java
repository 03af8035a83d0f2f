package sandslurry.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Numbers as text, independent of the locale. Reading is strict: the number must stand at the start
 * and be written with a decimal point, an exponent or a common fraction, and nothing is dropped.
 *
 * @param number the number read
 * @param rest what follows it, without surrounding space
 */
record NumberText(double number, String rest) {
  /** Digits that the rounding of the computer leaves alone. */
  private static final int CLEAN_DIGITS = 12;

  private static final Pattern DECIMAL =
      Pattern.compile("([+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?)(.*)", Pattern.DOTALL);
  private static final Pattern FRACTION =
      Pattern.compile("(?:(\\d+)[ -])?(\\d+)/([1-9]\\d*)(?![\\d.])(.*)", Pattern.DOTALL);

  /**
   * Spaces and the minus sign that word processors and web pages put in place of the plain ones.
   */
  private static final Pattern UNUSUAL_SPACE = Pattern.compile("[\\u00a0\\u2007\\u2009\\u202f]");

  private static final char MINUS = '\u2212';

  /** A unit that itself begins with a figure, {@code 1/min}, apart from the number before it. */
  private static final Pattern RECIPROCAL = Pattern.compile("\\s+1 ?/ ?[a-z].*");

  /** A figure other than 0 before the exponent: the number is not nothing. */
  private static final Pattern NOT_NOUGHT = Pattern.compile("^[^eE]*[1-9]");

  /** A share of the width of a range that is nothing. */
  private static final double NOTHING = 1e-3;

  private static final double PLAIN_FROM = 1e-4;
  private static final double PLAIN_BELOW = 1e7;

  static NumberText split(String text) {
    String stripped = UNUSUAL_SPACE.matcher(text).replaceAll(" ").replace(MINUS, '-').strip();
    Matcher fraction = FRACTION.matcher(stripped);
    if (fraction.matches()) {
      double whole = fraction.group(1) == null ? 0 : Double.parseDouble(fraction.group(1));
      double part = Double.parseDouble(fraction.group(2)) / Double.parseDouble(fraction.group(3));
      return new NumberText(finite(whole + part, stripped), rest(stripped, fraction.group(4)));
    }
    Matcher decimal = DECIMAL.matcher(stripped);
    if (!decimal.matches()) {
      throw new UnitTextException(
          stripped.isEmpty()
              ? "nothing is written here: a number with a unit is needed"
              : quoted(stripped) + " does not start with a number");
    }
    double number = Double.parseDouble(decimal.group(1));
    if (number == 0 && NOT_NOUGHT.matcher(decimal.group(1)).find()) {
      throw new UnitTextException(quoted(stripped) + " is too small to differ from 0");
    }
    return new NumberText(finite(number, stripped), rest(stripped, decimal.group(2)));
  }

  private static double finite(double number, String text) {
    if (!Double.isFinite(number)) {
      throw new UnitTextException(quoted(text) + " is too large to be a number here");
    }
    return number;
  }

  private static String quoted(String text) {
    return "\"" + ShownText.brief(text) + "\"";
  }

  private static String rest(String text, String rest) {
    String unit = rest.strip();
    boolean figure = !unit.isEmpty() && ".,0123456789".indexOf(unit.charAt(0)) >= 0;
    if (figure && !RECIPROCAL.matcher(rest).matches()) {
      throw new UnitTextException(
          quoted(text)
              + " is not one number: write the decimal mark as a point and no thousands mark");
    }
    return unit;
  }

  /** The shortest text that reads back as the same number. */
  static String shortest(double number) {
    double size = Math.abs(number);
    if (number == 0) {
      return "0";
    }
    return size >= PLAIN_FROM && size < PLAIN_BELOW
        ? new BigDecimal(Double.toString(number)).stripTrailingZeros().toPlainString()
        : Double.toString(number);
  }

  /**
   * Significant digits that a number deserves which is not known better than between two others:
   * its last digit is worth a twentieth to a half of half the width. Two digits are always left,
   * one where the number is nothing beside the width.
   *
   * @param most digits of a number that is known exactly
   */
  static int digitsWithin(double number, double low, double high, int most) {
    double half = Math.abs(high - low) / 2;
    if (!(half > 0) || number == 0) {
      return most;
    }
    double place = Math.floor(Math.log10(half));
    double last = half < 2 * Math.pow(10, place) ? place - 1 : place;
    double first = Math.floor(Math.log10(Math.abs(number)));
    int least = first < last - 1 ? 1 : 2;
    return (int) Math.min(most, Math.max(least, first - last + 1));
  }

  /** A number within a range; 0 where it is nothing beside the width. */
  static String within(double number, double low, double high, int most) {
    boolean nothing = Math.abs(number) < Math.abs(high - low) * NOTHING;
    return rounded(nothing ? 0 : number, digitsWithin(number, low, high, most));
  }

  /** The number rounded to so many significant digits, for people; never NaN. */
  static String rounded(double number, int digits) {
    return rounded(number, digits, RoundingMode.HALF_EVEN);
  }

  /**
   * The number rounded in a direction. What differs from the last digit shown by nothing but the
   * rounding of the computer is not moved by a whole digit.
   */
  static String rounded(double number, int digits, RoundingMode rounding) {
    if (!Double.isFinite(number)) {
      throw new IllegalArgumentException("a result to be printed must be finite but was " + number);
    }
    if (number == 0) {
      return "0";
    }
    BigDecimal exact = new BigDecimal(number);
    BigDecimal clean = exact.round(new MathContext(CLEAN_DIGITS, RoundingMode.HALF_EVEN));
    BigDecimal round = clean.round(new MathContext(digits, rounding));
    double size = Math.abs(round.doubleValue());
    if (size >= PLAIN_BELOW || size < PLAIN_FROM) {
      String mantissa = round.unscaledValue().abs().toString();
      int exponent = mantissa.length() - 1 - round.scale();
      String sign = round.signum() < 0 ? "-" : "";
      String tail = mantissa.length() > 1 ? "." + mantissa.substring(1) : "";
      return sign + mantissa.charAt(0) + tail + "e" + exponent;
    }
    int integerDigits = round.precision() - round.scale();
    return round
        .setScale(Math.max(0, digits - integerDigits), RoundingMode.UNNECESSARY)
        .toPlainString();
  }
}
