package sandslurry.assessment.stop;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import sandslurry.assessment.line.RunPoint;
import sandslurry.assessment.stop.StopResult.Plug;
import sandslurry.assessment.stop.StopResult.StoppedRun;
import sandslurry.design.Design;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Severity;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** What is to be said of the line stopped full of sand: its bed, plugs and restart. */
public final class StopFindings extends FindingWriter {
  /** A bed of stopped sand deeper than this share of the section is a caution of its own. */
  private static final double DEEP_BED = 0.3;

  /** A plug of up to so many bores is lifted as a rule (common practice, no source). */
  private static final double SHORT_PLUG_BORES = 5;

  /** A line that runs on so much of its sand is flushed before every stop. */
  private static final double MUCH_LIES = 0.1;

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
    bed();
    stop.runs().forEach(this::rising);
    stop.plugs().forEach(this::plug);
    restart();
    return findings;
  }

  private void bed() {
    StoppedRun deepest =
        stop.runs().stream().max(Comparator.comparingDouble(StoppedRun::bedShare)).orElseThrow();
    double running =
        stop.lying().running().stream().mapToDouble(Double::doubleValue).max().orElse(0);
    boolean lies = deepest.bedShare() > 0;
    boolean settles = stop.lying().atRest() > 0;
    OptionalDouble coarse =
        stop.runs().stream()
            .filter(r -> r.coarseS().isPresent())
            .mapToDouble(r -> r.coarseS().getAsDouble())
            .min();
    OptionalDouble settled =
        stop.runs().stream()
            .filter(r -> r.settlingS().isPresent())
            .mapToDouble(r -> r.settlingS().getAsDouble())
            .max();
    String sand = "It holds " + show(Kind.MASS, stop.sandKg()) + " of sand";
    if (stop.sandFraction() == 0) {
      sand = "It holds no sand";
    } else if (lies) {
      sand +=
          (running > 0
                  ? "; up to " + show(Kind.PERCENT, running) + " of it lies on the floor already"
                  : "")
              + (settles
                  ? "; a long rest lays down "
                      + show(Kind.PERCENT, stop.lying().atRest())
                      + " of the rest, which the liquid does not surely hold"
                      + (coarse.isPresent() && settled.isPresent()
                          ? settled.getAsDouble() > coarse.getAsDouble()
                              ? ", what is coarse within "
                                  + duration(coarse.getAsDouble())
                                  + ", all of it within "
                                  + duration(settled.getAsDouble())
                              : ", within " + duration(coarse.getAsDouble())
                          : "")
                  : "")
              + ". The bed is "
              + show(Kind.BORE, deepest.bedM())
              + " deep, "
              + show(Kind.PERCENT, deepest.bedShare())
              + " of the section";
    }
    add(
        deepest.bedShare() > DEEP_BED ? Severity.CAUTION : Severity.NOTE,
        Topic.STOP,
        "line",
        stop.sandFraction() == 0
            ? "Stopped full, the line holds a liquid that must be started against its yield stress."
            : !lies
                ? "Stopped full, the line holds its sand where it is, by the yield stress of the"
                    + " liquid."
                : settles
                    ? "Stopped full, the line lays its sand on the floor, and it may not start"
                        + " again."
                    : "Stopped full, the line keeps the bed on which it ran.",
        sand + ".",
        !lies
            ? "Flush before a long stop all the same: a liquor that warms or is thinned loses its"
                + " yield stress."
            : coarse.isEmpty() || coarse.getAsDouble() < SHORTEST_STOP_S || running > MUCH_LIES
                ? "Flush before every stop."
                : "Flush before every stop that lasts longer than "
                    + duration(coarse.getAsDouble())
                    + ": the coarse sand makes the bed.");
  }

  private void rising(StoppedRun run) {
    if (run.bedShare() == 0) {
      return;
    }
    long slope = Math.round(Math.toDegrees(run.slopeRad()));
    if (run.plugM() > 0) {
      double bores =
          run.plugM() / Measure.LENGTH.si(design.route().orElseThrow().run(run.run()).meanBore());
      add(
          bores > SHORT_PLUG_BORES ? Severity.CAUTION : Severity.NOTE,
          Topic.STOP,
          run.run(),
          (Measure.LENGTH.si(design.route().orElseThrow().run(run.run()).rise()) > 0
                  ? "This run climbs so steeply that settled sand slides back to its foot when the"
                  : "This run falls so steeply that settled sand slides to its foot when the")
              + " line stops.",
          "It slopes at "
              + slope
              + " degrees; a settled bed slides above "
              + Math.round(Math.toDegrees(run.slideRad()))
              + " degrees by the balance of forces, on slippery pipe above about "
              + Math.round(Math.toDegrees(RunPoint.SLIDES_RAD))
              + " (common practice, no source), and packs "
              + show(Kind.LENGTH, run.plugM())
              + " of its bore full at the foot"
              + (run.settlingS().isPresent()
                  ? ", within " + duration(run.settlingS().getAsDouble()) + " or more."
                  : "."),
          "Flush before stopping and fit a drain and clean-out at the foot.");
    } else if (Math.tan(run.slopeRad()) > FLAT) {
      add(
          Severity.NOTE,
          Topic.STOP,
          run.run(),
          "On this slope the slurry may run to the foot before its sand has settled.",
          "It slopes at "
              + slope
              + " degrees; a handbook keeps below about "
              + Math.round(Math.toDegrees(Math.atan(FLAT)))
              + ". The settled bed itself slides above "
              + Math.round(Math.toDegrees(run.slideRad()))
              + " degrees.",
          "");
    }
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
            : "Stopped full, the sand packs here to a plug longer than the pressure there is can be"
                + " counted on to move.",
        "The plug is "
            + show(Kind.LENGTH, plug.parts().lengthM())
            + " long, "
            + Math.round(plug.parts().lengthM() / plug.boreM())
            + " bores. Beside its weight it takes "
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
    double low = stop.staticPa() + stop.restart().lowPa();
    OptionalDouble friction = stop.restart().highPa();
    double high =
        friction.isPresent() ? stop.staticPa() + friction.getAsDouble() : Double.POSITIVE_INFINITY;
    boolean enough = stop.availablePa() >= high;
    boolean never = pump && stop.availablePa() < low;
    boolean burst = pump && stop.weakestPa().isPresent() && high > stop.weakestPa().getAsDouble();
    boolean wedges = pump && stop.plugs().stream().anyMatch(plug -> !plug.movable());
    boolean stuck = pump && stop.bedMoves() && stop.restartDemand() > 1;
    add(
        stuck
            ? Severity.FAIL
            : never || burst || wedges || stop.bedMoves() && !(pump && enough)
                ? Severity.CAUTION
                : Severity.NOTE,
        Topic.STOP,
        "line",
        stuck
            ? "The line moves its sand as a sliding bed, and the pump cannot start that bed again."
            : !pump
                ? "No pump is given that could be held against the pressure that restarting takes."
                : never
                    ? "Stopped full and settled, the line cannot be started again by what drives"
                        + " it."
                    : wedges
                        ? "Stopped full and settled, the line may be lost to pumping: a plug may"
                            + " wedge."
                        : enough
                            ? burst
                                ? "To restart the settled line may take more than its pipe is rated"
                                    + " for."
                                : "What drives the line can be expected to move its settled bed."
                            : "Whether what drives the line moves its settled bed is uncertain.",
        "To start it may take "
            + show(Kind.PRESSURE, low)
            + (friction.isPresent()
                ? " to " + show(Kind.PRESSURE, high)
                : " or, with a plug that wedges, more than any pump has")
            + ", static pressure included (sliding bed "
            + show(Kind.PRESSURE, stop.restart().slidingBedPa())
            + ", yield "
            + show(Kind.PRESSURE, stop.restart().yieldPa())
            + (stop.lying().restedYieldPa() > 0
                ? " at "
                    + show(Kind.STRESS, stop.lying().restedYieldPa())
                    + " after the rest, "
                    + show(Kind.NUMBER, stop.lying().thixotropy())
                    + " times that of the flowing liquid"
                : "")
            + ", plug "
            + show(Kind.PRESSURE, stop.restart().plugPa())
            + (stop.plugs().isEmpty() || stop.restart().wedgedPa().isEmpty()
                ? ""
                : " seeping to "
                    + show(Kind.PRESSURE, stop.restart().wedgedPa().getAsDouble())
                    + " wedged")
            + "; known to a factor of about 2 at best)"
            + (pump ? "; there is " + show(Kind.PRESSURE, stop.availablePa()) : "")
            + (stop.weakestPa().isPresent()
                ? ", and the weakest pipe is rated "
                    + show(Kind.PRESSURE, stop.weakestPa().getAsDouble())
                : "")
            + ".",
        enough && !burst && !wedges
            ? ""
            : "Never stop it full: flush first, and have a second way to flush when the power"
                + " fails.");
  }
}
