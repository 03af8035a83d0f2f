package sandslurry.assessment;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sandslurry.assessment.states.StateCure;
import sandslurry.assessment.states.StateVariants;
import sandslurry.assessment.station.StateResult;
import sandslurry.design.Design;
import sandslurry.design.station.PumpSpec.OtherPumpSpec;
import sandslurry.design.station.PumpSpec.RotodynamicSpec;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Severity;
import sandslurry.units.Kind;

/** What is to be said of the line with a pump out and the spare in its place. */
final class StandbyFindings extends FindingWriter {
  private final Design design;
  private final ServiceEvaluation evaluation;

  StandbyFindings(Design design, ServiceEvaluation evaluation) {
    super(design.units());
    this.design = design;
    this.evaluation = evaluation;
  }

  List<Finding> all() {
    if (!(design.pump().orElse(null) instanceof RotodynamicSpec spec)) {
      return findings;
    }
    for (OtherPumpSpec spare : spec.spares()) {
      String name = StateVariants.spareName(spare);
      Optional<StateResult> worst =
          evaluation.result().states().stream()
              .filter(s -> s.name().startsWith(name))
              .max(Comparator.comparing(StateResult::severity));
      worst.ifPresent(
          state -> {
            boolean good = state.severity().compareTo(Severity.PASS) <= 0;
            add(
                state.severity(),
                Topic.PUMP,
                spare.name(),
                good
                    ? "With the first pump out the spare carries every state it was tried in."
                    : "With the first pump out the spare does not carry the worst state.",
                "State \""
                    + state.name()
                    + "\": "
                    + state.point().map(p -> show(Kind.FLOW, p.flowM3ps())).orElse("no flow")
                    + (state.reasons().isEmpty() ? "" : "; " + String.join("; ", state.reasons()))
                    + ".",
                good
                    ? ""
                    : evaluation.states().orElseThrow().all().stream()
                        .filter(e -> e.result() == state)
                        .map(e -> StateCure.of(design, e))
                        .findFirst()
                        .orElse(""));
          });
    }
    if (spec.spares().isEmpty() && design.service().states().isPresent()) {
      add(
          Severity.NOTE,
          Topic.PUMP,
          "pump",
          "The design names no spare pump: with a pump out "
              + (spec.names().size() > 1
                  ? "the others run alone, a state that is in the table."
                  : "nothing flows."),
          "",
          "");
    }
    return findings;
  }
}
