package sandslurry.material.liquid;

import java.util.Locale;
import sandslurry.units.UnitSystem;

/**
 * A shear-thinning liquid by the law of Ostwald and de Waele: τ = K γ̇ⁿ.
 *
 * @param consistency K [Pa.s^n]; the unit depends on n, which is why it is a plain number
 * @param index flow index n, 1 for a Newtonian liquid
 */
public record PowerLaw(double consistency, double index) implements Rheology {
  /** Checks that both parameters are positive numbers. */
  public PowerLaw {
    if (!(consistency > 0) || !(index > 0)) {
      throw new IllegalArgumentException(
          "a power law needs K > 0 and n > 0 but has " + consistency + " and " + index);
    }
  }

  @Override
  public double shearStressPa(double shearRatePs) {
    return consistency * Math.pow(shearRatePs, index);
  }

  @Override
  public double yieldStressPa() {
    return 0;
  }

  @Override
  public Rheology thickened(double factor) {
    return new PowerLaw(factor * consistency, index);
  }

  @Override
  public String describe(UnitSystem units) {
    return String.format(Locale.ROOT, "power law, K = %.4g Pa.s^n, n = %.3f", consistency, index);
  }
}
