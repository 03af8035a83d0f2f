package sandslurry.units;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.Unit;
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
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.function.AddConverter;
import tech.units.indriya.function.MultiplyConverter;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/**
 * A physical quantity with the closed table of units in which it may be written.
 *
 * <p>Factors are exact by definition unless noted: the international foot is 0.3048 m, the US
 * gallon 231 cubic inches, the avoirdupois pound 0.453 592 37 kg, standard gravity 9.806 65 m/s²
 * (NIST Special Publication 811, 2008 edition, Appendix B).
 *
 * @param <Q> the quantity
 */
public final class Measure<Q extends Quantity<Q>> {
  private static final double INCH_M = 0.0254;
  private static final double FOOT_M = 0.3048;
  private static final double GALLON_M3 = 231 * INCH_M * INCH_M * INCH_M;
  private static final double CUBIC_FOOT_M3 = FOOT_M * FOOT_M * FOOT_M;
  private static final double POUND_KG = 0.45359237;
  private static final double SHORT_TON_KG = 2000 * POUND_KG;
  private static final double GRAVITY = 9.80665;
  private static final double PSI_PA = POUND_KG * GRAVITY / (INCH_M * INCH_M);
  private static final double HORSEPOWER_W = 550 * POUND_KG * GRAVITY * FOOT_M;
  private static final double MINUTE_S = 60;
  private static final double HOUR_S = 3600;
  private static final double DAY_S = 86400;
  private static final double CELSIUS_ZERO_K = 273.15;
  private static final double FAHRENHEIT_ZERO_K = 459.67 / 1.8;

  /** Length, bore, head, level, grain size; SI metre. */
  public static final Measure<Length> LENGTH =
      new Table<>("length", Units.METRE)
          .unit(1, "m", "metre", "metres", "meter", "meters")
          .unit(1e-3, "mm")
          .unit(1e-2, "cm")
          .unit(1e-6, "um", "micron", "microns")
          .unit(1e3, "km")
          .unit(FOOT_M, "ft", "foot", "feet", "'")
          .unit(INCH_M, "in", "inch", "inches", "\"", "in.")
          .unit(3 * FOOT_M, "yd", "yard", "yards")
          .build();

  /** Speed, settling velocity, surface overflow rate; SI metre per second. */
  public static final Measure<Speed> SPEED =
      new Table<>("speed", Units.METRE_PER_SECOND)
          .unit(1, "m/s")
          .unit(1e-3, "mm/s")
          .unit(1e-2, "cm/s")
          .unit(1 / HOUR_S, "m/h", "m/hr", "m3/m2/h")
          .unit(1 / MINUTE_S, "m/min")
          .unit(FOOT_M, "ft/s", "fps", "ft/sec")
          .unit(FOOT_M / MINUTE_S, "ft/min", "fpm")
          .unit(INCH_M / MINUTE_S, "in/min")
          .unit(GALLON_M3 / DAY_S / (FOOT_M * FOOT_M), "gal/d/ft2", "gpd/ft2")
          .build();

  /** Volume flow; SI cubic metre per second. */
  public static final Measure<VolumetricFlowRate> FLOW =
      new Table<>(
              "flow rate", Units.CUBIC_METRE.divide(Units.SECOND).asType(VolumetricFlowRate.class))
          .unit(1, "m3/s")
          .unit(1 / MINUTE_S, "m3/min")
          .unit(1 / HOUR_S, "m3/h", "m3/hr")
          .unit(1 / DAY_S, "m3/d", "m3/day")
          .unit(1e-3, "L/s", "l/s", "lps")
          .unit(1e-3 / MINUTE_S, "L/min", "l/min", "lpm")
          .unit(GALLON_M3 / MINUTE_S, "gal/min", "gpm", "US gal/min", "USgpm")
          .unit(GALLON_M3 / HOUR_S, "gal/h", "gal/hr", "gph")
          .unit(GALLON_M3 / DAY_S, "gal/d", "gal/day", "gpd")
          .unit(CUBIC_FOOT_M3, "ft3/s", "cfs")
          .unit(CUBIC_FOOT_M3 / MINUTE_S, "ft3/min", "cfm")
          .build();

