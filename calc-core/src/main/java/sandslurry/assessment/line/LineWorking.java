package sandslurry.assessment.line;

import static sandslurry.fact.step.Equation.DEFINITION;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import sandslurry.assessment.line.LineEvaluation.State;
import sandslurry.assessment.materials.MaterialWorking;
import sandslurry.assessment.materials.Materials;
import sandslurry.fact.finding.Severity;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Sheet;
import sandslurry.fact.step.Trace;
import sandslurry.material.Thomas1965;
import sandslurry.material.liquid.Rheology;
import sandslurry.pipe.fittings.FittingKind;
import sandslurry.pipe.fittings.FittingLoss;
import sandslurry.transport.bed.SandCarriage;
import sandslurry.transport.friction.ClearLiquid;
import sandslurry.units.Kind;

/** The working behind the line: every number of every run at every flow rate judged. */
public final class LineWorking {

  private LineWorking() {}

  /**
   * Keeps the steps of every run at every flow rate that is judged.
   *
   * @param trace what keeps the steps
   * @param model the physics of its line
   * @param states the line at each flow rate that is judged
   */
  public static void steps(Trace trace, LineModel model, List<State> states) {
    Sheet sheet = Sheet.of(LineWorking.class, trace);
    List<State> governingFirst = new ArrayList<>(states);
    governingFirst.sort(closest(state -> state.runs().stream()));
    for (int run : governingFirst(states, model.route().runs().size())) {
      for (State state : governingFirst) {
        run(sheet, model, state, state.runs().get(run));
      }
    }
    governingFirst.forEach(state -> heads(sheet, model, state));
  }

  /** The runs, the closest to settling first. */
  private static List<Integer> governingFirst(List<State> states, int runs) {
    return IntStream.range(0, runs)
        .boxed()
        .sorted(closest(run -> states.stream().map(state -> state.runs().get(run))))
        .toList();
  }

  /** The worst verdict first, then the least margin. */
  private static <T> Comparator<T> closest(Function<T, Stream<RunPoint>> points) {
    Comparator<T> worst =
        Comparator.comparing(
            one -> points.apply(one).map(RunPoint::severity).reduce(Severity.NOTE, Severity::or));
    // To six digits, so that equal ones keep their order in any units.
    return worst
        .reversed()
        .thenComparing(
            one ->
                Math.rint(1e6 * points.apply(one).mapToDouble(RunPoint::margin).min().orElse(0)));
  }

  private static void run(Sheet sheet, LineModel model, State state, RunPoint run) {
    String name = run.pipe().spec().name();
    String when = state.flowCase().words() + " flow rate";
    sheet.begin(name + ": flow", when);
    flow(sheet, model.materials(), state, run);
    if (run.deposition().isPresent()) {
      sheet.begin(name + ": deposition velocity", when);
      double rho = run.slurry().liquid().densityKgM3();
      MaterialWorking.properties(
          sheet.trace(), model.materials().sandDensityKgM3(), run.slurry().liquid());
      sheet.step("ratio", run.slurry().densityRatio(), model.materials().sandDensityKgM3(), rho);
      if (run.regime() != ClearLiquid.Regime.LAMINAR) {
        // In laminar flow the correlations decide nothing, and of a thick liquid they make numbers
        // like 1e-14 m/s.
        model
            .rule()
            .judge(
                run.load(),
                run.pipe().largest(),
                run.leastVelocityMps(),
                run.pipe().angleRad(),
                sheet.trace());
      }
      if (!run.mixture().rheology().isNewtonian() || run.regime() != ClearLiquid.Regime.TURBULENT) {
        carriage(sheet, run, model.materials(), run.carriage().orElseThrow());
      }
    }
    sheet.begin(name + ": head loss", when);
    headLoss(sheet, run);
  }

  private static void flow(Sheet sheet, Materials materials, State state, RunPoint run) {
    double d = run.pipe().mean().diameterM();
    double rhoS = materials.sandDensityKgM3();
    double rhoL = materials.carrier().densityKgM3();
    double total = run.mixture().sandFraction();
    double c = run.slurry().volumeFraction();
    double rho = run.slurry().liquid().densityKgM3();
    double v = run.velocityMps();
    sheet.step("velocity", v, state.flowM3ps(), d);
    sheet.step(
        "least-velocity",
        run.leastVelocityMps(),
        state.flowM3ps(),
        run.pipe().largest().diameterM());
    sheet.step("mixture", run.mixture().densityKgM3(), total, rhoS, rhoL);
    sheet.step("coarse", c, materials.finesShare(), total);
    double fines =
        sheet.step(
            "fines", materials.finesShare() * total / (1 - c), materials.finesShare(), total, c);
    sheet.step("liquid", rho, fines, rhoS, rhoL);
    new Thomas1965().relativeViscosity(fines, sheet.trace());
    Rheology clear = materials.carrier().rheology();
    double thicker = run.mixture().relativeViscosity();
    Sheet thickened = sheet.by(materials.carrier().description());
    double mu = run.slurry().liquid().viscosityPaS();
    if (run.mixture().rheology().isNewtonian()) {
      thickened.step("viscosity", mu, thicker, clear.consistency());
      sheet.step("reynolds", run.flow().reynolds(), rho, v, d, mu);
      return;
    }
    Rheology carrier = run.mixture().rheology();
    thickened.step("yield", carrier.yieldStressPa(), thicker, clear.yieldStressPa());
    thickened.step("consistency", carrier.consistency(), thicker, clear.consistency());
    double wall = mu * run.flow().wallShearRatePs();
    sheet.step(
        sheet.equations().of("wall-stress").about("in " + run.regime().words() + " flow"),
        wall,
        v,
        d,
        rho);
    sheet.step(
        "shear-rate",
        run.flow().wallShearRatePs(),
        wall,
        carrier.yieldStressPa(),
        carrier.consistency(),
        carrier.index());
    sheet.step("wall-viscosity", mu, wall, run.flow().wallShearRatePs());
    double laminar = sheet.step("laminar-stress", 8 * rho * v * v / run.flow().reynolds(), v, d);
    sheet.step("metzner-reed", run.flow().reynolds(), rho, v, laminar);
  }

