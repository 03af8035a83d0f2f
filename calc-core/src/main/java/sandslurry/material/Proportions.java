package sandslurry.material;

import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/**
 * Shares of sand in a mixture. All concentrations are delivered ones: sand flow over mixture flow.
 *
 * <pre>
 * C_w = C s / (1 + C (s − 1)),   C = C_w / (s − C_w (s − 1)),   ρ_m = ρ (1 + C (s − 1))
 * </pre>
 *
 * <p>C volume fraction; C_w mass fraction; s = ρ_s/ρ density of the mineral over density of the
 * liquid; ρ_m density of the mixture [kg/m³]. The three follow from the balances of mass and
 * volume.
 */
public final class Proportions {
  /**
   * Volume fraction of sand that lies packed, at a porosity of 0.40 (from memory, unverified; loose
   * sand 0.38 to 0.45): a mixture with as much sand does not flow.
   */
  public static final double PACKED_VOLUME_FRACTION = 0.60;

  private Proportions() {}

  /**
   * Mass fraction of sand from its volume fraction.
   *
   * @param volumeFraction volume of sand over volume of mixture
   * @param liquidDensityKgM3 density of the liquid [kg/m3]
   * @param sandDensityKgM3 density of the mineral [kg/m3]
   * @return mass of sand over mass of mixture
   * @throws IllegalArgumentException if the sand would lie packed
   */
  public static double massFraction(
      double volumeFraction, double liquidDensityKgM3, double sandDensityKgM3) {
    return volumeFraction
        * positive("density of sand", sandDensityKgM3)
        / mixtureDensityKgM3(volumeFraction, liquidDensityKgM3, sandDensityKgM3);
  }

  /**
   * Volume fraction of sand from its mass fraction.
   *
   * @param massFraction mass of sand over mass of mixture
   * @param liquidDensityKgM3 density of the liquid [kg/m3]
   * @param sandDensityKgM3 density of the mineral [kg/m3]
   * @return volume of sand over volume of mixture, also of sand that lies packed
   * @throws IllegalArgumentException unless the mass fraction lies in 0 to 1
   */
  public static double volumeFraction(
      double massFraction, double liquidDensityKgM3, double sandDensityKgM3) {
    if (!(massFraction >= 0 && massFraction <= 1)) {
      throw new IllegalArgumentException("a mass fraction lies in 0 to 1 but was " + massFraction);
    }
    double sand = massFraction / positive("density of sand", sandDensityKgM3);
    double liquid = (1 - massFraction) / positive("density of the liquid", liquidDensityKgM3);
    return sand / (sand + liquid);
  }

  /**
   * Volume fraction of sand from the mass of sand that a mixture flow brings.
   *
   * @param sandKgps mass flow of dry sand [kg/s]
   * @param mixtureM3ps volume flow of liquid and sand together, positive [m3/s]
   * @param sandDensityKgM3 density of the mineral [kg/m3]
   * @return delivered volume of sand over volume of mixture; above 1 where there is more sand than
   *     mixture
   */
  public static double volumeFractionInMixtureFlow(
      double sandKgps, double mixtureM3ps, double sandDensityKgM3) {
    return notNegative("mass flow of sand", sandKgps)
        / (positive("density of sand", sandDensityKgM3) * mixtureM3ps);
  }

  /**
   * Density of a mixture.
   *
   * @param volumeFraction volume of sand over volume of mixture
   * @param liquidDensityKgM3 density of the liquid [kg/m3]
   * @param sandDensityKgM3 density of the mineral [kg/m3]
   * @return density [kg/m3]; exactly that of the liquid when there is no sand
   * @throws IllegalArgumentException if the sand would lie packed
   */
  public static double mixtureDensityKgM3(
      double volumeFraction, double liquidDensityKgM3, double sandDensityKgM3) {
    double liquid = positive("density of the liquid", liquidDensityKgM3);
    return liquid
        + flowing(volumeFraction) * (positive("density of sand", sandDensityKgM3) - liquid);
  }

  /**
   * Checks that a mixture can flow.
   *
   * @param volumeFraction volume of sand over volume of mixture
   * @return the same fraction
   * @throws IllegalArgumentException unless it lies in 0 to {@link #PACKED_VOLUME_FRACTION}
   */
  static double flowing(double volumeFraction) {
    if (!(volumeFraction >= 0)) {
      throw new IllegalArgumentException(
          "a volume fraction of sand cannot be " + volumeFraction + ": it is 0 or more");
    }
    if (!(volumeFraction < PACKED_VOLUME_FRACTION)) {
      throw new IllegalArgumentException(
          "sand of "
              + (Double.isFinite(volumeFraction)
                  ? UnitSystem.METRIC.show(Kind.PERCENT, volumeFraction)
                  : "infinite share")
              + " by volume lies packed and does not flow: it must be less than "
              + UnitSystem.METRIC.show(Kind.PERCENT, PACKED_VOLUME_FRACTION)
              + "; add liquid or take less sand");
    }
    return volumeFraction;
  }

  private static double positive(String what, double value) {
    if (!(value > 0)) {
      throw new IllegalArgumentException(what + " must be > 0 but was " + value);
    }
    return value;
  }

  private static double notNegative(String what, double value) {
    if (!(value >= 0)) {
      throw new IllegalArgumentException(what + " must be >= 0 but was " + value);
    }
    return value;
  }
}