  /** Mass flow; SI kilogram per second. */
  public static final Measure<MassFlowRate> MASS_FLOW =
      new Table<>("mass flow", Units.KILOGRAM.divide(Units.SECOND).asType(MassFlowRate.class))
          .unit(1, "kg/s")
          .unit(1 / MINUTE_S, "kg/min")
          .unit(1 / HOUR_S, "kg/h", "kg/hr")
          .unit(1 / DAY_S, "kg/d", "kg/day")
          .unit(1000 / HOUR_S, "t/h", "t/hr")
          .unit(1000 / DAY_S, "t/d", "t/day")
          .unit(POUND_KG, "lb/s")
          .unit(POUND_KG / MINUTE_S, "lb/min")
          .unit(POUND_KG / HOUR_S, "lb/h", "lb/hr")
          .unit(POUND_KG / DAY_S, "lb/d", "lb/day")
          .unit(SHORT_TON_KG / HOUR_S, "ton/h", "ton/hr")
          .unit(SHORT_TON_KG / DAY_S, "ton/d", "ton/day")
          .build();

  /** Mass; SI kilogram. A {@code ton} is the US short ton, a {@code t} the metric tonne. */
  public static final Measure<Mass> MASS =
      new Table<>("mass", Units.KILOGRAM)
          .unit(1, "kg")
          .unit(1e-3, "g")
          .unit(1000, "t", "tonne", "tonnes")
          .unit(POUND_KG, "lb", "lbs", "pound", "pounds")
          .unit(SHORT_TON_KG, "ton", "tons", "short ton")
          .build();

  /** Area; SI square metre. */
  public static final Measure<Area> AREA =
      new Table<>("area", Units.SQUARE_METRE)
          .unit(1, "m2")
          .unit(FOOT_M * FOOT_M, "ft2", "sq ft")
          .unit(10_000, "ha", "hectare", "hectares")
          .build();

  /** Volume; SI cubic metre. */
  public static final Measure<Volume> VOLUME =
      new Table<>("volume", Units.CUBIC_METRE)
          .unit(1, "m3")
          .unit(1e-3, "L", "l", "litre", "litres", "liter", "liters")
          .unit(GALLON_M3, "gal", "US gal", "gallon", "gallons")
          .unit(CUBIC_FOOT_M3, "ft3", "cu ft")
          .unit(27 * CUBIC_FOOT_M3, "yd3", "cu yd")
          .build();

  /** Density; SI kilogram per cubic metre. */
  public static final Measure<Density> DENSITY =
      new Table<>("density", Units.KILOGRAM.divide(Units.CUBIC_METRE).asType(Density.class))
          .unit(1, "kg/m3")
          .unit(1000, "g/cm3", "g/cc", "g/mL", "t/m3", "kg/L", "kg/l")
          .unit(POUND_KG / CUBIC_FOOT_M3, "lb/ft3", "pcf")
          .unit(POUND_KG / GALLON_M3, "lb/gal")
          .build();

  /** Dynamic viscosity; SI pascal second. */
  public static final Measure<DynamicViscosity> VISCOSITY =
      new Table<>(
              "dynamic viscosity",
              Units.PASCAL.multiply(Units.SECOND).asType(DynamicViscosity.class))
          .unit(1, "Pa.s", "Pa s", "Pa*s", "Pa·s")
          .unit(1e-3, "mPa.s", "mPa s", "mPa*s", "mPa·s")
          .unit(1e-3, "cP", "cp", "centipoise")
          .unit(0.1, "P", "poise")
          .unit(POUND_KG / FOOT_M, "lb/ft/s", "lb/(ft.s)", "lb/(ft s)", "lb/(ft·s)", "lb/ft.s")
          .build();

  /** Kinematic viscosity; SI square metre per second. */
  public static final Measure<KinematicViscosity> KINEMATIC_VISCOSITY =
      new Table<>(
              "kinematic viscosity",
              Units.SQUARE_METRE.divide(Units.SECOND).asType(KinematicViscosity.class))
          .unit(1, "m2/s")
          .unit(1e-6, "mm2/s", "cSt")
          .unit(FOOT_M * FOOT_M, "ft2/s")
          .build();

  /** Pressure, gauge unless a field says absolute; SI pascal. */
  public static final Measure<Pressure> PRESSURE =
      new Table<>("pressure", Units.PASCAL)
          .unit(1, "Pa")
          .unit(1e3, "kPa")
          .unit(1e6, "MPa")
          .unit(1e5, "bar")
          .unit(1e2, "mbar", "hPa")
          .unit(101325, "atm")
          .unit(PSI_PA, "psi", "psig", "lbf/in2", "lb/in2")
          .build();

