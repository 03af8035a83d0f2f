package sandslurry.design;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import sandslurry.design.UnitSpec.BoxSpec;
import sandslurry.design.UnitSpec.CakeSpec;
import sandslurry.design.UnitSpec.CycloneSpec;
import sandslurry.design.UnitSpec.LaneUnitSpec;
import sandslurry.design.UnitSpec.SplitterSpec;
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
import sandslurry.units.Measure;
import sandslurry.units.ShearRate;

/**
 * Reads the units of a plant: here those that separate or split, pits and storages by their own
 * readers.
 */
final class UnitReader {
  private static final Limits<Length> SMALL = Limits.of(Measure.LENGTH, "0.5 mm", "1000 mm");
  private static final Limits<ShearRate> SHEAR =
      Limits.of(Measure.SHEAR_RATE, "0.1 1/s", "1000 1/s");
  private static final Limits<Dimensionless> PORE_VOLUMES = Limits.of(Measure.FRACTION, "0", "20");
  private static final Limits<Dimensionless> EFFICIENCY =
      Limits.of(Measure.FRACTION, "10 %", "100 %");
  private static final Limits<Length> STACK = Limits.of(Measure.LENGTH, "0.3 m", "10 m");

  /** The published range of displacement washing, and its middle. */
  private static final Range RINSED = new Range(0.35, 0.6, 0.86);

  private static final Map<String, HydrocycloneModel> CYCLONES =
      DesignReader.named(
          HydrocycloneModels.all().toArray(HydrocycloneModel[]::new), HydrocycloneModel::id);

  private static final Map<String, String> KINDS =
      DesignReader.named(
          new String[] {
            "box", "lane", "cyclone", "screen", "fibreSeparator", "splitter", "pit", "storage"
          },
          kind -> kind);

  private final PlantConnections plant;

  UnitReader(PlantConnections plant) {
    this.plant = plant;
  }

