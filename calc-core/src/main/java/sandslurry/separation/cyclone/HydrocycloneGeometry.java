package sandslurry.separation.cyclone;

import sandslurry.separation.Numbers;

/**
 * The dimensions of a hydrocyclone.
 *
 * @param bodyM inside diameter of the cylindrical part [m]
 * @param inletM diameter of the circle that has the area of the inlet [m]
 * @param overflowM inside diameter of the vortex finder [m]
 * @param underflowM inside diameter of the apex [m]
 * @param freeVortexM height of the free vortex, from the end of the vortex finder to the apex [m]
 */
public record HydrocycloneGeometry(
    double bodyM, double inletM, double overflowM, double underflowM, double freeVortexM) {
  /** Checks that all are positive and that the openings are smaller than the body. */
  public HydrocycloneGeometry {
    Numbers.positive("the diameter of the cyclone", bodyM, "m");
    Numbers.positive("the height of the free vortex", freeVortexM, "m");
    opening("the inlet", inletM, bodyM);
    opening("the vortex finder", overflowM, bodyM);
    opening("the apex", underflowM, bodyM);
  }

  private static void opening(String what, double diameterM, double bodyM) {
    if (!(diameterM > 0 && diameterM < bodyM)) {
      throw new IllegalArgumentException(
          what
              + " must lie in 0 to the diameter of the cyclone, "
              + bodyM
              + " m, but was "
              + diameterM);
    }
  }

  /**
   * A cyclone in the proportions that Rietema (1961) found best: inlet 0.28, vortex finder 0.34
   * wide and 0.4 long, whole length 5 diameters, so that the free vortex is 4.6 diameters high.
   *
   * @param bodyM diameter of the cyclone [m]
   * @param underflowM diameter of the apex, the one dimension left free [m]
   * @return the geometry
   */
  public static HydrocycloneGeometry rietema(double bodyM, double underflowM) {
    return new HydrocycloneGeometry(bodyM, 0.28 * bodyM, 0.34 * bodyM, underflowM, 4.6 * bodyM);
  }
}
