package sandslurry.diagnosis;

/**
 * A value with its uncertainty, which need not be even.
 *
 * @param low the lower end
 * @param value the value, between the ends
 * @param high the upper end
 */
public record Bracket(double low, double value, double high) {
  /** Checks the order. */
  public Bracket {
    if (!(low <= value && value <= high)) {
      throw new IllegalArgumentException(
          "a span needs low <= value <= high but has " + low + ", " + value + " and " + high);
    }
  }

  /**
   * Says whether a measurement would tell two values apart.
   *
   * @param other the other value
   * @return true when the spans do not meet
   */
  public boolean apartFrom(Bracket other) {
    return high < other.low || other.high < low;
  }

  /**
   * The span widened by an uncertainty at either end.
   *
   * @param by the uncertainty, not negative
   * @return the wider span
   */
  public Bracket widened(double by) {
    return new Bracket(low - by, value, high + by);
  }
}
