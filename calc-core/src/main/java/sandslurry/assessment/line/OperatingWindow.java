package sandslurry.assessment.line;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.transport.deposition.DepositionJudgement;
import sandslurry.units.Kind;

/**
 * The flow rates at which a line works: sand is carried with its margin in every run, at every
 * temperature judged, and neither pipe nor pump is asked for more than it bears. There may be
 * several intervals: thick liquor may carry sand slowly, by its yield stress, then not, and then
 * fast, by its turbulence.
 *
 * @param designM3ps the design flow rate [m3/s]
 * @param intervals the flow rates at which the line works, ascending; empty when there are none
 * @param carrying the flow rates that carry the sand, whatever pipe and pump bear, ascending
 * @param blocked what pipe or pump does not bear at the lowest flow rate that carries the sand;
 *     empty unless that is why there are no intervals
 */
public record OperatingWindow(
    double designM3ps, List<Interval> intervals, List<Interval> carrying, Optional<End> blocked) {
  /** Copies the lists. */
  public OperatingWindow {
    intervals = List.copyOf(intervals);
    carrying = List.copyOf(carrying);
  }

  /** What sets an end of an interval. */
  public enum Cause {
    /** Lower end: nothing does, there is no lowest flow rate. */
    NONE("window-any", Kind.NUMBER),
    /** Lower end: sand settles in turbulent flow, or its margin is lost. */
    SETTLES("window-settles", Kind.VELOCITY),
    /** Lower end: below it the flow is not surely turbulent. */
    NOT_TURBULENT("window-not-turbulent", Kind.VELOCITY),
    /**
     * Lower end: the liquid flows too slowly to hold the sand by its yield stress to the outlet.
     */
    SINKS("window-sinks", Kind.STRESS),
    /** Lower end: below it the liquid column breaks at a high point. */
    COLUMN_BREAKS("window-column-breaks", Kind.PRESSURE),
    /** Upper end: the yield stress holds the sand no longer, and turbulence does not yet. */
    SHEARED("window-sheared", Kind.STRESS),
    /** Upper end: the working pressure exceeds what may be used of the rating of a run. */
    PRESSURE("window-pressure", Kind.PRESSURE),
    /** Upper end: the velocity exceeds the limit set for wear. */
    WEAR("window-wear", Kind.VELOCITY),
    /** Upper end: the pumps give no more head than the line asks for. */
    PUMP_HEAD("window-pump-head", Kind.HEAD),
    /** Upper end: the points of the pump curve end. */
    CURVE_END("window-curve-end", Kind.FLOW),
    /** Upper end: a pump leaves its allowable operating region. */
    REGION("window-region", Kind.FLOW),
    /** Upper end: a motor is at its service factor. */
    MOTOR("window-motor", Kind.POWER),
    /** Upper end: less NPSH is available than a pump requires with its margin. */
    NPSH("window-npsh", Kind.HEAD),
    /** Upper end: the NPSH that a pump requires is not given for higher flow rates. */
    NPSH_UNKNOWN("window-npsh-unknown", Kind.HEAD),
    /** Upper end: the stroke rate of a piston pump. */
    STROKES("window-strokes", Kind.FLOW),
    /** Upper end: the pressure limit of a piston pump. */
    PRESSURE_LIMIT("window-pressure-limit", Kind.PRESSURE);

    /** Key of the clause that says it. */
    final String clause;

    /** What its limit is. */
    final Kind<?> kind;

    Cause(String clause, Kind<?> kind) {
      this.clause = clause;
      this.kind = kind;
    }
  }

  /**
   * An end of an interval.
   *
   * @param flowM3ps the flow rate; 0 where there is no lowest [m3/s]
   * @param cause what sets it
   * @param element the run or pump concerned; empty without one
   * @param actual what there is at that flow rate, in SI: velocity, pressure, power, head or flow
   *     rate, as the cause says
   * @param limit what it is held against
   * @param temperatureK temperature of the liquid [K]
   * @param judged the judgement on deposition where sand settles in turbulent flow
   */
  public record End(
      double flowM3ps,
      Cause cause,
      String element,
      double actual,
      double limit,
      double temperatureK,
      Optional<DepositionJudgement> judged) {}

  /**
   * Flow rates without a gap.
   *
   * @param low the lowest
   * @param high the highest; empty when nothing known limits it
   */
  public record Interval(End low, Optional<End> high) {
    /**
     * The highest flow rate.
     *
     * @return infinite when nothing known limits it [m3/s]
     */
    public double highM3ps() {
      return high.map(End::flowM3ps).orElse(Double.POSITIVE_INFINITY);
    }

    /** How far off a flow rate lies, as a logarithm; 0 inside. */
    private double distance(double flowM3ps) {
      return Math.max(
          0, Math.max(Math.log(low.flowM3ps() / flowM3ps), Math.log(flowM3ps / highM3ps())));
    }
  }

  /**
   * The interval that matters first.
   *
   * @return the one that holds the design flow rate, or else the nearest; empty without any
   */
  public Optional<Interval> main() {
    return nearest(intervals);
  }

  /**
   * The next one.
   *
   * @return of the other intervals that which is nearest to the design flow rate
   */
  public Optional<Interval> other() {
    return nearest(intervals.stream().filter(i -> !i.equals(main().orElseThrow())).toList());
  }

  private Optional<Interval> nearest(List<Interval> of) {
    return of.stream().min(Comparator.comparingDouble(i -> i.distance(designM3ps)));
  }

  /**
   * The lowest flow rate that carries the sand with its margin, whatever pipe and pump bear.
   *
   * @return that of the interval of {@link #carrying} nearest to the design flow rate; empty when
   *     no flow rate does [m3/s]
   */
  public OptionalDouble carriesFromM3ps() {
    return nearest(carrying).stream().mapToDouble(i -> i.low().flowM3ps()).findFirst();
  }
}
