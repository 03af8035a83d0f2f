package sandslurry.design;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import javax.measure.quantity.Power;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import sandslurry.circuit.Batches;
import sandslurry.circuit.EnergyUse;
import sandslurry.circuit.Flush;
import sandslurry.circuit.GivenFloor;
import sandslurry.circuit.ManureProduction;
import sandslurry.circuit.ManureProductions;
import sandslurry.circuit.ManureSolids;
import sandslurry.circuit.Network;
import sandslurry.circuit.OtherCattle;
import sandslurry.circuit.Pen;
import sandslurry.circuit.Pit;
import sandslurry.circuit.Pond;
import sandslurry.circuit.Range;
import sandslurry.circuit.Split;
import sandslurry.circuit.Splitter;
import sandslurry.circuit.StorageAccount;
import sandslurry.circuit.Stream;
import sandslurry.circuit.Unit;
import sandslurry.design.PlantSpec.FlushSpec;
import sandslurry.design.PlantSpec.ModeSpec;
import sandslurry.design.PlantSpec.PenSpec;
import sandslurry.design.PlantSpec.Product;
import sandslurry.design.PlantSpec.Use;
import sandslurry.design.PlantSpec.WaterSpec;
import sandslurry.design.UnitSpec.BoxSpec;
import sandslurry.design.UnitSpec.CakeSpec;
import sandslurry.design.UnitSpec.CycloneSpec;
import sandslurry.design.UnitSpec.LaneUnitSpec;
import sandslurry.design.UnitSpec.Mixer;
import sandslurry.design.UnitSpec.PitSpec;
import sandslurry.design.UnitSpec.SplitterSpec;
import sandslurry.design.UnitSpec.StorageSpec;
import sandslurry.separation.CakeSeparator;
import sandslurry.separation.DilutionBox;
import sandslurry.separation.Hydrocyclone;
import sandslurry.separation.HydrocycloneGeometry;
import sandslurry.separation.HydrocycloneModel;
import sandslurry.separation.HydrocycloneModels;
import sandslurry.separation.Impeller;
import sandslurry.separation.LaneReach;
import sandslurry.separation.OpenChannel;
import sandslurry.units.InUnit;
import sandslurry.units.Measure;
import sandslurry.units.ShearRate;
import si.uom.quantity.MassFlowRate;
import si.uom.quantity.VolumetricFlowRate;

/** Reads the part "plant" of a design. */
final class PlantReader {
  private static final Limits<Dimensionless> SHARE = Limits.of(Measure.FRACTION, "0 %", "100 %");
  private static final Limits<Dimensionless> POSITIVE_SHARE =
      Limits.of(Measure.FRACTION, "1 %", "100 %");
  private static final Limits<Dimensionless> LIQUOR = Limits.of(Measure.FRACTION, "0.1 %", "50 %");
  private static final Limits<Dimensionless> MOST_SHARE =
      Limits.of(Measure.FRACTION, "0 %", "90 %");
  private static final Limits<Dimensionless> HEADS = Limits.of(Measure.FRACTION, "0", "100000");
  private static final Limits<Dimensionless> FACTOR = Limits.of(Measure.FRACTION, "0.3", "3");
  private static final Limits<Dimensionless> COATING = Limits.of(Measure.FRACTION, "0.3", "1");
  private static final Limits<MassFlowRate> MILK =
      Limits.of(Measure.MASS_FLOW, "0 kg/d", "100 kg/d");
  private static final Limits<MassFlowRate> STALL_SAND =
      Limits.of(Measure.MASS_FLOW, "0 kg/d", "200 kg/d");
  private static final Limits<VolumetricFlowRate> WATER =
      Limits.of(Measure.FLOW, "0 m3/d", "20000 m3/d");
  private static final Limits<Time> INTERVAL = Limits.of(Measure.TIME, "0.1 h", "72 h");
  private static final Limits<javax.measure.quantity.Length> SMALL =
      Limits.of(Measure.LENGTH, "0.5 mm", "1000 mm");
  private static final Limits<Length> DEPTH = Limits.of(Measure.LENGTH, "0.01 m", "20 m");
  private static final Limits<Length> WATER_DEPTH = Limits.of(Measure.LENGTH, "0 m", "5 m");
  private static final Limits<Length> SIDE = Limits.of(Measure.LENGTH, "0.2 m", "1000 m");
  private static final Limits<Dimensionless> SLOPE = Limits.of(Measure.FRACTION, "0 %", "10 %");
  private static final Limits<Dimensionless> SIDE_SLOPE = Limits.of(Measure.FRACTION, "0", "5");
  private static final Limits<Dimensionless> MANNING = Limits.of(Measure.FRACTION, "0.008", "0.06");
  private static final Limits<Volume> PIT = Limits.of(Measure.VOLUME, "0.1 m3", "200000 m3");
  private static final Limits<Volume> CONTENTS = Limits.of(Measure.VOLUME, "0 m3", "200000 m3");
  private static final Limits<Time> RUNNING = Limits.of(Measure.TIME, "1 min", "24 h");
  private static final Limits<Time> CLOCK = Limits.of(Measure.TIME, "0 h", "24 h");
  private static final Limits<Time> WAIT = Limits.of(Measure.TIME, "0 d", "365 d");
  private static final Limits<Time> MONTH = Limits.of(Measure.TIME, "1 d", "366 d");
  private static final Limits<ShearRate> SHEAR =
      Limits.of(Measure.SHEAR_RATE, "0.1 1/s", "1000 1/s");
  private static final Limits<Dimensionless> PORE_VOLUMES = Limits.of(Measure.FRACTION, "0", "20");
  private static final Limits<Dimensionless> NUMBER = Limits.of(Measure.FRACTION, "0.05", "50");
  private static final Limits<Frequency> MIXER_SPEED =
      Limits.of(Measure.FREQUENCY, "0 rpm", "3000 rpm");
  private static final Limits<Power> POWER = Limits.of(Measure.POWER, "0 kW", "2000 kW");
  private static final Limits<Dimensionless> EFFICIENCY =
      Limits.of(Measure.FRACTION, "10 %", "100 %");
  private static final Limits<Length> RAIN = Limits.of(Measure.LENGTH, "0 mm", "2000 mm");

