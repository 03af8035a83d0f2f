package sandslurry.material.liquid;

import java.util.Locale;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/**
 * A liquid that is solid up to its yield stress and of constant slope beyond it: τ = τy + μp γ̇.
 *
 * @param yieldStressPa yield stress τy [Pa]
 * @param plasticViscosityPaS plastic viscosity μp, the slope of the rheogram [Pa.s]
 */
public record Bingham(double yieldStressPa, double plasticViscosityPaS) implements Rheology {
  /** Checks that the yield stress is not negative and the viscosity positive. */
  public Bingham {
    if (!(yieldStressPa >= 0 && Double.isFinite(yieldStressPa))
        || !(plasticViscosityPaS > 0 && Double.isFinite(plasticViscosityPaS))) {
      throw new IllegalArgumentException(
          "a Bingham liquid needs a yield stress >= 0 and a plastic viscosity > 0 but has "
              + yieldStressPa
              + " Pa and "
              + plasticViscosityPaS
              + " Pa.s");
    }
  }

  @Override
  public double shearStressPa(double shearRatePs) {
    return yieldStressPa + plasticViscosityPaS * shearRatePs;
  }

  @Override
  public double consistency() {
    return plasticViscosityPaS;
  }

  @Override
  public double index() {
    return 1;
  }

  @Override
  public Rheology thickened(double factor) {
    return new Bingham(factor * yieldStressPa, factor * plasticViscosityPaS);
  }

  @Override
  public String describe(UnitSystem units) {
    return String.format(
        Locale.ROOT,
        "Bingham, yield stress %.4g Pa, plastic viscosity %s",
        yieldStressPa,
        units.show(Kind.VISCOSITY, plasticViscosityPaS));
  }
}
