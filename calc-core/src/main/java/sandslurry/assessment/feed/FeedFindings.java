package sandslurry.assessment.feed;

import java.util.List;
import java.util.stream.Collectors;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.service.ServiceResult.GravityHour;
import sandslurry.assessment.service.ServiceResult.GravityRun;
import sandslurry.assessment.service.ServiceResult.GravitySand;
import sandslurry.assessment.service.ServiceResult.PenFeed;
import sandslurry.assessment.service.ServiceResult.Screw;
import sandslurry.design.Design;
import sandslurry.design.station.ServiceSpec.GravityRunSpec;
import sandslurry.design.station.ServiceSpec.ScrewSpec;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Severity;
import sandslurry.pump.drive.ScrewConveyor;
import sandslurry.separation.channel.ChannelFlow;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** What is to be said of what feeds the pit: screw conveyor and gravity pipe. */
public final class FeedFindings extends FindingWriter {
  private static final String ADVICE =
      " Published advice contradicts itself: gravity systems do not work with sand (Ontario factsheet"
          + " 04-039), or work well from 10 ft of drop on (Farm and Dairy).";

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

  private void screw(Screw screw) {
    ScrewSpec spec = design.service().screw().orElseThrow();
    double loading = screw.loading().value();
    boolean fails = loading > ScrewConveyor.GREATEST_LOADING;
    boolean much = loading > ScrewConveyor.ABRASIVE_LOADING;
    String outside =
        screw.loading().excesses().stream()
            .map(e -> e.describe(units))
            .collect(Collectors.joining(", "));
    boolean unsure = !outside.isEmpty();
    add(
        fails ? Severity.FAIL : much || unsure ? Severity.CAUTION : Severity.PASS,
        Topic.FEED,
        "screw",
        fails
            ? "The screw cannot carry its load."
            : much
                ? "The screw runs fuller than is usual for abrasive material."
                : unsure
                    ? "The screw lies outside the range of the relation for its capacity."
                    : "The screw carries its load.",
        "The load of "
            + show(Kind.FLOW, screw.loadM3ps())
            + (screw.typed() ? "" : ", that of the pens,")
            + " fills its trough to "
            + show(Kind.PERCENT, loading)
            + "; for abrasive material "
            + show(Kind.PERCENT, ScrewConveyor.ABRASIVE_LOADING)
            + " is usual, "
            + show(Kind.FLOW, screw.capacityM3ps())
            + (unsure ? "; outside the range: " + outside : "")
            + ". Manure that flows runs back over the flights: this is a check of what stands in a"
            + " heap.",
        fails || much
            ? "Take "
                + show(
                    Kind.FREQUENCY,
                    Measure.FREQUENCY.si(spec.speed()) * loading / ScrewConveyor.ABRASIVE_LOADING)
                + " (wear grows with speed) or a larger screw."
            : "");
    screw.pens().ifPresent(pens -> pens(screw, pens));
  }

  /** The load that was typed beside that of the pens. */
  private void pens(Screw screw, PenFeed pens) {
    String why =
        "All pens scraped at once bring "
            + show(Kind.VOLUME, pens.batchM3())
            + " at most; in "
            + duration(pens.scrapeS())
            + " that is "
            + show(Kind.FLOW, pens.loadM3ps());
    if (!screw.typed()) {
      add(
          Severity.NOTE,
          Topic.FEED,
          "screw",
          "The load of the screw is that of the pens.",
          why + ", at " + show(Kind.DENSITY, screw.densityKgM3()) + ".",
          "");
      return;
    }
    double ratio = screw.loadM3ps() / pens.loadM3ps();
    boolean less = ratio < 1 - SAME_LOAD;
    boolean same = Math.abs(ratio - 1) <= SAME_LOAD;
    add(
        less ? Severity.CAUTION : Severity.NOTE,
        Topic.FEED,
        "screw",
        less
            ? "The load typed for the screw is less than the pens bring."
            : same
                ? "The load typed for the screw is that of the pens."
                : "The load typed for the screw is more than the pens bring.",
        why + "; " + show(Kind.FLOW, screw.loadM3ps()) + " was typed.",
        less
            ? "Leave the load out, and it is that of the pens; or scrape over "
                + duration(pens.batchM3() / screw.loadM3ps())
                + "."
            : "");
  }

