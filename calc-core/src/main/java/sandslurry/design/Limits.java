package sandslurry.design;

import javax.measure.Quantity;
import sandslurry.units.Measure;

/**
 * The values that a field may take: wide enough for anything that is built, narrow enough to catch
 * a slip of the unit or of a finger.
 *
 * @param measure what the field measures
 * @param low the least value allowed, in SI
 * @param high the greatest value allowed, in SI
 * @param <Q> the quantity
 */
record Limits<Q extends Quantity<Q>>(Measure<Q> measure, double low, double high) {
  static <Q extends Quantity<Q>> Limits<Q> of(Measure<Q> measure, String low, String high) {
    return new Limits<>(measure, measure.si(measure.parse(low)), measure.si(measure.parse(high)));
  }

  boolean allow(Quantity<Q> quantity) {
    double si = measure.si(quantity);
    return si >= low && si <= high;
  }

  /** The range in the unit that was typed. */
  String describe(Quantity<Q> typed) {
    return "must be " + measure.writeLike(low, typed) + " to " + measure.writeLike(high, typed);
  }
}
