package sandslurry.assessment.states;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import sandslurry.assessment.line.RunPoint;
import sandslurry.assessment.station.StateResult.PumpPoint;
import sandslurry.assessment.station.StateResult.SuctionPoint;
import sandslurry.design.criteria.Criteria;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.design.station.PumpSpec.MotorSpec;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Findings;
import sandslurry.fact.finding.Found;
import sandslurry.fact.finding.Messages;
import sandslurry.fact.finding.Severity;
import sandslurry.pump.rotodynamic.OperatingRegion;
import sandslurry.transport.deposition.DepositionJudgement;
import sandslurry.transport.friction.ClearLiquid.Regime;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** What is amiss in a state of the line. */
final class StateReasons {
  private final UnitSystem units;
  private final List<Found> reasons = new ArrayList<>();

  StateReasons(UnitSystem units) {
    this.units = units;
  }

  private Found add(Severity severity, String clause) {
    Found reason =
        Messages.of(StateReasons.class)
            .found(new Findings(units), "worst-state", severity, "line")
            .why(clause);
    reasons.add(reason);
    return reason;
  }

  Severity severity() {
    return reasons.stream()
        .map(reason -> reason.finding().severity())
        .reduce(Severity.PASS, Severity::or);
  }

  /** The reasons, gravest first. */
  List<String> texts() {
    return reasons.stream()
        .map(Found::finding)
        .sorted(Comparator.comparing(Finding::severity).reversed())
        .map(Finding::why)
        .toList();
  }

  /** The greatest pressure in a run against the rating of its pipe. */
  void pressure(RunSpec run, double pressurePa, double ratingPa, Criteria criteria) {
    Severity severity = criteria.pressure(pressurePa, ratingPa);
    if (severity != Severity.PASS) {
      add(severity, severity == Severity.FAIL ? "over-rating" : "near-rating")
          .with("run", run.name())
          .with("pressure", Kind.PRESSURE, pressurePa)
          .with("rating", Kind.PRESSURE, ratingPa);
    }
  }

  /** The pump may flush faster or slower than a bed asks. */
  void flush(double temperatureK, double flowM3ps, OptionalDouble clearingM3ps) {
    if (clearingM3ps.isEmpty() || flowM3ps < clearingM3ps.getAsDouble()) {
      Found found =
          add(Severity.CAUTION, clearingM3ps.isEmpty() ? "flush-clears-nothing" : "flush-too-slow")
              .with("temperature", Kind.TEMPERATURE, temperatureK)
              .with("flow", Kind.FLOW, flowM3ps);
      clearingM3ps.ifPresent(clears -> found.with("clears", Kind.FLOW, clears));
    }
  }

  void sand(RunPoint worst) {
    if (worst.severity() == Severity.PASS) {
      return;
    }
    String name = worst.pipe().spec().name();
    if (worst.regime() != Regime.TURBULENT) {
      add(worst.severity(), "sand-not-turbulent")
          .with("run", name)
          .with("regime", worst.regime().words());
      return;
    }
    DepositionJudgement judged = worst.deposition().orElseThrow();
    double limit = judged.limitMps();
    double pass = judged.velocityToPassMps();
    if (worst.leastVelocityMps() >= pass) {
      add(worst.severity(), "sand-another-correlation").with("run", name);
      return;
    }
    boolean below = worst.leastVelocityMps() < limit;
    add(worst.severity(), below ? "sand-settles" : "sand-short-of-margin")
        .with("run", name)
        .with("velocity", Kind.VELOCITY, worst.leastVelocityMps())
        .with("against", Kind.VELOCITY, below ? limit : pass);
  }

  void pump(PumpPoint pump) {
    if (pump.flowM3ps() == 0) {
      add(Severity.CAUTION, "pump-shut-off").with("pump", pump.name());
    } else if (pump.region().isPresent()) {
      region(pump, pump.region().get());
    }
    pump.suction().ifPresent(suction -> suction(pump, suction));
    pump.motor().ifPresent(motor -> motor(pump, motor));
  }

  private void region(PumpPoint pump, OperatingRegion region) {
    OperatingRegion.Place place = region.place(pump.flowM3ps());
    if (!place.allowable()) {
      add(Severity.CAUTION, "pump-outside-region")
          .with("pump", pump.name())
          .with("place", place.words())
          .with("flow", Kind.FLOW, pump.flowM3ps())
          .with("share", Kind.PERCENT, pump.flowM3ps() / region.bestFlowM3ps());
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
                cavitates ? "pump-cavitates" : "pump-short-of-npsh")
            .with("pump", pump.name())
            .with("available", Kind.HEAD, suction.availableM())
            .with("required", Kind.HEAD, cavitates ? required : needed);
      }
    } else if (suction.availableM() < 0) {
      add(Severity.FAIL, "suction-boils").with("pump", pump.name());
    }
    if (suction.severity().compareTo(Severity.PASS) > 0) {
      Found found =
          add(
                  suction.severity(),
                  suction.fastEnough()
                      ? "state-suction-another"
                      : suction.toPassMps().isPresent()
                          ? "state-suction-slow"
                          : "state-suction-not-turbulent")
              .with("pump", pump.name())
              .with("velocity", Kind.VELOCITY, suction.velocityMps());
      suction.toPassMps().ifPresent(pass -> found.with("against", Kind.VELOCITY, pass));
    }
  }

  private void motor(PumpPoint pump, MotorSpec motor) {
    Severity severity = motor.under(pump.shaftW());
    if (severity != Severity.PASS) {
      add(severity, severity == Severity.FAIL ? "motor-over" : "motor-in-factor")
          .with("pump", pump.name())
          .with("shaft", Kind.POWER, pump.shaftW())
          .with("rating", Kind.POWER, motor.ratingW());
    }
  }
}
