package sandslurry.design;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import sandslurry.material.Bingham;
import sandslurry.material.Gradation;
import sandslurry.material.GrainShape;
import sandslurry.material.HerschelBulkley;
import sandslurry.material.Newtonian;
import sandslurry.material.PowerLaw;
import sandslurry.material.RheogramFit;
import sandslurry.material.Rheology;
import sandslurry.material.SandFreeSolids;
import sandslurry.material.SievePoint;
import sandslurry.material.StandardSand;
import sandslurry.material.ViscometerReading;
import sandslurry.pipe.FittingKind;
import sandslurry.pipe.PipeCatalogue;
import sandslurry.pipe.StandardPipe;
import sandslurry.transport.DepositionVelocities;
import sandslurry.transport.DepositionVelocities.Role;
import sandslurry.units.Kind;
import sandslurry.units.Measure;
import sandslurry.units.ShearRate;
import sandslurry.units.UnitSystem;
import si.uom.quantity.Density;
import si.uom.quantity.DynamicViscosity;
import si.uom.quantity.MassFlowRate;
import si.uom.quantity.VolumetricFlowRate;

/**
 * Reads the texts of a document into a checked design. The allowed ranges of all fields stand here;
 * they are repeated for people in docs/design-file.md.
 */
final class DesignReader {
  static final int FORMAT_VERSION = 1;

  private static final Limits<Length> GRAIN = Limits.of(Measure.LENGTH, "0.001 mm", "25 mm");
  private static final Limits<Dimensionless> SHARE = Limits.of(Measure.FRACTION, "0 %", "100 %");
  private static final Limits<Density> SAND_DENSITY =
      Limits.of(Measure.DENSITY, "1500 kg/m3", "5000 kg/m3");
  private static final Limits<Dimensionless> COREY = Limits.of(Measure.FRACTION, "0.2", "1");
  private static final Limits<Dimensionless> ROUNDNESS = Limits.of(Measure.FRACTION, "0", "6");
  private static final Limits<Dimensionless> SPHERICITY = Limits.of(Measure.FRACTION, "0.3", "1");
  static final Limits<Temperature> TEMPERATURE =
      Limits.of(Measure.TEMPERATURE, "0.1 degC", "45 degC");
  static final Limits<Dimensionless> TOTAL_SOLIDS = Limits.of(Measure.FRACTION, "0 %", "13 %");
  private static final Limits<Density> LIQUID_DENSITY =
      Limits.of(Measure.DENSITY, "900 kg/m3", "1300 kg/m3");
  private static final Limits<DynamicViscosity> LIQUID_VISCOSITY =
      Limits.of(Measure.VISCOSITY, "0.3 cP", "5000 cP");
  private static final Limits<Dimensionless> VOLUME_FRACTION =
      Limits.of(Measure.FRACTION, "0 %", "40 %");
  private static final Limits<Dimensionless> MASS_FRACTION =
      Limits.of(Measure.FRACTION, "0 %", "64 %");
  private static final Limits<MassFlowRate> SAND_RATE =
      Limits.of(Measure.MASS_FLOW, "0 kg/s", "500 kg/s");
  static final Limits<VolumetricFlowRate> FLOW = Limits.of(Measure.FLOW, "0.05 L/s", "2000 L/s");
  static final Limits<Length> LEVEL = Limits.of(Measure.LENGTH, "-30 m", "100 m");
  private static final Limits<Length> OUTLET_HEAD = Limits.of(Measure.LENGTH, "0 m", "50 m");
  static final Limits<Length> BORE = Limits.of(Measure.LENGTH, "20 mm", "1200 mm");
  private static final Limits<Length> ROUGHNESS = Limits.of(Measure.LENGTH, "0 mm", "5 mm");
  static final Limits<Pressure> RATING = Limits.of(Measure.PRESSURE, "10 kPa", "50 MPa");
  private static final Limits<Length> RUN_LENGTH = Limits.of(Measure.LENGTH, "0.1 m", "20 km");
  private static final Limits<Length> RISE = Limits.of(Measure.LENGTH, "-200 m", "200 m");
  private static final Limits<Length> LANE_LENGTH = Limits.of(Measure.LENGTH, "1 m", "500 m");
  private static final Limits<Length> LANE_WIDTH = Limits.of(Measure.LENGTH, "0.2 m", "50 m");
  private static final Limits<Dimensionless> LANE_SLOPE =
      Limits.of(Measure.FRACTION, "0 %", "10 %");
  static final Limits<Dimensionless> MANNING = Limits.of(Measure.FRACTION, "0.008", "0.06");
  private static final Limits<Length> LANE_DEPTH = Limits.of(Measure.LENGTH, "5 mm", "5 m");
  private static final Limits<Time> RUNNING_TIME = Limits.of(Measure.TIME, "1 min", "24 h");
  private static final Limits<Dimensionless> COATING = Limits.of(Measure.FRACTION, "0.3", "1");
  private static final Limits<Dimensionless> MARGIN = Limits.of(Measure.FRACTION, "0 %", "200 %");
  private static final Limits<Dimensionless> PRESSURE_SHARE =
      Limits.of(Measure.FRACTION, "10 %", "100 %");
  private static final Limits<Speed> MARGIN_SPEED = Limits.of(Measure.SPEED, "0 m/s", "3 m/s");
  private static final Limits<Speed> WEAR_SPEED = Limits.of(Measure.SPEED, "0.5 m/s", "10 m/s");

