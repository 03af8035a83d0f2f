package sandslurry.settling;

import sandslurry.correlation.Correlation;
import sandslurry.correlation.Estimate;
import sandslurry.fact.step.Trace;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;

/** How fast one grain falls in a liquid at rest, far from walls and other grains. */
public interface SettlingVelocityModel extends Correlation {
  /**
   * Terminal settling velocity.
   *
   * @param grain the grain, denser than the liquid
   * @param liquid the liquid
   * @return the velocity [m/s], and what lay outside the published range
   */
  default Estimate velocityMps(Grain grain, Liquid liquid) {
    return velocityMps(grain, liquid, Trace.NONE);
  }

  /**
   * The same with its steps.
   *
   * @param grain the grain
   * @param liquid the liquid
   * @param trace what keeps the steps
   * @return the velocity [m/s], and what lay outside the published range
   */
  Estimate velocityMps(Grain grain, Liquid liquid, Trace trace);
}
