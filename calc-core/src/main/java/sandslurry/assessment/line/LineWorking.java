package sandslurry.assessment.line;

import static sandslurry.fact.step.Working.DEFINITION;
import static sandslurry.fact.step.Working.in;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import sandslurry.assessment.line.LineEvaluation.State;
import sandslurry.assessment.materials.Materials;
import sandslurry.assessment.materials.ModelValue;
import sandslurry.correlation.Physics;
import sandslurry.fact.step.Step;
import sandslurry.fact.step.Working;
import sandslurry.material.Slurry;
import sandslurry.pipe.fittings.FittingKind;
import sandslurry.pipe.fittings.FittingLoss;
import sandslurry.settling.SettlingVelocities;
import sandslurry.transport.bed.SandCarriage;
import sandslurry.transport.deposition.DepositionJudgement;
import sandslurry.transport.deposition.DepositionJudgement.Entry;
import sandslurry.transport.friction.ClearLiquid;
import sandslurry.transport.friction.PipeFriction;
import sandslurry.units.Kind;
import sandslurry.units.Measure;
import sandslurry.units.UnitSystem;

/** The working behind the line: every number of every run at every flow judged. */
public final class LineWorking {
  private static final String CONTINUITY = "continuity";
  private static final String BALANCE = "balance of mass";

  private LineWorking() {}

  public static List<Step> steps(LineModel model, Materials materials, List<State> states) {
    List<Step> steps = new ArrayList<>();
    for (State state : states) {
      for (RunPoint run : state.runs()) {
        steps.addAll(run(model, materials, state, run));
      }
      steps.addAll(heads(model, state));
    }
    return steps;
  }

  private static List<Step> run(LineModel model, Materials materials, State state, RunPoint run) {
    Working w = new Working(run.run().name() + " at the " + state.flowCase().words() + " flow");
    flow(w, materials, state, run);
    if (run.deposition().isPresent()) {
      grain(w, run.slurry());
      if (run.regime() != ClearLiquid.Regime.LAMINAR) {
        // In laminar flow the correlations decide nothing, and of a thick liquid they make numbers
        // like 1e-14 m/s.
        deposition(w, model, run, run.deposition().get());
      }
      carriage(w, run.carriage().orElseThrow());
    }
    headLoss(w, run);
    return w.steps();
  }

