package sandslurry.design;

import java.util.Optional;
import sandslurry.design.line.FlowSpec;
import sandslurry.design.line.RouteSpec;
import sandslurry.design.material.DilutionSpec;
import sandslurry.design.material.MixtureSpec;
import sandslurry.design.station.PumpSpec;
import sandslurry.design.station.ServiceSpec;

/**
 * A line with all that belongs to it.
 *
 * @param name what it is called; no two lines of a design have the same name
 * @param mixture how much sand it carries, or which stream of the plant
 * @param dilution what the mixture might be diluted with, to see what that does to the line
 * @param flow its flow rates
 * @param route its pipes
 * @param pump the pump that drives it
 * @param service what it meets beside its design state
 */
public record LineSpec(
    String name,
    MixtureSpec mixture,
    Optional<DilutionSpec> dilution,
    FlowSpec flow,
    RouteSpec route,
    Optional<PumpSpec> pump,
    ServiceSpec service) {
  /**
   * The stream of the plant that the line carries.
   *
   * @return its name; empty where the mixture is given
   */
  public Optional<String> stream() {
    return mixture.ofStream().map(MixtureSpec.OfStream::stream);
  }

  /**
   * The same line on another route.
   *
   * @param other the route
   * @return the line
   */
  LineSpec on(RouteSpec other) {
    return new LineSpec(name, mixture, dilution, flow, other, pump, service);
  }

  /**
   * The same line with so much sand, and never more.
   *
   * @param sandFraction volume fraction of the sand
   * @return the line
   */
  LineSpec carrying(double sandFraction) {
    return new LineSpec(
        name,
        new MixtureSpec.ByVolume(sandFraction),
        dilution,
        flow.withHighestSand(sandFraction),
        route,
        pump,
        service);
  }
}