  private static void carriage(
      Sheet sheet, RunPoint run, Materials materials, SandCarriage carriage) {
    sheet.step("turbulent-from", carriage.turbulentAboveMps(), run.pipe().largest().diameterM());
    sheet.step(
        "needed-yield",
        carriage.neededYieldStressPa(),
        carriage.coarsestM(),
        materials.sandDensityKgM3(),
        run.slurry().liquid().densityKgM3());
    sheet.step("floor", carriage.floorShare(), carriage.velocityMps());
    if (carriage.slideDemand() > 0) {
      sheet.step("slide", carriage.slideDemand(), carriage.bedShare());
    }
  }

  private static void headLoss(Sheet sheet, RunPoint run) {
    double d = run.pipe().mean().diameterM();
    double v = run.velocityMps();
    double rho = run.slurry().liquid().densityKgM3();
    Equation clear = sheet.equations().of("clear");
    run.frictionSteps(sheet.trace(), clear);
    if (run.mixture().rheology().isNewtonian()) {
      sheet.step(clear.as("i_w"), run.flow().gradient(), run.clearFactor(), v, d);
    } else {
      double wall = run.slurry().liquid().viscosityPaS() * run.flow().wallShearRatePs();
      sheet.step("wall-gradient", run.flow().gradient(), wall, d, rho);
    }
    run.gradientSteps(sheet.trace());
    sheet.step(
        "friction",
        run.friction().pa(),
        run.flow().gradient(),
        run.friction().slurryGradient(),
        run.pipe().angleRad(),
        rho,
        run.pipe().spec().lengthM());
    fittings(sheet, run);
  }

  private static void fittings(Sheet sheet, RunPoint run) {
    Map<FittingKind, Integer> fittings = run.pipe().spec().fittings();
    if (fittings.isEmpty()) {
      return;
    }
    List<FittingKind> kinds = List.copyOf(fittings.keySet());
    double[] each = new double[kinds.size()];
    for (int i = 0; i < each.length; i++) {
      each[i] = FittingLoss.coefficient(kinds.get(i), run.flow().reynolds(), run.pipe().mean());
      sheet.step(
          kinds.get(i).equation().as("K" + (i + 1)),
          each[i],
          run.flow().reynolds(),
          run.pipe().mean().diameterM());
    }
    sheet.step(
        Equation.of(
            "K",
            "loss coefficient of all fittings",
            IntStream.range(0, each.length)
                .mapToObj(i -> fittings.get(kinds.get(i)) + " K" + (i + 1))
                .collect(Collectors.joining(" + ")),
            Kind.NUMBER,
            DEFINITION,
            IntStream.range(0, each.length).mapToObj(i -> "K" + (i + 1)).toArray(String[]::new)),
        run.friction().fittingCoefficient(),
        each);
    sheet.step(
        "fittings",
        run.friction().fittingsPa(),
        run.friction().fittingCoefficient(),
        run.mixture().densityKgM3(),
        run.velocityMps());
  }

  private static void heads(Sheet sheet, LineModel model, State state) {
    sheet.begin("head of the line", state.flowCase().words() + " flow rate");
    List<RunPoint> runs = state.runs();
    RunPoint last = runs.get(runs.size() - 1);
    double[] lost =
        runs.stream().mapToDouble(r -> r.friction().pa() + r.friction().fittingsPa()).toArray();
    double all =
        sheet.step(
            Equation.sum(
                "dp",
                "pressure lost in all runs, by friction and in fittings",
                DEFINITION,
                "dp Pa",
                lost.length),
            Arrays.stream(lost).sum(),
            lost);
    double rise = runs.stream().mapToDouble(it -> it.pipe().spec().riseM()).sum();
    double losses = runs.stream().mapToDouble(RunPoint::lossM).sum();
    sheet.step("lost-head", losses, all, last.mixture().densityKgM3());
    sheet.step(
        "head",
        model.systemHeadM(runs),
        rise,
        model.route().outletHeadM(),
        model.route().sourceLevelM(),
        losses,
        model.systemHeadM(runs) - model.deliveryHeadM(runs),
        last.velocityMps());
  }
}
