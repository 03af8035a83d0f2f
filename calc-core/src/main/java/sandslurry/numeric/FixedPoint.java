package sandslurry.numeric;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleBiFunction;
import java.util.function.UnaryOperator;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularValueDecomposition;

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
  private static final double AGREE = 1e-12;

  private FixedPoint() {}

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
    List<RealVector> mapped = new ArrayList<>();
    List<RealVector> residuals = new ArrayList<>();
    double[] state = start;
    double change = Double.POSITIVE_INFINITY;
    double[] next = start;
    for (int pass = 1; pass <= mostPasses; pass++) {
      next = map.apply(state);
      change = distance.applyAsDouble(state, next);
      if (change <= tolerance) {
        return new Result(next, true, pass, change);
      }
      mapped.add(new ArrayRealVector(next));
      residuals.add(new ArrayRealVector(next).subtract(new ArrayRealVector(state)));
      if (mapped.size() > DEPTH + 1) {
        mapped.remove(0);
        residuals.remove(0);
      }
      state = accelerated(mapped, residuals);
      if (state == null) {
        mapped.clear();
        residuals.clear();
        state = next;
      }
    }
    return new Result(next, false, mostPasses, change);
  }

  /** The accelerated state, the plain one when there is no history, or null when refused. */
  private static double[] accelerated(List<RealVector> mapped, List<RealVector> residuals) {
    int last = mapped.size() - 1;
    if (last == 0) {
      return mapped.get(0).toArray();
    }
    RealMatrix differences = new Array2DRowRealMatrix(residuals.get(last).getDimension(), last);
    for (int i = 0; i < last; i++) {
      differences.setColumnVector(i, residuals.get(i + 1).subtract(residuals.get(i)));
    }
    RealVector weights = weights(differences, residuals.get(last));
    RealVector state = mapped.get(last);
    for (int i = 0; i < last; i++) {
      state =
          state.subtract(
              mapped.get(i + 1).subtract(mapped.get(i)).mapMultiply(weights.getEntry(i)));
    }
    for (double value : state.toArray()) {
      if (!(value >= 0 && Double.isFinite(value))) {
        return null;
      }
    }
    return state.toArray();
  }

  /** Least squares; singular values, which cost much more, only where columns all but agree. */
  private static RealVector weights(RealMatrix differences, RealVector residual) {
    DecompositionSolver byRotation =
        new QRDecomposition(differences, AGREE * differences.getFrobeniusNorm()).getSolver();
    return byRotation.isNonSingular()
        ? byRotation.solve(residual)
        : new SingularValueDecomposition(differences).getSolver().solve(residual);
  }
}
