package sandslurry.fact;

import javax.measure.Quantity;
import sandslurry.units.Measure;

/**
 * The values that a field may take: wide enough for anything that is built, narrow enough to catch
 * a slip of the unit or of a finger.
 *
 * @param measure what the field measures
 * @param low the least value allowed, in SI
 * @param high the greatest value allowed, in SI
 * @param like the unit in which the limits are told first
 * @param <Q> the quantity
 */
public record Limits<Q extends Quantity<Q>>(
    Measure<Q> measure, double low, double high, Quantity<Q> like) {
  /**
   * Makes limits.
   *
   * @param measure what the field measures
   * @param low the least value allowed, with its unit
   * @param high the greatest value allowed, with its unit
   * @param <Q> the quantity
   * @return the limits
   */
  public static <Q extends Quantity<Q>> Limits<Q> of(Measure<Q> measure, String low, String high) {
    Quantity<Q> least = measure.parse(low);
    return new Limits<>(measure, measure.si(least), measure.si(measure.parse(high)), least);
  }

  boolean allow(Quantity<Q> quantity) {
    double si = measure.si(quantity);
    return si >= low && si <= high;
  }

  /**
   * What is needed, said after "is missing".
   *
   * @return for example "a length is needed, 1 m to 500 m"
   */
  public String wanted() {
    return "a " + measure.name() + " is needed, " + in(like);
  }

  /** The range in the unit of some quantity. */
  String in(Quantity<Q> unit) {
    return measure.writeLike(low, unit) + " to " + measure.writeLike(high, unit);
  }

  /**
   * Texts within these limits, as quantities.
   *
   * @return the type of a field
   */
  Type<Quantity<Q>> quantity() {
    return Type.of(this);
  }

  /**
   * The same, with what to do about a quantity beyond the limits.
   *
   * @param advice the advice, said after the limits
   * @return the type of a field
   */
  public Type<Quantity<Q>> quantity(String advice) {
    return Type.of(this, ": " + advice);
  }

  /**
   * Texts within these limits, as numbers in SI.
   *
   * @return the type of a field
   */
  public Type<Double> si() {
    return quantity().map(measure::si);
  }
}
