package sandslurry.report;

import java.util.ArrayList;
import java.util.List;
import sandslurry.assessment.PlantResult.Accounts;
import sandslurry.circuit.SandAccount;
import sandslurry.circuit.Stream;
import sandslurry.material.SizeClass;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** The accounts of the plant in a report. */
final class PlantAccountsSection extends SectionWriter {
  private final Accounts accounts;

  private PlantAccountsSection(Accounts accounts, UnitSystem units) {
    super(units);
    this.accounts = accounts;
  }

  static List<Block> of(Accounts accounts, UnitSystem units) {
    PlantAccountsSection section = new PlantAccountsSection(accounts, units);
    section.accounts();
    return section.blocks();
  }

  private void accounts() {
    heading(2, "Accounts");
    paragraph(
        "Over a day in which each mode is at its own steady state, weighted by its hours. The range"
            + " in brackets is over all ends of the inputs that are ranges, and from the cautious to"
            + " the hopeful relation of the settling units.");
    accounts
        .groups()
        .forEach(
            (heading, figures) -> {
              List<List<String>> rows = new ArrayList<>();
              figures.forEach(figure -> rows.add(List.of(figure.what(), figure.shown(units))));
              table(List.of(heading, "value"), rows);
            });
    classes();
  }

  private void classes() {
    SandAccount sand = accounts.sand();
    List<SizeClass> bought = sand.bedded().constituents().sandClasses();
    List<SizeClass> circulating = accounts.cycle().bedded();
    List<List<String>> rows = new ArrayList<>();
    for (int k = 0; k < bought.size(); k++) {
      double lost = 0;
      for (Stream stream : sand.lost().values()) {
        lost += stream.sandKgps(k);
      }
      rows.add(
          List.of(
              number(Kind.GRAIN, bought.get(k).lowM())
                  + " to "
                  + number(Kind.GRAIN, bought.get(k).highM()),
              number(Kind.MASS_PER_DAY, sand.flushed().sandKgps(k)),
              number(Kind.MASS_PER_DAY, sand.recovered().sandKgps(k)),
              number(Kind.MASS_PER_DAY, lost),
              number(Kind.PERCENT, sand.recoveryOfFlushed(k)),
              number(Kind.PERCENT, bought.get(k).massFraction()),
              number(Kind.PERCENT, circulating.get(k).massFraction())));
    }
    table(
        List.of(
            head("class", Kind.GRAIN),
            head("flushed", Kind.MASS_PER_DAY),
            head("recovered", Kind.MASS_PER_DAY),
            head("lost", Kind.MASS_PER_DAY),
            "recovery [%]",
            "of the sand bought [%]",
            "of that which circulates [%]"),
        rows);
    paragraph(
        "The sand that circulates coarsens, because fine grains are lost; its shares are those at"
            + " rest, with the recovery of each class as it is for the sand bought. Where a class"
            + " comes back almost whole, that rest is years away.");
  }
}