  /** The published range of displacement washing, and its middle. */
  private static final Range RINSED = new Range(0.35, 0.6, 0.86);

  private static final Map<String, ManureProduction> PRODUCTIONS =
      named(ManureProductions.all().toArray(ManureProduction[]::new), ManureProduction::id);
  private static final Map<String, HydrocycloneModel> CYCLONES =
      named(HydrocycloneModels.all().toArray(HydrocycloneModel[]::new), HydrocycloneModel::id);
  private static final Map<String, Impeller.Kind> IMPELLERS =
      named(Impeller.Kind.values(), kind -> kind.name().toLowerCase(Locale.ROOT).replace('_', ' '));
  private static final Map<String, Use> USES = named(Use.values(), Use::word);
  private static final Map<String, String> KINDS =
      named(
          new String[] {
            "box", "lane", "cyclone", "screen", "fibreSeparator", "splitter", "pit", "storage"
          },
          kind -> kind);

  private static final String SETTLING =
      "a storage that gives liquor back needs the share of these that settles in it";

  /** How long a scraping lasts unless it is given: common practice, no source. */
  private static final double SCRAPING_S = 1800;

  private static final Limits<Volume> FLUSH = Limits.of(Measure.VOLUME, "0.1 m3", "1000 m3");
  private static final Limits<VolumetricFlowRate> RELEASE =
      Limits.of(Measure.FLOW, "0.001 m3/s", "10 m3/s");
  private static final Limits<Dimensionless> ALLEY_SLOPE =
      Limits.of(Measure.FRACTION, "0.1 %", "10 %");
  private static final Limits<Length> STACK = Limits.of(Measure.LENGTH, "0.3 m", "10 m");

  /** Units that a part of the file makes besides its own: a flush, the pool of a storage. */
  private final List<UnitSpec> besides = new ArrayList<>();

  private final List<String> dugOut = new ArrayList<>();
  private final List<Section> unitParts = new ArrayList<>();
  private final List<Ports> ports = new ArrayList<>();

  private PlantReader() {}

  static Optional<PlantSpec> read(Section part) {
    return new PlantReader().plant(part);
  }

  private static <T> Map<String, T> named(T[] values, Function<T, String> name) {
    return Arrays.stream(values)
        .collect(Collectors.toMap(name, v -> v, (a, b) -> a, LinkedHashMap::new));
  }

  /** The names of the streams of a unit, known even where its other fields are wrong. */
  private record Ports(String name, List<String> inlets, List<String> outlets) implements Unit {
    @Override
    public Split split(Stream feed) {
      throw new IllegalStateException(name + " is only a name");
    }
  }

  private Optional<PlantSpec> plant(Section part) {
    ManureProduction production =
        part.has("production")
            ? part.choice("production", PRODUCTIONS).orElse(ManureProductions.DEFAULT)
            : ManureProductions.DEFAULT;
    Optional<Double> dissolved = si(part, "dissolvedShare", SHARE, "20 %");
    Optional<Double> fibre = si(part, "fibreShare", SHARE, "54 %");
    Optional<ManureSolids> solids = Optional.empty();
    if (dissolved.isPresent() && fibre.isPresent()) {
      solids = built(part, "fibreShare", () -> new ManureSolids(dissolved.get(), fibre.get()));
    }
    Optional<Double> coating = si(part, "coatingFactor", COATING, "1");
    Optional<Double> porosity = si(part, "porosity", MOST_SHARE, "40 %");
    Optional<Double> rebedded = si(part, "rebeddedShare", SHARE, "100 %");
    List<Section> penParts = part.list("pens");
    if (penParts.isEmpty()) {
      part.problem("pens", "a plant needs one pen or more");
    }
    List<PenSpec> pens = all(penParts, this::pen);
    List<Section> waterParts = part.list("waters");
    List<WaterSpec> waters = all(waterParts, this::water);
    List<Section> parts = part.list("units");
    if (parts.isEmpty()) {
      part.problem("units", "a plant needs one unit or more");
    }
    List<UnitSpec> units = new ArrayList<>(besides);
    for (Section entry : parts) {
      besides.clear();
      Optional<UnitSpec> unit = unit(entry);
      units.addAll(besides);
      unit.ifPresent(units::add);
    }
    List<Section> productParts = part.list("products");
    List<Product> products = all(productParts, this::product);
    List<Section> modeParts = part.list("modes");
    List<ModeSpec> modes = all(modeParts, this::mode);
    List<EnergyUse> machines = all(part.list("machines"), this::machine);
    Optional<PlantSpec.Targets> targets = targets(part.part("targets"), part);
    Optional<PlantSpec.Accounting> accounting = new AccountingReader(part).accounting();
    part.refuseUnknown();
    if (!parts.isEmpty() && !penParts.isEmpty()) {
      connections(part, pens, waters, products);
    }
    if (pens.size() == penParts.size()) {
      flushWaters(penParts, pens, units, waters);
    }
    if (modes.size() == modeParts.size()) {
      modes(modeParts, modes, units, waters, part);
    }
    if (solids.isEmpty()
        || coating.isEmpty()
        || porosity.isEmpty()
        || rebedded.isEmpty()
        || targets.isEmpty()
        || accounting.isEmpty()) {
      return Optional.empty();
    }
    List<ModeSpec> day =
        modes.isEmpty() ? List.of(new ModeSpec("all day", 0, InUnit.ofDays(1), Map.of())) : modes;
    return Optional.of(
        new PlantSpec(
            production,
            solids.get(),
            coating.get(),
            porosity.get(),
            pens,
            waters,
            units,
            products,
            day,
            machines,
            rebedded.get(),
            targets.get(),
            accounting.get()));
  }

