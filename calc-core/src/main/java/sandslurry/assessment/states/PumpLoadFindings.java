package sandslurry.assessment.states;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.service.ServiceResult.PumpInState;
import sandslurry.assessment.station.StateResult;
import sandslurry.design.Design;
import sandslurry.design.station.PumpSpec.MotorSpec;
import sandslurry.design.station.PumpSpec.RotodynamicSpec;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Severity;
import sandslurry.pump.rotodynamic.OperatingRegion;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** What the states ask of motors, and how far from their best flow the pumps work. */
public final class PumpLoadFindings extends FindingWriter {
  private final Design design;
  private final ServiceResult result;

  /**
   * The pumps that are judged.
   *
   * @param design the design
   * @param result states and pumps as the assessment shows them
   */
  public PumpLoadFindings(Design design, ServiceResult result) {
    super(design.units());
    this.design = design;
    this.result = result;
  }

  /**
   * Findings on motor power and on the operating region of each pump.
   *
   * @return the findings
   */
  public List<Finding> all() {
    motor();
    if (result.states().stream().anyMatch(StateResult::asked) || stationGiven()) {
      region();
    }
    return findings;
  }

  private boolean stationGiven() {
    return design.pump().orElse(null) instanceof RotodynamicSpec spec
        && (spec.station().minimumFlow().isPresent() || !spec.station().others().isEmpty());
  }

  private void motor() {
    Optional<PumpInState> most =
        result.pumps().stream()
            .filter(f -> f.pump().motor().isPresent())
            .max(
                Comparator.comparingDouble(
                    f ->
                        f.pump().shaftW()
                            / Measure.POWER.si(f.pump().motor().orElseThrow().rating())));
    if (most.isEmpty()) {
      return;
    }
    Optional<MotorSpec> motor = most.get().pump().motor();
    double asked = most.get().pump().shaftW();
    double rating = Measure.POWER.si(motor.get().rating());
    double factor = Measure.FRACTION.si(motor.get().serviceFactor());
    String why =
        "The highest shaft power is that of "
            + most.get().pump().name()
            + " in the state \""
            + most.get().state().name()
            + "\": "
            + show(Kind.POWER, asked)
            + "; the motor is rated "
            + show(Kind.POWER, rating)
            + " with a service factor of "
            + show(Kind.NUMBER, factor)
            + ".";
    if (asked > rating) {
      boolean over = asked > rating * factor;
      add(
          over ? Severity.FAIL : Severity.CAUTION,
          Topic.PUMP,
          "motor",
          over
              ? "The motor is overloaded in its worst state."
              : "The motor runs in its service factor in its worst state.",
          why,
          "Fit a motor of " + show(Kind.POWER, asked) + " or more at the shaft.");
    } else {
      add(Severity.PASS, Topic.PUMP, "motor", "The motor covers every state.", why, "");
    }
  }

  private void region() {
    record Ratio(PumpInState at, double ofBest) {}
    List<Ratio> ratios =
        result.pumps().stream()
            .filter(f -> f.pump().region().isPresent() && f.pump().flowM3ps() > 0)
            .map(
                f ->
                    new Ratio(
                        f, f.pump().flowM3ps() / f.pump().region().orElseThrow().bestFlowM3ps()))
            .toList();
    if (ratios.isEmpty()) {
      return;
    }
    Ratio least = ratios.stream().min(Comparator.comparingDouble(Ratio::ofBest)).orElseThrow();
    Ratio most = ratios.stream().max(Comparator.comparingDouble(Ratio::ofBest)).orElseThrow();
    OperatingRegion region = least.at().pump().region().orElseThrow();
    boolean below = !region.place(least.at().pump().flowM3ps()).allowable();
    boolean above =
        !most.at().pump().region().orElseThrow().place(most.at().pump().flowM3ps()).allowable();
    boolean preferred =
        ratios.stream()
            .allMatch(
                r ->
                    r.at().pump().region().orElseThrow().place(r.at().pump().flowM3ps())
                        == OperatingRegion.Place.PREFERRED);
    String why =
        "The pumps run from "
            + show(Kind.PERCENT, least.ofBest())
            + " ("
            + least.at().pump().name()
            + ", "
            + least.at().state().name()
            + ") to "
            + show(Kind.PERCENT, most.ofBest())
            + " ("
            + most.at().pump().name()
            + ", "
            + most.at().state().name()
            + ") of the BEP flow; preferred is "
            + show(Kind.PERCENT, region.preferredLow())
            + " to "
            + show(Kind.PERCENT, region.preferredHigh())
            + ", the minimum flow "
            + show(Kind.FLOW, region.minimumFlowM3ps())
            + ".";
    if (below || above) {
      add(
          Severity.CAUTION,
          Topic.PUMP,
          (below ? least : most).at().pump().name(),
          below
              ? "In some state a pump runs below its minimum flow: it overheats, vibrates and"
                  + " wears."
              : "In some state a pump runs outside its allowable region: it may cavitate and"
                  + " vibrate.",
          why,
          below
              ? "Choose a pump with a BEP flow of "
                  + show(Kind.FLOW, least.at().pump().flowM3ps() / region.preferredLow())
                  + " or less, or run fewer pumps at once."
              : "Choose a pump with a BEP flow of "
                  + show(
                      Kind.FLOW,
                      most.at().pump().flowM3ps()
                          / most.at().pump().region().orElseThrow().preferredHigh())
                  + " or more, or slow it down in that state.");
    } else {
      add(
          preferred ? Severity.PASS : Severity.NOTE,
          Topic.PUMP,
          "pump",
          preferred
              ? "The pumps run in their preferred region in every state."
              : "The pumps run in their allowable region, but not always in the preferred one.",
          why,
          "");
    }
  }
}
