package sandslurry.numeric;

/**
 * A smooth curve through given points that never overshoots them: piecewise cubic Hermite
 * interpolation with the harmonic-mean slopes of Fritsch and Butland (1984), SIAM Journal on
 * Scientific and Statistical Computing 5:300-304. Between two points the curve stays between their
 * values. Outside the points it refuses to answer.
 */
public final class MonotoneCurve {
  private static final double SETTLED = 1e-15;

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
    return inPiece(piece(x), x);
  }

  private int piece(double x) {
    int low = 0;
    int high = xs.length - 2;
    // Points that are spaced evenly are found at once.
    int even = (int) ((x - from()) / (to() - from()) * (high + 1));
    if (even <= high && x > xs[even] && x <= xs[even + 1]) {
      return even;
    }
    while (low < high) {
      int middle = (low + high) / 2;
      if (x > xs[middle + 1]) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private double inPiece(int i, double x) {
    double h = xs[i + 1] - xs[i];
    double t = (x - xs[i]) / h;
    double u = 1 - t;
    return ys[i] * (1 + 2 * t) * u * u
        + slopes[i] * h * t * u * u
        + ys[i + 1] * t * t * (3 - 2 * t)
        - slopes[i + 1] * h * t * t * u;
  }

  /**
   * Where the curve falls through an ordinate for the last time.
   *
   * @param y an ordinate that the curve reaches
   * @return the greatest abscissa at which the curve is not below it; the last one when it ends so
   * @throws IllegalArgumentException if the curve begins and stays below it
   */
  public double lastAbscissa(double y) {
    int last = xs.length - 1;
    if (ys[last] >= y) {
      return xs[last];
    }
    int i = last - 1;
    while (i >= 0 && !(ys[i] >= y)) {
      i--;
    }
    if (i < 0) {
      throw new IllegalArgumentException("the curve is below " + y + " everywhere");
    }
    return fallsThrough(i, y);
  }

  /** Newton's rule within a piece that falls through an ordinate, and halving where it leaves. */
  private double fallsThrough(int i, double y) {
    double low = xs[i];
    double high = xs[i + 1];
    double x = low + (high - low) * (ys[i] - y) / (ys[i] - ys[i + 1]);
    while (true) {
      double above = inPiece(i, x) - y;
      if (above >= 0) {
        low = x;
      } else {
        high = x;
      }
      double next = x - above / slopeInPiece(i, x);
      if (!(next > low && next < high)) {
        next = (low + high) / 2;
      }
      if (next == x || !(next > low && next < high)) {
        return next;
      }
      if (Math.abs(next - x) <= SETTLED * (Math.abs(x) + high - low)) {
        return next;
      }
      x = next;
    }
  }

  private double slopeInPiece(int i, double x) {
    double h = xs[i + 1] - xs[i];
    double t = (x - xs[i]) / h;
    double u = 1 - t;
    return 6 * t * u * (ys[i + 1] - ys[i]) / h
        + slopes[i] * u * (1 - 3 * t)
        + slopes[i + 1] * t * (3 * t - 2);
  }
}
