package sandslurry.pump.rotodynamic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import sandslurry.pump.rotodynamic.DutyPoints.DutyPoint;
import sandslurry.pump.rotodynamic.DutyPoints.Meeting;

class DutyPointsProperties {
  private static final int BRUTE_FORCE = 20011;

  /** A system curve as of a settling slurry: static head, a falling and a rising branch. */
  private static DoubleUnaryOperator system(double staticHead, double falling, double rising) {
    return flow -> staticHead + falling / (1 + flow / 0.004) + rising * flow * flow;
  }

  @Property
  void everyDutyPointLiesOnBothCurvesAndABruteForceScanFindsNoOther(
      @ForAll long seed,
      @ForAll @DoubleRange(min = 0, max = 30) @Scale(8) double staticHead,
      @ForAll @DoubleRange(min = 0, max = 40) @Scale(8) double falling,
      @ForAll @DoubleRange(min = 100, max = 40000) @Scale(8) double rising) {
    PumpCurve pump = PumpCurveProperties.curve(seed, 6);
    DoubleUnaryOperator system = system(staticHead, falling, rising);
    double least = pump.leastFlowM3ps();
    double greatest = pump.greatestFlowM3ps();
    DutyPoints duty = DutyPoints.find(pump::headM, system, least, greatest);

    for (DutyPoint point : duty.points()) {
      assertThat(system.applyAsDouble(point.flowM3ps())).isCloseTo(point.headM(), within(1e-9));
      assertThat(pump.headM(point.flowM3ps())).isEqualTo(point.headM());
    }
    assertThat(duty.absence().isPresent()).isEqualTo(duty.points().isEmpty());

    double before = pump.headM(least) - system.applyAsDouble(least);
    for (int i = 1; i <= BRUTE_FORCE; i++) {
      double flow = i == BRUTE_FORCE ? greatest : least + (greatest - least) * i / BRUTE_FORCE;
      double gap = pump.headM(flow) - system.applyAsDouble(flow);
      if (gap * before < 0) {
        Meeting meeting = before > 0 ? Meeting.STABLE : Meeting.UNSTABLE;
        double width = (greatest - least) / BRUTE_FORCE;
        List<DutyPoint> here =
            duty.points().stream()
                .filter(p -> p.flowM3ps() <= flow && p.flowM3ps() >= flow - width * 1.000001)
                .toList();
        assertThat(here).hasSize(1);
        assertThat(here.get(0).meeting()).isEqualTo(meeting);
      }
      before = gap;
    }
  }

  @Property
  void stableAndUnstablePointsAlternate(
      @ForAll @DoubleRange(min = 1, max = 12) @Scale(8) double waves,
      @ForAll @DoubleRange(min = 0.5, max = 5) @Scale(8) double height,
      @ForAll @DoubleRange(min = -0.4, max = 0.4) @Scale(8) double shift) {
    DoubleUnaryOperator pump = flow -> 20 + height * Math.sin(waves * flow * 100);
    DutyPoints duty = DutyPoints.find(pump, flow -> 20 + shift, 0, 0.05);
    Meeting before = null;
    for (DutyPoint point : duty.points()) {
      assertThat(point.meeting()).isNotEqualTo(before);
      before = point.meeting();
    }
  }

  @Property
  void twoCrossingsInsideOneIntervalAreBothFound(
      @ForAll @DoubleRange(min = 0.002, max = 0.098) @Scale(8) double middle,
      @ForAll @DoubleRange(min = 1e-6, max = 1e-4) @Scale(8) double halfWidth) {
    // One interval of the scan is 2.5e-4 wide.
    double steepness = 1e8;
    DoubleUnaryOperator system =
        flow -> 10 + steepness * ((flow - middle) * (flow - middle) - halfWidth * halfWidth);
    DutyPoints duty = DutyPoints.find(flow -> 10, system, 0, 0.1);
    assertThat(duty.points())
        .extracting(DutyPoint::meeting)
        .containsExactly(Meeting.UNSTABLE, Meeting.STABLE);
    assertThat(duty.points().get(0).flowM3ps()).isCloseTo(middle - halfWidth, within(1e-9));
    assertThat(duty.points().get(1).flowM3ps()).isCloseTo(middle + halfWidth, within(1e-9));
  }

  @Property
  void aTouchIsFoundOnceAndCalledSo(
      @ForAll @DoubleRange(min = 0.001, max = 0.099) @Scale(8) double middle) {
    DoubleUnaryOperator system = flow -> 10 + 2000 * (flow - middle) * (flow - middle);
    DutyPoints duty = DutyPoints.find(flow -> 10, system, 0, 0.1);
    assertThat(duty.points()).hasSize(1);
    assertThat(duty.points().get(0).meeting()).isEqualTo(Meeting.TOUCHING);
    assertThat(duty.points().get(0).flowM3ps()).isCloseTo(middle, within(1e-6));
    assertThat(duty.stable()).isEmpty();
  }
}
