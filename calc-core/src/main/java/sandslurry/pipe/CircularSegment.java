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
    double half = areaShare > 0.5 ? Math.PI - halfAngleRad(1 - areaShare) : halfAngleRad(areaShare);
    // 1 − cos β loses all digits of a thin layer, 2 sin²(β/2) none.
    double sine = Math.sin(half / 2);
    return new CircularSegment(diameterM, sine * sine);
  }

  /**
   * Half the angle of a segment up to half of the bore, by Newton's method from the thin layer, of
   * which β − sin β cos β is 2 β³/3. The area grows ever faster with β there, so that the steps
   * lead to the root from above and shrink until rounding alone is left.
   */
  private static double halfAngleRad(double areaShare) {
    double half = Math.cbrt(1.5 * Math.PI * areaShare);
    double before = Double.POSITIVE_INFINITY;
    while (true) {
      double sine = Math.sin(half);
      double step = (halfAngleArea(half) - Math.PI * areaShare) / (2 * sine * sine);
      if (!(Math.abs(step) < before)) {
        return half;
      }
      half -= step;
      before = Math.abs(step);
    }
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
