package sandslurry.plant.account;

import sandslurry.material.sand.Gradation;
import sandslurry.material.sand.SizeClass;
import sandslurry.plant.Constituents;
import sandslurry.plant.Stream;

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

  /**
   * The mineral grains of a stream that pass a sieve. Within a class the mass is even in the
   * logarithm of the size; of the mineral fines it is only known that they pass 75 um.
   *
   * @param sand the stream
   * @param sieveM opening of the sieve, 75 um or more [m]
   * @return mass passing over mass of all mineral grains
   * @throws IllegalArgumentException if the stream holds no sand or the sieve is finer
   */
  public static double passing(Stream sand, double sieveM) {
    if (!(sand.sandKgps() > 0)) {
      throw new IllegalArgumentException("a stream without sand makes no bed");
    }
    if (!(sieveM >= Gradation.FINES_BOUNDARY_M * (1 - 1e-9))) {
      throw new IllegalArgumentException(
          "a sieve below 75 um is too fine but has " + sieveM + " m");
    }
    double fines = sand.kgps(Constituents.MINERAL_FINES);
    double passing = fines;
    for (SizeClass size : sand.sandClasses()) {
      double part =
          sieveM >= size.highM()
              ? 1
              : sieveM <= size.lowM()
                  ? 0
                  : Math.log(sieveM / size.lowM()) / Math.log(size.highM() / size.lowM());
      passing += part * size.massFraction() * sand.sandKgps();
    }
    return passing / (fines + sand.sandKgps());
  }
}
