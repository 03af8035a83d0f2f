package sandslurry.circuit;

import sandslurry.material.SizeClass;

/**
 * How fit recovered sand is for the stalls.
 *
 * @param moisture water over total mass
 * @param organicMatter manure solids over dry mass
 * @param mineralFines grains below 75 um over all mineral grains
 * @param meanSizeM geometric mean size of the sand by mass [m]
 */
public record BedQuality(
    double moisture, double organicMatter, double mineralFines, double meanSizeM) {
  /**
   * Judges a stream of wet sand.
   *
   * @param sand the stream
   * @return its quality
   * @throws IllegalArgumentException if the stream holds no sand
   */
  public static BedQuality of(Stream sand) {
    if (!(sand.sandKgps() > 0)) {
      throw new IllegalArgumentException("a stream without sand makes no bed");
    }
    double fines = sand.kgps(Constituents.MINERAL_FINES);
    double logSize = 0;
    for (SizeClass size : sand.sandClasses()) {
      logSize += size.massFraction() * Math.log(size.meanM());
    }
    return new BedQuality(
        sand.waterKgps() / sand.massKgps(),
        sand.organicShareOfDry(),
        fines / (fines + sand.sandKgps()),
        Math.exp(logSize));
  }
}
