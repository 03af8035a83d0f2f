package sandslurry.assessment.plant.judged;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import sandslurry.assessment.plant.PlantModel;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.assessment.plant.PlantResult.ModeResult;
import sandslurry.assessment.plant.PlantTotals;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Severity;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** What is to be said of a plant: of its modes here, of its parts by their own findings. */
public final class PlantFindings extends PlantFindingWriter {
  /**
   * The plant that is judged.
   *
   * @param model the plant
   * @param result what came of it
   * @param units the units in which the sentences show numbers
   */
  public PlantFindings(PlantModel model, PlantResult result, UnitSystem units) {
    super(model, result, units);
  }

  @Override
  public List<Finding> all() {
    for (ModeResult mode : result.modes()) {
      mode.failure()
          .ifPresent(
              failure ->
                  add(
                      Severity.FAIL,
                      "mode \"" + mode.mode().name() + "\"",
                      "The plant comes to no steady state in this mode.",
                      failure.explanation() + bySchedule(),
                      "Change the units named until every constituent has a way out."));
    }
    notes();
    List.of(
            new PlantAccountFindings(model, result, units),
            new PlantLiquorFindings(model, result, units),
            new PlantDayFindings(model, result, units),
            new PlantUnitFindings(model, result, units),
            new PlantLoadFindings(model, result, units))
        .forEach(writer -> findings.addAll(writer.all()));
    return findings;
  }

  /** What the schedule comes to, whose modes take turns, where a mode alone comes to no rest. */
  private String bySchedule() {
    return result
        .days()
        .last()
        .filter(day -> result.days().stopped().isEmpty())
        .map(
            day ->
                " By the schedule, in which the modes take turns, the plant recovers "
                    + show(Kind.PERCENT, new PlantTotals(model).capture(day.meanFlows()))
                    + " of the sand flushed on day "
                    + day.number()
                    + ".")
        .orElse("");
  }

  /**
   * What units say of their feeds in a steady balance, each once with the first mode that it is in.
   */
  private void notes() {
    Set<String> told = new LinkedHashSet<>();
    for (ModeResult mode : result.modes()) {
      String when = "It is so when the mode \"" + mode.mode().name() + "\" is at rest.";
      mode.balance()
          .ifPresent(
              balance ->
                  balance.notes().stream().filter(told::add).forEach(note -> said(note, when)));
    }
  }
}
