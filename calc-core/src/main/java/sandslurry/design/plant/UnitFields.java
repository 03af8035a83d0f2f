package sandslurry.design.plant;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import javax.measure.quantity.Length;
import sandslurry.design.criteria.CommonLimits;
import sandslurry.design.plant.UnitSpec.BoxSpec;
import sandslurry.design.plant.UnitSpec.CakeSpec;
import sandslurry.design.plant.UnitSpec.CycloneSpec;
import sandslurry.design.plant.UnitSpec.LaneUnitSpec;
import sandslurry.design.plant.UnitSpec.SplitterSpec;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Kinds;
import sandslurry.fact.Limits;
import sandslurry.fact.Span;
import sandslurry.fact.Type;
import sandslurry.fact.Values;
import sandslurry.plant.Range;
import sandslurry.plant.unit.Splitter;
import sandslurry.separation.box.DilutionBox;
import sandslurry.separation.channel.OpenChannel;
import sandslurry.separation.cyclone.Hydrocyclone;
import sandslurry.separation.cyclone.HydrocycloneGeometry;
import sandslurry.separation.cyclone.HydrocycloneModel;
import sandslurry.separation.cyclone.HydrocycloneModels;
import sandslurry.separation.lane.LaneReach;
import sandslurry.separation.screen.CakeSeparator;
import sandslurry.units.InUnit;
import sandslurry.units.Measure;
import sandslurry.units.ShearRate;

/** The fields that every unit of a plant has; here those that separate or split. */
abstract class UnitFields extends Fields<List<UnitSpec>> {
  private static final Limits<Length> SMALL = Limits.of(Measure.LENGTH, "0.5 mm", "1000 mm");
  private static final Limits<ShearRate> SHEAR =
      Limits.of(Measure.SHEAR_RATE, "0.1 1/s", "1000 1/s");

  /** The share of the day that something runs. */
  static final Type<Double> RUNNING_SHARE =
      CommonLimits.RUNNING_TIME.si().map(seconds -> seconds / InUnit.ofDays(1));

  final Field<String> name =
      needed("name", Type.name("the name of the unit"), "Name", "name of the unit", "Box");
  final Field<List<String>> in =
      needed(
          "in",
          Type.name("the streams that flow in, with commas between them").map(UnitFields::streams),
          "Streams in",
          "names of the streams that flow in, with commas between them",
          "manure, recycle");

  UnitFields(String name, String title) {
    super(name, title);
  }

  /** All kinds of unit. */
  static Kinds<List<UnitSpec>> kinds() {
    return new Kinds<>(
        "Kind",
        "the kind of unit",
        new CommonFields(),
        List.of(
            new BoxFields(),
            new LaneUnitFields(),
            new CycloneFields(),
            new CakeFields("screen", "coarse screen", "2 %", "0 %", "20 %"),
            new CakeFields("fibreSeparator", "fibre separator", "50 %", "10 %", "26 %"),
            new SplitterFields(),
            new PitFields(),
            new StorageFields()));
  }

  private static List<String> streams(String text) {
    return Arrays.stream(text.split(","))
        .map(String::strip)
        .filter(stream -> !stream.isEmpty())
        .toList();
  }

  /** The units with their streams, known even where other fields are wrong. */
  abstract List<Ports> ports(Values values);

  /** The streams of what is dug out of it or spills from it, which leave the plant. */
  List<String> leaving(Values values) {
    return List.of();
  }

  /** The streams that are pumped out of it. */
  List<String> pumped(Values values) {
    return List.of();
  }

  final List<Ports> one(Values values, List<String> out) {
    return List.of(new Ports(nameOf(values), values.maybe(in).orElse(List.of()), out));
  }

  final String nameOf(Values values) {
    return values.maybe(name).orElse("");
  }

  /** A stream that flows out; blank while its name is wrong, which has been told then. */
  static String out(Values values, Field<String> stream) {
    return values.maybe(stream).orElse("");
  }

  final Field<String> stream(String field, String label, String meaning, String example) {
    return needed(field, Type.name(meaning), label, "name of " + meaning, example);
  }

  final Field<Double> running(String example) {
    return standard(
        "runningTime",
        RUNNING_SHARE,
        "24 h",
        "Running time a day",
        "time that it runs each day",
        example);
  }

  static OptionalDouble maybe(Optional<Double> value) {
    return value.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
  }

  /** The fields of a unit of which the kind is not known. */
  private static final class CommonFields extends UnitFields {
    CommonFields() {
      super("unit", "unit");
    }

    @Override
    List<Ports> ports(Values values) {
      return List.of();
    }

