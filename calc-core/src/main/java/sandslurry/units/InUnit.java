package sandslurry.units;

/**
 * Plain numbers for correlations that were published with an input in some unit: grain size in
 * millimetres, bore in inches. The factors come from the table of {@link Measure}.
 */
public final class InUnit {
  private static final UnitEntry<?> MILLIMETRE = Measure.LENGTH.entry("mm");
  private static final UnitEntry<?> MICROMETRE = Measure.LENGTH.entry("um");
  private static final UnitEntry<?> CENTIMETRE = Measure.LENGTH.entry("cm");
  private static final UnitEntry<?> INCH = Measure.LENGTH.entry("in");
  private static final UnitEntry<?> FOOT = Measure.LENGTH.entry("ft");
  private static final UnitEntry<?> LITRE_PER_MINUTE = Measure.FLOW.entry("L/min");
  private static final UnitEntry<?> CUBIC_METRE_PER_HOUR = Measure.FLOW.entry("m3/h");
  private static final UnitEntry<?> GALLON_PER_MINUTE = Measure.FLOW.entry("gal/min");
  private static final UnitEntry<?> CENTISTOKES = Measure.KINEMATIC_VISCOSITY.entry("mm2/s");
  private static final UnitEntry<?> CENTIPOISE = Measure.VISCOSITY.entry("cP");
  private static final UnitEntry<?> GRAM_PER_CUBIC_CENTIMETRE = Measure.DENSITY.entry("g/cm3");
  private static final UnitEntry<?> KILOPASCAL = Measure.PRESSURE.entry("kPa");
  private static final UnitEntry<?> PER_MINUTE = Measure.FREQUENCY.entry("1/min");
  private static final UnitEntry<?> KILOGRAM_PER_DAY = Measure.MASS_FLOW.entry("kg/d");
  private static final UnitEntry<?> DAY = Measure.TIME.entry("d");
  private static final UnitEntry<?> HOUR = Measure.TIME.entry("h");
  private static final UnitEntry<?> PERCENT = Measure.FRACTION.entry("%");

  private InUnit() {}

  /**
   * Millimetres.
   *
   * @param metres a length [m]
   * @return the length [mm]
   */
  public static double millimetres(double metres) {
    return MILLIMETRE.fromSi(metres);
  }

  /**
   * Micrometres.
   *
   * @param metres a length [m]
   * @return the length [um]
   */
  public static double micrometres(double metres) {
    return MICROMETRE.fromSi(metres);
  }

  /**
   * Centimetres.
   *
   * @param metres a length [m]
   * @return the length [cm]
   */
  public static double centimetres(double metres) {
    return CENTIMETRE.fromSi(metres);
  }

  /**
   * Inches.
   *
   * @param metres a length [m]
   * @return the length [in]
   */
  public static double inches(double metres) {
    return INCH.fromSi(metres);
  }

  /**
   * Feet.
   *
   * @param metres a length [m]
   * @return the length [ft]
   */
  public static double feet(double metres) {
    return FOOT.fromSi(metres);
  }

  /**
   * The SI value of a length in feet.
   *
   * @param feet a length [ft]
   * @return the length [m]
   */
  public static double ofFeet(double feet) {
    return FOOT.toSi(feet);
  }

  /**
   * Litres per minute.
   *
   * @param cubicMetresPerSecond a flow [m3/s]
   * @return the flow [L/min]
   */
  public static double litresPerMinute(double cubicMetresPerSecond) {
    return LITRE_PER_MINUTE.fromSi(cubicMetresPerSecond);
  }

  /**
   * Cubic metres per hour.
   *
   * @param cubicMetresPerSecond a flow [m3/s]
   * @return the flow [m3/h]
   */
  public static double cubicMetresPerHour(double cubicMetresPerSecond) {
    return CUBIC_METRE_PER_HOUR.fromSi(cubicMetresPerSecond);
  }

  /**
   * US gallons per minute.
   *
   * @param cubicMetresPerSecond a flow [m3/s]
   * @return the flow [gal/min]
   */
  public static double gallonsPerMinute(double cubicMetresPerSecond) {
    return GALLON_PER_MINUTE.fromSi(cubicMetresPerSecond);
  }

  /**
   * Centistokes, which is the square millimetre per second.
   *
   * @param squareMetresPerSecond a kinematic viscosity [m2/s]
   * @return the kinematic viscosity [mm2/s]
   */
  public static double centistokes(double squareMetresPerSecond) {
    return CENTISTOKES.fromSi(squareMetresPerSecond);
  }

  /**
   * Centipoise, which is the millipascal second.
   *
   * @param pascalSeconds a dynamic viscosity [Pa.s]
   * @return the viscosity [cP]
   */
  public static double centipoise(double pascalSeconds) {
    return CENTIPOISE.fromSi(pascalSeconds);
  }

  /**
   * Grams per cubic centimetre.
   *
   * @param kilogramsPerCubicMetre a density [kg/m3]
   * @return the density [g/cm3]
   */
  public static double gramsPerCubicCentimetre(double kilogramsPerCubicMetre) {
    return GRAM_PER_CUBIC_CENTIMETRE.fromSi(kilogramsPerCubicMetre);
  }

  /**
   * Kilopascals.
   *
   * @param pascals a pressure [Pa]
   * @return the pressure [kPa]
   */
  public static double kilopascals(double pascals) {
    return KILOPASCAL.fromSi(pascals);
  }

  /**
   * Turns or strokes per minute.
   *
   * @param perSecond a rate [1/s]
   * @return the rate [1/min]
   */
  public static double perMinute(double perSecond) {
    return PER_MINUTE.fromSi(perSecond);
  }

  /**
   * Per cent.
   *
   * @param fraction a share of one
   * @return the share [%]
   */
  public static double percent(double fraction) {
    return PERCENT.fromSi(fraction);
  }

  /**
   * Kilograms a day.
   *
   * @param kilogramsPerSecond a mass flow [kg/s]
   * @return the mass flow [kg/d]
   */
  public static double kilogramsPerDay(double kilogramsPerSecond) {
    return KILOGRAM_PER_DAY.fromSi(kilogramsPerSecond);
  }

  /**
   * The SI value of a mass flow in kilograms a day, in which manure is published.
   *
   * @param kilogramsPerDay a mass flow [kg/d]
   * @return the mass flow [kg/s]
   */
  public static double ofKilogramsPerDay(double kilogramsPerDay) {
    return KILOGRAM_PER_DAY.toSi(kilogramsPerDay);
  }

  /**
   * Days.
   *
   * @param seconds a time [s]
   * @return the time [d]
   */
  public static double days(double seconds) {
    return DAY.fromSi(seconds);
  }

  /**
   * The SI value of a time in days.
   *
   * @param days a time [d]
   * @return the time [s]
   */
  public static double ofDays(double days) {
    return DAY.toSi(days);
  }

  /**
   * A time in hours.
   *
   * @param seconds a time [s]
   * @return the time [h]
   */
  static double hours(double seconds) {
    return HOUR.fromSi(seconds);
  }

  /**
   * The SI value of a time in hours.
   *
   * @param hours a time [h]
   * @return the time [s]
   */
  public static double ofHours(double hours) {
    return HOUR.toSi(hours);
  }
}
