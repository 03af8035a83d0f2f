package sandslurry.numeric;

/**
 * A smooth curve through given points that never overshoots them: piecewise cubic Hermite
 * interpolation with the harmonic-mean slopes of Fritsch and Butland (1984), SIAM Journal on
 * Scientific and Statistical Computing 5:300-304. Between two points the curve stays between their
 * values. Outside the points it refuses to answer.
 */
public final class MonotoneCurve {
  private final double[] xs;
  private final double[] ys;
  private final double[] slopes;

  /**
   * Makes the curve.
   *
   * @param xs at least two abscissas, strictly ascending
   * @param ys as many finite ordinates
   */
  public MonotoneCurve(double[] xs, double[] ys) {
    if (xs.length < 2 || xs.length != ys.length) {
      throw new IllegalArgumentException(
          "a curve needs two points or more, with as many ordinates as abscissas, but has "
              + xs.length
              + " and "
              + ys.length);
    }
    for (int i = 0; i < xs.length; i++) {
      if (!Double.isFinite(xs[i]) || !Double.isFinite(ys[i]) || i > 0 && !(xs[i] > xs[i - 1])) {
        throw new IllegalArgumentException(
            "points of a curve must be finite and ascending, but point " + (i + 1) + " is not");
      }
    }
    this.xs = xs.clone();
    this.ys = ys.clone();
    this.slopes = slopes(xs, ys);
  }

  private static double[] slopes(double[] xs, double[] ys) {
    int last = xs.length - 1;
    double[] width = new double[last];
    double[] secant = new double[last];
    for (int i = 0; i < last; i++) {
      width[i] = xs[i + 1] - xs[i];
      secant[i] = (ys[i + 1] - ys[i]) / width[i];
    }
    double[] slope = new double[last + 1];
    if (last == 1) {
      slope[0] = secant[0];
      slope[1] = secant[0];
      return slope;
    }
    for (int i = 1; i < last; i++) {
      if (secant[i - 1] * secant[i] > 0) {
        double before = 2 * width[i] + width[i - 1];
        double after = width[i] + 2 * width[i - 1];
        slope[i] = (before + after) / (before / secant[i - 1] + after / secant[i]);
      }
    }
    slope[0] = endSlope(width[0], width[1], secant[0], secant[1]);
    slope[last] = endSlope(width[last - 1], width[last - 2], secant[last - 1], secant[last - 2]);
    return slope;
  }

  /** One-sided three-point slope, limited so that the end piece stays monotone. */
  private static double endSlope(double width, double next, double secant, double nextSecant) {
    double slope = ((2 * width + next) * secant - width * nextSecant) / (width + next);
    if (slope * secant <= 0) {
      return 0;
    }
    if (secant * nextSecant <= 0 && Math.abs(slope) > 3 * Math.abs(secant)) {
      return 3 * secant;
    }
    return slope;
  }

  /**
   * The least abscissa.
   *
   * @return the first abscissa given
   */
  public double from() {
    return xs[0];
  }

  /**
   * The greatest abscissa.
   *
   * @return the last abscissa given
   */
  public double to() {
    return xs[xs.length - 1];
  }

  /**
   * The abscissas given.
   *
   * @return a copy, ascending
   */
  public double[] abscissas() {
    return xs.clone();
  }

  /**
   * The ordinate at an abscissa.
   *
   * @param x an abscissa between {@link #from} and {@link #to}
   * @return the ordinate
   * @throws IllegalArgumentException if the abscissa lies outside: there is no extrapolation
   */
  public double at(double x) {
    if (!(x >= from() && x <= to())) {
      throw new IllegalArgumentException(
          x + " lies outside the points of the curve, " + from() + " to " + to());
    }
    int i = 0;
    while (i < xs.length - 2 && x > xs[i + 1]) {
      i++;
    }
    double h = xs[i + 1] - xs[i];
    double t = (x - xs[i]) / h;
    double u = 1 - t;
    return ys[i] * (1 + 2 * t) * u * u
        + slopes[i] * h * t * u * u
        + ys[i + 1] * t * t * (3 - 2 * t)
        - slopes[i + 1] * h * t * t * u;
  }
}
