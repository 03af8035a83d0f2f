package sandslurry.assessment.states;

import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.line.LineModel;
import sandslurry.assessment.states.StateEvaluation.Evaluated;
import sandslurry.assessment.station.StateResult.Point;
import sandslurry.design.Design;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.design.station.PumpSpec;
import sandslurry.design.station.PumpSpec.PistonSpec;
import sandslurry.fact.finding.Findings;
import sandslurry.fact.finding.Found;
import sandslurry.fact.finding.Messages;
import sandslurry.fact.finding.Severity;
import sandslurry.units.Kind;

/** What would mend a state of the line. */
public final class StateCure {
  private StateCure() {}

  /**
   * What would mend a state, in numbers.
   *
   * @param design the design
   * @param state the state with what it was computed from
   * @return a sentence; empty when the state passes
   */
  public static String of(Design design, Evaluated state) {
    if (state.result().severity().compareTo(Severity.PASS) <= 0) {
      return "";
    }
    Found found =
        Messages.of(StateCure.class)
            .found(new Findings(design.units()), "worst-state", Severity.NOTE, "line")
            .with("state", state.result().name());
    if (state.model().isEmpty()) {
      return text(found, design.pump().isPresent() ? "another-pump" : "keep-out-of-state");
    }
    LineModel model = state.model().get();
    double most = 0;
    for (RunSpec run : model.route().runs()) {
      OptionalDouble flow = model.leastSafeFlowM3ps(run);
      if (flow.isEmpty()) {
        return text(found.with("run", run.name()), "no-flow-in-state");
      }
      most = Math.max(most, flow.getAsDouble());
    }
    Optional<Point> point = state.result().point();
    if (point.isEmpty() || point.get().flowM3ps() >= most) {
      // The flow rate carries the sand: what is amiss has a finding, and there its cure.
      return "";
    }
    double head = model.systemHeadM(most, state.materials().sandFraction(most));
    found.with("needed", Kind.FLOW, most).with("head", Kind.HEAD, head);
    if (state.group().isPresent() && head > 0) {
      OptionalDouble ratio = state.group().get().speedRatio(most, head);
      if (ratio.isEmpty()) {
        return text(found, "no-speed-gives-it");
      }
      double speed = design.pump().flatMap(PumpSpec::rotodynamic).orElseThrow().first().speedPs();
      found
          .with("speed", Kind.FREQUENCY, ratio.getAsDouble() * speed)
          .with("now", Kind.FREQUENCY, speed);
      return text(found, "speed-gives-it");
    }
    Optional<PistonSpec> piston = design.pump().flatMap(PumpSpec::piston);
    if (piston.isPresent() && point.get().driven()) {
      double rate = piston.get().strokeRatePs() * most / point.get().flowM3ps();
      return text(found.with("strokes", Kind.STROKES, rate), "strokes-give-it");
    }
    return text(found, "line-needs");
  }

  private static String text(Found found, String clause) {
    return found.cure(clause).finding().cure();
  }
}
