package sandslurry.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.assessment.plant.PlantTotals;
import sandslurry.design.plant.PlantSpec;
import sandslurry.design.plant.PlantSpec.Use;
import sandslurry.plant.Figure;
import sandslurry.plant.unit.BoxUnit;
import sandslurry.plant.unit.CakeUnit;
import sandslurry.plant.unit.CycloneUnit;
import sandslurry.plant.unit.LaneUnit;
import sandslurry.plant.unit.PitUnit;
import sandslurry.plant.unit.PlantUnit;
import sandslurry.plant.unit.StorageUnit;
import sandslurry.report.block.Block;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/**
 * What who runs a plant looks at, unit by unit: daily, monthly, what shows that it goes wrong, when
 * to clean. The numbers are those of the design; what to look at is common practice, no source.
 */
final class OperationSheet {
  private final PlantSpec spec;
  private final PlantResult result;
  private final UnitSystem units;
  private final List<Block> blocks = new ArrayList<>();

  private OperationSheet(PlantSpec spec, PlantResult result, UnitSystem units) {
    this.spec = spec;
    this.result = result;
    this.units = units;
  }

  /** The sheet of the plant of a design; empty without a plant that has units to run. */
  static List<Block> of(Assessment assessment) {
    if (assessment.plant().isEmpty()) {
      return List.of();
    }
    OperationSheet sheet =
        new OperationSheet(
            assessment.design().plant().orElseThrow(),
            assessment.plant().get(),
            assessment.design().units());
    sheet.spec.units().forEach(sheet::unit);
    if (sheet.blocks.isEmpty()) {
      return List.of();
    }
    List<Block> all = new ArrayList<>();
    all.add(new Block.Heading(1, "Operation sheet"));
    all.add(
        new Block.Paragraph(
            "Numbers are those of this design. What to look at is common practice, no source; the"
                + " makers' instructions come first. Look from outside: never enter a pit, tank,"
                + " box or channel, and lock out a machine before you open it."));
    all.addAll(sheet.blocks);
    return all;
  }

  private void unit(PlantUnit unit) {
    if (unit instanceof BoxUnit box) {
      box(box);
    } else if (unit instanceof LaneUnit lane) {
      lane(lane);
    } else if (unit instanceof CycloneUnit cyclone) {
      cyclone(cyclone);
    } else if (unit instanceof CakeUnit cake) {
      cake(cake);
    } else if (unit instanceof PitUnit pit && pit.pool().isEmpty()) {
      pit(pit);
    } else if (unit instanceof StorageUnit storage) {
      storage(storage);
    }
  }

  private void sheet(String unit, String daily, String monthly, String wrong, String clean) {
    blocks.add(new Block.Heading(2, unit));
    blocks.add(
        Block.Items.bullets(
            List.of(
                "Daily: " + daily,
                "Monthly: " + monthly,
                "It goes wrong when: " + wrong,
                "Clean: " + clean)));
  }

  /** A figure of a unit in a bracket or after a comma; nothing where it has none. */
  private String figure(String unit, String what, String before) {
    return result.units().getOrDefault(unit, List.of()).stream()
        .filter(figure -> figure.what().startsWith(what))
        .findFirst()
        .map(figure -> before + figure.shown(units))
        .orElse("");
  }

  private void box(BoxUnit box) {
    boolean bedding =
        spec.products().stream()
            .anyMatch(p -> p.use() == Use.BEDDING && p.stream().equals(box.sand()));
    boolean rinsed = box.box().rinsePoreVolumes() > 0;
    sheet(
        box.name(),
        "water runs over the whole weir; "
            + (bedding
                ? "the sand that comes out is grey and drained"
                : "what comes out is even from hour to hour")
            + figure(box.name(), "water in the sand", ", water ")
            + figure(box.name(), "load of the screw", "; the screw turns, load ")
            + ".",
        "measure the sand above the screw with a rod; have the sand tested for organic matter and"
            + " moisture; look at the wear of the screw"
            + (rinsed ? figure(box.name(), "rinse water", "; measure the rinse, ") : "")
            + ".",
        "the flow keeps to one side (short-circuiting); sand settles in a jar of the overflow; the"
            + " sand is dark and smells; the screw is overloaded or stalls.",
        "when the rod finds sand over half the depth of water ("
            + units.show(Kind.LENGTH, box.box().waterDepthM())
            + "), and once a year.");
  }

