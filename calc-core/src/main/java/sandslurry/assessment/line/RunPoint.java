package sandslurry.assessment.line;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleSupplier;
import java.util.function.ToDoubleFunction;
import sandslurry.assessment.materials.ModelValue;
import sandslurry.correlation.Estimate;
import sandslurry.correlation.Physics;
import sandslurry.fact.finding.Severity;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.Proportions;
import sandslurry.material.Slurry;
import sandslurry.material.Thomas1965;
import sandslurry.pipe.Bore;
import sandslurry.settling.HinderedSettlings;
import sandslurry.settling.SettlingVelocities;
import sandslurry.transport.bed.LaminarTransport;
import sandslurry.transport.bed.SandCarriage;
import sandslurry.transport.bed.SandCarriage.Support;
import sandslurry.transport.bed.SlidingBed;
import sandslurry.transport.deposition.DepositionJudgement;
import sandslurry.transport.deposition.DepositionJudgement.Outcome;
import sandslurry.transport.deposition.SandLoad;
import sandslurry.transport.friction.ClearLiquid;
import sandslurry.transport.friction.ClearLiquid.Regime;
import sandslurry.transport.friction.LaminarPipeFlow;
import sandslurry.transport.friction.NonNewtonianFriction;
import sandslurry.transport.friction.PipeFriction;
import sandslurry.transport.headloss.HeadLossModel;
import sandslurry.transport.headloss.HeadLosses;
import sandslurry.transport.headloss.Inclination;
import sandslurry.units.Kind;

/**
 * One run of pipe at one flow rate, in plain SI.
 *
 * <p>Friction, deposition, what carries the sand and the head-loss models beside the default one
 * are worked out when they are first asked for: a pump curve is met with the head of hundreds of
 * flow rates that nobody judges, and the lowest flow rate that carries sand is searched without a
 * head.
 */
public final class RunPoint {
  /**
   * Settled sand slides back on slopes steeper than about this (common practice, no source; loose
   * wet sand rests at 25 to 35 degrees, and moving liquid and smooth plastic lower that).
   */
  public static final double SLIDES_RAD = Math.toRadians(15);

  private static final Equation ROUGHNESS =
      Equation.of("e", "roughness over bore", "k/D", Kind.NUMBER, Equation.DEFINITION, "k m, D m");
  private static final Equation MODELLED =
      Equation.of(
          "i_d",
          "gradient by the default model, on the friction of the carrier itself",
          "i_w + i_m - i_f",
          Kind.NUMBER,
          "theory page on head loss",
          "i_w, i_m, i_f");
  private static final Equation MOVING =
      Equation.of(
          "i_u",
          "gradient with sand, at most that of a pipe packed with it",
          "min(i_d, i_w + 2 * 0.4 * 0.60 (s - 1))",
          Kind.NUMBER,
          "Wilson 1970, balance of forces on a bed",
          "i_d, i_w, s");
  private static final Equation LESS_EDDIES = MOVING.as("i_p");
  private static final Equation EDDIES =
      Equation.of(
          "x_e",
          "share of eddies between laminar and turbulent flow",
          "max(0, (V_L - V_l) / (V_t - V_l))",
          Kind.NUMBER,
          "straight line between the two",
          "V_L m/s, V_t m/s, V_l m/s");
  private static final Equation SLIDING =
      Equation.search(
          "i_s",
          "gradient of laminar flow over the bed that slides",
          "gradient of the carrier and the friction of the bed that forms",
          Kind.NUMBER,
          "Wilson 1970, balance of forces on a bed",
          "i_w");
  private static final Equation THICKENED =
      Equation.search(
          "i_t",
          "gradient of the carrier thickened by its sand as by fines",
          "friction with every stress times the relative viscosity of Thomas at C",
          Kind.NUMBER,
          new Thomas1965().citation().toString(),
          "C");
  private static final Equation NOT_TURBULENT =
      Equation.of(
          "i_u",
          "gradient used where the flow is not turbulent",
          "max(i_t, i_s + x_e (i_p - i_s))",
          Kind.NUMBER,
          "theory page on the non-Newtonian carrier",
          "i_t, i_s, x_e, i_p");

