package sandslurry.assessment.plant.judged;

import java.util.ArrayList;
import java.util.List;
import sandslurry.assessment.plant.AlleyFlush;
import sandslurry.assessment.plant.PlantModel;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.assessment.plant.PlantResult.ModeResult;
import sandslurry.assessment.plant.PlantTotals;
import sandslurry.design.plant.PlantSpec.ModeSpec;
import sandslurry.design.plant.PlantSpec.PenSpec;
import sandslurry.fact.finding.Findings;
import sandslurry.fact.finding.Found;
import sandslurry.fact.finding.Severity;
import sandslurry.plant.network.NoSteadyState;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.network.UnitNote;
import sandslurry.plant.unit.PlantUnit;
import sandslurry.plant.unit.UnitFindings;
import sandslurry.units.Kind;

/**
 * The findings of a plant: of its modes here, of its parts by their own writers.
 *
 * @param model the plant
 * @param result what came of it
 * @param findings takes what is found
 */
public record PlantFindings(PlantModel model, PlantResult result, Findings findings)
    implements PlantFindingWriter {
  @Override
  public void all() {
    result.modes().forEach(mode -> mode.failure().ifPresent(none -> noSteadyState(mode, none)));
    notes();
    Findings ofUnits = new Findings(findings.units());
    result.main().balance().ifPresent(balance -> units(balance, ofUnits));
    new PlantAccountFindings(model, result, ofUnits, findings).all();
    new PlantYearFindings(model, result, findings).all();
    new PlantLiquorFindings(model, result, findings).all();
    new PlantDayFindings(model, result, findings).all();
    findings.all().addAll(ofUnits.all());
    new PlantLoadFindings(model, result, findings).all();
  }

  private void units(SteadyBalance balance, Findings ofUnits) {
    for (PenSpec pen : model.spec().pens()) {
      if (pen.flush().isPresent()) {
        new AlleyFlushFindings(new AlleyFlush(model, pen), balance, ofUnits).all();
      }
    }
    UnitFindings writer =
        new UnitFindings(
            pit -> result.accounts().flatMap(a -> a.figures().of(PlantTotals.PITS, pit)), ofUnits);
    for (PlantUnit unit : model.spec().units()) {
      writer.of(unit.name(), model.at(unit, balance));
    }
  }

  private void noSteadyState(ModeResult mode, NoSteadyState none) {
    Found found = found("no-steady-state", Severity.FAIL, "mode \"" + mode.mode().name() + "\"");
    reason(found, none);
    result
        .days()
        .last()
        .filter(day -> result.days().stopped().isEmpty())
        .ifPresent(
            day ->
                found
                    .with("recovered", Kind.PERCENT, recovered(day.meanFlows()))
                    .count("day", day.number())
                    .why("by-schedule"));
    found.add();
  }

  private double recovered(java.util.Map<String, sandslurry.plant.Stream> flows) {
    return model.totals().capture(flows);
  }

  /** Why a network comes to no rest, and what mends it. */
  static void reason(Found found, NoSteadyState none) {
    found
        .with("units", String.join(", ", none.units()))
        .with("constituent", none.grows().constituent())
        .with("where", none.grows().unit())
        .with("growth", Kind.MASS_PER_DAY, none.grows().kgps())
        .with("time", Kind.DAYS, none.timeS())
        .with("change", Kind.PERCENT, none.change());
    switch (none.reason()) {
      case NO_PURGE -> found.why("no-way-out").cure("way-out");
      case PURGE_TOO_SMALL -> found.why("way-out-too-small").cure("widen");
      case UNSETTLED -> {
        found
            .why(none.timeS() > 0 ? "still-changes" : "swings")
            .why(none.grows().kgps() > 0, "grows")
            .cure("thinner");
      }
    }
  }

  /**
   * What units say of their feeds in a steady balance, each once with the first mode that it is in.
   */
  private void notes() {
    List<UnitNote> notes = new ArrayList<>();
    for (ModeResult mode : result.modes()) {
      mode.balance()
          .ifPresent(
              balance -> {
                for (UnitNote note : balance.notes()) {
                  if (notes.stream().noneMatch(note::like)) {
                    notes.add(note);
                    noted(note, lastsS(note))
                        .with("mode", mode.mode().name())
                        .why("in-the-mode")
                        .add();
                  }
                }
              });
    }
  }

  /** How long a day the modes last in which a unit says so, without end where all do. */
  private double lastsS(UnitNote note) {
    List<ModeSpec> saying =
        result.modes().stream()
            .filter(
                mode ->
                    mode.balance().map(SteadyBalance::notes).stream()
                        .flatMap(List::stream)
                        .anyMatch(note::like))
            .map(ModeResult::mode)
            .toList();
    return saying.size() == result.modes().size()
        ? Double.POSITIVE_INFINITY
        : saying.stream().mapToDouble(mode -> mode.toS() - mode.fromS()).sum();
  }
}
