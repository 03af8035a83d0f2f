package sandslurry.pump.derating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import sandslurry.pump.rotodynamic.BestPoint;
import sandslurry.pump.rotodynamic.DutyPoints;
import sandslurry.pump.rotodynamic.PumpCurve;
import sandslurry.pump.rotodynamic.PumpGroup;
import sandslurry.pump.rotodynamic.ViscousCorrection;

/** What holds of every pump in every viscous liquid. */
class ViscousPumpProperties {
  private static final HydraulicInstituteViscous MODEL = new HydraulicInstituteViscous();

  private static PumpCurve curve(double flow, double head) {
    return PumpCurve.through(
        List.of(
            new PumpCurve.Point(0, 1.3 * head, 0),
            new PumpCurve.Point(0.5 * flow, 1.25 * head, 0.5),
            new PumpCurve.Point(flow, head, 0.7),
            new PumpCurve.Point(1.5 * flow, 0.5 * head, 0.5)));
  }

  @Property(tries = 300)
  void thickerLiquidNeverGivesMoreHeadOrEfficiencyAtAFlow(
      @ForAll @DoubleRange(min = 1, max = 200) double litresPs,
      @ForAll @DoubleRange(min = 4, max = 80) double head,
      @ForAll @DoubleRange(min = 600, max = 3600) double rpm,
      @ForAll @DoubleRange(min = 0, max = 1) double where,
      @ForAll @DoubleRange(min = 1, max = 4000) double centistokes) {
    PumpCurve water = curve(litresPs * 1e-3, head);
    BestPoint best = BestPoint.of(water, rpm / 60);
    ViscousCorrection thin = MODEL.correction(best, centistokes * 1e-6);
    ViscousCorrection thick = MODEL.correction(best, centistokes * 1.5e-6);
    assertThat(thick.b()).isCloseTo(thin.b() * Math.sqrt(1.5), within(1e-9 * thin.b()));
    assertThat(thick.flowRatio()).isBetween(0.0, thin.flowRatio());
    assertThat(thick.efficiencyRatio()).isBetween(0.0, thin.efficiencyRatio());
    PumpCurve before = water.viscous(thin);
    PumpCurve after = water.viscous(thick);
    assertThat(after.greatestFlowM3ps()).isLessThanOrEqualTo(before.greatestFlowM3ps());
    double at = where * after.greatestFlowM3ps();
    assertThat(after.headM(at)).isBetween(0.0, before.headM(at) * (1 + 1e-3));
    assertThat(after.efficiency(at)).isBetween(0.0, 1.0);
    assertThat(thick.suctionRatio(3)).isGreaterThanOrEqualTo(thin.suctionRatio(3));
  }

  @Property(tries = 200)
  void aLargerAndFasterPumpLosesLess(
      @ForAll @DoubleRange(min = 1, max = 200) double litresPs,
      @ForAll @DoubleRange(min = 4, max = 80) double head,
      @ForAll @DoubleRange(min = 600, max = 3600) double rpm,
      @ForAll @DoubleRange(min = 1, max = 3) double ratio,
      @ForAll @DoubleRange(min = 1, max = 4000) double centistokes) {
    PumpCurve water = curve(litresPs * 1e-3, head);
    double slow = MODEL.correction(BestPoint.of(water, rpm / 60), centistokes * 1e-6).b();
    PumpCurve fast = water.atSpeed(ratio);
    double faster = MODEL.correction(BestPoint.of(fast, ratio * rpm / 60), centistokes * 1e-6).b();
    // B is a Reynolds number to the power -1/2, so the speed enters as its root.
    assertThat(faster).isCloseTo(slow / Math.sqrt(ratio), within(1e-9 * slow));
  }

  @Property(tries = 200)
  void specificSpeedsDoNotChangeWithTheSpeed(
      @ForAll @DoubleRange(min = 1, max = 200) double litresPs,
      @ForAll @DoubleRange(min = 4, max = 80) double head,
      @ForAll @DoubleRange(min = 0.5, max = 8) double required,
      @ForAll @DoubleRange(min = 0.5, max = 2) double ratio) {
    PumpCurve water = curve(litresPs * 1e-3, head);
    BestPoint before = BestPoint.of(water, 25);
    BestPoint after = BestPoint.of(water.atSpeed(ratio), 25 * ratio);
    assertThat(after.specificSpeed())
        .isCloseTo(before.specificSpeed(), within(1e-9 * before.specificSpeed()));
    double suction = before.suctionSpecificSpeed(required);
    assertThat(after.suctionSpecificSpeed(required * ratio * ratio))
        .isCloseTo(suction, within(1e-9 * suction));
  }

  @Property(tries = 40)
  void noCrossingOfUnlikePumpsInAThickLiquidIsLost(
      @ForAll @DoubleRange(min = 5, max = 60) double litresPs,
      @ForAll @DoubleRange(min = 5, max = 40) double head,
      @ForAll @DoubleRange(min = 0.6, max = 1.2) double other,
      @ForAll @DoubleRange(min = 1, max = 4000) double centistokes,
      @ForAll @DoubleRange(min = 0, max = 1) double lift,
      @ForAll @DoubleRange(min = 0, max = 1) double falling) {
    PumpCurve first = curve(litresPs * 1e-3, head);
    PumpCurve second = curve(litresPs * 0.7e-3, head * other);
    PumpGroup group =
        PumpGroup.parallel(
            List.of(
                first.viscous(MODEL.correction(BestPoint.of(first, 24), centistokes * 1e-6)),
                second.viscous(MODEL.correction(BestPoint.of(second, 24), centistokes * 1e-6))));
    double greatest = group.greatestFlowM3ps();
    DoubleUnaryOperator system =
        q ->
            head
                * (lift
                    + falling / (1 + 20 * q / greatest)
                    + 1.2 * (q / greatest) * (q / greatest));
    DutyPoints duty = DutyPoints.find(group::headM, system, 0, greatest);
    double before = group.headM(0) - system.applyAsDouble(0);
    for (int i = 1; i <= 997; i++) {
      double from = greatest * (i - 1) / 997;
      double flow = greatest * i / 997;
      double gap = group.headM(flow) - system.applyAsDouble(flow);
      if (gap * before < 0) {
        assertThat(duty.points())
            .anyMatch(p -> p.flowM3ps() >= from * (1 - 1e-9) && p.flowM3ps() <= flow * (1 + 1e-9));
      }
      before = gap;
    }
    duty.stable()
        .forEach(
            p ->
                assertThat(p.headM())
                    .isCloseTo(system.applyAsDouble(p.flowM3ps()), within(1e-6 * head)));
  }
}
