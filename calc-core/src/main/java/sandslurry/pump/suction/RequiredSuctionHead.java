package sandslurry.pump.suction;

import java.util.Comparator;
import java.util.List;
import sandslurry.numeric.MonotoneCurve;

/**
 * Net positive suction head that a pump needs, through points of its maker, against flow.
 *
 * <p>Between the points it follows a curve that never overshoots; beyond them it refuses to answer.
 * At another speed flow goes with the speed and NPSH about with its square (from memory,
 * unverified; below the tested speed the square is optimistic).
 */
public final class RequiredSuctionHead {
  private final MonotoneCurve head;
  private final double ratio;

  private RequiredSuctionHead(MonotoneCurve head, double ratio) {
    this.head = head;
    this.ratio = ratio;
  }

  /**
   * One point of a maker's curve.
   *
   * @param flowM3ps flow, not negative [m3/s]
   * @param requiredM NPSH required, that at which the pump has lost 3 % of its head; positive [m]
   */
  public record Point(double flowM3ps, double requiredM) {
    /** Checks the signs. */
    public Point {
      if (!(flowM3ps >= 0 && Double.isFinite(flowM3ps))
          || !(requiredM > 0 && Double.isFinite(requiredM))) {
        throw new IllegalArgumentException(
            "a point of NPSH needs a flow >= 0 and a head > 0 but has "
                + flowM3ps
                + " m3/s and "
                + requiredM
                + " m");
      }
    }
  }

  /**
   * Makes a curve.
   *
   * @param points two points or more, in any order, no two with the same flow
   * @return the curve
   */
  public static RequiredSuctionHead through(List<Point> points) {
    List<Point> ascending =
        points.stream().sorted(Comparator.comparingDouble(Point::flowM3ps)).toList();
    return new RequiredSuctionHead(
        new MonotoneCurve(
            ascending.stream().mapToDouble(Point::flowM3ps).toArray(),
            ascending.stream().mapToDouble(Point::requiredM).toArray()),
        1);
  }

  /**
   * NPSH required at a flow.
   *
   * @param flowM3ps a flow within the points [m3/s]
   * @return NPSH required [m]
   * @throws IllegalArgumentException if the flow lies outside the points
   */
  public double requiredM(double flowM3ps) {
    return ratio * ratio * head.at(flowM3ps / ratio);
  }

  /**
   * The curve at another speed.
   *
   * @param speedRatio new speed over that of this curve, positive
   * @return the curve
   */
  public RequiredSuctionHead atSpeed(double speedRatio) {
    if (!(speedRatio > 0 && Double.isFinite(speedRatio))) {
      throw new IllegalArgumentException("a speed ratio must be > 0 but was " + speedRatio);
    }
    return new RequiredSuctionHead(head, ratio * speedRatio);
  }
}
