package sandslurry.assessment.stop;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import sandslurry.assessment.line.RunPoint;
import sandslurry.assessment.stop.StopResult.Plug;
import sandslurry.assessment.stop.StopResult.Start;
import sandslurry.assessment.stop.StopResult.StoppedRun;
import sandslurry.design.Design;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Severity;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** Findings on the line stopped full of sand: its bed, plugs and restart. */
public final class StopFindings extends FindingWriter {
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

  /**
   * Slope below which a line that stops with sand in suspension keeps it where it is, by the order
   * of a handbook chapter on slurry valves (abstract read).
   */
  private static final double FLAT = 0.1;

  private final Design design;
  private final StopResult stop;

  /**
   * The stopped line that is judged.
   *
   * @param design the design
   * @param stop bed, plugs, restart and flush
   */
  public StopFindings(Design design, StopResult stop) {
    super(design.units());
    this.design = design;
    this.stop = stop;
  }

  /**
   * Findings on the settled bed, the plugs and the restart.
   *
   * @return the findings
   */
  public List<Finding> all() {
    if (stop.sandFraction() > 0) {
      bed();
    } else {
      clearLiquid();
    }
    stop.runs().forEach(this::sloping);
    stop.plugs().stream().filter(Plug::fills).forEach(this::plug);
    restart();
    return findings;
  }

  private void clearLiquid() {
    add(
        Severity.NOTE,
        Topic.STOP,
        "line",
        "Stopped full, the line holds a liquid that must be started against its yield stress.",
        "It holds no sand. " + stiffens() + ".",
        "Flush before a long stop.");
  }

  private String stiffens() {
    double rested = stop.lying().restedYieldPa();
    return "The yield stress is "
        + show(Kind.STRESS, rested / stop.lying().thixotropy())
        + " while the liquid flows, "
        + show(Kind.STRESS, rested)
        + " after a rest";
  }

  private void bed() {
    StoppedRun deepest =
        stop.runs().stream().max(Comparator.comparingDouble(StoppedRun::bedShare)).orElseThrow();
    double running =
        stop.lying().running().stream().mapToDouble(Double::doubleValue).max().orElse(0);
    double settles = (1 - running) * stop.lying().atRest();
    boolean lay = running >= TRACE;
    boolean lays = settles >= TRACE;
    add(
        deepest.bedShare() > DEEP_BED ? Severity.CAUTION : Severity.NOTE,
        Topic.STOP,
        "line",
        lays
            ? "Stopped full, the line lays its sand on the floor."
            : lay
                ? "Stopped full, the line keeps the bed on which it ran."
                : "Stopped full, the line holds its sand where it is, by the yield stress of the"
                    + " liquid.",
        "It holds "
            + show(Kind.MASS, stop.sandKg())
            + " of sand"
            + (lay ? "; up to " + show(Kind.PERCENT, running) + " lies on the floor already" : "")
            + (lays
                ? "; " + show(Kind.PERCENT, settles) + " settles in a long rest" + settlingTimes()
                : "")
            + "."
            + (lay || lays
                ? " The bed is "
                    + show(Kind.BORE, deepest.bedM())
                    + " deep, "
                    + show(Kind.PERCENT, deepest.bedShare())
                    + " of the section."
                : ""),
        lay || lays
            ? beforeStop(running)
            : "Flush before a long stop all the same: a liquor that warms or is thinned loses its"
                + " yield stress.");
  }

  private String settlingTimes() {
    OptionalDouble coarse = coarseS();
    OptionalDouble all =
        stop.runs().stream()
            .map(StoppedRun::settlingS)
            .flatMapToDouble(OptionalDouble::stream)
            .max();
    if (coarse.isEmpty()) {
      return ", how soon is not known";
    }
    return ", the coarse sand within "
        + duration(coarse.getAsDouble())
        + (all.isPresent() && all.getAsDouble() > coarse.getAsDouble()
            ? ", the finest within " + duration(all.getAsDouble())
            : "");
  }

