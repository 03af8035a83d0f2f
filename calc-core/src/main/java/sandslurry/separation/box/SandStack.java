package sandslurry.separation.box;

import sandslurry.correlation.Bound;
import sandslurry.correlation.Estimate;
import sandslurry.separation.Numbers;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;

/**
 * A stack of sand put up to drain.
 *
 * @param sandKg dry sand in it [kg]
 * @param sandDensityKgM3 density of the mineral [kg/m3]
 * @param porosity share of the stack that is not sand, 0 to below 1
 */
public record SandStack(double sandKg, double sandDensityKgM3, double porosity) {
  /**
   * Angle of repose typical of dry sand, 34 degrees; a little less under water; angular grains
   * stand steeper. Carter (1950), US Bureau of Reclamation, Hydraulic Laboratory Report Hyd-299.
   */
  public static final double DRY_SAND_RAD = Math.toRadians(34);

  /** Range of Hazen's rule, Hazen (1893) as later texts cite it. */
  private static final Bound EFFECTIVE_SIZE =
      new Bound("size that 10 % is finer than", Kind.GRAIN, 0.1e-3, 2.5e-3);

  /** Checks every bound. */
  public SandStack {
    Numbers.notNegative("the sand", sandKg, "kg");
    Numbers.positive("the density of the sand", sandDensityKgM3, "kg/m3");
    if (!(porosity >= 0 && porosity < 1)) {
      throw new IllegalArgumentException("porosity lies in 0 to below 1 but was " + porosity);
    }
  }

  /**
   * Bulk volume.
   *
   * @return sand over its density and what is left by the pores [m3]
   */
  public double volumeM3() {
    return sandKg / sandDensityKgM3 / (1 - porosity);
  }

  /**
   * Height of a cone of this volume.
   *
   * @return h = (3 V tan²φ/π)^(1/3) [m]
   */
  public double coneHeightM() {
    double slope = Math.tan(DRY_SAND_RAD);
    return Math.cbrt(3 * volumeM3() * slope * slope / Math.PI);
  }

  /**
   * Diameter of the foot of that cone.
   *
   * @return 2 h/tan φ [m]
   */
  public double coneDiameterM() {
    return 2 * coneHeightM() / Math.tan(DRY_SAND_RAD);
  }

  /**
   * Length of a windrow of triangular section.
   *
   * @param heightM its height [m]
   * @return length of the ridge when its two ends are halves of a cone; 0 when a cone of that
   *     height holds all [m]
   */
  public double windrowLengthM(double heightM) {
    double slope = Math.tan(DRY_SAND_RAD);
    double height = Numbers.positive("the height of the windrow", heightM, "m");
    double ends = Math.PI * height * height * height / (3 * slope * slope);
    return Math.max(0, (volumeM3() - ends) * slope / (height * height));
  }

  /**
   * Width of the ground under a windrow.
   *
   * @param heightM its height [m]
   * @return 2 h/tan φ; that of a cone when the sand does not reach that height [m]
   */
  public double footWidthM(double heightM) {
    return Math.min(2 * heightM / Math.tan(DRY_SAND_RAD), coneDiameterM());
  }

  /**
   * Length of the ground under a windrow, its two round ends counted in.
   *
   * @param heightM its height [m]
   * @return length of the ridge and one width [m]
   */
  public double footLengthM(double heightM) {
    return windrowLengthM(heightM) + footWidthM(heightM);
  }

  /**
   * Permeability of clean loose sand by Hazen's rule, K = 0.01 d10² with d10 in millimetres and K
   * in metres a second at 10 °C.
   *
   * <p>Hazen (1892, 1911), coefficient as read in a public course notebook; another prints 0.0116
   * (0.7 + 0.03 t), which is 16 % more at 10 °C. For an even sand without clay. Manure in the pores
   * lowers it by orders of magnitude: the time to drain that follows is the least there can be.
   *
   * @param d10M size that 10 % of the mass is finer than [m]
   * @return permeability [m/s], and whether the size lay outside the range
   */
  public static Estimate permeabilityMps(double d10M) {
    double millimetres = InUnit.MILLIMETRE.of(Numbers.positive("d10", d10M, "m"));
    return Estimate.checks().check(EFFECTIVE_SIZE, d10M).value(0.01 * millimetres * millimetres);
  }

  /**
   * Least time in which water above field moisture runs down through the stack: drainable pore
   * volume over the greatest rate, that of a downward gradient of one.
   *
   * <p>Common practice for sand from a lane is two to four weeks in summer and longer in winter (no
   * source): organic matter in the pores, rain and evaporation rule it, not this limit.
   *
   * @param heightM height of the stack [m]
   * @param drainableShare pore water that runs out, over volume of stack, 0 to 1
   * @param permeabilityMps permeability [m/s]
   * @return n h/K [s]
   */
  public static double leastDrainTimeS(
      double heightM, double drainableShare, double permeabilityMps) {
    return Numbers.share("the drainable share", drainableShare)
        * Numbers.positive("the height", heightM, "m")
        / Numbers.positive("the permeability", permeabilityMps, "m/s");
  }

  /**
   * Time in which the water in a full lane, left to drain through its open end over a level floor,
   * falls to a share of its depth at the closed end.
   *
   * <pre>h/h0 = 1/(1 + 1.115 K h0 t/(n L²))</pre>
   *
   * <p>h depth of water in the sand at the closed end, h0 at first; K permeability [m/s]; n
   * drainable share; L length [m]. It is the exact solution of Boussinesq (1904), Journal de
   * mathématiques pures et appliquées 10:5-78, as in Brutsaert and Nieber (1977), Water Resources
   * Research 13:637-643 (citations from memory; the constant is B(2/3, 1/2)²/6 with the beta
   * function, which the tests derive). A long lane takes weeks even of clean sand: drains under it
   * or in its wall shorten L.
   *
   * @param lengthM length of the path to the drain [m]
   * @param depositM depth of the deposit, full of water at first [m]
   * @param drainableShare pore water that runs out, over volume of deposit, 0 to 1
   * @param permeabilityMps permeability [m/s]
   * @param depthShare depth at the closed end over depth at first, above 0 to 1
   * @return the time [s]
   */
  public static double laneDrainTimeS(
      double lengthM,
      double depositM,
      double drainableShare,
      double permeabilityMps,
      double depthShare) {
    if (!(depthShare > 0 && depthShare <= 1)) {
      throw new IllegalArgumentException(
          "the share of the depth lies in 0 (excluded) to 1 but was " + depthShare);
    }
    double length = Numbers.positive("the length", lengthM, "m");
    return (1 / depthShare - 1)
        * Numbers.share("the drainable share", drainableShare)
        * length
        * length
        / (1.115
            * Numbers.positive("the permeability", permeabilityMps, "m/s")
            * Numbers.positive("the deposit", depositM, "m"));
  }
}
