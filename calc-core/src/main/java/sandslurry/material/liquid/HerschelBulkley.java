package sandslurry.material.liquid;

import java.util.Locale;
import sandslurry.units.UnitSystem;

/**
 * A liquid with a yield stress that thins with shear beyond it: τ = τy + K γ̇ⁿ.
 *
 * @param yieldStressPa yield stress τy [Pa]
 * @param consistency K [Pa.s^n]; the unit depends on n, which is why it is a plain number
 * @param index flow index n
 */
public record HerschelBulkley(double yieldStressPa, double consistency, double index)
    implements Rheology {
  /** Checks that the yield stress is not negative and the other two parameters positive. */
  public HerschelBulkley {
    if (!(yieldStressPa >= 0 && Double.isFinite(yieldStressPa))
        || !(consistency > 0 && Double.isFinite(consistency))
        || !(index > 0 && Double.isFinite(index))) {
      throw new IllegalArgumentException(
          "a Herschel-Bulkley liquid needs a yield stress >= 0, K > 0 and n > 0 but has "
              + yieldStressPa
              + " Pa, "
              + consistency
              + " and "
              + index);
    }
  }

  @Override
  public double shearStressPa(double shearRatePs) {
    return yieldStressPa + consistency * Math.pow(shearRatePs, index);
  }

  @Override
  public Rheology thickened(double factor) {
    return new HerschelBulkley(factor * yieldStressPa, factor * consistency, index);
  }

  @Override
  public String describe(UnitSystem units) {
    return String.format(
        Locale.ROOT,
        "Herschel-Bulkley, yield stress %.4g Pa, K = %.4g Pa.s^n, n = %.3f",
        yieldStressPa,
        consistency,
        index);
  }
}
