package sandslurry.separation.box;

import java.util.List;
import sandslurry.correlation.Bound;
import sandslurry.separation.capture.Outlook;

/**
 * What a dilution settling box does with its feed.
 *
 * @param overflowVelocityMps rising velocity: mixture and rinse over the effective plan area [m/s]
 * @param residenceTimeS volume of water over that flow [s]
 * @param rinseM3ps rinse water taken besides the feed [m3/s]
 * @param velocitiesMps hindered settling velocity of each class [m/s]
 * @param sands the sand given, cautious, likely and hopeful
 * @param excesses what lay outside the published ranges, each once
 */
public record BoxResult(
    double overflowVelocityMps,
    double residenceTimeS,
    double rinseM3ps,
    List<Double> velocitiesMps,
    List<BoxSand> sands,
    List<Bound.Excess> excesses) {
  /** Copies the lists. */
  public BoxResult {
    velocitiesMps = List.copyOf(velocitiesMps);
    sands = List.copyOf(sands);
    excesses = List.copyOf(excesses);
  }

  /**
   * The sand given at one edge of the band.
   *
   * @param outlook the edge
   * @return the sand
   */
  public BoxSand sand(Outlook outlook) {
    return sands.get(outlook.ordinal());
  }
}
