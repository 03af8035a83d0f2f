package sandslurry.separation.cyclone;

import sandslurry.correlation.Correlation;
import sandslurry.fact.step.Trace;

/** Cut size, pressure drop and flow split of a hydrocyclone from its geometry and feed. */
public interface HydrocycloneModel extends Correlation {
  /**
   * Predicts the performance.
   *
   * @param geometry dimensions of the cyclone
   * @param feed what flows into one cyclone
   * @return the performance, and what lay outside the published range
   */
  default CyclonePerformance performance(HydrocycloneGeometry geometry, CycloneFeed feed) {
    return performance(geometry, feed, Trace.NONE);
  }

  /**
   * The same with its steps.
   *
   * @param geometry the cyclone
   * @param feed what one cyclone is fed with
   * @param trace what keeps the steps
   * @return cut size, pressure and split
   */
  CyclonePerformance performance(HydrocycloneGeometry geometry, CycloneFeed feed, Trace trace);
}