  private static final Map<String, UnitSystem> UNITS =
      named(UnitSystem.values(), system -> system == UnitSystem.METRIC ? "metric" : "US");
  private static final Map<String, StandardSand> SANDS =
      named(StandardSand.values(), StandardSand::id);

  /** The loss at the outlet is the velocity head, which the line always counts. */
  private static final Map<String, FittingKind> FITTINGS =
      named(
          Arrays.stream(FittingKind.values())
              .filter(kind -> kind != FittingKind.PIPE_EXIT)
              .toArray(FittingKind[]::new),
          FittingKind::id);

  private static final Map<String, Role> ROLES =
      named(Role.values(), role -> role.name().toLowerCase(Locale.ROOT));
  static final Map<String, Boolean> YES_NO = yesNo();
  private static final Limits<Pressure> YIELD_STRESS =
      Limits.of(Measure.PRESSURE, "0.001 Pa", "500 Pa");
  private static final Limits<Dimensionless> CONSISTENCY =
      Limits.of(Measure.FRACTION, "0.0003", "500");
  private static final Limits<Dimensionless> INDEX = Limits.of(Measure.FRACTION, "0.1", "1.5");
  private static final Limits<ShearRate> SHEAR_RATE =
      Limits.of(Measure.SHEAR_RATE, "0.001 1/s", "100000 1/s");
  private static final Limits<Pressure> SHEAR_STRESS =
      Limits.of(Measure.PRESSURE, "0.0001 Pa", "5000 Pa");
  private static final Limits<Dimensionless> RATIO = Limits.of(Measure.FRACTION, "0.5", "50");

  private static final Map<String, CarrierKind> CARRIERS =
      named(CarrierKind.values(), kind -> kind.name().toLowerCase(Locale.ROOT));
  private static final Map<String, Law> LAWS = named(Law.values(), law -> law.words);
  private static final Map<String, RheogramFit.Weighting> WEIGHTINGS =
      named(
          RheogramFit.Weighting.values(),
          w -> w == RheogramFit.Weighting.SAME_PER_CENT ? "per cent" : "pascals");

  private enum CarrierKind {
    WATER,
    MANURE,
    MEASURED,
    RHEOLOGY,
    READINGS
  }

  /** A law of rheology: its name, in files as in a fit, and the parameters that it has. */
  private enum Law {
    NEWTONIAN("Newtonian", false, false),
    POWER_LAW("power law", false, true),
    BINGHAM("Bingham", true, false),
    HERSCHEL_BULKLEY("Herschel-Bulkley", true, true);

