package sandslurry.report.section;

import java.util.ArrayList;
import java.util.List;
import sandslurry.assessment.plant.PlantResult.Accounts;
import sandslurry.assessment.plant.PlantResult.Basis;
import sandslurry.assessment.plant.PlantResult.Compared;
import sandslurry.assessment.plant.PlantResult.SieveCheck;
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
                    + " of what comes in, and the pits hold back "
                    + units.show(Kind.PERCENT, rounded(basis.kept()))
                    + " of a constituent at most."
                : "Over a day in which each mode is at its own steady state, weighted by its hours."
                    + " "
                    + basis.why())
            + " The range in brackets is over all ends of the inputs that are ranges and, one at a"
            + " time, over liquor a third to three times as thick, the coldest and the warmest"
            + " liquor, every model of a cyclone, conservative and optimistic capture, and what is"
            + " known of how fibre settles and rinse displaces."
            + (basis.byDay()
                ? " Its ends are those of the steady modes, corrected to the day by schedule."
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
    table(List.of("day and modes", "day by schedule", "steady modes", "difference [%]"), rows);
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
            "wanted, passing [%]",
            "sand bought [%]",
            "recovered, all new [%]",
            "circulating [%]"),
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
                "circulating, by that recovery [%]"));
    if (accounts.circulation().isPresent()) {
      heads.add("circulating, through the units [%]");
      heads.add("recovery, circulating [%]");
      heads.add(head("bought, circulating", Kind.MASS_PER_DAY));
      heads.add(head("reused, circulating", Kind.MASS_PER_DAY));
    }
    table(heads, rows);
    paragraph(
        "The sand that circulates coarsens, because fine grains are lost. Recovery is of the sand"
            + " flushed."
            + accounts
                .circulation()
                .map(
                    rest ->
                        " For the circulating sand the plant was balanced "
                            + rest.passes()
                            + " times until the bedding no longer changed. The bedding must turn"
                            + " over about "
                            + number(Kind.NUMBER, rest.turnsToRest())
                            + " times for that, which can take years.")
                .orElse(""));
  }
}