  private final FilledRun filled;
  private final double flowM3ps;
  private final DoubleSupplier lineFloorShare;
  private final double velocityMps;
  private final double leastVelocityMps;
  private final CarrierFlow flow;
  private final Regime regime;
  private final Slurry slurry;
  private Friction friction;
  private Optional<DepositionJudgement> deposition;
  private Optional<SandCarriage> carriage;
  private List<ModelValue> headLosses;

  /**
   * What the run takes of the head.
   *
   * @param slurryGradient gradient without the slope, metres of carrier per metre
   * @param gradient the same with it
   * @param pa pressure lost by friction [Pa]
   * @param fittingCoefficient sum of the loss coefficients of all fittings
   * @param fittingsPa pressure lost in fittings [Pa]
   */
  public record Friction(
      double slurryGradient,
      double gradient,
      double pa,
      double fittingCoefficient,
      double fittingsPa) {}

  RunPoint(FilledRun filled, double flowM3ps, DoubleSupplier lineFloorShare) {
    this.filled = filled;
    this.flowM3ps = flowM3ps;
    this.lineFloorShare = lineFloorShare;
    PipeRun pipe = filled.pipe();
    velocityMps = pipe.mean().velocityMps(flowM3ps);
    leastVelocityMps = pipe.largest().velocityMps(flowM3ps);
    flow = filled.carrierFlow(velocityMps);
    regime = filled.regime(leastVelocityMps);
    slurry = filled.slurry(flow.wallViscosityPaS());
  }

  /**
   * The pipe of the run.
   *
   * @return the pipe
   */
  public PipeRun pipe() {
    return filled.pipe();
  }

  /**
   * What fills it.
   *
   * @return liquid and sand
   */
  public LineMixture mixture() {
    return filled.mixture();
  }

  /**
   * How the carrier alone flows in its mean bore.
   *
   * @return the flow
   */
  public CarrierFlow flow() {
    return flow;
  }

  /**
   * What the run takes of the head; found when first asked for.
   *
   * @return the losses
   */
  public Friction friction() {
    if (friction == null) {
      PipeRun pipe = filled.pipe();
      LineMixture mixture = filled.mixture();
      double slurryGradient =
          hasSand() ? gradientWithSand(movingGradient(), Trace.NONE) : flow.gradient();
      double gradient =
          Inclination.frictionGradient(flow.gradient(), slurryGradient, pipe.angleRad());
      double fittings = pipe.fittingCoefficient(flow.reynolds());
      friction =
          new Friction(
              slurryGradient,
              gradient,
              gradient * mixture.liquidDensityKgM3() * Physics.GRAVITY * pipe.spec().lengthM(),
              fittings,
              fittings * mixture.densityKgM3() * velocityMps * velocityMps / 2);
    }
    return friction;
  }

  /**
   * Says whether there are grains that can settle.
   *
   * @return true above no sand
   */
  public boolean hasSand() {
    return slurry.volumeFraction() > 0;
  }

  /**
   * Gradient with sand, in metres of carrier per metre. Where eddies carry the sand it is that of
   * the model, at most that of a pipe packed with it; in laminar flow that of the liquid with the
   * friction of the bed that slides along; between them one passes into the other. Without eddies
   * it is never less than that of the liquid thickened by its sand.
   */
  private double gradientWithSand(double asModelled, Trace trace) {
    double packed = packedExcess(slurry);
    double moving = Math.min(asModelled, flow.gradient() + packed);
    if (regime == Regime.TURBULENT) {
      return trace.step(MOVING, moving, asModelled, flow.gradient(), slurry.densityRatio());
    }
    NonNewtonianFriction liquid = filled.liquid(filled.pipe().largest());
    double eddies = SandCarriage.eddies(liquid, leastVelocityMps);
    if (eddies == 1) {
      return trace.step(MOVING, moving, asModelled, flow.gradient(), slurry.densityRatio());
    }
    trace.step(LESS_EDDIES, moving, asModelled, flow.gradient(), slurry.densityRatio());
    double weight = slurry.liquid().densityKgM3() * Physics.GRAVITY;
    double sliding =
        flow.gradient()
            + bed(filled.pipe().mean(), lineFloorShare.getAsDouble(), 0).frictionPaPm() / weight;
    double thickened = filled.thickenedGradient(slurry, velocityMps);
    trace.step(
        EDDIES, eddies, leastVelocityMps, liquid.turbulentAboveMps(), liquid.laminarBelowMps());
    trace.step(SLIDING, sliding, flow.gradient());
    trace.step(THICKENED, thickened, slurry.volumeFraction());
    return trace.step(
        NOT_TURBULENT,
        Math.max(thickened, sliding + eddies * (moving - sliding)),
        thickened,
        sliding,
        eddies,
        moving);
  }

