package sandslurry.assessment.stop;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import sandslurry.assessment.stop.StopResult.FlushFlow;
import sandslurry.assessment.stop.StopResult.FlushNeed;
import sandslurry.assessment.stop.StopResult.OverBed;
import sandslurry.assessment.stop.StopResult.Plug;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Severity;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** Findings on flushing the line with water. */
public final class LineFlushFindings extends FindingWriter {
  private static final String AIR_GAP = ", with an air gap or an approved backflow preventer";

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
          "No flow of water up to the limits of the search flushes this line clean.",
          "It would have to carry off a bed of the sand and strip the liquid off the wall.",
          "Shorten the stops, or fit clean-outs.");
    } else if (stop.supply().isEmpty()) {
      add(
          Severity.NOTE,
          Topic.STOP,
          "flush",
          "Before every stop flush the line with sand-free water.",
          need(stop.flush().get()) + ".",
          "");
    } else {
      supply(stop.flush().get(), stop.supply().get());
    }
    return findings;
  }

  private void supply(FlushNeed need, FlushFlow supply) {
    double volume = stop.supplyVolumeM3().orElse(need.volumeM3());
    boolean carries = need.givenBy(supply.loadedM3ps().orElse(0), volume);
    String why = need(need) + ". " + gives(supply) + held(supply) + ".";
    if (supply.startDemand() > 1) {
      flush(
          "The supply of the flush cannot start what stands in the line.",
          why,
          "Provide "
              + show(Kind.PRESSURE, supply.startPa())
              + " or more at the start of the line, within its rating"
              + AIR_GAP
              + "; or drain the line instead.");
    } else if (supply.stripDemand() > 1) {
      flush(
          "Water will channel: it does not strip the thick liquid off the wall.",
          why,
          "Push a foam pig or a ball ahead of the water, through a launcher made for it, or thin"
              + " the liquid in the line before the stop.");
    } else if (!carries) {
      flush(
          "The supply of the flush cannot clear the line.",
          why,
          "Provide "
              + show(Kind.FLOW, need.flowM3ps())
              + " and "
              + show(Kind.VOLUME, need.volumeM3())
              + AIR_GAP
              + ".");
    } else if (stop.plugs().stream().anyMatch(Plug::fills)) {
      flush(
          "The supply can flush the line before a stop, but no flush clears the sand that a stop"
              + " without one packs full.",
          why,
          "Flush before every stop, by power of its own when the mains fail, and fit drains and"
              + " clean-outs where the sand packs.");
    } else if (stop.lies() && !supply.wearsBedOff()) {
      flush(
          "The supply can flush the line before a stop, but not the bed that a stop without a"
              + " flush leaves.",
          why,
          "Flush before every stop, by power of its own when the mains fail.");
    } else {
      add(
          Severity.PASS,
          Topic.STOP,
          "flush",
          "The supply of the flush can clear the line.",
          why,
          "");
    }
  }

  private void flush(String what, String why, String cure) {
    add(Severity.CAUTION, Topic.STOP, "flush", what, why, cure);
  }

  private String need(FlushNeed need) {
    String carries =
        need.clearingM3ps() > 0
            ? "carries off a bed at " + show(Kind.FLOW, need.clearingM3ps()) + " or more"
            : "";
    String strips =
        need.strippingM3ps() > 0
            ? "strips the liquid off the wall at "
                + show(Kind.FLOW, need.strippingM3ps())
                + " or more, where it has twice the yield stress on the wall (a choice of this"
                + " program, no source)"
            : "";
    return "Water "
        + carries
        + (carries.isEmpty() || strips.isEmpty() ? "" : " and ")
        + strips
        + "; the flush takes "
        + show(Kind.VOLUME, need.volumeM3())
        + ", "
        + Math.round(StopEvaluation.FLUSH_LINE_VOLUMES)
        + " volumes of the line (common practice, no source), in "
        + duration(need.timeS());
  }

  private String held(FlushFlow supply) {
    if (stop.supplyVolumeM3().isEmpty()) {
      return "";
    }
    double volume = stop.supplyVolumeM3().getAsDouble();
    double loaded = supply.loadedM3ps().orElse(0);
    return ". It holds "
        + show(Kind.VOLUME, volume)
        + (loaded > 0 ? ", which lasts " + duration(volume / loaded) : "");
  }

  private String gives(FlushFlow supply) {
    if (supply.cleanM3ps().isEmpty()) {
      return "The supply drives no water through the clean line" + start(supply);
    }
    String flows =
        supply.solved()
            ? "The supply gives "
                + show(Kind.FLOW, supply.cleanM3ps().getAsDouble())
                + " into the clean line and "
                + given(supply.loadedM3ps())
                + " at the least while the water pushes out what stood in the line"
            : "The supply gives "
                + show(Kind.FLOW, supply.cleanM3ps().getAsDouble())
                + ", taken as given against the line";
    return flows + (stop.lies() ? overBed(supply) : "") + start(supply) + strip(supply);
  }

  private String overBed(FlushFlow supply) {
    OverBed slowest =
        supply.runs().stream()
            .min(
                Comparator.comparingDouble(
                    run -> run.velocityMps() / run.clearingMps().orElse(Double.MAX_VALUE)))
            .orElseThrow();
    if (!(slowest.velocityMps() > 0)) {
      return "; over the settled bed nothing flows";
    }
    return "; over the settled bed "
        + (supply.solved() ? given(supply.bedM3ps()) + " runs" : "it runs")
        + " at "
        + show(Kind.VELOCITY, slowest.velocityMps())
        + " in "
        + slowest.run()
        + (slowest.clearingMps().isPresent()
            ? ", where the empty pipe needs "
                + show(Kind.VELOCITY, slowest.clearingMps().getAsDouble())
            : "");
  }

  /** What starting takes, where there is anything to break or the supply falls short of it. */
  private String start(FlushFlow supply) {
    if (!(stop.lying().restedYieldPa() > 0) && supply.startDemand() <= 1) {
      return "";
    }
    return "; to start what stands in the line takes "
        + show(Kind.PRESSURE, Math.max(0, supply.startPa()))
        + ", "
        + (supply.solved()
            ? "and the supply has "
                + show(Kind.PRESSURE, supply.startAvailablePa())
                + " while nothing flows"
            : "and a supply that drives its flow through the clean line has "
                + show(Kind.PRESSURE, supply.startAvailablePa()));
  }

  private String strip(FlushFlow supply) {
    OverBed worst =
        supply.runs().stream().max(Comparator.comparingDouble(OverBed::stripDemand)).orElseThrow();
    return worst.strippingPa() > 0
        ? "; on the wall of "
            + worst.run()
            + " the water has "
            + show(Kind.STRESS, worst.wallStressPa())
            + ", and stripping takes "
            + show(Kind.STRESS, worst.strippingPa())
        : "";
  }

  private String given(OptionalDouble flow) {
    return flow.isPresent() ? show(Kind.FLOW, flow.getAsDouble()) : "nothing";
  }
}
