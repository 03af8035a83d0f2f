package sandslurry.pipe.surge;

/**
 * A liquid with free gas in it, as a pressure wave meets it.
 *
 * <pre>1/K' = (1 − α)/K + α/p</pre>
 *
 * <p>K' bulk modulus of liquid and gas [Pa]; K that of the liquid [Pa]; α volume of free gas over
 * volume of mixture at the pressure of the line; p absolute pressure of the line [Pa], which is the
 * modulus of bubbles that keep their temperature. Form of Wylie and Streeter (1993), Fluid
 * Transients in Systems, Prentice Hall (from memory, unverified). It holds for small bubbles spread
 * evenly, some per cent at most; a pocket of gas is something else and may raise the surge.
 *
 * @param densityKgM3 density of the mixture [kg/m3]
 * @param bulkModulusPa K [Pa]
 * @param gasShare α, 0 for none
 * @param absolutePressurePa p [Pa]
 */
public record GassyLiquid(
    double densityKgM3, double bulkModulusPa, double gasShare, double absolutePressurePa) {
  /** Bulk modulus of water, 300 000 psi (common design value, from memory, unverified) [Pa]. */
  public static final double WATER_MODULUS_PA = 2.07e9;

  /** Checks that density, modulus and pressure are positive and the share of gas a fraction. */
  public GassyLiquid {
    if (!(densityKgM3 > 0 && Double.isFinite(densityKgM3))
        || !(bulkModulusPa > 0 && Double.isFinite(bulkModulusPa))
        || !(gasShare >= 0 && gasShare < 1)
        || !(absolutePressurePa > 0 && Double.isFinite(absolutePressurePa))) {
      throw new IllegalArgumentException(
          "a pressure wave needs a density, a modulus and a pressure > 0 and a share of gas of 0 to"
              + " 1 but has "
              + densityKgM3
              + " kg/m3, "
              + bulkModulusPa
              + " Pa, "
              + absolutePressurePa
              + " Pa and "
              + gasShare);
    }
  }

  /**
   * Water or a mixture on water, without gas.
   *
   * @param densityKgM3 density [kg/m3]
   * @return the liquid with {@link #WATER_MODULUS_PA}
   */
  static GassyLiquid gasFree(double densityKgM3) {
    return new GassyLiquid(densityKgM3, WATER_MODULUS_PA, 0, WATER_MODULUS_PA);
  }

  /**
   * Bulk modulus of liquid and gas together.
   *
   * @return K' [Pa]
   */
  double effectiveModulusPa() {
    return 1 / ((1 - gasShare) / bulkModulusPa + gasShare / absolutePressurePa);
  }
}