  /** The bed that forms when a share of the sand reaches the floor. */
  private SlidingBed bed(Bore bore, double floorShare, double slopeRad) {
    return new SlidingBed(
        bore,
        SlidingBed.formedShare(floorShare, filled.mixture().coarseFraction()),
        filled.materials().coarse().d85M(),
        slopeRad,
        slurry.sandDensityKgM3(),
        slurry.liquid().densityKgM3());
  }

  /**
   * By the default model. The models know a Newtonian carrier only: of a carrier that is not, they
   * get the viscosity at the wall, and what they add for the sand is added to the carrier's own
   * friction.
   */
  private double movingGradient() {
    ClearLiquid clear = newtonian();
    return flow.gradient() + (filled.movingGradient(slurry, clear, velocityMps) - clear.gradient());
  }

  /** Friction of a Newtonian liquid of the viscosity at the wall. */
  private ClearLiquid newtonian() {
    return flow.newtonian()
        .orElseGet(() -> ClearLiquid.of(slurry.liquid(), filled.pipe().mean(), velocityMps));
  }

  private Estimate headLoss(HeadLossModel model) {
    Estimate estimate = model.gradient(slurry, filled.pipe().mean(), velocityMps);
    double excess = estimate.value() - newtonian().gradient();
    return new Estimate(flow.gradient() + excess, estimate.excesses());
  }

  /**
   * What carries the sand. Eddies die first and sand drops first in the largest bore that the
   * standard allows; but the narrower the bore, the thinner the plug, so the yield stress must do
   * its work in the mean bore too.
   */
  private SandCarriage carriage(double depositionVelocityMps) {
    SandCarriage carried = carriage(filled.pipe().largest(), depositionVelocityMps);
    if (carried.support() == Support.CARRIED_BY_YIELD_STRESS) {
      carried = carriage(filled.pipe().mean(), depositionVelocityMps);
    }
    return yieldExtrapolated() ? carried.withoutYieldStress() : carried;
  }

  private SandCarriage carriage(Bore bore, double depositionVelocityMps) {
    NonNewtonianFriction liquid = filled.liquid(bore);
    double velocity = bore.velocityMps(flowM3ps);
    boolean turbulent = velocity >= liquid.turbulentAboveMps();
    double floor = turbulent ? 0 : lineFloorShare.getAsDouble();
    double sinking = 0;
    if (!turbulent && filled.pipe().angleRad() > 0) {
      sinking =
          Math.sin(filled.pipe().angleRad())
              * LaminarTransport.shearedFallMps(
                  filled.coarsestHeld(),
                  filled.mixture().coarseFraction(),
                  filled.mixture().liquidDensityKgM3(),
                  LaminarPipeFlow.at(filled.mixture().rheology(), bore.diameterM(), velocity),
                  SettlingVelocities.DEFAULT,
                  HinderedSettlings.DEFAULT);
    }
    return SandCarriage.judge(
        liquid,
        velocity,
        filled.coarsestHeld(),
        floor,
        bed(bore, floor, filled.pipe().angleRad()),
        sinking,
        depositionVelocityMps,
        filled.toleratedShare());
  }

  /**
   * Judgement on deposition in the largest bore.
   *
   * @return deposition velocity, required velocity and outcome; empty without sand
   */
  public Optional<DepositionJudgement> deposition() {
    if (deposition == null) {
      deposition =
          hasSand() ? Optional.of(filled.judge(slurry, leastVelocityMps)) : Optional.empty();
    }
    return deposition;
  }

  /** What sand the deposition is judged for. */
  SandLoad load() {
    return filled.load(slurry);
  }

  /**
   * Deposition by every correlation of the catalogue, for comparison.
   *
   * @return one entry each, in the order of the catalogue; none without sand
   */
  public List<DepositionJudgement.Entry> depositionModels() {
    return hasSand() ? filled.compare(slurry) : List.of();
  }