    private final String words;
    private final boolean hasYield;
    private final boolean hasIndex;

    Law(String words, boolean hasYield, boolean hasIndex) {
      this.words = words;
      this.hasYield = hasYield;
      this.hasIndex = hasIndex;
    }
  }

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
    UnitSystem units =
        root.has("units")
            ? root.choice("units", UNITS).orElse(UnitSystem.METRIC)
            : UnitSystem.METRIC;
    Optional<Sand> sand = root.requiredPart("sand").flatMap(this::sand);
    Optional<CarrierSpec> carrier = root.requiredPart("carrier").flatMap(this::carrier);
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
    Optional<RouteSpec> route = root.part("route").flatMap(this::route);
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
        root.part("lane").flatMap(part -> lane(part, root.has("mixture"), line));
    ServiceSpec service = new ServiceReader(this).service(root, carrier);
    Optional<PlantSpec> plant = root.part("plant").flatMap(PlantReader::read);
    mixture
        .filter(MixtureSpec.OfStream.class::isInstance)
        .ifPresent(m -> stream((MixtureSpec.OfStream) m, root, carrier, plant));
    Criteria criteria = criteria(root.part("criteria"));
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

  private Optional<Sand> sand(Section part) {
    Optional<Quantity<Density>> density = part.orDefault("density", SAND_DENSITY, "2650 kg/m3");
    GrainShape shape = part.part("shape").map(this::shape).orElse(GrainShape.NATURAL);
    Optional<Gradation> gradation;
    String source;
    if (part.has("gradation") && (part.has("d50") || part.has("d85"))) {
      part.problem("gradation", "give either \"gradation\" or \"d50\" with \"d85\", not both");
    }
    if (part.isList("gradation")) {
      gradation = sieves(part);
      source = "sieve analysis given";
    } else if (part.has("gradation")) {
      Optional<StandardSand> standard = part.choice("gradation", SANDS);
      gradation = standard.map(StandardSand::middle);
      source = standard.map(StandardSand::label).orElse("");
    } else {
      gradation = twoSizes(part);
      source = "log-normal through the d50 and d85 given";
    }
    part.refuseUnknown();
    return gradation.isPresent() && density.isPresent()
        ? Optional.of(new Sand(source, gradation.get(), density.get(), shape))
        : Optional.empty();
  }

  private GrainShape shape(Section part) {
    Optional<Quantity<Dimensionless>> corey = part.orDefault("corey", COREY, "0.7");
    Optional<Quantity<Dimensionless>> roundness = part.orDefault("roundness", ROUNDNESS, "3.5");
    Optional<Quantity<Dimensionless>> sphericity = part.orDefault("sphericity", SPHERICITY, "0.8");
    part.refuseUnknown();
    return corey.isPresent() && roundness.isPresent() && sphericity.isPresent()
        ? new GrainShape(number(corey.get()), number(roundness.get()), number(sphericity.get()))
        : GrainShape.NATURAL;
  }

  static double number(Quantity<Dimensionless> quantity) {
    return Measure.FRACTION.si(quantity);
  }

  private Optional<Gradation> sieves(Section part) {
    List<SievePoint> points = new ArrayList<>();
    List<Section> rows = part.list("gradation");
    for (Section row : rows) {
      Optional<Quantity<Length>> size = row.required("size", GRAIN);
      Optional<Quantity<Dimensionless>> passing = row.required("passing", SHARE);
      row.refuseUnknown();
      if (size.isPresent() && passing.isPresent()) {
        points.add(new SievePoint(Measure.LENGTH.si(size.get()), number(passing.get())));
      }
    }
    if (points.size() < rows.size()) {
      return Optional.empty();
    }
    List<String> wrong = Gradation.problems(points);
    wrong.forEach(problem -> part.problem("gradation", problem));
    return wrong.isEmpty()
        ? coarseEnough(part, "gradation", Gradation.of(points))
        : Optional.empty();
  }

