package sandslurry.design.plant;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import sandslurry.design.plant.PlantSpec.Accounting;
import sandslurry.design.plant.PlantSpec.GravityLineSpec;
import sandslurry.design.plant.PlantSpec.ModeSpec;
import sandslurry.design.plant.PlantSpec.PenSpec;
import sandslurry.design.plant.PlantSpec.Prices;
import sandslurry.design.plant.PlantSpec.Product;
import sandslurry.design.plant.PlantSpec.Targets;
import sandslurry.design.plant.PlantSpec.Use;
import sandslurry.design.plant.PlantSpec.WaterSpec;
import sandslurry.fact.CommonLimits;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Kinds;
import sandslurry.fact.Span;
import sandslurry.fact.Type;
import sandslurry.fact.Values;
import sandslurry.plant.ManureSolids;
import sandslurry.plant.Range;
import sandslurry.plant.account.EnergyUse;
import sandslurry.plant.network.Network;
import sandslurry.plant.pen.ManureProduction;
import sandslurry.plant.pen.ManureProductions;
import sandslurry.plant.profile.Levels;
import sandslurry.plant.profile.SiteLevels;
import sandslurry.plant.unit.DrawFields;
import sandslurry.plant.unit.PlantUnit;
import sandslurry.plant.unit.Ports;
import sandslurry.plant.unit.UnitFields;
import sandslurry.units.InUnit;
import sandslurry.units.Measure;

/** The fields of a plant, from the pens to the storage. */
public final class PlantFields extends Fields<PlantSpec> {
  private static final PenFields PEN = new PenFields();
  private static final WaterFields WATER = new WaterFields();
  private static final ProductFields PRODUCT = new ProductFields();
  private static final ModeFields MODE = new ModeFields();
  private static final GravityLineFields GRAVITY = new GravityLineFields();
  private static final YearFields YEAR = new YearFields();
  private static final Kinds<List<PlantUnit>> UNIT = PlantUnit.kinds();

  /** The published share of feedlot manure that settles, and its middle. */
  private static final Range SETTLEABLE = new Range(0.35, 0.55, 0.75);

