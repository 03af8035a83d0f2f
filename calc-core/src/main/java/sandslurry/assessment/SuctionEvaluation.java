package sandslurry.assessment;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.ServiceResult.SuctionPoint;
import sandslurry.design.Design;
import sandslurry.design.PumpSpec.CurveSpec;
import sandslurry.design.PumpSpec.PistonSpec;
import sandslurry.pump.RequiredSuctionHead;
import sandslurry.pump.SuctionHead;
import sandslurry.transport.ClearLiquid.Regime;
import sandslurry.units.Measure;

/** The suction side of one pump. */
final class SuctionEvaluation {
  private SuctionEvaluation() {}

  /** NPSH that a pump requires at a flow; nothing where no points of its maker reach. */
  interface Required {
    OptionalDouble atM(double flowM3ps);

    static Required of(CurveSpec curve) {
      List<RequiredSuctionHead.Point> points =
          curve.points().stream()
              .filter(point -> point.npsh().isPresent())
              .map(
                  point ->
                      new RequiredSuctionHead.Point(
                          Measure.FLOW.si(point.flow()),
                          Measure.LENGTH.si(point.npsh().orElseThrow())))
              .toList();
      if (points.size() < 2) {
        return flow -> OptionalDouble.empty();
      }
      double ratio = curve.speedRatio();
      RequiredSuctionHead head = RequiredSuctionHead.through(points).atSpeed(ratio);
      double least = points.get(0).flowM3ps() * ratio;
      double most = points.get(points.size() - 1).flowM3ps() * ratio;
      return flow ->
          flow > most
              ? OptionalDouble.empty()
              // Below its first point the curve is flat or falls: the first point is on the safe
              // side.
              : OptionalDouble.of(head.requiredM(Math.max(flow, least)));
    }

    static Required of(PistonSpec pump) {
      return flow ->
          pump.npsh().isPresent()
              ? OptionalDouble.of(Measure.LENGTH.si(pump.npsh().get()))
              : OptionalDouble.empty();
    }
  }

  static Optional<SuctionPoint> at(
      Design design,
      Materials materials,
      LineModel model,
      double flowM3ps,
      double sandFraction,
      Required required) {
    if (design.service().suction().isEmpty()) {
      return Optional.empty();
    }
    RunPoint run = model.suction(flowM3ps, sandFraction).orElseThrow();
    double flood = Measure.LENGTH.si(design.route().orElseThrow().sourceLevel());
    double acceleration = acceleration(design, run);
    double available =
        SuctionHead.atSiteM(
                Measure.LENGTH.si(design.service().suction().get().altitude()),
                materials.carrier().temperatureK(),
                materials.mixtureDensityKgM3(sandFraction),
                flood,
                Math.max(run.lossM(), 0) + acceleration)
            .value();
    return Optional.of(
        new SuctionPoint(
            flood,
            run.lossM(),
            acceleration,
            available,
            required.atM(flowM3ps),
            run.leastVelocityMps(),
            run.deposition()
                .filter(d -> run.regime() == Regime.TURBULENT)
                .map(d -> OptionalDouble.of(d.velocityToPassMps()))
                .orElseGet(OptionalDouble::empty),
            run.severity()));
  }

  /** The air vessel stands on the discharge side: the suction sees the whole pulse. */
  private static double acceleration(Design design, RunPoint run) {
    return design.pump().orElseThrow() instanceof PistonSpec piston
            && piston.pulsation().isPresent()
        ? piston
            .pulsation()
            .get()
            .drive(piston.strokeRate())
            .accelerationHeadM(
                Measure.LENGTH.si(run.run().length()),
                run.velocityMps(),
                Measure.FREQUENCY.si(piston.strokeRate()))
        : 0;
  }
}
