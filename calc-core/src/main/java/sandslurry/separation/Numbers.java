package sandslurry.separation;

/** The checks of numbers that the separation units share; each is written so that NaN fails it. */
final class Numbers {
  private Numbers() {}

  static double positive(String what, double value, String unit) {
    if (!(value > 0 && Double.isFinite(value))) {
      throw new IllegalArgumentException(
          (what + " must be > 0 but was " + value + " " + unit).strip());
    }
    return value;
  }

  static double notNegative(String what, double value, String unit) {
    if (!(value >= 0 && Double.isFinite(value))) {
      throw new IllegalArgumentException(
          (what + " must be >= 0 but was " + value + " " + unit).strip());
    }
    return value;
  }

  static double share(String what, double value) {
    if (!(value >= 0 && value <= 1)) {
      throw new IllegalArgumentException(what + " lies in 0 to 1 but was " + value);
    }
    return value;
  }

  /** A share that may have passed its bounds by rounding alone. */
  static double rounded(double share) {
    return Math.min(1, Math.max(0, share));
  }
}