  Optional<UnitSpec> unit(Section part) {
    Optional<String> kind = part.requiredChoice("kind", KINDS);
    String name = part.nameOrBlank("name", "the name of the unit");
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
          case "pit" -> new PitReader(plant).pit(part, name, in);
          default -> new StorageReader(plant).storage(part, name, in);
        };
    part.refuseUnknown();
    return name.isEmpty() || in.isEmpty() ? Optional.empty() : unit;
  }

  private static List<String> inlets(Section part) {
    Optional<String> text = part.name("in", "the streams that flow in, with commas between them");
    return text.map(
            t ->
                Arrays.stream(t.split(","))
                    .map(String::strip)
                    .filter(stream -> !stream.isEmpty())
                    .toList())
        .orElse(List.of());
  }

  private Optional<UnitSpec> box(Section part, String name, List<String> in) {
    String sand = part.nameOrBlank("sand", "the stream of sand");
    String over = part.nameOrBlank("overflow", "the stream over the weir");
    plant.connect(part, name, in, List.of(sand, over));
    Optional<Double> length = part.si("length", PlantLimits.SIDE);
    Optional<Double> width = part.si("width", PlantLimits.SIDE);
    Optional<Double> depth = part.si("waterDepth", PlantLimits.DEPTH, "1 m");
    Optional<Double> effective = part.si("effectiveShare", PlantLimits.POSITIVE_SHARE, "100 %");
    Optional<Double> moisture = part.si("sandMoisture", PlantLimits.MOST_SHARE, "18 %");
    Optional<Double> rinse = part.si("rinsePoreVolumes", PORE_VOLUMES, "0");
    Optional<Range> rinsed = part.range("rinseEfficiency", PlantLimits.MOST_SHARE, RINSED);
    OptionalDouble screw = part.may("screwCapacity", PlantLimits.WATER);
    Optional<Double> porosity = part.si("porosity", PlantLimits.MOST_SHARE, "45 %");
    Optional<Double> shear = part.si("shearRate", SHEAR, "10 1/s");
    Optional<Double> share = part.runningShare();
    if (!Section.there(
        length, width, depth, effective, moisture, rinse, rinsed, porosity, shear, share)) {
      return Optional.empty();
    }
    return part.built(
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
    String sand = part.nameOrBlank("sand", "the stream of sand dug out");
    String over = part.nameOrBlank("overflow", "the stream that leaves at the end");
    plant.connect(part, name, in, List.of(sand, over));
    List<Section> entries = part.list("reaches");
    if (entries.isEmpty()) {
      part.problem("reaches", "a lane needs one reach or more");
    }
    List<LaneReach> reaches = Section.all(entries, this::reach);
    OptionalDouble full = part.may("filled", PlantLimits.MOST_SHARE);
    Optional<Integer> lanes = part.has("lanes") ? part.count("lanes", 1, 20) : Optional.of(1);
    Optional<Double> drain = part.si("drainTime", PlantLimits.WAIT, "3 d");
    Optional<Double> dig = part.si("digTime", PlantLimits.WAIT, "0.5 d");
    OptionalDouble path = part.may("drainPath", PlantLimits.SIDE);
    Optional<Double> stack = part.si("stackTime", PlantLimits.WAIT, "14 d");
    Optional<Double> height = part.si("stackHeight", STACK, "1.5 m");
    Optional<Double> share = part.runningShare();
    return Section.there(lanes, drain, dig, stack, height, share)
            && reaches.size() == entries.size()
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
    Optional<Double> length = part.si("length", PlantLimits.SIDE);
    Optional<Double> width = part.si("width", PlantLimits.SIDE);
    Optional<Double> slope = part.si("slope", DesignReader.SLOPE, "0 %");
    Optional<Double> manning = part.si("manning", DesignReader.MANNING, "0.015");
    OptionalDouble level = part.may("waterLevel", PlantLimits.DEPTH);
    Optional<Double> storage = part.si("sandStorageDepth", PlantLimits.DEPTH);
    Optional<Double> effective = part.si("effectiveShare", PlantLimits.POSITIVE_SHARE, "100 %");
    part.refuseUnknown();
    if (!Section.there(length, width, slope, manning, storage, effective)) {
      return Optional.empty();
    }
    return part.built(
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
    String under = part.nameOrBlank("underflow", "the stream of sand");
    String over = part.nameOrBlank("overflow", "the stream of liquor");
    plant.connect(part, name, in, List.of(under, over));
    Optional<Double> body = part.si("body", SMALL);
    Optional<Double> apex = part.si("apex", SMALL);
    OptionalDouble inlet = part.may("inlet", SMALL);
    OptionalDouble finder = part.may("vortexFinder", SMALL);
    OptionalDouble vortex = part.may("freeVortex", PlantLimits.DEPTH);
    Optional<Integer> parallel =
        part.has("parallel") ? part.count("parallel", 1, 200) : Optional.of(1);
    HydrocycloneModel model = part.choice("model", CYCLONES).orElse(HydrocycloneModels.DEFAULT);
    Optional<Double> shear = part.si("shearRate", SHEAR, "200 1/s");
    Optional<Double> pump = part.si("pumpEfficiency", EFFICIENCY, "50 %");
    Optional<Double> share = part.runningShare();
    if (!Section.there(body, apex, parallel, shear, pump, share)) {
      return Optional.empty();
    }
    return part.built(
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
    String cake = part.nameOrBlank("cake", "the stream of what is held");
    String liquid = part.nameOrBlank("liquid", "the stream of the rest");
    plant.connect(part, name, in, List.of(cake, liquid));
    boolean screen = kind.equals("screen");
    OptionalDouble opening = part.may("opening", SMALL);
    if (screen && !part.has("opening")) {
      part.problem("opening", "is missing: the opening of the screen");
    }
    Optional<Double> fibre = part.si("fibreCapture", DesignReader.SHARE, screen ? "2 %" : "50 %");
    Optional<Double> fines = part.si("finesCapture", DesignReader.SHARE, screen ? "0 %" : "10 %");
    Optional<Double> dry =
        part.si("cakeSolids", PlantLimits.POSITIVE_SHARE, screen ? "20 %" : "26 %");
    Optional<Double> share = part.runningShare();
    return Section.there(fibre, fines, dry, share)
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
      names.add(entry.nameOrBlank("stream", "the stream out"));
      entry.si("share", DesignReader.SHARE).ifPresent(shares::add);
      entry.refuseUnknown();
    }
    plant.connect(part, name, in, names);
    return shares.size() == entries.size() && !entries.isEmpty()
        ? part.built(
            "outlets", () -> new SplitterSpec(new Splitter(name, in, names, shares), "splitter"))
        : Optional.empty();
  }
}
