package sandslurry.assessment.feed;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.service.ServiceResult.Day;
import sandslurry.design.Design;
import sandslurry.design.station.PumpSpec.MotorSpec;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Severity;
import sandslurry.pump.drive.MotorStarts;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** What is to be said of a day of pumping. */
public final class DayFindings extends FindingWriter {
  private final Design design;
  private final ServiceResult result;

  /**
   * The day of pumping that is judged.
   *
   * @param design the design
   * @param result the day as the assessment shows it
   */
  public DayFindings(Design design, ServiceResult result) {
    super(design.units());
    this.design = design;
    this.result = result;
  }

  /**
   * Findings on the running time and the starts of the pump.
   *
   * @return the findings; empty without a daily volume
   */
  public List<Finding> all() {
    result.day().ifPresent(this::day);
    starts();
    return findings;
  }

  private void day(Day day) {
    double most = InUnit.ofDays(1);
    boolean fits = day.runningS() <= most;
    Day longest =
        result.days().stream().max(Comparator.comparingDouble(Day::runningS)).orElseThrow();
    boolean allFit = longest.runningS() <= most;
    add(
        allFit ? Severity.PASS : fits ? Severity.CAUTION : Severity.FAIL,
        Topic.DAY,
        "pump",
        allFit
            ? "The daily volume is pumped within the day."
            : fits
                ? "In its worst state the pump does not move the daily volume within the day."
                : "The day is too short for the daily volume.",
        "In the state \""
            + day.state()
            + "\" it takes "
            + show(Kind.HOURS, day.runningS())
            + (day.startsPs().isPresent()
                ? " with up to "
                    + show(Kind.STARTS, day.startsPs().getAsDouble())
                    + " starts (at an inflow of half the flow rate)"
                : "")
            + " and "
            + show(Kind.ENERGY, day.energyJ())
            + " a day"
            + (day.energyPerSandJpKg().isPresent()
                ? ", "
                    + show(Kind.SPECIFIC_ENERGY, day.energyPerSandJpKg().getAsDouble())
                    + " of sand"
                : "")
            + (longest == day
                ? ""
                : ". The longest day is in the state \""
                    + longest.state()
                    + "\": "
                    + show(Kind.HOURS, longest.runningS())
                    + " and "
                    + show(Kind.ENERGY, longest.energyJ()))
            + ".",
        allFit
            ? ""
            : "Pump " + show(Kind.PERCENT, longest.runningS() / most) + " of that flow rate.");
  }

  /** The fullest flow starts most often. */
  private void starts() {
    Optional<Day> often =
        result.days().stream()
            .filter(d -> d.startsPs().isPresent())
            .max(Comparator.comparingDouble(d -> d.startsPs().getAsDouble()));
    if (often.isEmpty()) {
      return;
    }
    double starts = often.get().startsPs().getAsDouble();
    OptionalInt typed = design.service().operation().orElseThrow().mostStartsPerHour();
    Optional<MotorSpec> motor = design.pump().flatMap(p -> p.motor());
    OptionalDouble limit =
        typed.isPresent()
            ? OptionalDouble.of(typed.getAsInt() / InUnit.ofHours(1))
            : motor.isPresent()
                ? MotorStarts.mostPs(Measure.POWER.si(motor.get().rating()))
                : OptionalDouble.empty();
    String why =
        "At an inflow of half its flow rate, in the state \""
            + often.get().state()
            + "\", the pump starts at a rate of "
            + show(Kind.STARTS, starts)
            + "; ";
    if (limit.isEmpty()) {
      add(
          Severity.NOTE,
          Topic.DAY,
          "starts",
          "The starts per hour were not judged.",
          why + "neither the starts allowed nor a motor rating is given.",
          "");
      return;
    }
    boolean many = starts > limit.getAsDouble();
    double batch =
        Measure.VOLUME.si(design.service().operation().orElseThrow().batchVolume().orElseThrow());
    add(
        many ? Severity.CAUTION : Severity.PASS,
        Topic.DAY,
        "starts",
        many
            ? "The pump may start more often than motor and starter allow."
            : "The pump starts no more often than motor and starter allow.",
        why
            + show(Kind.STARTS, limit.getAsDouble())
            + (typed.isPresent()
                ? " is the maximum given."
                : " is the maximum for its motor (U.S. Army EI 11C201, 1997); the maker's figure"
                    + " comes first."),
        many
            ? "Use a batch of "
                + show(Kind.VOLUME, batch * starts / limit.getAsDouble())
                + " or more between start and stop."
            : "");
  }
}
