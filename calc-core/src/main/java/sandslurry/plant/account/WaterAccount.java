package sandslurry.plant.account;

import sandslurry.plant.Stream;
import sandslurry.units.InUnit;

/**
 * The water that a plant uses.
 *
 * @param fresh fresh water brought to the plant
 * @param recycled liquor brought back
 */
public record WaterAccount(Stream fresh, Stream recycled) {
  /**
   * Fresh water in a day.
   *
   * @return volume [m3]
   */
  public double freshPerDayM3() {
    return fresh.volumeM3ps() * InUnit.DAY.si(1);
  }

  /**
   * Recycled liquor in a day.
   *
   * @return volume [m3]
   */
  public double recycledPerDayM3() {
    return recycled.volumeM3ps() * InUnit.DAY.si(1);
  }

  /**
   * The part of all liquid used that is recycled.
   *
   * @return volume share; 0 when none is used
   */
  public double recycledShare() {
    double all = fresh.volumeM3ps() + recycled.volumeM3ps();
    return all > 0 ? recycled.volumeM3ps() / all : 0;
  }
}