  private Optional<Gradation> twoSizes(Section part) {
    if (!part.has("d50") && !part.has("d85")) {
      part.problem(
          "gradation",
          "is missing: give sieve sizes with per cent passing, one of "
              + String.join(", ", SANDS.keySet())
              + ", or \"d50\" with \"d85\"");
      return Optional.empty();
    }
    Optional<Quantity<Length>> d50 = part.required("d50", GRAIN);
    Optional<Quantity<Length>> d85 = part.required("d85", GRAIN);
    if (d50.isEmpty() || d85.isEmpty()) {
      return Optional.empty();
    }
    double middle = Measure.LENGTH.si(d50.get());
    double coarse = Measure.LENGTH.si(d85.get());
    if (!(coarse >= middle)) {
      part.problem("d85", "must not be below d50, which is " + Measure.LENGTH.write(d50.get()));
      return Optional.empty();
    }
    return coarseEnough(part, "d50", Gradation.ofD50D85(middle, coarse));
  }

  /** What is finer than the boundary belongs to the liquid; of a sand, most must be left. */
  private static Optional<Gradation> coarseEnough(Section part, String field, Gradation gradation) {
    double fines = gradation.fractionPassing(Gradation.FINES_BOUNDARY_M);
    if (fines <= 0.5) {
      return Optional.of(gradation);
    }
    part.problem(
        field,
        "is no sand: "
            + UnitSystem.METRIC.show(Kind.PERCENT, fines)
            + " of it is finer than "
            + UnitSystem.METRIC.show(Kind.GRAIN, Gradation.FINES_BOUNDARY_M)
            + ", of which 50 % are allowed; such fines belong to the carrier");
    return Optional.empty();
  }

  Optional<CarrierSpec> carrier(Section part) {
    Optional<CarrierKind> kind = part.requiredChoice("kind", CARRIERS);
    Optional<Quantity<Temperature>> temperature = part.required("temperature", TEMPERATURE);
    if (kind.isEmpty()) {
      return Optional.empty();
    }
    Optional<CarrierSpec> carrier =
        switch (kind.get()) {
          case WATER -> temperature.map(CarrierSpec.WaterSpec::new);
          case MANURE -> manure(part, temperature);
          case MEASURED -> measured(part, temperature);
          case RHEOLOGY -> rheology(part, temperature);
          case READINGS -> readings(part, temperature);
        };
    part.refuseUnknown();
    return carrier;
  }

  private Optional<CarrierSpec> manure(Section part, Optional<Quantity<Temperature>> temperature) {
    part.exactlyOne("totalSolids", "laboratory");
    Optional<Quantity<Dimensionless>> solids = part.optional("totalSolids", TOTAL_SOLIDS);
    Optional<Quantity<Dimensionless>> free = part.part("laboratory").flatMap(this::sandFree);
    Optional<Quantity<Dimensionless>> either = solids.or(() -> free);
    return temperature.flatMap(t -> either.map(s -> new CarrierSpec.ManureSpec(t, s)));
  }

