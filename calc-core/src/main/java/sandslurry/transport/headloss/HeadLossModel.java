package sandslurry.transport.headloss;

import sandslurry.correlation.Correlation;
import sandslurry.correlation.Estimate;
import sandslurry.material.Slurry;
import sandslurry.pipe.Bore;

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
  Estimate gradient(Slurry slurry, Bore bore, double velocityMps);
}
