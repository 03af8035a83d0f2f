package sandslurry.plant.network;

import sandslurry.numeric.UnsolvedException;

/**
 * What passes through the units of a loop.
 *
 * <pre>(c_k + sum of S_ik) x_k = b_k + sum of S_kj x_j</pre>
 *
 * <p>where S_ik is the share of unit k that goes to unit i, c_k the share that leaves the loop and
 * b_k what comes from outside. Each unit in turn is taken out: what it would have passed on joins
 * the shares of those that remain. Nothing is subtracted (the state reduction of Grassmann, Taksar
 * and Heyman 1985, from memory, unverified), so that every flow is exact to rounding and none
 * negative, however often a constituent goes round before it leaves.
 */
final class LoopFlows {
  private LoopFlows() {}

  /**
   * Solves a loop, for all constituents at once.
   *
   * @param shares S by receiver, giver and constituent; null where a unit gives nothing to another;
   *     what it gives to itself is not read; changed
   * @param leaves c by unit and constituent; changed
   * @param comes b by unit and constituent; changed to x
   * @return x by unit and constituent
   * @throws UnsolvedException if no unit that something reaches lets it leave
   */
  static double[][] of(double[][][] shares, double[][] leaves, double[][] comes) {
    int n = comes.length;
    int count = comes[0].length;
    double[][] gives = new double[n][];
    double[] part = new double[count];
    for (int k = 0; k < n; k++) {
      gives[k] = leaves[k].clone();
      for (int i = k + 1; i < n; i++) {
        for (int c = 0; shares[i][k] != null && c < count; c++) {
          gives[k][c] += shares[i][k][c];
        }
      }
      for (double all : gives[k]) {
        if (!(all >= Double.MIN_NORMAL)) {
          throw new UnsolvedException("a constituent piles up in a loop");
        }
      }
      for (int j = k + 1; j < n; j++) {
        if (shares[k][j] != null) {
          for (int c = 0; c < count; c++) {
            part[c] = shares[k][j][c] / gives[k][c];
          }
          addProduct(leaves[j], part, leaves[k]);
          for (int i = k + 1; i < n; i++) {
            if (shares[i][k] != null) {
              shares[i][j] = shares[i][j] == null ? new double[count] : shares[i][j];
              addProduct(shares[i][j], part, shares[i][k]);
            }
          }
        }
      }
      for (int i = k + 1; i < n; i++) {
        for (int c = 0; shares[i][k] != null && c < count; c++) {
          comes[i][c] += comes[k][c] * shares[i][k][c] / gives[k][c];
        }
      }
    }
    for (int k = n - 1; k >= 0; k--) {
      for (int j = k + 1; j < n; j++) {
        if (shares[k][j] != null) {
          addProduct(comes[k], shares[k][j], comes[j]);
        }
      }
      for (int c = 0; c < count; c++) {
        comes[k][c] /= gives[k][c];
      }
    }
    return comes;
  }

  private static void addProduct(double[] sum, double[] one, double[] other) {
    for (int c = 0; c < sum.length; c++) {
      sum[c] += one[c] * other[c];
    }
  }
}
