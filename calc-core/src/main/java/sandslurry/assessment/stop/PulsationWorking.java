package sandslurry.assessment.stop;

import sandslurry.assessment.stop.PulsationResult.Pulse;
import sandslurry.assessment.stop.PulsationResult.Vessel;
import sandslurry.correlation.Physics;
import sandslurry.design.Design;
import sandslurry.design.station.PumpSpec;
import sandslurry.design.station.PumpSpec.PistonSpec;
import sandslurry.fact.step.Sheet;
import sandslurry.fact.step.Trace;
import sandslurry.pump.piston.FlowRipple;

/** The working behind the pulsing of a piston pump. */
public final class PulsationWorking {
  private PulsationWorking() {}

  /**
   * Keeps the steps of the pulsation and its air vessel.
   *
   * @param trace what keeps the steps
   * @param design the design
   * @param pulsation pulsation behind the piston pump
   */
  public static void steps(Trace trace, Design design, PulsationResult pulsation) {
    Sheet sheet = Sheet.of(PulsationWorking.class, trace);
    sheet.begin("pulsation", "");
    PistonSpec spec = design.pump().flatMap(PumpSpec::piston).orElseThrow();
    int cylinders = spec.pulsation().orElseThrow().cylinders();
    double rate = spec.strokeRatePs();
    double passed = pulsation.passed();
    pulsation.vessel().ifPresent(vessel -> vessel(sheet, vessel, passed));
    FlowRipple pump = spec.pulsation().orElseThrow().drive(spec.strokeRatePs()).ripple();
    double least = sheet.step("pump-least", pump.leastRatio(), cylinders);
    sheet.step("least", pulsation.ripple().leastRatio(), passed, least);
    double most = sheet.step("pump-greatest", pump.greatestRatio(), cylinders);
    sheet.step("greatest", pulsation.ripple().greatestRatio(), passed, most);
    sheet.step("acceleration", pulsation.accelerationM(), rate, passed);
    PulsationResult.Peak peak = pulsation.peak();
    sheet.step("steady", peak.steadyPa(), peak.flowRatio());
    if (peak.accelerationM() > 0) {
      sheet.step(
          "peak",
          peak.pressurePa(),
          peak.steadyPa(),
          (peak.pressurePa() - peak.steadyPa()) / (Physics.GRAVITY * peak.accelerationM()),
          peak.accelerationM());
    }
    pulsation
        .relief()
        .ifPresent(
            relief -> {
              sheet.step("relief-least", relief.leastPa(), pulsation.peakPa());
              sheet.step(
                  "relief-greatest", relief.greatestPa(), pulsation.weakestPa().orElseThrow());
            });
    for (Pulse pulse : pulsation.runs()) {
      sheet.begin("pulsation in a run", pulse.run());
      double ratio = pulsation.ripple().leastRatio();
      if (ratio != 0) {
        sheet.step("least-velocity", pulse.leastMps(), ratio, pulse.leastMps() / ratio);
      }
      double pause = sheet.step("pause", pulse.longestS(), rate, passed);
      if (pause > 0) {
        sheet.step("fall", pulse.fallM(), pulse.fallM() / pause, pause);
      }
    }
  }

  private static void vessel(Sheet sheet, Vessel vessel, double passed) {
    sheet.step("own", vessel.ownPs(), vessel.absolutePa(), vessel.gasM3(), vessel.inertanceKgM4());
    sheet.step("passed", passed, vessel.swellsPs(), vessel.ownPs());
  }
}
