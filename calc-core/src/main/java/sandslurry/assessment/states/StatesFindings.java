package sandslurry.assessment.states;

import java.util.List;
import java.util.stream.Collectors;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.states.StateEvaluation.Evaluated;
import sandslurry.assessment.station.StateResult;
import sandslurry.design.Design;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Severity;
import sandslurry.units.Kind;

/** The verdict on all states of the line: which of them governs. */
public final class StatesFindings extends FindingWriter {
  private final Design design;
  private final ServiceResult result;
  private final StatesEvaluation evaluation;

  /**
   * The states that are judged.
   *
   * @param design the design
   * @param result states and pumps as the assessment shows them
   * @param evaluation the states with what they were computed from
   */
  public StatesFindings(Design design, ServiceResult result, StatesEvaluation evaluation) {
    super(design.units());
    this.design = design;
    this.result = result;
    this.evaluation = evaluation;
  }

  /**
   * Findings on the governing state.
   *
   * @return the findings; empty when the design asks for no states
   */
  public List<Finding> all() {
    if (result.states().stream().noneMatch(StateResult::asked)) {
      return findings;
    }
    Evaluated governing = evaluation.governing().orElseThrow();
    StateResult worst = governing.result();
    String where =
        worst
            .point()
            .map(
                p ->
                    " The flow rate is "
                        + show(Kind.FLOW, p.flowM3ps())
                        + ", the velocity "
                        + show(Kind.VELOCITY, p.velocityMps())
                        + " in "
                        + p.run()
                        + (p.toPassMps().isPresent()
                            ? "; required is "
                                + show(Kind.VELOCITY, p.toPassMps().getAsDouble())
                                + ""
                            : "")
                        + ".")
            .orElse("");
    String others =
        result.states().stream()
            .filter(s -> s.severity().compareTo(Severity.PASS) > 0 && s != worst)
            .map(s -> s.name() + " (" + s.severity() + ")")
            .collect(Collectors.joining("; "));
    int count = result.states().size();
    boolean good = worst.severity().compareTo(Severity.PASS) <= 0;
    add(
        worst.severity(),
        Topic.STATES,
        good ? "states" : worst.name(),
        good
            ? "All " + count + " states pass; the closest is: " + worst.name() + "."
            : "This state governs (of "
                + count
                + (worst.reasons().isEmpty() ? ")." : "): " + worst.reasons().get(0) + "."),
        (worst.reasons().size() > 1
                ? "Also: "
                    + String.join("; ", worst.reasons().subList(1, worst.reasons().size()))
                    + "."
                : "")
            + where
            + (others.isEmpty() ? "" : " Other states that do not pass: " + others + "."),
        StateCure.of(design, governing));
    return findings;
  }
}
