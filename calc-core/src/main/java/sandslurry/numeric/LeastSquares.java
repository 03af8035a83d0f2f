package sandslurry.numeric;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.exception.ConvergenceException;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.exception.TooManyIterationsException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.DiagonalMatrix;
import org.apache.commons.math3.linear.SingularMatrixException;

/**
 * Non-linear least squares by the method of Levenberg and Marquardt, for parameters that are
 * positive by nature.
 *
 * <p>The search runs in the logarithms of the parameters, so a parameter cannot become negative and
 * none is clamped. A best fit that wants a parameter of zero shows as a logarithm that runs away,
 * or as a singular matrix, and is refused with {@link UnsolvedException}.
 */
public final class LeastSquares {
  private static final double TOLERANCE = 1e-13;
  private static final double SINGULAR = 1e-14;
  private static final int MOST_EVALUATIONS = 10_000;

  private LeastSquares() {}

  /** A curve with positive parameters. */
  public interface Curve {
    /**
     * The ordinate of the curve.
     *
     * @param x abscissa
     * @param parameters the parameters
     * @return the ordinate
     */
    double at(double x, double[] parameters);

    /**
     * How the ordinate changes with each parameter.
     *
     * @param x abscissa
     * @param parameters the parameters
     * @return the derivative of the ordinate by each parameter
     */
    double[] slopes(double x, double[] parameters);
  }

  /**
   * A fitted curve.
   *
   * @param parameters the parameters, positive
   * @param residuals observed minus fitted ordinate, in the order of the points
   * @param weightedSumOfSquares the weighted sum of the squares of the residuals
   * @param covariance covariance of the parameters, row by row: the weighted residual variance
   *     times the inverse of JᵀWJ; empty when there are no more points than parameters
   */
  public record Fit(
      List<Double> parameters,
      List<Double> residuals,
      double weightedSumOfSquares,
      List<List<Double>> covariance) {
    /** Copies the lists. */
    public Fit {
      parameters = List.copyOf(parameters);
      residuals = List.copyOf(residuals);
      covariance = covariance.stream().map(List::copyOf).toList();
    }
  }

  /**
   * Fits a curve to points.
   *
   * @param what what is fitted, to name it when the search fails
   * @param curve the curve
   * @param xs abscissas
   * @param ys ordinates
   * @param weights weight of the square of each residual, positive
   * @param start a guess of the parameters, positive
   * @return the fit
   * @throws UnsolvedException if the search does not converge or the points do not determine the
   *     parameters
   */
  public static Fit fit(
      String what, Curve curve, double[] xs, double[] ys, double[] weights, double[] start) {
    int count = start.length;
    LeastSquaresOptimizer.Optimum optimum;
    try {
      optimum =
          new LevenbergMarquardtOptimizer()
              .withCostRelativeTolerance(TOLERANCE)
              .withParameterRelativeTolerance(TOLERANCE)
              .withOrthoTolerance(TOLERANCE)
              .optimize(
                  new LeastSquaresBuilder()
                      .start(Arrays.stream(start).map(Math::log).toArray())
                      .target(ys)
                      .weight(new DiagonalMatrix(weights.clone()))
                      .model(
                          logs -> values(curve, xs, exponentials(logs)),
                          logs -> jacobian(curve, xs, exponentials(logs)))
                      .maxEvaluations(MOST_EVALUATIONS)
                      .maxIterations(MOST_EVALUATIONS)
                      .build());
    } catch (ConvergenceException | TooManyEvaluationsException | TooManyIterationsException e) {
      throw new UnsolvedException(what + ": the fit does not converge");
    }
    double[] parameters = exponentials(optimum.getPoint().toArray());
    for (double parameter : parameters) {
      if (!(parameter > Double.MIN_NORMAL && Double.isFinite(parameter))) {
        throw new UnsolvedException(what + ": a parameter runs to " + parameter);
      }
    }
    double[] fitted = values(curve, xs, parameters);
    List<Double> residuals = new ArrayList<>();
    double sum = 0;
    for (int i = 0; i < ys.length; i++) {
      double residual = ys[i] - fitted[i];
      residuals.add(residual);
      sum += weights[i] * residual * residual;
    }
    List<List<Double>> covariance = new ArrayList<>();
    int freedom = ys.length - count;
    if (freedom > 0) {
      double variance = sum / freedom;
      double[][] inverse;
      try {
        inverse = optimum.getCovariances(SINGULAR).getData();
      } catch (SingularMatrixException e) {
        throw new UnsolvedException(what + ": the points do not determine all parameters");
      }
      for (int i = 0; i < count; i++) {
        List<Double> row = new ArrayList<>();
        for (int j = 0; j < count; j++) {
          row.add(variance * inverse[i][j] * parameters[i] * parameters[j]);
        }
        covariance.add(row);
      }
    }
    return new Fit(Arrays.stream(parameters).boxed().toList(), residuals, sum, covariance);
  }

  private static double[] exponentials(double[] logs) {
    return Arrays.stream(logs).map(Math::exp).toArray();
  }

  private static double[] values(Curve curve, double[] xs, double[] parameters) {
    return Arrays.stream(xs).map(x -> curve.at(x, parameters)).toArray();
  }

  private static double[][] jacobian(Curve curve, double[] xs, double[] parameters) {
    double[][] rows = new double[xs.length][];
    for (int i = 0; i < xs.length; i++) {
      double[] slopes = curve.slopes(xs[i], parameters);
      for (int j = 0; j < slopes.length; j++) {
        slopes[j] *= parameters[j];
      }
      rows[i] = slopes;
    }
    return rows;
  }
}