  private final Field<ManureProduction> production =
      standard(
              "production",
              Type.choice(
                  ManureProductions.FAMILY.all(), ManureProduction::id, ManureProduction::name),
              ManureProductions.DEFAULT.id())
          .label("Manure production by")
          .means("the equation for manure; both are shown");
  private final Field<Double> dissolved =
      standard("dissolvedShare", CommonLimits.SHARE, "20 %")
          .label("Dissolved, of solids")
          .means("dissolved solids over the dry matter of manure")
          .such("20 %");
  private final Field<Double> fibre =
      standard("fibreShare", CommonLimits.SHARE, "54 %")
          .label("Fibre, of solids")
          .means("fibre over the dry matter of manure; the rest are organic fines")
          .such("54 %");
  private final Field<Double> coating =
      standard("coatingFactor", CommonLimits.COATING, "1")
          .label("Coated grains, factor")
          .means("settling velocity of coated grains over that of clean ones")
          .such("0.8");
  private final Field<Optional<Double>> coldest =
      season(
          "coldest",
          "Coldest liquor",
          "lowest temperature of the liquor in a year",
          "4 degC",
          "39 degF");
  private final Field<Optional<Double>> warmest =
      season(
          "warmest",
          "Warmest liquor",
          "highest temperature of the liquor in a year",
          "25 degC",
          "77 degF");
  private final Field<Optional<YearSpec>> year =
      optional("year", YEAR, "the storages give their own months")
          .label("Year")
          .means("the weather of its months, and when storages are emptied");
  private final Field<Double> porosity =
      standard("porosity", CommonLimits.MOST_SHARE, "40 %")
          .label("Porosity of sand")
          .means("pores over bulk volume of settled and heaped sand")
          .such("40 %");
  private final Field<Double> rebedded =
      standard("rebeddedShare", CommonLimits.SHARE, "95 %")
          .label("Sand reused as bedding")
          .means(
              "share of the recovered sand that goes back to the stalls; the rest is spoiled, used"
                  + " elsewhere or lost in handling (default: common practice, no source)")
          .such("90 %");
  private final Field<Range> reaching =
      standard("sandReachingPlant", new Span<>(CommonLimits.POSITIVE_SHARE, Range::new), "100 %")
          .label("Sand reaching plant")
          .means(
              "share of the sand bedded that reaches the plant; the rest stays in stalls and alleys"
                  + " and is hauled with the bedding")
          .such("90 %");
  private final Field<Optional<Range>> settleable =
      optional(
              "organicSettleableShare",
              new Span<>(CommonLimits.SHARE, Range::new),
              "default: 55 %, 35 to 75")
          .label("Fibre that settles")
          .means("share of the fibre that settles")
          .such("50 %");
  private final Field<Range> settling =
      standard(
              "organicSettlingVelocity",
              new Span<>(Type.quantity(Measure.SPEED, "0.001 mm/s", "50 mm/s"), Range::new),
              "3 mm/s")
          .label("Its settling velocity")
          .means(
              "settling velocity of that fibre in a liquor as thin as water; the liquor slows it,"
                  + " but for the worst end of the range")
          .such("3 mm/s");
  private final Field<List<PenSpec>> pens =
      list("pens", PEN, "a plant needs one pen or more").label("Pens").means("the pens");
  private final Field<List<WaterSpec>> waters =
      list("waters", WATER).label("Fresh water").means("streams of fresh water");
  private final Field<List<List<PlantUnit>>> units =
      list("units", UNIT, "a plant needs one unit or more")
          .label("Units of the plant")
          .means("the units of the plant");
  private final Field<List<Product>> products =
      list("products", PRODUCT)
          .label("Products: streams that leave the plant")
          .means("the streams that leave the plant; what ends in a storage is no product");
  private final Field<List<EnergyUse>> machines =
      list("machines", new MachineFields())
          .label("Machines of known power")
          .means(
              "machines whose power is known; one whose name holds the name of a stream stands for"
                  + " the pump of that stream");
  private final Field<List<ModeSpec>> modes =
      list("modes", MODE)
          .label("Modes of the day; none is one mode all day")
          .means("how the plant runs in the course of a day, from 0 h to 24 h without a gap");
  private final Field<List<GravityLineSpec>> gravityLines =
      list("gravityLines", GRAVITY)
          .label("Pipes and channels by gravity")
          .means(
              "pipes and channels in which streams run by gravity: each is judged at every time,"
                  + " and its fall is held against the levels of its units");
  private final Field<Double> yard =
      standard("yardLevel", CommonLimits.SITE_LEVEL, "0 m")
          .label("Level of the yard")
          .means(
              "level of the yard above the datum of the plant; the height of a platform is measured"
                  + " from it")
          .such("0 m", "0 ft");
  private final Field<Targets> targets =
      standard("targets", new TargetFields(), "")
          .label("Targets")
          .means("what the plant is judged by");
  private final Field<Prices> prices =
      standard("prices", new PriceFields(), "")
          .label("Prices")
          .means("prices of your own; none is ever assumed, and none is converted");

  /** Declares the fields. */
  public PlantFields() {
    super("plant", "plant from the pens to the storage");
    begins("{\"pens\": [{}], \"units\": [{}]}");
    for (Field<?> field : List.of(coldest, warmest)) {
      onlyWhen(field, seen -> !seen.has(year), "the months of the year say this");
    }
  }

  private Field<Optional<Double>> season(
      String field, String label, String meaning, String... examples) {
    return optional(
            field,
            CommonLimits.TEMPERATURE,
            "default: as the states of the line, else the temperature of the liquid")
        .label(label)
        .means(meaning)
        .such(examples);
  }

