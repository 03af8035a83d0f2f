package sandslurry.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import sandslurry.correlation.Estimate;
import sandslurry.correlation.Physics;
import sandslurry.design.RouteSpec.RunSpec;
import sandslurry.material.Proportions;
import sandslurry.material.Slurry;
import sandslurry.material.Thomas1965;
import sandslurry.material.Vehicle;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.liquid.Newtonian;
import sandslurry.material.liquid.Rheology;
import sandslurry.pipe.Bore;
import sandslurry.pipe.fittings.FittingKind;
import sandslurry.pipe.fittings.FittingLoss;
import sandslurry.transport.bed.SandCarriage;
import sandslurry.transport.bed.SandCarriage.Support;
import sandslurry.transport.deposition.DepositionJudgement;
import sandslurry.transport.deposition.DepositionJudgement.Outcome;
import sandslurry.transport.deposition.DepositionRule;
import sandslurry.transport.friction.ClearLiquid;
import sandslurry.transport.friction.ClearLiquid.Regime;
import sandslurry.transport.friction.NonNewtonianFriction;
import sandslurry.transport.friction.PipeFriction;
import sandslurry.transport.headloss.HeadLossModel;
import sandslurry.transport.headloss.HeadLosses;
import sandslurry.transport.headloss.Inclination;
import sandslurry.units.Measure;

/**
 * The physics of one run of pipe at one flow, in plain SI.
 *
 * @param run the run
 * @param sandFraction volume fraction of all sand
 * @param mean the mean bore, which friction follows
 * @param largest the largest bore, which deposition is judged by
 * @param angleRad slope in the direction of flow, upward positive [rad]
 * @param velocityMps velocity in the mean bore [m/s]
 * @param leastVelocityMps velocity in the largest bore [m/s]
 * @param relativeViscosity what the fines multiply every stress of the carrier by
 * @param rheology carrier with its fines
 * @param wallShearRatePs shear rate at the wall, at which the viscosity was read [1/s]
 * @param slurry what the correlations see: the viscosity at the wall
 * @param regime how the carrier flows in the largest bore, where eddies die first
 * @param reynolds Reynolds number, of Metzner and Reed for a carrier that is not Newtonian
 * @param liquidGradient metres of carrier lost per metre of pipe without sand
 * @param frictionModel where that comes from
 * @param deposition judgement on deposition, empty without sand
 * @param carriage what carries the sand, empty without sand
 * @param headLosses gradient by each model of the bracket, the default first
 * @param slurryGradient gradient used: by the default model, where turbulence does not carry the
 *     sand not less than that of the liquid thickened by it; never more than with the pipe packed
 * @param frictionGradient gradient of the run, slope considered, metres of carrier per metre
 * @param frictionPa pressure lost by friction [Pa]
 * @param fittingCoefficient sum of the loss coefficients of all fittings
 * @param fittingsPa pressure lost in fittings [Pa]
 * @param mixtureDensityKgM3 density of the mixture [kg/m3]
 * @param yieldUnknown whether the carrier may have a yield stress that nobody measured
 * @param yieldExtrapolated whether its yield stress lies far below all that was measured
 */
