package sandslurry.assessment.feed;

import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.service.ServiceResult.Day;
import sandslurry.design.Design;
import sandslurry.design.station.PumpSpec.MotorSpec;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Findings;
import sandslurry.fact.finding.Found;
import sandslurry.fact.finding.Severity;
import sandslurry.pump.drive.MotorStarts;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;

/**
 * Findings on a day of pumping.
 *
 * @param design the design
 * @param result the day as the assessment shows it
 * @param findings takes what is found
 */
public record DayFindings(Design design, ServiceResult result, Findings findings)
    implements FindingWriter {
  /** Findings on the running time and the starts of the pump. */
  public void all() {
    result.day().ifPresent(this::day);
    starts();
  }

  private void day(Day day) {
    double most = InUnit.DAY.si(1);
    Day longest =
        result.days().stream().max(Comparator.comparingDouble(Day::runningS)).orElseThrow();
    boolean allFit = longest.runningS() <= most;
    Found found =
        (allFit
                ? found("day", Severity.PASS, "pump")
                : day.runningS() <= most
                    ? found("day-worst", Severity.CAUTION, "pump")
                    : found("day-short", Severity.FAIL, "pump"))
            .with("state", day.state())
            .with("time", Kind.HOURS, day.runningS())
            .with("energy", Kind.ENERGY, day.energyJ())
            .why("day");
    day.startsPs().ifPresent(s -> found.with("starts", Kind.STARTS, s).why("day-starts"));
    day.energyPerSandJpKg()
        .ifPresent(e -> found.with("specific", Kind.SPECIFIC_ENERGY, e).why("day-sand"));
    found
        .when(
            longest != day,
            f ->
                f.with("longest", longest.state())
                    .with("longestTime", Kind.HOURS, longest.runningS())
                    .with("longestEnergy", Kind.ENERGY, longest.energyJ())
                    .why("day-longest"))
        .when(!allFit, f -> f.with("ratio", Kind.PERCENT, longest.runningS() / most).cure("day"))
        .add();
  }

  /** The fullest flow starts most often. */
  private void starts() {
    result.days().stream()
        .filter(d -> d.startsPs().isPresent())
        .max(Comparator.comparingDouble(d -> d.startsPs().getAsDouble()))
        .ifPresent(this::starts);
  }

  private void starts(Day often) {
    double starts = often.startsPs().orElseThrow();
    OptionalInt typed = design.service().operation().orElseThrow().mostStartsPerHour();
    Optional<MotorSpec> motor = design.pump().flatMap(p -> p.motor());
    OptionalDouble limit =
        typed.isPresent()
            ? OptionalDouble.of(typed.getAsInt() / InUnit.HOUR.si(1))
            : motor.isPresent()
                ? MotorStarts.mostPs(motor.get().ratingW())
                : OptionalDouble.empty();
    boolean many = limit.isPresent() && starts > limit.getAsDouble();
    Found found =
        (limit.isEmpty()
                ? found("starts-open", Severity.NOTE, "starts")
                : many
                    ? found("starts-many", Severity.CAUTION, "starts")
                    : found("starts", Severity.PASS, "starts"))
            .with("state", often.state())
            .with("starts", Kind.STARTS, starts)
            .why("starts");
    if (limit.isEmpty()) {
      found.why("starts-unknown");
    } else {
      found
          .with("limit", Kind.STARTS, limit.getAsDouble())
          .why(typed.isPresent() ? "starts-given" : "starts-motor");
    }
    if (many) {
      double batch = design.service().operation().orElseThrow().batchVolumeM3().orElseThrow();
      found.with("batch", Kind.VOLUME, batch * starts / limit.getAsDouble()).cure("starts");
    }
    found.add();
  }
}
