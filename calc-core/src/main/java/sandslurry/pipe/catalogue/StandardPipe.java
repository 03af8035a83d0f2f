package sandslurry.pipe.catalogue;

import java.util.OptionalDouble;

/**
 * One line of a pipe standard.
 *
 * <p>A bought pipe is not one bore but a range, because the standards of plastic pipe fix the
 * outside diameter and the least wall. Two bores are therefore given. The <em>largest</em> bore
 * belongs to the least wall: at a given flow it has the lowest velocity, so it is the one to check
 * against deposition. The <em>mean</em> bore belongs to the middle of the wall tolerance: it is the
 * one that the head loss of a whole line follows, 1.5 to 10 % above that of the largest bore. Both
 * start from the nominal outside diameter, whose own tolerance (0.1 to 0.6 %) is not added. For
 * steel both are the nominal bore.
 *
 * @param system the standard
 * @param size nominal size as it is written in files: "6 in" or "160 mm"
 * @param wallClass schedule or dimension ratio: "Sch 40", "SDR 26", "DR 17"
 * @param outsideDiameterM outside diameter [m]
 * @param leastWallM least wall [m]
 * @param greatestWallM greatest wall [m]
 * @param ratingPa pressure rating at the temperature of which its {@link PipeSystem} says; empty
 *     when the standard gives none [Pa]
 */
public record StandardPipe(
    PipeSystem system,
    String size,
    String wallClass,
    double outsideDiameterM,
    double leastWallM,
    double greatestWallM,
    OptionalDouble ratingPa) {
  /**
   * Checks that a bore is left and that the walls are in order.
   *
   * @param system the standard
   * @param size nominal size
   * @param wallClass schedule or dimension ratio
   * @param outsideDiameterM outside diameter [m]
   * @param leastWallM least wall [m]
   * @param greatestWallM greatest wall [m]
   * @param ratingPa pressure rating, if there is one [Pa]
   * @throws IllegalArgumentException if no bore is left or the walls are not in order
   */
  public StandardPipe {
    if (!(leastWallM > 0)
        || !(greatestWallM >= leastWallM)
        || !(outsideDiameterM > 2 * greatestWallM)) {
      throw new IllegalArgumentException(
          "a pipe needs 0 < least wall <= greatest wall < half the outside diameter but has "
              + leastWallM
              + " m, "
              + greatestWallM
              + " m, "
              + outsideDiameterM
              + " m");
    }
  }

  /**
   * The bore left by the least wall: for the check against deposition.
   *
   * @return outside diameter less twice the least wall [m]
   */
  public double largestBoreM() {
    return outsideDiameterM - 2 * leastWallM;
  }

  /**
   * The bore left by the mean wall: for head loss.
   *
   * @return outside diameter less the sum of least and greatest wall [m]
   */
  public double meanBoreM() {
    return outsideDiameterM - (leastWallM + greatestWallM);
  }

  /**
   * The pressure rating when wall and liquid are warm.
   *
   * @param temperatureK the temperature [K]
   * @return the rating times the factor of {@link PipeSystem#ratingFactor}; empty when the standard
   *     gives no rating or no factor is known for so warm a pipe [Pa]
   */
  public OptionalDouble ratingPa(double temperatureK) {
    OptionalDouble factor = system.ratingFactor(temperatureK);
    return ratingPa.isPresent() && factor.isPresent()
        ? OptionalDouble.of(ratingPa.getAsDouble() * factor.getAsDouble())
        : OptionalDouble.empty();
  }

  /**
   * The pipe in words.
   *
   * @return for example "6 in Sch 40 (PVC, ASTM D1785)"
   */
  public String words() {
    return size + " " + wallClass + " (" + system.words() + ")";
  }
}
