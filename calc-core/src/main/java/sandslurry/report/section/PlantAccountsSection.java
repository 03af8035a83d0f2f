package sandslurry.report.section;

import java.util.ArrayList;
import java.util.List;
import sandslurry.assessment.PlantResult.Accounts;
import sandslurry.assessment.PlantResult.Basis;
import sandslurry.assessment.PlantResult.Compared;
import sandslurry.assessment.PlantResult.SieveCheck;
import sandslurry.material.sand.SizeClass;
import sandslurry.plant.Stream;
import sandslurry.plant.account.SandAccount;
import sandslurry.plant.account.SandCirculation;
import sandslurry.report.block.Block;
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
    Basis basis = accounts.basis();
    paragraph(
        (basis.byDay()
                ? "Over day "
                    + basis.day()
                    + " of the schedule, which repeats the day before: nothing that leaves differs"
                    + " by more than "
                    + units.show(Kind.PERCENT, basis.change())
                    + " of what comes in, and the pits keep "
                    + units.show(Kind.PERCENT, rounded(basis.kept()))
                    + " of a constituent at most."
                : "Over a day in which each mode is at its own steady state, weighted by its hours."
                    + " "
                    + basis.why())
            + " The range in brackets is over all ends of the inputs that are ranges, from the"
            + " cautious to the hopeful relation of the settling units, and from the dirty to the"
            + " clean end of how fibre settles and rinse displaces."
            + (basis.byDay()
                ? " Its ends, and the sand that circulates, are found with the modes at rest, times"
                    + " what the schedule makes of each flow in the expected case."
                : ""));
    compared(basis);
    accounts
        .groups()
        .forEach(
            (heading, figures) -> {
              List<List<String>> rows = new ArrayList<>();
              figures.forEach(figure -> rows.add(List.of(figure.what(), figure.shown(units))));
              table(List.of(heading, "value"), rows);
            });
    if (!accounts.notCounted().isEmpty()) {
      paragraph(
          "Energy not counted, because no head is known: "
              + String.join(", ", accounts.notCounted())
              + ".");
    }
    if (!accounts.missingPrices().isEmpty()) {
      paragraph(
          "No price was given for "
              + String.join(", ", accounts.missingPrices())
              + ", so what it costs is not said. Prices are the user's own, in one currency; none"
              + " is ever assumed.");
    }
    sieves();
    classes();
  }

  private static double rounded(double share) {
    return Math.abs(share) < 1e-9 ? 0 : share;
  }

  private void compared(Basis basis) {
    if (basis.compared().isEmpty()) {
      return;
    }
    List<List<String>> rows = new ArrayList<>();
    for (Compared one : basis.compared()) {
      rows.add(
          List.of(
              one.what(),
              units.show(one.kind(), one.byDay()),
              units.show(one.kind(), one.atRest()),
              one.atRest() > 0 ? number(Kind.PERCENT, one.byDay() / one.atRest() - 1) : "-"));
    }
    table(List.of("day and modes", "day by schedule", "modes at rest", "difference [%]"), rows);
  }

  private void sieves() {
    if (accounts.sieves().isEmpty()) {
      return;
    }
    List<List<String>> rows = new ArrayList<>();
    for (SieveCheck sieve : accounts.sieves()) {
      rows.add(
          List.of(
              number(Kind.GRAIN, sieve.limit().sizeM()),
              number(Kind.PERCENT, sieve.limit().least())
                  + " to "
                  + number(Kind.PERCENT, sieve.limit().most()),
              number(Kind.PERCENT, sieve.bought()),
              passing(sieve, sieve.recovered()),
              passing(sieve, sieve.circulating())));
    }
    table(
        List.of(
            head("sieve", Kind.GRAIN),
            "wanted to pass [%]",
            "sand bought [%]",
            "recovered, all new [%]",
            "bedding at rest [%]"),
        rows);
  }

  private String passing(SieveCheck sieve, double share) {
    int outside = sieve.outside(share);
    return number(Kind.PERCENT, share)
        + (outside < 0 ? " too little" : outside > 0 ? " too much" : "");
  }

  private void classes() {
    SandAccount sand = accounts.sand();
    List<SizeClass> bought = sand.bedded().constituents().sandClasses();
    List<List<String>> rows = new ArrayList<>();
    for (int k = 0; k < bought.size(); k++) {
      double lost = 0;
      for (Stream stream : sand.lost().values()) {
        lost += stream.sandKgps(k);
      }
      List<String> row =
          new ArrayList<>(
              List.of(
                  number(Kind.GRAIN, bought.get(k).lowM())
                      + " to "
                      + number(Kind.GRAIN, bought.get(k).highM()),
                  number(Kind.MASS_PER_DAY, sand.flushed().sandKgps(k)),
                  number(Kind.MASS_PER_DAY, sand.recovered().sandKgps(k)),
                  number(Kind.MASS_PER_DAY, lost),
                  number(Kind.PERCENT, sand.recoveryOfFlushed(k)),
                  number(Kind.PERCENT, bought.get(k).massFraction()),
                  number(Kind.PERCENT, accounts.cycle().bedded().get(k).massFraction())));
      if (accounts.circulation().isPresent()) {
        SandCirculation rest = accounts.circulation().get();
        row.add(number(Kind.PERCENT, rest.bedded().sandClasses().get(k).massFraction()));
        row.add(number(Kind.PERCENT, accounts.circulating().orElseThrow().recoveryOfFlushed(k)));
        row.add(number(Kind.MASS_PER_DAY, rest.bought().sandKgps(k)));
        row.add(number(Kind.MASS_PER_DAY, rest.rebedded().sandKgps(k)));
      }
      rows.add(row);
    }
    List<String> heads =
        new ArrayList<>(
            List.of(
                head("class", Kind.GRAIN),
                head("flushed, new sand", Kind.MASS_PER_DAY),
                head("recovered", Kind.MASS_PER_DAY),
                head("lost", Kind.MASS_PER_DAY),
                "recovery [%]",
                "of the sand bought [%]",
                "at rest by that recovery [%]"));
    if (accounts.circulation().isPresent()) {
      heads.add("at rest through the units [%]");
      heads.add("recovery at rest [%]");
      heads.add(head("bought at rest", Kind.MASS_PER_DAY));
      heads.add(head("bedded again at rest", Kind.MASS_PER_DAY));
    }
    table(heads, rows);
    paragraph(
        "The sand that circulates coarsens, because fine grains are lost. Recovery is of the sand"
            + " flushed."
            + accounts
                .circulation()
                .map(
                    rest ->
                        " At rest each class bedded is what is bought and what comes back of it,"
                            + " with the plant asked anew "
                            + rest.passes()
                            + " times until the bedding stayed what it is. The bedding must turn"
                            + " over about "
                            + number(Kind.NUMBER, rest.turnsToRest())
                            + " times for that: where a class comes back almost whole, the rest is"
                            + " years away.")
                .orElse(""));
  }
}
