package sandslurry.assessment.lane;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import sandslurry.assessment.materials.Materials;
import sandslurry.correlation.Physics;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Findings;
import sandslurry.fact.finding.Found;
import sandslurry.fact.finding.Messages;
import sandslurry.fact.finding.Severity;
import sandslurry.separation.UnitFeed;
import sandslurry.separation.channel.ChannelFlow;
import sandslurry.separation.lane.LaneCycle;
import sandslurry.separation.lane.LaneFilling;
import sandslurry.separation.lane.LaneReach;
import sandslurry.separation.lane.LaneResult;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/**
 * Findings on the settling lane.
 *
 * @param evaluation the lane
 * @param result what it captures
 * @param findings takes what is found
 */
public record LaneFindings(LaneEvaluation evaluation, LaneResult result, Findings findings)
    implements FindingWriter {
  private static final String ELEMENT = "settling lane";
  private static final double LONGEST_M = 1000;
  private static final double DEEPEST_M = 2;

  /**
   * The only finding on a lane whose feed is no slurry: a failure.
   *
   * @param to takes it
   * @param sandFraction volume fraction of sand in the feed
   */
  public static void tooThick(Findings to, double sandFraction) {
    Messages.of(LaneFindings.class)
        .found(to, "too-thick", Severity.FAIL, ELEMENT)
        .with("sand", Kind.PERCENT, sandFraction)
        .with("limit", Kind.PERCENT, Materials.THICKEST)
        .why("too-thick")
        .cure("thin")
        .add();
  }

  /** Findings on capture, scour, filling and flow. */
  public void all() {
    capture();
    scour();
    filling();
    flow();
  }

  private Found found(String key, Severity severity) {
    return found(key, severity, ELEMENT);
  }

  private void capture() {
    double wanted = evaluation.materials().design().criteria().sandCapture();
    LaneCycle cycle = result.cycle();
    double average = cycle.likely().meanRecovery();
    double last = cycle.likely().lastRecovery();
    Found found =
        (average < wanted
                ? found("capture-low", Severity.FAIL)
                : cycle.keeps(wanted)
                    ? found("capture", Severity.PASS)
                    : found(last < wanted ? "capture-late" : "capture-maybe", Severity.CAUTION))
            .with("average", Kind.PERCENT, average)
            .with("cautious", Kind.PERCENT, cycle.cautious().meanRecovery())
            .with("optimistic", Kind.PERCENT, cycle.hopeful().meanRecovery())
            .with("clean", Kind.PERCENT, cycle.likely().points().get(0).recovery())
            .with("last", Kind.PERCENT, last)
            .with("wanted", Kind.PERCENT, wanted)
            .why("capture");
    double held = evaluation.feed().heldShare();
    found.when(held > UnitFeed.MUCH_HELD, f -> f.with("held", Kind.PERCENT, held).why("held"));
    if (!cycle.keeps(wanted) || average < wanted) {
      captureCure(found, wanted);
    }
    found.add();
  }

  /** The first change of the lane that keeps the share wanted over the whole cycle. */
  private void captureCure(Found found, double wanted) {
    if (evaluation.feed().heldShare() > 1 - wanted) {
      found.cure("dilute-held");
      return;
    }
    LaneReach lane = evaluation.reach();
    for (double part = 0.9; part > 0.15; part -= 0.1) {
      double storage = part * lane.storageDepthM();
      LaneReach sooner = evaluation.reach(lane.lengthM(), lane.waterLevelM(), storage);
      LaneCycle cycle = evaluation.cycle(sooner);
      if (cycle.keeps(wanted)) {
        found
            .with("depth", Kind.DEPTH, storage)
            .with("interval", Kind.DAYS, cycle.likely().intervalS().orElseThrow())
            .cure("clean-sooner");
        return;
      }
    }
    for (double level = result.flow().depthM() * 1.2; level < DEEPEST_M; level *= 1.2) {
      LaneReach deeper =
          evaluation.reach(lane.lengthM(), OptionalDouble.of(level), lane.storageDepthM());
      if (evaluation.cycle(deeper).keeps(wanted)) {
        found.with("level", Kind.DEPTH, level).cure("weir");
        return;
      }
    }
    for (double length = lane.lengthM() * 1.2; length < LONGEST_M; length *= 1.2) {
      LaneReach longer = evaluation.reach(length, lane.waterLevelM(), lane.storageDepthM());
      if (evaluation.cycle(longer).keeps(wanted)) {
        found.with("length", Kind.LENGTH, length).cure("longer");
        return;
      }
    }
    found.cure("wider");
  }

  private void scour() {
    List<LaneFilling.Point> points = result.cycle().likely().points();
    double clean = result.flow().velocityMps();
    double fastest = points.get(points.size() - 1).velocitiesMps().get(0);
    double moved = result.movedShare(fastest);
    if (moved > 0) {
      found("moves-sand", Severity.NOTE)
          .with("clean", Kind.VELOCITY, clean)
          .with("cleanShare", Kind.PERCENT, result.movedShare(clean))
          .with("fastest", Kind.VELOCITY, fastest)
          .with("share", Kind.PERCENT, moved)
          .why("moves-sand")
          .cure("slower")
          .add();
    }
  }

  private void filling() {
    LaneFilling likely = result.cycle().likely();
    OptionalDouble time = likely.intervalS();
    if (time.isPresent() && time.getAsDouble() > 0) {
      boolean soon = time.getAsDouble() < Measure.TIME.si(Measure.TIME.of(1, "d"));
      found(
              likely.end() == LaneFilling.End.FULL ? "full" : "half",
              soon ? Severity.CAUTION : Severity.NOTE)
          .with("time", Kind.DAYS, time.getAsDouble())
          .with(
              "mass",
              Kind.MASS,
              likely.depositedKg().stream().mapToDouble(Double::doubleValue).sum())
          .with("feed", Kind.MASS_PER_DAY, result.sandKgPs())
          .why("holds")
          .cure("clean-before")
          .add();
    }
  }

  private void flow() {
    double froude =
        result.cycle().likely().points().stream()
            .mapToDouble(
                p -> p.velocitiesMps().get(0) / Math.sqrt(Physics.GRAVITY * p.depthsM().get(0)))
            .max()
            .orElseThrow();
    if (froude > 0.8) {
      found("critical", Severity.CAUTION)
          .with("froude", Kind.NUMBER, froude)
          .why("froude")
          .cure("flatter")
          .add();
    }
    if (result.reynoldsNumber() < ChannelFlow.TURBULENT.low()) {
      found("not-turbulent", Severity.CAUTION)
          .count("reynolds", Math.round(result.reynoldsNumber()))
          .count("turbulent", Math.round(ChannelFlow.TURBULENT.low()))
          .why("not-turbulent")
          .cure("dilute")
          .add();
    }
    if (!result.excesses().isEmpty()) {
      found("outside", Severity.CAUTION)
          .with(
              "excesses",
              shown ->
                  result.excesses().stream()
                      .map(excess -> excess.describe(shown))
                      .distinct()
                      .collect(Collectors.joining("; ")))
          .why("outside")
          .add();
    }
  }
}
