package sandslurry.design;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import sandslurry.design.ServiceSpec.FlushPoint;
import sandslurry.design.ServiceSpec.FlushSupply;
import sandslurry.design.ServiceSpec.GivenFlush;
import sandslurry.design.ServiceSpec.GravityRunSpec;
import sandslurry.design.ServiceSpec.OperationSpec;
import sandslurry.design.ServiceSpec.PumpFlush;
import sandslurry.design.ServiceSpec.ScrewSpec;
import sandslurry.design.ServiceSpec.SourceFlush;
import sandslurry.design.ServiceSpec.StatesSpec;
import sandslurry.design.ServiceSpec.SuctionSpec;
import sandslurry.units.Measure;
import si.uom.quantity.Density;
import si.uom.quantity.VolumetricFlowRate;

/** Reads what a line meets in service. */
final class ServiceReader {
  private static final Limits<Dimensionless> WORN = Limits.of(Measure.FRACTION, "0 %", "50 %");
  private static final Limits<Length> ALTITUDE = Limits.of(Measure.LENGTH, "-400 m", "5000 m");
  private static final Limits<Volume> VOLUME = Limits.of(Measure.VOLUME, "0.01 m3", "100000 m3");
  private static final Limits<Length> SCREW = Limits.of(Measure.LENGTH, "50 mm", "3 m");
  private static final Limits<Length> SHAFT = Limits.of(Measure.LENGTH, "0 mm", "2 m");
  private static final Limits<Frequency> TURNS =
      Limits.of(Measure.FREQUENCY, "0.5 1/min", "400 1/min");
  private static final Limits<Dimensionless> SCREW_SLOPE =
      Limits.of(Measure.FRACTION, "0 %", "99 %");
  private static final Limits<Length> SCREW_LENGTH = Limits.of(Measure.LENGTH, "0.5 m", "200 m");
  private static final Limits<Density> BULK = Limits.of(Measure.DENSITY, "500 kg/m3", "3000 kg/m3");
  private static final Limits<Dimensionless> FALL = Limits.of(Measure.FRACTION, "0.01 %", "30 %");

  private static final Limits<Dimensionless> SAND = Limits.of(Measure.FRACTION, "0 %", "40 %");
  private static final Limits<Time> STOP = Limits.of(Measure.TIME, "0 s", "3600 s");
  private static final Limits<Time> SCRAPE = Limits.of(Measure.TIME, "1 min", "1440 min");
  private static final int MOST_STARTS = 60;
  private static final List<String> FLUSHES =
      List.of("flushFlow", "flushPump", "flushLevel", "flushCurve");

  private final DesignReader reader;

  ServiceReader(DesignReader reader) {
    this.reader = reader;
  }

  ServiceSpec service(Section root, Optional<CarrierSpec> carrier) {
    Optional<StatesSpec> states = root.part("states").map(part -> states(part, carrier));
    Optional<SuctionSpec> suction = root.part("suction").flatMap(this::suction);
    Optional<OperationSpec> operation =
        root.part("operation").map(part -> operation(part, root.has("pump")));
    Optional<ScrewSpec> screw = root.part("screw").flatMap(part -> screw(part, root.has("plant")));
    Optional<GravityRunSpec> gravity = root.part("gravityRun").flatMap(ServiceReader::gravityRun);
    for (String field : List.of("states", "operation")) {
      if (root.has(field) && !root.has("route")) {
        root.problem(field, "belongs to a route, and there is none");
      }
    }
    if (root.has("suction") && !root.has("pump")) {
      root.problem("suction", "belongs to a pump, and there is none");
    }
    if (states.flatMap(StatesSpec::wornHead).isPresent() && !root.has("pump")) {
      root.problem("states", "has a worn pump, and there is no pump");
    }
    return new ServiceSpec(states, suction, operation, screw, gravity);
  }

