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
import sandslurry.fact.finding.Severity;
import sandslurry.units.Kind;
import sandslurry.units.Measure;
import sandslurry.units.UnitSystem;

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
    UnitSystem units = design.units();
    if (state.result().severity().compareTo(Severity.PASS) <= 0) {
      return "";
    }
    if (state.model().isEmpty()) {
      return design.pump().isPresent()
          ? "Choose a pump whose curve meets the line in this state too, or keep the line out of"
              + " it."
          : "Keep the line out of this state.";
    }
    LineModel model = state.model().get();
    double most = 0;
    for (RunSpec run : model.route().runs()) {
      OptionalDouble flow = model.leastSafeFlowM3ps(run);
      if (flow.isEmpty()) {
        return "No flow rate through " + run.name() + " carries its sand in this state.";
      }
      most = Math.max(most, flow.getAsDouble());
    }
    Optional<Point> point = state.result().point();
    if (point.isEmpty() || point.get().flowM3ps() >= most) {
      // The flow rate carries the sand: what is amiss has a finding, and there its cure.
      return "";
    }
    double fraction = state.materials().sandFraction(most);
    double head = model.systemHeadM(most, fraction);
    StringBuilder text =
        new StringBuilder("In this state the line needs ")
            .append(units.showAtLeast(Kind.FLOW, most))
            .append(" at ")
            .append(units.showAtLeast(Kind.HEAD, head))
            .append(" of slurry");
    Optional<PistonSpec> piston = design.pump().flatMap(PumpSpec::piston);
    if (state.group().isPresent() && head > 0) {
      OptionalDouble ratio = state.group().get().speedRatio(most, head);
      double speed =
          Measure.FREQUENCY.si(
              design.pump().flatMap(PumpSpec::rotodynamic).orElseThrow().first().speed());
      if (ratio.isPresent()) {
        text.append("; a speed of ")
            .append(units.showAtLeast(Kind.FREQUENCY, ratio.getAsDouble() * speed))
            .append(" instead of ")
            .append(units.show(Kind.FREQUENCY, speed))
            .append(" gives it (check motor, NPSH and the maker's highest speed)");
      } else {
        text.append("; no speed of these pumps gives it");
      }
    } else if (piston.isPresent() && point.get().driven()) {
      double rate = Measure.FREQUENCY.si(piston.get().strokeRate()) * most / point.get().flowM3ps();
      text.append("; ").append(units.showAtLeast(Kind.FREQUENCY, rate)).append(" strokes give it");
    }
    return text.append('.').toString();
  }
}
