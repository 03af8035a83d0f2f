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
   * Solves a loop.
   *
   * @param shares S by receiver and giver; what a unit gives to itself is not read; changed
   * @param leaves c; changed
   * @param comes b; changed
   * @return x
   * @throws UnsolvedException if no unit that something reaches lets it leave
   */
  static double[] of(double[][] shares, double[] leaves, double[] comes) {
    int n = comes.length;
    double[] gives = new double[n];
    // A unit passes on to few others: the rest of its column is nothing and is passed over.
    int[] takers = new int[n];
    for (int k = 0; k < n; k++) {
      int taking = 0;
      gives[k] = leaves[k];
      for (int i = k + 1; i < n; i++) {
        if (shares[i][k] > 0) {
          gives[k] += shares[i][k];
          takers[taking++] = i;
        }
      }
      if (!(gives[k] >= Double.MIN_NORMAL)) {
        throw new UnsolvedException(": it piles up in a loop");
      }
      double[] from = shares[k];
      for (int j = k + 1; j < n; j++) {
        if (from[j] > 0) {
          double part = from[j] / gives[k];
          leaves[j] += part * leaves[k];
          for (int t = 0; t < taking; t++) {
            shares[takers[t]][j] += part * shares[takers[t]][k];
          }
        }
      }
      for (int t = 0; t < taking; t++) {
        comes[takers[t]] += comes[k] * shares[takers[t]][k] / gives[k];
      }
    }
    double[] through = new double[n];
    for (int k = n - 1; k >= 0; k--) {
      double sum = comes[k];
      for (int j = k + 1; j < n; j++) {
        sum += shares[k][j] * through[j];
      }
      through[k] = sum / gives[k];
    }
    return through;
  }
}
