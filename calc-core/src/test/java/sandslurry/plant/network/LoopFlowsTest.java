package sandslurry.plant.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import sandslurry.numeric.LinearSystem;
import sandslurry.numeric.UnsolvedException;

class LoopFlowsTest {
  /** All that comes in leaves, even where it goes round a thousand million times before. */
  @Property(tries = 200)
  void whatComesLeaves(@ForAll long seed, @ForAll @DoubleRange(min = 0, max = 12) double trapped) {
    Random random = new Random(seed);
    int n = 2 + random.nextInt(6);
    double[][] shares = new double[n][n];
    double[] leaves = new double[n];
    double[] comes = new double[n];
    double in = 0;
    for (int k = 0; k < n; k++) {
      leaves[k] = Math.pow(10, -trapped) * (1 + random.nextDouble()) / 2;
      double left = 1 - leaves[k];
      for (int i = 0; i < n; i++) {
        shares[i][k] = i == n - 1 ? left : left * random.nextDouble();
        left -= shares[i][k];
      }
      comes[k] = random.nextDouble();
      in += comes[k];
    }
    double[][] equations = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int k = 0; k < n; k++) {
        equations[i][k] = (i == k ? 1 : 0) - shares[i][k];
      }
    }
    double[] eliminated = LinearSystem.solve("loop", equations, comes);
    double[] exits = leaves.clone();
    double[] through = through(shares, leaves, comes);
    double out = 0;
    for (int k = 0; k < n; k++) {
      out += exits[k] * through[k];
      // An elimination that subtracts loses a digit with each that a share to leave falls short of
      // 1.
      assertThat(through[k])
          .isCloseTo(eliminated[k], within(1e-13 * Math.pow(10, 2 * trapped) * in));
    }
    assertThat(out).isCloseTo(in, within(1e-13 * in));
  }

  /** The flow of one constituent. */
  private static double[] through(double[][] shares, double[] leaves, double[] comes) {
    int n = comes.length;
    double[][][] given = new double[n][n][];
    double[][] out = new double[n][];
    double[][] in = new double[n][];
    for (int i = 0; i < n; i++) {
      for (int k = 0; k < n; k++) {
        given[i][k] = shares[i][k] > 0 ? new double[] {shares[i][k]} : null;
      }
      out[i] = new double[] {leaves[i]};
      in[i] = new double[] {comes[i]};
    }
    return Arrays.stream(LoopFlows.of(given, out, in)).mapToDouble(one -> one[0]).toArray();
  }

  @Example
  void whatCannotLeaveIsRefused() {
    assertThatThrownBy(
            () ->
                through(new double[][] {{0, 1}, {1, 0}}, new double[] {0, 0}, new double[] {1, 0}))
        .isInstanceOf(UnsolvedException.class);
  }
}