  private static <T> List<T> all(List<Section> parts, Function<Section, Optional<T>> reader) {
    List<T> read = new ArrayList<>();
    parts.forEach(part -> reader.apply(part).ifPresent(read::add));
    return read;
  }

  /** The SI value of a field with a default. */
  private static <Q extends Quantity<Q>> Optional<Double> si(
      Section part, String field, Limits<Q> limits, String standard) {
    return part.orDefault(field, limits, standard).map(limits.measure()::si);
  }

  private static <Q extends Quantity<Q>> Optional<Double> si(
      Section part, String field, Limits<Q> limits) {
    return part.required(field, limits).map(limits.measure()::si);
  }

  private static <Q extends Quantity<Q>> OptionalDouble may(
      Section part, String field, Limits<Q> limits) {
    Optional<Double> value = part.optional(field, limits).map(limits.measure()::si);
    return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
  }

  /** Builds a kernel object; what it refuses for reasons that no single field shows is told. */
  private static <T> Optional<T> built(Section part, String field, Supplier<T> maker) {
    try {
      return Optional.of(maker.get());
    } catch (IllegalArgumentException e) {
      part.problem(field, e.getMessage());
      return Optional.empty();
    }
  }

  private static boolean there(Optional<?>... values) {
    return Arrays.stream(values).allMatch(Optional::isPresent);
  }

  private static Optional<String> name(Section part, String field, String what) {
    Optional<String> text = part.text(field).map(String::strip).filter(name -> !name.isEmpty());
    if (!part.has(field)) {
      part.problem(field, "is missing: " + what);
    } else if (text.isEmpty()) {
      part.problem(field, "must not be blank: " + what);
    }
    return text;
  }

  /** A value or a group of the least, the expected and the greatest. */
  private static <Q extends Quantity<Q>> Optional<Range> range(
      Section part, String field, Limits<Q> limits, String standard) {
    return range(
        part, field, limits, Range.of(limits.measure().si(limits.measure().parse(standard))));
  }

  /** The same with a default that has a width of its own. */
  static <Q extends Quantity<Q>> Optional<Range> range(
      Section part, String field, Limits<Q> limits, Range standard) {
    if (!part.has(field)) {
      return Optional.of(standard);
    }
    if (!part.isGroup(field)) {
      return si(part, field, limits).map(Range::of);
    }
    Section group = part.part(field).orElseThrow();
    Optional<Double> low = si(group, "low", limits);
    Optional<Double> base = si(group, "base", limits);
    Optional<Double> high = si(group, "high", limits);
    group.refuseUnknown();
    if (!there(low, base, high)) {
      return Optional.empty();
    }
    if (!(low.get() <= base.get() && base.get() <= high.get())) {
      part.problem(field, "needs \"low\" <= \"base\" <= \"high\"");
      return Optional.empty();
    }
    return Optional.of(new Range(low.get(), base.get(), high.get()));
  }

