package sandslurry.assessment.stop;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import sandslurry.assessment.stop.StopResult.FlushFlow;
import sandslurry.assessment.stop.StopResult.OverBed;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Severity;
import sandslurry.transport.bed.StoppedLine;
import sandslurry.transport.bed.StoppedLine.Flush;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** What is to be said of flushing the line with water. */
public final class LineFlushFindings extends FindingWriter {
  private final StopResult stop;

  /**
   * The flush that is judged.
   *
   * @param units the units in which the sentences show numbers
   * @param stop the stopped line with its flush
   */
  public LineFlushFindings(UnitSystem units, StopResult stop) {
    super(units);
    this.stop = stop;
  }

  /**
   * Findings on flow rate, volume and water of the flush.
   *
   * @return the findings
   */
  public List<Finding> all() {
    if (stop.flush().isEmpty()) {
      add(
          Severity.CAUTION,
          Topic.STOP,
          "line",
          "No flow of water up to the limits of the search carries off a bed of this sand.",
          "",
          "Shorten the stops, or fit clean-outs.");
      return findings;
    }
    Flush flush = stop.flush().get();
    String need =
        "To carry off the bed water must flow at "
            + show(Kind.FLOW, flush.flowM3ps())
            + " or more, for "
            + duration(flush.timeS())
            + ": "
            + show(Kind.VOLUME, flush.volumeM3())
            + ", "
            + Math.round(StoppedLine.FLUSH_LINE_VOLUMES)
            + " volumes of the line (common practice, no source)";
    if (stop.supply().isEmpty()) {
      add(
          Severity.NOTE,
          Topic.STOP,
          "flush",
          "Before every stop flush the line with sand-free water.",
          need + ".",
          "");
      return findings;
    }
    FlushFlow supply = stop.supply().get();
    double volume = stop.supplyVolumeM3().orElse(flush.volumeM3());
    boolean starts = supply.startDemand() <= 1;
    boolean strips = supply.stripDemand() <= 1;
    boolean before = starts && strips && flush.givenBy(supply.loadedM3ps().orElse(0), volume);
    boolean bed = before && supply.wearsBedOff();
    boolean lies = stop.runs().stream().anyMatch(run -> run.bedShare() > 0);
    boolean all = bed && stop.plugs().isEmpty() || before && !lies;
    add(
        all ? Severity.PASS : Severity.CAUTION,
        Topic.STOP,
        "flush",
        all
            ? "The supply of the flush can clear the line."
            : before
                ? stop.plugs().isEmpty()
                    ? "The supply can flush the line before a stop, but not the bed that a stop"
                        + " without a flush leaves."
                    : "The supply can flush the line before a stop, but no flush clears the sand"
                        + " that a stop without one packs full."
                : !starts
                    ? "The supply of the flush cannot start what stands in the line."
                    : strips
                        ? "The supply of the flush cannot clear the line."
                        : "Water will channel: it does not strip the thick liquid off the wall.",
        need + "; " + gives(supply) + held(volume) + ".",
        all
            ? ""
            : before
                ? "Flush before every stop, by power of its own when the mains fail, and fit drains"
                    + " and clean-outs where the sand packs."
                : !starts
                    ? "Provide "
                        + show(Kind.PRESSURE, supply.startPa())
                        + " or more at the start of the line, within its rating, with an air gap or"
                        + " an approved backflow preventer; or drain the line instead."
                    : strips
                        ? "Provide "
                            + show(Kind.FLOW, flush.flowM3ps())
                            + " and "
                            + show(Kind.VOLUME, flush.volumeM3())
                            + ", with an air gap or an approved backflow preventer."
                        : "Push a foam pig or a ball ahead of the water, through a launcher made"
                            + " for it, or thin the liquid in the line before the stop.");
    return findings;
  }

  private String held(double volume) {
    if (stop.supplyVolumeM3().isEmpty()) {
      return "";
    }
    double loaded = stop.supply().orElseThrow().loadedM3ps().orElse(0);
    return ". It holds "
        + show(Kind.VOLUME, volume)
        + (loaded > 0 ? ", which lasts " + duration(volume / loaded) : "");
  }

  private String gives(FlushFlow supply) {
    OverBed slowest =
        supply.runs().stream()
            .min(
                Comparator.comparingDouble(
                    run -> run.velocityMps() / run.clearingMps().orElse(Double.MAX_VALUE)))
            .orElseThrow();
    String bed =
        slowest.velocityMps() > 0
            ? "over the settled bed it runs at "
                + show(Kind.VELOCITY, slowest.velocityMps())
                + " in "
                + slowest.run()
                + (slowest.clearingMps().isPresent()
                    ? ", where the empty pipe needs "
                        + show(Kind.VELOCITY, slowest.clearingMps().getAsDouble())
                    : "")
            : "over the settled bed nothing flows";
    String start =
        stop.lying().restedYieldPa() > 0
            ? "; to start what stands in the line takes "
                + show(Kind.PRESSURE, supply.startPa())
                + " of "
                + show(Kind.PRESSURE, supply.startAvailablePa())
                + strip(supply)
            : "";
    if (!supply.solved()) {
      return "the supply gives "
          + show(Kind.FLOW, supply.cleanM3ps().orElse(0))
          + ", taken as given against the line; "
          + bed
          + start;
    }
    return "the supply gives "
        + given(supply.cleanM3ps())
        + " into the clean line, "
        + given(supply.loadedM3ps())
        + " at the least while the water pushes out what stood in the line and "
        + given(supply.bedM3ps())
        + " with the sand settled; "
        + bed
        + start;
  }

  private String strip(FlushFlow supply) {
    OverBed worst =
        supply.runs().stream().max(Comparator.comparingDouble(OverBed::stripDemand)).orElseThrow();
    return "; on the wall of "
        + worst.run()
        + " the water has "
        + show(Kind.STRESS, worst.wallStressPa())
        + ", and to strip the liquid takes "
        + show(Kind.STRESS, worst.strippingPa())
        + ", "
        + show(Kind.NUMBER, FlushEvaluation.STRIPPING)
        + " times its yield stress (a choice of this program, no source)";
  }

  private String given(OptionalDouble flow) {
    return flow.isPresent() ? show(Kind.FLOW, flow.getAsDouble()) : "nothing";
  }
}
