package sandslurry.report.section;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.assessment.plant.PlantResult.FlowEdge;
import sandslurry.assessment.plant.PlantResult.ModeResult;
import sandslurry.design.plant.PlantSpec;
import sandslurry.plant.Constituents;
import sandslurry.plant.Range;
import sandslurry.plant.Stream;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.pen.PenLoad;
import sandslurry.plant.unit.PitUnit;
import sandslurry.plant.unit.PlantUnit;
import sandslurry.report.block.Block;
import sandslurry.report.block.Page;
import sandslurry.report.figure.Column;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/**
 * The plant in a report: loads, streams, drawing of flows, days, accounts.
 *
 * @param result what came of the plant
 * @param spec the plant
 * @param page takes its blocks
 */
record PlantSection(PlantResult result, PlantSpec spec, Page page) implements SectionWriter {
  /** Stream, flow, sand and sand-free solids among the columns of the streams. */
  private static final List<Integer> BRIEF = List.of(0, 2, 5, 9);

  void write() {
    heading(1, "Plant");
    loads();
    modes();
    new PlantLoopSection(result, page).write();
    ofUnits();
    result.profile().ifPresent(profile -> new ProfileSection(profile, page).write());
    new FeedSection(page).gravity(result.gravity());
    new PlantDaySection(result, spec, page).write();
    result
        .accounts()
        .ifPresent(a -> new PlantAccountsSection(a, spec.year().sources(), page).write());
  }

  private String number(Kind<?> kind, Range range) {
    return units().number(kind, range.base(), range.low(), range.high())
        + units().ends(kind, range.low(), range.high());
  }

  private void loads() {
    heading(2, "What the pens make");
    List<PenLoad> loads = new ArrayList<>(result.loads());
    if (loads.size() > 1) {
      loads.add(result.total());
    }
    double day = InUnit.DAY.si(1);
    List<String> head = new ArrayList<>(List.of("what"));
    loads.forEach(load -> head.add(load.name()));
    table(
        head,
        List.of(
            row(
                "mass a day",
                Kind.MASS_PER_DAY,
                loads,
                load -> load.massPerDayKg().map(kg -> kg / day)),
            row("volume a day", Kind.VOLUME, loads, load -> load.volumePerDayM3()),
            row(
                "sand a day",
                Kind.MASS_PER_DAY,
                loads,
                load -> load.sandPerDayKg().map(kg -> kg / day)),
            row(
                "sand-free solids a day",
                Kind.MASS_PER_DAY,
                loads,
                load -> load.solidsPerDayKg().map(kg -> kg / day)),
            batch("mass of a batch", Kind.MASS, loads, load -> load.massPerBatchKg()),
            batch("volume of a batch", Kind.VOLUME, loads, load -> load.volumePerBatchM3()),
            batch("sand of a batch", Kind.MASS, loads, load -> load.sandPerBatchKg()),
            row("sand-free solids", Kind.PERCENT, loads, load -> load.totalSolids()),
            row("sand by mass", Kind.PERCENT, loads, load -> load.sandMassShare()),
            row("sand by volume of grains", Kind.PERCENT, loads, load -> load.sandVolumeShare()),
            row(
                "sand by bulk volume",
                Kind.PERCENT,
                loads,
                load -> load.sandBulkShare(spec.porosity())),
            row("density", Kind.DENSITY, loads, load -> load.densityKgM3())));
    paragraph(
        "Manure by "
            + spec.production().about().nameWithCaveat()
            + ", with the sand, wash and rain water of the pen. A range is given in brackets where"
            + " an input has one. The three shares of sand are three different numbers: by mass, by"
            + " volume of the grains (what hydraulics needs) and by bulk volume, as two heaps side"
            + " by side would be measured.");
  }

  /** Pens have batches of their own: all of them together have none. */
  private List<String> batch(
      String what, Kind<?> kind, List<PenLoad> loads, Function<PenLoad, Range> value) {
    List<String> row = row(what, kind, result.loads(), value);
    if (loads.size() > result.loads().size()) {
      row.add("-");
    }
    return row;
  }

  private List<String> row(
      String what, Kind<?> kind, List<PenLoad> loads, Function<PenLoad, Range> value) {
    List<String> row = new ArrayList<>(List.of(head(what, kind)));
    loads.forEach(load -> row.add(number(kind, value.apply(load))));
    return row;
  }

  /** Modes in which every stream is the same stand together. */
  private void modes() {
    Map<Optional<Block.Table>, List<ModeResult>> alike =
        result.modes().stream()
            .collect(
                Collectors.groupingBy(
                    mode -> mode.balance().map(balance -> streams(mode, balance)),
                    LinkedHashMap::new,
                    Collectors.toList()));
    boolean first = true;
    for (Map.Entry<Optional<Block.Table>, List<ModeResult>> one : alike.entrySet()) {
      modes(first ? one.getKey() : one.getKey().map(PlantSection::briefly), one.getValue());
      first = false;
    }
  }

