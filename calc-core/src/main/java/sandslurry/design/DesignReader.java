package sandslurry.design;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import sandslurry.units.Kind;
import sandslurry.units.Measure;
import sandslurry.units.UnitSystem;
import si.uom.quantity.MassFlowRate;
import si.uom.quantity.VolumetricFlowRate;

/**
 * Reads the texts of a document into a checked design, each part by its own reader. The allowed
 * ranges of the fields stand in the readers, those of several parts here; they are repeated for
 * people in docs/design-file.md.
 */
final class DesignReader {
  static final int FORMAT_VERSION = 1;

  static final Limits<Dimensionless> SHARE = Limits.of(Measure.FRACTION, "0 %", "100 %");
  static final Limits<Temperature> TEMPERATURE =
      Limits.of(Measure.TEMPERATURE, "0.1 degC", "45 degC");
  static final Limits<Dimensionless> TOTAL_SOLIDS = Limits.of(Measure.FRACTION, "0 %", "13 %");
  static final Limits<Dimensionless> VOLUME_FRACTION = Limits.of(Measure.FRACTION, "0 %", "40 %");
  private static final Limits<Dimensionless> MASS_FRACTION =
      Limits.of(Measure.FRACTION, "0 %", "64 %");
  private static final Limits<MassFlowRate> SAND_RATE =
      Limits.of(Measure.MASS_FLOW, "0 kg/s", "500 kg/s");
  static final Limits<VolumetricFlowRate> FLOW = Limits.of(Measure.FLOW, "0.05 L/s", "2000 L/s");
  static final Limits<Length> LEVEL = Limits.of(Measure.LENGTH, "-30 m", "100 m");
  static final Limits<Length> BORE = Limits.of(Measure.LENGTH, "20 mm", "1200 mm");
  static final Limits<Pressure> RATING = Limits.of(Measure.PRESSURE, "10 kPa", "50 MPa");
  static final Limits<Dimensionless> SLOPE = Limits.of(Measure.FRACTION, "0 %", "10 %");
  static final Limits<Dimensionless> MANNING = Limits.of(Measure.FRACTION, "0.008", "0.06");
  static final Limits<Time> RUNNING_TIME = Limits.of(Measure.TIME, "1 min", "24 h");
  static final Limits<Dimensionless> COATING = Limits.of(Measure.FRACTION, "0.3", "1");

  private static final Map<String, UnitSystem> UNITS =
      named(UnitSystem.values(), system -> system == UnitSystem.METRIC ? "metric" : "US");

  static final Map<String, Boolean> YES_NO = yesNo();
  private static final Limits<Dimensionless> RATIO = Limits.of(Measure.FRACTION, "0.5", "50");

  private final List<Problem> problems = new ArrayList<>();

  private DesignReader() {}

  static Reading read(ObjectNode root) {
    DesignReader reader = new DesignReader();
    Optional<Design> design = reader.design(new Section(root, "", reader.problems));
    return new Reading(
        reader.problems.isEmpty() ? design : Optional.empty(), List.copyOf(reader.problems));
  }

  static <T> Map<String, T> named(T[] values, Function<T, String> name) {
    return Arrays.stream(values)
        .collect(Collectors.toMap(name, v -> v, (a, b) -> a, LinkedHashMap::new));
  }

  private static Map<String, Boolean> yesNo() {
    Map<String, Boolean> map = new LinkedHashMap<>();
    map.put("yes", true);
    map.put("no", false);
    return map;
  }

  private Optional<Design> design(Section root) {
    checkVersion(root);
    String title = root.text("title").orElse("Untitled design");
    root.text("notes");
    UnitSystem units = root.choice("units", UNITS).orElse(UnitSystem.METRIC);
    Optional<Sand> sand = root.requiredPart("sand").flatMap(SandReader::sand);
    Optional<CarrierSpec> carrier = root.requiredPart("carrier").flatMap(CarrierReader::carrier);
    boolean line = root.has("route");
    boolean laneThere = root.has("lane");
    if (!line && !laneThere && !root.has("plant")) {
      root.problem("route", "is missing: a design has a route, a lane or a plant, or several");
    }
    Optional<MixtureSpec> mixture =
        (line ? root.requiredPart("mixture") : root.part("mixture")).flatMap(this::mixture);
    Optional<DilutionSpec> dilution =
        root.part("dilution").flatMap(part -> dilution(part, carrier, line));
    Optional<FlowSpec> flow =
        (line ? root.requiredPart("flow") : root.part("flow")).flatMap(this::flow);
    Optional<RouteSpec> route = root.part("route").flatMap(RouteReader::route);
    Optional<PumpSpec> pump = root.part("pump").flatMap(PumpReader::pump);
    if (!line && root.has("pump")) {
      root.problem("pump", "needs a route to pump through");
    }
    if (!line && root.has("flow")) {
      root.problem("flow", "belongs to a route, and there is none; a lane has a flow of its own");
    }
    if (!line && root.has("mixture")) {
      root.problem(
          "mixture", "belongs to a route, and there is none; a lane has a sandVolumeFraction");
    }
    Optional<LaneSpec> lane =
        root.part("lane").flatMap(part -> LaneReader.lane(part, root.has("mixture"), line));
    ServiceSpec service = new ServiceReader(this).service(root, carrier);
    Optional<PlantSpec> plant = root.part("plant").flatMap(PlantReader::read);
    mixture
        .filter(MixtureSpec.OfStream.class::isInstance)
        .ifPresent(m -> stream((MixtureSpec.OfStream) m, root, carrier, plant));
    Criteria criteria = CriteriaReader.criteria(root);
    root.refuseUnknown();
    if (sand.isEmpty() || carrier.isEmpty() || !problems.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Design(
            title,
            units,
            sand.get(),
            carrier.get(),
            mixture,
            dilution,
            flow,
            route,
            pump,
            lane,
            service,
            plant,
            criteria));
  }

