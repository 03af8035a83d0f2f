package sandslurry.assessment;

import java.util.List;
import java.util.Optional;
import sandslurry.design.Design;
import sandslurry.material.Carrier;
import sandslurry.separation.LaneResult;

/**
 * What came of a design: everything that a person sees is a view of this.
 *
 * @param design the design
 * @param carrier the liquid as it was understood
 * @param line the line, when there is one
 * @param pump the pump, when there is one
 * @param lane the settling lane, when there is one
 * @param findings the findings, gravest first
 * @param cautions the dangers to people
 * @param working the steps behind every number
 */
public record Assessment(
    Design design,
    Carrier carrier,
    Optional<LineResult> line,
    Optional<PumpResult> pump,
    Optional<LaneResult> lane,
    List<Finding> findings,
    List<SafetyCaution> cautions,
    List<Step> working) {
  /** Copies the lists. */
  public Assessment {
    findings = List.copyOf(findings);
    cautions = List.copyOf(cautions);
    working = List.copyOf(working);
  }

  /**
   * The verdict on the whole design.
   *
   * @return the gravest severity of all findings; {@link Severity#PASS} when there are only notes
   */
  public Severity verdict() {
    return findings.stream().map(Finding::severity).reduce(Severity.PASS, Severity::or);
  }
}