  private static void flow(Working w, Materials materials, State state, RunPoint run) {
    double d = run.mean().diameterM();
    double rhoS = materials.sandDensityKgM3();
    double rhoL = materials.carrier().densityKgM3();
    double c = run.sandFraction();
    Slurry slurry = run.slurry();
    w.step(
        "V",
        "mean velocity in the mean bore",
        "V = Q / (pi D^2 / 4)",
        Kind.VELOCITY,
        run.velocityMps(),
        CONTINUITY,
        in("Q", Kind.FLOW, state.flowM3ps()),
        in("D", Kind.BORE, d));
    w.step(
        "V_L",
        "velocity in the largest bore the standard allows",
        "V_L = Q / (pi D_L^2 / 4)",
        Kind.VELOCITY,
        run.leastVelocityMps(),
        CONTINUITY,
        in("Q", Kind.FLOW, state.flowM3ps()),
        in("D_L", Kind.BORE, run.largest().diameterM()));
    w.step(
        "rho_m",
        "density of the mixture",
        "rho_m = rho_l + C_t (rho_s - rho_l)",
        Kind.DENSITY,
        run.mixtureDensityKgM3(),
        BALANCE,
        in("C_t", Kind.NUMBER, c),
        in("rho_s", Kind.DENSITY, rhoS),
        in("rho_l", Kind.DENSITY, rhoL));
    w.step(
        "C",
        "volume fraction of the sand coarser than the fines",
        "C = (1 - x_f) C_t",
        Kind.PERCENT,
        slurry.volumeFraction(),
        BALANCE,
        in("x_f", Kind.NUMBER, materials.finesShare()),
        in("C_t", Kind.NUMBER, c));
    double fines = materials.finesShare() * c / (1 - slurry.volumeFraction());
    w.step(
        "rho",
        "density of the carrier with its fines",
        "rho = rho_l + C_f (rho_s - rho_l), C_f = x_f C_t / (1 - C)",
        Kind.DENSITY,
        slurry.liquid().densityKgM3(),
        BALANCE,
        in("C_f", Kind.NUMBER, fines),
        in("rho_s", Kind.DENSITY, rhoS),
        in("rho_l", Kind.DENSITY, rhoL));
    w.step(
        "gamma_w",
        "shear rate at the wall",
        run.isNewtonian()
            ? "gamma_w = tau_w / mu, tau_w = rho g i_w D / 4"
            : "rheology at tau_w: gamma_w = ((tau_w - tau_y) / K)^(1/n)",
        Kind.SHEAR_RATE,
        run.wallShearRatePs(),
        run.rheology().describe(UnitSystem.METRIC),
        in(
            "tau_w",
            Kind.STRESS,
            slurry.liquid().densityKgM3() * Physics.GRAVITY * run.liquidGradient() * d / 4));
    w.step(
        "mu",
        "viscosity of the carrier with its fines, apparent at the wall",
        "mu = tau_w / gamma_w; the fines multiply every stress by their relative viscosity",
        Kind.VISCOSITY,
        slurry.liquid().viscosityPaS(),
        materials.carrier().description()
            + "; fines by Thomas (1965), Journal of Colloid Science"
            + " 20:267",
        in("gamma_w", Kind.SHEAR_RATE, run.wallShearRatePs()),
        in("relative viscosity at C_f", Kind.NUMBER, run.relativeViscosity()));
    if (run.isNewtonian()) {
      w.step(
          "Re",
          "Reynolds number",
          "Re = rho V D / mu",
          Kind.NUMBER,
          run.reynolds(),
          DEFINITION,
          in("rho", Kind.DENSITY, slurry.liquid().densityKgM3()),
          in("V", Kind.VELOCITY, run.velocityMps()),
          in("D", Kind.BORE, d),
          in("mu", Kind.VISCOSITY, slurry.liquid().viscosityPaS()));
    } else {
      w.step(
          "Re",
          "Reynolds number of Metzner and Reed",
          "Re = 8 rho V^2 / tau_laminar, tau_laminar the wall stress of laminar flow at V",
          Kind.NUMBER,
          run.reynolds(),
          "Metzner and Reed (1955), AIChE Journal 1:434",
          in("rho", Kind.DENSITY, slurry.liquid().densityKgM3()),
          in("V", Kind.VELOCITY, run.velocityMps()),
          in(
              "tau_laminar",
              Kind.STRESS,
              8
                  * slurry.liquid().densityKgM3()
                  * run.velocityMps()
                  * run.velocityMps()
                  / run.reynolds()));
    }
  }

  private static void grain(Working w, Slurry slurry) {
    double velocity =
        SettlingVelocities.DEFAULT.velocityMps(slurry.d50Grain(), slurry.liquid()).value();
    double nu = slurry.liquid().kinematicViscosityM2ps();
    w.step(
        "s",
        "relative density",
        "s = rho_s / rho",
        Kind.NUMBER,
        slurry.densityRatio(),
        DEFINITION,
        in("rho_s", Kind.DENSITY, slurry.sandDensityKgM3()),
        in("rho", Kind.DENSITY, slurry.liquid().densityKgM3()));
    w.step(
        "nu",
        "kinematic viscosity",
        "nu = mu / rho",
        Kind.KINEMATIC_VISCOSITY,
        nu,
        DEFINITION,
        in("mu", Kind.VISCOSITY, slurry.liquid().viscosityPaS()),
        in("rho", Kind.DENSITY, slurry.liquid().densityKgM3()));
    w.step(
        "w",
        "settling velocity of a grain of d50",
        SettlingVelocities.DEFAULT,
        Kind.FALL,
        velocity,
        in("d", Kind.GRAIN, slurry.d50M()),
        in("R = s - 1", Kind.NUMBER, slurry.densityRatio() - 1),
        in("nu", Kind.KINEMATIC_VISCOSITY, nu));
    w.step(
        "Re_p",
        "Reynolds number of that grain",
        "Re_p = w d / nu",
        Kind.NUMBER,
        SettlingVelocities.reynoldsNumber(slurry.d50Grain(), slurry.liquid()),
        DEFINITION,
        in("w", Kind.FALL, velocity),
        in("d", Kind.GRAIN, slurry.d50M()),
        in("nu", Kind.KINEMATIC_VISCOSITY, nu));
    w.step(
        "C_D",
        "drag coefficient of that grain",
        "C_D = 4 g d (s - 1) / (3 w^2)",
        Kind.NUMBER,
        SettlingVelocities.dragCoefficient(slurry.d50Grain(), slurry.liquid()),
        DEFINITION,
        in("d", Kind.GRAIN, slurry.d50M()),
        in("s", Kind.NUMBER, slurry.densityRatio()),
        in("w", Kind.FALL, velocity));
  }