  /** Pressure gradient; SI pascal per metre. */
  public static final Measure<PressureGradient> PRESSURE_GRADIENT =
      new Table<>(
              "pressure gradient",
              checked(Units.PASCAL.divide(Units.METRE), PressureGradient.class))
          .unit(1, "Pa/m")
          .unit(1e3, "kPa/m")
          .unit(PSI_PA / FOOT_M, "psi/ft")
          .unit(PSI_PA / (100 * FOOT_M), "psi/100 ft", "psi/100ft")
          .build();

  /** Temperature on an absolute scale; SI kelvin. */
  public static final Measure<Temperature> TEMPERATURE =
      new Table<>("temperature", Units.KELVIN)
          .unit(1, "K")
          .scale(1, CELSIUS_ZERO_K, "degC", "C", "celsius")
          .scale(1 / 1.8, FAHRENHEIT_ZERO_K, "degF", "F", "fahrenheit")
          .build();

  /** Time; SI second. */
  public static final Measure<Time> TIME =
      new Table<>("time", Units.SECOND)
          .unit(1, "s", "sec", "second", "seconds")
          .unit(MINUTE_S, "min", "minute", "minutes")
          .unit(HOUR_S, "h", "hr", "hour", "hours")
          .unit(DAY_S, "d", "day", "days")
          .build();

  /**
   * Turns per time; SI one per second. Not in hertz: those of a motor's supply are not the turns of
   * its shaft.
   */
  public static final Measure<Frequency> ROTATION =
      new Table<>("rotational speed", Units.HERTZ)
          .unit(1, "1/s", "r/s")
          .unit(1 / MINUTE_S, "rpm", "r/min", "1/min", "/min")
          .build();

  /** Strokes or starts per time; SI one per second. */
  public static final Measure<Frequency> FREQUENCY =
      new Table<>("rate of strokes", Units.HERTZ)
          .unit(1, "1/s", "Hz")
          .unit(1 / MINUTE_S, "1/min", "/min", "spm", "strokes/min", "rpm", "r/min")
          .unit(1 / HOUR_S, "1/h", "/h")
          .build();

  /** Power; SI watt. {@code hp} is the mechanical horsepower of 550 foot-pounds force a second. */
  public static final Measure<Power> POWER =
      new Table<>("power", Units.WATT)
          .unit(1, "W")
          .unit(1e3, "kW")
          .unit(HORSEPOWER_W, "hp", "HP")
          .build();

  /** Energy; SI joule. */
  public static final Measure<Energy> ENERGY =
      new Table<>("energy", Units.JOULE).unit(1, "J").unit(1000 * HOUR_S, "kWh").build();

  /** Energy per mass; SI joule per kilogram. A {@code ton} is the US short ton. */
  public static final Measure<SpecificEnergy> SPECIFIC_ENERGY =
      new Table<>(
              "specific energy", checked(Units.JOULE.divide(Units.KILOGRAM), SpecificEnergy.class))
          .unit(1, "J/kg")
          .unit(1000 * HOUR_S / 1000, "kWh/t")
          .unit(1000 * HOUR_S / SHORT_TON_KG, "kWh/ton")
          .build();

  /** Shear rate; SI one per second. */
  public static final Measure<ShearRate> SHEAR_RATE =
      new Table<>("shear rate", checked(AbstractUnit.ONE.divide(Units.SECOND), ShearRate.class))
          .unit(1, "1/s", "s-1")
          .build();

  /** A share of a whole or of another value; a bare number or per cent. */
  public static final Measure<Dimensionless> FRACTION =
      new Table<>("fraction", AbstractUnit.ONE).unit(1, "").unit(1e-2, "%", "percent").build();

  /** A fall or rise over its length; a bare number, per cent or lengths over lengths. */
  public static final Measure<Dimensionless> SLOPE =
      new Table<>("slope", AbstractUnit.ONE)
          .unit(1, "")
          .unit(1, "m/m", "ft/ft")
          .unit(1e-2, "%", "percent")
          .unit(1e-2, "ft/100 ft", "ft/100ft")
          .build();

  /** Heads, money, exponents and coefficients, which nobody means in per cent; a bare number. */
  public static final Measure<Dimensionless> NUMBER =
      new Table<>("number", AbstractUnit.ONE).unit(1, "").build();

