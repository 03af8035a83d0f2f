package sandslurry.separation;

/** The checks of numbers that the separation units share; each is written so that NaN fails it. */
public final class Numbers {
  private Numbers() {}

  /**
   * Asks for a number above 0.
   *
   * @param what name of the number, for the error
   * @param value the number
   * @param unit its unit, for the error
   * @return the number
   * @throws IllegalArgumentException if it is not
   */
  public static double positive(String what, double value, String unit) {
    if (!(value > 0 && Double.isFinite(value))) {
      throw new IllegalArgumentException(
          (what + " must be > 0 but was " + value + " " + unit).strip());
    }
    return value;
  }

  /**
   * Asks for a number of 0 or more.
   *
   * @param what name of the number, for the error
   * @param value the number
   * @param unit its unit, for the error
   * @return the number
   * @throws IllegalArgumentException if it is not
   */
  public static double notNegative(String what, double value, String unit) {
    if (!(value >= 0 && Double.isFinite(value))) {
      throw new IllegalArgumentException(
          (what + " must be >= 0 but was " + value + " " + unit).strip());
    }
    return value;
  }

  /**
   * Asks for a share of 0 to 1.
   *
   * @param what name of the share, for the error
   * @param value the share
   * @return the share
   * @throws IllegalArgumentException if it is none
   */
  public static double share(String what, double value) {
    if (!(value >= 0 && value <= 1)) {
      throw new IllegalArgumentException(what + " lies in 0 to 1 but was " + value);
    }
    return value;
  }

  /**
   * A share that may have passed its bounds by rounding alone.
   *
   * @param share the share
   * @return the share within 0 to 1
   */
  public static double rounded(double share) {
    return Math.min(1, Math.max(0, share));
  }
}
