package sandslurry.assessment.line;

import static sandslurry.fact.step.Equation.DEFINITION;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import sandslurry.assessment.line.LineEvaluation.State;
import sandslurry.assessment.materials.MaterialWorking;
import sandslurry.assessment.materials.Materials;
import sandslurry.fact.finding.Severity;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Equations;
import sandslurry.fact.step.Trace;
import sandslurry.material.Thomas1965;
import sandslurry.material.liquid.Rheology;
import sandslurry.pipe.fittings.FittingKind;
import sandslurry.pipe.fittings.FittingLoss;
import sandslurry.transport.bed.SandCarriage;
import sandslurry.transport.friction.ClearLiquid;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** The working behind the line: every number of every run at every flow rate judged. */
public final class LineWorking {
  private static final Equations EQUATIONS = Equations.of(LineWorking.class);
  private static final Equation VELOCITY = EQUATIONS.of("velocity", Kind.VELOCITY);
  private static final Equation LEAST_VELOCITY = EQUATIONS.of("least-velocity", Kind.VELOCITY);
  private static final Equation MIXTURE = EQUATIONS.of("mixture", Kind.DENSITY);
  private static final Equation COARSE = EQUATIONS.of("coarse", Kind.PERCENT);
  private static final Equation FINES = EQUATIONS.of("fines", Kind.PERCENT);
  private static final Equation LIQUID = EQUATIONS.of("liquid", Kind.DENSITY);
  private static final Equation WALL_STRESS = EQUATIONS.of("wall-stress", Kind.STRESS);
  private static final Equation SHEAR_RATE = EQUATIONS.of("shear-rate", Kind.SHEAR_RATE);
  private static final Equation WALL_VISCOSITY = EQUATIONS.of("wall-viscosity", Kind.VISCOSITY);
  private static final Equation LAMINAR_STRESS = EQUATIONS.of("laminar-stress", Kind.STRESS);
  private static final Equation METZNER_REED = EQUATIONS.of("metzner-reed", Kind.NUMBER);
  private static final Equation REYNOLDS = EQUATIONS.of("reynolds", Kind.NUMBER);
  private static final Equation RATIO = EQUATIONS.of("ratio", Kind.NUMBER);
  private static final Equation TURBULENT_FROM = EQUATIONS.of("turbulent-from", Kind.VELOCITY);
  private static final Equation NEEDED_YIELD = EQUATIONS.of("needed-yield", Kind.STRESS);
  private static final Equation FLOOR = EQUATIONS.of("floor", Kind.PERCENT);
  private static final Equation SLIDE = EQUATIONS.of("slide", Kind.NUMBER);
  private static final Equation CLEAR = EQUATIONS.of("clear", Kind.NUMBER);
  private static final Equation WALL_GRADIENT = EQUATIONS.of("wall-gradient", Kind.NUMBER);
  private static final Equation FRICTION = EQUATIONS.of("friction", Kind.PRESSURE);
  private static final Equation FITTINGS = EQUATIONS.of("fittings", Kind.PRESSURE);
  private static final Equation LOST_HEAD = EQUATIONS.of("lost-head", Kind.HEAD);
  private static final Equation HEAD = EQUATIONS.of("head", Kind.HEAD);

  private LineWorking() {}

  /**
   * Keeps the steps of every run at every flow rate that is judged.
   *
   * @param trace what keeps the steps
   * @param model the physics of its line
   * @param materials its liquid, sand and mixture
   * @param states the line at each flow rate that is judged
   */
  public static void tell(Trace trace, LineModel model, Materials materials, List<State> states) {
    List<State> governingFirst = new ArrayList<>(states);
    governingFirst.sort(
        Comparator.comparing(LineWorking::severity).reversed().thenComparing(LineWorking::margin));
    for (int i = 0; i < model.route().runs().size(); i++) {
      for (State state : governingFirst) {
        run(trace, model, materials, state, state.runs().get(i));
      }
    }
    governingFirst.forEach(state -> heads(trace, model, state));
  }

  private static Severity severity(State state) {
    return state.runs().stream().map(RunPoint::severity).reduce(Severity.NOTE, Severity::or);
  }

