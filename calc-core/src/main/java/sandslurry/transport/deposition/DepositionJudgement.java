package sandslurry.transport.deposition;

import java.util.Optional;
import sandslurry.correlation.Estimate;

/**
 * Whether a velocity keeps sand from settling in a pipe, with what led to the verdict.
 *
 * @param outcome the verdict
 * @param velocityMps the velocity judged [m/s]
 * @param limiting the correlation and the grain size that set the limit, for a level pipe
 * @param highestFraction volume fraction of all sand that the limit is for
 * @param usualMps deposition velocity at the usual concentration, on this slope [m/s]
 * @param limitMps deposition velocity on this slope at the highest concentration [m/s]
 * @param slopeMps what the upward slope adds to that of a level pipe [m/s]
 * @param riserMps least velocity that lifts the coarse grains along a rising pipe [m/s]
 * @param requiredMps the velocity required: the limit with its margin [m/s]
 * @param slugMps deposition velocity at the worst concentration of all, which a slug of sand needs,
 *     on this slope [m/s]
 * @param widening what the margin is wider, as a share of the limit, because the liquid is thicker
 *     or the bore wider than those of the measurements
 * @param largestCounted the counted correlation of the largest value among those in their range;
 *     nothing if none is
 * @param velocityToPassMps the least velocity that no finding of this judgement speaks against
 *     [m/s]
 */
// More than ten components: the velocities of one judgement, each a step after the other.
public record DepositionJudgement(
    Outcome outcome,
    double velocityMps,
    Entry limiting,
    double highestFraction,
    double usualMps,
    double limitMps,
    double slopeMps,
    double riserMps,
    double requiredMps,
    double slugMps,
    double widening,
    Optional<Entry> largestCounted,
    double velocityToPassMps) {
  /** What comes out of a judgement, worst first. */
  public enum Outcome {
    /** The velocity is below the limit: sand settles. A failure. */
    BELOW_LIMIT,
    /** The velocity is above the limit, but below what is required. A caution. */
    WITHIN_MARGIN,
    /** The margin is kept, but a correlation that the user lets count asks for more. A caution. */
    MODELS_DISAGREE,
    /** The velocity is what is required or more. A pass. */
    CLEAR
  }

  /**
   * Whether the pipe is so steep that lifting the coarse grains sets the limit.
   *
   * @return true where {@link #riserMps} is the limit
   */
  public boolean lifting() {
    return riserMps >= limitMps;
  }

  /**
   * Whether a slug of sand, at any concentration, would settle.
   *
   * @return true below {@link #slugMps}
   */
  public boolean slugSettles() {
    return velocityMps < slugMps;
  }

  /**
   * The same load in the same pipe at another velocity: the limits stay, the outcome may not.
   *
   * @param otherMps mean velocity, 0 or more [m/s]
   * @return its judgement, which costs nothing beside this one
   */
  public DepositionJudgement at(double otherMps) {
    if (otherMps == velocityMps) {
      return this;
    }
    return new DepositionJudgement(
        DepositionRule.outcome(otherMps, limitMps, requiredMps, velocityToPassMps),
        otherMps,
        limiting,
        highestFraction,
        usualMps,
        limitMps,
        slopeMps,
        riserMps,
        requiredMps,
        slugMps,
        widening,
        largestCounted,
        velocityToPassMps);
  }

  /**
   * One correlation in the judgement.
   *
   * @param model the correlation
   * @param role the part that it played
   * @param sizeM the grain size that asked most of it [m]
   * @param fraction the volume fraction that counted for that size
   * @param estimate its value for that size in a level pipe [m/s], and what lay outside its range
   */
  public record Entry(
      DepositionVelocityModel model,
      DepositionVelocities.Role role,
      double sizeM,
      double fraction,
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
