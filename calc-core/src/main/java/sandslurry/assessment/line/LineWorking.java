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
   * @param materials its liquid, sand and mixture
   * @param states the line at each flow rate that is judged
   */
  public static void steps(Trace trace, LineModel model, Materials materials, List<State> states) {
    Sheet sheet = Sheet.of(LineWorking.class, trace);
    List<State> governingFirst = new ArrayList<>(states);
    governingFirst.sort(
        Comparator.comparing(LineWorking::severity).reversed().thenComparing(LineWorking::margin));
    for (int i = 0; i < model.route().runs().size(); i++) {
      for (State state : governingFirst) {
        run(sheet, model, materials, state, state.runs().get(i));
      }
    }
    governingFirst.forEach(state -> heads(sheet, model, state));
  }

  private static Severity severity(State state) {
    return state.runs().stream().map(RunPoint::severity).reduce(Severity.NOTE, Severity::or);
  }

  /** To six digits, so that equal states keep their order in any units. */
  private static double margin(State state) {
    return Math.rint(1e6 * state.runs().stream().mapToDouble(RunPoint::margin).min().orElseThrow());
  }

  private static void run(
      Sheet sheet, LineModel model, Materials materials, State state, RunPoint run) {
    String name = run.run().name();
    String when = state.flowCase().words() + " flow rate";
    sheet.begin(name + ": flow", when);
    flow(sheet, materials, state, run);
    if (run.deposition().isPresent()) {
      sheet.begin(name + ": deposition velocity", when);
      double rho = run.slurry().liquid().densityKgM3();
      MaterialWorking.properties(sheet.trace(), materials.sandDensityKgM3(), run.slurry().liquid());
      sheet.step("ratio", run.slurry().densityRatio(), materials.sandDensityKgM3(), rho);
      if (run.regime() != ClearLiquid.Regime.LAMINAR) {
        // In laminar flow the correlations decide nothing, and of a thick liquid they make numbers
        // like 1e-14 m/s.
        model
            .rule()
            .judge(
                run.load(), run.largest(), run.leastVelocityMps(), run.angleRad(), sheet.trace());
      }
      if (!run.isNewtonian() || run.regime() != ClearLiquid.Regime.TURBULENT) {
        carriage(sheet, run, materials, run.carriage().orElseThrow());
      }
    }
    sheet.begin(name + ": head loss", when);
    headLoss(sheet, run);
  }

  private static void flow(Sheet sheet, Materials materials, State state, RunPoint run) {
    double d = run.mean().diameterM();
    double rhoS = materials.sandDensityKgM3();
    double rhoL = materials.carrier().densityKgM3();
    double total = run.sandFraction();
    double c = run.slurry().volumeFraction();
    double rho = run.slurry().liquid().densityKgM3();
    double v = run.velocityMps();
    sheet.step("velocity", v, state.flowM3ps(), d);
    sheet.step(
        "least-velocity", run.leastVelocityMps(), state.flowM3ps(), run.largest().diameterM());
    sheet.step("mixture", run.mixtureDensityKgM3(), total, rhoS, rhoL);
    sheet.step("coarse", c, materials.finesShare(), total);
    double fines =
        sheet.step(
            "fines", materials.finesShare() * total / (1 - c), materials.finesShare(), total, c);
    sheet.step("liquid", rho, fines, rhoS, rhoL);
    new Thomas1965().relativeViscosity(fines, sheet.trace());
    Rheology clear = materials.carrier().rheology();
    double thicker = run.relativeViscosity();
    Sheet thickened = sheet.by(materials.carrier().description());
    double mu = run.slurry().liquid().viscosityPaS();
    if (run.isNewtonian()) {
      thickened.step("viscosity", mu, thicker, clear.consistency());
      sheet.step("reynolds", run.reynolds(), rho, v, d, mu);
      return;
    }
    Rheology carrier = run.rheology();
    thickened.step("yield", carrier.yieldStressPa(), thicker, clear.yieldStressPa());
    thickened.step("consistency", carrier.consistency(), thicker, clear.consistency());
    double wall = mu * run.wallShearRatePs();
    sheet.step(
        sheet.equations().of("wall-stress").about("in " + run.regime().words() + " flow"),
        wall,
        v,
        d,
        rho);
    sheet.step(
        "shear-rate",
        run.wallShearRatePs(),
        wall,
        carrier.yieldStressPa(),
        carrier.consistency(),
        carrier.index());
    sheet.step("wall-viscosity", mu, wall, run.wallShearRatePs());
    double laminar = sheet.step("laminar-stress", 8 * rho * v * v / run.reynolds(), v, d);
    sheet.step("metzner-reed", run.reynolds(), rho, v, laminar);
  }

  private static void carriage(
      Sheet sheet, RunPoint run, Materials materials, SandCarriage carriage) {
    sheet.step("turbulent-from", carriage.turbulentAboveMps(), run.largest().diameterM());
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
    double d = run.mean().diameterM();
    double v = run.velocityMps();
    double rho = run.slurry().liquid().densityKgM3();
    Equation clear = sheet.equations().of("clear");
    run.frictionSteps(sheet.trace(), clear);
    if (run.isNewtonian()) {
      sheet.step(clear.as("i_w"), run.liquidGradient(), run.clearFactor(), v, d);
    } else {
      double wall = run.slurry().liquid().viscosityPaS() * run.wallShearRatePs();
      sheet.step("wall-gradient", run.liquidGradient(), wall, d, rho);
    }
    run.gradientSteps(sheet.trace());
    sheet.step(
        "friction",
        run.frictionPa(),
        run.liquidGradient(),
        run.slurryGradient(),
        run.angleRad(),
        rho,
        run.run().lengthM());
    fittings(sheet, run);
  }

  private static void fittings(Sheet sheet, RunPoint run) {
    Map<FittingKind, Integer> fittings = run.run().fittings();
    if (fittings.isEmpty()) {
      return;
    }
    List<FittingKind> kinds = List.copyOf(fittings.keySet());
    double[] each = new double[kinds.size()];
    for (int i = 0; i < each.length; i++) {
      each[i] = FittingLoss.coefficient(kinds.get(i), run.reynolds(), run.mean());
      sheet.step(
          kinds.get(i).equation().as("K" + (i + 1)),
          each[i],
          run.reynolds(),
          run.mean().diameterM());
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
        run.fittingCoefficient(),
        each);
    sheet.step(
        "fittings",
        run.fittingsPa(),
        run.fittingCoefficient(),
        run.mixtureDensityKgM3(),
        run.velocityMps());
  }

  private static void heads(Sheet sheet, LineModel model, State state) {
    sheet.begin("head of the line", state.flowCase().words() + " flow rate");
    List<RunPoint> runs = state.runs();
    RunPoint last = runs.get(runs.size() - 1);
    double[] lost = runs.stream().mapToDouble(r -> r.frictionPa() + r.fittingsPa()).toArray();
    double all =
        sheet.step(
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
    sheet.step("lost-head", losses, all, last.mixtureDensityKgM3());
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