  /**
   * What carries the sand.
   *
   * @return eddies, yield stress or a sliding bed; empty without sand
   */
  public Optional<SandCarriage> carriage() {
    if (carriage == null) {
      carriage = deposition().map(judged -> carriage(judged.limitMps()));
    }
    return carriage;
  }

  /**
   * Gradient by each model of the bracket.
   *
   * @return one value each, the default first
   */
  public List<ModelValue> headLosses() {
    if (headLosses == null) {
      headLosses =
          HeadLosses.bracket().stream()
              .map(model -> new ModelValue(model, headLoss(model)))
              .toList();
    }
    return headLosses;
  }

  /**
   * Head lost along the run by each model of the bracket in place of the default one.
   *
   * @return what each takes more than the default, the default first [m of mixture]
   */
  double[] lossesBesideM() {
    double[] beside = new double[headLosses().size()];
    if (!hasSand()) {
      return beside;
    }
    PipeRun pipe = filled.pipe();
    LineMixture mixture = filled.mixture();
    for (int i = 1; i < beside.length; i++) {
      double level = gradientWithSand(headLosses().get(i).estimate().value(), Trace.NONE);
      double gradient = Inclination.frictionGradient(flow.gradient(), level, pipe.angleRad());
      beside[i] =
          (gradient - friction().gradient())
              * pipe.spec().lengthM()
              * mixture.liquidDensityKgM3()
              / mixture.densityKgM3();
    }
    return beside;
  }

  /** Keeps the steps of the friction of a Newtonian carrier, on which the models of sand rest. */
  void frictionSteps(Trace trace, Equation gradient) {
    ClearLiquid clear = newtonian();
    double d = filled.pipe().mean().diameterM();
    double roughness =
        trace.step(
            ROUGHNESS, filled.pipe().mean().roughnessM() / d, filled.pipe().mean().roughnessM(), d);
    double factor = PipeFriction.darcyFactor(clear.reynolds(), roughness, trace);
    trace.step(gradient, clear.gradient(), factor, velocityMps, d);
  }

  /** Darcy friction factor of a Newtonian carrier of the viscosity at the wall. */
  double clearFactor() {
    return newtonian().darcyFactor();
  }

  /** Keeps the steps of the gradient with sand. */
  void gradientSteps(Trace trace) {
    if (!hasSand()) {
      return;
    }
    for (HeadLossModel model : HeadLosses.bracket()) {
      if (regime != Regime.LAMINAR || model == HeadLosses.DEFAULT) {
        double gradient = model.gradient(slurry, filled.pipe().mean(), velocityMps, trace).value();
        if (model == HeadLosses.DEFAULT) {
          double used = movingGradient();
          trace.step(MODELLED, used, flow.gradient(), gradient, newtonian().gradient());
        }
      }
    }
    gradientWithSand(movingGradient(), trace);
  }

  /**
   * Velocity in the mean bore.
   *
   * @return velocity [m/s]
   */
  public double velocityMps() {
    return velocityMps;
  }

  /**
   * Velocity in the largest bore.
   *
   * @return velocity [m/s]
   */
  public double leastVelocityMps() {
    return leastVelocityMps;
  }

  /**
   * What the correlations see: the carrier with its viscosity at the wall, and the sand.
   *
   * @return the slurry
   */
  public Slurry slurry() {
    return slurry;
  }

  /**
   * Flow regime of the carrier in the largest bore, where eddies die first.
   *
   * @return laminar, transitional or turbulent
   */
  public Regime regime() {
    return regime;
  }

  /** Whether its yield stress lies far below all that was measured. */
  boolean yieldExtrapolated() {
    return filled.materials().yieldExtrapolated();
  }

  /**
   * What a pipe packed with sand that slides as a plug asks beyond its carrier, 2 μs (s − 1) Cb
   * (Wilson 1970, as in {@link SlidingBed}): no bed asks for more, while the models of moving sand
   * grow without limit towards zero velocity.
   */
  private static double packedExcess(Slurry slurry) {
    return 2
        * SlidingBed.FRICTION
        * (slurry.densityRatio() - 1)
        * Proportions.PACKED_VOLUME_FRACTION;
  }

  /**
   * Velocity head in the mean bore.
   *
   * @return head [m of mixture]
   */
  public double velocityHeadM() {
    return velocityMps * velocityMps / (2 * Physics.GRAVITY);
  }