  private void lane(LaneUnit lane) {
    sheet(
        lane.name(),
        "the flow covers the full width; a float takes the velocity"
            + figure(lane.name(), "velocity, clean", " from ")
            + " clean"
            + figure(lane.name(), "velocity at the end", " to ")
            + " just before cleaning.",
        "look at weir boards, drains and the level of the floor; have the sand of the stack tested"
            + " for organic matter and moisture.",
        "the flow cuts a channel through the sand of a filling lane (rake it level); it runs"
            + " faster than that; sand goes over the weir; dark layers show that it runs too slow.",
        "when the sand is "
            + units.show(Kind.BORE, lane.reaches().get(0).storageDepthM())
            + " deep at the inlet"
            + figure(lane.name(), "clean-out interval", ", about every ")
            + "; drain it for "
            + units.show(Kind.DAYS, lane.drainS())
            + ", dig within "
            + units.show(Kind.DAYS, lane.digS())
            + ", leave the sand in the stack for "
            + units.show(Kind.DAYS, lane.stackS())
            + ".");
  }

  private void cyclone(CycloneUnit cyclone) {
    sheet(
        cyclone.name(),
        "the underflow leaves as an open spray; the gauge at the inlet shows a steady pressure"
            + figure(cyclone.name(), "pressure drop (" + cyclone.model().name() + ")", ", about ")
            + ".",
        "measure the apex with a gauge and note it; measure the flow rate of the feed"
            + figure(cyclone.name(), "feed while it runs", ", ")
            + ".",
        "the underflow comes as a rope or drips (roping); the pressure falls (worn pump or apex) or"
            + " rises (blocked); sand settles in a jar of the overflow.",
        "flush with water after each run; open it when the spray does not come back; replace a worn"
            + " apex.");
  }

  private void cake(CakeUnit cake) {
    sheet(
        cake.name(),
        "the cake keeps its shape"
            + figure(cake.name(), "dry matter of the cake", ", dry matter ")
            + "; the screen is not blinded; note the hours that it runs.",
        "weigh the cake of an hour"
            + figure(cake.name(), "cake", ", in a day ")
            + "; look at the wear of the screen.",
        "the cake is wet or liquid shoots out (worn or plugged); the liquid holds long fibre; the"
            + " recycled liquor thickens from week to week.",
        "wash the screen daily and brush it when less passes.");
  }

  private void pit(PitUnit pit) {
    Optional<Figure> fills =
        result.accounts().flatMap(accounts -> accounts.figure(PlantTotals.PITS, pit.name()));
    String levels =
        "pumps stop at "
            + units.show(Kind.VOLUME, pit.pit().levels().stopM3())
            + ", start at "
            + units.show(Kind.VOLUME, pit.pit().levels().startM3())
            + ", alarm at "
            + units.show(Kind.VOLUME, pit.pit().levels().alarmM3());
    sheet(
        pit.name(),
        "the level keeps between its marks ("
            + levels
            + ")"
            + (pit.mixer().isPresent() ? "; the mixer runs at its hours" : "")
            + "; note the hours of the pumps.",
        "test the alarm; measure the sand on the floor with a rod from outside; have the total"
            + " solids of the liquor measured"
            + result
                .accounts()
                .map(a -> ", design " + new Figure("", Kind.PERCENT, a.liquor()).shown(units))
                .orElse("")
            + ".",
        "the level drifts from day to day (worn or blocked pump, leak); a pump starts more often"
            + " than it did; the liquor thickens.",
        fills
            .map(
                figure ->
                    "dig it out when sand takes a quarter of it, in about "
                        + figure.shown(units)
                        + ".")
            .orElse("when the rod finds sand over a quarter of the depth."));
  }

  private void storage(StorageUnit storage) {
    sheet(
        storage.name(),
        "look for a leak, a burrow and a broken fence.",
        "read and note the level; keep the freeboard of "
            + units.show(Kind.BORE, storage.freeboardM())
            + " and the room of the storm free.",
        "the level rises faster than planned; the crust or the bank moves; sand shows at the"
            + " inlet.",
        "empty it within"
            + result
                .accounts()
                .flatMap(a -> a.figure("Storage: " + storage.name(), "days of storage"))
                .map(figure -> " " + figure.shown(units))
                .orElse(" the days of the permit")
            + "; agitate only as the cautions say.");
  }
}
