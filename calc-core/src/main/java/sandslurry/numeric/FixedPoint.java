package sandslurry.numeric;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleBiFunction;
import java.util.function.UnaryOperator;

/**
 * A state that its own map leaves as it is: x = g(x).
 *
 * <p>Successive substitution, accelerated by the method of Anderson (1965), Journal of the ACM
 * 12:547-560 (from memory, unverified): from the last few states the combination is taken whose
 * residuals cancel best in the sense of least squares. An accelerated state with a negative entry
 * is refused and the plain substitution taken instead, since flows and masses are not negative.
 */
public final class FixedPoint {
  private static final int DEPTH = 5;

  /** Less than this share of a change is left of it where others make it up: it adds nothing. */
  private static final double AGREE = 1e-12;

  private final List<double[]> mapped = new ArrayList<>();
  private final List<double[]> residuals = new ArrayList<>();

  /** A search of which no state is known yet, for whoever applies the map. */
  public FixedPoint() {}

  /**
   * Where the search ended.
   *
   * @param state the last state, after the map
   * @param converged whether it moved by no more than the tolerance
   * @param passes how often the map was applied
   * @param change how far the last application of the map moved the state, by the measure given
   */
  public record Result(double[] state, boolean converged, int passes, double change) {}

  /**
   * Looks for the fixed point.
   *
   * @param map the map g, from non-negative states to non-negative states of the same length
   * @param start the first state
   * @param distance how far two states lie apart: 0 when they are the same
   * @param tolerance the distance that counts as no change
   * @param mostPasses how often the map may be applied
   * @return where the search ended, converged or not
   */
  public static Result search(
      UnaryOperator<double[]> map,
      double[] start,
      ToDoubleBiFunction<double[], double[]> distance,
      double tolerance,
      int mostPasses) {
    FixedPoint history = new FixedPoint();
    double[] state = start;
    double change = Double.POSITIVE_INFINITY;
    double[] next = start;
    for (int pass = 1; pass <= mostPasses; pass++) {
      next = map.apply(state);
      change = distance.applyAsDouble(state, next);
      if (change <= tolerance) {
        return new Result(next, true, pass, change);
      }
      state = history.after(state, next);
    }
    return new Result(next, false, mostPasses, change);
  }

  /**
   * The state to apply the map to next.
   *
   * @param state the state that it was applied to
   * @param next what came of it
   * @return the accelerated state, or what came of it where that is refused
   */
  public double[] after(double[] state, double[] next) {
    mapped.add(next);
    residuals.add(difference(next, state));
    if (mapped.size() > DEPTH + 1) {
      mapped.remove(0);
      residuals.remove(0);
    }
    double[] accelerated = accelerated();
    if (accelerated == null) {
      mapped.clear();
      residuals.clear();
      return next;
    }
    return accelerated;
  }

  /**
   * The accelerated state, the plain one when there is no history, or null when refused. What the
   * changes of the residuals can make up of the last residual is taken away from it one after the
   * other, by the method of Gram and Schmidt, and the same of the state.
   */
  private double[] accelerated() {
    int last = mapped.size() - 1;
    double[] state = mapped.get(last).clone();
    double[] residual = residuals.get(last).clone();
    List<double[]> directions = new ArrayList<>();
    List<double[]> moves = new ArrayList<>();
    for (int i = last - 1; i >= 0; i--) {
      double[] direction = difference(residuals.get(i + 1), residuals.get(i));
      double[] move = difference(mapped.get(i + 1), mapped.get(i));
      double size = dot(direction, direction);
      for (int k = 0; k < directions.size(); k++) {
        double[] other = directions.get(k);
        double share = dot(direction, other) / dot(other, other);
        take(direction, share, other);
        take(move, share, moves.get(k));
      }
      double left = dot(direction, direction);
      if (left > AGREE * AGREE * size) {
        double share = dot(residual, direction) / left;
        take(residual, share, direction);
        take(state, share, move);
        directions.add(direction);
        moves.add(move);
      }
    }
    for (double value : state) {
      if (!(value >= 0 && Double.isFinite(value))) {
        return null;
      }
    }
    return state;
  }

  private static double[] difference(double[] one, double[] other) {
    double[] difference = one.clone();
    take(difference, 1, other);
    return difference;
  }

  private static void take(double[] from, double share, double[] other) {
    for (int i = 0; i < from.length; i++) {
      from[i] -= share * other[i];
    }
  }

  private static double dot(double[] one, double[] other) {
    double sum = 0;
    for (int i = 0; i < one.length; i++) {
      sum += one[i] * other[i];
    }
    return sum;
  }
}