  @Override
  protected void check(Values values) {
    if (!values.inside(pens).isEmpty() && !values.inside(units).isEmpty()) {
      checkStreams(values);
    }
    Set<String> settable = new HashSet<>(streams(values, waters, WATER.stream));
    values
        .inside(units)
        .forEach(unit -> settable.addAll(((UnitFields) unit.fields()).pumped(unit)));
    String those = "; those are: " + String.join(", ", settable.stream().sorted().toList());
    for (Values pen : values.inside(pens)) {
      PEN.water(pen)
          .filter(water -> !settable.contains(water))
          .ifPresent(
              water ->
                  pen.problem(
                      PEN.flush,
                      "\"in\" must be fresh water or pumped from a pit or a storage" + those));
    }
    if (values.good(modes)) {
      checkModes(values, settable, those);
    }
    checkGravity(values);
    Set<String> storages = new HashSet<>();
    for (Values unit : values.inside(units)) {
      ((UnitFields) unit.fields())
          .ports(unit).stream()
              .filter(ports -> ports.outlets().isEmpty())
              .map(Ports::name)
              .forEach(storages::add);
    }
    values.inside(year).forEach(one -> YEAR.checkStorages(one, storages));
  }

  /** A line by gravity carries a stream that leaves a unit and is not pumped, each stream once. */
  private void checkGravity(Values values) {
    Set<String> streams = new LinkedHashSet<>();
    for (Values unit : values.inside(units)) {
      UnitFields fields = (UnitFields) unit.fields();
      fields.ports(unit).forEach(ports -> streams.addAll(ports.outlets()));
      streams.removeAll(fields.pumped(unit));
      streams.removeAll(fields.leaving(unit));
    }
    Set<String> carried = new HashSet<>();
    for (Values line : values.inside(gravityLines)) {
      line.maybe(GRAVITY.stream)
          .filter(stream -> !streams.contains(stream) || !carried.add(stream))
          .ifPresent(
              stream ->
                  line.problem(
                      GRAVITY.stream,
                      "must be a stream out of a unit that is not pumped, once; those are: "
                          + String.join(", ", streams)));
    }
  }

  private static List<String> streams(Values values, Field<?> list, Field<String> stream) {
    List<String> streams = new ArrayList<>();
    values.inside(list).forEach(entry -> entry.maybe(stream).ifPresent(streams::add));
    return streams;
  }

  /** A unit and where a problem with its streams is told. */
  private record PortsOf(Ports ports, Values part, Field<?> field) {
    boolean isIn(String problem) {
      return !ports.name().isEmpty() && problem.contains("\"" + ports.name() + "\"");
    }
  }

  /** What is wrong with the names of streams, told at the unit that has the name. */
  private void checkStreams(Values values) {
    List<String> made = new ArrayList<>();
    List<PortsOf> all = new ArrayList<>();
    Set<String> leaving = new LinkedHashSet<>(streams(values, products, PRODUCT.stream));
    for (Values pen : values.inside(pens)) {
      PEN.made(pen).ifPresent(made::add);
      PEN.meeting(pen)
          .map(unit -> new Ports(unit.name(), unit.inlets(), unit.outlets()))
          .ifPresent(ports -> all.add(new PortsOf(ports, pen, PEN.flush)));
    }
    made.addAll(streams(values, waters, WATER.stream));
    for (Values unit : values.inside(units)) {
      UnitFields fields = (UnitFields) unit.fields();
      fields.ports(unit).forEach(ports -> all.add(new PortsOf(ports, unit, fields.name)));
      leaving.addAll(fields.leaving(unit));
    }
    Set<String> feeds = new LinkedHashSet<>();
    made.stream()
        .filter(feed -> !feeds.add(feed))
        .distinct()
        .forEach(
            feed -> values.problem(pens, "the stream \"" + feed + "\" is fed by more than one"));
    for (String problem :
        Network.problems(all.stream().map(PortsOf::ports).toList(), feeds, leaving)) {
      // A blank name has been told where it stands.
      if (!problem.contains("has no name") && !problem.contains("\"\"")) {
        all.stream()
            .filter(one -> one.isIn(problem))
            .findFirst()
            .ifPresentOrElse(
                one -> one.part().problem(one.field(), problem),
                () -> values.problem(units, problem));
      }
    }
  }