  private Optional<PenSpec> pen(Section part) {
    Optional<String> name = name(part, "name", "the name of the pen");
    Optional<String> stream = name(part, "stream", "the stream that the pen makes");
    Optional<Double> cows = si(part, "cows", HEADS, "0");
    Optional<Double> milk = si(part, "milk", MILK, "36 kg/d");
    Map<OtherCattle, Double> others = new EnumMap<>(OtherCattle.class);
    si(part, "dryCows", HEADS, "0").ifPresent(n -> others.put(OtherCattle.DRY_COW, n));
    si(part, "heifers", HEADS, "0").ifPresent(n -> others.put(OtherCattle.HEIFER, n));
    si(part, "calves", HEADS, "0").ifPresent(n -> others.put(OtherCattle.CALF, n));
    Optional<Range> factor = range(part, "manureFactor", FACTOR, "1");
    Optional<Double> stalls = si(part, "stalls", HEADS, "0");
    Optional<Range> sand = range(part, "sandPerStall", STALL_SAND, "0 kg/d");
    Optional<Range> water = range(part, "water", WATER, "0 m3/d");
    Optional<Double> interval = si(part, "scrapeInterval", INTERVAL, "8 h");
    OptionalDouble first = may(part, "firstScraping", CLOCK);
    OptionalDouble lasts = may(part, "scrapeDuration", RUNNING);
    boolean flushed = part.has("flush");
    Optional<FlushSpec> flush =
        flushed
            ? part.part("flush").flatMap(p -> flush(p, name.orElse(""), stream.orElse("")))
            : Optional.empty();
    part.refuseUnknown();
    Optional<Batches> batches = Optional.empty();
    if (first.isPresent() && interval.isPresent()) {
      double standard =
          flush.map(f -> f.flush().durationS()).orElse(Math.min(SCRAPING_S, interval.get()));
      batches =
          built(
              part,
              "firstScraping",
              () ->
                  new Batches(
                      first.getAsDouble() % InUnit.ofDays(1),
                      interval.get(),
                      lasts.orElse(standard)));
      if (batches.isEmpty()) {
        return Optional.empty();
      }
    }
    if (flushed && flush.isEmpty()) {
      return Optional.empty();
    }
    Optional<Batches> when = batches;
    if (cows.isPresent()
        && others.size() == OtherCattle.values().length
        && !(cows.get() > 0)
        && others.values().stream().noneMatch(heads -> heads > 0)) {
      part.problem("cows", "a pen needs cows or other cattle");
    }
    if (!there(name, stream, cows, milk, factor, stalls, sand, water, interval)) {
      return Optional.empty();
    }
    return built(
        part,
        "name",
        () ->
            new PenSpec(
                new Pen(
                    name.get(),
                    cows.get(),
                    milk.get(),
                    others,
                    factor.get(),
                    stalls.get(),
                    sand.get(),
                    water.get(),
                    InUnit.ofDays(1) / interval.get()),
                flush.isPresent() ? scraped(name.get()) : stream.get(),
                when,
                flush));
  }

  /** The manure of a flushed pen before the water comes to it. */
  private static String scraped(String pen) {
    return "manure of " + pen;
  }

  private Optional<FlushSpec> flush(Section part, String pen, String stream) {
    Optional<String> water = name(part, "in", "the stream of flush water");
    Optional<Double> volume = si(part, "volume", FLUSH);
    Optional<Double> rate = si(part, "rate", RELEASE);
    Optional<Double> length = si(part, "length", SIDE);
    Optional<Double> width = si(part, "width", SIDE);
    Optional<Double> slope = si(part, "slope", ALLEY_SLOPE);
    Optional<Double> manning = si(part, "manning", MANNING, String.valueOf(Flush.ALLEY_MANNING));
    part.refuseUnknown();
    if (pen.isEmpty() || stream.isEmpty() || water.isEmpty()) {
      return Optional.empty();
    }
    String unit = "Flush of " + pen;
    List<String> in = List.of(scraped(pen), water.get());
    ports(part, unit, in, List.of(stream));
    if (!there(volume, rate, length, width, slope, manning)) {
      return Optional.empty();
    }
    besides.add(new SplitterSpec(Splitter.mixing(unit, in, stream), "flush"));
    return Optional.of(
        new FlushSpec(
            unit,
            water.get(),
            new OpenChannel(width.get(), slope.get(), manning.get()),
            length.get(),
            volume.get(),
            rate.get()));
  }

  /** Flush water must be something that can be let out in batches. */
  private static void flushWaters(
      List<Section> parts, List<PenSpec> pens, List<UnitSpec> units, List<WaterSpec> waters) {
    Set<String> known = settable(units, waters);
    for (int i = 0; i < pens.size(); i++) {
      Optional<FlushSpec> flush = pens.get(i).flush();
      if (flush.isPresent() && !known.contains(flush.get().water())) {
        parts
            .get(i)
            .problem(
                "flush",
                "\"in\" must be fresh water or pumped from a pit or a storage; those are: "
                    + known.stream().sorted().collect(Collectors.joining(", ")));
      }
    }
  }

  private static Set<String> settable(List<UnitSpec> units, List<WaterSpec> waters) {
    Set<String> settable = new HashSet<>();
    waters.forEach(water -> settable.add(water.stream()));
    for (UnitSpec unit : units) {
      if (unit instanceof PitSpec pit) {
        settable.addAll(pit.pit().draws().keySet());
      }
    }
    return settable;
  }

  private Optional<WaterSpec> water(Section part) {
    Optional<String> stream = name(part, "stream", "the stream of water");
    Optional<Double> flow = si(part, "flow", WATER);
    OptionalDouble most = may(part, "most", WATER);
    part.refuseUnknown();
    return there(stream, flow)
        ? Optional.of(new WaterSpec(stream.get(), flow.get(), most))
        : Optional.empty();
  }

  private Optional<Product> product(Section part) {
    Optional<String> stream = name(part, "stream", "a stream that leaves the plant");
    Optional<Use> use = part.requiredChoice("use", USES);
    part.refuseUnknown();
    return there(stream, use)
        ? Optional.of(new Product(stream.get(), use.get()))
        : Optional.empty();
  }

  private Optional<ModeSpec> mode(Section part) {
    Optional<String> name = name(part, "name", "what the mode is called");
    Optional<Double> from = si(part, "from", CLOCK);
    Optional<Double> to = si(part, "to", CLOCK);
    Map<String, Double> flows = new LinkedHashMap<>();
    List<Section> entries = part.list("flows");
    for (Section entry : entries) {
      Optional<String> stream = name(entry, "stream", "a pump or fresh water");
      Optional<Double> flow = si(entry, "flow", WATER);
      entry.refuseUnknown();
      if (there(stream, flow)) {
        flows.put(stream.get(), flow.get());
      }
    }
    part.refuseUnknown();
    return there(name, from, to)
        ? Optional.of(new ModeSpec(name.get(), from.get(), to.get(), flows))
        : Optional.empty();
  }