  /** Sand-free solids from a laboratory value that counts the sand. */
  private Optional<Quantity<Dimensionless>> sandFree(Section part) {
    Optional<Quantity<Dimensionless>> total = part.required("totalSolids", SHARE);
    part.exactlyOne("sand", "volatileSolids");
    Optional<Quantity<Dimensionless>> sand = part.optional("sand", SHARE);
    Optional<Quantity<Dimensionless>> organic = part.optional("volatileSolids", SHARE);
    part.refuseUnknown();
    if (total.isEmpty() || sand.isEmpty() && organic.isEmpty()) {
      return Optional.empty();
    }
    double free;
    try {
      free =
          sand.isPresent()
              ? SandFreeSolids.fromSand(number(total.get()), number(sand.get()))
              : SandFreeSolids.fromVolatileSolids(number(total.get()), number(organic.get()));
    } catch (IllegalArgumentException e) {
      part.problem(
          sand.isPresent() ? "sand" : "volatileSolids",
          sand.isPresent()
              ? "cannot be more than the total solids"
              : "cannot be more than "
                  + UnitSystem.METRIC.show(
                      Kind.PERCENT, SandFreeSolids.VOLATILE_SHARE * number(total.get()))
                  + ", the volatile share of dry manure times the total solids");
      return Optional.empty();
    }
    if (free > TOTAL_SOLIDS.high()) {
      part.problem(
          "totalSolids",
          "leaves "
              + UnitSystem.METRIC.show(Kind.PERCENT, free)
              + " solids without sand; the measured manures end at "
              + UnitSystem.METRIC.show(Kind.PERCENT, TOTAL_SOLIDS.high()));
      return Optional.empty();
    }
    return Optional.of(Measure.FRACTION.of(free));
  }

  private Optional<CarrierSpec> measured(
      Section part, Optional<Quantity<Temperature>> temperature) {
    Optional<Quantity<Density>> density = part.required("density", LIQUID_DENSITY);
    Optional<Quantity<DynamicViscosity>> viscosity = part.required("viscosity", LIQUID_VISCOSITY);
    return temperature.flatMap(
        t -> density.flatMap(d -> viscosity.map(v -> new CarrierSpec.MeasuredSpec(t, d, v))));
  }

  private Optional<CarrierSpec> rheology(
      Section part, Optional<Quantity<Temperature>> temperature) {
    Optional<Quantity<Density>> density = part.required("density", LIQUID_DENSITY);
    Optional<Quantity<Dimensionless>> solids = part.optional("totalSolids", TOTAL_SOLIDS);
    Optional<Law> law = part.requiredChoice("law", LAWS);
    if (law.isEmpty()) {
      return Optional.empty();
    }
    Optional<Rheology> rheology = law(part, law.get());
    return temperature.flatMap(
        t ->
            density.flatMap(d -> rheology.map(r -> new CarrierSpec.RheologySpec(t, d, r, solids))));
  }

  private static Optional<Rheology> law(Section part, Law law) {
    Optional<Quantity<Pressure>> yield =
        law.hasYield ? part.required("yieldStress", YIELD_STRESS) : Optional.empty();
    // A wrong yield stress is noted already; the other fields are read all the same.
    boolean wrongYield = law.hasYield && yield.isEmpty();
    double yieldPa = yield.map(Measure.PRESSURE::si).orElse(0.0);
    if (!law.hasIndex) {
      String field = law.hasYield ? "plasticViscosity" : "viscosity";
      return part.required(field, LIQUID_VISCOSITY)
          .filter(v -> !wrongYield)
          .map(Measure.VISCOSITY::si)
          .map(v -> law.hasYield ? new Bingham(yieldPa, v) : new Newtonian(v));
    }
    Optional<Quantity<Dimensionless>> consistency = part.required("consistency", CONSISTENCY);
    Optional<Quantity<Dimensionless>> index = part.required("index", INDEX);
    if (wrongYield || consistency.isEmpty() || index.isEmpty()) {
      return Optional.empty();
    }
    double k = number(consistency.get());
    double n = number(index.get());
    return Optional.of(law.hasYield ? new HerschelBulkley(yieldPa, k, n) : new PowerLaw(k, n));
  }