    @Override
    protected Optional<List<UnitSpec>> make(Values values) {
      return Optional.empty();
    }
  }

  /** A dilution settling box. */
  private static final class BoxFields extends UnitFields {
    /** The published range of displacement washing, and its middle. */
    private static final Range RINSED = new Range(0.35, 0.6, 0.86);

    private final Field<String> sand = stream("sand", "Sand stream", "the stream of sand", "sand");
    private final Field<String> over =
        stream("overflow", "Overflow stream", "the stream over the weir", "box overflow");
    private final Field<Double> length =
        needed(
            "length",
            CommonLimits.SIDE.si(),
            "Length of surface",
            "length of the water surface",
            "3 m",
            "10 ft");
    private final Field<Double> width =
        needed(
            "width",
            CommonLimits.SIDE.si(),
            "Width of surface",
            "width of the water surface",
            "1.2 m",
            "4 ft");
    private final Field<Double> depth =
        standard(
            "waterDepth",
            CommonLimits.DEPTH.si(),
            "1 m",
            "Water depth over screw",
            "depth of water above the screw",
            "1.2 m",
            "4 ft");
    private final Field<Double> effective =
        standard(
            "effectiveShare",
            CommonLimits.POSITIVE_SHARE.si(),
            "100 %",
            "Effective surface",
            "share of the surface that works",
            "80 %");
    private final Field<Double> moisture =
        standard(
            "sandMoisture",
            CommonLimits.MOST_SHARE.si(),
            "18 %",
            "Moisture of raked sand",
            "water in the raked sand, by mass",
            "18 %");
    private final Field<Double> rinse =
        standard(
            "rinsePoreVolumes",
            Limits.of(Measure.FRACTION, "0", "20").si(),
            "0",
            "Rinse, pore volumes",
            "rinse water in pore volumes of the sand, as far as the rinse stream brings it",
            "1.5");
    private final Field<Optional<String>> rinseStream =
        optional(
            "rinseStream",
            Type.name("a stream of fresh water that flows in"),
            "no rinse: water in the slurry cleans nothing",
            "Rinse stream",
            "name of the stream of fresh water that rinses the sand, one of the streams in",
            "rinse water");
    private final Field<Optional<Range>> rinsed =
        optional(
            "rinseEfficiency",
            new Span<>(CommonLimits.MOST_SHARE.si(), Range::new),
            "default: 60 %, 35 to 86",
            "Rinse efficiency",
            "share of the pore liquor that one pore volume of rinse displaces",
            "60 %");
    private final Field<Optional<Double>> screw =
        optional(
            "screwCapacity",
            CommonLimits.WATER.si(),
            "not checked",
            "Screw capacity, bulk",
            "bulk volume of sand that the screw can lift per time",
            "3 m3/h",
            "100 ft3/min");
    private final Field<Double> porosity =
        standard(
            "porosity",
            CommonLimits.MOST_SHARE.si(),
            "45 %",
            "Porosity of raked sand",
            "pores over bulk volume of the raked sand",
            "45 %");
    private final Field<Double> shear =
        standard(
            "shearRate",
            SHEAR.si(),
            "10 1/s",
            "Shear rate of viscosity",
            "shear rate at which the viscosity of the liquor counts",
            "10 1/s");
    private final Field<Double> running = running("20 h");

    BoxFields() {
      super("box", "dilution settling box");
      rule(
          rinseStream,
          List.of(in),
          values -> values.get(rinseStream).map(values.get(in)::contains).orElse(true),
          values -> "must be one of the streams that flow in");
    }

    @Override
    List<Ports> ports(Values values) {
      return one(values, List.of(out(values, sand), out(values, over)));
    }

    @Override
    protected Optional<List<UnitSpec>> make(Values values) {
      Range displaced = values.get(rinsed).orElse(RINSED);
      return values.made(
          screw,
          () ->
              List.of(
                  new BoxSpec(
                      values.get(name),
                      values.get(in),
                      values.get(sand),
                      values.get(over),
                      values.get(running),
                      new DilutionBox(
                          values.get(length) * values.get(width),
                          values.get(depth),
                          values.get(effective),
                          values.get(moisture),
                          values.get(rinse),
                          displaced.base(),
                          maybe(values.get(screw)),
                          values.get(porosity)),
                      values.get(rinseStream),
                      displaced,
                      values.get(shear))));
    }
  }