  /**
   * Head lost along the run by friction and in its fittings.
   *
   * @return head [m of mixture]
   */
  public double lossM() {
    return (friction().pa() + friction().fittingsPa())
        / (filled.mixture().densityKgM3() * Physics.GRAVITY);
  }

  /**
   * Velocity in the largest bore over the required velocity.
   *
   * @return ratio; the greatest number without sand
   */
  public double margin() {
    return deposition().map(d -> leastVelocityMps / d.velocityToPassMps()).orElse(Double.MAX_VALUE);
  }

  boolean overBed() {
    if (!hasSand()) {
      return false;
    }
    return regime == Regime.LAMINAR
        ? supportWithoutEddies() == Support.LAMINAR_AND_DEPOSITING
        : severity() == Severity.FAIL
            || deposition().orElseThrow().outcome() == Outcome.BELOW_LIMIT;
  }

  /** Whether {@link #severity} is a pass, found without the deposition velocity where it can be. */
  boolean passes() {
    if (!hasSand()) {
      return true;
    }
    return switch (regime) {
      case TURBULENT -> deposition().orElseThrow().outcome() == Outcome.CLEAR;
      case TRANSITIONAL -> false;
      case LAMINAR -> supportWithoutEddies() == Support.CARRIED_BY_YIELD_STRESS;
    };
  }

  /** What carries the sand in laminar flow, where the deposition velocity decides nothing. */
  private Support supportWithoutEddies() {
    return (carriage != null ? carriage.orElseThrow() : carriage(0)).support();
  }

  /**
   * Whether the sand of this run moves as a sliding bed, which the pump must be able to restart.
   *
   * @return true when a bed slides along
   */
  public boolean bedMoves() {
    return regime != Regime.TURBULENT
        && carriage().map(c -> c.support() == Support.SLIDING_BED).orElse(false);
  }

  /**
   * Verdict on the sand in this run. In turbulent flow the deposition velocity judges, in laminar
   * flow what {@link SandCarriage} finds. In between neither can be counted on: that is a caution,
   * and a failure only where both would fail.
   *
   * @return pass without sand
   */
  public Severity severity() {
    if (deposition().isEmpty()) {
      return Severity.PASS;
    }
    Outcome outcome = deposition().get().outcome();
    return switch (regime) {
      case TURBULENT ->
          outcome == Outcome.BELOW_LIMIT
              ? Severity.FAIL
              : outcome == Outcome.CLEAR ? Severity.PASS : Severity.CAUTION;
      case TRANSITIONAL ->
          outcome == Outcome.BELOW_LIMIT && deposits() ? Severity.FAIL : Severity.CAUTION;
      case LAMINAR ->
          carriage().orElseThrow().support() == Support.CARRIED_BY_YIELD_STRESS
              ? Severity.PASS
              : deposits() ? Severity.FAIL : Severity.CAUTION;
    };
  }

  private boolean deposits() {
    return carriage().orElseThrow().support() == Support.LAMINAR_AND_DEPOSITING;
  }

  /**
   * Deposition velocity.
   *
   * @return velocity [m/s]; empty without sand or turbulence, for which alone it holds
   */
  public OptionalDouble limitMps() {
    return turbulent(DepositionJudgement::limitMps);
  }

  /**
   * Required velocity: deposition velocity and margin.
   *
   * @return velocity [m/s]; empty where the deposition velocity is
   */
  public OptionalDouble toPassMps() {
    return turbulent(DepositionJudgement::velocityToPassMps);
  }

  private OptionalDouble turbulent(ToDoubleFunction<DepositionJudgement> velocity) {
    return deposition().isPresent() && regime == Regime.TURBULENT
        ? OptionalDouble.of(velocity.applyAsDouble(deposition().get()))
        : OptionalDouble.empty();
  }

  /**
   * The run that is closest to settling, or settles most.
   *
   * @param runs the runs of a line at one flow rate
   * @return the worst of them
   */
  public static RunPoint worst(List<RunPoint> runs) {
    return runs.stream()
        .max(
            Comparator.comparing(RunPoint::severity)
                .thenComparing(Comparator.comparingDouble(RunPoint::margin).reversed()))
        .orElseThrow();
  }
}
