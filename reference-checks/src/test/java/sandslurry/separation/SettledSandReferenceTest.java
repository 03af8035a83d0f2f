package sandslurry.separation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static sandslurry.outside.Ours.ours;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sandslurry.separation.box.SandStack;
import sandslurry.separation.capture.Krone1962;

class SettledSandReferenceTest {
  /**
   * Krone's deposition D = w C (1 − τ/τc) below τc and nothing above, as documented by a public
   * model of sediment in estuaries (read; four other public codes have the same). The stress goes
   * with the square of the velocity, so the ratio of stresses is the square of ours.
   */
  @ParameterizedTest
  @CsvSource({"0, 1", "0.25, 0.75", "0.5, 0.5", "0.81, 0.19", "1, 0", "2, 0"})
  void whatSettlesIsThatOfKrone(double stressRatio, double share) {
    ours(Krone1962.factor(Math.sqrt(stressRatio))).isCloseTo(share, within(1e-12));
  }

  /**
   * Hazen's rule for sand in two public course notebooks (read): K = 1.0 d10² cm/s with d10 in mm,
   * and K = 0.0116 (0.7 + 0.03 t) d10² m/s at t degrees Celsius, here 10. Printed coefficients 1.0
   * and 0.0116 differ by 16 %, and ours must be the lower: sand that drains slower is the cautious
   * side.
   */
  @ParameterizedTest
  @CsvSource({"0.15, 2.25e-4, 2.61e-4", "0.2, 4e-4, 4.64e-4", "0.5, 2.5e-3, 2.9e-3"})
  void permeabilityIsHazensByTheLowerOfTwoPrints(double millimetres, double one, double other) {
    double permeability = SandStack.permeabilityMps(millimetres * 1e-3).value();
    ours(permeability).isCloseTo(one, withinPercentage(1e-6));
    assertThat(permeability).isLessThan(other).isCloseTo(other, withinPercentage(15));
  }
}
