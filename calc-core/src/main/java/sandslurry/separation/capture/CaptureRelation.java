package sandslurry.separation.capture;

import sandslurry.correlation.Correlation;
import sandslurry.correlation.Estimate;
import sandslurry.separation.channel.ScourModel;

/**
 * What share of the grains of one settling velocity stays on the floor of a lane or basin.
 *
 * <p>All relations of the family say the same of a grain of no weight (nothing is caught) and of a
 * very heavy one (all is caught); between them they differ in how well the water is mixed from
 * floor to surface. None of them lets a grain that has reached the floor leave it again: that is
 * the question of {@link ScourModel}.
 */
public interface CaptureRelation extends Correlation {
  /**
   * Share of the grains that is caught.
   *
   * @param flow the flow through the lane
   * @param settlingVelocityMps settling velocity of the grains among their neighbours [m/s]
   * @return the share, 0 to 1, and what lay outside the published range
   */
  Estimate fraction(BasinFlow flow, double settlingVelocityMps);
}
