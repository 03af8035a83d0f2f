package sandslurry.separation.cyclone;

import sandslurry.correlation.Correlation;

/** Cut size, pressure drop and flow split of a hydrocyclone from its geometry and feed. */
public interface HydrocycloneModel extends Correlation {
  /**
   * Predicts the performance.
   *
   * @param geometry dimensions of the cyclone
   * @param feed what flows into one cyclone
   * @return the performance, and what lay outside the published range
   */
  CyclonePerformance performance(HydrocycloneGeometry geometry, CycloneFeed feed);
}
