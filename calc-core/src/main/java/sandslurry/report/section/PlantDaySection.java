package sandslurry.report.section;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collector;
import java.util.stream.Collectors;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.assessment.plant.PlantResult.Outage;
import sandslurry.design.plant.PlantSpec;
import sandslurry.design.plant.PlantSpec.PenSpec;
import sandslurry.design.plant.PlantSpec.Product;
import sandslurry.design.plant.PlantSpec.Use;
import sandslurry.plant.Stream;
import sandslurry.plant.schedule.Day;
import sandslurry.plant.schedule.PitDay;
import sandslurry.plant.schedule.UnitDay;
import sandslurry.plant.unit.PitUnit;
import sandslurry.plant.unit.PlantUnit.Part;
import sandslurry.report.block.Block;
import sandslurry.report.block.Page;
import sandslurry.report.figure.Column;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** The day by schedule of a plant in a report: pits, build-up, peaks, a week with one unit out. */
record PlantDaySection(PlantResult result, PlantSpec spec, Page page) implements SectionWriter {
  void write() {
    days();
    if (result.outages().size() > 1) {
      Outages.of(result.outages(), page).table();
    }
  }

  /** The weeks with one unit out that cost most, in a paragraph; nothing when none can be out. */
  static void oneOut(List<Outage> outages, Page page) {
    // Without its only unit a plant does nothing, which nobody needs to read.
    if (outages.size() > 2 || outages.size() == 2 && outages.get(1).part() != Part.SEPARATOR) {
      page.blocks().add(Outages.of(outages, page).answer());
    }
  }

  private void days() {
    Optional<Day> last = result.days().last();
    if (last.isEmpty()) {
      return;
    }
    if (last.get().pits().isEmpty()) {
      if (spec.pens().stream().anyMatch(pen -> pen.batches().isPresent())) {
        heading(2, "Day by schedule");
        paragraph(fed());
        peaks(last.get());
      }
      return;
    }
    heading(2, "Day by schedule");
    tableOf(
        List.copyOf(last.get().pits().values()),
        List.of(
            Column.text("pit", PitDay::name),
            Column.of("least", Kind.VOLUME, PitDay::leastM3),
            Column.of("most", Kind.VOLUME, PitDay::mostM3),
            Column.of(
                "at midnight", Kind.VOLUME, pit -> pit.volumesM3().get(pit.volumesM3().size() - 1)),
            Column.of("spilled", Kind.VOLUME, PitDay::spilledM3),
            Column.text("pumps run [% of the day]", this::running),
            Column.of("solids at midnight", Kind.PERCENT, pit -> pit.endContents().totalSolids())));
    tableOf(
        result.days().days().stream().filter(d -> d.number() <= 3 || d.number() % 5 == 0).toList(),
        List.of(
            Column.text("day", day -> String.valueOf(day.number())),
            Column.of("solids in the pits at midnight", Kind.PERCENT, this::held),
            Column.of("sand recovered that day", Kind.PERCENT, this::recovered)));
    paragraph(
        "Day "
            + last.get().number()
            + " of a run that starts with water in the pits, and with the pool of a storage at"
            + " its steady state, in steps of two hours at most. "
            + fed());
    peaks(last.get());
  }

  private String running(PitDay pit) {
    return pit.running().entrySet().stream()
        .map(pump -> pump.getKey() + " " + number(Kind.PERCENT, pump.getValue()))
        .collect(Collectors.joining(", "));
  }

  /** Solids of all pits, pools of storages left out where there are others. */
  private double held(Day day) {
    List<Stream> contents = new ArrayList<>();
    List<Stream> pools = new ArrayList<>();
    for (PitUnit pit : spec.pits()) {
      (pit.isPool() ? pools : contents).add(day.pits().get(pit.name()).endContents());
    }
    List<Stream> those = contents.isEmpty() ? pools : contents;
    return Stream.mix(those.get(0).constituents(), those).totalSolids();
  }

  /** How the pens are fed. */
  private String fed() {
    List<String> even =
        spec.pens().stream()
            .filter(pen -> pen.batches().isEmpty())
            .map(pen -> pen.pen().name())
            .toList();
    if (even.size() == spec.pens().size()) {
      return "Manure is fed evenly over the day.";
    }
    return "Pens are scraped or flushed at the hours of the inputs."
        + (even.isEmpty()
            ? ""
            : " Manure of " + String.join(", ", even) + " is fed evenly over the day.");
  }

  /** What batches do to the units that see them. */
  private void peaks(Day day) {
    if (spec.pens().stream().noneMatch(pen -> pen.batches().isPresent())) {
      return;
    }
    tableOf(
        List.copyOf(day.units().values()),
        List.of(
            Column.text("unit", UnitDay::name),
            Column.of("mean flow rate", Kind.FLOW, UnitDay::meanM3ps),
            Column.of("peak flow rate", Kind.FLOW, unit -> unit.peakFeed().volumeM3ps()),
            Column.text("from [h]", unit -> UnitSystem.clock(unit.peakAtS())),
            Column.of("sand to the first outlet at the peak", Kind.PERCENT, UnitDay::captureAtPeak),
            Column.of("over the day", Kind.PERCENT, UnitDay::capture)));
    paragraph(
        "Units see the batches as they come; a unit without a pit between it and a pen is taken to"
            + " run when they do. Shares over the day are weighted by the sand.");
  }

