package sandslurry.units;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import si.uom.quantity.Density;
import si.uom.quantity.DynamicViscosity;
import si.uom.quantity.KinematicViscosity;
import si.uom.quantity.MassFlowRate;
import si.uom.quantity.VolumetricFlowRate;

/**
 * What a value is to a practitioner, which dimension alone cannot tell: a bore, a grain and a head
 * are all lengths but are read in different units. A kind says how such a value is shown.
 *
 * @param <Q> the quantity
 */
public final class Kind<Q extends Quantity<Q>> {
  private static final Map<String, Kind<?>> BY_NAME = new LinkedHashMap<>();

  /** Length of pipe or lane, elevation. */
  public static final Kind<Length> LENGTH = new Kind<>("length", Measure.LENGTH, "m", "ft", 4);

  /** Bore, wall, roughness. */
  public static final Kind<Length> BORE = new Kind<>("bore", Measure.LENGTH, "mm", "in", 4);

  /** Depth of liquid, deposit or rain. */
  public static final Kind<Length> DEPTH = new Kind<>("depth", Measure.LENGTH, "mm", "in", 3);

  /** Size of a grain or sieve, in millimetres in both systems as in the sieve standards. */
  public static final Kind<Length> GRAIN = new Kind<>("grain", Measure.LENGTH, "mm", "mm", 3);

  /** Head of liquid or mixture. */
  public static final Kind<Length> HEAD = new Kind<>("head", Measure.LENGTH, "m", "ft", 3);

  /** Mean velocity. */
  public static final Kind<Speed> VELOCITY =
      new Kind<>("velocity", Measure.SPEED, "m/s", "ft/s", 3);

  /** Settling velocity, surface overflow rate, shear velocity. */
  public static final Kind<Speed> FALL = new Kind<>("fall", Measure.SPEED, "mm/s", "ft/min", 3);

  /** Volume flow. */
  public static final Kind<VolumetricFlowRate> FLOW =
      new Kind<>("flow", Measure.FLOW, "L/s", "gal/min", 3);

  /** Mass flow of sand. */
  public static final Kind<MassFlowRate> MASS_FLOW =
      new Kind<>("mass-flow", Measure.MASS_FLOW, "kg/s", "lb/min", 3);

  /** Mass moved in a day. */
  public static final Kind<MassFlowRate> MASS_PER_DAY =
      new Kind<>("mass-per-day", Measure.MASS_FLOW, "t/d", "ton/d", 3);

  /** What one animal or stall makes, gets or uses in a day. */
  public static final Kind<MassFlowRate> MASS_PER_HEAD =
      new Kind<>("mass-per-head", Measure.MASS_FLOW, "kg/d", "lb/d", 3);

  /** Mass. */
  public static final Kind<Mass> MASS = new Kind<>("mass", Measure.MASS, "kg", "lb", 4);

  /** Mass of sand that is bought or hauled. */
  public static final Kind<Mass> HAULED = new Kind<>("hauled", Measure.MASS, "t", "ton", 3);

  /** Area of a settling surface, a floor or a yard. */
  public static final Kind<Area> AREA = new Kind<>("area", Measure.AREA, "m2", "ft2", 3);

  /** Volume of liquid or slurry. */
  public static final Kind<Volume> VOLUME = new Kind<>("volume", Measure.VOLUME, "m3", "gal", 3);

  /** Volume of gas in a vessel, and of a stroke. */
  public static final Kind<Volume> SMALL_VOLUME =
      new Kind<>("small-volume", Measure.VOLUME, "L", "gal", 3);

  /** Volume of sand in a heap or on a floor. */
  static final Kind<Volume> SAND_VOLUME = new Kind<>("sand-volume", Measure.VOLUME, "m3", "yd3", 3);

  /** Density. */
  public static final Kind<Density> DENSITY =
      new Kind<>("density", Measure.DENSITY, "kg/m3", "lb/ft3", 4);

  /** Dynamic viscosity, in millipascal seconds (centipoise) in both systems. */
  public static final Kind<DynamicViscosity> VISCOSITY =
      new Kind<>("viscosity", Measure.VISCOSITY, "mPa.s", "cP", 3);

  /** Kinematic viscosity. */
  public static final Kind<KinematicViscosity> KINEMATIC_VISCOSITY =
      new Kind<>("kinematic-viscosity", Measure.KINEMATIC_VISCOSITY, "mm2/s", "cSt", 3);

  /** Gauge pressure. */
  public static final Kind<Pressure> PRESSURE =
      new Kind<>("pressure", Measure.PRESSURE, "kPa", "psi", 3);

  /** Shear stress. */
  public static final Kind<Pressure> STRESS = new Kind<>("stress", Measure.PRESSURE, "Pa", "Pa", 3);

  /** Pressure lost per length. */
  public static final Kind<PressureGradient> PRESSURE_GRADIENT =
      new Kind<>("pressure-gradient", Measure.PRESSURE_GRADIENT, "Pa/m", "psi/100 ft", 3);

  /** Temperature. */
  public static final Kind<Temperature> TEMPERATURE =
      new Kind<>("temperature", Measure.TEMPERATURE, "degC", "degF", 3);

