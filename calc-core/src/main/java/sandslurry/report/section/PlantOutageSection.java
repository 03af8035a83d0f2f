package sandslurry.report.section;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import sandslurry.assessment.plant.PlantResult.Outage;
import sandslurry.assessment.plant.PlantResult.Outage.Part;
import sandslurry.report.block.Block;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** One unit out for a week, in a report: what it does to sand, liquor, pits and storages. */
public final class PlantOutageSection extends SectionWriter {
  /** A recovery that differs by less is the same, as a share. */
  private static final double SAME_RECOVERY = 0.005;

  /** Solids of the liquor that differ by less are the same, over the solids. */
  private static final double SAME_LIQUOR = 0.05;

  private static final int MOST_TOLD = 3;

  private final Outage whole;
  private final List<Outage> out;

  private PlantOutageSection(List<Outage> outages, UnitSystem units) {
    super(units);
    this.whole = outages.get(0);
    this.out = outages.subList(1, outages.size());
  }

  static List<Block> of(List<Outage> outages, UnitSystem units) {
    if (outages.size() < 2) {
      return List.of();
    }
    PlantOutageSection section = new PlantOutageSection(outages, units);
    section.table();
    return section.blocks();
  }

  /**
   * The weeks that cost most, in a paragraph.
   *
   * @param outages the undisturbed week first
   * @param units the units of the report
   * @return the paragraph; empty when nothing can be out
   */
  public static List<Block> answer(List<Outage> outages, UnitSystem units) {
    if (outages.size() < 2) {
      return List.of();
    }
    PlantOutageSection section = new PlantOutageSection(outages, units);
    List<Outage> changed =
        section.out.stream().filter(one -> !section.change(one).isEmpty()).toList();
    List<String> told = new ArrayList<>();
    changed.stream()
        .filter(one -> one.part() != Part.SCREW)
        .sorted(Comparator.comparingDouble(Outage::recovery))
        .limit(MOST_TOLD)
        .forEach(one -> told.add(section.told(one)));
    changed.stream()
        .filter(one -> one.part() == Part.SCREW)
        .forEach(one -> told.add(section.told(one)));
    return List.of(
        new Block.Paragraph(
            "One unit out for a week: "
                + (told.isEmpty()
                    ? "none changes the recovery or the liquor much"
                    : String.join("; ", told))
                + "."));
  }

  private String told(Outage one) {
    return name(one) + " -> " + change(one);
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
          ? "full of sand in " + units.show(Kind.HOURS, one.fullAfterS().getAsDouble())
          : "";
    }
    List<String> changes = new ArrayList<>();
    if (Math.abs(one.liquor() - whole.liquor()) > SAME_LIQUOR * whole.liquor()) {
      changes.add("liquor " + units.low(Kind.PERCENT, one.liquor(), one.liquor() + 0.005));
    }
    if (Math.abs(one.recovery() - whole.recovery()) > SAME_RECOVERY) {
      changes.add("recovery " + units.low(Kind.PERCENT, one.recovery(), one.recovery() + 0.05));
    }
    if (one.spilledM3() > whole.spilledM3()) {
      changes.add("spills " + units.show(Kind.VOLUME, one.spilledM3()));
    }
    if (!one.comesBack()) {
      changes.add("does not come back by itself");
    }
    return String.join(", ", changes);
  }

  private void table() {
    heading(2, "One unit out for a week");
    List<List<String>> rows = new ArrayList<>();
    rows.add(row("nothing", whole));
    for (Outage one : out) {
      rows.add(
          one.part() == Part.SCREW
              ? List.of(name(one), "-", "-", "-", "-", "-", "-", change(one))
              : row(name(one), one));
    }
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
            + " is out lets all that comes pass on with its liquid; a pump that is out stands, and"
            + " what it does not take leaves over weir or brim. A box whose screw is out fills with"
            + " sand; from then on all sand passes to what follows, which no unit here is made"
            + " for. Keep spare parts for what the farm cannot do without that long.");
  }

  private List<String> row(String name, Outage one) {
    return List.of(
        name,
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
