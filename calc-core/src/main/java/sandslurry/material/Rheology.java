package sandslurry.material;

/** How a liquid resists shear: shear stress against shear rate, free of sand. */
public interface Rheology {
  /**
   * Shear stress at a shear rate.
   *
   * @param shearRatePs shear rate, positive [1/s]
   * @return shear stress [Pa]
   */
  double shearStressPa(double shearRatePs);

  /**
   * The stress that must be exceeded before the liquid flows.
   *
   * @return yield stress, 0 for a liquid without one [Pa]
   */
  double yieldStressPa();

  /**
   * Apparent viscosity at a shear rate.
   *
   * @param shearRatePs shear rate, positive [1/s]
   * @return shear stress over shear rate [Pa.s]
   */
  default double apparentViscosityPaS(double shearRatePs) {
    return shearStressPa(shearRatePs) / shearRatePs;
  }

  /**
   * The law and its parameters in words.
   *
   * @return for example "power law, K = 0.192 Pa.s^n, n = 0.562"
   */
  String describe();
}
