package sandslurry.pump.rotodynamic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import sandslurry.pump.rotodynamic.PumpCurve.Point;

class PumpCurveTest {
  private final PumpCurve curve =
      PumpCurve.through(
          List.of(new Point(0.03, 12, 0.6), new Point(0, 20, 0), new Point(0.02, 17, 0.65)));

  @Test
  void pointsMayComeInAnyOrder() {
    assertThat(curve.leastFlowM3ps()).isZero();
    assertThat(curve.greatestFlowM3ps()).isEqualTo(0.03);
    assertThat(curve.headM(0.02)).isEqualTo(17);
    assertThat(curve.efficiency(0)).isZero();
  }

  @Test
  void theCurveIsNotExtrapolated() {
    assertThatThrownBy(() -> curve.headM(0.031))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("0.031")
        .hasMessageContaining("0.03 m3/s")
        .hasMessageContaining("not extrapolated");
    assertThatThrownBy(() -> curve.efficiency(Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void theEndsOfAScaledCurveBelongToIt() {
    for (double ratio = 0.5; ratio < 1.6; ratio += 0.001) {
      PumpCurve scaled = curve.atSpeed(ratio);
      assertThat(scaled.headM(scaled.greatestFlowM3ps()))
          .isCloseTo(12 * ratio * ratio, within(1e-12));
      assertThat(scaled.headM(scaled.leastFlowM3ps())).isCloseTo(20 * ratio * ratio, within(1e-12));
    }
  }

  @Test
  void nonsenseIsRefused() {
    assertThatThrownBy(() -> PumpCurve.through(List.of(new Point(0, 20, 0))))
        .hasMessageContaining("two points");
    assertThatThrownBy(
            () -> PumpCurve.through(List.of(new Point(0.01, 20, 0), new Point(0.01, 18, 0))))
        .hasMessageContaining("same flow")
        .hasMessageContaining("0.01");
    assertThatThrownBy(() -> new Point(-1, 1, 0.5)).hasMessageContaining("-1.0 m3/s");
    assertThatThrownBy(() -> new Point(1, Double.NaN, 0.5)).hasMessageContaining("NaN m");
    assertThatThrownBy(() -> new Point(1, 1, 65)).hasMessageContaining("65");
    assertThatThrownBy(() -> curve.atSpeed(0)).hasMessageContaining("0.0");
    assertThatThrownBy(() -> curve.derated(1.01, 1)).hasMessageContaining("1.01");
    assertThatThrownBy(() -> curve.derated(1, -0.2)).hasMessageContaining("-0.2");
  }
}