  private OptionalDouble coarseS() {
    return stop.runs().stream()
        .map(StoppedRun::coarseS)
        .flatMapToDouble(OptionalDouble::stream)
        .min();
  }

  private String beforeStop(double running) {
    OptionalDouble coarse = coarseS();
    return running > MUCH_LIES || coarse.isEmpty() || coarse.getAsDouble() < SHORTEST_STOP_S
        ? "Flush before every stop."
        : "Flush before every stop that lasts longer than "
            + duration(coarse.getAsDouble())
            + ": the coarse sand makes the bed.";
  }

  private void sloping(StoppedRun run) {
    double slope = Math.tan(run.slopeRad());
    if (run.plugM() > 0) {
      slides(run, slope);
    } else if (slope > FLAT && stop.lying().atRest() >= TRACE) {
      add(
          Severity.NOTE,
          Topic.STOP,
          run.run(),
          "On this slope the slurry may run to the foot before its sand has settled.",
          "It slopes at "
              + show(Kind.PERCENT, slope)
              + "; a handbook keeps below about "
              + show(Kind.PERCENT, FLAT)
              + ". The settled bed itself slides above "
              + show(Kind.PERCENT, Math.tan(run.slideRad()))
              + ".",
          "");
    }
  }

  private void slides(StoppedRun run, double slope) {
    double bore = Measure.LENGTH.si(design.route().orElseThrow().run(run.run()).meanBore());
    boolean climbs = Measure.LENGTH.si(design.route().orElseThrow().run(run.run()).rise()) > 0;
    add(
        run.plugM() > SHORT_PLUG_BORES * bore ? Severity.CAUTION : Severity.NOTE,
        Topic.STOP,
        run.run(),
        climbs
            ? "This run climbs so steeply that settled sand slides back to its foot when the line"
                + " stops."
            : "This run falls so steeply that settled sand slides to its foot when the line stops.",
        (run.slopeRad() >= Math.PI / 2 - 1e-9
                ? "It is upright"
                : "It slopes at " + show(Kind.PERCENT, slope))
            + "; a settled bed slides above "
            + show(Kind.PERCENT, Math.tan(run.slideRad()))
            + " by the balance of forces, on slippery pipe above about "
            + show(Kind.PERCENT, Math.tan(RunPoint.SLIDES_RAD))
            + " (common practice, no source)"
            + (run.plugM() >= bore
                ? ", and packs "
                    + show(Kind.LENGTH, run.plugM())
                    + " of its bore full at the foot"
                    + (run.settlingS().isPresent()
                        ? ", in no less than " + duration(run.settlingS().getAsDouble())
                        : "")
                : ", and gathers at the foot")
            + ".",
        "Flush before stopping and fit a drain and clean-out at the foot.");
  }

  private void plug(Plug plug) {
    boolean moves = plug.movable();
    boolean brief = plug.parts().lengthM() <= SHORT_PLUG_BORES * plug.boreM();
    add(
        moves && brief ? Severity.NOTE : Severity.CAUTION,
        Topic.STOP,
        plug.where(),
        moves
            ? "Stopped full, the sand packs here over the whole section."
            : "Stopped full, the sand packs here to a plug longer than the pressure can be counted"
                + " on to move.",
        "The plug is "
            + show(Kind.LENGTH, plug.parts().lengthM())
            + " long in a bore of "
            + show(Kind.BORE, plug.boreM())
            + ". Beside its weight it takes "
            + show(Kind.PRESSURE, plug.frictionPa())
            + " when liquid seeps through it, and "
            + (plug.wedgedPa().isPresent()
                ? show(Kind.PRESSURE, plug.wedgedPa().getAsDouble())
                : "more than any pump has")
            + " when it is pushed like a cork and wedges itself, the face sealed by fibre"
            + (plug.movableM().isPresent()
                ? "; pushed like that the pressure left for it moves "
                    + show(Kind.LENGTH, plug.movableM().getAsDouble())
                : "")
            + ". Both are balances of forces; nobody measured plugs of manured sand. Pushing harder"
            + " on a plug that is too long only wedges it.",
        "Flush before every stop, and fit a drain and a clean-out here.");
  }

