package sandslurry.report.section;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import sandslurry.assessment.plant.PlantResult.Accounts;
import sandslurry.assessment.plant.PlantResult.Basis;
import sandslurry.assessment.plant.PlantResult.Compared;
import sandslurry.assessment.plant.PlantResult.MonthResult;
import sandslurry.assessment.plant.PlantResult.SieveCheck;
import sandslurry.assessment.plant.PlantResult.Year;
import sandslurry.assessment.plant.PlantTotals;
import sandslurry.material.sand.SizeClass;
import sandslurry.plant.Figure;
import sandslurry.plant.account.SandAccount;
import sandslurry.plant.account.SandCirculation;
import sandslurry.plant.account.StorageYear;
import sandslurry.plant.account.StorageYear.Course;
import sandslurry.report.block.Page;
import sandslurry.report.figure.Column;
import sandslurry.units.Kind;

/** The accounts of the plant in a report. */
record PlantAccountsSection(Accounts accounts, List<String> sources, Page page)
    implements SectionWriter {
  /** From this share on all sand of a class is recovered. */
  private static final double ALL = 0.9995;

  private static final String STORAGE = "Storage: ";
  private static final String NET_INFLOW = "net inflow, ";
  private static final String MANY = ", 50 for more";

  /** The months of the year. */
  static final List<Column<MonthResult>> MONTHS =
      List.of(
          Column.text("month", one -> one.month().name()),
          Column.of("air", Kind.TEMPERATURE, one -> one.month().airK(), "air-temperature"),
          Column.of("liquor", Kind.TEMPERATURE, one -> one.month().liquorK(), "liquor-temperature"),
          Column.of("rain", Kind.DEPTH, one -> one.month().rainM(), "rain"),
          Column.of("evaporation", Kind.DEPTH, one -> one.month().evaporationM(), "evaporation"),
          Column.maybe("sand recovered", Kind.PERCENT, MonthResult::capture, "month-recovery"),
          Column.maybe(
              "solids of the liquor", Kind.PERCENT, MonthResult::liquor, "month-liquor-solids"));

  /** The course of a storage. */
  static final List<Column<Course>> COURSE =
      List.of(
          Column.text("month", Course::name),
          Column.of("inflow", Kind.VOLUME, one -> one.water().inflowM3(), "month-inflow"),
          Column.of("rain", Kind.VOLUME, one -> one.water().rainM3(), "month-rain"),
          Column.of("runoff", Kind.VOLUME, one -> one.water().runoffM3(), "month-runoff"),
          Column.of(
              "evaporation", Kind.VOLUME, one -> one.water().evaporationM3(), "month-evaporation"),
          Column.of("withdrawn", Kind.VOLUME, one -> one.water().withdrawnM3(), "month-withdrawn"),
          Column.of("most held", Kind.VOLUME, Course::mostM3, "month-most-held"),
          Column.of("held at its end", Kind.VOLUME, Course::endM3, "month-end-held"),
          Column.of("freeboard", Kind.HEAD, Course::freeboardM, "month-freeboard"));

  void write() {
    heading(2, "Accounts");
    Basis basis = accounts.basis();
    paragraph(
        (basis.byDay()
                ? "Over day "
                    + basis.day()
                    + " of the schedule, which repeats the day before: nothing that leaves differs"
                    + " by more than "
                    + show(Kind.PERCENT, basis.change())
                    + " of what comes in, and the pits hold back "
                    + show(Kind.PERCENT, rounded(basis.kept()))
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
    groups();
    if (!accounts.figures().notCounted().isEmpty()) {
      paragraph(
          "Energy not counted, because no head is known: "
              + String.join(", ", accounts.figures().notCounted())
              + ".");
    }
    if (!accounts.figures().missingPrices().isEmpty()) {
      paragraph(
          "No price was given for "
              + String.join(", ", accounts.figures().missingPrices())
              + ", so what it costs is not said. Prices are the user's own, in one currency; none"
              + " is ever assumed.");
    }
    accounts.year().ifPresent(this::year);
    sieves();
    classes();
  }

  private void groups() {
    accounts
        .figures()
        .groups()
        .forEach(
            (heading, figures) -> {
              if (!heading.startsWith(STORAGE)) {
                table(
                    List.of(heading, "value"),
                    figures.stream().map(f -> List.of(f.what(), f.shown(units()))).toList());
              } else if (heading.equals(STORAGE + firstStorage())) {
                storages();
              }
            });
  }

  private String firstStorage() {
    return accounts.storages().keySet().iterator().next();
  }

  /** The storages beside each other; where the year is shown, its months are there. */
  private void storages() {
    List<String> head = new ArrayList<>(List.of("Storage"));
    Map<String, List<String>> rows = new LinkedHashMap<>();
    accounts
        .storages()
        .keySet()
        .forEach(
            name -> {
              head.add(name);
              for (Figure figure : accounts.figures().groups().get(STORAGE + name)) {
                if (accounts.year().isEmpty() || !figure.what().startsWith(NET_INFLOW)) {
                  List<String> row =
                      rows.computeIfAbsent(
                          figure.what().replace(MANY, ""), w -> new ArrayList<>(List.of(w)));
                  while (row.size() < head.size() - 1) {
                    row.add("-");
                  }
                  row.add(years(figure));
                }
              }
            });
    rows.values()
        .forEach(
            row -> {
              while (row.size() < head.size()) {
                row.add("-");
              }
            });
    table(head, List.copyOf(rows.values()));
  }

  /** Nobody plans further than fifty years. */
  private String years(Figure figure) {
    if (!figure.what().endsWith(MANY) || figure.range().high() < PlantTotals.MANY_YEARS) {
      return figure.shown(units());
    }
    double least = figure.range().low();
    String many = number(Kind.NUMBER, PlantTotals.MANY_YEARS).replaceFirst("\\..*", "");
    return figure.range().base() < PlantTotals.MANY_YEARS
        ? number(Kind.YEARS, figure.range().base())
            + " ("
            + number(Kind.YEARS, least)
            + " to over "
            + many
            + ")"
        : least < PlantTotals.MANY_YEARS
            ? "over " + many + " (" + number(Kind.YEARS, least) + " at the least)"
            : "over " + many;
  }

  private void year(Year year) {
    heading(2, "Year");
    tableOf(year.months(), MONTHS);
    paragraph(
        "Sand recovered and solids are those of each mode at steady state in liquor of that month,"
            + " as warm as the air, but no colder than the design says.");
    sources.forEach(this::paragraph);
    year.storages().forEach(this::course);
    if (!year.storages().isEmpty()) {
      paragraph(
          "A storage is emptied at the end of a month, and most is held before. Sand that settles"
              + " is counted as liquid here. The net inflow at the working level is that of the"
              + " days of storage.");
    }
  }

  private void course(String name, StorageYear year) {
    heading(3, STORAGE + name);
    List<Column<Course>> columns = new ArrayList<>(COURSE);
    columns.add(
        Column.text(
            head("net inflow at the working level", Kind.VOLUME), one -> netInflow(name, one)));
    tableOf(year.months(), columns);
    if (!year.repeats()) {
      paragraph(
          "This is the first year, from empty on; it ends with "
              + show(Kind.VOLUME, year.gainM3())
              + " more than it began with.");
    }
  }

  private String netInflow(String storage, Course month) {
    return accounts.figures().groups().get(STORAGE + storage).stream()
        .filter(figure -> figure.what().startsWith(NET_INFLOW + month.name() + ","))
        .findFirst()
        .map(
            f ->
                units().number(f.kind(), f.range().base(), f.range().low(), f.range().high())
                    + units().ends(f.kind(), f.range().low(), f.range().high()))
        .orElse("-");
  }

  private static double rounded(double share) {
    return Math.abs(share) < 1e-9 ? 0 : share;
  }

  private void compared(Basis basis) {
    if (basis.compared().isEmpty()) {
      return;
    }
    tableOf(
        basis.compared(),
        List.of(
            Column.text("day and modes", Compared::what),
            Column.text("day by schedule", one -> show(one.kind(), one.byDay())),
            Column.text("steady modes", one -> show(one.kind(), one.atRest())),
            Column.maybe("difference", Kind.PERCENT, PlantAccountsSection::difference)));
  }

  private static OptionalDouble difference(Compared one) {
    return one.atRest() > 0
        ? OptionalDouble.of(rounded(one.byDay() / one.atRest() - 1))
        : OptionalDouble.empty();
  }

  private void sieves() {
    if (accounts.bedding().sieves().isEmpty()) {
      return;
    }
    tableOf(
        accounts.bedding().sieves(),
        List.of(
            Column.of("sieve", Kind.GRAIN, sieve -> sieve.limit().sizeM()),
            Column.text(
                "wanted, passing [%]",
                sieve ->
                    number(Kind.PERCENT, sieve.limit().least())
                        + " to "
                        + number(Kind.PERCENT, sieve.limit().most())),
            Column.of("sand bought", Kind.PERCENT, SieveCheck::bought),
            Column.text("recovered, all new [%]", sieve -> passing(sieve, sieve.recovered())),
            Column.text("circulating [%]", sieve -> passing(sieve, sieve.circulating()))));
  }

  private String passing(SieveCheck sieve, double share) {
    int outside = sieve.outside(share);
    return number(Kind.PERCENT, share)
        + (outside < 0 ? " too little" : outside > 0 ? " too much" : "");
  }

  private void classes() {
    SandAccount sand = accounts.sand();
    List<SizeClass> bought = sand.bedded().constituents().sandClasses();
    List<Column<Integer>> columns =
        new ArrayList<>(
            List.of(
                Column.text(
                    head("class", Kind.GRAIN),
                    k ->
                        number(Kind.GRAIN, bought.get(k).lowM())
                            + " to "
                            + number(Kind.GRAIN, bought.get(k).highM())),
                Column.of("flushed, new sand", Kind.MASS_PER_DAY, k -> sand.flushed().sandKgps(k)),
                Column.of("recovered", Kind.MASS_PER_DAY, k -> sand.recovered().sandKgps(k)),
                Column.of("lost", Kind.MASS_PER_DAY, k -> lostKgps(sand, k)),
                Column.of("recovery", Kind.PERCENT, sand::recoveryOfFlushed),
                Column.of("of the sand bought", Kind.PERCENT, k -> bought.get(k).massFraction()),
                Column.of(
                    "circulating, by that recovery",
                    Kind.PERCENT,
                    k -> accounts.circulation().asNew().bedded().get(k).massFraction())));
    accounts.circulation().sand().ifPresent(rest -> columns.addAll(circulating(rest)));
    int all = bought.size();
    int caught = all;
    while (caught > 0 && sand.recoveryOfFlushed(caught - 1) > ALL) {
      caught--;
    }
    int shown = Math.min(all, caught + 1);
    heading(2, "Sand by grain size");
    tableOf(IntStream.range(0, shown).boxed().toList(), columns);
    paragraph(
        (shown < all
                ? "Of the "
                    + (all - shown)
                    + " coarser classes as much is recovered as of the last shown. "
                : "")
            + "Recovery is of the sand flushed."
            + accounts
                .circulation()
                .sand()
                .map(
                    rest ->
                        " For the circulating sand the plant was balanced "
                            + rest.passes()
                            + " times until the bedding no longer changed. The bedding must turn"
                            + " over about "
                            + Math.round(rest.turnsToRest())
                            + " times for that, which can take years.")
                .orElse(""));
  }

  private static double lostKgps(SandAccount sand, int k) {
    return sand.lost().values().stream().mapToDouble(stream -> stream.sandKgps(k)).sum();
  }

  private List<Column<Integer>> circulating(SandCirculation rest) {
    SandAccount circulating = accounts.circulation().atRest().orElseThrow().account();
    return List.of(
        Column.of(
            "circulating, through the units",
            Kind.PERCENT,
            k -> rest.bedded().sandClasses().get(k).massFraction()),
        Column.of("recovery, circulating", Kind.PERCENT, circulating::recoveryOfFlushed),
        Column.of("bought, circulating", Kind.MASS_PER_DAY, k -> rest.bought().sandKgps(k)),
        Column.of("reused, circulating", Kind.MASS_PER_DAY, k -> rest.rebedded().sandKgps(k)));
  }
}
