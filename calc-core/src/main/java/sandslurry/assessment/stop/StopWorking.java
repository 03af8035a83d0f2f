package sandslurry.assessment.stop;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import sandslurry.assessment.materials.Materials;
import sandslurry.assessment.stop.StopResult.FlushFlow;
import sandslurry.assessment.stop.StopResult.FlushNeed;
import sandslurry.assessment.stop.StopResult.OverBed;
import sandslurry.assessment.stop.StopResult.Plug;
import sandslurry.assessment.stop.StopResult.StoppedRun;
import sandslurry.design.Design;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Equations;
import sandslurry.fact.step.Trace;
import sandslurry.pipe.CircularSegment;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** The working behind the line stopped full of sand: its bed, plugs, restart and flush. */
public final class StopWorking {
  private static final String SUPPLY = "scan and Brent's method";
  private static final Equations EQUATIONS = Equations.of(StopWorking.class);
  private static final Equation SAND = EQUATIONS.of("sand", Kind.MASS);
  private static final Equation SHARE = EQUATIONS.of("share", Kind.PERCENT);
  private static final Equation HALF_ANGLE = EQUATIONS.of("half-angle", Kind.NUMBER);
  private static final Equation SEGMENT = EQUATIONS.of("segment", Kind.PERCENT);
  private static final Equation DEPTH = EQUATIONS.of("depth", Kind.BORE);
  private static final Equation SETTLED = EQUATIONS.of("settled", Kind.TIME);
  private static final Equation SLID = EQUATIONS.of("slid", Kind.TIME);
  private static final Equation FALL = EQUATIONS.of("fall", Kind.FALL);
  private static final Equation SLOPE = EQUATIONS.of("slope", Kind.PERCENT);
  private static final Equation YIELD = EQUATIONS.of("yield", Kind.PRESSURE);
  private static final Equation BED = EQUATIONS.of("bed", Kind.PRESSURE);
  private static final Equation DRAGGED = EQUATIONS.of("dragged", Kind.PRESSURE);
  private static final Equation WEDGED = EQUATIONS.of("wedged", Kind.PRESSURE);
  private static final Equation LONGEST = EQUATIONS.of("longest", Kind.LENGTH);
  private static final Equation LEAST = EQUATIONS.of("least", Kind.PRESSURE);
  private static final Equation MOST = EQUATIONS.of("most", Kind.PRESSURE);
  private static final Equation CARRY = EQUATIONS.of("carry", Kind.FLOW);
  private static final Equation STRIP = EQUATIONS.of("strip", Kind.FLOW);
  private static final Equation VOLUME = EQUATIONS.of("volume", Kind.VOLUME);
  private static final Equation TIME = EQUATIONS.of("time", Kind.TIME);
  private static final Equation OVER_BED = EQUATIONS.of("over-bed", Kind.VELOCITY);

  private StopWorking() {}

  /**
   * Keeps the steps of bed, plugs, restart and flush.
   *
   * @param trace what keeps the steps
   * @param design the design
   * @param materials its liquid, sand and mixture
   * @param stop the stopped line
   */
  public static void tell(Trace trace, Design design, Materials materials, StopResult stop) {
    double fraction = stop.sandFraction();
    for (StoppedRun run : stop.runs()) {
      trace.begin("bed of the stopped line", run.run());
      run(trace, design, stop, run);
    }
    for (Plug plug : stop.plugs()) {
      trace.begin("plug of the stopped line", plug.where());
      plug(trace, stop, plug);
    }
    trace.begin("stop and restart", "");
    trace.step(SAND, stop.sandKg(), fraction, stop.volumeM3(), materials.sandDensityKgM3());
    double bed = trace.step(BED, stop.restart().slidingBedPa(), fraction);
    double yield =
        sum(
            trace,
            "p_yield",
            "pressure that breaks the yield stress of the whole line",
            "p_y Pa",
            stop.restart().yieldPa(),
            stop.runs(),
            run -> yieldPa(design, stop, run));
    double plug =
        sum(
            trace,
            "p_plug",
            "pressure that drags all plugs, liquid seeping",
            "p_p Pa",
            stop.restart().plugPa(),
            stop.plugs(),
            Plug::frictionPa);
    trace.step(LEAST, stop.leastPa(), stop.staticPa(), bed, yield, plug);
    OptionalDouble wedged = stop.restart().wedgedPa();
    if (wedged.isPresent()) {
      double all =
          sum(
              trace,
              "p_wedge",
              "pressure that pushes all plugs like corks",
              "p_w Pa",
              wedged.getAsDouble(),
              stop.plugs(),
              p -> p.wedgedPa().orElseThrow());
      trace.step(MOST, stop.mostPa().orElseThrow(), stop.staticPa(), bed, yield, plug, all);
    }
    stop.supply().ifPresent(supply -> supply(trace, design, stop, supply));
    trace.begin("flush", "");
    stop.flush().ifPresent(flush -> flush(trace, stop, flush));
  }

