package sandslurry.material;

import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Gradation;

/**
 * What carries the coarse sand: the liquid together with the fines that stay in it.
 *
 * @param liquid density and viscosity of the liquid with its fines
 * @param coarseVolumeFraction volume of sand that is not fines over volume of mixture
 * @param relativeViscosity viscosity of the vehicle over that of the clear liquid
 */
public record Vehicle(Liquid liquid, double coarseVolumeFraction, double relativeViscosity) {
  private static final Thomas1965 THICKENING = new Thomas1965();

  /**
   * Puts the fines of a sand into its liquid. Fines and sand are of one mineral, so that the share
   * of fines by mass is also their share by volume.
   *
   * @param clear the liquid without sand, at the shear rate of the case in hand
   * @param sandDensityKgM3 density of the mineral [kg/m3]
   * @param volumeFraction delivered volume of all sand over volume of mixture
   * @param finesMassShare mass of grains finer than {@link Gradation#FINES_BOUNDARY_M} over mass of
   *     all sand
   * @return the vehicle; without sand exactly the clear liquid
   * @throws IllegalArgumentException if the sand would lie packed or the share is no fraction
   */
  public static Vehicle of(
      Liquid clear, double sandDensityKgM3, double volumeFraction, double finesMassShare) {
    if (!(finesMassShare >= 0 && finesMassShare <= 1)) {
      throw new IllegalArgumentException(
          "the share of fines lies in 0 to 1 but was " + finesMassShare);
    }
    double coarse = (1 - finesMassShare) * Proportions.flowing(volumeFraction);
    double finesInVehicle = finesMassShare * volumeFraction / (1 - coarse);
    double density =
        Proportions.mixtureDensityKgM3(finesInVehicle, clear.densityKgM3(), sandDensityKgM3);
    double thickening = THICKENING.relativeViscosity(finesInVehicle).value();
    return new Vehicle(new Liquid(density, thickening * clear.viscosityPaS()), coarse, thickening);
  }
}
