package sandslurry.transport.deposition;

import sandslurry.correlation.Correlation;
import sandslurry.correlation.Estimate;
import sandslurry.fact.step.Trace;
import sandslurry.material.Slurry;
import sandslurry.pipe.Bore;

/** The mean velocity below which a horizontal pipe keeps sand on its floor. */
public interface DepositionVelocityModel extends Correlation {
  /**
   * What happens at the velocity that this correlation gives: they do not all mean the same.
   *
   * @return the limit meant
   */
  Limit limit();

  /**
   * Deposition (minimum non-settling) velocity.
   *
   * @param slurry sand and carrier
   * @param bore the pipe
   * @return the velocity [m/s], and what lay outside the published range
   */
  default Estimate velocityMps(Slurry slurry, Bore bore) {
    return velocityMps(slurry, bore, Trace.NONE);
  }

  /**
   * The same with its steps.
   *
   * @param slurry sand and carrier
   * @param bore the pipe
   * @param trace what keeps the steps
   * @return the velocity [m/s], and what lay outside the published range
   */
  Estimate velocityMps(Slurry slurry, Bore bore, Trace trace);

  /** What a deposition correlation can mean. */
  enum Limit {
    /** Below it part of the sand lies still on the floor. */
    STATIONARY_BED("onset of a stationary bed"),
    /** Below it some of the sand lies or slides on the floor. */
    ANY_BED("onset of any bed, lying or sliding"),
    /** At it the pressure gradient of the slurry is least. */
    MINIMUM_GRADIENT("least pressure gradient"),
    /** Above it turbulence holds all of the sand. */
    FULL_SUSPENSION("full suspension"),
    /** Above it grains no longer travel in leaps along the floor. */
    SALTATION("change from saltation to heterogeneous flow");

    private final String words;

    Limit(String words) {
      this.words = words;
    }

    /**
     * The limit in words.
     *
     * @return for example "onset of a stationary bed"
     */
    public String words() {
      return words;
    }
  }
}
