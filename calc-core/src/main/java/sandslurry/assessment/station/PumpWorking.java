package sandslurry.assessment.station;

import java.util.OptionalDouble;
import sandslurry.assessment.line.LineModel;
import sandslurry.assessment.line.RunPoint;
import sandslurry.assessment.materials.Materials;
import sandslurry.design.station.PumpSpec.PistonSpec;
import sandslurry.design.station.PumpSpec.RotodynamicSpec;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Equations;
import sandslurry.fact.step.Sheet;
import sandslurry.fact.step.Trace;
import sandslurry.pump.derating.HydraulicInstituteViscous;
import sandslurry.pump.derating.SolidsDeratings;

/** The working behind the pump. */
public final class PumpWorking {

  /** Power at a pump shaft. */
  public static final Equation SHAFT_POWER = Equations.of(PumpWorking.class).of("shaft-power");

  private PumpWorking() {}

  /**
   * Keeps the steps of duty points, corrections and power.
   *
   * @param trace what keeps the steps
   * @param result the pump as its assessment shows it
   * @param line the physics of its line
   */
  public static void steps(Trace trace, PumpResult result, LineModel line) {
    Sheet sheet = Sheet.of(PumpWorking.class, trace);
    double designFlow = line.design().oneLine().flow().designM3ps();
    double fraction = line.materials().sandFraction(designFlow);
    sheet.begin("pump", "");
    line.design()
        .pump()
        .orElseThrow()
        .<Runnable>match(
            pump -> () -> rotodynamic(sheet, pump, result, line.runs(designFlow, fraction).get(0)),
            pump -> () -> piston(sheet, pump))
        .run();
    for (PumpResult.Duty duty : result.duties()) {
      sheet.begin("duty of the pump", duty.meeting().words() + " duty point");
      duty(sheet, line.materials(), fraction, duty);
    }
  }

  private static void duty(
      Sheet sheet, Materials materials, double fraction, PumpResult.Duty duty) {
    double flow = duty.flowM3ps();
    double head = duty.headM();
    double shaft = duty.shaftW();
    double input = duty.inputW();
    sheet.step("duty", flow, head);
    sheet.step(
        SHAFT_POWER,
        shaft,
        materials.mixtureDensityKgM3(fraction),
        flow,
        Math.max(head, 0),
        duty.efficiency());
    double drive =
        shaft > 0 ? shaft / input : materials.design().pump().orElseThrow().driveEfficiency();
    sheet.step("input-power", input, shaft, drive);
    duty.sandEnergyJpKg()
        .ifPresent(
            energy ->
                sheet.step(
                    "sand-energy", energy, input, fraction, flow, materials.sandDensityKgM3()));
  }

  private static void rotodynamic(
      Sheet sheet, RotodynamicSpec pump, PumpResult result, RunPoint first) {
    double curveSpeed = pump.first().curveSpeedPs();
    double speed = pump.first().speedPs();
    sheet.step("speed", speed / curveSpeed, speed, curveSpeed);
    OptionalDouble impeller = pump.pumps().get(0).impellerM();
    SolidsDeratings.governing(first.slurry(), impeller, sheet.trace());
    double cave = result.deratings().get(0).estimate().value();
    double ratio = result.headRatio();
    if (impeller.isPresent()) {
      sheet.step("least-ratio", ratio, cave, result.deratings().get(1).estimate().value());
    } else {
      sheet.step("cave-ratio", ratio, cave);
    }
    sheet.step("efficiency-ratio", result.efficiencyRatio(), ratio);
    if (result.viscous().stream().anyMatch(v -> !v.correction().none())) {
      for (PumpResult.Viscous viscous : result.viscous()) {
        viscous
            .which()
            .steps(
                sheet.trace(),
                first.mixture().rheology(),
                viscous.correction().best().speedPs(),
                first.flow().wallShearRatePs());
      }
      PumpResult.Viscous used = result.believed().orElseThrow();
      new HydraulicInstituteViscous()
          .correction(
              used.correction().best(),
              used.viscosityPaS() / first.slurry().liquid().densityKgM3(),
              sheet.trace());
    }
  }

  private static void piston(Sheet sheet, PistonSpec pump) {
    double displacement = pump.displacementM3();
    double rate = pump.strokeRatePs();
    double efficiency = pump.volumetricEfficiency();
    sheet.step("piston-flow", displacement * rate * efficiency, efficiency, displacement, rate);
  }
}