  /** A settling lane, or several in turn. */
  private static final class LaneUnitFields extends UnitFields {
    private final Field<String> sand =
        stream("sand", "Sand stream", "the stream of sand dug out", "sand");
    private final Field<String> over =
        stream("overflow", "Overflow stream", "the stream that leaves at the end", "lane overflow");
    private final Field<List<LaneReach>> reaches =
        list(
            "reaches",
            new ReachFields(),
            "a lane needs one reach or more",
            "Reaches from the inlet on",
            "reaches from the inlet on, which may differ in width");
    private final Field<Optional<Double>> filled =
        optional(
            "filled",
            CommonLimits.MOST_SHARE.si(),
            "clean to clean-out",
            "Judged when filled to",
            "how full of sand the balance takes it to be; without it the capture is the average"
                + " over one cleaning cycle",
            "50 %");
    private final Field<Integer> lanes =
        standard(
            "lanes",
            Type.count(1, 20),
            "1",
            "Lanes in turn",
            "how many lanes there are in turn",
            "2");
    private final Field<Double> drain =
        standard(
            "drainTime",
            CommonLimits.WAIT.si(),
            "3 d",
            "Time to drain",
            "time to drain before it is dug",
            "3 d");
    private final Field<Optional<Double>> path =
        optional(
            "drainPath",
            CommonLimits.SIDE.si(),
            "default: all reaches",
            "Longest drain path",
            "longest way of the water in the sand to a drain",
            "3 m",
            "10 ft");
    private final Field<Double> dig =
        standard(
            "digTime",
            CommonLimits.WAIT.si(),
            "0.5 d",
            "Time to dig out",
            "time to dig it out",
            "0.5 d");
    private final Field<Double> stack =
        standard(
            "stackTime",
            CommonLimits.WAIT.si(),
            "14 d",
            "Time in the stack",
            "time that the sand lies in a stack",
            "28 d");
    private final Field<Double> height =
        standard(
            "stackHeight",
            Limits.of(Measure.LENGTH, "0.3 m", "10 m").si(),
            "1.5 m",
            "Height of the stack",
            "height of the stack",
            "1.5 m",
            "5 ft");
    private final Field<Double> running = running("20 h");

    LaneUnitFields() {
      super("lane", "settling lane");
    }

    @Override
    List<Ports> ports(Values values) {
      return one(values, List.of(out(values, sand), out(values, over)));
    }

    @Override
    protected Optional<List<UnitSpec>> make(Values values) {
      List<LaneReach> along = values.get(reaches);
      return Optional.of(
          List.of(
              new LaneUnitSpec(
                  values.get(name),
                  values.get(in),
                  values.get(sand),
                  values.get(over),
                  values.get(running),
                  along,
                  maybe(values.get(filled)),
                  values.get(lanes),
                  values.get(drain),
                  values.get(dig),
                  values
                      .get(path)
                      .orElseGet(() -> along.stream().mapToDouble(LaneReach::lengthM).sum()),
                  values.get(stack),
                  values.get(height))));
    }
  }

  /** A reach of a lane. */
  private static final class ReachFields extends Fields<LaneReach> {
    private final Field<Double> length =
        needed("length", CommonLimits.SIDE.si(), "Length", "length of the reach", "30 m", "100 ft");
    private final Field<Double> width =
        needed("width", CommonLimits.SIDE.si(), "Width", "width of the reach", "2 m", "6 ft");
    private final Field<Double> slope =
        standard("slope", CommonLimits.SLOPE.si(), "0 %", "Slope", "fall over length", "0.2 %");
    private final Field<Double> manning =
        standard(
            "manning",
            CommonLimits.MANNING.si(),
            "0.015",
            "Manning's n",
            "Manning's roughness n of the channel",
            "0.015");
    private final Field<Optional<Double>> level =
        optional(
            "waterLevel",
            CommonLimits.DEPTH.si(),
            "default: normal depth",
            "Weir level over floor",
            "level above the floor that a weir holds; without one the flow is uniform, which needs"
                + " a slope",
            "200 mm",
            "8 in");
    private final Field<Double> storage =
        needed(
            "sandStorageDepth",
            CommonLimits.DEPTH.si(),
            "Depth kept for sand",
            "depth of sand before the lane is cleaned",
            "300 mm",
            "12 in");
    private final Field<Double> effective =
        standard(
            "effectiveShare",
            CommonLimits.POSITIVE_SHARE.si(),
            "100 %",
            "Effective floor",
            "share of the floor that works",
            "80 %");

    ReachFields() {
      super("reach", "reach");
    }

    @Override
    protected Optional<LaneReach> make(Values values) {
      return values.made(
          level,
          () ->
              new LaneReach(
                  new OpenChannel(values.get(width), values.get(slope), values.get(manning)),
                  values.get(length),
                  maybe(values.get(level)),
                  values.get(storage),
                  values.get(effective)));
    }
  }

