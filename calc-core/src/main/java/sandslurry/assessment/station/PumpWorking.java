package sandslurry.assessment.station;

import static sandslurry.fact.step.Equation.DEFINITION;

import java.util.OptionalDouble;
import sandslurry.assessment.line.LineModel;
import sandslurry.assessment.line.RunPoint;
import sandslurry.assessment.materials.Materials;
import sandslurry.design.Design;
import sandslurry.design.station.PumpSpec.PistonSpec;
import sandslurry.design.station.PumpSpec.RotodynamicSpec;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.pump.derating.HydraulicInstituteViscous;
import sandslurry.pump.derating.SolidsDeratings;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** The working behind the pump. */
public final class PumpWorking {
  private static final Equation DUTY =
      Equation.search(
          "Q",
          "duty point: flow rate at which pump and line have the same head",
          "flow rates of the pump curve, for the sand of the design flow rate",
          Kind.FLOW,
          "solved by Brent's method",
          "H m");

  /** Power at a pump shaft. */
  public static final Equation SHAFT_POWER =
      Equation.of(
          "P",
          "power at the pump shaft",
          "rho_m g Q H / eta",
          Kind.POWER,
          DEFINITION,
          "rho_m kg/m3, Q m3/s, H m, eta");

  private static final Equation INPUT_POWER =
      Equation.of(
          "P_in",
          "power drawn by the drive",
          "P/eta_drive",
          Kind.POWER,
          DEFINITION,
          "P W, eta_drive");
  private static final Equation SAND_ENERGY =
      Equation.of(
          "e",
          "energy drawn per mass of sand moved",
          "P_in / (C_t Q rho_s)",
          Kind.SPECIFIC_ENERGY,
          DEFINITION,
          "P_in W, C_t, Q m3/s, rho_s kg/m3");
  private static final Equation SPEED =
      Equation.of(
          "r",
          "speed over that of the curve; head grows as its square, flow rate with it",
          "N/N_curve",
          Kind.NUMBER,
          "affinity laws",
          "N 1/s, N_curve 1/s");
  private static final Equation LEAST_RATIO =
      Equation.of(
          "HR",
          "head ratio used: the least of Cave and, as the impeller is known, Engin and Gur",
          "max(0, min(HR_C, HR_E))",
          Kind.NUMBER,
          "rule of the theory page on pumps",
          "HR_C, HR_E");
  private static final Equation CAVE_RATIO =
      Equation.of(
          "HR",
          "head ratio used: that of Cave, as the impeller is not known",
          "max(0, HR_C)",
          Kind.NUMBER,
          "rule of the theory page on pumps",
          "HR_C");
  private static final Equation EFFICIENCY_RATIO =
      Equation.of(
          "ER",
          "efficiency ratio used, by the same method",
          "HR",
          Kind.NUMBER,
          "rule of the theory page on pumps",
          "HR");
  private static final Equation PISTON_FLOW =
      Equation.of(
          "Q",
          "flow rate of the piston pump",
          "eta_v V_stroke N",
          Kind.FLOW,
          "displacement",
          "eta_v, V_stroke m3, N 1/s");

  private PumpWorking() {}

  /**
   * Keeps the steps of duty points, corrections and power.
   *
   * @param trace what keeps the steps
   * @param design the design
   * @param result the pump as its assessment shows it
   * @param line the physics of its line
   * @param materials its liquid, sand and mixture
   */
  public static void tell(
      Trace trace, Design design, PumpResult result, LineModel line, Materials materials) {
    double designFlow = Measure.FLOW.si(design.flow().orElseThrow().design());
    double fraction = materials.sandFraction(designFlow);
    trace.begin("pump", "");
    if (design.pump().orElseThrow() instanceof RotodynamicSpec pump) {
      rotodynamic(trace, pump, result, line.runs(designFlow, fraction).get(0));
    } else {
      piston(trace, (PistonSpec) design.pump().orElseThrow());
    }
    for (PumpResult.Duty duty : result.duties()) {
      trace.begin("duty of the pump", duty.meeting().words() + " duty point");
      duty(trace, design, materials, fraction, duty);
    }
  }

  private static void duty(
      Trace trace, Design design, Materials materials, double fraction, PumpResult.Duty duty) {
    double flow = Measure.FLOW.si(duty.flow());
    double head = Measure.LENGTH.si(duty.head());
    double shaft = Measure.POWER.si(duty.shaftPower());
    double input = Measure.POWER.si(duty.inputPower());
    trace.step(DUTY, flow, head);
    trace.step(
        SHAFT_POWER,
        shaft,
        materials.mixtureDensityKgM3(fraction),
        flow,
        Math.max(head, 0),
        Measure.FRACTION.si(duty.efficiency()));
    double drive =
        shaft > 0
            ? shaft / input
            : Measure.FRACTION.si(design.pump().orElseThrow().driveEfficiency());
    trace.step(INPUT_POWER, input, shaft, drive);
    duty.sandEnergy()
        .ifPresent(
            energy ->
                trace.step(
                    SAND_ENERGY,
                    Measure.SPECIFIC_ENERGY.si(energy),
                    input,
                    fraction,
                    flow,
                    materials.sandDensityKgM3()));
  }

  private static void rotodynamic(
      Trace trace, RotodynamicSpec pump, PumpResult result, RunPoint first) {
    double curveSpeed = Measure.FREQUENCY.si(pump.first().curveSpeed());
    double speed = Measure.FREQUENCY.si(pump.first().speed());
    trace.step(SPEED, speed / curveSpeed, speed, curveSpeed);
    OptionalDouble impeller = PumpInLiquid.impeller(pump.pumps().get(0));
    SolidsDeratings.governing(first.slurry(), impeller, trace);
    double cave = result.deratings().get(0).estimate().value();
    double ratio = Measure.FRACTION.si(result.headRatio());
    if (impeller.isPresent()) {
      trace.step(LEAST_RATIO, ratio, cave, result.deratings().get(1).estimate().value());
    } else {
      trace.step(CAVE_RATIO, ratio, cave);
    }
    trace.step(EFFICIENCY_RATIO, Measure.FRACTION.si(result.efficiencyRatio()), ratio);
    if (result.viscous().stream().anyMatch(v -> !v.correction().none())) {
      for (PumpResult.Viscous viscous : result.viscous()) {
        viscous
            .which()
            .tell(
                trace,
                first.rheology(),
                viscous.correction().best().speedPs(),
                first.wallShearRatePs());
      }
      PumpResult.Viscous used = result.believed().orElseThrow();
      new HydraulicInstituteViscous()
          .correction(
              used.correction().best(),
              used.viscosityPaS() / first.slurry().liquid().densityKgM3(),
              trace);
    }
  }

  private static void piston(Trace trace, PistonSpec pump) {
    double displacement = Measure.VOLUME.si(pump.displacement());
    double rate = Measure.FREQUENCY.si(pump.strokeRate());
    double efficiency = Measure.FRACTION.si(pump.volumetricEfficiency());
    trace.step(PISTON_FLOW, displacement * rate * efficiency, efficiency, displacement, rate);
  }
}