  private static final List<Measure<?>> ALL =
      List.of(
          LENGTH,
          SPEED,
          FLOW,
          MASS_FLOW,
          MASS,
          AREA,
          VOLUME,
          DENSITY,
          VISCOSITY,
          KINEMATIC_VISCOSITY,
          PRESSURE,
          PRESSURE_GRADIENT,
          TEMPERATURE,
          TIME,
          ROTATION,
          FREQUENCY,
          ENERGY,
          POWER,
          SPECIFIC_ENERGY,
          SHEAR_RATE,
          FRACTION,
          SLOPE,
          NUMBER);

  private final String name;
  private final Unit<Q> siUnit;
  private final List<UnitEntry<Q>> entries;

  private Measure(String name, Unit<Q> siUnit, List<UnitEntry<Q>> entries) {
    this.name = name;
    this.siUnit = siUnit;
    this.entries = List.copyOf(entries);
  }

  /**
   * All measures.
   *
   * @return every measure that the program knows
   */
  public static List<Measure<?>> all() {
    return ALL;
  }

  /**
   * The name of the measure in a sentence.
   *
   * @return for example "pressure gradient"
   */
  public String name() {
    return name;
  }

  /**
   * The table of units.
   *
   * @return every unit in which this measure may be written; the first is the SI unit
   */
  public List<UnitEntry<Q>> units() {
    return entries;
  }

  /**
   * Makes a quantity from an SI value.
   *
   * @param si a finite value in the SI unit
   * @return the quantity, in the SI unit
   * @throws IllegalArgumentException if the value is not finite
   */
  public Quantity<Q> of(double si) {
    if (!Double.isFinite(si)) {
      throw new IllegalArgumentException("a " + name + " must be finite but was " + si);
    }
    return Quantities.getQuantity(si, siUnit);
  }

  /**
   * Makes a quantity from a number and the spelling of a unit of this measure.
   *
   * @param number a finite number
   * @param unit a spelling from the table
   * @return the quantity, in that unit
   * @throws UnitTextException if the unit is not in the table
   */
  public Quantity<Q> of(double number, String unit) {
    if (!Double.isFinite(number)) {
      throw new IllegalArgumentException("a " + name + " must be finite but was " + number);
    }
    return Quantities.getQuantity(number, entry(unit).unit());
  }

  /**
   * The SI value of a quantity.
   *
   * @param quantity a quantity in any unit of the right dimension
   * @return its value in the SI unit
   */
  public double si(Quantity<Q> quantity) {
    double number = quantity.getValue().doubleValue();
    Optional<UnitEntry<Q>> own = ownEntry(quantity.getUnit());
    return own.isPresent()
        ? own.get().toSi(number)
        : quantity.getUnit().getConverterTo(siUnit).convert(number);
  }

  /**
   * The table line of a unit.
   *
   * @param spelling a symbol or alias, in any case
   * @return the line
   * @throws UnitTextException if this measure has no such unit; the message lists those it has
   */
  public UnitEntry<Q> entry(String spelling) {
    return find(spelling).orElseThrow(() -> new UnitTextException(refusal(spelling)));
  }

  /**
   * Reads a number with a unit, as people type it: {@code 300 ft}, {@code 1.5e-3 Pa.s}, {@code
   * 1-1/2 in}. The whole text must be understood; the decimal mark is a point.
   *
   * @param text what was typed
   * @return the quantity in the unit typed
   * @throws UnitTextException if the text is not a number with a unit of this measure
   */
  public Quantity<Q> parse(String text) {
    NumberText read = NumberText.split(text);
    if (read.rest().isEmpty() && find("").isEmpty()) {
      throw new UnitTextException(
          "\""
              + ShownText.brief(text.strip())
              + "\" has no unit: write "
              + ("aeiou".indexOf(name.charAt(0)) < 0 ? "a " : "an ")
              + name
              + " such as "
              + examples(ShownText.brief(text)));
    }
    return Quantities.getQuantity(read.number(), entry(read.rest()).unit());
  }

  /**
   * Writes a quantity in the unit that it carries, so that {@link #parse} gives the same back.
   *
   * @param quantity a quantity
   * @return for example {@code 300 ft}
   */
  public String write(Quantity<Q> quantity) {
    double number = quantity.getValue().doubleValue();
    Optional<UnitEntry<Q>> own = ownEntry(quantity.getUnit());
    UnitEntry<Q> entry = own.orElse(entries.get(0));
    String text = NumberText.shortest(own.isPresent() ? number : si(quantity));
    return entry.symbol().isEmpty() ? text : text + " " + entry.symbol();
  }

