package sandslurry.pipe;

/**
 * The lower part of a round cross-section, up to a level: a bed of sand, or the liquid in a pipe
 * that does not run full.
 *
 * <pre>
 * β = arccos(1 − 2 y/D),   A = D²/4 (β − sin β cos β),   P = D β,   B = D sin β
 * </pre>
 *
 * <p>y depth [m]; D bore [m]; β half the angle that the level subtends at the axis; A area [m²]; P
 * arc below the level [m]; B width of the level [m].
 *
 * @param diameterM D [m]
 * @param depthShare y/D, 0 to 1
 */
public record CircularSegment(double diameterM, double depthShare) {
  /** Up to here the next term of the series is less than the rounding of a double. */
  private static final double SERIES_ENOUGH = 0.25;

  /**
   * A step of this size is the last: Newton's method leaves an error of the order of its square.
   */
  private static final double SETTLED = 1e-7;

  /** Checks that the diameter is positive and the depth within it. */
  public CircularSegment {
    if (!(diameterM > 0 && Double.isFinite(diameterM)) || !(depthShare >= 0 && depthShare <= 1)) {
      throw new IllegalArgumentException(
          "a segment of a bore needs a diameter > 0 and a depth of 0 to 1 diameter but has "
              + diameterM
              + " m and "
              + depthShare);
    }
  }

  /**
   * The segment that takes a share of the cross-section.
   *
   * @param diameterM D [m]
   * @param areaShare area of the segment over that of the bore, 0 to 1
   * @return the segment
   */
  public static CircularSegment ofAreaShare(double diameterM, double areaShare) {
    if (!(areaShare >= 0 && areaShare <= 1)) {
      throw new IllegalArgumentException(
          "a share of the cross-section lies in 0 to 1 but was " + areaShare);
    }
    if (areaShare == 0 || areaShare == 1) {
      return new CircularSegment(diameterM, areaShare);
    }
    // 1 − cos β loses all digits of a thin layer, 2 sin²(β/2) none.
    double sine = Math.sin(halfAngleRad(areaShare) / 2);
    return new CircularSegment(diameterM, sine * sine);
  }

  /**
   * Half the angle of the segment that takes a share of the cross-section.
   *
   * @param areaShare area of the segment over that of the bore, 0 to 1
   * @return β, 0 to π [rad]
   */
  public static double halfAngleRad(double areaShare) {
    return areaShare > 0.5
        ? Math.PI - smallHalfAngleRad(1 - areaShare)
        : smallHalfAngleRad(areaShare);
  }

  /**
   * The same up to half of the bore. 2β − sin 2β is 2π times the share: Kepler's equation of the
   * parabola, whose series in the cube root s of six times that is exact to a double for small s
   * and then the start of Newton's method.
   */
  private static double smallHalfAngleRad(double areaShare) {
    double s = Math.cbrt(12 * Math.PI * areaShare);
    double s2 = s * s;
    double half =
        s
            / 2
            * (1
                + s2
                    * (1.0 / 60
                        + s2
                            * (1.0 / 1400
                                + s2
                                    * (1.0 / 25200
                                        + s2 * (43.0 / 17248000 + s2 * 1213.0 / 7207200000.0)))));
    double step = s > SERIES_ENOUGH ? 1 : 0;
    while (Math.abs(step) > SETTLED) {
      double sine = Math.sin(half);
      step = (half - sine * Math.cos(half) - Math.PI * areaShare) / (2 * sine * sine);
      half -= step;
    }
    return half;
  }

  /**
   * Depth.
   *
   * @return y [m]
   */
  public double depthM() {
    return depthShare * diameterM;
  }

  /**
   * Half the angle that the level subtends at the axis.
   *
   * @return β, 0 to π [rad]
   */
  public double halfAngleRad() {
    return 2 * Math.asin(Math.sqrt(depthShare));
  }

  /**
   * Area below the level.
   *
   * @return A [m2]
   */
  public double areaM2() {
    return diameterM * diameterM / 4 * halfAngleArea(halfAngleRad());
  }

  /**
   * Arc of the wall below the level.
   *
   * @return P [m]
   */
  public double wettedPerimeterM() {
    return diameterM * halfAngleRad();
  }

  /**
   * Width of the level.
   *
   * @return B, 0 when empty or full [m]
   */
  public double surfaceWidthM() {
    return 2 * diameterM * Math.sqrt(depthShare * (1 - depthShare));
  }

  private static double halfAngleArea(double half) {
    return half - Math.sin(half) * Math.cos(half);
  }
}
