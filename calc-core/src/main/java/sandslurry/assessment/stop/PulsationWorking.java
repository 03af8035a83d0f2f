package sandslurry.assessment.stop;

import static sandslurry.fact.step.Equation.COMMON;
import static sandslurry.fact.step.Equation.DEFINITION;

import sandslurry.assessment.stop.PulsationResult.Pulse;
import sandslurry.assessment.stop.PulsationResult.Vessel;
import sandslurry.correlation.Physics;
import sandslurry.design.Design;
import sandslurry.design.station.PumpSpec.PistonSpec;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.pump.piston.FlowRipple;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** The working behind the pulsing of a piston pump. */
public final class PulsationWorking {
  private static final String MOTION =
      "kinematics of the crank, or the stroke, changeover and dwell of driven rams";
  private static final String GAS = "balance of forces on a rigid column and a gas, n = 1.4";
  private static final Equation OWN =
      Equation.of(
          "f_0",
          "frequency at which the gas of the vessel and the line swing",
          "sqrt(1.4 p/(V I)) / (2 pi)",
          Kind.FREQUENCY,
          GAS,
          "p Pa, V m3, I kg/m4");
  private static final Equation PASSED =
      Equation.of(
          "k",
          "share of the swing that the vessel lets through",
          "1 / ((f/f_0)^2 - 1) for f > 2^0.5 f_0; else 1",
          Kind.PERCENT,
          GAS,
          "f 1/s, f_0 1/s");
  private static final Equation PUMP_LEAST = swing("q_p1", "least");
  private static final Equation PUMP_GREATEST = swing("q_p2", "greatest");
  private static final Equation LEAST = damped("q_1", "least", "q_p1");
  private static final Equation GREATEST = damped("q_2", "greatest", "q_p2");
  private static final Equation ACCELERATION =
      Equation.search(
          "h_a",
          "head that speeds up the line at the worst moment of the stroke",
          "greatest over the cycle of k times the sum over the runs of L V/g and the change of the"
              + " flow rate; at most the pressure wave of the whole swing",
          Kind.HEAD,
          MOTION + "; Joukowsky 1898",
          "N 1/s, k");
  private static final Equation PEAK =
      Equation.of(
          "p_peak",
          "greatest pressure at the start of the line within a stroke",
          "p_q + rho_m g h_q",
          Kind.PRESSURE,
          DEFINITION,
          "p_q Pa, rho_m kg/m3, h_q m");
  private static final Equation STEADY =
      Equation.search(
          "p_q",
          "pressure of even flow at the moment of the greatest pressure",
          "pressure at the start of the line at that moment's flow rate",
          Kind.PRESSURE,
          "head loss of the line",
          "q");
  private static final Equation LEAST_VELOCITY =
      Equation.of(
          "V_1",
          "least velocity within a stroke",
          "q_1 V_L",
          Kind.VELOCITY,
          DEFINITION,
          "q_1, V_L m/s");
  private static final Equation PAUSE =
      Equation.search(
          "t",
          "longest pause below the deposition velocity",
          "moments of the cycle",
          Kind.TIME,
          MOTION,
          "N 1/s, k");
  private static final Equation FALL =
      Equation.of(
          "y",
          "fall of the coarse sand in the longest pause",
          "w t",
          Kind.BORE,
          "settling velocity of d85 at rest",
          "w m/s, t s");
  private static final Equation RELIEF_LEAST =
      Equation.of(
          "p_1",
          "least setting of the relief",
          "1.1 max(0, p_peak)",
          Kind.PRESSURE,
          COMMON,
          "p_peak Pa");
  private static final Equation RELIEF_GREATEST =
      Equation.of(
          "p_2",
          "greatest setting of the relief",
          "p_rating/1.1",
          Kind.PRESSURE,
          COMMON,
          "p_rating Pa");

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
    PistonSpec spec = (PistonSpec) design.pump().orElseThrow();
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
