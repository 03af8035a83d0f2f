package sandslurry.separation.cyclone;

import sandslurry.correlation.Correlation;
import sandslurry.correlation.Estimate;

/** A rule that gives the cut size of a hydrocyclone and nothing else; shown beside the models. */
public interface CutSizeModel extends Correlation {
  /**
   * Cut size.
   *
   * @param bodyM diameter of the cyclone [m]
   * @param feed what flows into one cyclone
   * @param pressureDropPa pressure drop, for rules that ask for it [Pa]
   * @return the cut size [m], and what lay outside the published range
   */
  Estimate cutSizeM(double bodyM, CycloneFeed feed, double pressureDropPa);
}
