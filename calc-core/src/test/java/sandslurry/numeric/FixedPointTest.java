package sandslurry.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

class FixedPointTest {
  private static FixedPoint.Result search(UnaryOperator<double[]> map, int most, double... start) {
    return FixedPoint.search(map, start, FixedPointTest::distance, 1e-13, most);
  }

  private static double distance(double[] a, double[] b) {
    double worst = 0;
    for (int i = 0; i < a.length; i++) {
      worst = Math.max(worst, Math.abs(a[i] - b[i]));
    }
    return worst;
  }

  @Test
  void theCosineMeetsItsArgumentAtTheDottieNumber() {
    // Dottie number, 0.739085133215160641..., OEIS A003957.
    FixedPoint.Result result = search(x -> new double[] {Math.cos(x[0])}, 50, 1);
    assertThat(result.converged()).isTrue();
    assertThat(result.state()[0]).isEqualTo(0.7390851332151607, within(1e-12));
    assertThat(result.passes()).isLessThan(12);
  }

  @Test
  void aMapThatSubstitutionAloneDoesNotBringToRestIsSolved() {
    // x = 3 - 1.5 x swings out under substitution; the fixed point is 1.2.
    FixedPoint.Result result = search(x -> new double[] {Math.max(0, 3 - 1.5 * x[0])}, 50, 1);
    assertThat(result.converged()).isTrue();
    assertThat(result.state()[0]).isEqualTo(1.2, within(1e-12));
  }

  @Test
  void aMapWithoutFixedPointEndsUnconverged() {
    FixedPoint.Result result = search(x -> new double[] {x[0] + 1}, 20, 0);
    assertThat(result.converged()).isFalse();
    assertThat(result.passes()).isEqualTo(20);
  }
}
