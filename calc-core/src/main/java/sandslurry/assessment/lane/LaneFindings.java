package sandslurry.assessment.lane;

import java.util.List;
import java.util.OptionalDouble;
import sandslurry.assessment.materials.Materials;
import sandslurry.correlation.Physics;
import sandslurry.design.Design;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Severity;
import sandslurry.separation.lane.LaneCycle;
import sandslurry.separation.lane.LaneFilling;
import sandslurry.separation.lane.LaneReach;
import sandslurry.separation.lane.LaneResult;
import sandslurry.units.Kind;
import sandslurry.units.Measure;
import sandslurry.units.UnitSystem;

/** Findings on the settling lane. */
public final class LaneFindings extends FindingWriter {
  private static final String ELEMENT = "settling lane";
  private static final double LONGEST_M = 1000;
  private static final double DEEPEST_M = 2;

  private final Design design;
  private final LaneEvaluation evaluation;
  private final LaneResult result;

  public LaneFindings(Design design, LaneEvaluation evaluation, LaneResult result) {
    super(design.units());
    this.design = design;
    this.evaluation = evaluation;
    this.result = result;
  }

  /** The one thing to say of a lane whose feed is no slurry. */
  public static Finding tooThick(UnitSystem units, double sandFraction) {
    return new Finding(
        Severity.FAIL,
        Topic.LANE,
        ELEMENT,
        "The mixture that the line would bring is too thick to flow through the lane.",
        "The sand would be "
            + units.show(Kind.PERCENT, sandFraction)
            + " of the mixture by volume; the methods end at "
            + units.show(Kind.PERCENT, Materials.THICKEST)
            + ".",
        "Add liquid or feed less sand, until the sand is "
            + units.show(Kind.PERCENT, Materials.THICKEST)
            + " of the mixture or less.");
  }

  public List<Finding> all() {
    capture();
    scour();
    filling();
    flow();
    return findings;
  }

  private void add(Severity severity, String what, String why, String cure) {
    add(severity, Topic.LANE, ELEMENT, what, why, cure);
  }

  private void capture() {
    double wanted = Measure.FRACTION.si(design.criteria().sandCapture());
    LaneCycle cycle = result.cycle();
    double average = cycle.likely().meanRecovery();
    double cautious = cycle.cautious().meanRecovery();
    double last = cycle.likely().lastRecovery();
    Severity severity =
        average < wanted ? Severity.FAIL : cycle.keeps(wanted) ? Severity.PASS : Severity.CAUTION;
    String what =
        severity == Severity.PASS
            ? "The lane keeps the share of sand wanted, over its whole cleaning cycle."
            : severity == Severity.FAIL
                ? "The lane keeps less sand than wanted."
                : last < wanted
                    ? "The lane keeps less sand than wanted before it is cleaned."
                    : "The lane may keep less sand than wanted.";
    String why =
        "Average over one cleaning cycle "
            + show(Kind.PERCENT, average)
            + " ("
            + show(Kind.PERCENT, cautious)
            + " if the flow carries off every grain that it moves, "
            + show(Kind.PERCENT, cycle.hopeful().meanRecovery())
            + " if it carries off none); clean "
            + show(Kind.PERCENT, cycle.likely().points().get(0).recovery())
            + ", just before cleaning "
            + show(Kind.PERCENT, last)
            + "; wanted "
            + show(Kind.PERCENT, wanted)
            + ".";
    add(severity, what, why, severity == Severity.PASS ? "" : captureCure(wanted));
  }

  /** The first change of the lane that keeps the share wanted over the whole cycle. */
  private String captureCure(double wanted) {
    LaneReach lane = evaluation.reach();
    for (double part = 0.9; part > 0.15; part -= 0.1) {
      double storage = part * lane.storageDepthM();
      LaneReach sooner = evaluation.reach(lane.lengthM(), lane.waterLevelM(), storage);
      LaneCycle cycle = evaluation.cycle(sooner);
      if (cycle.keeps(wanted)) {
        return "Clean it when the sand is "
            + show(Kind.BORE, storage)
            + " deep, every "
            + show(Kind.DAYS, cycle.likely().intervalS().orElseThrow())
            + ".";
      }
    }
    for (double level = result.flow().depthM() * 1.2; level < DEEPEST_M; level *= 1.2) {
      LaneReach deeper =
          evaluation.reach(lane.lengthM(), OptionalDouble.of(level), lane.storageDepthM());
      if (evaluation.cycle(deeper).keeps(wanted)) {
        return "A weir that holds the water "
            + show(Kind.BORE, level)
            + " above the clean floor is enough; it also keeps more organic matter in the sand.";
      }
    }
    for (double length = lane.lengthM() * 1.2; length < LONGEST_M; length *= 1.2) {
      LaneReach longer = evaluation.reach(length, lane.waterLevelM(), lane.storageDepthM());
      if (evaluation.cycle(longer).keeps(wanted)) {
        return "With this width and flow a length of about "
            + show(Kind.LENGTH, length)
            + " is enough.";
      }
    }
    return "No weir and no length alone is enough. Slow the flow down (wider lane, less flow) or"
        + " take coarser sand.";
  }

  private void scour() {
    List<LaneFilling.Point> points = result.cycle().likely().points();
    double clean = result.flow().velocityMps();
    double fastest = points.get(points.size() - 1).velocitiesMps().get(0);
    double moved = result.movedShare(fastest);
    if (moved > 0) {
      add(
          Severity.NOTE,
          "The flow moves sand along the floor.",
          "Clean, at "
              + show(Kind.VELOCITY, clean)
              + ", it moves "
              + show(Kind.PERCENT, result.movedShare(clean))
              + " of the sand; just before cleaning, at "
              + show(Kind.VELOCITY, fastest)
              + ", "
              + show(Kind.PERCENT, moved)
              + ".",
          "A lower velocity (wider or deeper lane) keeps finer grains, and more organic matter with"
              + " them.");
    }
  }

  private void filling() {
    LaneFilling likely = result.cycle().likely();
    OptionalDouble time = likely.intervalS();
    if (time.isPresent() && time.getAsDouble() > 0) {
      boolean soon = time.getAsDouble() < Measure.TIME.si(Measure.TIME.of(1, "d"));
      boolean full = likely.end() == LaneFilling.End.FULL;
      add(
          soon ? Severity.CAUTION : Severity.NOTE,
          (full
                  ? "The lane is full of sand in "
                  : "The lane keeps less than half of its sand after ")
              + show(Kind.DAYS, time.getAsDouble())
              + ".",
          "It then holds "
              + show(
                  Kind.MASS, likely.depositedKg().stream().mapToDouble(Double::doubleValue).sum())
              + " of dry sand; "
              + show(Kind.MASS_PER_DAY, result.sandKgPs())
              + " come.",
          "Clean it before that; a lane that is full carries its sand on.");
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
      add(
          Severity.CAUTION,
          "The flow is close to or beyond critical: waves and jumps stir the sand up.",
          "The Froude number is " + show(Kind.NUMBER, froude) + ".",
          "Lay the lane flatter or set the depth by an outlet weir.");
    }
    if (!result.excesses().isEmpty()) {
      add(
          Severity.CAUTION,
          "Some relations are used outside their published range.",
          String.join(
                  "; ", result.excesses().stream().map(e -> e.describe(units)).distinct().toList())
              + ".",
          "");
    }
  }
}