  private void gravityRun(GravityRun run) {
    GravityRunSpec spec = design.service().gravityRun().orElseThrow();
    double wanted = Measure.FLOW.si(spec.flow());
    if (run.hours().isEmpty()) {
      add(
          Severity.FAIL,
          Topic.FEED,
          "gravity pipe",
          "The gravity pipe cannot carry its flow without pressure.",
          "It is to carry "
              + show(Kind.FLOW, wanted)
              + " and carries "
              + show(Kind.FLOW, run.greatestM3ps())
              + " at most.",
          "Take a slope of "
              + show(
                  Kind.PERCENT,
                  Measure.FRACTION.si(spec.slope()) * Math.pow(wanted / run.greatestM3ps(), 2))
              + " or more, or a larger bore.");
      return;
    }
    double depth = run.hours().get(1).flow().wetted().depthShare();
    if (depth > GravityRun.DEEP) {
      add(
          Severity.CAUTION,
          Topic.FEED,
          "gravity pipe",
          "The gravity pipe runs fuller than is usual.",
          "At "
              + show(Kind.FLOW, wanted)
              + " it is "
              + show(Kind.PERCENT, depth)
              + " full; usual is up to "
              + show(Kind.PERCENT, GravityRun.DEEP)
              + " (common practice, no source).",
          "");
    }
    gravitySand(run, run.worst().orElseThrow());
  }

  private void gravitySand(GravityRun run, GravityHour hour) {
    switch (hour.outcome()) {
      case NOT_TURBULENT ->
          sand(
              hour,
              "Sand settles in the gravity pipe: the liquid is too thick for eddies to lift it.",
              "Reynolds number "
                  + show(Kind.NUMBER, hour.reynolds())
                  + ", turbulent from "
                  + show(Kind.NUMBER, ChannelFlow.TURBULENT.low())
                  + " on.",
              "Dilute the manure, or pump it.");
      case SAND_STAYS ->
          sand(hour, "Sand settles in the gravity pipe.", numbers(hour), steeper(run));
      case UNDILUTED ->
          sand(
              hour,
              "Undiluted sand-laden manure does not flow by gravity in this pipe without leaving"
                  + " its sand.",
              numbers(hour) + ADVICE,
              "Dilute the manure, or pump it.");
      case LACKS_MARGIN ->
          sand(
              hour,
              "The gravity pipe carries its sand without the margin.",
              numbers(hour),
              steeper(run));
      case TOO_MUCH_SAND ->
          sand(
              hour,
              "The gravity pipe carries its sand by relations that were made for less sand.",
              numbers(hour) + " The relations for sewers hold up to about 0.2 % of sand.",
              steeper(run));
      case UNDILUTED_WITH_MARGIN ->
          sand(
              hour,
              "Undiluted sand-laden manure flows by gravity in this pipe by computation only.",
              numbers(hour) + ADVICE,
              "");
      case CARRIED -> sand(hour, "The gravity pipe carries its sand.", numbers(hour), "");
      case NO_SAND ->
          sand(
              hour,
              hour.turbulent()
                  ? "The gravity pipe carries its flow, and there is no sand."
                  : "The liquid is too thick for Manning's formula to hold in the gravity pipe.",
              "",
              "");
    }
  }

  private void sand(GravityHour hour, String what, String why, String cure) {
    add(hour.severity(), Topic.FEED, "gravity pipe", what, why, cure);
  }

  private String numbers(GravityHour hour) {
    GravitySand sand = hour.sand().orElseThrow();
    return "At "
        + show(Kind.FLOW, hour.flow().flowM3ps())
        + " it runs "
        + show(Kind.PERCENT, hour.flow().wetted().depthShare())
        + " full at "
        + show(Kind.VELOCITY, hour.flow().velocityMps())
        + "; deposition velocity "
        + show(Kind.VELOCITY, sand.limitMps())
        + ", required "
        + units.showAtLeast(Kind.VELOCITY, sand.requiredMps())
        + ", with "
        + show(Kind.PERCENT, hour.sandFraction())
        + (hour.sandKnown() ? " sand" : " sand, the worst, as its share is not given")
        + ". Stress on the wall "
        + show(Kind.STRESS, hour.cleansing().stressPa())
        + "; the coarsest grains need "
        + show(Kind.STRESS, hour.cleansing().neededStressPa())
        + ", with margin "
        + show(Kind.STRESS, hour.stressWithMarginPa())
        + ".";
  }

  private String steeper(GravityRun run) {
    return run.slopeToPass().isPresent()
        ? "Take a slope of "
            + units.showAtLeast(Kind.PERCENT, run.slopeToPass().getAsDouble())
            + " or more, or keep the sand out."
        : "Pump it, or keep the sand out: no slope up to 30 % carries this sand with its margin.";
  }
}
