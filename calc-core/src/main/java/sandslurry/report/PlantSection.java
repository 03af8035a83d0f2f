package sandslurry.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import sandslurry.assessment.Figure;
import sandslurry.assessment.PlantResult;
import sandslurry.assessment.PlantResult.FlowEdge;
import sandslurry.assessment.PlantResult.ModeResult;
import sandslurry.circuit.Day;
import sandslurry.circuit.Liquor;
import sandslurry.circuit.PenLoad;
import sandslurry.circuit.PitDay;
import sandslurry.circuit.Range;
import sandslurry.circuit.SteadyBalance;
import sandslurry.circuit.Stream;
import sandslurry.circuit.UnitDay;
import sandslurry.design.PlantSpec;
import sandslurry.design.UnitSpec;
import sandslurry.separation.LaneTrade;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** The plant in a report: loads, streams, drawing of flows, days, accounts. */
public final class PlantSection extends SectionWriter {
  private final PlantResult result;
  private final PlantSpec spec;

  private PlantSection(PlantResult result, PlantSpec spec, UnitSystem units) {
    super(units);
    this.result = result;
    this.spec = spec;
  }

  /**
   * Writes the section.
   *
   * @param result what came of the plant
   * @param spec the plant
   * @param units the units of the report
   * @return the section as data
   */
  public static List<Block> of(PlantResult result, PlantSpec spec, UnitSystem units) {
    PlantSection section = new PlantSection(result, spec, units);
    section.heading(1, "Plant");
    section.loads();
    for (ModeResult mode : result.modes()) {
      section.mode(mode);
    }
    section.loop();
    section.sizing();
    section.units();
    section.trades();
    section.days();
    List<Block> blocks = new ArrayList<>(section.blocks());
    result.accounts().ifPresent(a -> blocks.addAll(PlantAccountsSection.of(a, units)));
    return List.copyOf(blocks);
  }

  private String number(Kind<?> kind, Range range) {
    return range.hasWidth()
        ? number(kind, range.base())
            + " ("
            + number(kind, range.low())
            + " to "
            + number(kind, range.high())
            + ")"
        : number(kind, range.base());
  }