  private static void deposition(
      Working w, LineModel model, RunPoint run, DepositionJudgement judged) {
    Slurry slurry = run.slurry();
    for (Entry entry : model.rule().compare(run.load(), run.largest())) {
      w.step(
          "V_D",
          "deposition velocity ("
              + entry.role().name().toLowerCase(java.util.Locale.ROOT)
              + (entry.estimate().inRange() ? "" : ", out of range")
              + ")",
          entry.model(),
          Kind.VELOCITY,
          entry.valueMps(),
          in("d", Kind.GRAIN, entry.sizeM()),
          in("D", Kind.BORE, run.largest().diameterM()),
          in("C", Kind.NUMBER, entry.fraction()),
          in("s", Kind.NUMBER, slurry.densityRatio()),
          in("nu", Kind.KINEMATIC_VISCOSITY, slurry.liquid().kinematicViscosityM2ps()));
    }
    w.step(
        "V_0",
        "deposition velocity of the level pipe by the rule ("
            + judged.limiting().model().name()
            + ")",
        "V_0 = max{Thomas, Oroskar-Turian, min[V_max, max(V_r V_max, sewer relations)]}, largest"
            + " over the sizes",
        Kind.VELOCITY,
        judged.limiting().valueMps(),
        "theory page on the deposition velocity",
        in("d", Kind.GRAIN, judged.limiting().sizeM()),
        in("C_d", Kind.NUMBER, judged.limiting().fraction()),
        in("C_high", Kind.NUMBER, judged.highestFraction()));
    w.step(
        "V_lim",
        "deposition velocity on this slope",
        "V_lim = max(b (V_0 + Delta min(sqrt(2 g D (s - 1)), V_0/0.75)), w sin(theta))",
        Kind.VELOCITY,
        judged.limitMps(),
        "slope by Wilson and Tse (1984); a bed ceases to be possible from 60 to 75 degrees",
        in("V_0", Kind.VELOCITY, judged.limiting().valueMps()),
        in("what the slope adds", Kind.VELOCITY, judged.slopeMps()),
        in("w sin(theta)", Kind.VELOCITY, judged.riserMps()));
    w.step(
        "V_req",
        "required velocity",
        "V_req = min(max((1 + m + e) V_lim,usual, (1 + min(m, 0.15) + e) V_lim, V_lim + dV), max((1"
            + " + min(m, 0.15) + e) V_slug, V_slug + dV)); in a riser 2 w sin(theta) or more",
        Kind.VELOCITY,
        judged.requiredMps(),
        "criteria of the design",
        in("V_lim", Kind.VELOCITY, judged.limitMps()),
        in("V_slug", Kind.VELOCITY, judged.slugMps()),
        in("m", Kind.NUMBER, model.rule().marginFraction()),
        in("e", Kind.NUMBER, judged.widening()),
        in("dV", Kind.VELOCITY, model.rule().marginMps()));
  }

