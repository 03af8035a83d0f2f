package sandslurry.assessment.station;

import static sandslurry.correlation.Working.in;

import java.util.List;
import sandslurry.assessment.line.LineModel;
import sandslurry.assessment.materials.Materials;
import sandslurry.assessment.materials.ModelValue;
import sandslurry.correlation.Physics;
import sandslurry.correlation.Working;
import sandslurry.design.Design;
import sandslurry.design.station.PumpSpec.PistonSpec;
import sandslurry.design.station.PumpSpec.RotodynamicSpec;
import sandslurry.fact.step.Step;
import sandslurry.material.Slurry;
import sandslurry.pump.derating.HydraulicInstituteViscous;
import sandslurry.pump.rotodynamic.BestPoint;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** The working behind the pump. */
public final class PumpWorking {
  private PumpWorking() {}

  public static List<Step> steps(
      Design design, PumpResult result, LineModel line, Materials materials) {
    Working w = new Working("pump");
    double designFlow = Measure.FLOW.si(design.flow().orElseThrow().design());
    double fraction = materials.sandFraction(designFlow);
    double density = materials.mixtureDensityKgM3(fraction);
    if (design.pump().orElseThrow() instanceof RotodynamicSpec pump) {
      rotodynamic(w, pump, result, line.runs(designFlow, fraction).get(0).slurry());
    } else {
      piston(w, (PistonSpec) design.pump().orElseThrow());
    }
    for (PumpResult.Duty duty : result.duties()) {
      double flow = Measure.FLOW.si(duty.flow());
      double head = Measure.LENGTH.si(duty.head());
      w.step(
          "Q_duty",
          "flow at which pump and line meet (" + duty.meeting().words() + ")",
          "H_pump(Q) = H_line(Q), at the design concentration",
          Kind.FLOW,
          flow,
          "solved by Brent's method",
          in("H", Kind.HEAD, head));
      w.step(
          "P",
          "power at the pump shaft",
          "P = rho_m g Q H / eta",
          Kind.POWER,
          Measure.POWER.si(duty.shaftPower()),
          "definition",
          in("rho_m", Kind.DENSITY, density),
          in("g", Kind.NUMBER, Physics.GRAVITY),
          in("Q", Kind.FLOW, flow),
          in("H", Kind.HEAD, Math.max(head, 0)),
          in("eta", Kind.NUMBER, Measure.FRACTION.si(duty.efficiency())));
      w.step(
          "P_in",
          "power drawn by the drive",
          "P_in = P / eta_drive",
          Kind.POWER,
          Measure.POWER.si(duty.inputPower()),
          "definition",
          in("P", Kind.POWER, Measure.POWER.si(duty.shaftPower())),
          in(
              "eta_drive",
              Kind.NUMBER,
              Measure.POWER.si(duty.shaftPower()) > 0
                  ? Measure.POWER.si(duty.shaftPower()) / Measure.POWER.si(duty.inputPower())
                  : Measure.FRACTION.si(design.pump().orElseThrow().driveEfficiency())));
      duty.sandEnergy()
          .ifPresent(
              energy ->
                  w.step(
                      "e",
                      "energy drawn per mass of sand moved",
                      "e = P_in / (C_t Q rho_s)",
                      Kind.SPECIFIC_ENERGY,
                      Measure.SPECIFIC_ENERGY.si(energy),
                      "definition",
                      in("P_in", Kind.POWER, Measure.POWER.si(duty.inputPower())),
                      in("C_t", Kind.NUMBER, fraction),
                      in("Q", Kind.FLOW, flow),
                      in("rho_s", Kind.DENSITY, materials.sandDensityKgM3())));
    }
    return w.steps();
  }

