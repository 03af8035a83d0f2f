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
import sandslurry.fact.step.Sheet;
import sandslurry.fact.step.Trace;
import sandslurry.pipe.CircularSegment;
import sandslurry.units.Kind;

/** The working behind the line stopped full of sand: its bed, plugs, restart and flush. */
public final class StopWorking {
  private static final String SUPPLY = "scan and Brent's method";

  private StopWorking() {}

  /**
   * Keeps the steps of bed, plugs, restart and flush.
   *
   * @param trace what keeps the steps
   * @param materials its liquid, sand and mixture
   * @param stop the stopped line
   */
  public static void steps(Trace trace, Materials materials, StopResult stop) {
    Sheet sheet = Sheet.of(StopWorking.class, trace);
    double fraction = stop.filling().sandFraction();
    for (StoppedRun run : stop.runs()) {
      sheet.begin("bed of the stopped line", run.run());
      run(sheet, materials.design(), stop, run);
    }
    for (Plug plug : stop.plugs()) {
      sheet.begin("plug of the stopped line", plug.where());
      plug(sheet, stop, plug);
    }
    sheet.begin("stop and restart", "");
    sheet.step(
        "sand",
        stop.filling().sandKg(),
        fraction,
        stop.filling().volumeM3(),
        materials.sandDensityKgM3());
    double bed = sheet.step("bed", stop.restart().slidingBedPa(), fraction);
    double yield =
        sum(
            sheet,
            "p_yield",
            "pressure that breaks the yield stress of the whole line",
            "p_y Pa",
            stop.restart().yieldPa(),
            stop.runs(),
            run -> yieldPa(materials.design(), stop, run));
    double plug =
        sum(
            sheet,
            "p_plug",
            "pressure that drags all plugs, liquid seeping",
            "p_p Pa",
            stop.restart().plugPa(),
            stop.plugs(),
            Plug::frictionPa);
    sheet.step("least", stop.leastPa(), stop.pressures().staticPa(), bed, yield, plug);
    OptionalDouble wedged = stop.restart().wedgedPa();
    if (wedged.isPresent()) {
      double all =
          sum(
              sheet,
              "p_wedge",
              "pressure that pushes all plugs like corks",
              "p_w Pa",
              wedged.getAsDouble(),
              stop.plugs(),
              p -> p.wedgedPa().orElseThrow());
      sheet.step(
          "most", stop.mostPa().orElseThrow(), stop.pressures().staticPa(), bed, yield, plug, all);
    }
    stop.supply().ifPresent(supply -> supply(sheet, materials.design(), stop, supply));
    sheet.begin("flush", "");
    stop.flush().ifPresent(flush -> flush(sheet, stop, flush));
  }

  private static <T> double sum(
      Sheet sheet,
      String symbol,
      String meaning,
      String term,
      double value,
      List<T> all,
      ToDoubleFunction<T> each) {
    if (!all.isEmpty()) {
      Equation equation = Equation.sum(symbol, meaning, "balance of forces", term, all.size());
      sheet.step(equation, value, all.stream().mapToDouble(each).toArray());
    }
    return value;
  }

  private static double yieldPa(Design design, StopResult stop, StoppedRun run) {
    RunSpec spec = design.oneLine().route().run(run.run());
    return 4 * stop.lying().restedYieldPa() / spec.meanBoreM() * spec.lengthM();
  }

  private static void run(Sheet sheet, Design design, StopResult stop, StoppedRun run) {
    RunSpec spec = design.oneLine().route().run(run.run());
    double d = spec.meanBoreM();
    double length = spec.lengthM();
    double share = sheet.step("share", run.bedShare(), stop.filling().sandFraction());
    double half =
        sheet.step("half-angle", CircularSegment.ofAreaShare(d, share).halfAngleRad(), share);
    sheet.step("segment", share, half);
    sheet.step("depth", run.bedM(), d, half);
    if (run.settlingS().isPresent()) {
      double fall =
          sheet.step("fall", run.finestMps().orElseThrow(), stop.filling().sandFraction());
      double time = run.settlingS().getAsDouble();
      if (run.plugM() > 0) {
        double slope = Math.min(run.slopeRad(), Math.PI / 2);
        sheet.step("slid", time, Math.PI / 4 * d * d, fall, d, slope, length, share);
      } else {
        sheet.step("settled", time, d, run.bedM(), fall);
      }
    }
    sheet.step("slope", Math.tan(run.slideRad()), half);
    sheet.step("yield", yieldPa(design, stop, run), stop.lying().restedYieldPa(), length, d);
  }

  private static void plug(Sheet sheet, StopResult stop, Plug plug) {
    double friction = plug.parts().wallFriction();
    double length = plug.parts().lengthM();
    sheet.step("dragged", plug.frictionPa(), plug.parts().submergedPaPm(), friction, length);
    if (plug.wedgedPa().isPresent()) {
      sheet.step(
          "wedged",
          plug.wedgedPa().getAsDouble(),
          plug.parts().stressRatio(),
          friction,
          plug.boreM(),
          length);
    }
    if (plug.movableM().isPresent()) {
      sheet.step(
          "longest",
          plug.movableM().getAsDouble(),
          stop.pressures().availablePa() - stop.pressures().staticPa());
    }
  }

  private static void flush(Sheet sheet, StopResult stop, FlushNeed flush) {
    sheet.step("carry", flush.clearingM3ps(), stop.filling().sandFraction());
    sheet.step("strip", flush.strippingM3ps(), stop.lying().flowingYieldPa());
    sheet.step("volume", flush.volumeM3(), stop.filling().volumeM3());
    sheet.step(
        "time", flush.timeS(), flush.volumeM3(), flush.clearingM3ps(), flush.strippingM3ps());
  }

  private static void supply(Sheet sheet, Design design, StopResult stop, FlushFlow supply) {
    if (!supply.solved()) {
      return;
    }
    meeting(sheet, "Q_clean", "clean line", supply.cleanM3ps());
    meeting(
        sheet,
        "Q_full",
        "line while water pushes out what stood in it, least of all fronts",
        supply.loadedM3ps());
    meeting(
        sheet,
        "Q_bed",
        "line over its settled bed, by the hydraulic diameter that the bed leaves",
        supply.bedM3ps());
    for (int i = 0; i < supply.runs().size(); i++) {
      OverBed over = supply.runs().get(i);
      if (over.velocityMps() > 0) {
        RunSpec spec = design.oneLine().route().run(over.run());
        sheet.step(
            sheet.equations().of("over-bed").about("in " + over.run()),
            over.velocityMps(),
            supply.bedM3ps().orElseThrow(),
            spec.meanBoreM(),
            stop.runs().get(i).bedShare());
      }
    }
  }

  private static void meeting(Sheet sheet, String symbol, String line, OptionalDouble flow) {
    if (flow.isPresent()) {
      sheet.step(
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
