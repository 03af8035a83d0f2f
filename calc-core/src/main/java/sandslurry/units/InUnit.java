package sandslurry.units;

/**
 * Plain numbers for correlations that were published with an input in some unit: grain size in
 * millimetres, bore in inches. The factors come from the table of {@link Measure}.
 */
public enum InUnit {
  /** Millimetre. */
  MILLIMETRE(Measure.LENGTH, "mm"),
  /** Micrometre. */
  MICROMETRE(Measure.LENGTH, "um"),
  /** Centimetre. */
  CENTIMETRE(Measure.LENGTH, "cm"),
  /** Inch. */
  INCH(Measure.LENGTH, "in"),
  /** Foot. */
  FOOT(Measure.LENGTH, "ft"),
  /** Litre per minute. */
  LITRE_PER_MINUTE(Measure.FLOW, "L/min"),
  /** Cubic metre per hour. */
  CUBIC_METRE_PER_HOUR(Measure.FLOW, "m3/h"),
  /** Gallon per minute. */
  GALLON_PER_MINUTE(Measure.FLOW, "gal/min"),
  /** Centistokes. */
  CENTISTOKES(Measure.KINEMATIC_VISCOSITY, "mm2/s"),
  /** Centipoise. */
  CENTIPOISE(Measure.VISCOSITY, "cP"),
  /** Gram per cubic centimetre. */
  GRAM_PER_CUBIC_CENTIMETRE(Measure.DENSITY, "g/cm3"),
  /** Kilopascal. */
  KILOPASCAL(Measure.PRESSURE, "kPa"),
  /** Per minute. */
  PER_MINUTE(Measure.FREQUENCY, "1/min"),
  /** Kilogram per day. */
  KILOGRAM_PER_DAY(Measure.MASS_FLOW, "kg/d"),
  /** Day. */
  DAY(Measure.TIME, "d"),
  /** Hour. */
  HOUR(Measure.TIME, "h"),
  /** Percent. */
  PERCENT(Measure.FRACTION, "%");

  private final UnitEntry<?> entry;

  InUnit(Measure<?> measure, String unit) {
    entry = measure.entry(unit);
  }

  /**
   * An SI value in this unit.
   *
   * @param si the value in SI
   * @return the number in this unit
   */
  public double of(double si) {
    return entry.fromSi(si);
  }

  /**
   * The SI value of a number in this unit.
   *
   * @param number the number in this unit
   * @return the value in SI
   */
  public double si(double number) {
    return entry.toSi(number);
  }
}