  private void restart() {
    boolean pump = design.pump().isPresent();
    boolean lies = stop.lies();
    Start start = stop.start();
    double most = stop.mostPa().orElse(Double.POSITIVE_INFINITY);
    boolean burst = pump && stop.weakestPa().isPresent() && most > stop.weakestPa().getAsDouble();
    boolean wedges = stop.plugs().stream().filter(Plug::fills).anyMatch(plug -> !plug.movable());
    String never =
        "Never stop it full: flush first, and have a second way to flush when the power fails.";
    if (!pump) {
      restart(
          stop.bedMoves() ? Severity.CAUTION : Severity.NOTE,
          "No pump is given that could be held against the pressure that restarting takes.",
          never);
    } else if (start == Start.NEVER && stop.bedMoves() && stop.restartDemand() > 1) {
      restart(
          Severity.FAIL,
          "The line moves its sand as a sliding bed, and the pump cannot start that bed again.",
          never);
    } else if (start == Start.NEVER) {
      restart(
          Severity.CAUTION,
          lies
              ? "Stopped full and settled, the line cannot be started again by its pump."
              : "After a rest the pump cannot start the liquid in the line.",
          never);
    } else if (wedges) {
      restart(
          Severity.CAUTION,
          "Stopped full and settled, the line may be lost to pumping: a plug may wedge.",
          never);
    } else if (start == Start.UNCERTAIN) {
      restart(
          burst || stop.bedMoves() ? Severity.CAUTION : Severity.NOTE,
          "Whether the pump can start the stopped line again is uncertain.",
          never);
    } else if (burst) {
      restart(
          Severity.CAUTION,
          "To restart the stopped line may take more than its pipe is rated for.",
          never);
    } else {
      restart(Severity.NOTE, "The pump can be expected to start the stopped line again.", "");
    }
  }

  private void restart(Severity severity, String what, String cure) {
    add(severity, Topic.STOP, "line", what, restartPressure(), cure);
  }

  private String restartPressure() {
    OptionalDouble most = stop.mostPa();
    StringBuilder parts =
        new StringBuilder("static pressure ").append(show(Kind.PRESSURE, stop.staticPa()));
    if (stop.restart().slidingBedPa() > 0) {
      parts.append(", sliding bed ").append(show(Kind.PRESSURE, stop.restart().slidingBedPa()));
    }
    if (stop.restart().yieldPa() > 0) {
      parts
          .append(", yield stress ")
          .append(show(Kind.PRESSURE, stop.restart().yieldPa()))
          .append(" at ")
          .append(show(Kind.STRESS, stop.lying().restedYieldPa()))
          .append(" after the rest");
    }
    if (!stop.plugs().isEmpty()) {
      parts
          .append(", plugs ")
          .append(show(Kind.PRESSURE, stop.restart().plugPa()))
          .append(" seeping");
      stop.restart()
          .wedgedPa()
          .ifPresent(
              wedged -> parts.append(", ").append(show(Kind.PRESSURE, wedged)).append(" wedged"));
    }
    return "To start it may take "
        + show(Kind.PRESSURE, stop.leastPa())
        + (most.isPresent()
            ? " to " + show(Kind.PRESSURE, most.getAsDouble())
            : " or, with a plug that wedges, more than any pump has")
        + " ("
        + parts
        + "; known to a factor of about 2 at best)"
        + (design.pump().isPresent()
            ? "; the pump has " + show(Kind.PRESSURE, stop.availablePa()) + " while nothing flows"
            : "")
        + (stop.weakestPa().isPresent()
            ? "; the weakest pipe is rated " + show(Kind.PRESSURE, stop.weakestPa().getAsDouble())
            : "")
        + ".";
  }
}
