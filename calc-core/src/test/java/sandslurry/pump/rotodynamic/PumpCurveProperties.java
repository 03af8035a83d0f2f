package sandslurry.pump.rotodynamic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

class PumpCurveProperties {
  /** A falling head curve with irregular steps, and an efficiency that rises and falls. */
  static PumpCurve curve(long seed, int size) {
    return PumpCurve.through(points(seed, size));
  }

  private static List<PumpCurve.Point> points(long seed, int size) {
    Random random = new Random(seed);
    List<PumpCurve.Point> points = new ArrayList<>();
    double flow = random.nextDouble() * 0.005;
    double head = 20 + 30 * random.nextDouble();
    for (int i = 0; i < size; i++) {
      points.add(new PumpCurve.Point(flow, head, 0.9 * random.nextDouble()));
      flow += 0.001 + 0.01 * random.nextDouble();
      head *= 1 - 0.3 * random.nextDouble();
    }
    return points;
  }

  @Property
  void theAffinityLawsHoldExactlyBetweenThePointsToo(
      @ForAll long seed,
      @ForAll @IntRange(min = 2, max = 9) int size,
      @ForAll @DoubleRange(min = 0.3, max = 2) @Scale(8) double ratio,
      @ForAll @DoubleRange(min = 0, max = 1) @Scale(8) double place) {
    PumpCurve curve = curve(seed, size);
    PumpCurve changed = curve.atSpeed(ratio);
    double least = curve.leastFlowM3ps();
    double flow = least + place * (curve.greatestFlowM3ps() - least);
    double there = Math.min(flow * ratio, changed.greatestFlowM3ps());
    assertThat(changed.headM(there))
        .isCloseTo(ratio * ratio * curve.headM(flow), within(1e-11 * curve.headM(flow)));
    assertThat(changed.efficiency(there)).isCloseTo(curve.efficiency(flow), within(1e-11));
  }

  @Property
  void twoChangesOfSpeedAreOneAndBackIsBack(
      @ForAll long seed,
      @ForAll @DoubleRange(min = 0.5, max = 1.5) @Scale(8) double ratio,
      @ForAll @DoubleRange(min = 0.01, max = 0.99) @Scale(8) double place) {
    PumpCurve curve = curve(seed, 5);
    PumpCurve back = curve.atSpeed(ratio).atSpeed(1 / ratio);
    double least = curve.leastFlowM3ps();
    double flow = least + place * (curve.greatestFlowM3ps() - least);
    assertThat(back.headM(flow)).isCloseTo(curve.headM(flow), within(1e-9));
  }

  @Property
  void theCurvePassesThroughItsPointsAndNeverOvershootsThem(
      @ForAll long seed, @ForAll @IntRange(min = 2, max = 9) int size) {
    List<PumpCurve.Point> points = points(seed, size);
    PumpCurve curve = PumpCurve.through(points);
    for (int i = 1; i < size; i++) {
      PumpCurve.Point a = points.get(i - 1);
      PumpCurve.Point b = points.get(i);
      assertThat(curve.headM(a.flowM3ps())).isCloseTo(a.headM(), within(1e-12));
      for (double share = 0; share <= 1; share += 0.05) {
        double flow = Math.min(a.flowM3ps() + share * (b.flowM3ps() - a.flowM3ps()), b.flowM3ps());
        assertThat(curve.headM(flow)).isBetween(b.headM() - 1e-12, a.headM() + 1e-12);
        assertThat(curve.efficiency(flow))
            .isBetween(
                Math.min(a.efficiency(), b.efficiency()) - 1e-12,
                Math.max(a.efficiency(), b.efficiency()) + 1e-12);
      }
    }
  }

  @Property
  void deratingScalesHeadAndEfficiencyAtTheSameFlow(
      @ForAll long seed,
      @ForAll @DoubleRange(min = 0.5, max = 1) @Scale(8) double headRatio,
      @ForAll @DoubleRange(min = 0.5, max = 1) @Scale(8) double efficiencyRatio,
      @ForAll @DoubleRange(min = 0, max = 1) @Scale(8) double place) {
    PumpCurve curve = curve(seed, 6);
    PumpCurve derated = curve.derated(headRatio, efficiencyRatio);
    double least = curve.leastFlowM3ps();
    double flow =
        Math.min(least + place * (curve.greatestFlowM3ps() - least), curve.greatestFlowM3ps());
    assertThat(derated.headM(flow)).isCloseTo(headRatio * curve.headM(flow), within(1e-12));
    assertThat(derated.efficiency(flow))
        .isCloseTo(efficiencyRatio * curve.efficiency(flow), within(1e-12));
  }
}