  private static void checkVersion(Section root) {
    Optional<Integer> version = root.count("formatVersion", 1, 999999);
    if (!root.has("formatVersion")) {
      root.problem("formatVersion", "is missing: this program reads version " + FORMAT_VERSION);
    } else if (version.isPresent() && version.get() != FORMAT_VERSION) {
      root.problem("formatVersion", "this program reads version " + FORMAT_VERSION + " only");
    }
  }

  /** A liquid that another part of a design describes. */
  Optional<CarrierSpec> carrier(Section part) {
    return CarrierReader.carrier(part);
  }

  /** A pipe run that another part of a design describes. */
  Optional<RouteSpec.RunSpec> run(Section part, String defaultName) {
    return RouteReader.run(part, defaultName);
  }

  static double number(Quantity<Dimensionless> quantity) {
    return Measure.FRACTION.si(quantity);
  }

  private Optional<DilutionSpec> dilution(
      Section part, Optional<CarrierSpec> carrier, boolean line) {
    Optional<Quantity<Dimensionless>> solids = part.orDefault("totalSolids", TOTAL_SOLIDS, "0 %");
    Optional<Quantity<Dimensionless>> most = part.orDefault("mostRatio", RATIO, "10");
    part.refuseUnknown();
    if (!line) {
      part.problem("totalSolids", "needs a line to be diluted in");
    }
    Optional<Quantity<Dimensionless>> own = carrier.flatMap(CarrierReader::solids);
    if (own.isPresent() && solids.isPresent() && number(solids.get()) > number(own.get())) {
      part.problem(
          "totalSolids",
          "must be thinner than the carrier, which has "
              + UnitSystem.METRIC.show(Kind.PERCENT, number(own.get()))
              + " solids");
    }
    if (carrier.isPresent() && own.isEmpty()) {
      part.problem(
          "totalSolids",
          "needs a carrier whose own solids are known: manure by its solids, or a rheology with"
              + " \"totalSolids\"");
    }
    return solids.flatMap(s -> most.map(m -> new DilutionSpec(s, m)));
  }

  private Optional<MixtureSpec> mixture(Section part) {
    part.exactlyOne("volumeFraction", "massFraction", "sandRate", "stream");
    Optional<MixtureSpec> volume =
        part.optional("volumeFraction", VOLUME_FRACTION).map(MixtureSpec.ByVolume::new);
    Optional<MixtureSpec> mass =
        part.optional("massFraction", MASS_FRACTION).map(MixtureSpec.ByMass::new);
    Optional<MixtureSpec> rate = part.optional("sandRate", SAND_RATE).map(MixtureSpec.ByRate::new);
    Optional<MixtureSpec> stream = part.text("stream").map(MixtureSpec.OfStream::new);
    part.refuseUnknown();
    return volume.or(() -> mass).or(() -> rate).or(() -> stream);
  }

  /** A line that carries a stream of the plant takes liquid and sand from there alone. */
  private static void stream(
      MixtureSpec.OfStream mixture,
      Section root,
      Optional<CarrierSpec> carrier,
      Optional<PlantSpec> plant) {
    Section part = root.part("mixture").orElseThrow();
    if (!root.has("plant")) {
      part.problem("stream", "needs a plant that has such a stream");
    } else if (plant.isPresent() && !plant.get().streams().contains(mixture.stream())) {
      part.problem(
          "stream",
          "is no stream of the plant; they are: " + String.join(", ", plant.get().streams()));
    }
    if (carrier.isPresent() && !(carrier.get() instanceof CarrierSpec.WaterSpec)) {
      root.problem(
          "carrier", "must be water, the water of the plant: the liquor comes from the stream");
    }
    if (root.has("lane")) {
      root.problem("lane", "is a unit of the plant when the line carries a stream of the plant");
    }
  }

  private Optional<FlowSpec> flow(Section part) {
    Optional<Quantity<VolumetricFlowRate>> design = part.required("design", FLOW);
    Optional<Quantity<VolumetricFlowRate>> minimum =
        part.has("minimum") ? part.optional("minimum", FLOW) : design;
    Optional<Quantity<VolumetricFlowRate>> maximum =
        part.has("maximum") ? part.optional("maximum", FLOW) : design;
    part.refuseUnknown();
    if (!Section.there(design, minimum, maximum)) {
      return Optional.empty();
    }
    String middle = Measure.FLOW.write(design.get());
    if (Measure.FLOW.si(minimum.get()) > Measure.FLOW.si(design.get())) {
      part.problem("minimum", "must not be above the design flow of " + middle);
    }
    if (Measure.FLOW.si(maximum.get()) < Measure.FLOW.si(design.get())) {
      part.problem("maximum", "must not be below the design flow of " + middle);
    }
    return Optional.of(new FlowSpec(minimum.get(), design.get(), maximum.get()));
  }
}
