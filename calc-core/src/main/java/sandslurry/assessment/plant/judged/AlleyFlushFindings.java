package sandslurry.assessment.plant.judged;

import java.util.ArrayList;
import java.util.List;
import sandslurry.assessment.plant.PlantUnits;
import sandslurry.design.plant.PlantSpec.FlushSpec;
import sandslurry.design.plant.PlantSpec.PenSpec;
import sandslurry.fact.finding.Finding;
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
  private final FlushSpec given;
  private final Flush flush;

  AlleyFlushFindings(
      PlantFindingWriter plant, UnitSystem units, PenSpec pen, SteadyBalance balance) {
    super(plant.model, plant.result, units);
    this.pen = pen;
    this.balance = balance;
    this.given = pen.flush().orElseThrow();
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
    List<String> lacking = new ArrayList<>();
    List<String> cures = new ArrayList<>();
    if (flush.velocityMps() < Flush.PRACTICE_VELOCITY_MPS * NEARLY) {
      lacking.add("it is slower");
      cures.add(
          "a slope of "
              + show(Kind.PERCENT, flush.slopeFor(Flush.PRACTICE_VELOCITY_MPS))
              + " at this depth or a higher rate");
    }
    if (flush.depthM() < Flush.PRACTICE_DEPTH_M * NEARLY) {
      lacking.add("it is shallower");
      cures.add(
          "a rate of "
              + show(Kind.FLOW, rateForDepth())
              + ", which runs "
              + show(Kind.BORE, Flush.PRACTICE_DEPTH_M)
              + " deep");
    }
    if (flush.durationS() < Flush.PRACTICE_TIME_S * NEARLY) {
      lacking.add("it is shorter");
      cures.add(
          show(Kind.VOLUME, given.rateM3ps() * Flush.PRACTICE_TIME_S) + " a flush at this rate");
    }
    add(
        lacking.isEmpty() ? Severity.PASS : Severity.CAUTION,
        given.unit(),
        lacking.isEmpty()
            ? "The flush is as fast, deep and long as recommended."
            : "The flush is less than recommended: " + String.join(", ", lacking) + ".",
        "It runs "
            + show(Kind.VELOCITY, flush.velocityMps())
            + ", "
            + show(Kind.BORE, flush.depthM())
            + " deep, for "
            + show(Kind.TIME, flush.durationS())
            + ", a wave of "
            + show(Kind.LENGTH, flush.waveM())
            + " in an alley of "
            + show(Kind.LENGTH, given.lengthM())
            + ". University of Missouri Extension WQ313 recommends at least "
            + show(Kind.VELOCITY, Flush.PRACTICE_VELOCITY_MPS)
            + ", "
            + show(Kind.BORE, Flush.PRACTICE_DEPTH_M)
            + " and "
            + show(Kind.TIME, Flush.PRACTICE_TIME_S)
            + ".",
        lacking.isEmpty() ? "" : "Give it " + String.join(", and ", cures) + ".");
  }

  private void carries() {
    double stress = flush.stressPa(PlantUnits.water(model).densityKgM3());
    double needed = Flush.movingStressPa(PlantUnits.coarsest(model), PlantUnits.water(model));
    boolean moved = stress >= needed;
    add(
        moved ? Severity.PASS : Severity.CAUTION,
        given.unit(),
        moved
            ? "The flush moves the coarsest sand along the alley."
            : "The flush leaves the coarsest sand on the alley.",
        "Its stress on the floor is "
            + show(Kind.STRESS, stress)
            + "; a grain of "
            + show(Kind.GRAIN, PlantUnits.coarsest(model).diameterM())
            + " moves from "
            + show(Kind.STRESS, needed)
            + " on (Shields curve, a clean floor in water). The balance moves all sand with the"
            + " flush. Along curbs, in grooves and behind a wave shorter than the alley some sand"
            + " stays.",
        moved ? "" : "Flush deeper or on more slope, or scrape the alley.");
  }

  private void refills() {
    double brought = PlantUnits.flushWaterM3(pen, balance);
    boolean refilled = brought >= given.volumeM3() * NEARLY;
    boolean more = brought > given.volumeM3() / NEARLY;
    add(
        refilled && !more ? Severity.PASS : Severity.CAUTION,
        given.unit(),
        refilled
            ? more
                ? "More water flows to the flush than its tank lets out."
                : "The water of a flush comes back before the next."
            : "The water of a flush does not come back before the next.",
        "A flush takes "
            + show(Kind.VOLUME, given.volumeM3())
            + "; \""
            + given.water()
            + "\" brings "
            + show(Kind.VOLUME, brought)
            + " from one to the next, "
            + show(Kind.HOURS, pen.pen().scrapingIntervalS())
            + " later. The balance counts what the stream brings.",
        refilled && !more
            ? ""
            : "Set \""
                + given.water()
                + "\" to "
                + show(Kind.FLOW, given.volumeM3() / pen.pen().scrapingIntervalS())
                + ", or flush "
                + (more ? "more" : "less")
                + " often.");
  }

  /** The rate at which the alley runs as deep as practice asks [m3/s]. */
  private double rateForDepth() {
    return new Flush(given.alley(), Flush.PRACTICE_DEPTH_M, Flush.PRACTICE_TIME_S).flowM3ps();
  }
}
