package sandslurry.assessment.stop;

import java.util.Comparator;
import sandslurry.assessment.stop.StopResult.FlushFlow;
import sandslurry.assessment.stop.StopResult.FlushNeed;
import sandslurry.assessment.stop.StopResult.OverBed;
import sandslurry.assessment.stop.StopResult.Plug;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Findings;
import sandslurry.fact.finding.Found;
import sandslurry.fact.finding.Severity;
import sandslurry.units.Kind;

/**
 * Findings on flushing the line with water.
 *
 * @param stop the stopped line with its flush
 * @param findings takes what is found
 */
public record LineFlushFindings(StopResult stop, Findings findings) implements FindingWriter {
  /** Findings on flow rate, volume and water of the flush. */
  public void all() {
    if (stop.flush().isEmpty()) {
      found("flush-none", Severity.CAUTION, "line").why("flush-none").cure("clean-outs").add();
      return;
    }
    FlushNeed need = stop.flush().get();
    Found found =
        stop.supply()
            .map(supply -> judged(need, supply))
            .orElseGet(() -> flush("flush-before-stop", Severity.NOTE));
    need(found, need);
    stop.supply().ifPresent(supply -> supply(found, supply));
    found.add();
  }

  private Found flush(String key, Severity severity) {
    return found(key, severity, "flush");
  }

  private Found judged(FlushNeed need, FlushFlow supply) {
    double volume = stop.supplyVolumeM3().orElse(need.volumeM3());
    if (supply.startDemand() > 1) {
      return flush("flush-no-start", Severity.CAUTION).cure("flush-pressure");
    }
    if (supply.stripDemand() > 1) {
      return flush("flush-channels", Severity.CAUTION).cure("flush-pig");
    }
    if (!need.givenBy(supply.loadedM3ps().orElse(0), volume)) {
      return flush("flush-weak", Severity.CAUTION).cure("flush-flow");
    }
    if (stop.plugs().stream().anyMatch(Plug::fills)) {
      return flush("flush-not-plugs", Severity.CAUTION).cure("flush-drains");
    }
    if (stop.lies() && !supply.wearsBedOff()) {
      return flush("flush-not-bed", Severity.CAUTION).cure("flush-power");
    }
    return flush("flush-clears", Severity.PASS);
  }

  private void need(Found found, FlushNeed need) {
    found
        .why(need.clearingM3ps() > 0, "flush-carries")
        .why(need.strippingM3ps() > 0, "flush-strips")
        .with("carries", Kind.FLOW, need.clearingM3ps())
        .with("strips", Kind.FLOW, need.strippingM3ps())
        .with("flow", Kind.FLOW, need.flowM3ps())
        .with("volume", Kind.VOLUME, need.volumeM3())
        .with("flushTime", Kind.TIME, need.timeS())
        .why("flush-volume");
  }

  private void supply(Found found, FlushFlow supply) {
    found
        .with("start", Kind.PRESSURE, supply.startPa())
        .with("startAvailable", Kind.PRESSURE, supply.startAvailablePa())
        .with("clean", Kind.FLOW, supply.cleanM3ps());
    if (supply.cleanM3ps().isEmpty()) {
      found.why("supply-nothing");
    } else if (!supply.solved()) {
      found.why("supply-given");
    } else if (supply.loadedM3ps().isEmpty()) {
      found.why("supply-stalls");
    } else {
      found.with("loaded", Kind.FLOW, supply.loadedM3ps().getAsDouble()).why("supply-gives");
    }
    if (stop.lies() && supply.cleanM3ps().isPresent()) {
      overBed(found, supply);
    }
    // Starting is worth a word where there is a yield stress or the supply falls short of it.
    found.why(
        supply.startPa() > 0 && (stop.lying().restedYieldPa() > 0 || supply.startDemand() > 1),
        supply.solved() ? "start-takes" : "start-given");
    if (supply.cleanM3ps().isPresent()) {
      strip(found, supply);
    }
    if (stop.supplyVolumeM3().isPresent()) {
      held(found, stop.supplyVolumeM3().getAsDouble(), supply.loadedM3ps().orElse(0));
    }
  }

  private static void overBed(Found found, FlushFlow supply) {
    OverBed slowest =
        supply.runs().stream()
            .min(
                Comparator.comparingDouble(
                    run -> run.velocityMps() / run.clearingMps().orElse(Double.MAX_VALUE)))
            .orElseThrow();
    found.with("overBed", Kind.VELOCITY, slowest.velocityMps()).with("bedRun", slowest.run());
    if (!(slowest.velocityMps() > 0)) {
      found.why("over-bed-none");
    } else if (slowest.clearingMps().isEmpty()) {
      found.why("over-bed");
    } else {
      found
          .with("bedNeeds", Kind.VELOCITY, slowest.clearingMps().getAsDouble())
          .why("over-bed-needs");
    }
  }

  private static void strip(Found found, FlushFlow supply) {
    OverBed worst =
        supply.runs().stream().max(Comparator.comparingDouble(OverBed::stripDemand)).orElseThrow();
    found.when(
        worst.strippingPa() > 0,
        f ->
            f.with("stripRun", worst.run())
                .with("wallStress", Kind.STRESS, worst.wallStressPa())
                .with("strip", Kind.STRESS, worst.strippingPa())
                .why("wall-stress"));
  }

  private static void held(Found found, double volumeM3, double loadedM3ps) {
    found.with("held", Kind.VOLUME, volumeM3);
    if (loadedM3ps > 0) {
      found.with("lasts", Kind.TIME, volumeM3 / loadedM3ps).why("supply-lasts");
    } else {
      found.why("supply-holds");
    }
  }
}
