package sandslurry.design;

import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Temperature;
import si.uom.quantity.Density;
import si.uom.quantity.DynamicViscosity;

/** What carries the sand, free of sand. */
public sealed interface CarrierSpec {
  /**
   * Temperature of the liquid in the line.
   *
   * @return the temperature
   */
  Quantity<Temperature> temperature();

  /**
   * Water.
   *
   * @param temperature its temperature
   */
  record WaterSpec(Quantity<Temperature> temperature) implements CarrierSpec {}

  /**
   * Manure liquor described by its solids.
   *
   * @param temperature its temperature
   * @param totalSolids dry solids without sand over mass without sand
   */
  record ManureSpec(Quantity<Temperature> temperature, Quantity<Dimensionless> totalSolids)
      implements CarrierSpec {}

  /**
   * A liquid whose density and viscosity were measured.
   *
   * @param temperature its temperature
   * @param density its density
   * @param viscosity its dynamic viscosity
   */
  record MeasuredSpec(
      Quantity<Temperature> temperature,
      Quantity<Density> density,
      Quantity<DynamicViscosity> viscosity)
      implements CarrierSpec {}
}