  /** Whether modes cover the day once, and set what can be set. */
  private void checkModes(Values values, Set<String> settable, String those) {
    List<ModeSpec> all = values.get(modes);
    Set<String> names = new HashSet<>();
    for (int i = 0; i < all.size(); i++) {
      Values part = values.inside(modes).get(i);
      if (!names.add(all.get(i).name())) {
        part.problem(MODE.name, "is the name of another mode too");
      }
      for (String stream : all.get(i).flowsM3ps().keySet()) {
        if (!settable.contains(stream)) {
          part.problem(
              MODE.flows,
              "\"" + stream + "\" is neither fresh water nor pumped from a pit" + those);
        }
      }
    }
    double reached = 0;
    for (ModeSpec mode :
        all.stream().sorted(Comparator.comparingDouble(ModeSpec::fromS)).toList()) {
      if (Math.abs(mode.fromS() - reached) > 1) {
        values.problem(modes, "leave a gap or overlap before \"" + mode.name() + "\" starts");
      }
      reached = mode.toS();
    }
    if (!all.isEmpty() && Math.abs(reached - InUnit.DAY.si(1)) > 1) {
      values.problem(modes, "must cover the day from 0 h to 24 h");
    }
  }

  @Override
  protected Optional<PlantSpec> make(Values values) {
    Optional<ManureSolids> solids =
        values.made(fibre, () -> new ManureSolids(values.get(dissolved), values.get(fibre)));
    List<PlantUnit> all = new ArrayList<>();
    values.inside(pens).forEach(pen -> PEN.meeting(pen).ifPresent(all::add));
    values.get(units).forEach(all::addAll);
    List<ModeSpec> day = values.get(modes);
    return solids.map(
        divided ->
            new PlantSpec(
                values.get(production),
                divided,
                values.get(coating),
                values
                    .get(year)
                    .orElseGet(
                        () ->
                            YearSpec.ofSeasons(
                                Stream.concat(
                                        values.get(coldest).stream(), values.get(warmest).stream())
                                    .toList())),
                values.get(porosity),
                values.get(pens),
                values.get(waters),
                all,
                values.get(products),
                day.isEmpty()
                    ? List.of(new ModeSpec("all day", 0, InUnit.DAY.si(1), Map.of()))
                    : day,
                values.get(machines),
                values.get(rebedded),
                values.get(targets),
                new Accounting(
                    values.get(reaching),
                    values.get(settling),
                    values.get(settleable).orElse(SETTLEABLE),
                    values.get(prices)),
                levels(values),
                values.get(gravityLines)));
  }

  private SiteLevels levels(Values values) {
    Map<String, Levels> known = new LinkedHashMap<>();
    values.inside(units).forEach(unit -> known.putAll(((UnitFields) unit.fields()).levels(unit)));
    return new SiteLevels(values.get(yard), known);
  }

  /** A stream of fresh water. */
  private static final class WaterFields extends Fields<WaterSpec> {
    private final Field<String> stream =
        needed("stream", Type.name("the stream of water"))
            .label("Stream")
            .means("name of the stream of fresh water")
            .such("wash");
    private final Field<Double> flow =
        needed("flow", CommonLimits.WATER)
            .label("Flow rate")
            .means("flow rate, unless a mode says otherwise")
            .such("1 m3/h", "5 gpm");
    private final Field<Optional<Double>> most =
        optional("most", CommonLimits.WATER, "none is looked for")
            .label("Could be at most")
            .means(
                "the most that could be had; more water is looked for as a cure in the first that"
                    + " has it")
            .such("20 m3/h");

