package sandslurry.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.assessment.plant.PlantResult.Accounts;
import sandslurry.assessment.plant.PlantResult.MonthResult;
import sandslurry.assessment.plant.PlantResult.Year;
import sandslurry.design.plant.PlantSpec.Targets;
import sandslurry.plant.Figure;
import sandslurry.plant.Range;
import sandslurry.plant.account.StorageYear;
import sandslurry.plant.account.StorageYear.Course;
import sandslurry.report.block.Block;
import sandslurry.report.section.Chapters;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** The numbers that a plant is judged by: low, expected, high and wanted. */
final class PlantNumbers {
  private static final String BUDGET = "Sand to buy";

  private final UnitSystem units;
  private final Targets targets;
  private final List<List<String>> rows = new ArrayList<>();

  private PlantNumbers(UnitSystem units, Targets targets) {
    this.units = units;
    this.targets = targets;
  }

  static List<Block> of(Assessment assessment, PlantResult plant) {
    PlantNumbers numbers =
        new PlantNumbers(
            assessment.design().units(), assessment.design().plant().orElseThrow().targets());
    plant.accounts().ifPresent(numbers::accounts);
    List<Block> blocks = new ArrayList<>();
    if (!numbers.rows.isEmpty()) {
      blocks.add(
          new Block.Table(List.of("Plant", "low", "expected", "high", "wanted"), numbers.rows));
    }
    plant.accounts().ifPresent(accounts -> numbers.parts(accounts).ifPresent(blocks::add));
    plant
        .accounts()
        .flatMap(Accounts::year)
        .ifPresent(year -> blocks.add(new Block.Paragraph(numbers.year(year))));
    blocks.addAll(Chapters.oneOut(assessment));
    return blocks;
  }

  private void accounts(Accounts accounts) {
    if (accounts.sand().flushed().sandKgps() > 0) {
      row(
          "sand recovered, of the sand flushed",
          Kind.PERCENT,
          accounts.capture(),
          targets.sandCapture(),
          "at least " + units.show(Kind.PERCENT, targets.sandCapture()));
    }
    row(
        "total solids of the liquor",
        Kind.PERCENT,
        accounts.liquor().solids(),
        most(Kind.PERCENT, targets.liquorSolids()));
    accounts
        .bedding()
        .quality()
        .ifPresent(
            bed -> {
              row(
                  "organic matter of the recovered sand",
                  Kind.PERCENT,
                  bed.organicMatter(),
                  "at most " + units.show(Kind.PERCENT, targets.bedOrganicMatter()));
              row(
                  "moisture of the recovered sand",
                  Kind.PERCENT,
                  bed.moisture(),
                  "at most " + units.show(Kind.PERCENT, targets.bedMoisture()));
            });
    accounts
        .figures()
        .of(BUDGET, "in a month")
        .ifPresent(f -> row("sand to buy in a month", f.kind(), f.range(), "-"));
    accounts
        .storages()
        .forEach(
            (name, account) ->
                accounts
                    .figures()
                    .of("Storage: " + name, "days of storage")
                    .ifPresentOrElse(
                        f ->
                            row(name + " lasts", f.kind(), f.range(), least(targets.storageDays())),
                        () ->
                            rows.add(
                                List.of(
                                    name + " lasts",
                                    "",
                                    "never full",
                                    "",
                                    least(targets.storageDays())))));
  }

  /** The months that decide, in a line. */
  private String year(Year year) {
    StringBuilder line = new StringBuilder();
    MonthResult coldest = year.coldest();
    line.append("Coldest month: ").append(coldest.month().name()).append(recovery(coldest));
    year.least()
        .filter(least -> least.month().liquorK() != coldest.month().liquorK())
        .ifPresent(
            least ->
                line.append("; least recovered: ")
                    .append(least.month().name())
                    .append(recovery(least)));
    line.append('.');
    year.storages()
        .forEach(
            (name, course) ->
                line.append(' ')
                    .append(name)
                    .append(": wettest month ")
                    .append(course.months().get(course.wettest()).name())
                    .append(filling(course))
                    .append('.'));
    return line.toString();
  }

  private String recovery(MonthResult month) {
    return month.capture().isPresent()
        ? ", recovery " + units.show(Kind.PERCENT, month.capture().getAsDouble())
        : ", no steady state";
  }

  private String filling(StorageYear year) {
    if (year.full().isEmpty()) {
      Course highest = year.months().get(year.highest());
      return ", least freeboard "
          + units.show(Kind.HEAD, highest.freeboardM())
          + " in "
          + highest.name();
    }
    StorageYear.When full = year.full().get();
    return ", full on day "
        + (int) (Math.floor(full.day()) + 1)
        + (year.repeats() ? "" : " of year " + full.year() + " from empty");
  }

  /** What the sand to buy replaces, in parts that are worth a word. */
  private Optional<Block> parts(Accounts accounts) {
    List<Figure> budget = accounts.figures().groups().getOrDefault(BUDGET, List.of());
    if (budget.isEmpty() || !(budget.get(1).range().base() > 0)) {
      return Optional.empty();
    }
    double year = budget.get(1).range().base();
    List<String> parts = new ArrayList<>();
    for (Figure part : budget.subList(2, budget.size())) {
      double value = part.range().base();
      if (part.kind() == Kind.HAULED
          && !part.what().startsWith("one point")
          && value >= year / 50) {
        parts.add(
            units.low(Kind.HAULED, value, value * 1.3)
                + " "
                + part.what().replaceFirst("^.*: spoiled", "spoiled"));
      }
    }
    return parts.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Block.Paragraph(
                "Sand to buy in a year: "
                    + budget.get(1).shown(units)
                    + ". It replaces "
                    + String.join(", ", parts)
                    + "."));
  }

  private String most(Kind<?> kind, OptionalDouble si) {
    return si.isPresent() ? "at most " + units.show(kind, si.getAsDouble()) : "-";
  }

  private String least(OptionalDouble days) {
    return days.isPresent()
        ? "at least " + units.show(Kind.DAYS, InUnit.DAY.si(days.getAsDouble()))
        : "-";
  }

  private void row(String what, Kind<?> kind, Range range, String wanted) {
    row(what, kind, range, range.base(), wanted);
  }

  private void row(String what, Kind<?> kind, Range range, double limit, String wanted) {
    String unit = kind.symbol(units);
    rows.add(
        List.of(
            what + (unit.isEmpty() ? "" : ", " + unit),
            units.number(kind, range.low(), range.low(), range.high()),
            units.number(kind, range.base(), range.low(), range.high(), limit),
            units.number(kind, range.high(), range.low(), range.high()),
            wanted));
  }
}
