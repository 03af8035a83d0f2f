package sandslurry.design;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import sandslurry.design.criteria.Criteria;
import sandslurry.design.lane.LaneSpec;
import sandslurry.design.line.FlowSpec;
import sandslurry.design.line.RouteSpec;
import sandslurry.design.material.CarrierSpec;
import sandslurry.design.material.DilutionSpec;
import sandslurry.design.material.MixtureSpec;
import sandslurry.design.material.Sand;
import sandslurry.design.plant.PlantSpec;
import sandslurry.design.station.PumpSpec;
import sandslurry.design.station.ServiceSpec;
import sandslurry.units.UnitSystem;

/**
 * A checked design: what the user knows of one line with its pump, of one settling lane, and of the
 * plant from the pens to the storage.
 *
 * @param title what the design is called
 * @param units the units of the report
 * @param sand the bedding sand
 * @param carrier the liquid that carries it
 * @param mixture how much sand it brings; present when there is a line
 * @param dilution what the mixture might be diluted with, to see what that does to the line
 * @param flow the flows of the line; present exactly when there is a route
 * @param route the line
 * @param pump the pump, present only with a route
 * @param lane the settling lane
 * @param service what the line meets beside its design state
 * @param plant the way from the pens to the storage
 * @param criteria the margins
 */
public record Design(
    String title,
    UnitSystem units,
    Sand sand,
    CarrierSpec carrier,
    Optional<MixtureSpec> mixture,
    Optional<DilutionSpec> dilution,
    Optional<FlowSpec> flow,
    Optional<RouteSpec> route,
    Optional<PumpSpec> pump,
    Optional<LaneSpec> lane,
    ServiceSpec service,
    Optional<PlantSpec> plant,
    Criteria criteria) {
  /**
   * The same design with another liquid and another line.
   *
   * @param otherCarrier the liquid
   * @param otherRoute the line
   * @return the design
   */
  public Design with(CarrierSpec otherCarrier, Optional<RouteSpec> otherRoute) {
    return new Design(
        title,
        units,
        sand,
        otherCarrier,
        mixture,
        dilution,
        flow,
        otherRoute,
        pump,
        lane,
        service,
        plant,
        criteria);
  }

  /**
   * The same design with all that its line carries exchanged.
   *
   * @param otherSand the sand
   * @param otherCarrier the liquid
   * @param sandFraction volume fraction of the sand that the liquid brings, never more
   * @return the design
   */
  public Design carrying(
      Sand otherSand, CarrierSpec otherCarrier, Quantity<Dimensionless> sandFraction) {
    return new Design(
        title,
        units,
        otherSand,
        otherCarrier,
        Optional.of(new MixtureSpec.ByVolume(sandFraction)),
        dilution,
        flow.map(rates -> rates.withHighestSand(sandFraction)),
        route,
        pump,
        lane,
        service,
        plant,
        criteria);
  }

  /**
   * The same design without its line and all that belongs to it.
   *
   * @return the design
   */
  public Design withoutLine() {
    return new Design(
        title,
        units,
        sand,
        carrier,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        lane,
        service.withoutLine(),
        plant,
        criteria);
  }
}
