package sandslurry.pipe.fittings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import sandslurry.pipe.Bore;
import sandslurry.units.Measure;

class FittingLossTest {
  private static final Bore ONE_INCH = new Bore(Measure.LENGTH.entry("in").toSi(1), 0);
  private static final Bore SIX_INCH = new Bore(Measure.LENGTH.entry("in").toSi(6), 0);

  @Test
  void givesTheSumOfTheConstantsInAnInchPipe() {
    assertThat(FittingLoss.coefficient(FittingKind.STANDARD_ELBOW_90, 800, ONE_INCH))
        .isCloseTo(800.0 / 800 + 0.14 * (1 + 4.0), within(1e-12));
  }

  @ParameterizedTest
  @EnumSource
  void losesNoMoreAtHigherReynoldsNumberOrInALargerPipe(FittingKind kind) {
    double slow = FittingLoss.coefficient(kind, 500, SIX_INCH);
    double fast = FittingLoss.coefficient(kind, 5e5, SIX_INCH);
    double small = FittingLoss.coefficient(kind, 5e5, ONE_INCH);
    assertThat(fast).isPositive().isLessThanOrEqualTo(slow).isLessThanOrEqualTo(small);
  }

  @ParameterizedTest
  @EnumSource
  void hasWordsOfItsOwnAndNamesItsSource(FittingKind kind) {
    assertThat(Arrays.stream(FittingKind.values()).filter(k -> k.id().equals(kind.id())))
        .containsExactly(kind);
    assertThat(kind.citation().where()).isNotBlank();
  }

  @Test
  void ordersTheFittingsAsAPlumberWould() {
    assertThat(
            Arrays.stream(
                    new FittingKind[] {
                      FittingKind.BALL_VALVE,
                      FittingKind.GATE_VALVE,
                      FittingKind.LONG_RADIUS_ELBOW_90,
                      FittingKind.SHORT_RADIUS_ELBOW_90,
                      FittingKind.STANDARD_ELBOW_90,
                      FittingKind.MITRED_ELBOW_90_ONE_WELD,
                      FittingKind.SWING_CHECK_VALVE
                    })
                .map(kind -> FittingLoss.coefficient(kind, 2e5, SIX_INCH)))
        .isSorted();
  }

  @Test
  void losesOneVelocityHeadAtTheExit() {
    assertThat(FittingLoss.coefficient(FittingKind.PIPE_EXIT, 1e5, SIX_INCH)).isEqualTo(1);
  }

  @Test
  void refusesWhatIsNotAFlow() {
    assertThatThrownBy(() -> FittingLoss.coefficient(FittingKind.BALL_VALVE, Double.NaN, ONE_INCH))
        .hasMessageContaining("NaN");
  }
}
