package sandslurry.design;

import java.util.List;
import java.util.Optional;
import sandslurry.design.criteria.Criteria;
import sandslurry.design.lane.LaneSpec;
import sandslurry.design.line.RouteSpec;
import sandslurry.design.material.CarrierSpec;
import sandslurry.design.material.Sand;
import sandslurry.design.plant.PlantSpec;
import sandslurry.design.station.FeedSpec;
import sandslurry.design.station.PumpSpec;
import sandslurry.design.station.ServiceSpec;
import sandslurry.units.UnitSystem;

/**
 * A checked design: what the user knows of lines with their pumps, of one settling lane, and of the
 * plant from the pens to the storage.
 *
 * @param title what the design is called
 * @param units the units of the report
 * @param sand the bedding sand
 * @param carrier the liquid that carries it
 * @param lines the lines, in the order of the file
 * @param lane the settling lane
 * @param feed a screw conveyor and a gravity pipe
 * @param plant the way from the pens to the storage
 * @param criteria the margins
 */
public record Design(
    String title,
    UnitSystem units,
    Sand sand,
    CarrierSpec carrier,
    List<LineSpec> lines,
    Optional<LaneSpec> lane,
    FeedSpec feed,
    Optional<PlantSpec> plant,
    Criteria criteria) {
  /** Copies the lists. */
  public Design {
    lines = List.copyOf(lines);
  }

  /**
   * The line of a design of one line. Each of several is judged in a design of its own.
   *
   * @return the line; empty when there is none, or several
   */
  public Optional<LineSpec> line() {
    return lines.size() == 1 ? Optional.of(lines.get(0)) : Optional.empty();
  }

  /**
   * The line, where there is known to be one.
   *
   * @return the line
   * @throws java.util.NoSuchElementException where there is none, or several
   */
  public LineSpec oneLine() {
    return line().orElseThrow();
  }

  /**
   * The pump of the one line.
   *
   * @return the pump that drives it
   */
  public Optional<PumpSpec> pump() {
    return line().flatMap(LineSpec::pump);
  }

  /**
   * What the one line meets beside its design state.
   *
   * @return nothing without a line
   */
  public ServiceSpec service() {
    return line().map(LineSpec::service).orElse(ServiceSpec.NONE);
  }

  /**
   * The same design with another liquid and other lines.
   *
   * @param otherCarrier the liquid
   * @param otherLines the lines
   * @return the design
   */
  public Design with(CarrierSpec otherCarrier, List<LineSpec> otherLines) {
    return new Design(title, units, sand, otherCarrier, otherLines, lane, feed, plant, criteria);
  }

  /**
   * The same design with another liquid and another route of its line.
   *
   * @param otherCarrier the liquid
   * @param otherRoute the route
   * @return the design
   */
  public Design with(CarrierSpec otherCarrier, RouteSpec otherRoute) {
    return with(otherCarrier, lines.stream().map(line -> line.on(otherRoute)).toList());
  }

  /**
   * The same design with all that its line carries exchanged.
   *
   * @param otherSand the sand
   * @param otherCarrier the liquid
   * @param sandFraction volume fraction of the sand that the liquid brings, never more
   * @return the design
   */
  public Design carrying(Sand otherSand, CarrierSpec otherCarrier, double sandFraction) {
    return new Design(
        title,
        units,
        otherSand,
        otherCarrier,
        lines.stream().map(line -> line.carrying(sandFraction)).toList(),
        lane,
        feed,
        plant,
        criteria);
  }

  /**
   * A design of one of the lines beside the plant, in which it is judged.
   *
   * @param one the line
   * @return the design with that line alone, without settling lane, screw and gravity pipe
   */
  public Design ofLine(LineSpec one) {
    return new Design(
        title,
        units,
        sand,
        carrier,
        List.of(one),
        Optional.empty(),
        FeedSpec.NONE,
        plant,
        criteria);
  }

  /**
   * The same design without its lines.
   *
   * @return the design
   */
  public Design withoutLine() {
    return with(carrier, List.of());
  }
}