  private Optional<CarrierSpec> readings(
      Section part, Optional<Quantity<Temperature>> temperature) {
    Optional<Quantity<Density>> density = part.required("density", LIQUID_DENSITY);
    Optional<Quantity<Dimensionless>> solids = part.optional("totalSolids", TOTAL_SOLIDS);
    Optional<Law> law = part.choice("law", LAWS);
    RheogramFit.Weighting weighting =
        part.choice("equalErrors", WEIGHTINGS).orElse(RheogramFit.Weighting.SAME_PER_CENT);
    List<Section> rows = part.list("readings");
    List<ViscometerReading> readings = new ArrayList<>();
    for (Section row : rows) {
      Optional<Quantity<ShearRate>> rate = row.required("shearRate", SHEAR_RATE);
      Optional<Quantity<Pressure>> stress = row.required("shearStress", SHEAR_STRESS);
      row.refuseUnknown();
      if (rate.isPresent() && stress.isPresent()) {
        readings.add(
            new ViscometerReading(
                Measure.SHEAR_RATE.si(rate.get()), Measure.PRESSURE.si(stress.get())));
      }
    }
    if (readings.size() < rows.size() || density.isEmpty() || temperature.isEmpty()) {
      return Optional.empty();
    }
    List<String> wrong = RheogramFit.problems(readings);
    wrong.forEach(problem -> part.problem("readings", problem));
    return wrong.isEmpty()
        ? Optional.of(
            new CarrierSpec.ReadingsSpec(
                temperature.get(),
                density.get(),
                readings,
                weighting,
                law.map(l -> l.words),
                solids))
        : Optional.empty();
  }

