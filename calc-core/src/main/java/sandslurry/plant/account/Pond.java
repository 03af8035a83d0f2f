package sandslurry.plant.account;

import sandslurry.numeric.Roots;

/**
 * A rectangular storage with sloping sides.
 *
 * <pre>V = 4 Z² d³ / 3 + Z L d² + Z W d² + W L d</pre>
 *
 * <p>V volume below the depth d; L, W length and width of the floor; Z run over rise of the sides,
 * 0 for walls. It is the prismoidal formula of worksheet 10A-2 of the Agricultural Waste Management
 * Field Handbook (USDA-NRCS). The volume says nothing of whether banks, liner and walls hold: that
 * is for licensed practice and the standard in force.
 *
 * @param floorLengthM length of the floor [m]
 * @param floorWidthM width of the floor [m]
 * @param sideSlope run over rise Z
 * @param depthM depth to the top of the bank or wall [m]
 */
public record Pond(double floorLengthM, double floorWidthM, double sideSlope, double depthM) {
  /** Checks every bound. */
  public Pond {
    if (!(floorLengthM > 0 && floorWidthM > 0 && depthM > 0 && sideSlope >= 0)
        || !Double.isFinite(floorLengthM * floorWidthM * depthM * (1 + sideSlope))) {
      throw new IllegalArgumentException(
          "a pond needs length, width and depth > 0 and a slope >= 0 but has "
              + floorLengthM
              + " m, "
              + floorWidthM
              + " m, "
              + depthM
              + " m and "
              + sideSlope);
    }
  }

  /**
   * Volume below a depth.
   *
   * @param depthM depth above the floor, 0 or more [m]
   * @return volume [m3]
   */
  public double volumeM3(double depthM) {
    if (!(depthM >= 0)) {
      throw new IllegalArgumentException("the depth must be >= 0 but was " + depthM + " m");
    }
    double z = sideSlope;
    return 4 * z * z * Math.pow(depthM, 3) / 3
        + z * (floorLengthM + floorWidthM) * depthM * depthM
        + floorWidthM * floorLengthM * depthM;
  }

  /**
   * Volume to the top.
   *
   * @return volume [m3]
   */
  public double volumeM3() {
    return volumeM3(depthM);
  }

  /**
   * Surface at a depth.
   *
   * @param depthM depth above the floor [m]
   * @return area [m2]
   */
  public double areaM2(double depthM) {
    return (floorLengthM + 2 * sideSlope * depthM) * (floorWidthM + 2 * sideSlope * depthM);
  }

  /**
   * The depth below which a volume lies.
   *
   * @param volumeM3 volume, 0 to that of the pond [m3]
   * @return depth [m]
   * @throws IllegalArgumentException if the pond does not hold it
   */
  public double depthForM(double volumeM3) {
    if (!(volumeM3 >= 0 && volumeM3 <= volumeM3())) {
      throw new IllegalArgumentException(
          "the pond holds " + volumeM3() + " m3 but " + volumeM3 + " m3 is wanted");
    }
    return Roots.between("depth of the pond", d -> volumeM3(d) - volumeM3, 0, depthM);
  }
}