  /** To six digits, so that equal states keep their order in any units. */
  private static double margin(State state) {
    return Math.rint(1e6 * state.runs().stream().mapToDouble(RunPoint::margin).min().orElseThrow());
  }

  private static void run(
      Trace trace, LineModel model, Materials materials, State state, RunPoint run) {
    String name = run.run().name();
    String when = state.flowCase().words() + " flow rate";
    trace.begin(name + ": flow", when);
    flow(trace, materials, state, run);
    if (run.deposition().isPresent()) {
      trace.begin(name + ": deposition velocity", when);
      double rho = run.slurry().liquid().densityKgM3();
      MaterialWorking.properties(trace, materials.sandDensityKgM3(), run.slurry().liquid());
      trace.step(RATIO, run.slurry().densityRatio(), materials.sandDensityKgM3(), rho);
      if (run.regime() != ClearLiquid.Regime.LAMINAR) {
        // In laminar flow the correlations decide nothing, and of a thick liquid they make numbers
        // like 1e-14 m/s.
        model
            .rule()
            .judge(run.load(), run.largest(), run.leastVelocityMps(), run.angleRad(), trace);
      }
      if (!run.isNewtonian() || run.regime() != ClearLiquid.Regime.TURBULENT) {
        carriage(trace, run, materials, run.carriage().orElseThrow());
      }
    }
    trace.begin(name + ": head loss", when);
    headLoss(trace, run);
  }

  private static void flow(Trace trace, Materials materials, State state, RunPoint run) {
    double d = run.mean().diameterM();
    double rhoS = materials.sandDensityKgM3();
    double rhoL = materials.carrier().densityKgM3();
    double total = run.sandFraction();
    double c = run.slurry().volumeFraction();
    double rho = run.slurry().liquid().densityKgM3();
    double v = run.velocityMps();
    trace.step(VELOCITY, v, state.flowM3ps(), d);
    trace.step(LEAST_VELOCITY, run.leastVelocityMps(), state.flowM3ps(), run.largest().diameterM());
    trace.step(MIXTURE, run.mixtureDensityKgM3(), total, rhoS, rhoL);
    trace.step(COARSE, c, materials.finesShare(), total);
    double fines =
        trace.step(
            FINES, materials.finesShare() * total / (1 - c), materials.finesShare(), total, c);
    trace.step(LIQUID, rho, fines, rhoS, rhoL);
    new Thomas1965().relativeViscosity(fines, trace);
    Rheology clear = materials.carrier().rheology();
    double thicker = run.relativeViscosity();
    double mu = run.slurry().liquid().viscosityPaS();
    if (run.isNewtonian()) {
      trace.step(
          times("mu", "viscosity of the carrier", Kind.VISCOSITY, "Pa.s", materials),
          mu,
          thicker,
          clear.consistency());
      trace.step(REYNOLDS, run.reynolds(), rho, v, d, mu);
      return;
    }
    Rheology carrier = run.rheology();
    trace.step(
        times("tau_y", "yield stress of the carrier", Kind.STRESS, "Pa", materials),
        carrier.yieldStressPa(),
        thicker,
        clear.yieldStressPa());
    trace.step(
        times("K", "consistency of the carrier [Pa.s^n]", Kind.NUMBER, "Pa.s^n", materials),
        carrier.consistency(),
        thicker,
        clear.consistency());
    double wall = mu * run.wallShearRatePs();
    trace.step(WALL_STRESS.about("in " + run.regime().words() + " flow"), wall, v, d, rho);
    trace.step(
        SHEAR_RATE,
        run.wallShearRatePs(),
        wall,
        carrier.yieldStressPa(),
        carrier.consistency(),
        carrier.index());
    trace.step(WALL_VISCOSITY, mu, wall, run.wallShearRatePs());
    double laminar = trace.step(LAMINAR_STRESS, 8 * rho * v * v / run.reynolds(), v, d);
    trace.step(METZNER_REED, run.reynolds(), rho, v, laminar);
  }

  /** What the fines make of a property of the liquid. */
  private static Equation times(
      String symbol, String meaning, Kind<?> kind, String unit, Materials materials) {
    String clear = symbol + "_0";
    return Equation.of(
        symbol,
        meaning + ", thicker by its fines",
        "mu_r " + clear,
        kind,
        materials.carrier().description(),
        "mu_r",
        clear + " " + unit);
  }

