package sandslurry.assessment.stop;

import java.util.List;
import java.util.Optional;
import sandslurry.assessment.stop.PulsationResult.Pulse;
import sandslurry.assessment.stop.PulsationResult.Strained;
import sandslurry.assessment.stop.PulsationResult.Vessel;
import sandslurry.design.Design;
import sandslurry.design.station.PumpSpec.PistonSpec;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Severity;
import sandslurry.pump.piston.ReliefWindow;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** What is to be said of the pulsing of a piston pump: pauses, air vessel and relief. */
public final class PulsationFindings extends FindingWriter {
  private final Design design;
  private final PulsationResult pulsation;

  /**
   * The pulsation that is judged.
   *
   * @param design the design
   * @param pulsation pulsation behind the piston pump
   */
  public PulsationFindings(Design design, PulsationResult pulsation) {
    super(design.units());
    this.design = design;
    this.pulsation = pulsation;
  }

  /**
   * Findings on pauses of the flow, the air vessel and the relief valve.
   *
   * @return the findings
   */
  public List<Finding> all() {
    pulsation.runs().forEach(this::pulse);
    pulsation.strained().forEach(this::strained);
    pulsation.vessel().ifPresent(this::vessel);
    relief();
    return findings;
  }

  private void pulse(Pulse pulse) {
    boolean settles = pulse.settles();
    boolean brief = pulse.brief();
    add(
        !settles ? Severity.PASS : brief ? Severity.NOTE : Severity.CAUTION,
        Topic.PLUGGING,
        pulse.run(),
        !settles
            ? "The flow pulses, but stays above the deposition limit."
            : brief
                ? "The flow pulses, but its pauses are too short for a bed."
                : "The flow pulses: in its pauses the sand of this run settles.",
        "Within a stroke the velocity falls to "
            + show(Kind.VELOCITY, pulse.leastMps())
            + "; the limit is "
            + show(Kind.VELOCITY, pulse.limitMps())
            + (settles
                ? ", and it is below that for "
                    + show(Kind.PERCENT, pulse.belowShare())
                    + " of the time, up to "
                    + show(Kind.TIME, pulse.longestS())
                    + " on end, in which the coarse sand would fall "
                    + show(Kind.BORE, pulse.fallM())
                    + " in still liquid"
                    + (pulse.settlingS().isPresent()
                        ? ", through the whole bore in " + duration(pulse.settlingS().getAsDouble())
                        : "")
                    + ". The stroke that follows reaches "
                    + show(Kind.VELOCITY, pulse.greatestMps())
                    + (pulse.greatestMps() >= pulse.toPassMps()
                        ? ", enough to lift"
                        : ", not enough to lift with margin")
                    + " what has sunk ("
                    + show(Kind.VELOCITY, pulse.toPassMps())
                    + ")"
                : "")
            + ".",
        settles && !brief
            ? "Fit an air vessel near the pump that lets less of the swing through, shorten the"
                + " pauses, or take a pump with more cylinders."
            : "");
  }

  private void strained(Strained run) {
    add(
        Severity.CAUTION,
        Topic.PLUGGING,
        run.run(),
        "The flow pulses: at its greatest the yield stress does not surely carry the sand.",
        "Within a stroke the velocity rises to "
            + show(Kind.VELOCITY, run.greatestMps())
            + ", where "
            + show(Kind.PERCENT, run.plugShare())
            + " of the flow moves as an unsheared plug; at that velocity the run is "
            + run.support().words()
            + ".",
        "Fit an air vessel near the pump that lets less of the swing through, or take a pump with"
            + " more cylinders.");
  }

