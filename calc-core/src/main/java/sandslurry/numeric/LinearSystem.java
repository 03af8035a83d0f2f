package sandslurry.numeric;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularMatrixException;

/** As many linear equations as unknowns, by LU decomposition with partial pivoting. */
public final class LinearSystem {
  private LinearSystem() {}

  /**
   * Solves a x = b. One step of iterative refinement removes what rounding left.
   *
   * @param what what is solved for, to name it when there is no solution
   * @param a square matrix, row by row
   * @param b right-hand side, as long as the matrix is high
   * @return the solution
   * @throws UnsolvedException if the matrix is singular or the solution is not finite
   */
  public static double[] solve(String what, double[][] a, double[] b) {
    RealMatrix matrix = new Array2DRowRealMatrix(a);
    RealVector right = new ArrayRealVector(b);
    try {
      DecompositionSolver solver = new LUDecomposition(matrix, Double.MIN_NORMAL).getSolver();
      RealVector x = solver.solve(right);
      RealVector refined = x.add(solver.solve(right.subtract(matrix.operate(x))));
      for (double value : refined.toArray()) {
        if (!Double.isFinite(value)) {
          throw new UnsolvedException(what + ": the solution is not finite");
        }
      }
      return refined.toArray();
    } catch (SingularMatrixException e) {
      throw new UnsolvedException(what + ": the equations have no single solution");
    }
  }
}
