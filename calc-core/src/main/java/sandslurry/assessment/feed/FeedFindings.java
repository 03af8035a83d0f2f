package sandslurry.assessment.feed;

import java.util.List;
import java.util.stream.Collectors;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.service.ServiceResult.GravityHour;
import sandslurry.assessment.service.ServiceResult.GravityHour.Outcome;
import sandslurry.assessment.service.ServiceResult.GravityRun;
import sandslurry.assessment.service.ServiceResult.GravitySand;
import sandslurry.assessment.service.ServiceResult.PenFeed;
import sandslurry.assessment.service.ServiceResult.Screw;
import sandslurry.design.Design;
import sandslurry.design.station.ServiceSpec.GravityRunSpec;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Found;
import sandslurry.fact.finding.Severity;
import sandslurry.pump.drive.ScrewConveyor;
import sandslurry.separation.channel.ChannelFlow;
import sandslurry.units.Kind;
import sandslurry.units.Measure;
import sandslurry.units.UnitSystem;

/** Findings on what feeds the pit: screw conveyor and gravity pipe. */
public final class FeedFindings extends FindingWriter {
  /** Loads that differ by no more than this are the same (a choice of this program). */
  private static final double SAME_LOAD = 0.1;

  private final Design design;
  private final ServiceResult result;

  /**
   * The feed of the pit that is judged.
   *
   * @param design the design
   * @param result screw conveyor and gravity pipe as the assessment shows them
   */
  public FeedFindings(Design design, ServiceResult result) {
    super(design.units());
    this.design = design;
    this.result = result;
  }

  /**
   * Findings on the screw conveyor and the gravity pipe.
   *
   * @return the findings; empty when the design has neither
   */
  public List<Finding> all() {
    result.screw().ifPresent(this::screw);
    result.gravityRun().ifPresent(this::gravityRun);
    return findings;
  }

  private Found found(String key, Severity severity, Screw screw) {
    return found(key, severity, Topic.FEED, "screw").with("load", Kind.FLOW, screw.loadM3ps());
  }

  private void screw(Screw screw) {
    double loading = screw.loading().value();
    boolean outside = !screw.loading().excesses().isEmpty();
    boolean much = loading > ScrewConveyor.ABRASIVE_LOADING;
    Found found =
        loading > ScrewConveyor.GREATEST_LOADING
            ? found("screw-overloaded", Severity.FAIL, screw)
            : much
                ? found("screw-full", Severity.CAUTION, screw)
                : outside
                    ? found("screw-outside", Severity.CAUTION, screw)
                    : found("screw", Severity.PASS, screw);
    found
        .with("loading", Kind.PERCENT, loading)
        .with("usual", Kind.PERCENT, ScrewConveyor.ABRASIVE_LOADING)
        .with("capacity", Kind.FLOW, screw.capacityM3ps())
        .why("screw");
    if (!screw.typed()) {
      found.why("screw-pens");
    }
    if (outside) {
      found.with("excesses", units -> excesses(screw, units)).why("outside");
    }
    if (much) {
      double speed = Measure.FREQUENCY.si(design.feed().screw().orElseThrow().speed());
      found
          .with("speed", Kind.FREQUENCY, speed * loading / ScrewConveyor.ABRASIVE_LOADING)
          .cure("faster");
    }
    found.add();
    screw.pens().ifPresent(pens -> pens(screw, pens));
  }

  private static String excesses(Screw screw, UnitSystem units) {
    return screw.loading().excesses().stream()
        .map(e -> e.describe(units))
        .collect(Collectors.joining(", "));
  }

  /** The load that was typed beside that of the pens. */
  private void pens(Screw screw, PenFeed pens) {
    double ratio = screw.loadM3ps() / pens.loadM3ps();
    boolean less = screw.typed() && ratio < 1 - SAME_LOAD;
    Found found =
        !screw.typed()
            ? found("screw-load-pens", Severity.NOTE, screw)
            : less
                ? found("screw-load-less", Severity.CAUTION, screw)
                : ratio <= 1 + SAME_LOAD
                    ? found("screw-load-same", Severity.NOTE, screw)
                    : found("screw-load-more", Severity.NOTE, screw);
    found
        .with("batch", Kind.VOLUME, pens.batchM3())
        .with("scrape", Kind.TIME, pens.scrapeS())
        .with("pens", Kind.FLOW, pens.loadM3ps())
        .with("density", Kind.DENSITY, screw.densityKgM3())
        .why("pens")
        .why(screw.typed() ? "typed" : "pens-density");
    if (less) {
      found.with("longer", Kind.TIME, pens.batchM3() / screw.loadM3ps()).cure("load-of-pens");
    }
    found.add();
  }