  /**
   * Writes a limit, rounded to its own side, in the unit that another quantity carries.
   *
   * @param si a finite value in SI
   * @param like the quantity whose unit is taken
   * @param to upwards for a least value, so that what is written is itself allowed
   * @return for example {@code 6561 ft}
   */
  public String writeLike(double si, Quantity<Q> like, RoundingMode to) {
    UnitEntry<Q> entry = ownEntry(like.getUnit()).orElse(entries.get(0));
    String rounded = NumberText.rounded(entry.fromSi(si), 4, to);
    String text = NumberText.shortest(Double.parseDouble(rounded));
    return entry.symbol().isEmpty() ? text : text + " " + entry.symbol();
  }

  private Optional<UnitEntry<Q>> ownEntry(Unit<Q> unit) {
    return entries.stream().filter(e -> e.unit() == unit).findFirst();
  }

  private Optional<UnitEntry<Q>> find(String spelling) {
    String plain = plain(spelling);
    Optional<UnitEntry<Q>> exact = entries.stream().filter(e -> e.isWrittenAs(plain)).findFirst();
    return exact.isPresent()
        ? exact
        : entries.stream().filter(e -> e.isWrittenAsIgnoringCase(plain)).findFirst();
  }

  private static String plain(String spelling) {
    return spelling
        .strip()
        .replaceAll("\\s+", " ")
        .replace('²', '2')
        .replace('³', '3')
        .replaceAll("\\^(?=-?[0-9])", "")
        .replace('µ', 'u')
        .replace('μ', 'u')
        .replace('º', '°')
        .replace("° ", "deg")
        .replace("°", "deg")
        .replaceAll(" ?/ ?", "/");
  }

  private String refusal(String spelling) {
    String known = symbols();
    String shown = "\"" + ShownText.brief(spelling) + "\"";
    return ALL.stream()
        .filter(other -> other != this && other.find(spelling).isPresent())
        .findFirst()
        .map(
            other ->
                shown
                    + " is a unit of "
                    + other.name
                    + ", but a "
                    + name
                    + " is needed here: "
                    + known)
        .orElseGet(() -> shown + " is not a unit of " + name + " known here: " + known);
  }

  private String symbols() {
    return entries.stream()
        .map(e -> e.symbol().isEmpty() ? "a bare number" : e.symbol())
        .collect(Collectors.joining(", "));
  }

  /** In the units in which values of this measure are shown. */
  private String examples(String number) {
    return Stream.concat(Kind.unitsOf(this).stream(), entries.stream().map(UnitEntry::symbol))
        .filter(symbol -> !symbol.isEmpty())
        .distinct()
        .limit(3)
        .map(symbol -> "\"" + number.strip() + " " + symbol + "\"")
        .collect(Collectors.joining(" or "));
  }

  @Override
  public String toString() {
    return name;
  }

  /**
   * Gives a unit a type of ours only when the dimension is right: the plain cast checks nothing.
   */
  private static <T extends Quantity<T>> Unit<T> checked(Unit<?> unit, Class<T> type) {
    @SuppressWarnings("unchecked")
    Unit<T> typed = (Unit<T>) unit;
    boolean right =
        switch (type.getSimpleName()) {
          case "PressureGradient" -> unit.isCompatible(Units.PASCAL.divide(Units.METRE));
          case "SpecificEnergy" -> unit.isCompatible(Units.JOULE.divide(Units.KILOGRAM));
          case "ShearRate" -> unit.isCompatible(Units.HERTZ);
          default -> false;
        };
    if (!right) {
      throw new IllegalStateException(unit + " does not measure a " + type.getSimpleName());
    }
    return typed;
  }

  /** Collects the lines of one measure. */
  private static final class Table<Q extends Quantity<Q>> {
    private final String name;
    private final Unit<Q> si;
    private final List<UnitEntry<Q>> entries = new ArrayList<>();

    Table(String name, Unit<Q> si) {
      this.name = name;
      this.si = si;
    }

    Table<Q> unit(double factor, String symbol, String... aliases) {
      return scale(factor, 0, symbol, aliases);
    }

    Table<Q> scale(double factor, double offset, String symbol, String... aliases) {
      Unit<Q> unit = si;
      if (offset != 0) {
        unit = unit.transform(new AddConverter(offset));
      }
      if (factor != 1) {
        unit = unit.transform(MultiplyConverter.of(factor));
      }
      entries.add(new UnitEntry<>(symbol, List.of(aliases), factor, offset, unit));
      return this;
    }

    Measure<Q> build() {
      return new Measure<>(name, si, entries);
    }
  }
}