  private void vessel(Vessel vessel) {
    String why =
        "With "
            + show(Kind.SMALL_VOLUME, vessel.gasM3())
            + " of gas at "
            + show(Kind.PRESSURE, vessel.absolutePa())
            + " absolute, gas and line swing "
            + show(Kind.FREQUENCY, vessel.ownPs())
            + " by themselves; the flow swells "
            + show(Kind.FREQUENCY, vessel.swellsPs())
            + ", by "
            + show(Kind.SMALL_VOLUME, vessel.storedM3())
            + " at a time. ";
    boolean room = vessel.storedM3() < vessel.gasM3();
    boolean good = vessel.damps() && room && pulsation.passed() <= Vessel.GOOD_SHARE;
    add(
        good ? Severity.PASS : Severity.CAUTION,
        Topic.PRESSURE,
        "air vessel",
        good
            ? "The air vessel takes the pulse out of the line while its gas lasts."
            : vessel.damps() && room
                ? "The air vessel leaves much of the pulse in the line."
                : "The air vessel does not damp: gas and line swing with the pump or against it.",
        why
            + (vessel.damps()
                ? "It lets " + show(Kind.PERCENT, pulsation.passed()) + " of the swing through."
                : "No damping is credited; the swing may be greater than without it."),
        good
            ? ""
            : "Take "
                + show(
                    Kind.SMALL_VOLUME,
                    Math.max(vessel.goodGasM3(), vessel.storedM3() / Vessel.GOOD_SHARE))
                + " of gas at that pressure, check it every day, and have it made and set by its"
                + " maker: an air vessel is a pressure vessel.");
  }

  private void relief() {
    PistonSpec spec = (PistonSpec) design.pump().orElseThrow();
    double limit = Measure.PRESSURE.si(spec.pressureLimit());
    boolean opens = pulsation.peakPa() > limit;
    String why =
        "Within a stroke the pressure peaks at "
            + show(Kind.PRESSURE, pulsation.peakPa())
            + ", at "
            + show(Kind.PERCENT, pulsation.peak().flowRatio())
            + " of the mean flow rate: "
            + show(Kind.PRESSURE, pulsation.peak().steadyPa())
            + " static and friction at that flow rate, and "
            + show(Kind.HEAD, pulsation.peak().accelerationM())
            + " of mixture to speed up the line"
            + "; the relief opens at "
            + show(Kind.PRESSURE, limit)
            + (pulsation.weakestPa().isPresent()
                ? " and the weakest pipe is rated "
                    + show(Kind.PRESSURE, pulsation.weakestPa().getAsDouble())
                : "")
            + ".";
    if (pulsation.weakestPa().isEmpty()) {
      add(
          opens ? Severity.FAIL : Severity.NOTE,
          Topic.PRESSURE,
          "pump",
          opens
              ? "The relief opens at every stroke."
              : "No rating is known against which the relief could be judged.",
          why,
          opens ? "Fit an air vessel near the pump, and know the rating of the pipe." : "");
      return;
    }
    Optional<ReliefWindow> window = pulsation.relief();
    boolean fits =
        window.isPresent() && limit >= window.get().leastPa() && limit <= window.get().greatestPa();
    add(
        opens ? Severity.FAIL : fits ? Severity.PASS : Severity.CAUTION,
        Topic.PRESSURE,
        "pump",
        opens
            ? "The relief opens at every stroke."
            : fits
                ? "The relief is set between the peaks of the pump and the rating of the pipe."
                : window.isEmpty()
                    ? "No setting of the relief stays clear of both the peaks and the rating."
                    : "The relief is not set between the peaks of the pump and the rating of the pipe.",
        why,
        fits
            ? ""
            : window.isPresent()
                ? "Set it between "
                    + show(Kind.PRESSURE, window.get().leastPa())
                    + " and "
                    + show(Kind.PRESSURE, window.get().greatestPa())
                    + "; codes come first."
                : "Fit an air vessel near the pump, or pipe of a rating of "
                    + show(
                        Kind.PRESSURE,
                        ReliefWindow.MARGIN * ReliefWindow.MARGIN * Math.max(pulsation.peakPa(), 0))
                    + " or more.");
  }
}
