package sandslurry.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sandslurry.correlation.Estimate;
import sandslurry.correlation.Physics;
import sandslurry.design.RouteSpec.RunSpec;
import sandslurry.material.Newtonian;
import sandslurry.material.Slurry;
import sandslurry.material.Vehicle;
import sandslurry.pipe.Bore;
import sandslurry.pipe.FittingKind;
import sandslurry.pipe.FittingLoss;
import sandslurry.transport.ClearLiquid;
import sandslurry.transport.ClearLiquid.Regime;
import sandslurry.transport.DepositionJudgement;
import sandslurry.transport.DepositionRule;
import sandslurry.transport.HeadLossModel;
import sandslurry.transport.HeadLosses;
import sandslurry.transport.Inclination;
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
 * @param shearRatePs nominal shear rate 8V/D at which the carrier's viscosity was read [1/s]
 * @param vehicle carrier with its fines
 * @param slurry what the correlations see
 * @param liquid friction of the carrier with its fines
 * @param deposition judgement on deposition, empty without sand
 * @param headLosses gradient by each model of the bracket, the default first
 * @param frictionGradient gradient of the run, slope considered, metres of carrier per metre
 * @param frictionPa pressure lost by friction [Pa]
 * @param fittingCoefficient sum of the loss coefficients of all fittings
 * @param fittingsPa pressure lost in fittings [Pa]
 * @param mixtureDensityKgM3 density of the mixture [kg/m3]
 * @param newtonian whether the carrier's viscosity is the same at every shear rate
 */
record RunPoint(
    RunSpec run,
    double sandFraction,
    Bore mean,
    Bore largest,
    double angleRad,
    double velocityMps,
    double leastVelocityMps,
    double shearRatePs,
    Vehicle vehicle,
    Slurry slurry,
    ClearLiquid liquid,
    Optional<DepositionJudgement> deposition,
    List<ModelValue> headLosses,
    double frictionGradient,
    double frictionPa,
    double fittingCoefficient,
    double fittingsPa,
    double mixtureDensityKgM3,
    boolean newtonian) {

  static RunPoint of(
      RunSpec run, Materials materials, DepositionRule rule, double flowM3ps, double sandFraction) {
    double roughness = Measure.LENGTH.si(run.roughness());
    Bore mean = new Bore(Measure.LENGTH.si(run.meanBore()), roughness);
    Bore largest = new Bore(Measure.LENGTH.si(run.largestBore()), roughness);
    double length = Measure.LENGTH.si(run.length());
    double angle = Math.asin(Measure.LENGTH.si(run.rise()) / length);
    double velocity = mean.velocityMps(flowM3ps);
    double leastVelocity = largest.velocityMps(flowM3ps);
    double shearRate = 8 * velocity / mean.diameterM();
    Vehicle vehicle = materials.vehicle(shearRate, sandFraction);
    Slurry slurry = materials.slurry(vehicle);
    ClearLiquid liquid = ClearLiquid.of(vehicle.liquid(), mean, velocity);
    Optional<DepositionJudgement> deposition =
        slurry.volumeFraction() > 0
            ? Optional.of(rule.judge(slurry, largest, leastVelocity, angle))
            : Optional.empty();
    List<ModelValue> headLosses = new ArrayList<>();
    for (HeadLossModel model : HeadLosses.bracket()) {
      headLosses.add(new ModelValue(model, model.gradient(slurry, mean, velocity)));
    }
    double friction =
        Inclination.frictionGradient(
            liquid.gradient(), headLosses.get(0).estimate().value(), angle);
    double mixtureDensity = materials.mixtureDensityKgM3(sandFraction);
    double coefficient = 0;
    for (Map.Entry<FittingKind, Integer> fitting : run.fittings().entrySet()) {
      coefficient +=
          fitting.getValue() * FittingLoss.coefficient(fitting.getKey(), liquid.reynolds(), mean);
    }
    return new RunPoint(
        run,
        sandFraction,
        mean,
        largest,
        angle,
        velocity,
        leastVelocity,
        shearRate,
        vehicle,
        slurry,
        liquid,
        deposition,
        headLosses,
        friction,
        friction * vehicle.liquid().densityKgM3() * Physics.GRAVITY * length,
        coefficient,
        coefficient * mixtureDensity * velocity * velocity / 2,
        mixtureDensity,
        materials.carrier().rheology() instanceof Newtonian);
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

  Estimate slurryGradient() {
    return headLosses.get(0).estimate();
  }

  boolean overBed() {
    return deposition
        .map(d -> d.outcome() == DepositionJudgement.Outcome.BELOW_LIMIT)
        .orElse(false);
  }

  /**
   * How the run stands as far as deposition goes. Sand in laminar or transitional flow never
   * passes: the correlations are for turbulent flow. A Newtonian liquid that flows so slowly fails
   * when it is below the limit too; of a liquid that thins under shear they cannot say that much.
   */
  Severity severity() {
    if (deposition.isEmpty()) {
      return Severity.PASS;
    }
    DepositionJudgement.Outcome outcome = deposition.get().outcome();
    boolean turbulent = liquid.regime() == Regime.TURBULENT;
    if (outcome == DepositionJudgement.Outcome.BELOW_LIMIT && (turbulent || newtonian)) {
      return Severity.FAIL;
    }
    return turbulent && outcome == DepositionJudgement.Outcome.CLEAR
        ? Severity.PASS
        : Severity.CAUTION;
  }
}