  /** Hydrocyclones side by side. */
  private static final class CycloneFields extends UnitFields {
    private final Field<String> under =
        stream("underflow", "Underflow stream", "the stream of sand", "underflow");
    private final Field<String> over =
        stream("overflow", "Overflow stream", "the stream of liquor", "cyclone overflow");
    private final Field<Double> body =
        needed(
            "body", SMALL.si(), "Body diameter", "inside diameter of the body", "250 mm", "10 in");
    private final Field<Double> apex =
        needed("apex", SMALL.si(), "Apex diameter", "diameter of the apex", "40 mm", "1.5 in");
    private final Field<Optional<Double>> inlet =
        optional(
            "inlet",
            SMALL.si(),
            "default: 0.28 body",
            "Inlet, as a circle",
            "diameter of a circle of the area of the inlet; openings left out are in the"
                + " proportions of Rietema",
            "70 mm",
            "3 in");
    private final Field<Optional<Double>> finder =
        optional(
            "vortexFinder",
            SMALL.si(),
            "default: 0.34 body",
            "Vortex finder",
            "diameter of the vortex finder",
            "85 mm",
            "3.5 in");
    private final Field<Optional<Double>> vortex =
        optional(
            "freeVortex",
            CommonLimits.DEPTH.si(),
            "default: 4.6 body",
            "Free vortex height",
            "height from the vortex finder to the apex",
            "1.1 m",
            "4 ft");
    private final Field<Integer> parallel =
        standard(
            "parallel",
            Type.count(1, 200),
            "1",
            "Cyclones in parallel",
            "how many cyclones work side by side",
            "2");
    private final Field<HydrocycloneModel> model =
        standard(
            "model",
            Type.choice(
                HydrocycloneModels.FAMILY.all(), HydrocycloneModel::id, HydrocycloneModel::name),
            HydrocycloneModels.DEFAULT.id(),
            "Cut and pressure by",
            "the model of cut and pressure that judges; the report shows all");
    private final Field<Double> shear =
        standard(
            "shearRate",
            SHEAR.si(),
            "200 1/s",
            "Shear rate of viscosity",
            "shear rate at which the viscosity of the liquor counts",
            "200 1/s");
    private final Field<Double> pump =
        standard(
            "pumpEfficiency",
            Limits.of(Measure.FRACTION, "10 %", "100 %").si(),
            "50 %",
            "Feed pump efficiency",
            "efficiency of the feed pump with its motor",
            "50 %");
    private final Field<Double> running = running("20 h");

    CycloneFields() {
      super("cyclone", "hydrocyclone");
    }

    @Override
    List<Ports> ports(Values values) {
      return one(values, List.of(out(values, under), out(values, over)));
    }

    @Override
    protected Optional<List<UnitSpec>> make(Values values) {
      return values.made(
          body,
          () -> {
            HydrocycloneGeometry usual =
                HydrocycloneGeometry.rietema(values.get(body), values.get(apex));
            HydrocycloneGeometry geometry =
                new HydrocycloneGeometry(
                    values.get(body),
                    values.get(inlet).orElse(usual.inletM()),
                    values.get(finder).orElse(usual.overflowM()),
                    values.get(apex),
                    values.get(vortex).orElse(usual.freeVortexM()));
            return List.of(
                new CycloneSpec(
                    values.get(name),
                    values.get(in),
                    values.get(under),
                    values.get(over),
                    values.get(running),
                    new Hydrocyclone(geometry, values.get(parallel)),
                    values.get(model),
                    values.get(shear),
                    values.get(pump)));
          });
    }
  }

  /** A coarse screen or a fibre separator. */
  private static final class CakeFields extends UnitFields {
    private final Field<String> cake =
        stream("cake", "Cake stream", "the stream of what is held", "fibre");
    private final Field<String> liquid =
        stream("liquid", "Liquid stream", "the stream of the rest", "pressed");
    private final Field<Optional<Double>> opening =
        optional(
            "opening",
            SMALL.si(),
            "optional",
            "Opening",
            "opening; all sand coarser than it is held",
            "10 mm",
            "0.4 in");
    private final Field<Double> fibre;
    private final Field<Double> fines;
    private final Field<Double> dry;
    private final Field<Double> running;

