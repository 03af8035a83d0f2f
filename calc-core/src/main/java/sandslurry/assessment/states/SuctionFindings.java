package sandslurry.assessment.states;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.service.ServiceResult.PumpInState;
import sandslurry.assessment.station.StateResult.SuctionPoint;
import sandslurry.design.Design;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Severity;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** What is to be said of the suction side: NPSH and the sand in its line. */
public final class SuctionFindings extends FindingWriter {
  private final Design design;
  private final ServiceResult result;

  /**
   * The suction side that is judged.
   *
   * @param design the design
   * @param result states and pumps as the assessment shows them
   */
  public SuctionFindings(Design design, ServiceResult result) {
    super(design.units());
    this.design = design;
    this.result = result;
  }

  /**
   * Findings on NPSH margin and on sand in the suction line.
   *
   * @return the findings; empty without suction data
   */
  public List<Finding> all() {
    List<PumpInState> all =
        result.pumps().stream().filter(f -> f.pump().suction().isPresent()).toList();
    if (!all.isEmpty()) {
      npsh(all);
      sand(all);
    }
    return findings;
  }

  private static SuctionPoint suction(PumpInState at) {
    return at.pump().suction().orElseThrow();
  }

  private void sand(List<PumpInState> all) {
    PumpInState sand =
        all.stream()
            .max(
                Comparator.comparing((PumpInState f) -> suction(f).severity())
                    .thenComparingDouble(
                        f -> suction(f).toPassMps().orElse(0) - suction(f).velocityMps()))
            .orElseThrow();
    if (sand.point().sandFraction() > 0) {
      SuctionPoint point = suction(sand);
      boolean good = point.severity() == Severity.PASS;
      double pass = point.toPassMps().orElse(point.velocityMps());
      boolean slow = point.velocityMps() < pass;
      double bore = Measure.LENGTH.si(design.service().suction().orElseThrow().run().largestBore());
      add(
          point.severity(),
          Topic.PLUGGING,
          "suction",
          good
              ? "Sand stays in motion in the suction line in every state."
              : slow || point.toPassMps().isEmpty()
                  ? "Sand may settle in the suction line."
                  : "Whether sand settles in the suction line is not known: the governing"
                      + " correlations do not apply.",
          "In the state \""
              + sand.state().name()
              + "\" the velocity is "
              + show(Kind.VELOCITY, point.velocityMps())
              + (point.toPassMps().isPresent()
                  ? (slow ? "; required is " : "; the correlations give up to ")
                      + show(Kind.VELOCITY, pass)
                  : ", and the flow is not turbulent")
              + ".",
          good
              ? ""
              : slow
                  ? "Use a bore of about "
                      + show(Kind.BORE, bore * Math.sqrt(point.velocityMps() / pass))
                      + " or less and check NPSH again, or keep the suction short and falling to"
                      + " the pump."
                  : point.toPassMps().isPresent()
                      ? "Keep the suction short and let it fall towards the pump."
                      : "Keep the suction short, and dilute before the pump.");
    }
  }

  private void npsh(List<PumpInState> all) {
    List<PumpInState> known = all.stream().filter(f -> suction(f).requiredM().isPresent()).toList();
    Optional<PumpInState> scant =
        known.stream()
            .min(
                Comparator.comparingDouble(
                    f ->
                        suction(f).availableM()
                            - suction(f).margin().neededM(suction(f).requiredM().getAsDouble())));
    if (known.size() < all.size()) {
      PumpInState unknown =
          all.stream().filter(f -> suction(f).requiredM().isEmpty()).findFirst().orElseThrow();
      add(
          scant.isEmpty() ? Severity.NOTE : Severity.CAUTION,
          Topic.PUMP,
          unknown.pump().name(),
          "NPSH is not judged in every state: the NPSH required is not given up to its flow rate.",
          "In the state \""
              + unknown.state().name()
              + "\" the pump runs at "
              + show(Kind.FLOW, unknown.pump().flowM3ps())
              + " with "
              + show(Kind.HEAD, suction(unknown).availableM())
              + " available.",
          "Give the NPSH required up to that flow rate.");
    }
    if (scant.isEmpty()) {
      return;
    }
    SuctionPoint point = suction(scant.get());
    double required = point.requiredM().getAsDouble();
    double needed = point.margin().neededM(required);
    Severity severity =
        point.availableM() < required
            ? Severity.FAIL
            : point.availableM() < needed ? Severity.CAUTION : Severity.PASS;
    add(
        severity,
        Topic.PUMP,
        scant.get().pump().name(),
        severity == Severity.FAIL
            ? "The pump cavitates: less NPSH is available than it requires."
            : severity == Severity.CAUTION
                ? "NPSH available is above required but below the margin for sand and gas."
                : "NPSH is available with its margin in every state.",
        "In the state \""
            + scant.get().state().name()
            + "\" "
            + show(Kind.HEAD, point.availableM())
            + " is available, "
            + show(Kind.HEAD, required)
            + " required, "
            + show(Kind.HEAD, needed)
            + " with the margin (static suction head "
            + show(Kind.HEAD, point.floodM())
            + ", friction "
            + show(Kind.HEAD, point.lossM())
            + ""
            + (point.accelerationM() > 0
                ? ", " + show(Kind.HEAD, point.accelerationM()) + " acceleration head"
                : "")
            + ").",
        severity == Severity.PASS
            ? ""
            : "Keep the pit "
                + show(Kind.HEAD, needed - point.availableM())
                + " higher above the pump, or cut the friction of the suction line by that.");
  }
}
