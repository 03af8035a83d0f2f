package sandslurry.plant;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;

/**
 * A value that is not known better than between two others.
 *
 * @param low the least value
 * @param base the value expected
 * @param high the greatest value
 */
public record Range(double low, double base, double high) {
  /**
   * Checks the order.
   *
   * @throws IllegalArgumentException unless low ≤ base ≤ high, all finite
   */
  public Range {
    if (!(low <= base && base <= high && Double.isFinite(low) && Double.isFinite(high))) {
      throw new IllegalArgumentException(
          "a range needs low <= base <= high but has " + low + ", " + base + ", " + high);
    }
  }

  /**
   * A value known exactly.
   *
   * @param value the value
   * @return the range without width
   */
  public static Range of(double value) {
    return new Range(value, value, value);
  }

  /**
   * The range of a result over several cases.
   *
   * @param base the expected case
   * @param cases the other cases
   * @param result what is asked of each case
   * @param <T> the case
   * @return from the least to the greatest result of all cases, the expected one among them
   */
  public static <T> Range over(T base, List<T> cases, ToDoubleFunction<T> result) {
    double middle = result.applyAsDouble(base);
    double low = middle;
    double high = middle;
    for (T one : cases) {
      double value = result.applyAsDouble(one);
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
    return new Range(low, middle, high);
  }

  /**
   * The range of a monotone function of this value.
   *
   * @param function a function that only rises or only falls
   * @return the range of its values
   */
  public Range map(DoubleUnaryOperator function) {
    double atLow = function.applyAsDouble(low);
    double atHigh = function.applyAsDouble(high);
    return new Range(
        Math.min(atLow, atHigh), function.applyAsDouble(base), Math.max(atLow, atHigh));
  }

  /**
   * The sum of two values whose errors may add up.
   *
   * @param other the other value
   * @return low with low, base with base, high with high
   */
  public Range plus(Range other) {
    return new Range(low + other.low, base + other.base, high + other.high);
  }

  /**
   * The product of two values that are not negative and whose errors may add up.
   *
   * @param other the other value
   * @return low with low, base with base, high with high
   * @throws IllegalArgumentException if either may be negative
   */
  public Range times(Range other) {
    if (!(low >= 0 && other.low >= 0)) {
      throw new IllegalArgumentException(
          "ranges are multiplied from 0 up but begin at " + low + " and " + other.low);
    }
    return new Range(low * other.low, base * other.base, high * other.high);
  }

  /**
   * Says whether anything is uncertain.
   *
   * @return true when low and high differ
   */
  public boolean hasWidth() {
    return low < high;
  }
}
