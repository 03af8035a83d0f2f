package sandslurry.assessment.stop;

import static sandslurry.fact.step.Equation.COMMON;
import static sandslurry.fact.step.Equation.DEFINITION;

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
import sandslurry.fact.step.Trace;
import sandslurry.pipe.CircularSegment;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** The working behind the line stopped full of sand: its bed, plugs, restart and flush. */
public final class StopWorking {
  private static final String WILSON = "Wilson 1970, balance of forces on a bed";
  private static final String JUDGEMENT = "judgement of this program";
  private static final String SUPPLY = "scan and Brent's method";
  private static final Equation SAND =
      Equation.of(
          "m", "sand in the line", "C_t V rho_s", Kind.MASS, DEFINITION, "C_t, V m3, rho_s kg/m3");
  private static final Equation SHARE =
      Equation.search(
          "x",
          "share of the section that the bed takes",
          "bed that slid while the line ran, and what settles at rest, packed to 60 %",
          Kind.PERCENT,
          COMMON + " for 60 %",
          "C_t");
  private static final Equation HALF_ANGLE =
      Equation.search(
          "b",
          "half of the angle that the bed takes at the centre of the pipe",
          "root of (b - sin(b) cos(b))/pi less x",
          Kind.NUMBER,
          "geometry",
          "x");
  private static final Equation SEGMENT =
      Equation.of(
          "x",
          "the share that this angle gives",
          "(b - sin(b) cos(b))/pi",
          Kind.PERCENT,
          "geometry",
          "b");
  private static final Equation DEPTH =
      Equation.of("y", "depth of the bed", "D (1 - cos(b))/2", Kind.BORE, "geometry", "D m, b");
  private static final Equation SETTLED =
      Equation.of(
          "t",
          "time until the finest sand settles",
          "(D - y)/w",
          Kind.TIME,
          "settling velocity at rest, hindered",
          "D m, y m, w m/s");
  private static final Equation SLID =
      Equation.of(
          "t",
          "least time until the finest sand reaches the foot of the run",
          "A/(w D cos(theta)) ln[(L D cos(theta) + A/sin(theta)) / (L x D cos(theta) +"
              + " A/sin(theta))]",
          Kind.TIME,
          "Ponder 1925; Nakamura and Kuroda 1937, by Kinosita 1949",
          "A m2, w m/s, D m, theta, L m, x");
  private static final Equation FALL =
      Equation.search(
          "w",
          "settling velocity of the finest sand at rest, in the crowd",
          "fall in the liquid at rest, less what the yield stress holds",
          Kind.FALL,
          "settling velocity at rest, hindered",
          "C_t");
  private static final Equation SLOPE =
      Equation.of(
          "S",
          "slope on which the bed slides",
          "0.4 for b < 0.001; else 0.4 * 2 (sin(b) - b cos(b))/(b - sin(b) cos(b))",
          Kind.PERCENT,
          WILSON,
          "b");
  private static final Equation YIELD =
      Equation.of(
          "p_y",
          "pressure that breaks the yield stress in this run",
          "4 tau_rest L/D",
          Kind.PRESSURE,
          "balance of forces",
          "tau_rest Pa, L m, D m");
  private static final Equation BED =
      Equation.search(
          "p_bed",
          "pressure that slides the bed along the whole line",
          "sum over the runs from which it has not slid away of the length times the gradient that"
              + " slides the bed",
          Kind.PRESSURE,
          WILSON,
          "C_t");
  private static final Equation DRAGGED =
      Equation.search(
          "p_p",
          "pressure beyond its weight that drags the plug, liquid seeping",
          "sum over the parts of the plug of weight in the liquid times 2 mu cos(theta) +"
              + " sin(theta), less the weight of climbing parts",
          Kind.PRESSURE,
          WILSON,
          "w_s Pa/m, mu, L m");
  private static final Equation WEDGED =
      Equation.search(
          "p_w",
          "the same when it is pushed like a cork",
          "stress that grows along the plug by friction on the wall, zero at its far end",
          Kind.PRESSURE,
          "Janssen 1895, friction reversed; k by Jaky 1944, from memory, unverified",
          "k, mu, D m, L m");
  private static final Equation LONGEST =
      Equation.search(
          "L_most",
          "longest plug that the pressure left for it moves like a cork",
          "length at which the same balance takes all of the pressure",
          Kind.LENGTH,
          "Janssen 1895",
          "p_left Pa");
  private static final Equation LEAST =
      Equation.of(
          "p_low",
          "least pressure that restarting takes",
          "max(0, p_static + max(p_bed, p_yield, p_plug))",
          Kind.PRESSURE,
          JUDGEMENT,
          "p_static Pa, p_bed Pa, p_yield Pa, p_plug Pa");
  private static final Equation MOST =
      Equation.of(
          "p_high",
          "most that restarting may take",
          "max(0, p_static + 2 (p_bed + p_yield) + max(2 p_plug, p_wedge))",
          Kind.PRESSURE,
          JUDGEMENT,
          "p_static Pa, p_bed Pa, p_yield Pa, p_plug Pa, p_wedge Pa");
  private static final Equation CARRY =
      Equation.search(
          "Q_carry",
          "flow rate of water that keeps this sand moving with margin in every run",
          "least flow rate whose velocity is the required one in every run, in water",
          Kind.FLOW,
          "rule of the deposition velocity",
          "C_t");
  private static final Equation STRIP =
      Equation.search(
          "Q_strip",
          "flow rate of water that strips the liquid off the wall of every run",
          "least flow rate whose stress at the wall is twice the yield stress",
          Kind.FLOW,
          "choice of this program, no source, for 2",
          "tau_y Pa");
  private static final Equation VOLUME =
      Equation.of("V_flush", "volume of the flush", "2 V", Kind.VOLUME, COMMON + " for 2", "V m3");
  private static final Equation TIME =
      Equation.of(
          "t_flush",
          "time of the flush",
          "V_flush/max(Q_carry, Q_strip)",
          Kind.TIME,
          DEFINITION,
          "V_flush m3, Q_carry m3/s, Q_strip m3/s");
  private static final Equation OVER_BED =
      Equation.of(
          "V_bed",
          "velocity of the flush over the bed",
          "Q_bed / (pi/4 D^2 (1 - x))",
          Kind.VELOCITY,
          DEFINITION,
          "Q_bed m3/s, D m, x");

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