  private Optional<EnergyUse> machine(Section part) {
    Optional<String> name = name(part, "name", "the machine");
    Optional<Range> power = range(part, "power", POWER, "0 kW");
    if (!part.has("power")) {
      part.problem("power", "is missing: a power is needed");
    }
    Optional<Double> share = runningShare(part);
    part.refuseUnknown();
    return there(name, power, share)
        ? Optional.of(new EnergyUse(name.get(), power.get(), share.get()))
        : Optional.empty();
  }

  private Optional<PlantSpec.Targets> targets(Optional<Section> given, Section plant) {
    Section part = given.orElseGet(() -> plant.blank("targets"));
    Optional<Double> capture = si(part, "sandCapture", SHARE, "85 %");
    Optional<Double> organic = si(part, "bedOrganicMatter", SHARE, "3 %");
    Optional<Double> moisture = si(part, "bedMoisture", SHARE, "20 %");
    OptionalDouble liquor = may(part, "liquorSolids", LIQUOR);
    OptionalDouble storage = may(part, "storage", WAIT);
    Optional<Optional<PlantSpec.WantedGradation>> gradation = AccountingReader.wanted(part);
    part.refuseUnknown();
    return there(capture, organic, moisture, gradation)
        ? Optional.of(
            new PlantSpec.Targets(
                capture.get(),
                organic.get(),
                moisture.get(),
                liquor,
                storage.isPresent()
                    ? OptionalDouble.of(InUnit.days(storage.getAsDouble()))
                    : OptionalDouble.empty(),
                gradation.get()))
        : Optional.empty();
  }

  private static Optional<Double> runningShare(Section part) {
    return si(part, "runningTime", RUNNING, "24 h").map(seconds -> seconds / InUnit.ofDays(1));
  }

  private static List<String> inlets(Section part) {
    Optional<String> text = name(part, "in", "the streams that flow in, with commas between them");
    return text.map(
            t ->
                Arrays.stream(t.split(","))
                    .map(String::strip)
                    .filter(stream -> !stream.isEmpty())
                    .toList())
        .orElse(List.of());
  }

  private Optional<UnitSpec> unit(Section part) {
    Optional<String> kind = part.requiredChoice("kind", KINDS);
    String name = name(part, "name", "the name of the unit").orElse("");
    List<String> in = inlets(part);
    if (kind.isEmpty()) {
      return Optional.empty();
    }
    Optional<UnitSpec> unit =
        switch (kind.get()) {
          case "box" -> box(part, name, in);
          case "lane" -> lane(part, name, in);
          case "cyclone" -> cyclone(part, name, in);
          case "screen", "fibreSeparator" -> cake(part, kind.get(), name, in);
          case "splitter" -> splitter(part, name, in);
          case "pit" -> pit(part, name, in);
          default -> storage(part, name, in);
        };
    part.refuseUnknown();
    return name.isEmpty() || in.isEmpty() ? Optional.empty() : unit;
  }

  private void ports(Section part, String name, List<String> in, List<String> out) {
    unitParts.add(part);
    ports.add(new Ports(name, in, out));
  }

  private String outlet(Section part, String field, String what) {
    return name(part, field, what).orElse("");
  }

  private Optional<UnitSpec> box(Section part, String name, List<String> in) {
    String sand = outlet(part, "sand", "the stream of sand");
    String over = outlet(part, "overflow", "the stream over the weir");
    ports(part, name, in, List.of(sand, over));
    Optional<Double> length = si(part, "length", SIDE);
    Optional<Double> width = si(part, "width", SIDE);
    Optional<Double> depth = si(part, "waterDepth", DEPTH, "1 m");
    Optional<Double> effective = si(part, "effectiveShare", POSITIVE_SHARE, "100 %");
    Optional<Double> moisture = si(part, "sandMoisture", MOST_SHARE, "18 %");
    Optional<Double> rinse = si(part, "rinsePoreVolumes", PORE_VOLUMES, "0");
    Optional<Range> rinsed = range(part, "rinseEfficiency", MOST_SHARE, RINSED);
    OptionalDouble screw = may(part, "screwCapacity", WATER);
    Optional<Double> porosity = si(part, "porosity", MOST_SHARE, "45 %");
    Optional<Double> shear = si(part, "shearRate", SHEAR, "10 1/s");
    Optional<Double> share = runningShare(part);
    if (!there(length, width, depth, effective, moisture, rinse, rinsed, porosity, shear, share)) {
      return Optional.empty();
    }
    return built(
        part,
        "screwCapacity",
        () ->
            new BoxSpec(
                name,
                in,
                sand,
                over,
                share.get(),
                new DilutionBox(
                    length.get() * width.get(),
                    depth.get(),
                    effective.get(),
                    moisture.get(),
                    rinse.get(),
                    rinsed.get().base(),
                    screw,
                    porosity.get()),
                rinsed.get(),
                shear.get()));
  }

