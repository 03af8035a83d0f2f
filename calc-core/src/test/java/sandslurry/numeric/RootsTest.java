package sandslurry.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Roots of functions that are known in closed form. */
class RootsTest {
  /** ln(e^2x + e^x), rising from a slope of 1 to 2 as a drag law does: at ln 2 it is ln 6. */
  private static final DoubleUnaryOperator BENT =
      x -> Math.log(Math.exp(2 * x) + Math.exp(x)) - Math.log(6);

  @Test
  void secantsFindTheRootFromEitherSide() {
    for (double start : new double[] {-3, 0, 0.6, Math.log(2), 1, 3}) {
      assertThat(Roots.near(BENT, start, 1.5).orElseThrow())
          .as("from " + start)
          .isCloseTo(Math.log(2), within(1e-13));
    }
  }

  @Test
  void secantsNeedFewEvaluations() {
    int[] asked = {0};
    Roots.near(
        x -> {
          asked[0]++;
          return BENT.applyAsDouble(x);
        },
        0.5,
        1.5);
    assertThat(asked[0]).isLessThanOrEqualTo(5);
  }

  @Test
  void whereSecantsStrayThereIsNoAnswer() {
    // A jump over 0 has no root; a function that turns back is not nearly a straight line.
    assertThat(Roots.near(x -> x < 1 ? -1 : 1, 0, 1)).isEmpty();
    assertThat(Roots.near(x -> x * x - 1, -0.5, 1)).isEmpty();
    assertThat(Roots.near(x -> Double.NaN, 0, 1)).isEmpty();
  }
}
