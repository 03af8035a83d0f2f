package sandslurry.material.liquid;

import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/**
 * A liquid of constant viscosity: τ = μ γ̇.
 *
 * @param viscosityPaS dynamic viscosity [Pa.s]
 */
public record Newtonian(double viscosityPaS) implements Rheology {
  /** Checks that the viscosity is a positive number. */
  public Newtonian {
    if (!(viscosityPaS > 0)) {
      throw new IllegalArgumentException("viscosity must be > 0 but was " + viscosityPaS + " Pa.s");
    }
  }

  @Override
  public boolean isNewtonian() {
    return true;
  }

  @Override
  public double shearStressPa(double shearRatePs) {
    return viscosityPaS * shearRatePs;
  }

  @Override
  public double apparentViscosityPaS(double shearRatePs) {
    return viscosityPaS;
  }

  @Override
  public double yieldStressPa() {
    return 0;
  }

  @Override
  public double consistency() {
    return viscosityPaS;
  }

  @Override
  public double index() {
    return 1;
  }

  @Override
  public Rheology thickened(double factor) {
    return new Newtonian(factor * viscosityPaS);
  }

  @Override
  public String describe(UnitSystem units) {
    return "Newtonian, " + units.show(Kind.VISCOSITY, viscosityPaS);
  }
}