  private Optional<UnitSpec> lane(Section part, String name, List<String> in) {
    String sand = outlet(part, "sand", "the stream of sand dug out");
    String over = outlet(part, "overflow", "the stream that leaves at the end");
    ports(part, name, in, List.of(sand, over));
    List<Section> entries = part.list("reaches");
    if (entries.isEmpty()) {
      part.problem("reaches", "a lane needs one reach or more");
    }
    List<LaneReach> reaches = all(entries, this::reach);
    OptionalDouble full = may(part, "filled", MOST_SHARE);
    Optional<Integer> lanes = part.has("lanes") ? part.count("lanes", 1, 20) : Optional.of(1);
    Optional<Double> drain = si(part, "drainTime", WAIT, "3 d");
    Optional<Double> dig = si(part, "digTime", WAIT, "0.5 d");
    OptionalDouble path = may(part, "drainPath", SIDE);
    Optional<Double> stack = si(part, "stackTime", WAIT, "14 d");
    Optional<Double> height = si(part, "stackHeight", STACK, "1.5 m");
    Optional<Double> share = runningShare(part);
    return there(lanes, drain, dig, stack, height, share) && reaches.size() == entries.size()
        ? Optional.of(
            new LaneUnitSpec(
                name,
                in,
                sand,
                over,
                share.get(),
                reaches,
                full,
                lanes.get(),
                drain.get(),
                dig.get(),
                path.orElse(reaches.stream().mapToDouble(LaneReach::lengthM).sum()),
                stack.get(),
                height.get()))
        : Optional.empty();
  }

  private Optional<LaneReach> reach(Section part) {
    Optional<Double> length = si(part, "length", SIDE);
    Optional<Double> width = si(part, "width", SIDE);
    Optional<Double> slope = si(part, "slope", SLOPE, "0 %");
    Optional<Double> manning = si(part, "manning", MANNING, "0.015");
    OptionalDouble level = may(part, "waterLevel", DEPTH);
    Optional<Double> storage = si(part, "sandStorageDepth", DEPTH);
    Optional<Double> effective = si(part, "effectiveShare", POSITIVE_SHARE, "100 %");
    part.refuseUnknown();
    if (!there(length, width, slope, manning, storage, effective)) {
      return Optional.empty();
    }
    return built(
        part,
        "waterLevel",
        () ->
            new LaneReach(
                new OpenChannel(width.get(), slope.get(), manning.get()),
                length.get(),
                level,
                storage.get(),
                effective.get()));
  }

  private Optional<UnitSpec> cyclone(Section part, String name, List<String> in) {
    String under = outlet(part, "underflow", "the stream of sand");
    String over = outlet(part, "overflow", "the stream of liquor");
    ports(part, name, in, List.of(under, over));
    Optional<Double> body = si(part, "body", SMALL);
    Optional<Double> apex = si(part, "apex", SMALL);
    OptionalDouble inlet = may(part, "inlet", SMALL);
    OptionalDouble finder = may(part, "vortexFinder", SMALL);
    OptionalDouble vortex = may(part, "freeVortex", DEPTH);
    Optional<Integer> parallel =
        part.has("parallel") ? part.count("parallel", 1, 200) : Optional.of(1);
    HydrocycloneModel model =
        part.has("model")
            ? part.choice("model", CYCLONES).orElse(HydrocycloneModels.DEFAULT)
            : HydrocycloneModels.DEFAULT;
    Optional<Double> shear = si(part, "shearRate", SHEAR, "200 1/s");
    Optional<Double> pump = si(part, "pumpEfficiency", EFFICIENCY, "50 %");
    Optional<Double> share = runningShare(part);
    if (!there(body, apex, parallel, shear, pump, share)) {
      return Optional.empty();
    }
    return built(
        part,
        "body",
        () -> {
          HydrocycloneGeometry usual = HydrocycloneGeometry.rietema(body.get(), apex.get());
          return new CycloneSpec(
              name,
              in,
              under,
              over,
              share.get(),
              new Hydrocyclone(
                  new HydrocycloneGeometry(
                      body.get(),
                      inlet.orElse(usual.inletM()),
                      finder.orElse(usual.overflowM()),
                      apex.get(),
                      vortex.orElse(usual.freeVortexM())),
                  parallel.get()),
              model,
              shear.get(),
              pump.get());
        });
  }

  private Optional<UnitSpec> cake(Section part, String kind, String name, List<String> in) {
    String cake = outlet(part, "cake", "the stream of what is held");
    String liquid = outlet(part, "liquid", "the stream of the rest");
    ports(part, name, in, List.of(cake, liquid));
    boolean screen = kind.equals("screen");
    OptionalDouble opening = may(part, "opening", SMALL);
    if (screen && !part.has("opening")) {
      part.problem("opening", "is missing: the opening of the screen");
    }
    Optional<Double> fibre = si(part, "fibreCapture", SHARE, screen ? "2 %" : "50 %");
    Optional<Double> fines = si(part, "finesCapture", SHARE, screen ? "0 %" : "10 %");
    Optional<Double> dry = si(part, "cakeSolids", POSITIVE_SHARE, screen ? "20 %" : "26 %");
    Optional<Double> share = runningShare(part);
    return there(fibre, fines, dry, share)
        ? Optional.of(
            new CakeSpec(
                name,
                kind,
                in,
                cake,
                liquid,
                share.get(),
                new CakeSeparator(opening, fibre.get(), fines.get(), dry.get())))
        : Optional.empty();
  }

