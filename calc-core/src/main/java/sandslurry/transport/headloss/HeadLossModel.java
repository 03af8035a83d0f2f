package sandslurry.transport.headloss;

import sandslurry.correlation.Correlation;
import sandslurry.correlation.Estimate;
import sandslurry.fact.step.Trace;
import sandslurry.material.Slurry;
import sandslurry.pipe.Bore;
import sandslurry.transport.friction.ClearLiquid;

/** Friction of a settling slurry in a horizontal pipe. */
public interface HeadLossModel extends Correlation {
  /**
   * Hydraulic gradient of the slurry.
   *
   * @param slurry sand and carrier; with a volume fraction of 0 the result is that of the liquid
   * @param bore the pipe
   * @param velocityMps mean velocity, positive [m/s]
   * @return metres of carrier liquid lost per metre of pipe, and what lay outside the published
   *     range
   */
  default Estimate gradient(Slurry slurry, Bore bore, double velocityMps) {
    return gradient(slurry, bore, velocityMps, Trace.NONE);
  }

  /**
   * The same with its steps, which begin with the gradient i_f of the clear carrier.
   *
   * @param slurry sand and carrier
   * @param bore the pipe
   * @param velocityMps mean velocity, positive [m/s]
   * @param trace what keeps the steps
   * @return metres of carrier liquid lost per metre of pipe, and what lay outside the published
   *     range
   */
  Estimate gradient(Slurry slurry, Bore bore, double velocityMps, Trace trace);

  /**
   * The same gradient for many velocities of one slurry in one pipe.
   *
   * @param slurry sand and carrier, with sand
   * @param bore the pipe
   * @return the gradient against velocity, without a word on the published range
   */
  default Curve curve(Slurry slurry, Bore bore) {
    return (clear, velocityMps) -> gradient(slurry, bore, velocityMps).value();
  }

  /** Gradient of one slurry in one pipe against velocity. */
  @FunctionalInterface
  interface Curve {
    /**
     * The gradient at a velocity.
     *
     * @param clear friction of the carrier alone at this velocity
     * @param velocityMps mean velocity, positive [m/s]
     * @return metres of carrier liquid lost per metre of pipe
     */
    double gradient(ClearLiquid clear, double velocityMps);
  }
}
