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
import sandslurry.fact.step.Trace;
import sandslurry.pump.derating.HydraulicInstituteViscous;
import sandslurry.pump.derating.SolidsDeratings;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** The working behind the pump. */
public final class PumpWorking {
  private static final Equations EQUATIONS = Equations.of(PumpWorking.class);
  private static final Equation DUTY = EQUATIONS.of("duty", Kind.FLOW);

  /** Power at a pump shaft. */
  public static final Equation SHAFT_POWER = EQUATIONS.of("shaft-power", Kind.POWER);

  private static final Equation INPUT_POWER = EQUATIONS.of("input-power", Kind.POWER);
  private static final Equation SAND_ENERGY = EQUATIONS.of("sand-energy", Kind.SPECIFIC_ENERGY);
  private static final Equation SPEED = EQUATIONS.of("speed", Kind.NUMBER);
  private static final Equation LEAST_RATIO = EQUATIONS.of("least-ratio", Kind.NUMBER);
  private static final Equation CAVE_RATIO = EQUATIONS.of("cave-ratio", Kind.NUMBER);
  private static final Equation EFFICIENCY_RATIO = EQUATIONS.of("efficiency-ratio", Kind.NUMBER);
  private static final Equation PISTON_FLOW = EQUATIONS.of("piston-flow", Kind.FLOW);

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
    design
        .pump()
        .orElseThrow()
        .<Runnable>match(
            pump -> () -> rotodynamic(trace, pump, result, line.runs(designFlow, fraction).get(0)),
            pump -> () -> piston(trace, pump))
        .run();
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