  private static void carriage(Working w, SandCarriage carriage) {
    w.step(
        "V_t",
        "velocity from which the carrier is turbulent by every criterion",
        "largest of Re = 4000 scaled to Ryan and Johnson, the intersection with turbulent flow, and"
            + " Slatter and Wasp where it applies",
        Kind.VELOCITY,
        carriage.turbulentAboveMps(),
        "theory page on the non-Newtonian carrier");
    w.step(
        "tau_need",
        "yield stress that surely holds the coarse grain at rest",
        "tau_need = 0.2 g d (rho_s - rho), d the size that all but 1 % (or the tolerated share, if"
            + " less) passes",
        Kind.STRESS,
        carriage.neededYieldStressPa(),
        "stability constant 0.04 to 0.2 in experiments; Beris and others (1985), Journal of Fluid"
            + " Mechanics 158:219 for the theory, 0.048",
        in("d", Kind.GRAIN, carriage.coarsestM()),
        in("tau_y", Kind.STRESS, carriage.yieldStressPa()));
    w.step(
        "x_floor",
        "share of the sand that reaches the floor before the outlet without turbulence",
        "sum over the classes of their mass times min(s, 1 - P + P s_core); s = (2/pi) [k sqrt(1 -"
            + " k^2) + arcsin k], k = w L / (V D), run after run",
        Kind.PERCENT,
        carriage.floorShare(),
        "theory page on the non-Newtonian carrier",
        in("P", Kind.NUMBER, 1 - carriage.outsidePlugShare()));
    if (carriage.slideDemand() > 0) {
      w.step(
          "x_slide",
          "gradient that moves the bed over the gradient there is, the worst of all beds up to the"
              + " one that forms",
          "the larger of the balance of forces and 2 kPa/m max(1, d85 / 1 mm), over 4 tau_w / D_h"
              + " above the bed",
          Kind.NUMBER,
          carriage.slideDemand(),
          "Wilson 1970; rule of thumb from memory, unverified",
          in("bed, share of the section", Kind.PERCENT, carriage.bedShare()));
    }
  }

