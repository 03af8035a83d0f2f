package sandslurry.pump.rotodynamic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import sandslurry.pump.rotodynamic.DutyPoints.DutyPoint;

class PumpGroupProperties {
  private static final int BRUTE_FORCE = 1009;

  /** A curve from shut-off whose head goes up and down. */
  private static PumpCurve wavy(long seed) {
    Random random = new Random(seed);
    List<PumpCurve.Point> points = new ArrayList<>();
    double flow = 0;
    for (int i = 0; i < 6; i++) {
      points.add(
          new PumpCurve.Point(
              flow, 30 - 4 * i + 8 * random.nextDouble(), 0.2 + 0.6 * random.nextDouble()));
      flow += 0.002 + 0.01 * random.nextDouble();
    }
    return PumpCurve.through(points);
  }

  private static double at(PumpGroup group, double place) {
    return group.leastFlowM3ps() + place * (group.greatestFlowM3ps() - group.leastFlowM3ps());
  }

  @Property(tries = 200)
  void twoEqualPumpsInParallelDoubleTheFlowAtAHead(
      @ForAll long seed, @ForAll @DoubleRange(min = 0, max = 1) @Scale(8) double place) {
    PumpCurve one = PumpCurveProperties.curve(seed, 5);
    PumpGroup two = PumpGroup.parallel(List.of(one, one));
    double flow = at(PumpGroup.series(List.of(one)), place);
    assertThat(two.headM(Math.min(2 * flow, two.greatestFlowM3ps())))
        .isCloseTo(one.headM(flow), within(1e-9 * one.headM(flow)));
    assertThat(two.greatestFlowM3ps()).isCloseTo(2 * one.greatestFlowM3ps(), within(1e-12));
  }

  @Property(tries = 200)
  void twoEqualPumpsInSeriesDoubleTheHeadAtAFlowWithTheSameEfficiency(
      @ForAll long seed, @ForAll @DoubleRange(min = 0, max = 1) @Scale(8) double place) {
    PumpCurve one = PumpCurveProperties.curve(seed, 5);
    PumpGroup two = PumpGroup.series(List.of(one, one));
    double flow = at(two, place);
    assertThat(two.headM(flow)).isCloseTo(2 * one.headM(flow), within(1e-9));
    Assume.that(flow > 0);
    assertThat(two.efficiency(flow)).isCloseTo(one.efficiency(flow), within(1e-12));
  }

  @Property(tries = 200)
  void unlikePumpsInParallelShareTheHeadAndTheirFlowsAddUp(
      @ForAll long first,
      @ForAll long second,
      @ForAll @DoubleRange(min = 0, max = 1) @Scale(8) double place) {
    PumpGroup group;
    try {
      group = PumpGroup.parallel(List.of(wavy(first), wavy(second)));
    } catch (IllegalArgumentException e) {
      Assume.that(false);
      return;
    }
    double flow = at(group, place);
    double head = group.headM(flow);
    List<PumpGroup.Part> parts = group.parts(flow);
    double sum = parts.stream().mapToDouble(PumpGroup.Part::flowM3ps).sum();
    assertThat(sum).isCloseTo(flow, within(1e-6 * group.greatestFlowM3ps()));
    for (int i = 0; i < parts.size(); i++) {
      PumpCurve pump = group.pumps().get(i);
      double shutOff = pump.headM(pump.leastFlowM3ps());
      if (shutOff < head * (1 - 1e-6)) {
        assertThat(parts.get(i).flowM3ps()).isZero();
      }
    }
    assertThat(group.efficiency(flow)).isBetween(0.0, 0.9);
  }

