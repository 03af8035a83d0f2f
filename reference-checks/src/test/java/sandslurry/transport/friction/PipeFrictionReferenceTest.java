package sandslurry.transport.friction;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Percentage.withPercentage;
import static sandslurry.outside.Ours.ours;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PipeFrictionReferenceTest {
  // Colebrook's equation solved exactly by the general-purpose Python library CalebBell/fluids.
  // Churchill's formula is an approximation of it, quoted as good to about 1 % when turbulent: the
  // tolerance.
  @ParameterizedTest
  @CsvSource({"1e5, 1e-4, 0.0185139", "2e5, 2e-4, 0.0170980", "1e6, 1e-3, 0.0199435"})
  void agreesWithColebrookInTurbulentFlow(double reynolds, double roughness, double expected) {
    ours(PipeFriction.darcyFactor(reynolds, roughness)).isCloseTo(expected, withPercentage(1));
  }

  // Hagen and Poiseuille: 64/Re, exact.
  @ParameterizedTest
  @CsvSource({"1e-9", "0.5", "1", "10", "1000"})
  void isHagenPoiseuilleInLaminarFlow(double reynolds) {
    ours(PipeFriction.darcyFactor(reynolds, 0.001)).isCloseTo(64 / reynolds, withPercentage(0.01));
  }

  @Test
  void refusesWhatIsNotAFlow() {
    assertThatThrownBy(() -> PipeFriction.darcyFactor(Double.NaN, 0)).hasMessageContaining("NaN");
    assertThatThrownBy(() -> PipeFriction.darcyFactor(1e5, -1)).hasMessageContaining("-1");
  }
}
