package sandslurry.assessment.states;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.station.PumpEvaluation.Change;
import sandslurry.assessment.station.PumpInLiquid;
import sandslurry.design.Design;
import sandslurry.design.line.RouteSpec;
import sandslurry.design.material.CarrierSpec;
import sandslurry.design.material.CarrierSpec.ManureSpec;
import sandslurry.design.station.PumpSpec.RunningPump;

/**
 * A state in which the line is to be evaluated.
 *
 * @param name what it is called
 * @param design the design, with the liquid and the level of the pit of this state
 * @param sandFraction volume fraction of sand in place of that of the design
 * @param pumps what differs in the pumps
 * @param flush whether water without sand flows
 */
record StateVariant(
    String name, Design design, OptionalDouble sandFraction, Change pumps, boolean flush) {
  static StateVariant named(String name, Design design) {
    return new StateVariant(name, design, OptionalDouble.empty(), Change.NONE, false);
  }

  StateVariant called(String other) {
    return new StateVariant(other, design, sandFraction, pumps, flush);
  }

  private StateVariant of(Design other) {
    return new StateVariant(name, other, sandFraction, pumps, flush);
  }

  StateVariant with(CarrierSpec carrier) {
    return of(design.with(carrier, design.lines()));
  }

  /** A state of manure with other solids; no other liquid tells its solids. */
  StateVariant withSolids(double solids) {
    return design
        .carrier()
        .manure()
        .map(manure -> with(new ManureSpec(manure.temperatureK(), solids)))
        .orElse(this);
  }

  /** A state of another temperature; a liquid with numbers of its own keeps them. */
  StateVariant withTemperature(double temperature) {
    CarrierSpec there = design.carrier().at(temperature);
    return there == design.carrier() ? this : with(there);
  }

  StateVariant withSand(double fraction) {
    return new StateVariant(name, design, OptionalDouble.of(fraction), pumps, flush);
  }

  StateVariant withLevel(double level) {
    RouteSpec route = design.oneLine().route();
    return of(
        design.with(design.carrier(), new RouteSpec(level, route.outletHeadM(), route.runs())));
  }

  private StateVariant with(Change other) {
    return new StateVariant(name, design, sandFraction, other, flush);
  }

  StateVariant withWear(double share) {
    return with(new Change(pumps.pumps(), pumps.choice(), OptionalDouble.of(share)));
  }

  StateVariant withPumps(List<RunningPump> running) {
    return with(new Change(Optional.of(running), pumps.choice(), pumps.worn()));
  }

  StateVariant believingSeverest() {
    return with(new Change(pumps.pumps(), PumpInLiquid.Choice.SEVEREST, pumps.worn()));
  }

  StateVariant withWater() {
    return new StateVariant(name, design, sandFraction, pumps, true);
  }
}
