package sandslurry.assessment.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.line.OperatingWindow.Cause;
import sandslurry.assessment.line.OperatingWindow.End;
import sandslurry.assessment.line.OperatingWindow.Interval;
import sandslurry.assessment.materials.Materials;
import sandslurry.design.line.RouteSpec.RunSpec;

/**
 * The flow rates at which every run of a line carries its sand with its margin, with the liquid at
 * one temperature. Turbulent flow carries it from one flow rate up; below that the flow rates at
 * which a yield stress carries it are looked for by trial.
 */
public final class CarryingFlows {
  /** The step of the trial of flow rates: narrower intervals may be missed. */
  private static final double STEP = 1.2;

  private static final double FOUND = 1e-7;

  /** So far above the required velocity, something else sets the lowest flow rate. */
  private static final double BEYOND = 1.001;

  private final LineModel model;
  private final double temperatureK;

  private CarryingFlows(LineWarmths.At warmth) {
    this.model = warmth.line();
    this.temperatureK = warmth.temperatureK();
  }

  /**
   * The flow rates that carry the sand at every temperature.
   *
   * @param warmths the line at each, one or more
   * @param anyFlowM3ps a flow rate, to see whether there is sand at all [m3/s]
   * @return intervals, ascending
   */
  public static List<Interval> of(List<LineWarmths.At> warmths, double anyFlowM3ps) {
    List<Interval> common =
        List.of(new Interval(new CarryingFlows(warmths.get(0)).nothing(), Optional.empty()));
    for (LineWarmths.At warmth : warmths) {
      common = new CarryingFlows(warmth).within(common, anyFlowM3ps);
    }
    return common;
  }

  /** Of some intervals what carries the sand at this temperature too. */
  private List<Interval> within(List<Interval> others, double anyFlowM3ps) {
    Materials materials = model.materials();
    if (materials.flows(anyFlowM3ps)
        && model.runs(anyFlowM3ps, materials.sandFraction(anyFlowM3ps)).stream()
            .noneMatch(RunPoint::hasSand)) {
      return others;
    }
    Optional<End> turbulent = turbulent();
    double top = turbulent.map(End::flowM3ps).orElse(model.mostTriedM3ps());
    boolean yields =
        materials.carrier().rheology().yieldStressPa() > 0 && !materials.yieldExtrapolated();
    List<Interval> found = new ArrayList<>();
    for (Interval other : others) {
      List<Interval> here = new ArrayList<>();
      double from = Math.max(other.low().flowM3ps(), model.leastTriedM3ps());
      if (yields && from < top) {
        here.addAll(held(from, Math.min(other.highM3ps(), top), top));
      }
      boolean allTheWay = !here.isEmpty() && here.get(here.size() - 1).high().isEmpty();
      if (turbulent.isPresent() && !allTheWay) {
        here.add(new Interval(turbulent.get(), Optional.empty()));
      }
      found.addAll(both(here, List.of(other)));
    }
    return found;
  }

  private End nothing() {
    return new End(0, Cause.NONE, "", 0, 0, temperatureK, Optional.empty());
  }

  /** The flow rate from which turbulence carries the sand in every run. */
  private Optional<End> turbulent() {
    Optional<End> most = Optional.empty();
    for (RunSpec run : model.route().runs()) {
      OptionalDouble least = model.leastSafeFlowM3ps(run);
      if (least.isEmpty()) {
        return Optional.empty();
      }
      double flow = least.getAsDouble();
      if (most.isEmpty() || flow > most.get().flowM3ps()) {
        most = Optional.of(turbulent(run.name(), flow, model.run(run, flow, fraction(flow))));
      }
    }
    return most;
  }

  private End turbulent(String run, double flowM3ps, RunPoint point) {
    double velocity = point.leastVelocityMps();
    double toPass = point.toPassMps().orElse(0);
    boolean enough = toPass > 0 && velocity > BEYOND * toPass;
    return new End(
        flowM3ps,
        enough ? Cause.NOT_TURBULENT : Cause.SETTLES,
        run,
        velocity,
        enough ? velocity : toPass,
        temperatureK,
        point.deposition());
  }

  private double fraction(double flowM3ps) {
    return model.materials().sandFraction(flowM3ps);
  }

  /** The intervals between two flow rates in which the sand is carried all the same. */
  private List<Interval> held(double fromM3ps, double topM3ps, double turbulentM3ps) {
    List<Interval> found = new ArrayList<>();
    double flow = Math.min(fromM3ps, topM3ps);
    boolean good = failing(flow).isEmpty();
    Optional<End> low = good ? Optional.of(nothing()) : Optional.empty();
    while (flow < topM3ps) {
      double next = Math.min(STEP * flow, topM3ps);
      // From the top on it is turbulence that begins to carry the sand.
      boolean then = failing(next).isEmpty() && (good || next < turbulentM3ps);
      if (then != good) {
        double[] ends = change(flow, next, good);
        if (then) {
          low = Optional.of(end(ends[1], ends[0], Cause.SINKS));
        } else {
          found.add(
              new Interval(low.orElseThrow(), Optional.of(end(ends[0], ends[1], Cause.SHEARED))));
          low = Optional.empty();
        }
      }
      good = then;
      flow = next;
    }
    // What is held up to the top goes over into turbulent flow.
    low.ifPresent(end -> found.add(new Interval(end, Optional.empty())));
    return found;
  }

  /** Narrows down where the sand begins or ceases to be carried. */
  private double[] change(double from, double to, boolean goodFrom) {
    double low = from;
    double high = to;
    while (high - low > FOUND * high) {
      double middle = (low + high) / 2;
      if (failing(middle).isEmpty() == goodFrom) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return new double[] {low, high};
  }

  private End end(double goodM3ps, double badM3ps, Cause cause) {
    RunPoint failing = failing(badM3ps).orElseThrow();
    return new End(
        goodM3ps,
        cause,
        failing.pipe().spec().name(),
        failing.leastVelocityMps(),
        0,
        temperatureK,
        Optional.empty());
  }

  /** A run that does not carry its sand with its margin; nothing when all do. */
  private Optional<RunPoint> failing(double flowM3ps) {
    Materials materials = model.materials();
    if (!materials.flows(flowM3ps)) {
      return Optional.of(model.run(model.route().runs().get(0), flowM3ps, Materials.THICKEST));
    }
    return model.runs(flowM3ps, materials.sandFraction(flowM3ps)).stream()
        .filter(run -> !run.passes())
        .findFirst();
  }

  /** The flow rates that two lists have in common. */
  private static List<Interval> both(List<Interval> one, List<Interval> other) {
    List<Interval> common = new ArrayList<>();
    for (Interval a : one) {
      for (Interval b : other) {
        End low = a.low().flowM3ps() >= b.low().flowM3ps() ? a.low() : b.low();
        Optional<End> high = a.highM3ps() <= b.highM3ps() ? a.high() : b.high();
        Interval interval = new Interval(low, high);
        if (interval.highM3ps() >= low.flowM3ps()) {
          common.add(interval);
        }
      }
    }
    return common;
  }
}