  private static void headLoss(Working w, RunPoint run) {
    double d = run.mean().diameterM();
    double length = Measure.LENGTH.si(run.run().length());
    double rho = run.slurry().liquid().densityKgM3();
    if (run.isNewtonian()) {
      double factor = PipeFriction.darcyFactor(run.reynolds(), run.mean().roughnessM() / d);
      w.step(
          "f",
          "Darcy friction factor by Churchill",
          PipeFriction.EQUATION,
          Kind.NUMBER,
          factor,
          run.frictionModel(),
          in("Re", Kind.NUMBER, run.reynolds()),
          in("eps/D", Kind.NUMBER, run.mean().roughnessM() / d));
      w.step(
          "i_w",
          "gradient of the carrier alone, metres of carrier per metre",
          "i_w = f V^2 / (2 g D)",
          Kind.NUMBER,
          run.liquidGradient(),
          "Darcy and Weisbach",
          in("f", Kind.NUMBER, factor),
          in("V", Kind.VELOCITY, run.velocityMps()),
          in("D", Kind.BORE, d));
    } else {
      w.step(
          "i_w",
          "gradient of the carrier alone, metres of carrier per metre",
          "i_w = 4 tau_w / (D rho g), tau_w by the rheology ("
              + run.rheology().describe(UnitSystem.METRIC)
              + "), "
              + run.regime().words()
              + " flow",
          Kind.NUMBER,
          run.liquidGradient(),
          run.frictionModel(),
          in("V", Kind.VELOCITY, run.velocityMps()),
          in("D", Kind.BORE, d),
          in("rho", Kind.DENSITY, rho));
    }
    for (ModelValue loss : run.headLosses()) {
      w.step(
          "i_m",
          "gradient with sand, metres of carrier per metre"
              + (loss.estimate().inRange() ? "" : " (out of range)"),
          loss.model(),
          Kind.NUMBER,
          loss.estimate().value(),
          in("i_w", Kind.NUMBER, run.liquidGradient()),
          in("V", Kind.VELOCITY, run.velocityMps()),
          in("D", Kind.BORE, d),
          in("C", Kind.NUMBER, run.slurry().volumeFraction()),
          in("s", Kind.NUMBER, run.slurry().densityRatio()),
          in("d50", Kind.GRAIN, run.slurry().d50M()),
          in("d85", Kind.GRAIN, run.slurry().d85M()));
    }
    if (run.regime() != ClearLiquid.Regime.TURBULENT && run.deposition().isPresent()) {
      w.step(
          "i_m",
          "gradient used: where the flow is not turbulent, not less than that of the carrier"
              + " thickened by its sand",
          "max(i_m, rheology with every stress times the relative viscosity of Thomas (1965) at C)",
          Kind.NUMBER,
          run.slurryGradient(),
          "Thomas (1965); sand that slides on a floor adds to it",
          in("C", Kind.NUMBER, run.slurry().volumeFraction()));
    }
    w.step(
        "dp_f",
        "pressure lost by friction",
        "dp_f = [i_w + (i_m - i_w) cos(theta)] rho g L",
        Kind.PRESSURE,
        run.frictionPa(),
        "slope by Worster and Denny (1955)",
        in("i_w", Kind.NUMBER, run.liquidGradient()),
        in("i_m", Kind.NUMBER, run.slurryGradient()),
        in("cos(theta)", Kind.NUMBER, Math.cos(run.angleRad())),
        in("rho", Kind.DENSITY, rho),
        in("L", Kind.LENGTH, length));
    for (Map.Entry<FittingKind, Integer> fitting : run.run().fittings().entrySet()) {
      w.step(
          "K",
          "loss coefficient of one "
              + fitting.getKey().id()
              + ", of which there are "
              + fitting.getValue(),
          fitting.getKey().equation(),
          Kind.NUMBER,
          FittingLoss.coefficient(fitting.getKey(), run.reynolds(), run.mean()),
          fitting.getKey().citation().toString(),
          in("Re", Kind.NUMBER, run.reynolds()),
          in("D", Kind.BORE, d));
    }
    w.step(
        "dp_K",
        "pressure lost in fittings",
        "dp_K = (sum of K) rho_m V^2 / 2",
        Kind.PRESSURE,
        run.fittingsPa(),
        DEFINITION,
        in("sum of K", Kind.NUMBER, run.fittingCoefficient()),
        in("rho_m", Kind.DENSITY, run.mixtureDensityKgM3()),
        in("V", Kind.VELOCITY, run.velocityMps()));
  }

  private static List<Step> heads(LineModel model, State state) {
    Working w = new Working("line at the " + state.flowCase().words() + " flow");
    List<RunPoint> runs = state.runs();
    RunPoint last = runs.get(runs.size() - 1);
    double rise = runs.stream().mapToDouble(RunPoint::riseM).sum();
    double losses = runs.stream().mapToDouble(RunPoint::lossM).sum();
    double lost = runs.stream().mapToDouble(r -> r.frictionPa() + r.fittingsPa()).sum();
    w.step(
        "h_f",
        "head lost along the line, metres of mixture",
        "h_f = sum of (dp_f + dp_K) / (rho_m g)",
        Kind.HEAD,
        losses,
        DEFINITION,
        in("sum of dp", Kind.PRESSURE, lost),
        in("rho_m", Kind.DENSITY, last.mixtureDensityKgM3()),
        in("g", Kind.NUMBER, Physics.GRAVITY));
    w.step(
        "H",
        "head that the line asks of a pump, metres of mixture",
        "H = z_rise + h_outlet - z_source + h_f + V_out^2 / (2 g)",
        Kind.HEAD,
        model.systemHeadM(runs),
        "energy equation",
        in("z_rise", Kind.LENGTH, rise),
        in("h_outlet", Kind.LENGTH, Measure.LENGTH.si(model.route().outletHead())),
        in("z_source", Kind.LENGTH, Measure.LENGTH.si(model.route().sourceLevel())),
        in("h_f", Kind.HEAD, losses),
        in("V_out", Kind.VELOCITY, last.velocityMps()));
    return w.steps();
  }
}
