package sandslurry.assessment.line;

import java.util.Optional;
import sandslurry.assessment.line.OperatingWindow.End;
import sandslurry.assessment.line.OperatingWindow.Interval;
import sandslurry.transport.deposition.DepositionJudgement;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** Says what sets the ends of an operating window. */
public final class WindowWords {
  private final UnitSystem units;

  /**
   * Words in some units.
   *
   * @param units the units
   */
  public WindowWords(UnitSystem units) {
    this.units = units;
  }

  private String show(Kind<?> kind, double si) {
    return units.show(kind, si);
  }

  /**
   * An interval in a few words, with its ends rounded to the safe side.
   *
   * @param interval the interval
   * @return for example "16.0 L/s to 22.5 L/s"
   */
  public String range(Interval interval) {
    double low = interval.low().flowM3ps();
    Optional<String> high = interval.high().map(end -> units.showAtMost(Kind.FLOW, end.flowM3ps()));
    if (low > 0) {
      String from = units.showAtLeast(Kind.FLOW, low);
      return high.map(to -> from + " to " + to).orElse("from " + from);
    }
    return high.map(to -> "up to " + to).orElse("any flow rate");
  }

  /**
   * What happens below the lowest flow rate of an interval.
   *
   * @param low the lowest flow rate
   * @return a clause without a stop; empty where there is no lowest
   */
  public String below(End low) {
    return switch (low.cause()) {
      case NONE -> "";
      case SINKS -> "the yield stress does not hold the sand to the outlet of " + low.element();
      default -> "sand settles in " + low.element() + " or its margin is lost" + required(low);
    };
  }

  private String required(End low) {
    return low.judged()
        .map(
            judged ->
                " ("
                    + show(Kind.VELOCITY, low.limit())
                    + " required"
                    + (judged.lifting() ? "" : limiting(judged))
                    + ", "
                    + show(Kind.TEMPERATURE, low.temperatureK())
                    + ")")
        .orElse("");
  }

  private String limiting(DepositionJudgement judged) {
    return ", "
        + judged.limiting().model().name()
        + ", grains of "
        + show(Kind.GRAIN, judged.limiting().sizeM());
  }

  /**
   * What limits the highest flow rate of an interval.
   *
   * @param high the highest flow rate
   * @return a clause without a stop
   */
  public String above(End high) {
    return switch (high.cause()) {
      case SHEARED -> "the yield stress no longer holds the sand in " + high.element();
      case PRESSURE ->
          "working pressure of "
              + high.element()
              + " above "
              + show(Kind.PRESSURE, high.limit())
              + " allowed";
      case WEAR -> "wear, faster than " + show(Kind.VELOCITY, high.limit());
      case PUMP_HEAD -> "the pump gives no more: its duty point";
      case CURVE_END -> "the pump curve ends";
      case REGION -> high.element() + " leaves its allowable operating region";
      case MOTOR ->
          "motor of "
              + high.element()
              + ", "
              + show(Kind.POWER, high.limit())
              + " with its service factor";
      case NPSH -> "NPSH available to " + high.element() + " is less than required with its margin";
      case NPSH_UNKNOWN -> "the NPSH that " + high.element() + " requires is not given";
      case STROKES -> "the pump gives no more at its stroke rate";
      case PRESSURE_LIMIT -> "pressure limit of the pump, " + show(Kind.PRESSURE, high.limit());
      default -> "";
    };
  }
}