  private void gravityRun(GravityRun run) {
    GravityRunSpec spec = design.feed().gravityRun().orElseThrow();
    double flow = Measure.FLOW.si(spec.flow());
    if (run.hours().isEmpty()) {
      double more = Math.pow(flow / run.greatestM3ps(), 2);
      found("gravity-overfull", Severity.FAIL, Topic.FEED, "gravity pipe")
          .with("flow", Kind.FLOW, flow)
          .with("greatest", Kind.FLOW, run.greatestM3ps())
          .with("slope", Kind.PERCENT, Measure.FRACTION.si(spec.slope()) * more)
          .why("gravity-overfull")
          .cure("gravity-capacity")
          .add();
      return;
    }
    double depth = run.hours().get(1).flow().wetted().depthShare();
    if (depth > GravityRun.DEEP) {
      found("gravity-deep", Severity.CAUTION, Topic.FEED, "gravity pipe")
          .with("flow", Kind.FLOW, flow)
          .with("depth", Kind.PERCENT, depth)
          .with("deep", Kind.PERCENT, GravityRun.DEEP)
          .why("gravity-deep")
          .add();
    }
    sand(run, run.worst().orElseThrow());
  }

  private void sand(GravityRun run, GravityHour hour) {
    switch (hour.outcome()) {
      case NOT_TURBULENT -> reynolds(found("gravity-laminar", hour)).cure("gravity-dilute").add();
      case SAND_STAYS -> steeper(numbers(found("gravity-settles", hour), hour), run).add();
      case COARSEST_STAY ->
          steeper(numbers(found("gravity-coarsest", hour).why("gravity-stress"), hour), run).add();
      case UNDILUTED ->
          numbers(found("gravity-undiluted", hour), hour)
              .why("gravity-advice")
              .cure("gravity-dilute")
              .add();
      case LACKS_MARGIN -> steeper(numbers(found("gravity-margin", hour), hour), run).add();
      case TOO_MUCH_SAND ->
          steeper(numbers(found("gravity-sandy", hour), hour).why("gravity-sewers"), run).add();
      case UNDILUTED_WITH_MARGIN ->
          numbers(found("gravity-undiluted-computed", hour), hour).why("gravity-advice").add();
      case CARRIED -> numbers(found("gravity-carries", hour), hour).add();
      case NO_SAND -> {
        if (hour.turbulent()) {
          found("gravity-clear", hour).add();
        } else {
          reynolds(found("gravity-thick", hour)).add();
        }
      }
    }
  }

  private Found found(String key, GravityHour hour) {
    return found(key, hour.severity(), Topic.FEED, "gravity pipe")
        .with("reynolds", Kind.NUMBER, hour.reynolds());
  }

  private static Found reynolds(Found found) {
    return found
        .with("turbulent", Kind.NUMBER, ChannelFlow.TURBULENT.low())
        .why("gravity-reynolds");
  }

  private static Found numbers(Found found, GravityHour hour) {
    GravitySand sand = hour.sand().orElseThrow();
    found
        .with("flow", Kind.FLOW, hour.flow().flowM3ps())
        .with("depth", Kind.PERCENT, hour.flow().wetted().depthShare())
        .with("velocity", Kind.VELOCITY, hour.flow().velocityMps())
        .with("limit", Kind.VELOCITY, sand.limitMps())
        .with("required", Kind.VELOCITY, sand.requiredMps())
        .with("sand", Kind.PERCENT, hour.sandFraction())
        .with("stress", Kind.STRESS, hour.cleansing().stressPa())
        .with("needed", Kind.STRESS, hour.cleansing().neededStressPa())
        .with("margin", Kind.STRESS, hour.stressWithMarginPa())
        .why("gravity");
    if (hour.outcome() != Outcome.COARSEST_STAY) {
      found.why("gravity-stress");
    }
    return hour.sandKnown() ? found : found.why("gravity-sand-unknown");
  }

  private static Found steeper(Found found, GravityRun run) {
    return run.slopeToPass().isPresent()
        ? found.with("slope", Kind.PERCENT, run.slopeToPass().getAsDouble()).cure("gravity-steeper")
        : found.cure("gravity-pump");
  }
}
