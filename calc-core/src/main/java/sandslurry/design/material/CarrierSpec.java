package sandslurry.design.material;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Temperature;
import sandslurry.material.liquid.RheogramFit;
import sandslurry.material.liquid.Rheology;
import sandslurry.material.liquid.ViscometerReading;
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
   * A liquid whose rheology is known by its parameters.
   *
   * @param temperature its temperature
   * @param density its density
   * @param rheology its law
   * @param totalSolids dry solids without sand over mass without sand, if known: needed to follow a
   *     dilution
   */
  record RheologySpec(
      Quantity<Temperature> temperature,
      Quantity<Density> density,
      Rheology rheology,
      Optional<Quantity<Dimensionless>> totalSolids)
      implements CarrierSpec {}

  /**
   * A liquid whose rheology is fitted to readings of a viscometer.
   *
   * @param temperature its temperature in the line, at which it was also measured
   * @param density its density
   * @param readings the readings
   * @param weighting what the readings are equally good in
   * @param law the model asked for; absent means the one that the readings speak for most
   * @param totalSolids dry solids without sand over mass without sand, if known
   */
  record ReadingsSpec(
      Quantity<Temperature> temperature,
      Quantity<Density> density,
      List<ViscometerReading> readings,
      RheogramFit.Weighting weighting,
      Optional<String> law,
      Optional<Quantity<Dimensionless>> totalSolids)
      implements CarrierSpec {
    /** Copies the readings. */
    public ReadingsSpec {
      readings = List.copyOf(readings);
    }
  }

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
