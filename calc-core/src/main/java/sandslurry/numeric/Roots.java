package sandslurry.numeric;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.exception.NoBracketingException;
import org.apache.commons.math3.exception.TooManyEvaluationsException;

/**
 * Roots of continuous functions: by Brent's method between two points, by secants from a point near
 * the root.
 *
 * <p>The library's default absolute accuracy of 1e-6 is useless for grain sizes and viscosities in
 * SI, so a relative accuracy is always asked for, and the root is checked for being a pole.
 */
public final class Roots {
  private static final double RELATIVE = 1e-14;
  private static final int MOST_EVALUATIONS = 500;
  private static final int MOST_SECANTS = 20;

  /** A secant step of this size is the last: what it leaves is its product with the one before. */
  private static final double LAST_STEP = 1e-9;

  private static final double ROUNDING = 1e-13;

  private Roots() {}

  /**
   * The root between two points at which the function has opposite signs.
   *
   * @param what what is solved for, to name it when the search fails
   * @param function a continuous function
   * @param low the lower end
   * @param high the upper end
   * @return the root, to a relative accuracy of 1e-14
   * @throws UnsolvedException if the ends do not bracket a root or the function is not finite
   */
  public static double between(String what, DoubleUnaryOperator function, double low, double high) {
    double atLow = finite(what, function, low);
    double atHigh = finite(what, function, high);
    if (atLow == 0) {
      return low;
    }
    if (atHigh == 0) {
      return high;
    }
    double smallest =
        Math.max(Math.min(Math.abs(low), Math.abs(high)), Math.abs(high - low) * 1e-12);
    BrentSolver solver = new BrentSolver(RELATIVE, RELATIVE * smallest, Double.MIN_NORMAL);
    try {
      double root = solver.solve(MOST_EVALUATIONS, x -> finite(what, function, x), low, high);
      double residual = Math.abs(finite(what, function, root));
      if (residual > Math.max(Math.abs(atLow), Math.abs(atHigh))) {
        throw new UnsolvedException(what + ": the function jumps at " + root);
      }
      return root;
    } catch (NoBracketingException e) {
      throw new UnsolvedException(
          what + ": no root between " + low + " (" + atLow + ") and " + high + " (" + atHigh + ")");
    } catch (TooManyEvaluationsException e) {
      throw new UnsolvedException(
          what + ": no convergence in " + MOST_EVALUATIONS + " evaluations");
    }
  }

  /**
   * The root of a smooth function that rises nearly in a straight line, from a point near it, with
   * half the evaluations of {@link #between}: most correlations are such, of the logarithm of their
   * unknown.
   *
   * @param function the function
   * @param start a point near the root
   * @param slope about the slope of the function there, positive
   * @return the root, to an error near 1e-14; empty where the secants stray, as they may where a
   *     flow changes its regime
   */
  public static OptionalDouble near(DoubleUnaryOperator function, double start, double slope) {
    double before = start;
    double atBefore = function.applyAsDouble(before);
    double now = before - atBefore / slope;
    if (Math.abs(now - before) <= ROUNDING) {
      return OptionalDouble.of(now);
    }
    for (int i = 0; i < MOST_SECANTS && Double.isFinite(now); i++) {
      double atNow = function.applyAsDouble(now);
      if (atNow == 0) {
        return OptionalDouble.of(now);
      }
      double secant = (atNow - atBefore) / (now - before);
      if (!(secant > slope / 5 && secant < slope * 5)) {
        return OptionalDouble.empty();
      }
      before = now;
      atBefore = atNow;
      now -= atNow / secant;
      if (Math.abs(now - before) <= LAST_STEP) {
        return OptionalDouble.of(now);
      }
    }
    return OptionalDouble.empty();
  }

  /**
   * The root of a function of a positive unknown that may spread over many decades: the search runs
   * in the logarithm of the unknown.
   *
   * @param what what is solved for
   * @param function a continuous function of a positive unknown
   * @param low the lower end, positive
   * @param high the upper end
   * @return the root, to a relative accuracy near 1e-13
   */
  public static double betweenDecades(
      String what, DoubleUnaryOperator function, double low, double high) {
    return Math.exp(
        between(what, x -> function.applyAsDouble(Math.exp(x)), Math.log(low), Math.log(high)));
  }

  /**
   * Every root that a scan can see, in ascending order.
   *
   * @param what what is solved for
   * @param function a continuous function
   * @param low the lower end
   * @param high the upper end
   * @param intervals how many equal intervals are looked at for a change of sign
   * @return the roots; empty when there is no change of sign
   */
  public static List<Double> all(
      String what, DoubleUnaryOperator function, double low, double high, int intervals) {
    List<Double> roots = new ArrayList<>();
    double left = low;
    double atLeft = finite(what, function, left);
    for (int i = 1; i <= intervals; i++) {
      double right = low + (high - low) * i / intervals;
      double atRight = finite(what, function, right);
      if (atLeft == 0) {
        roots.add(left);
      } else if (atLeft * atRight < 0) {
        roots.add(between(what, function, left, right));
      }
      left = right;
      atLeft = atRight;
    }
    if (atLeft == 0) {
      roots.add(left);
    }
    return List.copyOf(roots);
  }

  private static double finite(String what, DoubleUnaryOperator function, double at) {
    double value = function.applyAsDouble(at);
    if (!Double.isFinite(value)) {
      throw new UnsolvedException(what + ": the function is " + value + " at " + at);
    }
    return value;
  }
}
