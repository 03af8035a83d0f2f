package sandslurry.assessment.states;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.states.StateEvaluation.Evaluated;
import sandslurry.assessment.station.StateResult;
import sandslurry.assessment.station.StateResult.Point;
import sandslurry.design.Design;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Findings;
import sandslurry.fact.finding.Found;
import sandslurry.fact.finding.Severity;
import sandslurry.units.Kind;

/**
 * The verdict on the states that the design asks for, and on a worn pump where it asks for none.
 * The flow rates of the line itself have findings of their own and are not judged here again.
 *
 * @param design the design
 * @param result states and pumps as the assessment shows them
 * @param evaluation the states with what they were computed from
 * @param findings takes what is found
 */
public record StatesFindings(
    Design design, ServiceResult result, StatesEvaluation evaluation, Findings findings)
    implements FindingWriter {
  /** Findings on the governing state and on wear. */
  public void all() {
    evaluation.all().stream()
        .filter(e -> e.result().named())
        .max(
            Comparator.comparing((Evaluated e) -> e.result().severity())
                .thenComparingDouble(e -> -e.margin()))
        .ifPresent(this::governing);
    if (evaluation.carriesUnnamed()) {
      evaluation.worn().ifPresent(this::worn);
    }
  }

  private void governing(Evaluated governing) {
    StateResult worst = governing.result();
    List<StateResult> named = result.states().stream().filter(StateResult::named).toList();
    boolean good = worst.severity().compareTo(Severity.PASS) <= 0;
    Found found =
        (good
                ? found("all-states", worst.severity(), "states")
                : found("worst-state", worst.severity(), worst.name()))
            .count("count", named.size())
            .with("state", worst.name());
    List<String> reasons = worst.reasons();
    found
        .when(!good, f -> f.with("reason", reasons.isEmpty() ? worst.name() : reasons.get(0)))
        .when(
            reasons.size() > 1,
            f ->
                f.with("also", String.join("; ", reasons.subList(1, reasons.size())))
                    .why("state-also"));
    worst
        .point()
        .ifPresent(
            point -> {
              if (good) {
                where(found, point);
              } else {
                // The reasons say what is too slow.
                at(found, point).why(isSlow(point) ? "state-flow-alone" : "state-flow");
              }
            });
    String others =
        named.stream()
            .filter(s -> s.severity().compareTo(Severity.PASS) > 0 && s != worst)
            .map(s -> s.name() + " (" + s.severity() + ")")
            .collect(Collectors.joining("; "));
    found.when(!others.isEmpty(), f -> f.with("others", others).why("state-others"));
    if (!good) {
      String cure = StateCure.of(design, governing);
      found.when(!cure.isEmpty(), f -> f.with("cure", cure).cure("state"));
    }
    found.add();
  }

  private static boolean isSlow(Point point) {
    return point.worst().toPassMps().isPresent()
        && point.worst().velocityMps() < point.worst().toPassMps().getAsDouble();
  }

  private static void where(Found found, Point point) {
    at(found, point).why("state-flow");
    found.why(point.worst().toPassMps().isPresent(), "state-required");
  }

  private static Found at(Found found, Point point) {
    return found
        .with("flow", Kind.FLOW, point.flowM3ps())
        .with("velocity", Kind.VELOCITY, point.worst().velocityMps())
        .with("required", Kind.VELOCITY, point.worst().toPassMps().orElse(0))
        .with("run", point.worst().run());
  }

  /** A pump that is worn by as much as is common: a caution, since nobody gave its wear. */
  private void worn(Evaluated worn) {
    Optional<Point> point = worn.result().point();
    boolean settles = point.map(StatesFindings::isSlow).orElse(true);
    if (!settles) {
      return;
    }
    Found found =
        found("worn-settles", Severity.CAUTION, worn.result().name())
            .with("wear", Kind.PERCENT, StatesEvaluation.COMMON_WEAR);
    if (point.isPresent()) {
      at(found, point.get()).why("worn-settles");
    } else {
      found.why("worn-stalls");
    }
    found.cure("worn").add();
  }
}
