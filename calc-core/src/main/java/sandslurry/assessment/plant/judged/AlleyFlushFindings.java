package sandslurry.assessment.plant.judged;

import java.util.List;
import sandslurry.assessment.plant.AlleyFlush;
import sandslurry.design.plant.PlantSpec.FlushSpec;
import sandslurry.design.plant.PlantSpec.PenSpec;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Found;
import sandslurry.fact.finding.Severity;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.pen.Flush;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** Whether a flush cleans its alley, carries its sand and is refilled in time. */
final class AlleyFlushFindings extends PlantFindingWriter {
  /** A hundredth under what practice asks is what it asks. */
  private static final double NEARLY = 0.99;

  private final PenSpec pen;
  private final SteadyBalance balance;
  private final AlleyFlush alley;
  private final FlushSpec given;
  private final Flush flush;

  AlleyFlushFindings(
      PlantFindingWriter plant, UnitSystem units, PenSpec pen, SteadyBalance balance) {
    super(plant.model, plant.result, units);
    this.pen = pen;
    this.balance = balance;
    this.alley = new AlleyFlush(plant.model, pen);
    this.given = alley.given();
    this.flush = given.flush();
  }

  @Override
  List<Finding> all() {
    cleans();
    carries();
    refills();
    return findings;
  }

  private void cleans() {
    boolean slow = flush.velocityMps() < Flush.PRACTICE_VELOCITY_MPS * NEARLY;
    boolean shallow = flush.depthM() < Flush.PRACTICE_DEPTH_M * NEARLY;
    boolean brief = flush.durationS() < Flush.PRACTICE_TIME_S * NEARLY;
    Found found =
        found("flush", "flush-less", !slow && !shallow && !brief, Severity.CAUTION, given.unit())
            .with("velocity", Kind.VELOCITY, flush.velocityMps())
            .with("depth", Kind.DEPTH, flush.depthM())
            .with("time", Kind.TIME, flush.durationS())
            .with("wave", Kind.LENGTH, flush.waveM())
            .with("alley", Kind.LENGTH, given.lengthM())
            .with("wantedVelocity", Kind.VELOCITY, Flush.PRACTICE_VELOCITY_MPS)
            .with("wantedDepth", Kind.DEPTH, Flush.PRACTICE_DEPTH_M)
            .with("wantedTime", Kind.TIME, Flush.PRACTICE_TIME_S)
            .why("flush");
    if (slow) {
      found
          .with("slope", Kind.PERCENT, flush.slopeFor(Flush.PRACTICE_VELOCITY_MPS))
          .cure("steeper");
    }
    if (shallow) {
      found.with("rate", Kind.FLOW, rateForDepth()).cure("deeper");
    }
    if (brief) {
      found
          .with("volume", Kind.VOLUME, given.rateM3ps() * Flush.PRACTICE_TIME_S)
          .cure("longer-flush");
    }
    found.add();
  }

  private void carries() {
    double stress = flush.stressPa(alley.water().densityKgM3());
    double needed = Flush.movingStressPa(alley.coarsest(), alley.water());
    boolean moved = stress >= needed;
    Found found =
        found("flush-moves", "flush-leaves", moved, Severity.CAUTION, given.unit())
            .with("stress", Kind.STRESS, stress)
            .with("grain", Kind.GRAIN, alley.coarsest().diameterM())
            .with("needed", Kind.STRESS, needed)
            .why("flush-moves");
    if (!moved) {
      found.cure("flush-deeper");
    }
    found.add();
  }

  private void refills() {
    double brought = alley.waterM3(balance);
    boolean refilled = brought >= given.volumeM3() * NEARLY;
    boolean more = brought > given.volumeM3() / NEARLY;
    Found found =
        (refilled && !more
                ? found("flush-refills", Severity.PASS, given.unit())
                : found(more ? "flush-runs-over" : "flush-short", Severity.CAUTION, given.unit()))
            .with("takes", Kind.VOLUME, given.volumeM3())
            .with("stream", given.water())
            .with("brings", Kind.VOLUME, brought)
            .with("interval", Kind.HOURS, pen.pen().scrapingIntervalS())
            .with("flow", Kind.FLOW, given.volumeM3() / pen.pen().scrapingIntervalS())
            .why("flush-refills");
    if (!refilled || more) {
      found.cure(more ? "flush-more-often" : "flush-less-often");
    }
    found.add();
  }

  /** The rate at which the alley runs as deep as practice asks [m3/s]. */
  private double rateForDepth() {
    return new Flush(given.alley(), Flush.PRACTICE_DEPTH_M, Flush.PRACTICE_TIME_S).flowM3ps();
  }
}
