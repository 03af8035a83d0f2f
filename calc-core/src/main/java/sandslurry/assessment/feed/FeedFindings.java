package sandslurry.assessment.feed;

import java.util.List;
import java.util.stream.Collectors;
import sandslurry.assessment.materials.DesignCarrier;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.service.ServiceResult.GravityRun;
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
import sandslurry.separation.channel.PartFullPipe.PartFullFlow;
import sandslurry.separation.channel.SelfCleansing;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** What is to be said of what feeds the pit: screw conveyor and gravity pipe. */
public final class FeedFindings extends FindingWriter {
  /** Share of its depth up to which a gravity pipe is designed (common practice, no source). */
  /**
   * From so much solids without sand on manure counts as undiluted (common practice, no source).
   */
  private static final double UNDILUTED_SOLIDS = 0.06;

  /** Velocity at which flushed sand keeps moving, 5 ft/s (UT Extension 2015). */
  private static final double SURE_MPS = 1.52;

  private static final double SURE_STRESS = 2;

  private static final double GRAVITY_DEPTH = 0.75;

  /** Loads that differ by no more than this are the same (a choice of this program). */
  private static final double SAME_LOAD = 0.1;

  private final Design design;
  private final ServiceResult result;

  public FeedFindings(Design design, ServiceResult result) {
    super(design.units());
    this.design = design;
    this.result = result;
  }

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
    if (run.flow().isEmpty()) {
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
    PartFullFlow flow = run.flow().get();
    SelfCleansing cleansing = run.cleansing().orElseThrow();
    boolean deep = flow.wetted().depthShare() > GRAVITY_DEPTH;
    boolean turbulent = run.reynolds() >= ChannelFlow.TURBULENT.low();
    boolean clean = cleansing.kept();
    boolean undiluted =
        DesignCarrier.of(design.carrier()).totalSolids().orElse(0) >= UNDILUTED_SOLIDS;
    boolean proven =
        flow.velocityMps() >= SURE_MPS
            && cleansing.stressPa() >= SURE_STRESS * cleansing.neededStressPa();
    add(
        !clean || undiluted && !(proven && turbulent)
            ? Severity.FAIL
            : deep || !turbulent || undiluted || !proven ? Severity.CAUTION : Severity.PASS,
        Topic.FEED,
        "gravity pipe",
        clean && undiluted && !(proven && turbulent)
            ? "Undiluted sand-laden manure does not flow by gravity in this pipe without leaving its"
                + " sand."
            : !clean
                ? "The gravity pipe does not clean itself: sand stays on its floor."
                : !turbulent
                    ? "The liquid is too thick for Manning's formula to hold in the gravity pipe."
                    : deep
                        ? "The gravity pipe runs fuller than is usual."
                        : "The gravity pipe carries its flow and moves single grains on a clean floor.",
        "It runs "
            + show(Kind.PERCENT, flow.wetted().depthShare())
            + " full at "
            + show(Kind.VELOCITY, flow.velocityMps())
            + "; the stress on the wall is "
            + show(Kind.STRESS, cleansing.stressPa())
            + ", to move the coarse sand it takes "
            + show(Kind.STRESS, cleansing.neededStressPa())
            + ". To pass it takes "
            + show(Kind.VELOCITY, SURE_MPS)
            + " and twice that stress in the least hour. Advice contradicts itself: an Ontario fact"
            + " sheet says that gravity lines do not work with sand, others allow steep short ones.",
        clean
            ? ""
            : "Take a slope of about "
                + show(
                    Kind.PERCENT,
                    Measure.FRACTION.si(spec.slope())
                        * cleansing.neededStressPa()
                        / cleansing.stressPa())
                + " or more.");
  }
}
