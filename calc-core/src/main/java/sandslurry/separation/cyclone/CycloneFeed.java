package sandslurry.separation.cyclone;

import sandslurry.material.liquid.Liquid;
import sandslurry.separation.Numbers;

/**
 * What flows into one hydrocyclone.
 *
 * @param flowM3ps flow of the mixture into one cyclone [m3/s]
 * @param liquid the liquor without the sand
 * @param volumeFraction volume of sand over volume of mixture, 0 to below 1
 * @param sandDensityKgM3 density of the mineral [kg/m3]
 */
public record CycloneFeed(
    double flowM3ps, Liquid liquid, double volumeFraction, double sandDensityKgM3) {
  /** Checks every bound. */
  public CycloneFeed {
    Numbers.positive("the flow", flowM3ps, "m3/s");
    if (!(volumeFraction >= 0 && volumeFraction < 1)) {
      throw new IllegalArgumentException(
          "the volume fraction of sand lies in 0 to below 1 but was " + volumeFraction);
    }
    if (!(sandDensityKgM3 > liquid.densityKgM3() && Double.isFinite(sandDensityKgM3))) {
      throw new IllegalArgumentException(
          "sand must be denser than its liquor but is " + sandDensityKgM3 + " kg/m3");
    }
  }

  /**
   * Density of the mixture.
   *
   * @return the density [kg/m3]
   */
  double mixtureDensityKgM3() {
    return liquid.densityKgM3() + volumeFraction * (sandDensityKgM3 - liquid.densityKgM3());
  }
}
