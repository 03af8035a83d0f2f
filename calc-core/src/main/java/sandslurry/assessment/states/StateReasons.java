package sandslurry.assessment.states;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import sandslurry.assessment.line.RunPoint;
import sandslurry.assessment.station.StateResult.PumpPoint;
import sandslurry.assessment.station.StateResult.SuctionPoint;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.design.station.PumpSpec.MotorSpec;
import sandslurry.fact.finding.Severity;
import sandslurry.pump.rotodynamic.OperatingRegion;
import sandslurry.transport.deposition.DepositionJudgement;
import sandslurry.transport.friction.ClearLiquid.Regime;
import sandslurry.units.Kind;
import sandslurry.units.Measure;
import sandslurry.units.UnitSystem;

/** What is amiss in a state of the line. */
final class StateReasons {
  private static final String NO_GROUND =
      "above the computed deposition velocity, but a correlation that counts requires more";

  private record Reason(Severity severity, String text) {}

  private final UnitSystem units;
  private final List<Reason> reasons = new ArrayList<>();

  StateReasons(UnitSystem units) {
    this.units = units;
  }

  private String show(Kind<?> kind, double si) {
    return units.show(kind, si);
  }

  private void add(Severity severity, String text) {
    reasons.add(new Reason(severity, text));
  }

  Severity severity() {
    return reasons.stream().map(Reason::severity).reduce(Severity.PASS, Severity::or);
  }

  /** The reasons, gravest first. */
  List<String> texts() {
    return reasons.stream()
        .sorted(Comparator.comparing(Reason::severity).reversed())
        .map(Reason::text)
        .toList();
  }

  /** The greatest pressure in a run against the rating of its pipe. */
  void pressure(RunSpec run, double pressurePa, OptionalDouble ratingPa, double share) {
    if (ratingPa.isPresent() && pressurePa > share * ratingPa.getAsDouble()) {
      boolean over = pressurePa > ratingPa.getAsDouble();
      add(
          over ? Severity.FAIL : Severity.CAUTION,
          run.name()
              + (over ? " is above its rating: " : " is near its rating: ")
              + show(Kind.PRESSURE, pressurePa)
              + " of "
              + show(Kind.PRESSURE, ratingPa.getAsDouble()));
    }
  }

  /** The pump may flush faster or slower than a bed asks. */
  void flush(double temperatureK, double flowM3ps, OptionalDouble clearingM3ps) {
    if (clearingM3ps.isEmpty() || flowM3ps < clearingM3ps.getAsDouble()) {
      add(
          Severity.CAUTION,
          "with water at "
              + show(Kind.TEMPERATURE, temperatureK)
              + " the pump gives "
              + show(Kind.FLOW, flowM3ps)
              + ", and a bed of this sand clears "
              + (clearingM3ps.isEmpty()
                  ? "at no flow"
                  : "from " + show(Kind.FLOW, clearingM3ps.getAsDouble())));
    }
  }

  void sand(RunPoint worst) {
    if (worst.severity() == Severity.PASS) {
      return;
    }
    String name = worst.run().name();
    if (worst.regime() != Regime.TURBULENT) {
      add(
          worst.severity(),
          "sand in "
              + name
              + ": the liquid flows "
              + worst.regime().words()
              + ", so turbulence does not carry it");
      return;
    }
    DepositionJudgement judged = worst.deposition().orElseThrow();
    double limit = judged.limitMps();
    double pass = judged.velocityToPassMps();
    if (worst.leastVelocityMps() >= pass) {
      add(worst.severity(), "sand in " + name + ": " + NO_GROUND);
      return;
    }
    boolean below = worst.leastVelocityMps() < limit;
    add(
        worst.severity(),
        (below ? "sand settles in " : "velocity short of its margin in ")
            + name
            + ": "
            + show(Kind.VELOCITY, worst.leastVelocityMps())
            + " against "
            + show(Kind.VELOCITY, below ? limit : pass));
  }

  void pump(PumpPoint pump) {
    if (pump.flowM3ps() == 0) {
      add(
          Severity.CAUTION,
          pump.name() + " is shut off: the others keep its check valve closed, and it heats up");
    } else if (pump.region().isPresent()) {
      region(pump, pump.region().get());
    }
    pump.suction().ifPresent(suction -> suction(pump, suction));
    pump.motor().ifPresent(motor -> motor(pump, motor));
  }

  private void region(PumpPoint pump, OperatingRegion region) {
    OperatingRegion.Place place = region.place(pump.flowM3ps());
    if (!place.allowable()) {
      add(
          Severity.CAUTION,
          pump.name()
              + " runs "
              + place.words()
              + ": "
              + show(Kind.FLOW, pump.flowM3ps())
              + ", "
              + show(Kind.PERCENT, pump.flowM3ps() / region.bestFlowM3ps())
              + " of its BEP flow");
    }
  }

  private void suction(PumpPoint pump, SuctionPoint suction) {
    if (suction.requiredM().isPresent()) {
      double required = suction.requiredM().getAsDouble();
      double needed = suction.margin().neededM(required);
      if (suction.availableM() < needed) {
        boolean cavitates = suction.availableM() < required;
        add(
            cavitates ? Severity.FAIL : Severity.CAUTION,
            pump.name()
                + (cavitates ? " cavitates: NPSH " : " is short of NPSH margin: ")
                + show(Kind.HEAD, suction.availableM())
                + " of "
                + show(Kind.HEAD, cavitates ? required : needed));
      }
    } else if (suction.availableM() < 0) {
      add(Severity.FAIL, pump.name() + " cannot be fed: the liquid boils in its suction line");
    }
    if (suction.severity().compareTo(Severity.PASS) > 0) {
      add(
          suction.severity(),
          "sand in the suction line of "
              + pump.name()
              + ": "
              + show(Kind.VELOCITY, suction.velocityMps())
              + (suction.fastEnough()
                  ? ", " + NO_GROUND
                  : suction.toPassMps().isPresent()
                      ? " against " + show(Kind.VELOCITY, suction.toPassMps().getAsDouble())
                      : ", not turbulent"));
    }
  }

  private void motor(PumpPoint pump, MotorSpec motor) {
    double rating = Measure.POWER.si(motor.rating());
    double most = rating * Measure.FRACTION.si(motor.serviceFactor());
    if (pump.shaftW() > rating) {
      boolean over = pump.shaftW() > most;
      add(
          over ? Severity.FAIL : Severity.CAUTION,
          pump.name()
              + (over ? " overloads its motor: " : " runs in the service factor of its motor: ")
              + show(Kind.POWER, pump.shaftW())
              + " of "
              + show(Kind.POWER, rating));
    }
  }
}