    WaterFields() {
      super("water", "water");
    }

    @Override
    protected Optional<WaterSpec> make(Values values) {
      return Optional.of(new WaterSpec(values.get(stream), values.get(flow), values.number(most)));
    }
  }

  /** A stream that leaves the plant. */
  private static final class ProductFields extends Fields<Product> {
    private final Field<String> stream =
        needed("stream", Type.name("a stream that leaves the plant"))
            .label("Stream")
            .means("name of a stream that leaves the plant")
            .such("sand");
    private final Field<Use> use =
        needed("use", Type.choice(Arrays.asList(Use.values()), Use::word, Use::word))
            .label("Use")
            .means(
                "what becomes of it: settled is sand that settles in channels, lines and pits and"
                    + " is dug out there");

    ProductFields() {
      super("product", "product");
    }

    @Override
    protected Optional<Product> make(Values values) {
      return Optional.of(new Product(values.get(stream), values.get(use)));
    }
  }

  /** A machine whose power is known. */
  private static final class MachineFields extends Fields<EnergyUse> {
    private final Field<String> name =
        needed("name", Type.name("the machine"))
            .label("Name")
            .means("name of the machine")
            .such("screw of the box");
    private final Field<Range> power =
        needed("power", new Span<>(Type.quantity(Measure.POWER, "0 kW", "2000 kW"), Range::new))
            .label("Electric power")
            .means("electric power that it draws")
            .such("3 kW", "4 hp");
    private final Field<Double> running =
        standard("runningTime", UnitFields.RUNNING_SHARE, "24 h")
            .label("Running time a day")
            .means("time that it runs each day")
            .such("8 h");

    MachineFields() {
      super("machine", "machine");
    }

    @Override
    protected Optional<EnergyUse> make(Values values) {
      return Optional.of(new EnergyUse(values.get(name), values.get(power), values.get(running)));
    }
  }

  /** A mode in which the plant runs for some hours. */
  private static final class ModeFields extends Fields<ModeSpec> {
    private final Field<String> name =
        needed("name", Type.name("what the mode is called"))
            .label("Name")
            .means("name of the mode")
            .such("recycle dilutes");
    private final Field<Double> from =
        needed("from", CommonLimits.CLOCK)
            .label("From")
            .means("time of the day at which it starts")
            .such("0 h");
    private final Field<Double> to =
        needed("to", CommonLimits.CLOCK)
            .label("To")
            .means("time of the day at which it ends")
            .such("20 h");
    private final Field<List<Map.Entry<String, Double>>> flows =
        list("flows", new ModeFlowFields())
            .label("Flow rates of pumps and fresh water in this mode")
            .means("flow rates of pumps of pits and of fresh water that differ in this mode");

    ModeFields() {
      super("mode", "mode");
      rule(
          to,
          List.of(from),
          values -> values.get(from) < values.get(to),
          values -> "must be after \"from\"; a mode over midnight is given as two");
    }

    @Override
    protected Optional<ModeSpec> make(Values values) {
      return Optional.of(
          new ModeSpec(
              values.get(name),
              values.get(from),
              values.get(to),
              DrawFields.draws(values.get(flows))));
    }
  }

  /** A flow rate in a mode. */
  private static final class ModeFlowFields extends Fields<Map.Entry<String, Double>> {
    private final Field<String> stream =
        needed("stream", Type.name("a pump or fresh water"))
            .label("Stream")
            .means("name of the stream")
            .such("wash");
    private final Field<Double> flow =
        needed("flow", CommonLimits.WATER)
            .label("Flow rate")
            .means("flow rate in this mode")
            .such("0 m3/h");

    ModeFlowFields() {
      super("flow", "flow rate");
    }

    @Override
    protected Optional<Map.Entry<String, Double>> make(Values values) {
      return Optional.of(Map.entry(values.get(stream), values.get(flow)));
    }
  }
}
