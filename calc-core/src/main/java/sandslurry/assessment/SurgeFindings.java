package sandslurry.assessment;

import java.util.List;
import sandslurry.assessment.Finding.Topic;
import sandslurry.assessment.SurgeResult.LowWave;
import sandslurry.assessment.SurgeResult.SlowStop;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** What is to be said of the surge when the flow stops. */
final class SurgeFindings extends FindingWriter {
  private final List<SurgeResult> surges;

  SurgeFindings(UnitSystem units, List<SurgeResult> surges) {
    super(units);
    this.surges = surges;
  }

  List<Finding> all() {
    surges.forEach(this::surge);
    return findings;
  }

  private void surge(SurgeResult surge) {
    String why =
        "Stopped at once from "
            + show(Kind.VELOCITY, surge.velocityMps())
            + " the pressure rises by "
            + show(Kind.PRESSURE, surge.surgePa())
            + " (wave speed "
            + show(Kind.VELOCITY, surge.waveMps())
            + ", no gas)"
            + surge.slow().map(this::slow).orElse("")
            + " over "
            + show(Kind.PRESSURE, surge.workingPa())
            + (surge.ratingPa().isPresent()
                ? "; the rating is " + show(Kind.PRESSURE, surge.ratingPa().getAsDouble())
                : "; no rating is known")
            + ".";
    String stop = surge.slow().isPresent() ? "stop in the time given" : "sudden stop";
    if (surge.ratingPa().isEmpty()) {
      add(
          Severity.NOTE,
          Topic.PRESSURE,
          surge.run(),
          "The surge of a " + stop + " could not be judged.",
          why,
          "");
    } else {
      boolean over = surge.workingPa() + surge.judgedPa() > surge.ratingPa().getAsDouble();
      add(
          over ? Severity.CAUTION : Severity.PASS,
          Topic.PRESSURE,
          surge.run(),
          over
              ? "The surge of a " + stop + " can exceed the rating of this pipe."
              : "The surge of a " + stop + " stays within the rating.",
          why,
          over
              ? (surge.stopS().isPresent()
                      ? "Stop the flow evenly over "
                          + show(Kind.TIME, surge.stopS().getAsDouble())
                          + " or more; or fit"
                      : "Fit")
                  + " a class rated "
                  + show(Kind.PRESSURE, surge.workingPa() + surge.judgedPa())
                  + " or more; have the surge analysed with the check valve and the trip of the"
                  + " pump."
              : "");
    }
    lowWave(surge);
  }

  private String slow(SlowStop slow) {
    return ", in "
        + show(Kind.TIME, slow.timeS())
        + " evenly by "
        + show(Kind.PRESSURE, slow.surgePa())
        + (slow.timeS() > slow.returnS()
            ? " (Michaud's rule)"
            : " as well, for the wave takes " + show(Kind.TIME, slow.returnS()) + " to return")
        + ",";
  }

  /**
   * Every sudden stop of a pump has a low half of its wave, so it is a caution only where it was
   * asked for by a time, or where columns part in a high point of the line and come together there.
   */
  private void lowWave(SurgeResult surge) {
    LowWave low = surge.lowest();
    if (!low.parts()) {
      return;
    }
    boolean asked = surge.slow().isPresent();
    add(
        asked || low.highPoint() ? Severity.CAUTION : Severity.NOTE,
        Topic.PRESSURE,
        surge.run(),
        low.highPoint()
            ? "When the flow is cut off the column of liquid can part at a high point of the line."
            : "When the flow is cut off the column of liquid can part.",
        "At "
            + show(Kind.LENGTH, low.elevationM())
            + " above the start the pressure is "
            + show(Kind.PRESSURE, low.steadyPa())
            + "; the low half of the wave of "
            + (asked ? "a stop in the time given" : "a sudden stop")
            + " would take it to "
            + show(Kind.PRESSURE, low.lowestPa())
            + ", and the liquid boils at "
            + show(Kind.PRESSURE, low.vapourPa())
            + ". Columns that come together again strike harder than the stop, and a vacuum can"
            + " flatten a thin pipe or suck in a gasket.",
        "Slow the stop down (flywheel, slow valve), keep high points out of the line or vent them"
            + " with a valve that manure does not clog, fit pipe that bears full vacuum, and have"
            + " the surge analysed.");
  }
}