  private Optional<UnitSpec> splitter(Section part, String name, List<String> in) {
    List<Section> entries = part.list("outlets");
    if (entries.isEmpty()) {
      part.problem("outlets", "a splitter needs one outlet or more");
    }
    List<String> names = new ArrayList<>();
    List<Double> shares = new ArrayList<>();
    for (Section entry : entries) {
      names.add(outlet(entry, "stream", "the stream out"));
      si(entry, "share", SHARE).ifPresent(shares::add);
      entry.refuseUnknown();
    }
    ports(part, name, in, names);
    return shares.size() == entries.size() && !entries.isEmpty()
        ? built(
            part,
            "outlets",
            () -> new SplitterSpec(new Splitter(name, in, names, shares), "splitter"))
        : Optional.empty();
  }

  private Optional<UnitSpec> pit(Section part, String name, List<String> in) {
    Map<String, Double> draws = new LinkedHashMap<>();
    List<Section> entries = part.list("pumps");
    entries.forEach(entry -> pump(entry, draws));
    Optional<String> overflow =
        part.has("overflow")
            ? Optional.of(outlet(part, "overflow", "the stream over the weir"))
            : Optional.empty();
    if (entries.isEmpty() && overflow.isEmpty()) {
      part.problem("pumps", "is missing: a pit needs a pump or an \"overflow\"");
    }
    List<String> out = new ArrayList<>(draws.keySet());
    overflow.ifPresent(out::add);
    out.add(PitSpec.settledIn(name));
    dugOut.add(PitSpec.settledIn(name));
    ports(part, name, in, out);
    Optional<Double> depth = si(part, "depth", DEPTH, "3 m");
    Optional<Double> capacity = si(part, "capacity", PIT);
    OptionalDouble weir = may(part, "weirVolume", PIT);
    OptionalDouble start = may(part, "startVolume", CONTENTS);
    Optional<Mixer> mixer = part.part("mixer").flatMap(this::mixer);
    if (capacity.isEmpty() || depth.isEmpty() || draws.size() < entries.size()) {
      return Optional.empty();
    }
    if (overflow.isPresent() && !part.has("weirVolume")) {
      part.problem("weirVolume", "is missing: the volume up to the overflow");
      return Optional.empty();
    }
    double full = weir.orElse(capacity.get());
    if (overflow.isPresent() && full == capacity.get()) {
      part.problem("weirVolume", "must be below the capacity: else the brim is the overflow");
      return Optional.empty();
    }
    return built(
        part,
        "capacity",
        () ->
            new PitSpec(
                new Pit(name, in, draws, overflow, full, capacity.get(), start.orElse(full)),
                mixer,
                capacity.get() / depth.get(),
                Optional.empty()));
  }

  private void pump(Section entry, Map<String, Double> draws) {
    String stream = outlet(entry, "stream", "the stream that is pumped");
    Optional<Double> flow = si(entry, "flow", WATER);
    entry.refuseUnknown();
    if (draws.containsKey(stream)) {
      entry.problem("stream", "another pump of this pit has this stream");
    }
    flow.ifPresent(f -> draws.put(stream, f));
  }

  private Optional<Mixer> mixer(Section part) {
    Optional<Double> diameter = si(part, "diameter", DEPTH);
    Optional<Double> speed = si(part, "speed", MIXER_SPEED);
    Impeller.Kind kind =
        part.has("impeller")
            ? part.choice("impeller", IMPELLERS).orElse(Impeller.Kind.PROPELLER)
            : Impeller.Kind.PROPELLER;
    OptionalDouble suspension = may(part, "suspensionNumber", NUMBER);
    OptionalDouble power = may(part, "powerNumber", NUMBER);
    Optional<Double> share = runningShare(part);
    part.refuseUnknown();
    if (!there(diameter, speed, share)) {
      return Optional.empty();
    }
    Impeller usual = kind.of(diameter.get());
    return Optional.of(
        new Mixer(
            new Impeller(
                diameter.get(),
                suspension.orElse(usual.suspensionNumber()),
                power.orElse(usual.powerNumber())),
            speed.get(),
            share.get()));
  }

