package sandslurry.assessment.stop;

import java.util.List;
import sandslurry.assessment.stop.SurgeResult.LowWave;
import sandslurry.assessment.stop.SurgeResult.SlowStop;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Severity;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** What is to be said of the surge when the flow stops. */
public final class SurgeFindings extends FindingWriter {
  private final List<SurgeResult> surges;

  /**
   * The surges that are judged.
   *
   * @param units the units in which the sentences show numbers
   * @param surges surge in each run
   */
  public SurgeFindings(UnitSystem units, List<SurgeResult> surges) {
    super(units);
    this.surges = surges;
  }

  /**
   * Findings on surge and column separation.
   *
   * @return the findings, run by run
   */
  public List<Finding> all() {
    surges.forEach(this::surge);
    return findings;
  }

  private void surge(SurgeResult surge) {
    String why =
        "A stop from "
            + show(Kind.VELOCITY, surge.velocityMps())
            + " raises the pressure by "
            + show(Kind.PRESSURE, surge.surgePa())
            + " (wave speed "
            + show(Kind.VELOCITY, surge.waveMps())
            + ", no gas)"
            + surge.slow().map(this::slow).orElse("")
            + " above the working pressure of "
            + show(Kind.PRESSURE, surge.workingPa())
            + (surge.ratingPa().isPresent()
                ? "; the rating is " + show(Kind.PRESSURE, surge.ratingPa().getAsDouble())
                : "; no rating is known")
            + ".";
    String stop = surge.slow().isPresent() ? "stop as given" : "sudden stop";
    if (surge.ratingPa().isEmpty()) {
      add(
          Severity.NOTE,
          Topic.PRESSURE,
          surge.run(),
          "Water hammer of a " + stop + " could not be judged.",
          why,
          "");
    } else {
      boolean over = surge.workingPa() + surge.judgedPa() > surge.ratingPa().getAsDouble();
      add(
          over ? Severity.CAUTION : Severity.PASS,
          Topic.PRESSURE,
          surge.run(),
          over
              ? "Water hammer of a " + stop + " can exceed the pressure rating."
              : "Water hammer of a " + stop + " stays within the pressure rating.",
          why,
          over
              ? (surge.stopS().isPresent()
                      ? "Stop the flow evenly over "
                          + show(Kind.TIME, surge.stopS().getAsDouble())
                          + " or more; or fit"
                      : "Fit")
                  + " a class rated "
                  + show(Kind.PRESSURE, surge.workingPa() + surge.judgedPa())
                  + " or more; have the surge analysed with check valve and pump trip."
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
            : " as well, since the wave needs " + show(Kind.TIME, slow.returnS()) + " to return")
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
            ? "A stop can separate the column of liquid at a high point."
            : "A stop can separate the column of liquid.",
        "At "
            + show(Kind.LENGTH, low.elevationM())
            + " above the start the pressure is "
            + show(Kind.PRESSURE, low.steadyPa())
            + "; the wave of "
            + (asked ? "the stop as given" : "a sudden stop")
            + " would lower it to "
            + show(Kind.PRESSURE, low.lowestPa())
            + ", below the vapour pressure of "
            + show(Kind.PRESSURE, low.vapourPa())
            + ". Columns that rejoin strike harder than the stop. Vacuum can collapse thin pipe or"
            + " draw in a gasket.",
        "Slow the stop (flywheel, slow valve), vent high points with a valve that manure does not"
            + " clog, fit pipe rated for full vacuum, and have the surge analysed.");
  }
}
