package sandslurry.separation.capture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sandslurry.numeric.Roots;

class CampDobbins1946Test {
  /**
   * Dobbins's own series, summed term by term; its terms grow like e^(K (1 − T/2)), so it is good
   * only where that is moderate.
   */
  private static double byDobbinsSeries(double t, double k) {
    double afloat = 0;
    for (int n = 0; n < 2000; n++) {
      double root =
          Roots.between(
              "root of Dobbins",
              a -> 2 * k * a * Math.cos(a) - (a * a - k * k) * Math.sin(a),
              n * Math.PI + 1e-9,
              (n + 1) * Math.PI - 1e-9);
      double square = root * root;
      double sum = k * k + square;
      double sign = n % 2 == 0 ? 1 : -1;
      afloat +=
          sign * 8 * k * k * square * Math.exp(k - sum * t / (2 * k)) / (sum * sum * (sum + 2 * k));
    }
    return 1 - afloat;
  }

  @ParameterizedTest
  @CsvSource({
    "0.1, 0.1", "0.5, 1", "1, 0.05", "1, 0.5", "1, 1", "1, 2", "1, 5", "1, 10", "0.9, 12",
    "1.0001, 8", "1.2, 14", "2, 1", "2, 3.999", "2, 4.001", "3, 0.1", "3, 5", "5, 3", "20, 0.01"
  })
  void theClosedSolutionIsTheSeriesOfDobbins(double t, double k) {
    assertThat(CampDobbins1946.fraction(t, k)).isEqualTo(byDobbinsSeries(t, k), within(1e-10));
  }

  /**
   * An independent solution: finite volumes over the depth with central fluxes, Crank-Nicolson in x
   * after a few implicit steps that smooth the start.
   */
  private static double byFiniteVolumes(double t, double k, int cells, int steps) {
    double dy = 1.0 / cells;
    double spread = 1 / (2 * k);
    // Flux up through the face above cell i is -(c_i + c_i+1)/2 - D (c_i+1 - c_i)/dy.
    double[] c = new double[cells];
    java.util.Arrays.fill(c, 1);
    double dx = t / steps;
    for (int step = 0; step < steps; step++) {
      double implicit = step < 8 ? 1 : 0.5;
      double[] low = new double[cells];
      double[] mid = new double[cells];
      double[] high = new double[cells];
      double[] right = new double[cells];
      for (int i = 0; i < cells; i++) {
        double below = i > 0 ? 0.5 - spread / dy : 0;
        double fromAbove = i < cells - 1 ? 0.5 + spread / dy : 0;
        double toBelow = i > 0 ? -(0.5 + spread / dy) : 0;
        double toAbove = i < cells - 1 ? -(spread / dy - 0.5) : 0;
        double self = toBelow + toAbove;
        double next = 0;
        if (i == 0) {
          // The floor: no gradient, so that w c settles out, c taken level with the second cell.
          self -= 9.0 / 8;
          next = 1.0 / 8;
        }
        double before = -below;
        double above = fromAbove + next;
        low[i] = -implicit * dx / dy * before;
        mid[i] = 1 - implicit * dx / dy * self;
        high[i] = -implicit * dx / dy * above;
        right[i] =
            c[i]
                + (1 - implicit)
                    * dx
                    / dy
                    * ((i > 0 ? before * c[i - 1] : 0)
                        + self * c[i]
                        + (i < cells - 1 ? above * c[i + 1] : 0));
      }
      for (int i = 1; i < cells; i++) {
        double factor = low[i] / mid[i - 1];
        mid[i] -= factor * high[i - 1];
        right[i] -= factor * right[i - 1];
      }
      c[cells - 1] = right[cells - 1] / mid[cells - 1];
      for (int i = cells - 2; i >= 0; i--) {
        c[i] = (right[i] - high[i] * c[i + 1]) / mid[i];
      }
    }
    double afloat = 0;
    for (double value : c) {
      afloat += value * dy;
    }
    return 1 - afloat;
  }

  @ParameterizedTest
  @CsvSource({"0.5, 0.5", "1, 1", "1, 10", "1.5, 4", "0.8, 60", "1, 60", "1.1, 60"})
  void theClosedSolutionIsThatOfTheDifferentialEquation(double t, double k) {
    assertThat(CampDobbins1946.fraction(t, k))
        .isEqualTo(byFiniteVolumes(t, k, 800, 4000), within(2e-5));
  }

  @Test
  void strongMixingIsVetter() {
    for (double t : new double[] {1e-6, 0.1, 0.9, 1, 2.5, 10}) {
      assertThat(CampDobbins1946.fraction(t, 1e-9)).isEqualTo(-Math.expm1(-t), within(1e-8));
      assertThat(CampDobbins1946.fraction(t, 1e-300)).isEqualTo(-Math.expm1(-t), within(1e-15));
    }
  }

  @Test
  void noMixingIsTheIdealBasin() {
    for (double t : new double[] {1e-6, 0.1, 0.9, 1, 2.5, 10}) {
      assertThat(CampDobbins1946.fraction(t, 1e15)).isEqualTo(Math.min(1, t), within(1e-7));
    }
    assertThat(new CampDobbins1946().fraction(new BasinFlow(0.01, 0), 0.007).value())
        .isEqualTo(0.7, within(1e-15));
  }

  @Test
  void theWeightNumberComesFromTheShearVelocityByCampsDiffusivity() {
    // T = 0.01/0.01 = 1 and K = 0.01/(0.15 * 0.0666667) = 1.
    assertThat(new CampDobbins1946().fraction(new BasinFlow(0.01, 1 / 15.0), 0.01).value())
        .isEqualTo(CampDobbins1946.fraction(1, 1), within(1e-14));
  }

  @Test
  void whatCannotBeIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> CampDobbins1946.fraction(-1, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> CampDobbins1946.fraction(1, Double.NaN));
  }
}