  private static void carriage(
      Trace trace, RunPoint run, Materials materials, SandCarriage carriage) {
    trace.step(TURBULENT_FROM, carriage.turbulentAboveMps(), run.largest().diameterM());
    trace.step(
        NEEDED_YIELD,
        carriage.neededYieldStressPa(),
        carriage.coarsestM(),
        materials.sandDensityKgM3(),
        run.slurry().liquid().densityKgM3());
    trace.step(FLOOR, carriage.floorShare(), carriage.velocityMps());
    if (carriage.slideDemand() > 0) {
      trace.step(SLIDE, carriage.slideDemand(), carriage.bedShare());
    }
  }

  private static void headLoss(Trace trace, RunPoint run) {
    double d = run.mean().diameterM();
    double v = run.velocityMps();
    double rho = run.slurry().liquid().densityKgM3();
    run.tellFriction(trace, CLEAR);
    if (run.isNewtonian()) {
      trace.step(CLEAR.as("i_w"), run.liquidGradient(), run.clearFactor(), v, d);
    } else {
      double wall = run.slurry().liquid().viscosityPaS() * run.wallShearRatePs();
      trace.step(WALL_GRADIENT, run.liquidGradient(), wall, d, rho);
    }
    run.tellGradient(trace);
    trace.step(
        FRICTION,
        run.frictionPa(),
        run.liquidGradient(),
        run.slurryGradient(),
        run.angleRad(),
        rho,
        Measure.LENGTH.si(run.run().length()));
    fittings(trace, run);
  }

  private static void fittings(Trace trace, RunPoint run) {
    Map<FittingKind, Integer> fittings = run.run().fittings();
    if (fittings.isEmpty()) {
      return;
    }
    List<FittingKind> kinds = List.copyOf(fittings.keySet());
    double[] each = new double[kinds.size()];
    for (int i = 0; i < each.length; i++) {
      each[i] = FittingLoss.coefficient(kinds.get(i), run.reynolds(), run.mean());
      trace.step(
          kinds.get(i).equation().as("K" + (i + 1)),
          each[i],
          run.reynolds(),
          run.mean().diameterM());
    }
    trace.sum(
        Equation.of(
            "K",
            "loss coefficient of all fittings",
            IntStream.range(0, each.length)
                .mapToObj(i -> fittings.get(kinds.get(i)) + " K" + (i + 1))
                .collect(Collectors.joining(" + ")),
            Kind.NUMBER,
            DEFINITION,
            IntStream.range(0, each.length).mapToObj(i -> "K" + (i + 1)).toArray(String[]::new)),
        run.fittingCoefficient(),
        each);
    trace.step(
        FITTINGS,
        run.fittingsPa(),
        run.fittingCoefficient(),
        run.mixtureDensityKgM3(),
        run.velocityMps());
  }

  private static void heads(Trace trace, LineModel model, State state) {
    trace.begin("head of the line", state.flowCase().words() + " flow rate");
    List<RunPoint> runs = state.runs();
    RunPoint last = runs.get(runs.size() - 1);
    double[] lost = runs.stream().mapToDouble(r -> r.frictionPa() + r.fittingsPa()).toArray();
    double all =
        trace.sum(
            Equation.sum(
                "dp",
                "pressure lost in all runs, by friction and in fittings",
                Kind.PRESSURE,
                DEFINITION,
                "dp Pa",
                lost.length),
            Arrays.stream(lost).sum(),
            lost);
    double rise = runs.stream().mapToDouble(RunPoint::riseM).sum();
    double losses = runs.stream().mapToDouble(RunPoint::lossM).sum();
    trace.step(LOST_HEAD, losses, all, last.mixtureDensityKgM3());
    trace.step(
        HEAD,
        model.systemHeadM(runs),
        rise,
        Measure.LENGTH.si(model.route().outletHead()),
        Measure.LENGTH.si(model.route().sourceLevel()),
        losses,
        model.systemHeadM(runs) - model.deliveryHeadM(runs),
        last.velocityMps());
  }
}
