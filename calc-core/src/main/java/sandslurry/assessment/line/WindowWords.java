package sandslurry.assessment.line;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import sandslurry.assessment.line.OperatingWindow.Cause;
import sandslurry.assessment.line.OperatingWindow.End;
import sandslurry.assessment.line.OperatingWindow.Interval;
import sandslurry.fact.finding.Messages;
import sandslurry.fact.finding.Value;
import sandslurry.transport.deposition.DepositionJudgement;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/**
 * Says what sets the ends of an operating window.
 *
 * @param units the units
 */
public record WindowWords(UnitSystem units) {
  /**
   * An interval in a few words, with its ends rounded to the safe side.
   *
   * @param interval the interval
   * @return for example "16.0 to 22.5", in the unit that flow rates are shown in
   */
  public String range(Interval interval) {
    double low = interval.low().flowM3ps();
    Optional<String> high =
        interval.high().map(end -> bare(units.showAtMost(Kind.FLOW, end.flowM3ps())));
    if (low > 0) {
      String from = bare(units.showAtLeast(Kind.FLOW, low));
      return high.map(to -> from + " to " + to).orElse("from " + from);
    }
    return high.map(to -> "up to " + to).orElse("any");
  }

  private static String bare(String shown) {
    return shown.substring(0, shown.indexOf(' '));
  }

  /**
   * What happens below the lowest flow rate of an interval.
   *
   * @param low the lowest flow rate
   * @return a clause without a stop; empty where there is no lowest
   */
  public String below(End low) {
    if (low.cause() == Cause.NONE) {
      return "";
    }
    if (low.cause() != Cause.SETTLES) {
      return says(low.cause().clause, low);
    }
    return says(
        low.judged()
            .map(judged -> judged.lifting() ? "window-rises" : low.cause().clause)
            .orElse("window-lost"),
        low);
  }

  private String says(String clause, End end) {
    Map<String, Value> values = new HashMap<>();
    values.put("element", new Value.Name(end.element()));
    values.put("limit", new Value.Number(end.cause().kind, end.limit()));
    values.put("temperature", new Value.Number(Kind.TEMPERATURE, end.temperatureK()));
    end.judged()
        .filter(judged -> !judged.lifting())
        .map(DepositionJudgement::limiting)
        .ifPresent(
            limiting -> {
              values.put("model", new Value.Name(limiting.model().name()));
              values.put("grain", new Value.Number(Kind.GRAIN, limiting.sizeM()));
            });
    return Messages.of(WindowWords.class).says(clause, values, units);
  }

  /**
   * What limits the highest flow rate of an interval.
   *
   * @param high the highest flow rate
   * @return a clause without a stop
   */
  public String above(End high) {
    return says(high.cause().clause, high);
  }

  /**
   * That a pump does not reach the maximum flow rate of the design, which therefore fails nothing.
   *
   * @param high the highest flow rate of an interval
   * @param maximumM3ps the maximum flow rate [m3/s]
   * @return a clause to follow what limits it; empty where another thing does, or it is reached
   */
  public String beyond(End high, double maximumM3ps) {
    boolean pumpEnds = high.cause() == Cause.PUMP_HEAD || high.cause() == Cause.STROKES;
    return pumpEnds && maximumM3ps > high.flowM3ps()
        ? Messages.of(WindowWords.class)
            .says(
                "window-not-reached",
                Map.of("maximum", new Value.Number(Kind.FLOW, maximumM3ps)),
                units)
        : "";
  }
}
