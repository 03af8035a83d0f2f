package sandslurry.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class LinearSystemTest {
  @Test
  void theHilbertMatrixOfOrderSixGivesBackItsOnes() {
    double[][] hilbert = new double[6][6];
    double[] sums = new double[6];
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        hilbert[i][j] = 1.0 / (i + j + 1);
        sums[i] += hilbert[i][j];
      }
    }
    for (double x : LinearSystem.solve("ones", hilbert, sums)) {
      assertThat(x).isEqualTo(1, within(1e-8));
    }
  }

  @Test
  void singularEquationsAreRefusedByName() {
    assertThatThrownBy(
            () ->
                LinearSystem.solve("loop", new double[][] {{1, -1}, {-1, 1}}, new double[] {1, 0}))
        .isInstanceOf(UnsolvedException.class)
        .hasMessageContaining("loop");
  }
}
