package sandslurry.assessment.station;

import java.util.OptionalDouble;
import sandslurry.assessment.line.LineModel;
import sandslurry.assessment.line.RunPoint;
import sandslurry.assessment.materials.Materials;
import sandslurry.design.Design;
import sandslurry.design.station.PumpSpec.PistonSpec;
import sandslurry.design.station.PumpSpec.RotodynamicSpec;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Equations;
import sandslurry.fact.step.Sheet;
import sandslurry.fact.step.Trace;
import sandslurry.pump.derating.HydraulicInstituteViscous;
import sandslurry.pump.derating.SolidsDeratings;
import sandslurry.units.Measure;

/** The working behind the pump. */
public final class PumpWorking {

  /** Power at a pump shaft. */
  public static final Equation SHAFT_POWER = Equations.of(PumpWorking.class).of("shaft-power");

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
  public static void steps(
      Trace trace, Design design, PumpResult result, LineModel line, Materials materials) {
    Sheet sheet = Sheet.of(PumpWorking.class, trace);
    double designFlow = Measure.FLOW.si(design.flow().orElseThrow().design());
    double fraction = materials.sandFraction(designFlow);
    sheet.begin("pump", "");
    design
        .pump()
        .orElseThrow()
        .<Runnable>match(
            pump -> () -> rotodynamic(sheet, pump, result, line.runs(designFlow, fraction).get(0)),
            pump -> () -> piston(sheet, pump))
        .run();
    for (PumpResult.Duty duty : result.duties()) {
      sheet.begin("duty of the pump", duty.meeting().words() + " duty point");
      duty(sheet, design, materials, fraction, duty);
    }
  }

  private static void duty(
      Sheet sheet, Design design, Materials materials, double fraction, PumpResult.Duty duty) {
    double flow = Measure.FLOW.si(duty.flow());
    double head = Measure.LENGTH.si(duty.head());
    double shaft = Measure.POWER.si(duty.shaftPower());
    double input = Measure.POWER.si(duty.inputPower());
    sheet.step("duty", flow, head);
    sheet.step(
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
    sheet.step("input-power", input, shaft, drive);
    duty.sandEnergy()
        .ifPresent(
            energy ->
                sheet.step(
                    "sand-energy",
                    Measure.SPECIFIC_ENERGY.si(energy),
                    input,
                    fraction,
                    flow,
                    materials.sandDensityKgM3()));
  }

  private static void rotodynamic(
      Sheet sheet, RotodynamicSpec pump, PumpResult result, RunPoint first) {
    double curveSpeed = Measure.FREQUENCY.si(pump.first().curveSpeed());
    double speed = Measure.FREQUENCY.si(pump.first().speed());
    sheet.step("speed", speed / curveSpeed, speed, curveSpeed);
    OptionalDouble impeller = PumpInLiquid.impeller(pump.pumps().get(0));
    SolidsDeratings.governing(first.slurry(), impeller, sheet.trace());
    double cave = result.deratings().get(0).estimate().value();
    double ratio = Measure.FRACTION.si(result.headRatio());
    if (impeller.isPresent()) {
      sheet.step("least-ratio", ratio, cave, result.deratings().get(1).estimate().value());
    } else {
      sheet.step("cave-ratio", ratio, cave);
    }
    sheet.step("efficiency-ratio", Measure.FRACTION.si(result.efficiencyRatio()), ratio);
    if (result.viscous().stream().anyMatch(v -> !v.correction().none())) {
      for (PumpResult.Viscous viscous : result.viscous()) {
        viscous
            .which()
            .steps(
                sheet.trace(),
                first.rheology(),
                viscous.correction().best().speedPs(),
                first.wallShearRatePs());
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
    double displacement = Measure.VOLUME.si(pump.displacement());
    double rate = Measure.FREQUENCY.si(pump.strokeRate());
    double efficiency = Measure.FRACTION.si(pump.volumetricEfficiency());
    sheet.step("piston-flow", displacement * rate * efficiency, efficiency, displacement, rate);
  }
}