  private StatesSpec states(Section part, Optional<CarrierSpec> carrier) {
    Optional<Quantity<Dimensionless>> worn = part.optional("wornHead", WORN);
    Optional<Quantity<Temperature>> coldest = part.optional("coldest", DesignReader.TEMPERATURE);
    Optional<Quantity<Temperature>> warmest = part.optional("warmest", DesignReader.TEMPERATURE);
    Optional<Quantity<Dimensionless>> thinnest =
        part.optional("thinnest", DesignReader.TOTAL_SOLIDS);
    Optional<Quantity<Dimensionless>> thickest =
        part.optional("thickest", DesignReader.TOTAL_SOLIDS);
    Optional<Quantity<Length>> low = part.optional("lowSourceLevel", DesignReader.LEVEL);
    Optional<Quantity<Length>> high = part.optional("highSourceLevel", DesignReader.LEVEL);
    boolean flush = part.choice("flushWater", DesignReader.YES_NO).orElse(false);
    Optional<Quantity<Dimensionless>> leastSand = part.optional("thinnestSand", SAND);
    Optional<Quantity<Dimensionless>> mostSand = part.optional("thickestSand", SAND);
    Map<String, Optional<CarrierSpec>> own = new HashMap<>();
    for (String field : List.of("thinnest", "thickest", "coldest", "warmest")) {
      String group = field + "Carrier";
      own.put(field, part.part(group).flatMap(reader::carrier));
      if (part.has(field) && part.has(group)) {
        part.problem(group, "says what \"" + field + "\" says too: give one of them");
      }
    }
    part.refuseUnknown();
    order(part, "warmest", Measure.TEMPERATURE, coldest, warmest, "coldest");
    order(part, "thickest", Measure.FRACTION, thinnest, thickest, "thinnest");
    order(part, "thickestSand", Measure.FRACTION, leastSand, mostSand, "thinnestSand");
    order(part, "highSourceLevel", Measure.LENGTH, low, high, "lowSourceLevel");
    boolean manure = carrier.map(c -> c instanceof CarrierSpec.ManureSpec).orElse(true);
    boolean known = manure || carrier.map(c -> c instanceof CarrierSpec.WaterSpec).orElse(true);
    for (String field : List.of("thinnest", "thickest")) {
      if (part.has(field) && !manure) {
        part.problem(
            field,
            "belongs to a carrier of kind manure: no other follows its solids; describe it by \""
                + field
                + "Carrier\", or give the sand by \""
                + field
                + "Sand\"");
      }
    }
    for (String field : List.of("coldest", "warmest")) {
      if (part.has(field) && !known) {
        part.problem(
            field,
            "belongs to a carrier of kind water or manure: a measured liquid is known at its own"
                + " temperature only; describe it there by \""
                + field
                + "Carrier\"");
      }
    }
    return new StatesSpec(
        worn,
        coldest,
        warmest,
        thinnest,
        thickest,
        low,
        high,
        flush,
        leastSand,
        mostSand,
        own.get("thinnest"),
        own.get("thickest"),
        own.get("coldest"),
        own.get("warmest"));
  }

  private static <Q extends Quantity<Q>> void order(
      Section part,
      String field,
      Measure<Q> measure,
      Optional<Quantity<Q>> low,
      Optional<Quantity<Q>> high,
      String lower) {
    if (low.isPresent() && high.isPresent() && measure.si(high.get()) < measure.si(low.get())) {
      part.problem(field, "must not be below " + lower + ", " + measure.write(low.get()));
    }
  }

  private Optional<SuctionSpec> suction(Section part) {
    Optional<Quantity<Length>> altitude = part.orDefault("altitude", ALTITUDE, "0 m");
    Optional<RouteSpec.RunSpec> run = reader.run(part, "suction");
    return altitude.isPresent() && run.isPresent()
        ? Optional.of(new SuctionSpec(altitude.get(), run.get()))
        : Optional.empty();
  }

  private static OperationSpec operation(Section part, boolean pump) {
    Optional<Quantity<Volume>> daily = part.optional("dailyVolume", VOLUME);
    Optional<Quantity<Volume>> batch = part.optional("batchVolume", VOLUME);
    Optional<Integer> starts = part.count("mostStartsPerHour", 1, MOST_STARTS);
    Optional<Quantity<Time>> stop = part.optional("stopTime", STOP);
    Optional<FlushSupply> flush = flush(part, pump);
    Optional<Quantity<Volume>> volume = part.optional("flushVolume", VOLUME);
    if (part.has("batchVolume") && !part.has("dailyVolume")) {
      part.problem("dailyVolume", "is missing: a batch belongs to a day's volume");
    }
    if (part.has("mostStartsPerHour") && !part.has("batchVolume")) {
      part.problem("batchVolume", "is missing: without it no starts are counted");
    }
    if (part.has("flushVolume") && FLUSHES.stream().noneMatch(part::has)) {
      part.problem("flushFlow", "is missing: a volume alone does not tell whether a flush clears");
    }
    part.refuseUnknown();
    return new OperationSpec(
        daily,
        batch,
        starts.map(OptionalInt::of).orElseGet(OptionalInt::empty),
        stop,
        flush,
        volume);
  }

