package sandslurry.numeric;

/**
 * As many linear equations as unknowns, by LU decomposition with partial pivoting. Units are joined
 * to few others, so that most entries are nothing and are passed over.
 */
public final class LinearSystem {
  private final double[][] lu;
  private final int[] rows;

  private LinearSystem(String what, double[][] a) {
    int n = a.length;
    lu = new double[n][];
    rows = new int[n];
    for (int i = 0; i < n; i++) {
      lu[i] = a[i].clone();
      rows[i] = i;
    }
    int[] filled = new int[n];
    for (int k = 0; k < n; k++) {
      pivot(what, k);
      double[] top = lu[k];
      int entries = 0;
      for (int j = k + 1; j < n; j++) {
        if (top[j] != 0) {
          filled[entries++] = j;
        }
      }
      for (int i = k + 1; i < n; i++) {
        double[] row = lu[i];
        if (row[k] != 0) {
          double factor = row[k] / top[k];
          row[k] = factor;
          for (int e = 0; e < entries; e++) {
            row[filled[e]] -= factor * top[filled[e]];
          }
        }
      }
    }
  }

  private void pivot(String what, int k) {
    int largest = k;
    for (int i = k + 1; i < lu.length; i++) {
      largest = Math.abs(lu[i][k]) > Math.abs(lu[largest][k]) ? i : largest;
    }
    if (!(Math.abs(lu[largest][k]) >= Double.MIN_NORMAL)) {
      throw new UnsolvedException(what + ": the equations have no single solution");
    }
    double[] row = lu[largest];
    lu[largest] = lu[k];
    lu[k] = row;
    int from = rows[largest];
    rows[largest] = rows[k];
    rows[k] = from;
  }

  private double[] solved(double[] b) {
    int n = rows.length;
    double[] x = new double[n];
    for (int i = 0; i < n; i++) {
      x[i] = less(b[rows[i]], lu[i], x, 0, i);
    }
    for (int i = n - 1; i >= 0; i--) {
      x[i] = less(x[i], lu[i], x, i + 1, n) / lu[i][i];
    }
    return x;
  }

  /** A number less the sum of the entries of a row times the unknowns. */
  private static double less(double number, double[] row, double[] x, int from, int to) {
    double left = number;
    for (int j = from; j < to; j++) {
      if (row[j] != 0) {
        left -= row[j] * x[j];
      }
    }
    return left;
  }

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
    LinearSystem system = new LinearSystem(what, a);
    double[] x = system.solved(b);
    double[] left = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      left[i] = less(b[i], a[i], x, 0, x.length);
    }
    double[] correction = system.solved(left);
    for (int i = 0; i < x.length; i++) {
      x[i] += correction[i];
      if (!Double.isFinite(x[i])) {
        throw new UnsolvedException(what + ": the solution is not finite");
      }
    }
    return x;
  }
}
