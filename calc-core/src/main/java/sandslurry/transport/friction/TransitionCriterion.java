package sandslurry.transport.friction;

import sandslurry.correlation.Correlation;
import sandslurry.correlation.Estimate;
import sandslurry.material.liquid.Rheology;
import sandslurry.pipe.Bore;

/** The mean velocity at which the flow of a non-Newtonian liquid ceases to be laminar. */
public interface TransitionCriterion extends Correlation {
  /**
   * Transition velocity.
   *
   * @param rheology the liquid, with a flow index below 2
   * @param densityKgM3 its density [kg/m3]
   * @param bore the pipe
   * @return mean velocity [m/s], and what lay outside the published range
   */
  Estimate velocityMps(Rheology rheology, double densityKgM3, Bore bore);
}
