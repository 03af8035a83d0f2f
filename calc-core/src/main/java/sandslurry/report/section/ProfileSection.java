package sandslurry.report.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import sandslurry.plant.profile.Fall;
import sandslurry.plant.profile.HydraulicProfile;
import sandslurry.plant.profile.Levels;
import sandslurry.plant.profile.Lift;
import sandslurry.report.block.Page;
import sandslurry.report.figure.Column;
import sandslurry.units.Kind;

/** The hydraulic profile of a plant in a report. */
record ProfileSection(HydraulicProfile profile, Page page) implements SectionWriter {
  /** The falls. */
  static final List<Column<Fall>> FALLS =
      List.of(
          Column.text("stream", Fall::stream),
          Column.text("way", fall -> fall.from() + " to " + fall.to()),
          Column.of("outlet", Kind.LENGTH, Fall::upstreamM, "outlet-level"),
          Column.of("highest water downstream", Kind.LENGTH, Fall::downstreamM, "downstream-level"),
          Column.of("fall available", Kind.LENGTH, Fall::availableM, "fall-available"),
          Column.maybe("along the way", Kind.LENGTH, fall -> part(fall, Fall.Need::alongM)),
          Column.maybe("at the ends", Kind.LENGTH, fall -> part(fall, Fall.Need::endsM)),
          Column.maybe("freeboard", Kind.LENGTH, fall -> part(fall, Fall.Need::freeboardM)),
          Column.maybe(
              "fall needed", Kind.LENGTH, fall -> part(fall, Fall.Need::totalM), "fall-needed"),
          Column.text("", ProfileSection::word));

  void write() {
    heading(2, "Hydraulic profile");
    levels(profile);
    if (!profile.falls().isEmpty()) {
      tableOf(profile.falls(), FALLS);
      paragraph(
          "What runs by gravity, at the worst: from the outlet of a unit to the highest water of"
              + " the next, at the greatest flow rate. A pipe that runs part full needs its slope"
              + " times its length, its depth and the head of its entrance, and a freeboard above"
              + " the water that it flows into.");
    }
    lifts(profile.lifts());
  }

  private static OptionalDouble part(Fall fall, ToDoubleFunction<Fall.Need> part) {
    return fall.need().stream().mapToDouble(part).findFirst();
  }

  private static String word(Fall fall) {
    return fall.backsUp()
        ? "backs up"
        : !fall.enough() ? "too small" : fall.need().isPresent() ? "enough" : "pipe not given";
  }

  private void levels(HydraulicProfile profile) {
    List<Column<Map.Entry<String, Levels>>> columns =
        new ArrayList<>(
            List.of(
                Column.text("unit", Map.Entry::getKey),
                Column.maybe("floor", Kind.LENGTH, unit -> unit.getValue().floorM()),
                level("lowest water", Levels::lowestM),
                level("highest water", Levels::highestM),
                level("overflow", Levels::overflowM)));
    if (!profile.risesM().isEmpty()) {
      columns.add(
          Column.maybe(
              "to be raised by",
              Kind.LENGTH,
              unit -> {
                Double rise = profile.risesM().get(unit.getKey());
                return rise == null ? OptionalDouble.empty() : OptionalDouble.of(rise);
              }));
      columns.add(
          Column.of(
              "floor above the yard then", Kind.LENGTH, unit -> profile.platformM(unit.getKey())));
    }
    tableOf(List.copyOf(profile.levels().units().entrySet()), columns);
    paragraph("Levels are above the datum of the plant.");
  }

  private static Column<Map.Entry<String, Levels>> level(
      String label, ToDoubleFunction<Levels> level) {
    return Column.of(label, Kind.LENGTH, unit -> level.applyAsDouble(unit.getValue()));
  }

  private void lifts(List<Lift> lifts) {
    if (lifts.isEmpty()) {
      return;
    }
    List<Column<Lift>> columns =
        new ArrayList<>(
            List.of(
                Column.text("pumped stream", Lift::stream),
                Column.text("way", lift -> lift.from() + " to " + lift.to()),
                Column.of("least static head", Kind.LENGTH, Lift::leastM),
                Column.of("greatest static head", Kind.LENGTH, Lift::mostM)));
    if (lifts.stream().anyMatch(lift -> lift.ofLineM().isPresent())) {
      columns.add(Column.maybe("static head of its line", Kind.LENGTH, Lift::ofLineM));
    }
    tableOf(lifts, columns);
  }
}