  private static <T> double sum(
      Trace trace,
      String symbol,
      String meaning,
      String term,
      double value,
      List<T> all,
      ToDoubleFunction<T> each) {
    if (!all.isEmpty()) {
      Equation equation =
          Equation.sum(symbol, meaning, Kind.PRESSURE, "balance of forces", term, all.size());
      trace.sum(equation, value, all.stream().mapToDouble(each).toArray());
    }
    return value;
  }

  private static double yieldPa(Design design, StopResult stop, StoppedRun run) {
    RunSpec spec = design.route().orElseThrow().run(run.run());
    return 4
        * stop.lying().restedYieldPa()
        / Measure.LENGTH.si(spec.meanBore())
        * Measure.LENGTH.si(spec.length());
  }

  private static void run(Trace trace, Design design, StopResult stop, StoppedRun run) {
    RunSpec spec = design.route().orElseThrow().run(run.run());
    double d = Measure.LENGTH.si(spec.meanBore());
    double length = Measure.LENGTH.si(spec.length());
    double share = trace.step(SHARE, run.bedShare(), stop.sandFraction());
    double half =
        trace.step(HALF_ANGLE, CircularSegment.ofAreaShare(d, share).halfAngleRad(), share);
    trace.step(SEGMENT, share, half);
    trace.step(DEPTH, run.bedM(), d, half);
    if (run.settlingS().isPresent()) {
      double fall = trace.step(FALL, run.finestMps().orElseThrow(), stop.sandFraction());
      double time = run.settlingS().getAsDouble();
      if (run.plugM() > 0) {
        double slope = Math.min(run.slopeRad(), Math.PI / 2);
        trace.step(SLID, time, Math.PI / 4 * d * d, fall, d, slope, length, share);
      } else {
        trace.step(SETTLED, time, d, run.bedM(), fall);
      }
    }
    trace.step(SLOPE, Math.tan(run.slideRad()), half);
    trace.step(YIELD, yieldPa(design, stop, run), stop.lying().restedYieldPa(), length, d);
  }

  private static void plug(Trace trace, StopResult stop, Plug plug) {
    double friction = plug.parts().wallFriction();
    double length = plug.parts().lengthM();
    trace.step(DRAGGED, plug.frictionPa(), plug.parts().submergedPaPm(), friction, length);
    if (plug.wedgedPa().isPresent()) {
      trace.step(
          WEDGED,
          plug.wedgedPa().getAsDouble(),
          plug.parts().stressRatio(),
          friction,
          plug.boreM(),
          length);
    }
    if (plug.movableM().isPresent()) {
      trace.step(LONGEST, plug.movableM().getAsDouble(), stop.availablePa() - stop.staticPa());
    }
  }

  private static void flush(Trace trace, StopResult stop, FlushNeed flush) {
    trace.step(CARRY, flush.clearingM3ps(), stop.sandFraction());
    trace.step(STRIP, flush.strippingM3ps(), stop.lying().flowingYieldPa());
    trace.step(VOLUME, flush.volumeM3(), stop.volumeM3());
    trace.step(TIME, flush.timeS(), flush.volumeM3(), flush.clearingM3ps(), flush.strippingM3ps());
  }

  private static void supply(Trace trace, Design design, StopResult stop, FlushFlow supply) {
    if (!supply.solved()) {
      return;
    }
    meeting(trace, "Q_clean", "clean line", supply.cleanM3ps());
    meeting(
        trace,
        "Q_full",
        "line while water pushes out what stood in it, least of all fronts",
        supply.loadedM3ps());
    meeting(
        trace,
        "Q_bed",
        "line over its settled bed, by the hydraulic diameter that the bed leaves",
        supply.bedM3ps());
    for (int i = 0; i < supply.runs().size(); i++) {
      OverBed over = supply.runs().get(i);
      if (over.velocityMps() > 0) {
        RunSpec spec = design.route().orElseThrow().run(over.run());
        trace.step(
            OVER_BED.about("in " + over.run()),
            over.velocityMps(),
            supply.bedM3ps().orElseThrow(),
            Measure.LENGTH.si(spec.meanBore()),
            stop.runs().get(i).bedShare());
      }
    }
  }

  private static void meeting(Trace trace, String symbol, String line, OptionalDouble flow) {
    if (flow.isPresent()) {
      trace.step(
          Equation.search(
              symbol,
              "flow rate of the supply into the " + line,
              "flow rate at which the supply has the head of the line",
              Kind.FLOW,
              SUPPLY),
          flow.getAsDouble());
    }
  }
}
