package sandslurry.transport.deposition;

import java.util.List;
import java.util.Optional;
import sandslurry.correlation.Estimate;

/**
 * Whether a velocity keeps sand from settling in a pipe, with everything that led to the verdict.
 *
 * @param outcome the verdict
 * @param velocityMps the velocity judged [m/s]
 * @param carrierReynolds Reynolds number of the carrier at that velocity; below about 2000 to 4000
 *     the flow is not turbulent, no correlation here applies, and the caller must say so
 * @param entries every correlation, in the order of the catalogue; values are for a level pipe
 * @param limiting the correlation that set the limit
 * @param limitMps deposition velocity on this slope [m/s]
 * @param slope increment of the Durand number for the upward slope, and whether the slope lay
 *     outside the chart
 * @param upwardCorrectionMps what the slope adds to every value of the entries [m/s]
 * @param requiredMps the limit with the margin of the rule [m/s]
 * @param largestCounted the counted correlation of the largest value among those in their range;
 *     nothing if none is
 * @param velocityToPassMps the least velocity that no finding of this judgement speaks against
 *     [m/s]; with {@link Outcome#OUT_OF_RANGE} it still does not pass, see there
 */
public record DepositionJudgement(
    Outcome outcome,
    double velocityMps,
    double carrierReynolds,
    List<Entry> entries,
    Entry limiting,
    double limitMps,
    Estimate slope,
    double upwardCorrectionMps,
    double requiredMps,
    Optional<Entry> largestCounted,
    double velocityToPassMps) {
  /** What comes out of a judgement, worst first. */
  public enum Outcome {
    /** The velocity is below the limit: sand settles. A failure. */
    BELOW_LIMIT,
    /**
     * The velocity is above the limit, but the limit rests on no governing correlation within its
     * range, or the slope lies beyond the chart. A caution at any velocity, never a pass.
     */
    OUT_OF_RANGE,
    /** The velocity is above the limit by less than the margin. A caution. */
    WITHIN_MARGIN,
    /** The margin is kept, but a counted correlation within its range asks for more. A caution. */
    MODELS_DISAGREE,
    /** The margin is kept and no counted correlation within its range asks for more. A pass. */
    CLEAR
  }

  /**
   * Whether a governing correlation within its published range stands behind the limit.
   *
   * @return false when the limit is but the largest of values out of range
   */
  public boolean governed() {
    return entries.stream()
        .anyMatch(e -> e.role() == DepositionVelocities.Role.GOVERNING && e.estimate().inRange());
  }

  /**
   * The same slurry in the same pipe at another velocity: the limits stay, the outcome may not.
   *
   * @param otherMps mean velocity, 0 or more [m/s]
   * @return its judgement, which costs nothing beside this one
   * @throws IllegalStateException if this judgement is one of standstill
   */
  public DepositionJudgement at(double otherMps) {
    if (otherMps == velocityMps) {
      return this;
    }
    if (!(velocityMps > 0)) {
      throw new IllegalStateException("a judgement of standstill tells no Reynolds number");
    }
    boolean known = governed() && slope.inRange();
    double disagreement = largestCounted.map(e -> e.valueMps() + upwardCorrectionMps).orElse(0.0);
    return new DepositionJudgement(
        DepositionRule.outcome(otherMps, limitMps, known, requiredMps, disagreement),
        otherMps,
        carrierReynolds / velocityMps * otherMps,
        entries,
        limiting,
        limitMps,
        slope,
        upwardCorrectionMps,
        requiredMps,
        largestCounted,
        velocityToPassMps);
  }

  /**
   * One correlation in the judgement.
   *
   * @param model the correlation
   * @param role the part that it played
   * @param sizeM the grain size that asked most of it [m]
   * @param estimate its value for that size in a level pipe [m/s], and what lay outside its range
   */
  public record Entry(
      DepositionVelocityModel model,
      DepositionVelocities.Role role,
      double sizeM,
      Estimate estimate) {
    /**
     * The value.
     *
     * @return deposition velocity in a level pipe [m/s]
     */
    public double valueMps() {
      return estimate.value();
    }
  }
}