  @Property(tries = 200)
  void theHeadOfPumpsInParallelNeverRisesWithFlow(@ForAll long first, @ForAll long second) {
    PumpGroup group;
    try {
      group = PumpGroup.parallel(List.of(wavy(first), wavy(second)));
    } catch (IllegalArgumentException e) {
      Assume.that(false);
      return;
    }
    double before = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= 50; i++) {
      double head = group.headM(at(group, i / 50.0));
      assertThat(head).isFinite().isLessThanOrEqualTo(before * (1 + 1e-12));
      before = head;
    }
  }

  @Property(tries = 200)
  void theGroupScalesByTheAffinityLaws(
      @ForAll long first,
      @ForAll long second,
      @ForAll @DoubleRange(min = 0.4, max = 1.6) @Scale(8) double ratio,
      @ForAll @DoubleRange(min = 0.001, max = 0.999) @Scale(8) double place) {
    PumpCurve strong = PumpCurveProperties.curve(first, 5);
    PumpCurve weak = PumpCurveProperties.curve(second, 5);
    PumpGroup group = PumpGroup.parallel(List.of(strong, weak));
    PumpGroup faster = PumpGroup.parallel(List.of(strong.atSpeed(ratio), weak.atSpeed(ratio)));
    double flow = at(group, place);
    double head = group.headM(flow);
    assertThat(faster.headM(ratio * flow)).isCloseTo(ratio * ratio * head, within(1e-8 * head));
  }

  @Property(tries = 200)
  void theSpeedThatIsFoundGivesTheHeadAtTheFlow(
      @ForAll long seed,
      @ForAll @DoubleRange(min = 0.5, max = 1.5) @Scale(8) double ratio,
      @ForAll @DoubleRange(min = 0.01, max = 0.99) @Scale(8) double place) {
    PumpCurve one = PumpCurveProperties.curve(seed, 5);
    PumpGroup group = PumpGroup.series(List.of(one));
    double flow = ratio * at(group, place);
    double head = ratio * ratio * one.headM(at(group, place));
    OptionalDouble found = group.speedRatio(flow, head);
    assertThat(found).isPresent();
    // A falling curve reaches a point at one speed only.
    assertThat(found.getAsDouble()).isCloseTo(ratio, within(1e-6));
    PumpCurve there = one.atSpeed(found.getAsDouble());
    double on = Math.min(Math.max(flow, there.leastFlowM3ps()), there.greatestFlowM3ps());
    assertThat(there.headM(on)).isCloseTo(head, within(1e-6 * head));
  }

  @Property(tries = 60)
  void noCrossingOfAGroupAndItsSystemIsLost(
      @ForAll long first,
      @ForAll long second,
      @ForAll @DoubleRange(min = 0, max = 25) @Scale(8) double staticHead,
      @ForAll @DoubleRange(min = 0, max = 20) @Scale(8) double falling,
      @ForAll @DoubleRange(min = 100, max = 10000) @Scale(8) double rising) {
    PumpGroup group =
        PumpGroup.parallel(
            List.of(PumpCurveProperties.curve(first, 5), PumpCurveProperties.curve(second, 5)));
    DoubleUnaryOperator system =
        flow -> staticHead + falling / (1 + flow / 0.004) + rising * flow * flow;
    double least = group.leastFlowM3ps();
    double greatest = group.greatestFlowM3ps();
    DutyPoints duty = DutyPoints.find(group::headM, system, least, greatest);
    double before = group.headM(least) - system.applyAsDouble(least);
    for (int i = 1; i <= BRUTE_FORCE; i++) {
      double from = at(group, (i - 1.0) / BRUTE_FORCE);
      double flow = i == BRUTE_FORCE ? greatest : at(group, (double) i / BRUTE_FORCE);
      double gap = group.headM(flow) - system.applyAsDouble(flow);
      if (gap * before < 0) {
        double slack = 1e-9 * greatest;
        assertThat(duty.points())
            .extracting(DutyPoint::flowM3ps)
            .anyMatch(q -> q >= from - slack && q <= flow + slack);
      }
      before = gap;
    }
  }

  @Property(tries = 200)
  void wearAndTrimmingOnlyTakeHead(
      @ForAll long seed,
      @ForAll @DoubleRange(min = 0, max = 0.6) @Scale(8) double loss,
      @ForAll @DoubleRange(min = 0.75, max = 1) @Scale(8) double trim,
      @ForAll @DoubleRange(min = 0, max = 1) @Scale(8) double place) {
    PumpCurve one = PumpCurveProperties.curve(seed, 5);
    double flow = at(PumpGroup.series(List.of(one)), place);
    assertThat(one.worn(loss).headM(flow))
        .isCloseTo((1 - loss) * one.headM(flow), within(1e-12 * one.headM(flow)));
    // The shaft power at a flow stays: head over efficiency is the same.
    Assume.that(one.efficiency(flow) > 1e-6);
    assertThat(one.worn(loss).headM(flow) / one.worn(loss).efficiency(flow))
        .isCloseTo(
            one.headM(flow) / one.efficiency(flow),
            within(1e-9 * one.headM(flow) / one.efficiency(flow)));
    PumpCurve trimmed = one.trimmed(trim);
    double there = Math.min(trim * flow, trimmed.greatestFlowM3ps());
    assertThat(trimmed.headM(there))
        .isCloseTo(trim * trim * one.headM(flow), within(1e-9 * one.headM(flow)));
  }
}
