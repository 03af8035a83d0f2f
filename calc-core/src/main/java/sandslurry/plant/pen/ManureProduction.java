package sandslurry.plant.pen;

import sandslurry.correlation.Bound;
import sandslurry.correlation.Correlation;
import sandslurry.correlation.Estimate;
import sandslurry.fact.step.Trace;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;

/** A published equation for the manure that a lactating cow makes: faeces and urine, no bedding. */
public interface ManureProduction extends Correlation {
  /**
   * The milk yields at which the handbook tables manure: 50 to 125 lb a day. The range of the data
   * behind the equations was not at hand.
   */
  Bound TABLED_MILK =
      Bound.used(
          "milk yield",
          Kind.MASS_PER_HEAD,
          InUnit.KILOGRAM_PER_DAY.si(22.67),
          InUnit.KILOGRAM_PER_DAY.si(56.71));

  /**
   * Manure of one cow.
   *
   * @param milkKgps milk yield of the cow [kg/s]
   * @return mass of manure [kg/s]
   */
  default Estimate manureKgps(double milkKgps) {
    return manureKgps(milkKgps, Trace.NONE);
  }

  /**
   * The same with its step.
   *
   * @param milkKgps milk yield of the cow [kg/s]
   * @param trace what keeps the step
   * @return mass of manure [kg/s]
   */
  Estimate manureKgps(double milkKgps, Trace trace);

  /**
   * Checks a milk yield.
   *
   * @param milkKgps milk yield [kg/s]
   * @return the same in the unit of the equations [kg/d]
   */
  static double milkKgPerDay(double milkKgps) {
    if (!(milkKgps >= 0 && Double.isFinite(milkKgps))) {
      throw new IllegalArgumentException("the milk yield must be >= 0 but was " + milkKgps);
    }
    return InUnit.KILOGRAM_PER_DAY.of(milkKgps);
  }
}
