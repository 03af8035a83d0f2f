package sandslurry.plant.profile;

import java.util.OptionalDouble;

/**
 * The levels of a unit above the datum of its plant.
 *
 * @param floorM its floor; empty when it is not given [m]
 * @param lowestM lowest water, from which its pumps draw [m]
 * @param highestM highest water, against which flows in what comes by gravity [m]
 * @param overflowM level of the weir or outlet over which its liquor leaves by gravity [m]
 */
public record Levels(OptionalDouble floorM, double lowestM, double highestM, double overflowM) {
  /**
   * Checks the order.
   *
   * @throws IllegalArgumentException unless all are finite and the water does not fall below itself
   */
  public Levels {
    if (!(lowestM <= highestM && Double.isFinite(highestM - lowestM))
        || !Double.isFinite(overflowM)
        || !Double.isFinite(floorM.orElse(0))) {
      throw new IllegalArgumentException(
          "levels are finite, the lowest water not above the highest, but are "
              + lowestM
              + ", "
              + highestM
              + " and "
              + overflowM
              + " m");
    }
  }

  /**
   * The lowest level that is known of the unit.
   *
   * @return its floor, or the lowest water or outlet where no floor is given [m]
   */
  public double footM() {
    return floorM.orElse(Math.min(lowestM, overflowM));
  }
}
