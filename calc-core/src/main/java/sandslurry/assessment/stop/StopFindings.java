package sandslurry.assessment.stop;

import java.util.Comparator;
import java.util.OptionalDouble;
import java.util.function.Function;
import sandslurry.assessment.line.RunPoint;
import sandslurry.assessment.stop.StopResult.Plug;
import sandslurry.assessment.stop.StopResult.Start;
import sandslurry.assessment.stop.StopResult.StoppedRun;
import sandslurry.design.Design;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Findings;
import sandslurry.fact.finding.Found;
import sandslurry.fact.finding.Severity;
import sandslurry.units.Kind;

/**
 * Findings on the line stopped full of sand: its bed, plugs and restart.
 *
 * @param design the design
 * @param stop bed, plugs, restart and flush
 * @param findings takes what is found
 */
public record StopFindings(Design design, StopResult stop, Findings findings)
    implements FindingWriter {
  private static final String LINE = "line";

  /** A bed of stopped sand deeper than this share of the section is a caution of its own. */
  private static final double DEEP_BED = 0.3;

  /** A plug of up to so many bores is lifted as a rule (common practice, no source). */
  private static final double SHORT_PLUG_BORES = 5;

  /** A line that runs on so much of its sand is flushed before every stop. */
  private static final double MUCH_LIES = 0.1;

  /** Less of the sand than this is not worth a word. */
  private static final double TRACE = 5e-4;

  /** No line is stopped for less and started again with its sand still up. */
  private static final double SHORTEST_STOP_S = 60;

  /** No line rests longer: a year. */
  private static final double LONGEST_STOP_S = 365 * 86_400.0;

  /**
   * Slope below which a line that stops with sand in suspension keeps it where it is, by the order
   * of a handbook chapter on slurry valves (abstract read).
   */
  private static final double FLAT = 0.1;

  private static final double UPRIGHT_RAD = Math.PI / 2 - 1e-6;

  /** Findings on the settled bed, the plugs and the restart. */
  public void all() {
    if (stop.filling().sandFraction() > 0) {
      bed();
    } else {
      found("clear-liquid", Severity.NOTE, LINE)
          .with("rested", Kind.STRESS, stop.lying().restedYieldPa())
          .with("flowing", Kind.STRESS, stop.lying().flowingYieldPa())
          .why("no-sand")
          .why("stiffens")
          .cure("flush-stiff")
          .add();
    }
    stop.runs().forEach(this::sloping);
    stop.plugs().stream().filter(Plug::fills).forEach(this::plug);
    restart();
  }

  private void bed() {
    StoppedRun deepest =
        stop.runs().stream().max(Comparator.comparingDouble(StoppedRun::bedShare)).orElseThrow();
    double running =
        stop.lying().running().stream().mapToDouble(Double::doubleValue).max().orElse(0);
    double settles = (1 - running) * stop.lying().atRest();
    boolean bed = running >= TRACE || settles >= TRACE;
    Found found =
        found(
                settles >= TRACE ? "lays-bed" : bed ? "keeps-bed" : "holds-sand",
                deepest.bedShare() > DEEP_BED ? Severity.CAUTION : Severity.NOTE,
                LINE)
            .with("sand", Kind.MASS, stop.filling().sandKg())
            .with("running", Kind.PERCENT, running)
            .with("settles", Kind.PERCENT, settles)
            .with("bed", Kind.DEPTH, deepest.bedM())
            .with("bedShare", Kind.PERCENT, deepest.bedShare())
            .why("sand")
            .why(running >= TRACE, "on-floor");
    OptionalDouble coarse = least(StoppedRun::coarseS);
    coarse.ifPresent(time -> found.with("coarse", Kind.TIME, time));
    if (settles >= TRACE) {
      settling(found, coarse);
    }
    found.why(bed, "bed").cure(beforeStop(bed, running, coarse)).add();
  }

  private void settling(Found found, OptionalDouble coarse) {
    OptionalDouble finest =
        stop.runs().stream()
            .map(StoppedRun::settlingS)
            .flatMapToDouble(OptionalDouble::stream)
            .max();
    if (coarse.isEmpty()) {
      found.why("settles");
    } else if (coarse.getAsDouble() > LONGEST_STOP_S) {
      found.why("settles-slowly");
    } else if (finest.orElse(Double.MAX_VALUE) > LONGEST_STOP_S
        || finest.getAsDouble() <= coarse.getAsDouble()) {
      found.why("settles-coarse");
    } else {
      found.with("finest", Kind.TIME, finest.getAsDouble()).why("settles-all");
    }
  }

  private static String beforeStop(boolean bed, double running, OptionalDouble coarse) {
    if (!bed || coarse.orElse(0) > LONGEST_STOP_S && running <= MUCH_LIES) {
      return "flush-held";
    }
    return running > MUCH_LIES || coarse.orElse(0) < SHORTEST_STOP_S
        ? "flush-every"
        : "flush-longer";
  }

  private OptionalDouble least(Function<StoppedRun, OptionalDouble> time) {
    return stop.runs().stream().map(time).flatMapToDouble(OptionalDouble::stream).min();
  }

  private void sloping(StoppedRun run) {
    double slope = Math.tan(run.slopeRad());
    if (run.plugM() > 0) {
      slides(run, slope);
    } else if (slope > FLAT && stop.lying().atRest() >= TRACE) {
      found("slurry-runs", Severity.NOTE, run.run())
          .with("slope", Kind.PERCENT, slope)
          .with("flat", Kind.PERCENT, FLAT)
          .with("slides", Kind.PERCENT, Math.tan(run.slideRad()))
          .why("slope")
          .add();
    }
  }

  private void slides(StoppedRun run, double slope) {
    RunSpec spec = design.oneLine().route().run(run.run());
    double bore = spec.meanBoreM();
    Found found =
        found(
                spec.riseM() > 0 ? "slides-back" : "slides-down",
                run.plugM() > SHORT_PLUG_BORES * bore ? Severity.CAUTION : Severity.NOTE,
                run.run())
            .with("slope", Kind.PERCENT, slope)
            .with("slides", Kind.PERCENT, Math.tan(run.slideRad()))
            .with("slippery", Kind.PERCENT, Math.tan(RunPoint.SLIDES_RAD))
            .with("plug", Kind.LENGTH, run.plugM())
            .why(run.slopeRad() > UPRIGHT_RAD ? "upright" : "slopes")
            .why("slide-limit");
    if (run.plugM() < bore / 2) {
      found.why("heap");
    } else if (run.settlingS().orElse(Double.MAX_VALUE) > LONGEST_STOP_S) {
      found.why("packs");
    } else {
      found.with("packs", Kind.TIME, run.settlingS().getAsDouble()).why("packs-in");
    }
    found.cure("drain").add();
  }

  private void plug(Plug plug) {
    boolean brief = plug.parts().lengthM() <= SHORT_PLUG_BORES * plug.boreM();
    Found found =
        found(
                plug.movable() ? "packs" : "packs-too-long",
                plug.movable() && brief ? Severity.NOTE : Severity.CAUTION,
                plug.where())
            .with("plug", Kind.LENGTH, plug.parts().lengthM())
            .with("bore", Kind.BORE, plug.boreM())
            .with("seeping", Kind.PRESSURE, plug.frictionPa())
            .why("plug");
    if (plug.wedgedPa().isPresent()) {
      found.with("wedged", Kind.PRESSURE, plug.wedgedPa().getAsDouble()).why("plug-takes");
    } else {
      found.why("plug-beyond");
    }
    found
        .with("movable", Kind.LENGTH, plug.movableM())
        .why(plug.movableM().isPresent(), "plug-moves")
        .why("plug-doubt")
        .cure("drain-plug")
        .add();
  }

  private void restart() {
    boolean pump = design.pump().isPresent();
    Start start = stop.start();
    double most = stop.mostPa().orElse(Double.POSITIVE_INFINITY);
    boolean burst = most > stop.pressures().weakestPa().orElse(Double.POSITIVE_INFINITY);
    if (!pump) {
      restart("restart-no-pump", stop.bedMoves() ? Severity.CAUTION : Severity.NOTE);
    } else if (start == Start.NEVER && stop.bedMoves() && stop.restartDemand() > 1) {
      restart("restart-bed-stuck", Severity.FAIL);
    } else if (start == Start.NEVER) {
      restart(stop.lies() ? "restart-never" : "restart-liquid-never", Severity.CAUTION);
    } else if (stop.plugs().stream().filter(Plug::fills).anyMatch(plug -> !plug.movable())) {
      restart("restart-wedges", Severity.CAUTION);
    } else if (start == Start.UNCERTAIN) {
      restart("restart-uncertain", burst || stop.bedMoves() ? Severity.CAUTION : Severity.NOTE);
    } else if (burst) {
      restart("restart-burst", Severity.CAUTION);
    } else {
      restart("restart-starts", Severity.NOTE);
    }
  }

  private void restart(String key, Severity severity) {
    Found found =
        found(key, severity, LINE)
            .with("least", Kind.PRESSURE, stop.leastPa())
            .with("static", Kind.PRESSURE, stop.pressures().staticPa())
            .with("fall", Kind.PRESSURE, -stop.pressures().staticPa())
            .with("slidingBed", Kind.PRESSURE, stop.restart().slidingBedPa())
            .with("yield", Kind.PRESSURE, stop.restart().yieldPa())
            .with("rested", Kind.STRESS, stop.lying().restedYieldPa())
            .with("seeping", Kind.PRESSURE, stop.restart().plugPa())
            .with("available", Kind.PRESSURE, stop.pressures().availablePa());
    if (stop.mostPa().isPresent()) {
      found.with("most", Kind.PRESSURE, stop.mostPa().getAsDouble()).why("restart-range");
    } else {
      found.why("restart-beyond");
    }
    found
        .why(
            stop.pressures().staticPa() != 0,
            stop.pressures().staticPa() < 0 ? "restart-falls" : "restart-static")
        .why(stop.restart().slidingBedPa() > 0, "restart-bed")
        .why(stop.restart().yieldPa() > 0, "restart-yield");
    if (stop.plugs().stream().anyMatch(Plug::fills)) {
      if (stop.restart().wedgedPa().isPresent()) {
        found
            .with("wedged", Kind.PRESSURE, stop.restart().wedgedPa().getAsDouble())
            .why("restart-plugs");
      } else {
        found.why("restart-plugs-beyond");
      }
    }
    found
        .why(design.pump().isPresent(), "restart-pump")
        .with("rating", Kind.PRESSURE, stop.pressures().weakestPa())
        .why(stop.pressures().weakestPa().isPresent(), "rated")
        .cure(!key.equals("restart-starts"), "never-full")
        .add();
  }
}
