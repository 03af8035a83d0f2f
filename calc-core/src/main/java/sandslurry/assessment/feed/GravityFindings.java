package sandslurry.assessment.feed;

import sandslurry.assessment.plant.CarriedStream;
import sandslurry.assessment.service.ServiceResult.GravityHour;
import sandslurry.assessment.service.ServiceResult.GravityHour.Outcome;
import sandslurry.assessment.service.ServiceResult.GravityRun;
import sandslurry.assessment.service.ServiceResult.GravitySand;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Findings;
import sandslurry.fact.finding.Found;
import sandslurry.fact.finding.Severity;
import sandslurry.material.liquid.Carriers;
import sandslurry.plant.profile.Fall;
import sandslurry.separation.channel.ChannelFlow;
import sandslurry.separation.channel.PartFullPipe;
import sandslurry.units.Kind;

/**
 * Findings on a pipe or channel in which a mixture runs by gravity.
 *
 * @param element what pipe or channel is called
 * @param findings takes what is found
 */
public record GravityFindings(String element, Findings findings) implements FindingWriter {
  /** What a gravity pipe without a name is called. */
  public static final String PIPE = "gravity pipe";

  /** What a line by gravity is called, before the name of its stream. */
  public static final String LINE = "gravity line";

  /**
   * Findings on one pipe or channel: whether it holds what comes, and what comes of its sand.
   *
   * @param run what came of it
   */
  public void of(GravityRun run) {
    if (run.runsOver()) {
      double more = Math.pow(run.mostM3ps() / run.conduit().greatestFlowM3ps(), 2);
      found("gravity-overfull", Severity.FAIL, element)
          .with("flow", Kind.FLOW, run.mostM3ps())
          .with("greatest", Kind.FLOW, run.conduit().greatestFlowM3ps())
          .with("slope", Kind.PERCENT, run.conduit().slope() * more)
          .why("gravity-overfull")
          .cure("gravity-capacity")
          .add();
    } else if (run.deepest() > GravityRun.DEEP) {
      found("gravity-deep", Severity.CAUTION, element)
          .with("flow", Kind.FLOW, run.mostM3ps())
          .with("depth", Kind.PERCENT, run.deepest())
          .with("deep", Kind.PERCENT, GravityRun.DEEP)
          .why("gravity-deep")
          .add();
    }
    run.worst().ifPresent(hour -> sand(run, hour));
  }

  /**
   * Finds that nobody knows how the stream flows at a time.
   *
   * @param time the stream at that time
   */
  public void unknown(CarriedStream time) {
    Found found = found("gravity-unknown", Severity.FAIL, element).with("when", time.when());
    time.stream()
        .ifPresentOrElse(
            stream ->
                found
                    .with("solids", Kind.PERCENT, CarriedStream.solids(stream))
                    .with("most", Kind.PERCENT, Carriers.HIGHEST_TOTAL_SOLIDS)
                    .why("gravity-too-thick")
                    .cure("gravity-dilute"),
            () -> found.why("gravity-no-balance"));
    found.add();
  }

  /** Finds that nothing ever flows in it. */
  public void idle() {
    found("gravity-idle", Severity.NOTE, element).add();
  }

  /** Finds that neither slope nor levels are given. */
  public void noLevels() {
    found("gravity-no-levels", Severity.FAIL, element).cure("gravity-levels").add();
  }

  /**
   * Finds that the levels leave too little fall for any slope.
   *
   * @param fall the fall between its two units
   * @param mostM3ps its greatest flow rate [m3/s]
   */
  public void noSlope(Fall fall, double mostM3ps) {
    found("gravity-no-slope", Severity.FAIL, element)
        .with("available", Kind.LENGTH, fall.availableM())
        .with("flow", Kind.FLOW, mostM3ps)
        .with("from", fall.from())
        .with("to", fall.to())
        .why("gravity-no-slope")
        .cure("gravity-higher")
        .add();
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
      case TRANSITIONAL ->
          reynolds(numbers(found("gravity-transitional", hour), hour)).cure("gravity-dilute").add();
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
    return found(key, hour.severity(), element)
        .with("reynolds", Kind.NUMBER, hour.reynolds())
        .with("when", hour.when());
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
        .with("depth", Kind.PERCENT, hour.flow().depthShare())
        .with("velocity", Kind.VELOCITY, hour.flow().velocityMps())
        .with("limit", Kind.VELOCITY, sand.limitMps())
        .with("required", Kind.VELOCITY, sand.requiredMps())
        .with("sand", Kind.PERCENT, hour.sandFraction())
        .with("stress", Kind.STRESS, hour.cleansing().stressPa())
        .with("needed", Kind.STRESS, hour.cleansing().neededStressPa())
        .with("margin", Kind.STRESS, hour.stressWithMarginPa())
        .why("gravity")
        .why(hour.outcome() != Outcome.COARSEST_STAY, "gravity-stress");
    return hour.sandKnown() ? found : found.why("gravity-sand-unknown");
  }

  private static Found steeper(Found found, GravityRun run) {
    run.slopeToPass()
        .ifPresent(slope -> found.with("slope", Kind.PERCENT, slope).cure("gravity-steeper"));
    run.sizeToPass()
        .ifPresent(
            size ->
                found
                    .with("size", Kind.BORE, size)
                    .cure(
                        run.conduit() instanceof PartFullPipe ? "gravity-bore" : "gravity-width"));
    return run.slopeToPass().isEmpty() && run.sizeToPass().isEmpty()
        ? found.cure("gravity-pump")
        : found;
  }
}
