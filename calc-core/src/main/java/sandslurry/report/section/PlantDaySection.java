package sandslurry.report.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.design.plant.PlantSpec;
import sandslurry.design.plant.PlantSpec.PenSpec;
import sandslurry.design.plant.PlantSpec.Product;
import sandslurry.design.plant.PlantSpec.Use;
import sandslurry.design.plant.UnitSpec;
import sandslurry.design.plant.UnitSpec.PitSpec;
import sandslurry.plant.Stream;
import sandslurry.plant.schedule.Batches;
import sandslurry.plant.schedule.Day;
import sandslurry.plant.schedule.PitDay;
import sandslurry.plant.schedule.UnitDay;
import sandslurry.report.block.Block;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** The day by schedule of a plant in a report: pits, build-up and peaks. */
final class PlantDaySection extends SectionWriter {
  private final PlantResult result;
  private final PlantSpec spec;

  private PlantDaySection(PlantResult result, PlantSpec spec, UnitSystem units) {
    super(units);
    this.result = result;
    this.spec = spec;
  }

  static List<Block> of(PlantResult result, PlantSpec spec, UnitSystem units) {
    PlantDaySection section = new PlantDaySection(result, spec, units);
    section.days();
    return section.blocks();
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
    List<List<String>> rows = new ArrayList<>();
    for (PitDay pit : last.get().pits().values()) {
      rows.add(
          List.of(
              pit.name(),
              number(Kind.VOLUME, pit.leastM3()),
              number(Kind.VOLUME, pit.mostM3()),
              number(Kind.VOLUME, pit.volumesM3().get(pit.volumesM3().size() - 1)),
              number(Kind.VOLUME, pit.spilledM3()),
              String.join(
                  ", ",
                  pit.running().entrySet().stream()
                      .map(pump -> pump.getKey() + " " + number(Kind.PERCENT, pump.getValue()))
                      .toList()),
              number(Kind.PERCENT, pit.endContents().totalSolids())));
    }
    table(
        List.of(
            "pit",
            head("least", Kind.VOLUME),
            head("most", Kind.VOLUME),
            head("at midnight", Kind.VOLUME),
            head("spilled", Kind.VOLUME),
            "pumps run [% of the day]",
            "solids at midnight [%]"),
        rows);
    List<List<String>> build = new ArrayList<>();
    for (Day day : result.days().days()) {
      int number = day.number();
      if (number <= 7 || number % 5 == 0) {
        build.add(
            List.of(
                String.valueOf(number),
                number(Kind.PERCENT, held(day)),
                number(Kind.PERCENT, recovered(day))));
      }
    }
    table(
        List.of("day", "solids in the pits at midnight [%]", "sand recovered that day [%]"), build);
    paragraph(
        "Day "
            + last.get().number()
            + " of a run that starts with water in the pits, and with the pool of a storage as it"
            + " is at rest, in steps of two hours at most. "
            + fed());
    peaks(last.get());
  }

  /** Solids of all pits, pools of storages left out where there are others. */
  private double held(Day day) {
    List<Stream> contents = new ArrayList<>();
    List<Stream> pools = new ArrayList<>();
    for (UnitSpec unit : spec.units()) {
      if (unit instanceof PitSpec pit) {
        Stream held = day.pits().get(pit.name()).endContents();
        (pit.pool().isPresent() ? pools : contents).add(held);
      }
    }
    List<Stream> those = contents.isEmpty() ? pools : contents;
    return Stream.mix(those.get(0).constituents(), those).totalSolids();
  }

  /** How the pens are fed. */
  private String fed() {
    List<String> said = new ArrayList<>();
    List<String> even = new ArrayList<>();
    for (PenSpec pen : spec.pens()) {
      if (pen.batches().isPresent()) {
        Batches batches = pen.batches().get();
        said.add(
            pen.pen().name()
                + (pen.flush().isPresent() ? " is flushed " : " is scraped ")
                + batches.perDay()
                + " times a day, one of them from "
                + UnitSystem.clock(batches.firstS())
                + " h on for "
                + units.show(Kind.MINUTES, batches.durationS()));
      } else {
        even.add(pen.pen().name());
      }
    }
    if (said.isEmpty()) {
      return "Manure is fed evenly over the day.";
    }
    return String.join("; ", said)
        + "."
        + (even.isEmpty()
            ? ""
            : " Manure of " + String.join(", ", even) + " is fed evenly over the day.");
  }

  /** What batches do to the units that see them. */
  private void peaks(Day day) {
    if (spec.pens().stream().noneMatch(pen -> pen.batches().isPresent())) {
      return;
    }
    List<List<String>> rows = new ArrayList<>();
    for (UnitDay unit : day.units().values()) {
      rows.add(
          List.of(
              unit.name(),
              number(Kind.FLOW, unit.meanM3ps()),
              number(Kind.FLOW, unit.peakFeed().volumeM3ps()),
              UnitSystem.clock(unit.peakAtS()),
              number(Kind.PERCENT, unit.captureAtPeak()),
              number(Kind.PERCENT, unit.capture())));
    }
    table(
        List.of(
            "unit",
            head("mean flow", Kind.FLOW),
            head("peak flow", Kind.FLOW),
            "from [h]",
            "sand to the first outlet at the peak [%]",
            "over the day [%]"),
        rows);
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
}
