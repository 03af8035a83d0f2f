package sandslurry.material;

import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;
import sandslurry.material.sand.GrainShape;

/**
 * Sand in a liquid as the transport correlations see it, in plain SI: the liquid already carries
 * the fines, the sand is what is coarser.
 *
 * @param liquid the carrier with its fines
 * @param sandDensityKgM3 density of the mineral [kg/m3]
 * @param shape shape of the grains
 * @param d50M size that half of the sand by mass passes [m]
 * @param d85M size that 85 % of the sand by mass passes [m]
 * @param volumeFraction delivered volume of sand over volume of mixture, 0 for clear liquid
 */
public record Slurry(
    Liquid liquid,
    double sandDensityKgM3,
    GrainShape shape,
    double d50M,
    double d85M,
    double volumeFraction) {
  /** Checks the order of the sizes and the bounds of the fraction. */
  public Slurry {
    if (!(sandDensityKgM3 > liquid.densityKgM3())) {
      throw new IllegalArgumentException(
          "sand must be denser than its carrier but is "
              + sandDensityKgM3
              + " kg/m3 in "
              + liquid.densityKgM3()
              + " kg/m3");
    }
    if (!(d50M > 0 && d85M >= d50M)) {
      throw new IllegalArgumentException("need 0 < d50 <= d85 but have " + d50M + " m, " + d85M);
    }
    if (!(volumeFraction >= 0 && volumeFraction < 1)) {
      throw new IllegalArgumentException(
          "a volume fraction lies in 0 to 1 but was " + volumeFraction);
    }
  }

  /**
   * Relative density of the sand.
   *
   * @return density of the sand over density of the liquid
   */
  public double densityRatio() {
    return sandDensityKgM3 / liquid.densityKgM3();
  }

  /**
   * Density of the mixture.
   *
   * @return density [kg/m3]
   */
  public double mixtureDensityKgM3() {
    return liquid.densityKgM3() * (1 + volumeFraction * (densityRatio() - 1));
  }

  /**
   * The middle grain.
   *
   * @return a grain of size d50
   */
  public Grain d50Grain() {
    return new Grain(d50M, sandDensityKgM3, shape);
  }

  /**
   * The coarse grain.
   *
   * @return a grain of size d85
   */
  public Grain d85Grain() {
    return new Grain(d85M, sandDensityKgM3, shape);
  }

  /**
   * The same case for uniform sand of another size: how a graded sand is asked size by size.
   *
   * @param diameterM the size [m]
   * @return a slurry whose d50 and d85 are that size
   */
  public Slurry ofUniformSize(double diameterM) {
    return new Slurry(liquid, sandDensityKgM3, shape, diameterM, diameterM, volumeFraction);
  }

  /**
   * The same case at another concentration.
   *
   * @param fraction the volume fraction
   * @return the slurry
   */
  public Slurry withVolumeFraction(double fraction) {
    return new Slurry(liquid, sandDensityKgM3, shape, d50M, d85M, fraction);
  }
}