  private static Optional<FlushSupply> flush(Section part, boolean pump) {
    Optional<Quantity<VolumetricFlowRate>> flow = part.optional("flushFlow", DesignReader.FLOW);
    boolean byPump = part.choice("flushPump", DesignReader.YES_NO).orElse(false);
    Optional<Quantity<Length>> level = part.optional("flushLevel", DesignReader.LEVEL);
    List<FlushPoint> curve = curve(part);
    boolean source = part.has("flushLevel") || part.has("flushCurve");
    if ((part.has("flushFlow") ? 1 : 0) + (byPump ? 1 : 0) + (source ? 1 : 0) > 1) {
      part.problem(
          source ? part.has("flushLevel") ? "flushLevel" : "flushCurve" : "flushPump",
          "give one supply of the flush: a flow, the pump, or a level with or without a curve");
    }
    if (byPump && !pump) {
      part.problem("flushPump", "flushes by the pump, and there is none");
    }
    if (byPump) {
      return Optional.of(new PumpFlush());
    }
    if (source) {
      return Optional.of(new SourceFlush(level.orElse(Measure.LENGTH.of(0)), curve));
    }
    return flow.map(GivenFlush::new);
  }

  private static List<FlushPoint> curve(Section part) {
    List<FlushPoint> points = new ArrayList<>();
    List<Section> rows = part.list("flushCurve");
    for (Section row : rows) {
      Optional<Quantity<VolumetricFlowRate>> flow = row.required("flow", PumpReader.CURVE_FLOW);
      Optional<Quantity<Length>> head = row.required("head", PumpReader.CURVE_HEAD);
      row.refuseUnknown();
      if (flow.isPresent() && head.isPresent()) {
        if (!points.isEmpty()
            && !(Measure.FLOW.si(flow.get())
                > Measure.FLOW.si(points.get(points.size() - 1).flow()))) {
          row.problem("flow", "must be above the flow of the point before it");
        } else {
          points.add(new FlushPoint(flow.get(), head.get()));
        }
      }
    }
    if (part.has("flushCurve") && rows.size() < 2) {
      part.problem("flushCurve", "needs two points or more");
    }
    return points;
  }

  private static Optional<ScrewSpec> screw(Section part, boolean plant) {
    Optional<Quantity<Length>> diameter = part.required("diameter", SCREW);
    Optional<Quantity<Length>> shaft = part.orDefault("shaft", SHAFT, "0 mm");
    Optional<Quantity<Length>> pitch = part.has("pitch") ? part.optional("pitch", SCREW) : diameter;
    Optional<Quantity<Frequency>> speed = part.required("speed", TURNS);
    Optional<Quantity<Dimensionless>> slope = part.orDefault("slope", SCREW_SLOPE, "0 %");
    Optional<Quantity<Length>> length = part.required("length", SCREW_LENGTH);
    // Pens that are scraped to the screw in a known time are a load of their own.
    boolean pens = plant && part.has("scrapeTime");
    Optional<Quantity<Time>> scrape = part.optional("scrapeTime", SCRAPE);
    Optional<Quantity<VolumetricFlowRate>> load =
        pens ? part.optional("load", DesignReader.FLOW) : part.required("load", DesignReader.FLOW);
    Optional<Quantity<Density>> bulk =
        pens ? part.optional("bulkDensity", BULK) : part.required("bulkDensity", BULK);
    if (part.has("scrapeTime") && !plant) {
      part.problem("scrapeTime", "belongs to the pens of a plant, and there is none");
    }
    part.refuseUnknown();
    if (diameter.isEmpty()
        || shaft.isEmpty()
        || pitch.isEmpty()
        || speed.isEmpty()
        || slope.isEmpty()
        || length.isEmpty()
        || !pens && (load.isEmpty() || bulk.isEmpty())) {
      return Optional.empty();
    }
    if (!(Measure.LENGTH.si(shaft.get()) < Measure.LENGTH.si(diameter.get()))) {
      part.problem(
          "shaft", "must be thinner than the screw, " + Measure.LENGTH.write(diameter.get()));
      return Optional.empty();
    }
    return Optional.of(
        new ScrewSpec(
            diameter.get(),
            shaft.get(),
            pitch.get(),
            speed.get(),
            slope.get(),
            length.get(),
            load,
            bulk,
            scrape));
  }

  private static Optional<GravityRunSpec> gravityRun(Section part) {
    Optional<Quantity<Length>> bore = part.required("bore", DesignReader.BORE);
    Optional<Quantity<Dimensionless>> slope = part.required("slope", FALL);
    Optional<Quantity<Dimensionless>> manning =
        part.orDefault("manning", DesignReader.MANNING, "0.013");
    Optional<Quantity<VolumetricFlowRate>> flow = part.required("flow", DesignReader.FLOW);
    part.refuseUnknown();
    return bore.isPresent() && slope.isPresent() && manning.isPresent() && flow.isPresent()
        ? Optional.of(new GravityRunSpec(bore.get(), slope.get(), manning.get(), flow.get()))
        : Optional.empty();
  }
}
