package sandslurry.material.liquid;

/**
 * What a Newtonian correlation needs of a liquid, in plain SI.
 *
 * @param densityKgM3 density [kg/m3]
 * @param viscosityPaS dynamic viscosity; of a liquid whose viscosity depends on the shear rate, the
 *     apparent viscosity at the shear rate of the case in hand [Pa.s]
 */
public record Liquid(double densityKgM3, double viscosityPaS) {
  /** Checks that both values are positive numbers. */
  public Liquid {
    if (!(densityKgM3 > 0) || !(viscosityPaS > 0)) {
      throw new IllegalArgumentException(
          "a liquid needs a positive density and viscosity but has "
              + densityKgM3
              + " kg/m3 and "
              + viscosityPaS
              + " Pa.s");
    }
  }

  /**
   * Kinematic viscosity.
   *
   * @return viscosity over density [m2/s]
   */
  public double kinematicViscosityM2ps() {
    return viscosityPaS / densityKgM3;
  }
}