record RunPoint(
    RunSpec run,
    double sandFraction,
    Bore mean,
    Bore largest,
    double angleRad,
    double velocityMps,
    double leastVelocityMps,
    double relativeViscosity,
    Rheology rheology,
    double wallShearRatePs,
    Slurry slurry,
    Regime regime,
    double reynolds,
    double liquidGradient,
    String frictionModel,
    Optional<DepositionJudgement> deposition,
    Optional<SandCarriage> carriage,
    List<ModelValue> headLosses,
    double slurryGradient,
    double frictionGradient,
    double frictionPa,
    double fittingCoefficient,
    double fittingsPa,
    double mixtureDensityKgM3,
    boolean yieldUnknown,
    boolean yieldExtrapolated) {

  /**
   * From this share of sand-free solids on manure has a yield stress of several pascals (5 to 30 Pa
   * at 10 to 13 %; from memory, unverified) that total solids alone do not tell.
   */
  static final double YIELD_FROM_SOLIDS = 0.10;

  /**
   * Where the liquid holds the sand at rest, up to so many times the tolerated share on the floor
   * is a caution and not a failure: lines of thick manure work with a plug that slips along the
   * wall, which is not credited (common practice, no source).
   */
  private static final double HELD_ALLOWANCE = 10;

  /**
   * Settled sand slides back on slopes steeper than about this (common practice, no source; loose
   * wet sand rests at 25 to 35 degrees, and moving liquid and smooth plastic lower that).
   */
  static final double SLIDES_RAD = Math.toRadians(15);

  /** Sand on steel or plastic (common practice, no source). */
  private static final double SLIDING_FRICTION = 0.4;

  private static final Thomas1965 THICKENING = new Thomas1965();

  /** What a run shares with the line that it belongs to. */
  record Context(
      Materials materials,
      DepositionRule rule,
      PipeLiquids liquids,
      double lineFloorShare,
      double toleratedShare) {}

  static RunPoint of(RunSpec run, Context context, double flowM3ps, double sandFraction) {
    Materials materials = context.materials();
    double roughness = Measure.LENGTH.si(run.roughness());
    Bore mean = new Bore(Measure.LENGTH.si(run.meanBore()), roughness);
    Bore largest = new Bore(Measure.LENGTH.si(run.largestBore()), roughness);
    double length = Measure.LENGTH.si(run.length());
    double angle = Math.asin(Measure.LENGTH.si(run.rise()) / length);
    double velocity = mean.velocityMps(flowM3ps);
    double leastVelocity = largest.velocityMps(flowM3ps);

    Vehicle vehicle = materials.vehicle(8 * velocity / mean.diameterM(), sandFraction);
    double density = vehicle.liquid().densityKgM3();
    Rheology rheology = materials.carrier().rheology().thickened(vehicle.relativeViscosity());
    CarrierFlow flow = CarrierFlow.of(rheology, density, mean, velocity, context.liquids());
    Regime regime =
        CarrierFlow.of(rheology, density, largest, leastVelocity, context.liquids()).regime();
    Slurry slurry =
        materials.slurry(
            new Liquid(density, flow.wallViscosityPaS()), vehicle.coarseVolumeFraction());

    boolean sand = slurry.volumeFraction() > 0;
    Optional<DepositionJudgement> deposition =
        sand
            ? Optional.of(context.rule().judge(slurry, largest, leastVelocity, angle))
            : Optional.empty();
    Optional<SandCarriage> carriage =
        deposition.map(judged -> carriage(run, context, flowM3ps, rheology, density, judged));

    List<ModelValue> headLosses = headLosses(slurry, mean, velocity, flow);
    double slurryGradient = flow.gradient();
    if (sand) {
      boolean plug =
          carriage.orElseThrow().support() == SandCarriage.Support.CARRIED_BY_YIELD_STRESS;
      double moving = plug ? 0 : headLosses.get(0).estimate().value();
      double thickened =
          regime == Regime.TURBULENT
              ? 0
              : thickenedGradient(rheology, slurry, mean, velocity, context.liquids());
      slurryGradient =
          Math.max(thickened, Math.min(moving, flow.gradient() + packedExcess(slurry)));
    }
    double friction = Inclination.frictionGradient(flow.gradient(), slurryGradient, angle);
    double mixtureDensity = materials.mixtureDensityKgM3(sandFraction);
    double coefficient = 0;
    for (Map.Entry<FittingKind, Integer> fitting : run.fittings().entrySet()) {
      coefficient +=
          fitting.getValue() * FittingLoss.coefficient(fitting.getKey(), flow.reynolds(), mean);
    }
    return new RunPoint(
        run,
        sandFraction,
        mean,
        largest,
        angle,
        velocity,
        leastVelocity,
        vehicle.relativeViscosity(),
        rheology,
        flow.wallShearRatePs(),
        slurry,
        regime,
        flow.reynolds(),
        flow.gradient(),
        flow.model(),
        deposition,
        carriage,
        headLosses,
        slurryGradient,
        friction,
        friction * density * Physics.GRAVITY * length,
        coefficient,
        coefficient * mixtureDensity * velocity * velocity / 2,
        mixtureDensity,
        yieldUnknown(materials),
        materials.yieldExtrapolated());
  }

  /**
   * What carries the sand. Eddies die first and sand drops first in the largest bore that the
   * standard allows; but the narrower the bore, the thinner the plug, so the yield stress must do
   * its work in the mean bore too.
   */
  private static SandCarriage carriage(
      RunSpec run,
      Context context,
      double flowM3ps,
      Rheology rheology,
      double densityKgM3,
      DepositionJudgement judged) {
    SandCarriage carried = null;
    for (double bore :
        List.of(Measure.LENGTH.si(run.largestBore()), Measure.LENGTH.si(run.meanBore()))) {
      if (carried == null || carried.support() == Support.CARRIED_BY_YIELD_STRESS) {
        Bore pipe = new Bore(bore, Measure.LENGTH.si(run.roughness()));
        carried =
            SandCarriage.judge(
                context.liquids().of(rheology, densityKgM3, pipe),
                pipe.velocityMps(flowM3ps),
                context.materials().coarsestHeld(context.toleratedShare()),
                context.lineFloorShare(),
                judged.limitMps(),
                context.toleratedShare());
      }
    }
    boolean slidesBack =
        climbsSteeply(run) && carried.outsidePlugShare() > context.toleratedShare();
    return slidesBack || context.materials().yieldExtrapolated()
        ? carried.withoutYieldStress()
        : carried;
  }

  /**
   * Says whether sand that is out of the plug slides back to the foot of the run, however short the
   * way is for which it falls towards a floor.
   */
  static boolean climbsSteeply(RunSpec run) {
    return Math.asin(Measure.LENGTH.si(run.rise()) / Measure.LENGTH.si(run.length())) > SLIDES_RAD;
  }

  private static boolean yieldUnknown(Materials materials) {
    return materials.carrier().shearRates().isPresent()
        && materials.carrier().rheology().yieldStressPa() == 0
        && materials.carrier().totalSolids().orElse(0) >= YIELD_FROM_SOLIDS;
  }

  /**
   * Every model of the bracket. The models know a Newtonian carrier only: of a carrier that is not,
   * they get the viscosity at the wall, and what they add for the sand is added to the carrier's
   * own friction.
   */
  private static List<ModelValue> headLosses(
      Slurry slurry, Bore bore, double velocityMps, CarrierFlow flow) {
    double newtonian = ClearLiquid.of(slurry.liquid(), bore, velocityMps).gradient();
    List<ModelValue> values = new ArrayList<>();
    for (HeadLossModel model : HeadLosses.bracket()) {
      Estimate estimate = model.gradient(slurry, bore, velocityMps);
      double gradient =
          flow.newtonian() ? estimate.value() : flow.gradient() + (estimate.value() - newtonian);
      values.add(new ModelValue(model, new Estimate(gradient, estimate.excesses())));
    }
    return values;
  }

  /**
   * Gradient where turbulence does not carry the sand: the liquid thickened by its sand as by fine
   * grains, in metres of carrier per metre. A bed, if there is one, adds to that.
   */
  private static double thickenedGradient(
      Rheology rheology, Slurry slurry, Bore bore, double velocityMps, PipeLiquids liquids) {
    double thickening = THICKENING.relativeViscosity(slurry.volumeFraction()).value();
    return liquids
            .of(rheology.thickened(thickening), slurry.mixtureDensityKgM3(), bore)
            .at(velocityMps)
            .pressureGradientPaPm()
        / (slurry.liquid().densityKgM3() * Physics.GRAVITY);
  }

  /**
   * What a pipe packed with sand that slides as a plug asks beyond its carrier, 2 μs (s − 1) Cb
   * (Wilson 1970, as in {@link sandslurry.transport.bed.LaminarTransport}): no bed asks for more,
   * while the models of moving sand grow without limit towards zero velocity.
   */
  private static double packedExcess(Slurry slurry) {
    return 2 * SLIDING_FRICTION * (slurry.densityRatio() - 1) * Proportions.PACKED_VOLUME_FRACTION;
  }

  double riseM() {
    return Measure.LENGTH.si(run.rise());
  }

  double velocityHeadM() {
    return velocityMps * velocityMps / (2 * Physics.GRAVITY);
  }

  /** Head lost along the run, in metres of mixture. */
  double lossM() {
    return (frictionPa + fittingsPa) / (mixtureDensityKgM3 * Physics.GRAVITY);
  }

  /** Velocity over that which passes; the greatest number without sand. */
  double margin() {
    return deposition.map(d -> leastVelocityMps / d.velocityToPassMps()).orElse(Double.MAX_VALUE);
  }

  boolean isNewtonian() {
    return rheology instanceof Newtonian;
  }

  boolean isHeldAtRest() {
    return !yieldExtrapolated
        && carriage.map(c -> c.yieldStressPa() >= c.neededYieldStressPa()).orElse(false);
  }

  boolean overBed() {
    return severity() == Severity.FAIL
        || deposition.map(d -> d.outcome() == Outcome.BELOW_LIMIT).orElse(false)
            && carriage.orElseThrow().support() != Support.CARRIED_BY_YIELD_STRESS;
  }

  /**
   * How the run stands as far as sand goes. In turbulent flow the deposition velocity judges. In
   * laminar flow only a yield stress that holds the sand passes; without one, sand that reaches the
   * floor stays there. In between nothing passes.
   */
  Severity severity() {
    if (deposition.isEmpty()) {
      return Severity.PASS;
    }
    Outcome outcome = deposition.get().outcome();
    SandCarriage carried = carriage.orElseThrow();
    return switch (regime) {
      case TURBULENT ->
          outcome == Outcome.BELOW_LIMIT
              ? Severity.FAIL
              : outcome == Outcome.CLEAR ? Severity.PASS : Severity.CAUTION;
      case TRANSITIONAL -> outcome == Outcome.BELOW_LIMIT ? Severity.FAIL : Severity.CAUTION;
      case LAMINAR -> {
        if (carried.support() == Support.CARRIED_BY_YIELD_STRESS) {
          yield Severity.PASS;
        }
        double bearable = isHeldAtRest() ? HELD_ALLOWANCE : 1;
        boolean gathers = carried.floorShare() > bearable * carried.toleratedShare();
        yield gathers && !yieldUnknown ? Severity.FAIL : Severity.CAUTION;
      }
    };
  }

  /**
   * How the carrier alone flows through a pipe.
   *
   * @param newtonian whether it is Newtonian
   * @param wallViscosityPaS apparent viscosity at the wall [Pa.s]
   * @param wallShearRatePs shear rate at the wall [1/s]
   * @param regime the regime
   * @param reynolds Reynolds number
   * @param gradient metres of carrier per metre of pipe
   * @param model where the gradient comes from
   */
  private record CarrierFlow(
      boolean newtonian,
      double wallViscosityPaS,
      double wallShearRatePs,
      Regime regime,
      double reynolds,
      double gradient,
      String model) {
    static CarrierFlow of(
        Rheology rheology, double densityKgM3, Bore bore, double velocityMps, PipeLiquids liquids) {
      if (rheology instanceof Newtonian newtonian) {
        ClearLiquid clear =
            ClearLiquid.of(new Liquid(densityKgM3, newtonian.viscosityPaS()), bore, velocityMps);
        double stress = clear.pressureGradientPaPm() * bore.diameterM() / 4;
        return new CarrierFlow(
            true,
            newtonian.viscosityPaS(),
            stress / newtonian.viscosityPaS(),
            clear.regime(),
            clear.reynolds(),
            clear.gradient(),
            PipeFriction.SOURCE.toString());
      }
      NonNewtonianFriction.Friction friction =
          liquids.of(rheology, densityKgM3, bore).at(velocityMps);
      return new CarrierFlow(
          false,
          friction.wallViscosityPaS(),
          friction.wallShearRatePs(),
          friction.regime(),
          friction.reynolds(),
          friction.pressureGradientPaPm() / (densityKgM3 * Physics.GRAVITY),
          friction.model());
    }
  }

  /** The deposition limit; empty without sand or turbulence, for which alone it holds [m/s]. */
  OptionalDouble limitMps() {
    return turbulent(DepositionJudgement::limitMps);
  }

  /** The velocity to pass, which holds where the deposition limit does [m/s]. */
  OptionalDouble toPassMps() {
    return turbulent(DepositionJudgement::velocityToPassMps);
  }

  private OptionalDouble turbulent(ToDoubleFunction<DepositionJudgement> velocity) {
    return deposition.isPresent() && regime == Regime.TURBULENT
        ? OptionalDouble.of(velocity.applyAsDouble(deposition.get()))
        : OptionalDouble.empty();
  }
}
