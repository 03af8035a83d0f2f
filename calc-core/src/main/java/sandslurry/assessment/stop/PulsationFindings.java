package sandslurry.assessment.stop;

import sandslurry.assessment.stop.PulsationResult.Pulse;
import sandslurry.assessment.stop.PulsationResult.Strained;
import sandslurry.assessment.stop.PulsationResult.Vessel;
import sandslurry.design.Design;
import sandslurry.design.station.PumpSpec;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Findings;
import sandslurry.fact.finding.Found;
import sandslurry.fact.finding.Severity;
import sandslurry.pump.piston.ReliefWindow;
import sandslurry.units.Kind;

/**
 * Findings on the pulsation behind a piston pump: pauses, air vessel and relief.
 *
 * @param design the design
 * @param pulsation pulsation behind the piston pump
 * @param findings takes what is found
 */
public record PulsationFindings(Design design, PulsationResult pulsation, Findings findings)
    implements FindingWriter {
  /** Findings on pauses of the flow, the air vessel and the relief valve. */
  public void all() {
    pulsation.runs().forEach(this::pulse);
    pulsation.strained().forEach(this::strained);
    pulsation.vessel().ifPresent(this::vessel);
    relief();
  }

  private Found pulse(String key, Severity severity, String run) {
    return found(key, severity, run);
  }

  private void pulse(Pulse pulse) {
    (!pulse.settles()
            ? pulse("pulse-above", Severity.PASS, pulse.run())
            : pulse.brief()
                ? pulse("pulse-brief", Severity.NOTE, pulse.run())
                : pulse("pulse-settles", Severity.CAUTION, pulse.run()).cure("pulse"))
        .with("pulseLeast", Kind.VELOCITY, pulse.leastMps())
        .with("limit", Kind.VELOCITY, pulse.limitMps())
        .why("pulse-least")
        .when(
            pulse.settles(),
            f ->
                f.with("below", Kind.PERCENT, pulse.belowShare())
                    .with("pause", Kind.TIME, pulse.longestS())
                    .with("falls", Kind.DEPTH, pulse.fallM())
                    .with("pulseGreatest", Kind.VELOCITY, pulse.greatestMps())
                    .with("lift", Kind.VELOCITY, pulse.toPassMps())
                    .why("pulse-pause")
                    .with("settling", Kind.TIME, pulse.settlingS())
                    .why(pulse.settlingS().isPresent(), "pulse-bore")
                    .why(
                        pulse.greatestMps() >= pulse.toPassMps()
                            ? "pulse-lifts"
                            : "pulse-lifts-not"))
        .add();
  }

  private void strained(Strained run) {
    pulse("pulse-plug", Severity.CAUTION, run.run())
        .with("pulseGreatest", Kind.VELOCITY, run.greatestMps())
        .with("plugShare", Kind.PERCENT, run.plugShare())
        .with("support", run.support().words())
        .why("pulse-plug")
        .cure("pulse-plug")
        .add();
  }

  private void vessel(Vessel vessel) {
    boolean good = vessel.damps() && pulsation.passed() <= Vessel.GOOD_SHARE;
    String key =
        good
            ? "vessel-damps"
            : vessel.damps() ? "vessel-weak" : vessel.fills() ? "vessel-small" : "vessel-swings";
    found(key, good ? Severity.PASS : Severity.CAUTION, "air vessel")
        .with("gas", Kind.SMALL_VOLUME, vessel.gasM3())
        .with("gasPressure", Kind.PRESSURE, vessel.absolutePa())
        .with("own", Kind.STROKES, vessel.ownPs())
        .with("swells", Kind.STROKES, vessel.swellsPs())
        .with("stored", Kind.SMALL_VOLUME, vessel.storedM3())
        .with("passed", Kind.PERCENT, pulsation.passed())
        .with("goodGas", Kind.SMALL_VOLUME, vessel.goodGasM3())
        .why("vessel")
        .why(vessel.damps() ? "vessel-passes" : "vessel-no-credit")
        .cure(!good, "vessel")
        .add();
  }

  private void relief() {
    double limit = design.pump().flatMap(PumpSpec::piston).orElseThrow().pressureLimitPa();
    boolean opens = pulsation.peakPa() > limit;
    boolean rated = pulsation.weakestPa().isPresent();
    boolean fits = pulsation.relief().map(window -> window.holds(limit)).orElse(false);
    Found found =
        (opens
                ? relief("relief-opens", Severity.FAIL)
                : !rated
                    ? relief("relief-unrated", Severity.NOTE)
                    : fits
                        ? relief("relief-set", Severity.PASS)
                        : relief(
                            pulsation.relief().isEmpty() ? "relief-no-room" : "relief-outside",
                            Severity.CAUTION))
            .with("peak", Kind.PRESSURE, pulsation.peakPa())
            .with("peakFlow", Kind.PERCENT, pulsation.peak().flowRatio())
            .with("steady", Kind.PRESSURE, pulsation.peak().steadyPa())
            .with("relief", Kind.PRESSURE, limit)
            .why("peak")
            .why("peak-parts")
            .why("relief")
            .when(
                rated,
                f ->
                    f.with("rating", Kind.PRESSURE, pulsation.weakestPa().getAsDouble())
                        .why("rated"));
    if (opens || rated && !fits) {
      reliefCure(found, rated);
    }
    found.add();
  }

  private Found relief(String key, Severity severity) {
    return found(key, severity, "pump");
  }

  private void reliefCure(Found found, boolean rated) {
    if (!rated) {
      found.cure("relief-vessel");
    } else if (pulsation.relief().isPresent()) {
      ReliefWindow window = pulsation.relief().get();
      found
          .with("reliefLeast", Kind.PRESSURE, window.leastPa())
          .with("reliefMost", Kind.PRESSURE, window.greatestPa())
          .cure("relief-set");
    } else {
      found
          .with("neededRating", Kind.PRESSURE, ReliefWindow.neededRatingPa(pulsation.peakPa()))
          .cure("relief-rating");
    }
  }
}
