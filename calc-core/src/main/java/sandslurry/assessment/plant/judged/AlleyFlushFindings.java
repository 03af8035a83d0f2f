package sandslurry.assessment.plant.judged;

import sandslurry.assessment.plant.AlleyFlush;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Findings;
import sandslurry.fact.finding.Severity;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.pen.Flush;
import sandslurry.units.Kind;

/** Whether a flush cleans its alley, carries its sand and is refilled in time. */
record AlleyFlushFindings(AlleyFlush alley, SteadyBalance balance, Findings findings)
    implements FindingWriter {
  /** A hundredth under what practice asks is what it asks. */
  private static final double NEARLY = 0.99;

  void all() {
    cleans();
    carries();
    refills();
  }

  private void cleans() {
    boolean slow = alley.given().flush().velocityMps() < Flush.PRACTICE_VELOCITY_MPS * NEARLY;
    boolean shallow = alley.given().flush().depthM() < Flush.PRACTICE_DEPTH_M * NEARLY;
    boolean brief = alley.given().flush().durationS() < Flush.PRACTICE_TIME_S * NEARLY;
    found(
            "flush",
            "flush-less",
            !slow && !shallow && !brief,
            Severity.CAUTION,
            alley.given().unit())
        .with("velocity", Kind.VELOCITY, alley.given().flush().velocityMps())
        .with("depth", Kind.DEPTH, alley.given().flush().depthM())
        .with("time", Kind.TIME, alley.given().flush().durationS())
        .with("wave", Kind.LENGTH, alley.given().flush().waveM())
        .with("alley", Kind.LENGTH, alley.given().lengthM())
        .with("wantedVelocity", Kind.VELOCITY, Flush.PRACTICE_VELOCITY_MPS)
        .with("wantedDepth", Kind.DEPTH, Flush.PRACTICE_DEPTH_M)
        .with("wantedTime", Kind.TIME, Flush.PRACTICE_TIME_S)
        .why("flush")
        .when(
            slow,
            f ->
                f.with(
                        "slope",
                        Kind.PERCENT,
                        alley.given().flush().slopeFor(Flush.PRACTICE_VELOCITY_MPS))
                    .cure("steeper"))
        .when(shallow, f -> f.with("rate", Kind.FLOW, rateForDepth()).cure("deeper"))
        .when(
            brief,
            f ->
                f.with("volume", Kind.VOLUME, alley.given().rateM3ps() * Flush.PRACTICE_TIME_S)
                    .cure("longer-flush"))
        .add();
  }

  private void carries() {
    double stress = alley.given().flush().stressPa(alley.water().densityKgM3());
    double needed = Flush.movingStressPa(alley.coarsest(), alley.water());
    boolean moved = stress >= needed;
    found("flush-moves", "flush-leaves", moved, Severity.CAUTION, alley.given().unit())
        .with("stress", Kind.STRESS, stress)
        .with("grain", Kind.GRAIN, alley.coarsest().diameterM())
        .with("needed", Kind.STRESS, needed)
        .why("flush-moves")
        .cure(!moved, "flush-deeper")
        .add();
  }

  private void refills() {
    double brought = alley.waterM3(balance);
    boolean refilled = brought >= alley.given().volumeM3() * NEARLY;
    boolean more = brought > alley.given().volumeM3() / NEARLY;
    (refilled && !more
            ? found("flush-refills", Severity.PASS, alley.given().unit())
            : found(
                more ? "flush-runs-over" : "flush-short", Severity.CAUTION, alley.given().unit()))
        .with("takes", Kind.VOLUME, alley.given().volumeM3())
        .with("stream", alley.given().water())
        .with("brings", Kind.VOLUME, brought)
        .with("interval", Kind.HOURS, alley.pen().pen().scrapingIntervalS())
        .with("flow", Kind.FLOW, alley.given().volumeM3() / alley.pen().pen().scrapingIntervalS())
        .why("flush-refills")
        .cure(!refilled || more, more ? "flush-more-often" : "flush-less-often")
        .add();
  }

  /** The rate at which the alley runs as deep as practice asks [m3/s]. */
  private double rateForDepth() {
    return new Flush(alley.given().alley(), Flush.PRACTICE_DEPTH_M, Flush.PRACTICE_TIME_S)
        .flowM3ps();
  }
}