  private static void rotodynamic(
      Working w, RotodynamicSpec pump, PumpResult result, Slurry slurry) {
    double curveSpeed = Measure.FREQUENCY.si(pump.first().curveSpeed());
    double speed = Measure.FREQUENCY.si(pump.first().speed());
    w.step(
        "r",
        "speed ratio",
        "r = N / N_curve; H'(Q) = r^2 H(Q/r), eta'(Q) = eta(Q/r)",
        Kind.NUMBER,
        speed / curveSpeed,
        "affinity laws",
        in("N", Kind.FREQUENCY, speed),
        in("N_curve", Kind.FREQUENCY, curveSpeed));
    double massFraction =
        slurry.volumeFraction() * slurry.sandDensityKgM3() / slurry.mixtureDensityKgM3();
    for (ModelValue derating : result.deratings()) {
      w.step(
          "HR",
          "head with solids over head without"
              + (derating.estimate().inRange() ? "" : " (out of range)"),
          derating.model(),
          Kind.NUMBER,
          derating.estimate().value(),
          in("s", Kind.NUMBER, slurry.densityRatio()),
          in("C_w", Kind.NUMBER, massFraction),
          in("C", Kind.NUMBER, slurry.volumeFraction()),
          in("d50", Kind.GRAIN, slurry.d50M()));
    }
    w.step(
        "HR",
        "head ratio used: the least of Cave and, when the impeller is known, Engin and Gur",
        "HR = min",
        Kind.NUMBER,
        Measure.FRACTION.si(result.headRatio()),
        "rule of the theory page on pumps");
    w.step(
        "ER",
        "efficiency ratio used",
        "by the same method",
        Kind.NUMBER,
        Measure.FRACTION.si(result.efficiencyRatio()),
        "rule of the theory page on pumps");
    if (result.viscous().stream().anyMatch(v -> !v.correction().none())) {
      viscous(w, result, slurry);
    }
  }

  private static void viscous(Working w, PumpResult result, Slurry slurry) {
    for (PumpResult.Viscous viscous : result.viscous()) {
      w.step(
          "mu",
          "viscosity of the liquid in the pump, "
              + viscous.which().words()
              + (viscous.believed() ? ", used" : ""),
          viscous.which().equation(),
          Kind.VISCOSITY,
          viscous.viscosityPaS(),
          viscous.which().source(),
          in("N", Kind.FREQUENCY, viscous.correction().best().speedPs()));
    }
    PumpResult.Viscous used = result.believed().orElseThrow();
    HydraulicInstituteViscous model = new HydraulicInstituteViscous();
    BestPoint best = used.correction().best();
    w.step(
        "B",
        "parameter of the liquid in this pump",
        model,
        Kind.NUMBER,
        used.correction().b(),
        in("nu", Kind.KINEMATIC_VISCOSITY, used.viscosityPaS() / slurry.liquid().densityKgM3()),
        in("H", Kind.HEAD, best.headM()),
        in("Q", Kind.FLOW, best.flowM3ps()),
        in("N", Kind.FREQUENCY, best.speedPs()));
    w.step(
        "C_Q",
        "flow, and head at the best point, in the liquid over those in water",
        model,
        Kind.NUMBER,
        used.correction().flowRatio(),
        in("B", Kind.NUMBER, used.correction().b()));
    w.step(
        "C_eta",
        "efficiency in the liquid over that in water",
        model,
        Kind.NUMBER,
        used.correction().efficiencyRatio(),
        in("B", Kind.NUMBER, used.correction().b()));
  }

  private static void piston(Working w, PistonSpec pump) {
    double displacement = Measure.VOLUME.si(pump.displacement());
    double rate = Measure.FREQUENCY.si(pump.strokeRate());
    double efficiency = Measure.FRACTION.si(pump.volumetricEfficiency());
    w.step(
        "Q",
        "flow of the piston pump",
        "Q = eta_v V_stroke N",
        Kind.FLOW,
        displacement * rate * efficiency,
        "displacement",
        in("eta_v", Kind.NUMBER, efficiency),
        in("V_stroke", Kind.VOLUME, displacement),
        in("N", Kind.FREQUENCY, rate));
  }
}