  private Optional<DilutionSpec> dilution(
      Section part, Optional<CarrierSpec> carrier, boolean line) {
    Optional<Quantity<Dimensionless>> solids = part.orDefault("totalSolids", TOTAL_SOLIDS, "0 %");
    Optional<Quantity<Dimensionless>> most = part.orDefault("mostRatio", RATIO, "10");
    part.refuseUnknown();
    if (!line) {
      part.problem("totalSolids", "needs a line to be diluted in");
    }
    Optional<Quantity<Dimensionless>> own = carrier.flatMap(DesignReader::solids);
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

  private static Optional<Quantity<Dimensionless>> solids(CarrierSpec carrier) {
    if (carrier instanceof CarrierSpec.ManureSpec manure) {
      return Optional.of(manure.totalSolids());
    }
    if (carrier instanceof CarrierSpec.RheologySpec rheology) {
      return rheology.totalSolids();
    }
    return carrier instanceof CarrierSpec.ReadingsSpec readings
        ? readings.totalSolids()
        : Optional.empty();
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
    if (design.isEmpty() || minimum.isEmpty() || maximum.isEmpty()) {
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

  private Optional<RouteSpec> route(Section part) {
    Optional<Quantity<Length>> level = part.orDefault("sourceLevel", LEVEL, "0 m");
    Optional<Quantity<Length>> outlet = part.orDefault("outletHead", OUTLET_HEAD, "0 m");
    List<Section> entries = part.list("runs");
    if (entries.isEmpty()) {
      part.problem("runs", "a route needs one pipe run or more");
    }
    List<RouteSpec.RunSpec> runs = new ArrayList<>();
    for (int i = 0; i < entries.size(); i++) {
      run(entries.get(i), "run " + (i + 1)).ifPresent(runs::add);
    }
    part.refuseUnknown();
    Set<String> names = new HashSet<>();
    for (int i = 0; i < runs.size() && runs.size() == entries.size(); i++) {
      if (!names.add(runs.get(i).name())) {
        entries.get(i).problem("name", "is the name of another run too: give each its own");
      }
    }
    return level.isPresent() && outlet.isPresent() && runs.size() == entries.size()
        ? Optional.of(new RouteSpec(level.get(), outlet.get(), runs))
        : Optional.empty();
  }

  Optional<RouteSpec.RunSpec> run(Section part, String defaultName) {
    String name = part.text("name").orElse(defaultName);
    Optional<Quantity<Length>> length = part.required("length", RUN_LENGTH);
    Optional<Quantity<Length>> rise = part.orDefault("rise", RISE, "0 m");
    Map<FittingKind, Integer> fittings = fittings(part);
    part.exactlyOne("pipe", "bore");
    Optional<StandardPipe> pipe = part.part("pipe").flatMap(this::pipe);
    Optional<Quantity<Length>> bore = part.optional("bore", BORE);
    Optional<Quantity<Pressure>> rating = part.optional("rating", RATING);
    Optional<Quantity<Length>> roughness = part.optional("roughness", ROUGHNESS);
    if (part.has("bore") && !part.has("roughness")) {
      part.problem("roughness", "is missing: a run given by its bore needs a roughness");
    }
    if (part.has("pipe") && part.has("rating")) {
      part.problem("rating", "belongs to a run given by its bore: a standard pipe has its own");
    }
    part.refuseUnknown();
    if (length.isEmpty() || rise.isEmpty() || pipe.isEmpty() && bore.isEmpty()) {
      return Optional.empty();
    }
    if (Math.abs(Measure.LENGTH.si(rise.get())) > Measure.LENGTH.si(length.get())) {
      part.problem(
          "rise", "cannot exceed the length of the run, " + Measure.LENGTH.write(length.get()));
      return Optional.empty();
    }
    if (pipe.isPresent()) {
      StandardPipe standard = pipe.get();
      return Optional.of(
          new RouteSpec.RunSpec(
              name,
              pipe,
              Measure.LENGTH.of(standard.largestBoreM()),
              Measure.LENGTH.of(standard.meanBoreM()),
              Optional.empty(),
              roughness.orElseGet(
                  () -> Measure.LENGTH.of(standard.system().material().newRoughnessM())),
              length.get(),
              rise.get(),
              fittings));
    }
    if (roughness.isEmpty()) {
      return Optional.empty();
    }
    if (Measure.LENGTH.si(roughness.get()) > 0.1 * Measure.LENGTH.si(bore.get())) {
      part.problem(
          "roughness", "cannot exceed a tenth of the bore, " + Measure.LENGTH.write(bore.get()));
      return Optional.empty();
    }
    return Optional.of(
        new RouteSpec.RunSpec(
            name,
            pipe,
            bore.get(),
            bore.get(),
            rating,
            roughness.get(),
            length.get(),
            rise.get(),
            fittings));
  }

  private Optional<StandardPipe> pipe(Section part) {
    Map<String, String> systems =
        named(PipeCatalogue.systems().toArray(String[]::new), system -> system);
    Optional<String> system = part.requiredChoice("system", systems);
    Optional<String> size = part.text("size");
    Optional<String> pipeClass = part.text("class");
    if (!part.has("size")) {
      part.problem("size", "is missing: the nominal size of the pipe");
    }
    if (!part.has("class")) {
      part.problem("class", "is missing: the schedule, SDR or DR of the pipe");
    }
    part.refuseUnknown();
    if (system.isEmpty() || size.isEmpty() || pipeClass.isEmpty()) {
      return Optional.empty();
    }
    Optional<StandardPipe> pipe = PipeCatalogue.find(system.get(), size.get(), pipeClass.get());
    if (pipe.isEmpty()) {
      part.problem(
          "size",
          "with class \""
              + pipeClass.get()
              + "\" is not in "
              + system.get()
              + "; sizes: "
              + String.join(", ", PipeCatalogue.sizes(system.get()))
              + "; classes: "
              + String.join(", ", PipeCatalogue.classes(system.get())));
    }
    return pipe;
  }

  private Map<FittingKind, Integer> fittings(Section part) {
    Map<FittingKind, Integer> fittings = new EnumMap<>(FittingKind.class);
    for (Section entry : part.list("fittings")) {
      Optional<FittingKind> kind = entry.requiredChoice("kind", FITTINGS);
      Optional<Integer> count = entry.has("count") ? entry.count("count", 1, 1000) : Optional.of(1);
      entry.refuseUnknown();
      if (kind.isPresent() && count.isPresent()) {
        fittings.merge(kind.get(), count.get(), Integer::sum);
      }
    }
    return fittings;
  }

  private Optional<LaneSpec> lane(Section part, boolean mixtureThere, boolean lineThere) {
    Optional<Quantity<Length>> length = part.required("length", LANE_LENGTH);
    Optional<Quantity<Length>> width = part.required("width", LANE_WIDTH);
    Optional<Quantity<Dimensionless>> slope = part.orDefault("slope", LANE_SLOPE, "0 %");
    Optional<Quantity<Dimensionless>> manning = part.orDefault("manning", MANNING, "0.015");
    Optional<Quantity<VolumetricFlowRate>> flow = part.required("flow", FLOW);
    Optional<Quantity<Length>> depth = part.optional("depth", LANE_DEPTH);
    Optional<Quantity<Dimensionless>> sand = part.optional("sandVolumeFraction", VOLUME_FRACTION);
    Optional<Quantity<Length>> storage = part.required("sandStorageDepth", LANE_DEPTH);
    Optional<Quantity<Time>> running = part.orDefault("runningTime", RUNNING_TIME, "24 h");
    Optional<Quantity<Dimensionless>> coating = part.orDefault("coatingFactor", COATING, "1");
    if (!part.has("sandVolumeFraction") && !(mixtureThere && lineThere)) {
      part.problem(
          "sandVolumeFraction", "is missing: without a line there is no other mixture to take");
    }
    if (!part.has("depth") && slope.isPresent() && !(number(slope.get()) > 0)) {
      part.problem("depth", "is missing: a lane without slope has no normal depth, so give one");
    }
    part.refuseUnknown();
    return length.isPresent()
            && width.isPresent()
            && slope.isPresent()
            && manning.isPresent()
            && flow.isPresent()
            && storage.isPresent()
            && running.isPresent()
            && coating.isPresent()
        ? Optional.of(
            new LaneSpec(
                length.get(),
                width.get(),
                slope.get(),
                manning.get(),
                flow.get(),
                depth,
                sand,
                storage.get(),
                running.get(),
                coating.get()))
        : Optional.empty();
  }

  private Criteria criteria(Optional<Section> given) {
    Section part =
        given.orElseGet(
            () -> new Section(JsonNodeFactory.instance.objectNode(), "/criteria", problems));
    Optional<Quantity<Dimensionless>> fraction =
        part.orDefault("velocityMarginShare", MARGIN, "15 %");
    Optional<Quantity<Speed>> velocity = part.orDefault("velocityMargin", MARGIN_SPEED, "0.3 m/s");
    Optional<Quantity<Speed>> wear = part.orDefault("wearVelocity", WEAR_SPEED, "3 m/s");
    Optional<Quantity<Dimensionless>> pressure =
        part.orDefault("pressureShare", PRESSURE_SHARE, "72 %");
    Optional<Quantity<Dimensionless>> capture = part.orDefault("sandCapture", SHARE, "75 %");
    Optional<Quantity<Dimensionless>> floor = part.orDefault("floorShare", SHARE, "1 %");
    Map<String, Role> roles = new LinkedHashMap<>();
    part.part("depositionRoles")
        .ifPresent(
            section -> {
              DepositionVelocities.all()
                  .forEach(
                      model ->
                          section
                              .choice(model.id(), ROLES)
                              .ifPresent(role -> roles.put(model.id(), role)));
              section.refuseUnknown();
              if (DepositionVelocities.all().stream()
                  .map(m -> roles.getOrDefault(m.id(), DepositionVelocities.defaultRole(m)))
                  .noneMatch(role -> role == Role.GOVERNING)) {
                part.problem("depositionRoles", "must leave at least one correlation governing");
              }
            });
    boolean graded = part.choice("worstSizeGoverns", YES_NO).orElse(true);
    part.refuseUnknown();
    return fraction.isPresent()
            && velocity.isPresent()
            && wear.isPresent()
            && pressure.isPresent()
            && capture.isPresent()
            && floor.isPresent()
        ? new Criteria(
            fraction.get(),
            velocity.get(),
            roles,
            graded,
            wear.get(),
            pressure.get(),
            capture.get(),
            floor.get())
        : null;
  }
}
