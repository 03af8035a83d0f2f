package sandslurry.material.liquid;

import sandslurry.units.UnitSystem;

/**
 * How a liquid resists shear: shear stress against shear rate, free of sand.
 *
 * <p>All four models are cases of one law, <code>τ = τy + K γ̇ⁿ</code>, so a kernel that knows
 * {@link #yieldStressPa}, {@link #consistency} and {@link #index} knows them all.
 */
public sealed interface Rheology permits Newtonian, PowerLaw, Bingham, HerschelBulkley {
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
   * The factor K of the flowing part of the stress.
   *
   * @return K [Pa.s^n]; of a Newtonian liquid its viscosity, of a Bingham liquid its plastic
   *     viscosity
   */
  double consistency();

  /**
   * The power n of the flowing part of the stress.
   *
   * @return the flow index, 1 for a Newtonian and a Bingham liquid
   */
  double index();

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
   * The viscosity that is left when the yield stress is taken away, K γ̇ⁿ⁻¹: the same as {@link
   * #apparentViscosityPaS} for a liquid without yield stress.
   *
   * @param shearRatePs shear rate, positive [1/s]
   * @return (τ − τy)/γ̇ [Pa.s]
   */
  default double flowingViscosityPaS(double shearRatePs) {
    return consistency() * Math.pow(shearRatePs, index() - 1);
  }

  /**
   * The slope of the rheogram, n K γ̇ⁿ⁻¹: the viscosity that a small further shear in the direction
   * of the main shear meets.
   *
   * @param shearRatePs shear rate, positive [1/s]
   * @return dτ/dγ̇ [Pa.s]
   */
  default double tangentViscosityPaS(double shearRatePs) {
    return index() * flowingViscosityPaS(shearRatePs);
  }

  /**
   * The inverse of {@link #shearStressPa}: how fast the liquid shears under a stress, for example
   * at the wall of a pipe.
   *
   * @param shearStressPa shear stress, not negative [Pa]
   * @return shear rate, 0 up to the yield stress [1/s]
   */
  default double shearRatePs(double shearStressPa) {
    double above = shearStressPa - yieldStressPa();
    return above > 0 ? Math.pow(above / consistency(), 1 / index()) : 0;
  }

  /**
   * The same kind of liquid, thicker or thinner: every stress is multiplied.
   *
   * @param factor stress over the stress of this liquid at the same shear rate, positive
   * @return the liquid
   */
  Rheology thickened(double factor);

  /**
   * Whether the liquid has one viscosity, which is then its consistency.
   *
   * @return true for a Newtonian liquid
   */
  default boolean isNewtonian() {
    return false;
  }

  /**
   * The law and its parameters in words.
   *
   * @param units units in which a viscosity is written; stresses and consistencies are in SI
   * @return for example "power law, K = 0.192 Pa.s^n, n = 0.562"
   */
  String describe(UnitSystem units);
}
