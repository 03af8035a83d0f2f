package sandslurry.assessment.stop;

import static sandslurry.correlation.Working.COMMON;
import static sandslurry.correlation.Working.DEFINITION;
import static sandslurry.correlation.Working.in;

import java.util.List;
import sandslurry.assessment.stop.PulsationResult.Pulse;
import sandslurry.assessment.stop.PulsationResult.Vessel;
import sandslurry.correlation.Working;
import sandslurry.design.Design;
import sandslurry.design.station.PumpSpec.PistonSpec;
import sandslurry.fact.step.Step;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** The working behind the pulsing of a piston pump. */
public final class PulsationWorking {
  private PulsationWorking() {}

  public static List<Step> steps(Design design, PulsationResult pulsation) {
    Working w = new Working("pulsation");
    PistonSpec spec = (PistonSpec) design.pump().orElseThrow();
    int cylinders = spec.pulsation().orElseThrow().cylinders();
    double passed = pulsation.passed();
    boolean rams = spec.pulsation().orElseThrow().rams().isPresent();
    double crank = Measure.FRACTION.si(spec.pulsation().orElseThrow().rodToCrank());
    String source = rams ? "definition of the motion" : "kinematics of the crank";
    pulsation.vessel().ifPresent(vessel -> vessel(w, vessel, pulsation));
    w.step(
        "q_least",
        "least flow in the line over the mean flow",
        rams
            ? "q = 1 - k (1 - q_pump); q_pump level in a stroke, rising and falling over the"
                + " changeover, 0 in the dwell, over its mean"
            : "q = 1 - k (1 - q_pump); q_pump = sum over the cylinders of sin f + sin f cos f /"
                + " sqrt(L^2 - sin^2 f), over its mean",
        Kind.NUMBER,
        pulsation.ripple().leastRatio(),
        source,
        in("cylinders", Kind.NUMBER, cylinders),
        rams
            ? in(
                "dwell",
                Kind.TIME,
                Measure.TIME.si(spec.pulsation().orElseThrow().rams().orElseThrow().dwell()))
            : in("L", Kind.NUMBER, crank),
        in("k", Kind.NUMBER, passed));
    w.step(
        "q_most",
        "greatest flow in the line over the mean flow",
        "as above",
        Kind.NUMBER,
        pulsation.ripple().greatestRatio(),
        source);
    w.step(
        "h_a",
        "head that speeds up the line at the worst moment",
        "h_a = k sum of (L/g) V |dq/dt|, at most a dV/g of the whole swing",
        Kind.HEAD,
        pulsation.accelerationM(),
        source + "; Joukowsky 1898",
        in("N", Kind.FREQUENCY, Measure.FREQUENCY.si(spec.strokeRate())));
    w.step(
        "p_peak",
        "greatest pressure at the start of the line",
        "p_peak = greatest over the cycle of p(q Q) + rho_m g h",
        Kind.PRESSURE,
        pulsation.peakPa(),
        DEFINITION,
        in("q", Kind.NUMBER, pulsation.peak().flowRatio()),
        in("p(q Q)", Kind.PRESSURE, pulsation.peak().steadyPa()),
        in("h", Kind.HEAD, pulsation.peak().accelerationM()));
    for (Pulse pulse : pulsation.runs()) {
      w.step(
          "V_least",
          "least velocity within a stroke in " + pulse.run(),
          "V_least = q_least V",
          Kind.VELOCITY,
          pulse.leastMps(),
          source,
          in("q_least", Kind.NUMBER, pulsation.ripple().leastRatio()));
      w.step(
          "y",
          "fall of the coarse sand in the longest pause in " + pulse.run(),
          "y = w t",
          Kind.BORE,
          pulse.fallM(),
          "settling velocity at rest",
          in("t", Kind.TIME, pulse.longestS()));
    }
    pulsation
        .relief()
        .ifPresent(
            relief -> {
              w.step(
                  "p_low",
                  "least setting of the relief",
                  "p_low = 1.1 p_peak",
                  Kind.PRESSURE,
                  relief.leastPa(),
                  COMMON,
                  in("p_peak", Kind.PRESSURE, Math.max(pulsation.peakPa(), 0)));
              w.step(
                  "p_high",
                  "greatest setting of the relief",
                  "p_high = p_rating / 1.1",
                  Kind.PRESSURE,
                  relief.greatestPa(),
                  COMMON,
                  in("p_rating", Kind.PRESSURE, pulsation.weakestPa().orElseThrow()));
            });
    return w.steps();
  }

  private static void vessel(Working w, Vessel vessel, PulsationResult pulsation) {
    w.step(
        "f_0",
        "frequency at which the gas of the vessel and the line swing",
        "f_0 = sqrt(n p / (V I)) / (2 pi), I = sum of rho L / A",
        Kind.FREQUENCY,
        vessel.ownPs(),
        "balance of forces on a rigid column and a gas, n = 1.4",
        in("p", Kind.PRESSURE, vessel.absolutePa()),
        in("V", Kind.SMALL_VOLUME, vessel.gasM3()),
        in("I", Kind.NUMBER, vessel.inertanceKgM4()));
    w.step(
        "k",
        "share of the swing that the vessel lets through",
        vessel.damps() ? "k = 1 / ((f / f_0)^2 - 1)" : "k = 1, because f is not above 1.41 f_0",
        Kind.PERCENT,
        pulsation.passed(),
        "the same balance",
        in("f", Kind.FREQUENCY, vessel.swellsPs()),
        in("f_0", Kind.FREQUENCY, vessel.ownPs()));
  }
}
