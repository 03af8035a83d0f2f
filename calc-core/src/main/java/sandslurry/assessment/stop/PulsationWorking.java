package sandslurry.assessment.stop;

import static sandslurry.fact.step.Equation.DEFINITION;

import sandslurry.assessment.stop.PulsationResult.Pulse;
import sandslurry.assessment.stop.PulsationResult.Vessel;
import sandslurry.correlation.Physics;
import sandslurry.design.Design;
import sandslurry.design.station.PumpSpec;
import sandslurry.design.station.PumpSpec.PistonSpec;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Equations;
import sandslurry.fact.step.Trace;
import sandslurry.pump.piston.FlowRipple;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** The working behind the pulsing of a piston pump. */
public final class PulsationWorking {
  private static final String MOTION =
      "kinematics of the crank, or the stroke, changeover and dwell of driven rams";
  private static final Equations EQUATIONS = Equations.of(PulsationWorking.class);
  private static final Equation OWN = EQUATIONS.of("own", Kind.FREQUENCY);
  private static final Equation PASSED = EQUATIONS.of("passed", Kind.PERCENT);
  private static final Equation PUMP_LEAST = swing("q_p1", "least");
  private static final Equation PUMP_GREATEST = swing("q_p2", "greatest");
  private static final Equation LEAST = damped("q_1", "least", "q_p1");
  private static final Equation GREATEST = damped("q_2", "greatest", "q_p2");
  private static final Equation ACCELERATION = EQUATIONS.of("acceleration", Kind.HEAD);
  private static final Equation PEAK = EQUATIONS.of("peak", Kind.PRESSURE);
  private static final Equation STEADY = EQUATIONS.of("steady", Kind.PRESSURE);
  private static final Equation LEAST_VELOCITY = EQUATIONS.of("least-velocity", Kind.VELOCITY);
  private static final Equation PAUSE = EQUATIONS.of("pause", Kind.TIME);
  private static final Equation FALL = EQUATIONS.of("fall", Kind.BORE);
  private static final Equation RELIEF_LEAST = EQUATIONS.of("relief-least", Kind.PRESSURE);
  private static final Equation RELIEF_GREATEST = EQUATIONS.of("relief-greatest", Kind.PRESSURE);

  private PulsationWorking() {}

  private static Equation swing(String symbol, String which) {
    return Equation.search(
        symbol,
        which + " flow rate of the pump over its mean",
        "sum of all cylinders over a cycle",
        Kind.NUMBER,
        MOTION,
        "cylinders");
  }

  private static Equation damped(String symbol, String which, String pump) {
    return Equation.of(
        symbol,
        which + " flow rate in the line over its mean",
        "1 - k (1 - " + pump + ")",
        Kind.NUMBER,
        DEFINITION,
        "k",
        pump);
  }

  /**
   * Keeps the steps of the pulsation and its air vessel.
   *
   * @param trace what keeps the steps
   * @param design the design
   * @param pulsation pulsation behind the piston pump
   */
  public static void tell(Trace trace, Design design, PulsationResult pulsation) {
    trace.begin("pulsation", "");
    PistonSpec spec = design.pump().flatMap(PumpSpec::piston).orElseThrow();
    int cylinders = spec.pulsation().orElseThrow().cylinders();
    double rate = Measure.FREQUENCY.si(spec.strokeRate());
    double passed = pulsation.passed();
    pulsation.vessel().ifPresent(vessel -> vessel(trace, vessel, passed));
    FlowRipple pump = spec.pulsation().orElseThrow().drive(spec.strokeRate()).ripple();
    double least = trace.step(PUMP_LEAST, pump.leastRatio(), cylinders);
    trace.step(LEAST, pulsation.ripple().leastRatio(), passed, least);
    double most = trace.step(PUMP_GREATEST, pump.greatestRatio(), cylinders);
    trace.step(GREATEST, pulsation.ripple().greatestRatio(), passed, most);
    trace.step(ACCELERATION, pulsation.accelerationM(), rate, passed);
    PulsationResult.Peak peak = pulsation.peak();
    trace.step(STEADY, peak.steadyPa(), peak.flowRatio());
    if (peak.accelerationM() > 0) {
      trace.step(
          PEAK,
          peak.pressurePa(),
          peak.steadyPa(),
          (peak.pressurePa() - peak.steadyPa()) / (Physics.GRAVITY * peak.accelerationM()),
          peak.accelerationM());
    }
    pulsation
        .relief()
        .ifPresent(
            relief -> {
              trace.step(RELIEF_LEAST, relief.leastPa(), pulsation.peakPa());
              trace.step(RELIEF_GREATEST, relief.greatestPa(), pulsation.weakestPa().orElseThrow());
            });
    for (Pulse pulse : pulsation.runs()) {
      trace.begin("pulsation in a run", pulse.run());
      double ratio = pulsation.ripple().leastRatio();
      if (ratio != 0) {
        trace.step(LEAST_VELOCITY, pulse.leastMps(), ratio, pulse.leastMps() / ratio);
      }
      double pause = trace.step(PAUSE, pulse.longestS(), rate, passed);
      if (pause > 0) {
        trace.step(FALL, pulse.fallM(), pulse.fallM() / pause, pause);
      }
    }
  }

  private static void vessel(Trace trace, Vessel vessel, double passed) {
    trace.step(OWN, vessel.ownPs(), vessel.absolutePa(), vessel.gasM3(), vessel.inertanceKgM4());
    trace.step(PASSED, passed, vessel.swellsPs(), vessel.ownPs());
  }
}
