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
  private static final String CONTINUITY = "continuity";
  private static final String BALANCE = "balance of mass";
  private static final String THICK = "theory page on the non-Newtonian carrier";
  private static final Equation VELOCITY =
      Equation.of(
          "V",
          "velocity in the mean bore",
          "Q / (pi D^2 / 4)",
          Kind.VELOCITY,
          CONTINUITY,
          "Q m3/s, D m");
  private static final Equation LEAST_VELOCITY =
      Equation.of(
          "V_L",
          "velocity in the largest bore that the standard allows",
          "Q / (pi D_L^2 / 4)",
          Kind.VELOCITY,
          CONTINUITY,
          "Q m3/s, D_L m");
  private static final Equation MIXTURE =
      Equation.of(
          "rho_m",
          "density of the mixture",
          "rho_l + C_t (rho_s - rho_l)",
          Kind.DENSITY,
          BALANCE,
          "C_t, rho_s kg/m3, rho_l kg/m3");
  private static final Equation COARSE =
      Equation.of(
          "C",
          "volume fraction of the sand coarser than the fines",
          "(1 - x_f) C_t",
          Kind.PERCENT,
          BALANCE,
          "x_f, C_t");
  private static final Equation FINES =
      Equation.of(
          "C_f",
          "volume fraction of the fines in their liquid",
          "x_f C_t / (1 - C)",
          Kind.PERCENT,
          BALANCE,
          "x_f, C_t, C");
  private static final Equation LIQUID =
      Equation.of(
          "rho",
          "density of the carrier: liquid with its fines",
          "rho_l + C_f (rho_s - rho_l)",
          Kind.DENSITY,
          BALANCE,
          "C_f, rho_s kg/m3, rho_l kg/m3");
  private static final Equation WALL_STRESS =
      Equation.search(
          "tau_w",
          "stress at the wall",
          "stress at which the carrier flows at this velocity",
          Kind.STRESS,
          THICK,
          "V m/s, D m, rho kg/m3");
  private static final Equation SHEAR_RATE =
      Equation.of(
          "G_w",
          "shear rate at the wall",
          "((tau_w - tau_y)/K)^(1/n)",
          Kind.SHEAR_RATE,
          "rheology of the carrier",
          "tau_w Pa, tau_y Pa, K Pa.s^n, n");
  private static final Equation WALL_VISCOSITY =
      Equation.of(
          "mu",
          "viscosity of the carrier, apparent at the wall",
          "tau_w/G_w",
          Kind.VISCOSITY,
          DEFINITION,
          "tau_w Pa, G_w 1/s");
  private static final Equation LAMINAR_STRESS =
      Equation.search(
          "tau_l",
          "stress at the wall that laminar flow would have",
          "stress at which the carrier flows at this velocity without turbulence",
          Kind.STRESS,
          THICK,
          "V m/s, D m");
  private static final Equation METZNER_REED =
      Equation.of(
          "Re",
          "Reynolds number of Metzner and Reed",
          "8 rho V^2 / tau_l",
          Kind.NUMBER,
          "Metzner and Reed (1955), AIChE Journal 1:434",
          "rho kg/m3, V m/s, tau_l Pa");
  private static final Equation REYNOLDS =
      Equation.of(
          "Re",
          "Reynolds number",
          "rho V D / mu",
          Kind.NUMBER,
          DEFINITION,
          "rho kg/m3, V m/s, D m, mu Pa.s");
  private static final Equation RATIO =
      Equation.of(
          "s", "relative density", "rho_s/rho", Kind.NUMBER, DEFINITION, "rho_s kg/m3, rho kg/m3");
  private static final Equation TURBULENT_FROM =
      Equation.search(
          "V_t",
          "velocity from which the carrier is surely turbulent",
          "largest of Reynolds number 4000 scaled to Ryan and Johnson, the intersection with"
              + " turbulent flow, and Slatter and Wasp where it applies",
          Kind.VELOCITY,
          THICK,
          "D m");
  private static final Equation NEEDED_YIELD =
      Equation.of(
          "tau_need",
          "yield stress that surely holds the coarsest grain, all but 1 % of the sand or the"
              + " tolerated share finer",
          "0.2 g d (rho_s - rho)",
          Kind.STRESS,
          "stability constant 0.04 to 0.2 in experiments; Beris and others (1985), Journal of Fluid"
              + " Mechanics 158:219 for the theory, 0.048",
          "d m, rho_s kg/m3, rho kg/m3");
  private static final Equation FLOOR =
      Equation.search(
          "x_floor",
          "share of the sand that reaches the floor before the outlet without turbulence",
          "fall of each size class through the sheared part of the flow, run after run",
          Kind.PERCENT,
          THICK,
          "V m/s");
  private static final Equation SLIDE =
      Equation.search(
          "x_slide",
          "pressure gradient that slides the bed, over the one there is",
          "worst of all beds up to the one that forms: the larger of the balance of forces and"
              + " 2 kPa/m max(1, d85 / 1 mm)",
          Kind.NUMBER,
          "Wilson 1970; rule of thumb from memory, unverified",
          "A_bed");
  private static final Equation CLEAR =
      Equation.of(
          "i_f",
          "gradient of a Newtonian carrier of this viscosity, metres of carrier per metre",
          "f V^2 / (2 g D)",
          Kind.NUMBER,
          "Darcy and Weisbach",
          "f, V m/s, D m");
  private static final Equation WALL_GRADIENT =
      Equation.of(
          "i_w",
          "gradient of the carrier alone, metres of carrier per metre",
          "4 tau_w / (D rho g)",
          Kind.NUMBER,
          "balance of forces",
          "tau_w Pa, D m, rho kg/m3");
  private static final Equation FRICTION =
      Equation.of(
          "dp_f",
          "pressure lost by friction",
          "(i_w + (i_u - i_w) cos(theta)) rho g L",
          Kind.PRESSURE,
          "slope by Worster and Denny (1955)",
          "i_w, i_u, theta, rho kg/m3, L m");
  private static final Equation FITTINGS =
      Equation.of(
          "dp_K",
          "pressure lost in fittings",
          "K rho_m V^2 / 2",
          Kind.PRESSURE,
          DEFINITION,
          "K, rho_m kg/m3, V m/s");
  private static final Equation LOST_HEAD =
      Equation.of(
          "h_f",
          "head lost along the line, metres of mixture",
          "dp / (rho_m g)",
          Kind.HEAD,
          DEFINITION,
          "dp Pa, rho_m kg/m3");
  private static final Equation HEAD =
      Equation.of(
          "H",
          "total dynamic head of the line, metres of mixture",
          "z_rise + h_outlet - z_source + h_f + h_suction + V_out^2 / (2 g)",
          Kind.HEAD,
          "energy equation",
          "z_rise m, h_outlet m, z_source m, h_f m, h_suction m, V_out m/s");

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