  /** Ways are the same in every mode: of a further one its flows, two streams beside each other. */
  private static Block.Table briefly(Block.Table streams) {
    List<List<String>> rows = new ArrayList<>();
    int half = (streams.rows().size() + 1) / 2;
    for (int i = 0; i < half; i++) {
      List<String> row = new ArrayList<>(brief(streams.rows().get(i)));
      row.addAll(
          half + i < streams.rows().size()
              ? brief(streams.rows().get(half + i))
              : Collections.nCopies(BRIEF.size(), ""));
      rows.add(row);
    }
    List<String> head = new ArrayList<>(brief(streams.head()));
    head.addAll(brief(streams.head()));
    return new Block.Table(head, rows);
  }

  private static List<String> brief(List<String> row) {
    return BRIEF.stream().map(row::get).toList();
  }

  private void modes(Optional<Block.Table> streams, List<ModeResult> alike) {
    heading(
        2,
        (alike.size() > 1 ? "Modes " : "Mode ")
            + alike.stream()
                .map(mode -> "\"" + mode.mode().name() + "\"")
                .collect(Collectors.joining(", ")));
    String when =
        alike.stream()
            .map(
                mode ->
                    UnitSystem.clock(mode.mode().fromS())
                        + " to "
                        + UnitSystem.clock(mode.mode().toS())
                        + " h")
            .collect(Collectors.joining(", ", "From ", ". "));
    if (streams.isEmpty()) {
      paragraph(when + "No steady state; the finding says why.");
      return;
    }
    paragraph(when + "Steady balance with all recycles closed: what enters leaves, within 1e-9.");
    add(streams.get());
  }

  private Block.Table streams(ModeResult mode, SteadyBalance balance) {
    Map<String, FlowEdge> ways = new LinkedHashMap<>();
    mode.sheet().forEach(edge -> ways.put(edge.stream(), edge));
    Map<String, Stream> shown = new LinkedHashMap<>(balance.streams());
    // Where nothing settles there is no stream of it to show.
    for (PitUnit pit : spec.pits()) {
      if (!(shown.get(pit.settled()).massKgps() > 0)) {
        shown.remove(pit.settled());
      }
    }
    return Column.table(
        List.copyOf(shown.entrySet()),
        List.of(
            Column.text("stream", Map.Entry::getKey),
            Column.text(
                "way",
                named ->
                    Optional.ofNullable(ways.get(named.getKey()))
                        .map(way -> way.from() + " to " + way.to())
                        .orElse("")),
            stream("flow", Kind.FLOW, Stream::volumeM3ps),
            stream("mass", Kind.MASS_PER_DAY, Stream::massKgps),
            stream("water", Kind.MASS_PER_DAY, Stream::waterKgps),
            stream("sand", Kind.MASS_PER_DAY, Stream::sandKgps),
            stream("fibre", Kind.MASS_PER_DAY, stream -> stream.kgps(Constituents.FIBRE)),
            stream("fines", Kind.MASS_PER_DAY, Stream::finesKgps),
            stream("dissolved", Kind.MASS_PER_DAY, stream -> stream.kgps(Constituents.DISSOLVED)),
            stream("sand-free solids", Kind.PERCENT, Stream::totalSolids),
            stream("sand by mass", Kind.PERCENT, Stream::sandMassShare),
            stream("density", Kind.DENSITY, Stream::densityKgM3)),
        units());
  }

  private static Column<Map.Entry<String, Stream>> stream(
      String label, Kind<?> kind, ToDoubleFunction<Stream> si) {
    return Column.of(label, kind, named -> si.applyAsDouble(named.getValue()));
  }

  private void ofUnits() {
    if (result.units().isEmpty()) {
      return;
    }
    heading(2, "The units, in mode \"" + result.main().mode().name() + "\"");
    // Units that do the same, such as twins, share a row.
    Map<String, String> alike = new LinkedHashMap<>();
    result
        .units()
        .forEach(
            (name, figures) ->
                alike.merge(
                    figures.stream()
                        .map(figure -> figure.what() + " " + figure.shown(units()))
                        .collect(Collectors.joining("; ")),
                    named(name),
                    (one, next) -> one + ", " + next));
    List<List<String>> rows = new ArrayList<>();
    alike.forEach((figures, names) -> rows.add(List.of(names, figures)));
    table(List.of("unit", "figures"), rows);
    paragraph(
        "Ranges in brackets go from the conservative to the optimistic relation of the unit. A"
            + " cyclone is shown by every model; the balance takes the one chosen.");
  }

  /** The name of a unit, with its kind where the name does not say it. */
  private String named(String name) {
    String kind = kind(name).replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
    return kind.isEmpty() || name.toLowerCase(Locale.ROOT).contains(kind)
        ? name
        : name + " (" + kind + ")";
  }

  private String kind(String name) {
    return spec.units().stream()
        .filter(unit -> unit.name().equals(name))
        .findFirst()
        .map(PlantUnit::kind)
        .orElse("");
  }
}
