package sandslurry.assessment.line;

import sandslurry.assessment.materials.Materials;
import sandslurry.material.Vehicle;
import sandslurry.material.liquid.Rheology;

/**
 * What fills a line at one concentration of sand, whatever its flow rate: the liquid with its
 * fines, and the coarse sand in it.
 *
 * @param sandFraction volume fraction of all sand
 * @param coarseFraction volume fraction of the sand that is no part of the liquid
 * @param relativeViscosity what the fines multiply every stress of the carrier by
 * @param liquidDensityKgM3 density of carrier and fines [kg/m3]
 * @param densityKgM3 density of the mixture [kg/m3]
 * @param rheology carrier with its fines
 */
public record LineMixture(
    double sandFraction,
    double coarseFraction,
    double relativeViscosity,
    double liquidDensityKgM3,
    double densityKgM3,
    Rheology rheology) {
  private static final double ANY_SHEAR_RATE_PS = 1;

  static LineMixture of(Materials materials, double sandFraction) {
    // Of the vehicle only its viscosity depends on the shear rate.
    Vehicle vehicle = materials.vehicle(ANY_SHEAR_RATE_PS, sandFraction);
    return new LineMixture(
        sandFraction,
        vehicle.coarseVolumeFraction(),
        vehicle.relativeViscosity(),
        vehicle.liquid().densityKgM3(),
        materials.mixtureDensityKgM3(sandFraction),
        materials.carrier().rheology().thickened(vehicle.relativeViscosity()));
  }
}