    CakeFields(String kind, String title, String fibre, String fines, String dry) {
      super(kind, title);
      this.fibre =
          standard(
              "fibreCapture",
              CommonLimits.SHARE.si(),
              fibre,
              "Fibre captured",
              "share of the fibre that is captured",
              fibre);
      this.fines =
          standard(
              "finesCapture",
              CommonLimits.SHARE.si(),
              fines,
              "Fines captured",
              "share of the fines that is captured",
              fines);
      this.dry =
          standard(
              "cakeSolids",
              CommonLimits.POSITIVE_SHARE.si(),
              dry,
              "Solids of the cake",
              "dry matter of the cake, by mass",
              dry);
      this.running = running("20 h");
      if (kind.equals("screen")) {
        neededWhen(opening, any -> true, "the opening of the screen");
      }
    }

    @Override
    List<Ports> ports(Values values) {
      return one(values, List.of(out(values, cake), out(values, liquid)));
    }

    @Override
    protected Optional<List<UnitSpec>> make(Values values) {
      return Optional.of(
          List.of(
              new CakeSpec(
                  values.get(name),
                  name(),
                  values.get(in),
                  values.get(cake),
                  values.get(liquid),
                  values.get(running),
                  new CakeSeparator(
                      maybe(values.get(opening)),
                      values.get(fibre),
                      values.get(fines),
                      values.get(dry)))));
    }
  }

  /** A tee, weir or mixing point. */
  private static final class SplitterFields extends UnitFields {
    private static final OutletFields OUTLET = new OutletFields();

    private final Field<List<Map.Entry<String, Double>>> outlets =
        list(
            "outlets",
            OUTLET,
            "a splitter needs one outlet or more",
            "Streams out and their shares, in all 100 %",
            "the streams out and their shares, which sum to 1");

    SplitterFields() {
      super("splitter", "splitter");
    }

    @Override
    List<Ports> ports(Values values) {
      return one(
          values,
          values.inside(outlets).stream().map(outlet -> out(outlet, OUTLET.stream)).toList());
    }

    @Override
    protected Optional<List<UnitSpec>> make(Values values) {
      List<Map.Entry<String, Double>> all = values.get(outlets);
      return values.made(
          outlets,
          () ->
              List.of(
                  new SplitterSpec(
                      new Splitter(
                          values.get(name),
                          values.get(in),
                          all.stream().map(Map.Entry::getKey).toList(),
                          all.stream().map(Map.Entry::getValue).toList()),
                      "splitter")));
    }
  }

  /** An outlet of a splitter. */
  private static final class OutletFields extends Fields<Map.Entry<String, Double>> {
    private final Field<String> stream =
        needed("stream", Type.name("the stream out"), "Stream", "name of the stream out", "bleed");
    private final Field<Double> share =
        needed("share", CommonLimits.SHARE.si(), "Share", "share of the feed", "90 %");

    OutletFields() {
      super("outlet", "outlet");
    }

    @Override
    protected Optional<Map.Entry<String, Double>> make(Values values) {
      return Optional.of(Map.entry(values.get(stream), values.get(share)));
    }
  }

  /** A pump of a pit or a storage. */
  static final class DrawFields extends Fields<Map.Entry<String, Double>> {
    final Field<String> stream =
        needed(
            "stream",
            Type.name("the stream that is pumped"),
            "Stream",
            "name of the stream that is pumped",
            "recycle");
    private final Field<Double> flow =
        needed(
            "flow",
            CommonLimits.WATER.si(),
            "Flow rate",
            "flow rate of the pump",
            "8 m3/h",
            "35 gpm");

    DrawFields() {
      super("pump", "pump");
    }

    /** The pumps by their streams, in the order in which they are served. */
    static Map<String, Double> draws(List<Map.Entry<String, Double>> pumps) {
      return pumps.stream()
          .collect(
              Collectors.toMap(
                  Map.Entry::getKey, Map.Entry::getValue, (a, b) -> b, LinkedHashMap::new));
    }

    /** The streams that are pumped; one that stands twice is told. */
    List<String> streams(List<Values> pumps) {
      List<String> streams = new ArrayList<>();
      for (Values pump : pumps) {
        pump.maybe(stream).ifPresent(streams::add);
      }
      return streams;
    }

    void tellTwice(List<Values> pumps) {
      List<String> before = new ArrayList<>();
      for (Values pump : pumps) {
        pump.maybe(stream)
            .ifPresent(
                name -> {
                  if (before.contains(name)) {
                    pump.problem(stream, "another pump of this pit has this stream");
                  }
                  before.add(name);
                });
      }
    }

    @Override
    protected Optional<Map.Entry<String, Double>> make(Values values) {
      return Optional.of(Map.entry(values.get(stream), values.get(flow)));
    }
  }
}