  /** Seconds and minutes. */
  public static final Kind<Time> TIME = new Kind<>("time", Measure.TIME, "s", "s", 3);

  /** A time in hours. */
  public static final Kind<Time> HOURS = new Kind<>("hours", Measure.TIME, "h", "h", 3);

  /** A time in minutes. */
  public static final Kind<Time> MINUTES = new Kind<>("minutes", Measure.TIME, "min", "min", 3);

  /** How often a motor starts. */
  public static final Kind<Frequency> STARTS =
      new Kind<>("starts", Measure.FREQUENCY, "1/h", "1/h", 3);

  /** Days. */
  public static final Kind<Time> DAYS = new Kind<>("days", Measure.TIME, "d", "d", 3);

  /** Rotational speed. */
  public static final Kind<Frequency> FREQUENCY =
      new Kind<>("frequency", Measure.ROTATION, "rpm", "rpm", 4);

  /** Strokes and swings. */
  public static final Kind<Frequency> STROKES =
      new Kind<>("strokes", Measure.FREQUENCY, "1/min", "1/min", 4);

  /** Energy. */
  public static final Kind<Energy> ENERGY = new Kind<>("energy", Measure.ENERGY, "kWh", "kWh", 3);

  /** Power. */
  public static final Kind<Power> POWER = new Kind<>("power", Measure.POWER, "kW", "hp", 3);

  /** Energy per mass of sand moved. */
  public static final Kind<SpecificEnergy> SPECIFIC_ENERGY =
      new Kind<>("specific-energy", Measure.SPECIFIC_ENERGY, "kWh/t", "kWh/ton", 3);

  /** Shear rate. */
  public static final Kind<ShearRate> SHEAR_RATE =
      new Kind<>("shear-rate", Measure.SHEAR_RATE, "1/s", "1/s", 3);

  /** A share in per cent. */
  public static final Kind<Dimensionless> PERCENT =
      new Kind<>("percent", Measure.FRACTION, "%", "%", 3);

  /** A pure number: Reynolds number, friction factor, ratio, slope. */
  public static final Kind<Dimensionless> NUMBER = new Kind<>("number", Measure.NUMBER, "", "", 4);

  /** Years, as a number of which its sentence or label says that it is years. */
  public static final Kind<Dimensionless> YEARS = new Kind<>("years", Measure.NUMBER, "", "", 2);

  private final Measure<Q> measure;
  private final UnitEntry<Q> metric;
  private final UnitEntry<Q> us;
  private final int digits;

  private Kind(String name, Measure<Q> measure, String metric, String us, int digits) {
    BY_NAME.put(name, this);
    this.measure = measure;
    this.metric = measure.entry(metric);
    this.us = measure.entry(us);
    this.digits = digits;
  }

  /**
   * All kinds.
   *
   * @return every kind of value that is shown
   */
  static List<Kind<?>> all() {
    return List.copyOf(BY_NAME.values());
  }

  /** Symbols of the units in which values of a measure are shown, the commonest first. */
  static List<String> unitsOf(Measure<?> measure) {
    return BY_NAME.values().stream()
        .filter(kind -> kind.measure.equals(measure))
        .flatMap(kind -> Stream.of(kind.metric.symbol(), kind.us.symbol()))
        .distinct()
        .toList();
  }

  /**
   * The US unit in which values are shown that have a given metric one.
   *
   * @param measure the measure
   * @param metric symbol of the metric unit
   * @return its symbol; empty where both are the same, or no value is shown so
   */
  public static Optional<String> usUnit(Measure<?> measure, String metric) {
    return BY_NAME.values().stream()
        .filter(kind -> kind.measure.equals(measure))
        .filter(kind -> kind.metric.symbol().equals(metric))
        .map(kind -> kind.us.symbol())
        .filter(us -> !us.equals(metric))
        .findFirst();
  }

  /**
   * A kind by its name.
   *
   * @param name the name of its constant in small letters, with hyphens
   * @return the kind
   * @throws IllegalArgumentException if there is none
   */
  public static Kind<?> named(String name) {
    Kind<?> kind = BY_NAME.get(name);
    if (kind == null) {
      throw new IllegalArgumentException("no kind of value is called " + name);
    }
    return kind;
  }

  /**
   * The measure that the kind belongs to.
   *
   * @return the measure
   */
  public Measure<Q> measure() {
    return measure;
  }

  /**
   * The unit shown.
   *
   * @param system the system chosen
   * @return its symbol; empty for a pure number
   */
  public String symbol(UnitSystem system) {
    return entry(system).symbol();
  }

  /**
   * The value as a number in the unit shown, unrounded: for charts and tables of data.
   *
   * @param system the system chosen
   * @param si the value in SI
   * @return the number in the unit that {@link #symbol} names
   */
  public double number(UnitSystem system, double si) {
    return entry(system).fromSi(si);
  }

  int digits() {
    return digits;
  }

  private UnitEntry<Q> entry(UnitSystem system) {
    return system == UnitSystem.METRIC ? metric : us;
  }
}