  private Optional<UnitSpec> storage(Section part, String name, List<String> in) {
    Map<String, Double> draws = new LinkedHashMap<>();
    List<Section> pumps = part.list("pumps");
    pumps.forEach(entry -> pump(entry, draws));
    boolean recycles = !pumps.isEmpty();
    String pool = "Pool of " + name;
    String settles = PitSpec.settledIn(name);
    String stays = "stays in " + name;
    if (recycles) {
      List<String> out = new ArrayList<>(draws.keySet());
      out.addAll(List.of(stays, settles));
      ports(part, pool, in, out);
    }
    List<String> kept = recycles ? List.of(settles, stays) : in;
    ports(part, name, kept, List.of());
    Optional<Double> sand = si(part, "sandSettling", SHARE, "100 %");
    OptionalDouble fibre = may(part, "fibreSettling", SHARE);
    OptionalDouble fines = may(part, "finesSettling", SHARE);
    OptionalDouble held = may(part, "poolVolume", PIT);
    if (recycles && !part.has("fibreSettling")) {
      part.problem("fibreSettling", "is missing: " + SETTLING);
    }
    if (recycles && !part.has("finesSettling")) {
      part.problem("finesSettling", "is missing: " + SETTLING);
    }
    Optional<Double> length = si(part, "floorLength", SIDE);
    Optional<Double> width = si(part, "floorWidth", SIDE);
    Optional<Double> side = si(part, "sideSlope", SIDE_SLOPE, "0");
    Optional<Double> depth = si(part, "depth", DEPTH);
    Optional<Double> storm = si(part, "storm", WATER_DEPTH, "0 mm");
    Optional<Double> freeboard = si(part, "freeboard", WATER_DEPTH, "0.3 m");
    Optional<Double> settled = si(part, "settledSand", CONTENTS, "0 m3");
    List<Section> entries = part.list("months");
    if (entries.isEmpty()) {
      part.problem("months", "a storage needs the months of its year, or one entry of 365 d");
    }
    List<StorageAccount.Month> months = all(entries, this::month);
    if (!there(length, width, side, depth, storm, freeboard, settled)
        || months.size() < entries.size()) {
      return Optional.empty();
    }
    if (!(freeboard.get() < depth.get())) {
      part.problem("freeboard", "must be below the depth");
      return Optional.empty();
    }
    Pond pond = new Pond(length.get(), width.get(), side.get(), depth.get());
    if (recycles) {
      if (sand.isEmpty() || fibre.isEmpty() || fines.isEmpty() || draws.size() < pumps.size()) {
        return Optional.empty();
      }
      double full = held.orElse(pond.volumeM3() / 2);
      Optional<PitSpec> spec =
          built(
              part,
              "poolVolume",
              () ->
                  new PitSpec(
                      new Pit(pool, in, draws, Optional.of(stays), full, pond.volumeM3(), full),
                      Optional.empty(),
                      pond.areaM2(depth.get()),
                      Optional.of(
                          new GivenFloor(
                              settles, sand.get(), fibre.getAsDouble(), fines.getAsDouble()))));
      if (spec.isEmpty()) {
        return Optional.empty();
      }
      besides.add(spec.get());
    }
    return built(
        part,
        "depth",
        () ->
            new StorageSpec(name, kept, pond, months, storm.get(), freeboard.get(), settled.get()));
  }

  private Optional<StorageAccount.Month> month(Section part) {
    Optional<String> name = name(part, "name", "the month");
    Optional<Double> days = si(part, "length", MONTH);
    Optional<Double> rain = si(part, "rain", RAIN, "0 mm");
    Optional<Double> evaporation = si(part, "evaporation", RAIN, "0 mm");
    part.refuseUnknown();
    return there(name, days, rain, evaporation)
        ? Optional.of(
            new StorageAccount.Month(
                name.get(), InUnit.days(days.get()), 0, rain.get(), evaporation.get()))
        : Optional.empty();
  }

  /** What is wrong with the names of streams, told at the unit that has the name. */
  private void connections(
      Section plant, List<PenSpec> pens, List<WaterSpec> waters, List<Product> products) {
    Set<String> feeds = new LinkedHashSet<>();
    Set<String> twice = new HashSet<>();
    pens.forEach(pen -> twice.addAll(feeds.add(pen.stream()) ? Set.of() : Set.of(pen.stream())));
    waters.forEach(w -> twice.addAll(feeds.add(w.stream()) ? Set.of() : Set.of(w.stream())));
    twice.forEach(
        name -> plant.problem("pens", "the stream \"" + name + "\" is fed by more than one"));
    Set<String> leaving = new LinkedHashSet<>();
    products.forEach(product -> leaving.add(product.stream()));
    leaving.addAll(dugOut);
    for (String problem : Network.problems(ports, feeds, leaving)) {
      // A blank name has been told where it stands.
      if (problem.contains("has no name") || problem.contains("\"\"")) {
        continue;
      }
      int at = culprit(problem);
      if (at >= 0) {
        unitParts.get(at).problem("name", problem);
      } else {
        plant.problem("units", problem);
      }
    }
  }

  private int culprit(String problem) {
    for (int i = 0; i < ports.size(); i++) {
      if (!ports.get(i).name().isEmpty() && problem.contains("\"" + ports.get(i).name() + "\"")) {
        return i;
      }
    }
    return -1;
  }

  private static void modes(
      List<Section> parts,
      List<ModeSpec> modes,
      List<UnitSpec> units,
      List<WaterSpec> waters,
      Section plant) {
    Set<String> settable = settable(units, waters);
    Map<String, Integer> names = new HashMap<>();
    for (int i = 0; i < modes.size(); i++) {
      ModeSpec mode = modes.get(i);
      Section part = parts.get(i);
      if (names.put(mode.name(), i) != null) {
        part.problem("name", "is the name of another mode too");
      }
      if (!(mode.fromS() < mode.toS())) {
        part.problem("to", "must be after \"from\"; a mode over midnight is given as two");
      }
      mode.flowsM3ps()
          .keySet()
          .forEach(
              stream -> {
                if (!settable.contains(stream)) {
                  part.problem(
                      "flows",
                      "\""
                          + stream
                          + "\" is neither fresh water nor pumped from a pit; those are: "
                          + settable.stream().sorted().collect(Collectors.joining(", ")));
                }
              });
    }
    List<ModeSpec> sorted =
        modes.stream().sorted(java.util.Comparator.comparingDouble(ModeSpec::fromS)).toList();
    double reached = 0;
    for (ModeSpec mode : sorted) {
      if (Math.abs(mode.fromS() - reached) > 1) {
        plant.problem("modes", "leave a gap or overlap before \"" + mode.name() + "\" starts");
      }
      reached = mode.toS();
    }
    if (!modes.isEmpty() && Math.abs(reached - InUnit.ofDays(1)) > 1) {
      plant.problem("modes", "must cover the day from 0 h to 24 h");
    }
  }
}