  private double recovered(Day day) {
    double flushed = 0;
    for (PenSpec pen : spec.pens()) {
      flushed += day.meanFlows().get(pen.stream()).sandKgps();
    }
    double caught = 0;
    for (Product product : spec.products()) {
      if (product.use() == Use.BEDDING) {
        caught += day.meanFlows().get(product.stream()).sandKgps();
      }
    }
    return flushed > 0 ? caught / flushed : 0;
  }

  /** One unit out for a week: what it does to sand, liquor, pits and storages. */
  private record Outages(Outage whole, List<Outage> out, Page page) implements SectionWriter {
    /** A recovery that differs by less is the same, as a share. */
    private static final double SAME_RECOVERY = 0.005;

    /** Solids of the liquor that differ by less are the same, over the solids. */
    private static final double SAME_LIQUOR = 0.05;

    private static final int MOST_TOLD = 4;

    private static Outages of(List<Outage> outages, Page page) {
      return new Outages(outages.get(0), outages.subList(1, outages.size()), page);
    }

    Block answer() {
      // Units whose outage does the same, such as twins, are named together.
      List<String> worst =
          java.util.stream.Stream.concat(
                  out.stream()
                      .filter(one -> one.part() != Part.SCREW)
                      .sorted(Comparator.comparingDouble(Outage::recovery)),
                  out.stream().filter(one -> one.part() == Part.SCREW))
              .filter(one -> !change(one).isEmpty())
              .collect(named(this::change))
              .entrySet()
              .stream()
              .map(alike -> alike.getValue() + ": " + alike.getKey())
              .toList();
      return new Block.Paragraph(
          "One unit out for a week: "
              + (worst.isEmpty()
                  ? "none changes the recovery or the liquor much"
                  : String.join("; ", worst.subList(0, Math.min(MOST_TOLD, worst.size()))))
              + ".");
    }

    /** The names of those of which the same is to be told. */
    private <K> Collector<Outage, ?, Map<K, String>> named(Function<Outage, K> told) {
      return Collectors.groupingBy(
          told, LinkedHashMap::new, Collectors.mapping(this::name, Collectors.joining(" or ")));
    }

    private String name(Outage one) {
      return switch (one.part()) {
        case PUMP -> "pump \"" + one.what() + "\"";
        case SCREW -> "screw of " + one.what();
        case LANE_OF_SEVERAL -> "one lane of " + one.what();
        case SEPARATOR, NONE -> one.what();
      };
    }

    /** What is other than in the undisturbed week. */
    private String change(Outage one) {
      if (one.part() == Part.SCREW) {
        return one.fullAfterS().isPresent()
            ? "full of sand in " + show(Kind.HOURS, one.fullAfterS().getAsDouble())
            : "";
      }
      List<String> changes = new ArrayList<>();
      if (Math.abs(one.liquor() - whole.liquor()) > SAME_LIQUOR * whole.liquor()) {
        changes.add("liquor " + units().low(Kind.PERCENT, one.liquor(), one.liquor() + 0.005));
      }
      if (Math.abs(one.recovery() - whole.recovery()) > SAME_RECOVERY) {
        changes.add("recovery " + units().low(Kind.PERCENT, one.recovery(), one.recovery() + 0.05));
      }
      if (one.spilledM3() > whole.spilledM3()) {
        changes.add("spills " + show(Kind.VOLUME, one.spilledM3()));
      }
      if (!one.comesBack()) {
        changes.add("does not come back by itself");
      }
      return String.join(", ", changes);
    }

    private void table() {
      heading(2, "One unit out for a week");
      List<List<String>> rows = new ArrayList<>();
      rows.add(named("nothing", row(whole)));
      out.stream()
          .collect(
              named(
                  one ->
                      one.part() == Part.SCREW
                          ? List.of("-", "-", "-", "-", "-", "-", change(one))
                          : row(one)))
          .forEach((row, names) -> rows.add(named(names, row)));
      table(
          List.of(
              "out",
              "sand recovered, over the week [%]",
              "liquor on day 7 [%]",
              head("spilled", Kind.VOLUME),
              head("to the storages", Kind.VOLUME),
              head("sand in it", Kind.HAULED),
              "fullest pit [% of its capacity]",
              ""),
          rows);
      paragraph(
          "By the schedule, from the end of its last day on, manure coming evenly. A separator that"
              + " is out lets all that comes pass on with its liquid; a pump that is out stops, and"
              + " what it does not take leaves over weir or brim. A box whose screw is out fills"
              + " with sand; from then on all sand passes to what follows, which no unit here is"
              + " made for. Keep spare parts for what the farm cannot do without that long.");
    }

    private static List<String> named(String name, List<String> row) {
      List<String> whole = new ArrayList<>(List.of(name));
      whole.addAll(row);
      return whole;
    }

    private List<String> row(Outage one) {
      return List.of(
          number(Kind.PERCENT, one.recovery()),
          number(Kind.PERCENT, one.liquor()),
          number(Kind.VOLUME, one.spilledM3()),
          number(Kind.VOLUME, one.storedM3()),
          number(Kind.HAULED, one.storedSandKg()),
          one.fullest().isEmpty()
              ? "-"
              : one.fullest() + " " + number(Kind.PERCENT, one.fullestShare()),
          one.part() == Part.LANE_OF_SEVERAL
              ? "another lane takes its turn"
              : one.comesBack() ? "" : "does not come back by itself");
    }
  }
}