  private void loads() {
    heading(2, "What the pens make");
    List<PenLoad> loads = new ArrayList<>(result.loads());
    if (loads.size() > 1) {
      loads.add(result.total());
    }
    double day = InUnit.ofDays(1);
    List<String> head = new ArrayList<>(List.of("what"));
    loads.forEach(load -> head.add(load.name()));
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        row(
            head("mass in a day", Kind.MASS_PER_DAY),
            loads,
            load -> number(Kind.MASS_PER_DAY, load.massPerDayKg().map(kg -> kg / day))));
    rows.add(
        row(
            head("volume in a day", Kind.VOLUME),
            loads,
            load -> number(Kind.VOLUME, load.volumePerDayM3())));
    rows.add(
        row(
            head("sand in a day", Kind.MASS_PER_DAY),
            loads,
            load -> number(Kind.MASS_PER_DAY, load.sandPerDayKg().map(kg -> kg / day))));
    rows.add(
        row(
            head("solids without sand in a day", Kind.MASS_PER_DAY),
            loads,
            load -> number(Kind.MASS_PER_DAY, load.solidsPerDayKg().map(kg -> kg / day))));
    rows.add(
        row(
            head("mass of a batch", Kind.MASS),
            loads,
            load -> number(Kind.MASS, load.massPerBatchKg())));
    rows.add(
        row(
            head("volume of a batch", Kind.VOLUME),
            loads,
            load -> number(Kind.VOLUME, load.volumePerBatchM3())));
    rows.add(
        row(
            head("sand of a batch", Kind.MASS),
            loads,
            load -> number(Kind.MASS, load.sandPerBatchKg())));
    rows.add(row("sand-free solids [%]", loads, load -> number(Kind.PERCENT, load.totalSolids())));
    rows.add(row("sand by mass [%]", loads, load -> number(Kind.PERCENT, load.sandMassShare())));
    rows.add(
        row(
            "sand by volume of grains [%]",
            loads, load -> number(Kind.PERCENT, load.sandVolumeShare())));
    rows.add(
        row(
            "sand by bulk volume [%]",
            loads, load -> number(Kind.PERCENT, load.sandBulkShare(spec.porosity()))));
    rows.add(
        row(
            head("density", Kind.DENSITY),
            loads,
            load -> number(Kind.DENSITY, load.densityKgM3())));
    table(head, rows);
    paragraph(
        "Manure by "
            + spec.production().name()
            + ", with the sand, wash and rain water of the pen. A range stands in brackets where an"
            + " input is one. The three shares of sand are three different numbers: by mass, by"
            + " volume of the grains (what hydraulics needs) and by bulk volume, as two heaps side"
            + " by side would be measured.");
  }

  private static List<String> row(
      String what, List<PenLoad> loads, Function<PenLoad, String> cell) {
    List<String> row = new ArrayList<>(List.of(what));
    loads.forEach(load -> row.add(cell.apply(load)));
    return row;
  }

  private void mode(ModeResult mode) {
    heading(2, "Mode \"" + mode.mode().name() + "\"");
    String when = "From " + clock(mode.mode().fromS()) + " to " + clock(mode.mode().toS()) + " h. ";
    if (mode.balance().isEmpty()) {
      paragraph(
          when + mode.failure().orElseThrow().explanation() + " There is no table of streams.");
      return;
    }
    SteadyBalance balance = mode.balance().get();
    paragraph(
        when
            + "Below is the balance that this mode would come to if it ran for good: all recycles"
            + " closed at once by a linear balance of each constituent, the units asked anew "
            + balance.passes()
            + " times until their feeds no longer changed. Each constituent is conserved to "
            + (balance.imbalance() < 1e-12 ? "the rounding of the computer" : "1e-9")
            + " in every unit and in the whole.");
    flows(mode);
    streams(balance);
  }

  private static String clock(double seconds) {
    return String.format(Locale.ROOT, "%.1f", InUnit.days(seconds) * 24);
  }

  /** The drawing of flows as text: unit, stream with flow and sand, unit. */
  private void flows(ModeResult mode) {
    List<List<String>> rows = new ArrayList<>();
    for (FlowEdge edge : mode.sheet()) {
      rows.add(
          List.of(
              edge.from(),
              "-- "
                  + edge.stream()
                  + " ("
                  + units.show(Kind.FLOW, edge.flowM3ps())
                  + ", sand "
                  + units.show(Kind.MASS_PER_DAY, edge.sandKgps())
                  + ") ->",
              edge.to()));
    }
    table(List.of("from", "stream", "to"), rows);
  }

  private void streams(SteadyBalance balance) {
    List<List<String>> rows = new ArrayList<>();
    Map<String, Stream> shown = new java.util.LinkedHashMap<>(balance.streams());
    // Where nothing settles there is no stream of it to show.
    for (UnitSpec unit : spec.units()) {
      if (unit instanceof UnitSpec.PitSpec pit && !(shown.get(pit.settled()).massKgps() > 0)) {
        shown.remove(pit.settled());
      }
    }
    shown.forEach(
        (name, stream) ->
            rows.add(
                List.of(
                    name,
                    number(Kind.FLOW, stream.volumeM3ps()),
                    number(Kind.MASS_PER_DAY, stream.massKgps()),
                    number(Kind.MASS_PER_DAY, stream.waterKgps()),
                    number(Kind.MASS_PER_DAY, stream.sandKgps()),
                    number(Kind.MASS_PER_DAY, fibre(stream)),
                    number(Kind.MASS_PER_DAY, stream.finesKgps()),
                    number(
                        Kind.MASS_PER_DAY, stream.kgps(sandslurry.circuit.Constituents.DISSOLVED)),
                    number(Kind.PERCENT, stream.totalSolids()),
                    number(Kind.PERCENT, stream.sandMassShare()),
                    number(Kind.DENSITY, stream.densityKgM3()))));
    table(
        List.of(
            "stream",
            head("flow", Kind.FLOW),
            head("mass", Kind.MASS_PER_DAY),
            head("water", Kind.MASS_PER_DAY),
            head("sand", Kind.MASS_PER_DAY),
            head("fibre", Kind.MASS_PER_DAY),
            head("fines", Kind.MASS_PER_DAY),
            head("dissolved", Kind.MASS_PER_DAY),
            "sand-free solids [%]",
            "sand by mass [%]",
            head("density", Kind.DENSITY)),
        rows);
  }

  private static double fibre(Stream stream) {
    return stream.kgps(sandslurry.circuit.Constituents.FIBRE);
  }

  private void loop() {
    List<ModeResult> steady =
        result.modes().stream().filter(mode -> mode.liquor().isPresent()).toList();
    if (steady.isEmpty()) {
      return;
    }
    heading(2, "What the liquor thickens to");
    List<List<String>> rows = new ArrayList<>();
    for (ModeResult mode : steady) {
      PlantResult.LiquorLimit liquor = mode.liquor().orElseThrow();
      rows.add(
          List.of(
              mode.mode().name(),
              number(Kind.MASS_PER_DAY, liquor.solidsNotCaughtKgps()),
              number(Kind.MASS_PER_DAY, liquor.netWaterKgps()),
              number(Kind.PERCENT, liquor.analytic()),
              number(Kind.PERCENT, liquor.solved()),
              number(Kind.PERCENT, liquor.dissolved()),
              number(Kind.PERCENT, liquor.sandCapture())));
    }
    table(
        List.of(
            "mode",
            head("solids not caught S", Kind.MASS_PER_DAY),
            head("net water W", Kind.MASS_PER_DAY),
            "S/(S+W) [%]",
            "by the balance [%]",
            "dissolved [%]",
            "sand recovered [%]"),
        rows);
    paragraph(
        "Recycling more of a thick liquid dilutes nothing: the recycle ratio cancels. What helps is"
            + " to catch more solids or to bring more fresh water. A purge is the surplus itself and"
            + " grows only with the water. Salts are caught by nothing; where they concentrate,"
            + " struvite can scale pipes and pumps.");
    if (!result.recycling().isEmpty()) {
      List<List<String>> factors = new ArrayList<>();
      for (PlantResult.Recycling one : result.recycling()) {
        factors.add(
            List.of(
                number(Kind.NUMBER, one.factor()),
                one.liquor().isPresent() ? number(Kind.FLOW, one.recycledM3ps()) : "-",
                one.liquor().map(l -> number(Kind.PERCENT, l.solved())).orElse("-"),
                one.liquor().map(l -> number(Kind.PERCENT, l.sandCapture())).orElse("-")));
      }
      table(
          List.of(
              "recycle pumps at",
              head("recycled", Kind.FLOW),
              "liquor settles at [%]",
              "sand recovered [%]"),
          factors);
      paragraph(
          "S / (S + W) holds whatever is recycled. It moves only as far as a separator catches more or"
              + " less on the second and third pass, or lets more sand settle in more or less liquor.");
    }
    result
        .accounts()
        .flatMap(a -> a.timeConstantS().isPresent() ? Optional.of(a) : Optional.empty())
        .ifPresent(
            accounts -> {
              double tau = accounts.timeConstantS().getAsDouble();
              paragraph(
                  "A mixed loop goes 95 % of the way in "
                      + units.show(Kind.DAYS, InUnit.ofDays(Liquor.daysTo(tau, 0.95)))
                      + " (what the pits hold at rest over what comes in, three times)."
                      + (result.settledDay().isPresent()
                          ? " By the schedule below, from pits full of water, it is there on day "
                              + result.settledDay().getAsInt()
                              + "."
                          : ""));
            });
  }

  private void units() {
    if (result.units().isEmpty()) {
      return;
    }
    heading(2, "The units, in mode \"" + result.main().mode().name() + "\"");
    List<List<String>> rows = new ArrayList<>();
    result
        .units()
        .forEach(
            (name, figures) -> {
              String kind = kind(name);
              for (Figure figure : figures) {
                rows.add(List.of(name, kind, figure.what(), figure.shown(units)));
              }
            });
    table(List.of("unit", "kind", "what", "value"), rows);
    paragraph(
        "Ranges in brackets go from the cautious to the hopeful relation of the unit. A cyclone is"
            + " shown by every model; the balance takes the one chosen.");
  }

  private String kind(String name) {
    return spec.units().stream()
        .filter(unit -> unit.name().equals(name))
        .findFirst()
        .map(UnitSpec::kind)
        .orElse("");
  }

  private void trades() {
    for (Map.Entry<String, List<LaneTrade>> trade : result.trades().entrySet()) {
      heading(2, "The trade of " + trade.getKey());
      List<List<String>> rows = new ArrayList<>();
      for (LaneTrade point : trade.getValue()) {
        rows.add(
            List.of(
                number(Kind.VELOCITY, point.velocityMps()),
                number(Kind.BORE, point.depthM()),
                number(Kind.PERCENT, point.sandRecovery()),
                number(Kind.PERCENT, point.fibreRetained()),
                number(Kind.PERCENT, point.foreignMatter())));
      }
      table(
          List.of(
              head("velocity", Kind.VELOCITY),
              head("depth for it", Kind.BORE),
              "sand kept [%]",
              "fibre kept [%]",
              "not sand in the dry deposit [%]"),
          rows);
      paragraph(
          "A slower lane keeps more sand, and more organic matter in it. Width, length and flow are"
              + " those of the first reach; the depth is what a weir would have to hold.");
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
    List<List<String>> rows = new ArrayList<>();
    for (PitDay pit : last.get().pits().values()) {
      rows.add(
          List.of(
              pit.name(),
              number(Kind.VOLUME, pit.leastM3()),
              number(Kind.VOLUME, pit.mostM3()),
              number(Kind.VOLUME, pit.volumesM3().get(pit.volumesM3().size() - 1)),
              number(Kind.VOLUME, pit.spilledM3()),
              number(
                  Kind.VOLUME,
                  pit.shortM3().values().stream().mapToDouble(Double::doubleValue).sum()),
              number(Kind.PERCENT, pit.endContents().totalSolids())));
    }
    table(
        List.of(
            "pit",
            head("least", Kind.VOLUME),
            head("most", Kind.VOLUME),
            head("at midnight", Kind.VOLUME),
            head("spilled", Kind.VOLUME),
            head("missed by pumps", Kind.VOLUME),
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
            + " of a run that starts with water in the pits, in steps of an hour at most. "
            + fed());
    peaks(last.get());
  }

  /** Solids of all pits, pools of storages left out where there are others. */
  private double held(Day day) {
    List<Stream> contents = new ArrayList<>();
    List<Stream> pools = new ArrayList<>();
    for (UnitSpec unit : spec.units()) {
      if (unit instanceof UnitSpec.PitSpec pit) {
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
    for (PlantSpec.PenSpec pen : spec.pens()) {
      if (pen.batches().isPresent()) {
        sandslurry.circuit.Batches batches = pen.batches().get();
        said.add(
            pen.pen().name()
                + (pen.flush().isPresent() ? " is flushed " : " is scraped ")
                + batches.perDay()
                + " times a day, one of them from "
                + clock(batches.firstS())
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
              clock(unit.peakAtS()),
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

  /** Purge and fresh water, each on its own. */
  private void sizing() {
    PlantResult.WaterSizing sizing = result.sizing();
    if (!sizing.looked()) {
      return;
    }
    heading(2, "Purge and fresh water for the sand recovery wanted");
    table(
        List.of(
            "remedy",
            head("amount", Kind.FLOW),
            "sand recovered [%]",
            "liquor settles at [%]",
            head("to the storages", Kind.FLOW),
            head("without it", Kind.FLOW)),
        List.of(
            sized("fresh water added", sizing.added()),
            sized("recycled liquor replaced by fresh water", sizing.replaced())));
    paragraph(
        "Each is sized on its own, as the least that brings the recovery of the day to its target,"
            + " with no more water than can be had; a dash says that no amount does. Liquor that is"
            + " replaced leaves as a purge: the storages take in as much more.");
  }

  private List<String> sized(String what, Optional<PlantResult.Sized> sized) {
    return sized
        .map(
            s ->
                List.of(
                    what,
                    number(Kind.FLOW, s.amountM3ps()),
                    number(Kind.PERCENT, s.capture()),
                    number(Kind.PERCENT, s.liquor()),
                    number(Kind.FLOW, s.surplusM3ps()),
                    number(Kind.FLOW, s.surplusBeforeM3ps())))
        .orElse(List.of(what, "-", "-", "-", "-", "-"));
  }

  private double recovered(Day day) {
    double flushed = 0;
    for (PlantSpec.PenSpec pen : spec.pens()) {
      flushed += day.meanFlows().get(pen.stream()).sandKgps();
    }
    double caught = 0;
    for (PlantSpec.Product product : spec.products()) {
      if (product.use() == PlantSpec.Use.BEDDING) {
        caught += day.meanFlows().get(product.stream()).sandKgps();
      }
    }
    return flushed > 0 ? caught / flushed : 0;
  }
}
