package sandslurry.library;

import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import javax.measure.quantity.Power;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import sandslurry.units.Measure;
import si.uom.quantity.Density;
import si.uom.quantity.DynamicViscosity;
import si.uom.quantity.VolumetricFlowRate;

/**
 * Quantities by their units, to import statically: {@code ft(300)}, {@code lps(20)}. Every other
 * unit of the design file is read by {@link Measure#parse}.
 */
public final class Amounts {
  private Amounts() {}

  /**
   * A length in metres.
   *
   * @param number the number
   * @return the length
   */
  public static Quantity<Length> m(double number) {
    return Measure.LENGTH.of(number, "m");
  }

  /**
   * A length in millimetres.
   *
   * @param number the number
   * @return the length
   */
  public static Quantity<Length> mm(double number) {
    return Measure.LENGTH.of(number, "mm");
  }

  /**
   * A length in feet.
   *
   * @param number the number
   * @return the length
   */
  public static Quantity<Length> ft(double number) {
    return Measure.LENGTH.of(number, "ft");
  }

  /**
   * A length in inches.
   *
   * @param number the number
   * @return the length
   */
  public static Quantity<Length> in(double number) {
    return Measure.LENGTH.of(number, "in");
  }

  /**
   * A velocity in metres per second.
   *
   * @param number the number
   * @return the velocity
   */
  public static Quantity<Speed> mps(double number) {
    return Measure.SPEED.of(number, "m/s");
  }

  /**
   * A velocity in feet per second.
   *
   * @param number the number
   * @return the velocity
   */
  public static Quantity<Speed> ftps(double number) {
    return Measure.SPEED.of(number, "ft/s");
  }

  /**
   * A flow rate in litres per second.
   *
   * @param number the number
   * @return the flow rate
   */
  public static Quantity<VolumetricFlowRate> lps(double number) {
    return Measure.FLOW.of(number, "L/s");
  }

  /**
   * A flow rate in US gallons per minute.
   *
   * @param number the number
   * @return the flow rate
   */
  public static Quantity<VolumetricFlowRate> gpm(double number) {
    return Measure.FLOW.of(number, "gal/min");
  }

  /**
   * A temperature in degrees Celsius.
   *
   * @param number the number
   * @return the temperature
   */
  public static Quantity<Temperature> degC(double number) {
    return Measure.TEMPERATURE.of(number, "degC");
  }

  /**
   * A temperature in degrees Fahrenheit.
   *
   * @param number the number
   * @return the temperature
   */
  public static Quantity<Temperature> degF(double number) {
    return Measure.TEMPERATURE.of(number, "degF");
  }

  /**
   * A share in per cent.
   *
   * @param number the number
   * @return the share
   */
  public static Quantity<Dimensionless> percent(double number) {
    return Measure.FRACTION.of(number, "%");
  }

  /**
   * A density in kilograms per cubic metre.
   *
   * @param number the number
   * @return the density
   */
  public static Quantity<Density> kgPerM3(double number) {
    return Measure.DENSITY.of(number, "kg/m3");
  }

  /**
   * A viscosity in millipascal seconds, which are centipoise.
   *
   * @param number the number
   * @return the viscosity
   */
  public static Quantity<DynamicViscosity> mPas(double number) {
    return Measure.VISCOSITY.of(number, "mPa.s");
  }

  /**
   * A pressure or stress in pascals.
   *
   * @param number the number
   * @return the pressure
   */
  public static Quantity<Pressure> pa(double number) {
    return Measure.PRESSURE.of(number, "Pa");
  }

  /**
   * A pressure in pounds per square inch.
   *
   * @param number the number
   * @return the pressure
   */
  public static Quantity<Pressure> psi(double number) {
    return Measure.PRESSURE.of(number, "psi");
  }

  /**
   * A speed of turning in revolutions per minute.
   *
   * @param number the number
   * @return the speed
   */
  public static Quantity<Frequency> rpm(double number) {
    return Measure.ROTATION.of(number, "rpm");
  }

  /**
   * A power in kilowatts.
   *
   * @param number the number
   * @return the power
   */
  public static Quantity<Power> kW(double number) {
    return Measure.POWER.of(number, "kW");
  }

  /**
   * A time in hours.
   *
   * @param number the number
   * @return the time
   */
  public static Quantity<Time> hours(double number) {
    return Measure.TIME.of(number, "h");
  }
}
