package sandslurry.assessment.station;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import sandslurry.assessment.line.LineModel;
import sandslurry.assessment.line.RunPoint;
import sandslurry.assessment.station.StateResult.Inlet;
import sandslurry.assessment.station.StateResult.SuctionPoint;
import sandslurry.design.Design;
import sandslurry.design.station.PumpSpec;
import sandslurry.design.station.PumpSpec.CurveSpec;
import sandslurry.design.station.PumpSpec.PistonSpec;
import sandslurry.design.station.PumpSpec.RunningPump;
import sandslurry.material.liquid.Water;
import sandslurry.pump.rotodynamic.BestPoint;
import sandslurry.pump.rotodynamic.ViscousCorrection;
import sandslurry.pump.suction.RequiredSuctionHead;
import sandslurry.pump.suction.StandardAtmosphere;
import sandslurry.pump.suction.SuctionEnergy;
import sandslurry.pump.suction.SuctionHead;
import sandslurry.pump.suction.SuctionMargin;
import sandslurry.units.Measure;

/** The suction side of one pump. */
public final class SuctionEvaluation {
  /** Temperature of the cold water against which a specific gravity is told. */
  private static final double COLD_K = Measure.TEMPERATURE.entry("degC").toSi(15);

  private SuctionEvaluation() {}

  /**
   * What a pump needs at its inlet.
   *
   * @param required NPSH required in water; nothing where no points of its maker reach
   * @param viscousRatio NPSH required in the liquid over that in water
   * @param best best point of the whole impeller in water, when known
   * @param bestRequired NPSH required there in water, when known
   */
  public record Need(
      DoubleFunction<OptionalDouble> required,
      double viscousRatio,
      Optional<BestPoint> best,
      OptionalDouble bestRequired) {
    /**
     * What a rotodynamic pump needs at its inlet.
     *
     * @param pump the pump
     * @param viscous correction for the viscosity of the liquid; empty when there is none
     * @return NPSH required
     */
    public static Need of(RunningPump pump, Optional<ViscousCorrection> viscous) {
      DoubleFunction<OptionalDouble> required = required(pump.curve());
      // An impeller turned down keeps its eye, so the inlet is that of the whole impeller.
      Optional<BestPoint> whole = PumpInLiquid.best(pump.curve().clear(), pump.curve().speedPs());
      OptionalDouble atBest =
          whole.isPresent() ? required.apply(whole.get().flowM3ps()) : OptionalDouble.empty();
      double ratio =
          atBest.isPresent() && viscous.isPresent()
              ? viscous.get().suctionRatio(atBest.getAsDouble())
              : 1;
      return new Need(required, ratio, whole, atBest);
    }

    /**
     * What a piston pump needs at its inlet.
     *
     * @param pump the pump
     * @return NPSH required, at every flow rate the same
     */
    public static Need of(PistonSpec pump) {
      return new Need(flow -> pump.npshM(), 1, Optional.empty(), OptionalDouble.empty());
    }

    OptionalDouble atM(double flowM3ps) {
      OptionalDouble water = required.apply(flowM3ps);
      return water.isPresent()
          ? OptionalDouble.of(viscousRatio * water.getAsDouble())
          : OptionalDouble.empty();
    }

    Optional<Inlet> inlet(double nozzleM, double densityKgM3) {
      return best.isPresent() && bestRequired.isPresent()
          ? Optional.of(
              new Inlet(
                  best.get(),
                  bestRequired.getAsDouble(),
                  SuctionEnergy.of(
                      nozzleM,
                      best.get(),
                      bestRequired.getAsDouble(),
                      densityKgM3 / Water.densityKgM3(COLD_K))))
          : Optional.empty();
    }

    private static DoubleFunction<OptionalDouble> required(CurveSpec curve) {
      List<RequiredSuctionHead.Point> points =
          curve.points().stream()
              .filter(point -> point.npshM().isPresent())
              .map(
                  point ->
                      new RequiredSuctionHead.Point(point.flowM3ps(), point.npshM().orElseThrow()))
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
  }

  /**
   * Atmospheric pressure at the site; at sea level when the design gives no suction side.
   *
   * @param design the design
   * @return absolute pressure [Pa]
   */
  public static double airPa(Design design) {
    double altitude = design.service().suction().map(s -> s.altitudeM()).orElse(0.0);
    return new StandardAtmosphere().pressurePa(altitude).value();
  }

  /**
   * The suction side of one pump at its flow rate.
   *
   * @param model the physics of its line
   * @param flowM3ps flow rate of this pump [m3/s]
   * @param sandFraction volume fraction of all sand
   * @param need what the pump needs at its inlet
   * @return NPSH available, required and margin; empty when the design gives no suction side
   */
  public static Optional<SuctionPoint> at(
      LineModel model, double flowM3ps, double sandFraction, Need need) {
    if (model.design().service().suction().isEmpty()) {
      return Optional.empty();
    }
    RunPoint run = model.suction(flowM3ps, sandFraction).orElseThrow();
    double flood = model.design().oneLine().route().sourceLevelM();
    double acceleration = acceleration(model.design(), run);
    double available =
        SuctionHead.atSiteM(
                model.design().service().suction().get().altitudeM(),
                model.materials().carrier().temperatureK(),
                model.materials().mixtureDensityKgM3(sandFraction),
                flood,
                Math.max(run.lossM(), 0) + acceleration)
            .value();
    Optional<Inlet> inlet =
        need.inlet(
            run.pipe().spec().meanBoreM(), model.materials().mixtureDensityKgM3(sandFraction));
    return Optional.of(
        new SuctionPoint(
            flood,
            run.lossM(),
            acceleration,
            available,
            need.atM(flowM3ps),
            need.viscousRatio(),
            inlet,
            margin(inlet),
            run.leastVelocityMps(),
            run.toPassMps(),
            run.severity()));
  }

  /** The greater of what sand and gas ask for and what the inlet itself does. */
  private static SuctionMargin margin(Optional<Inlet> inlet) {
    return inlet
        .map(i -> SuctionMargin.of(i.specificSpeed(), i.energy().grade()))
        .map(SuctionMargin.SOLIDS::or)
        .orElse(SuctionMargin.SOLIDS);
  }

  /** The air vessel stands on the discharge side: the suction sees the whole pulse. */
  private static double acceleration(Design design, RunPoint run) {
    return design
        .pump()
        .flatMap(PumpSpec::piston)
        .filter(piston -> piston.pulsation().isPresent())
        .map(
            piston ->
                piston
                    .pulsation()
                    .get()
                    .drive(piston.strokeRatePs())
                    .accelerationHeadM(
                        run.pipe().spec().lengthM(), run.velocityMps(), piston.strokeRatePs()))
        .orElse(0.0);
  }
}
