package sandslurry.pump.rotodynamic;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import sandslurry.numeric.MonotoneCurve;

/**
 * Head and efficiency of a rotodynamic pump against flow.
 *
 * <p>Between the points given, both follow a smooth curve that never overshoots them ({@link
 * MonotoneCurve}). Beyond the points the curve refuses to answer: a pump curve must not be
 * extrapolated, least of all to run-out.
 *
 * <p>Head is in metres of the liquid pumped, which is why the head curve measured with water holds
 * for a denser mixture too, apart from the derating for solids.
 */
public final class PumpCurve {
  /** At the ends of a scaled curve a flow may miss the first or last point by a rounding. */
  private static final double ROUNDING = 1e-14;

  /** Least diameter that {@link #trimmed} allows, over the greatest diameter. */
  static final double LEAST_TRIM = 0.75;

  /** Places between two points at which a viscous correction is taken. */
  private static final int VISCOUS_STEPS = 8;

  private final MonotoneCurve head;
  private final MonotoneCurve efficiency;
  private final double flowScale;
  private final double headScale;
  private final double efficiencyScale;

  private PumpCurve(
      MonotoneCurve head,
      MonotoneCurve efficiency,
      double flowScale,
      double headScale,
      double efficiencyScale) {
    this.head = head;
    this.efficiency = efficiency;
    this.flowScale = flowScale;
    this.headScale = headScale;
    this.efficiencyScale = efficiencyScale;
  }

  /**
   * Makes a curve through measured points.
   *
   * @param points two points or more, in any order, no two with the same flow
   * @return the curve
   * @throws IllegalArgumentException if there are fewer than two points or two have the same flow
   */
  public static PumpCurve through(List<Point> points) {
    if (points.size() < 2) {
      throw new IllegalArgumentException(
          "a pump curve needs two points or more but has " + points.size());
    }
    List<Point> ascending =
        points.stream().sorted(Comparator.comparingDouble(Point::flowM3ps)).toList();
    for (int i = 1; i < ascending.size(); i++) {
      if (!(ascending.get(i).flowM3ps() > ascending.get(i - 1).flowM3ps())) {
        throw new IllegalArgumentException(
            "two points of a pump curve have the same flow, "
                + ascending.get(i).flowM3ps()
                + " m3/s");
      }
    }
    double[] flows = ascending.stream().mapToDouble(Point::flowM3ps).toArray();
    double[] heads = ascending.stream().mapToDouble(Point::headM).toArray();
    double[] efficiencies = ascending.stream().mapToDouble(Point::efficiency).toArray();
    return new PumpCurve(
        new MonotoneCurve(flows, heads), new MonotoneCurve(flows, efficiencies), 1, 1, 1);
  }

  /**
   * The least flow of the curve.
   *
   * @return the flow [m3/s]
   */
  public double leastFlowM3ps() {
    return head.from() * flowScale;
  }

  /**
   * The greatest flow of the curve.
   *
   * @return the flow [m3/s]
   */
  public double greatestFlowM3ps() {
    return head.to() * flowScale;
  }

  /**
   * Head at a flow.
   *
   * @param flowM3ps a flow within the curve [m3/s]
   * @return head in metres of the liquid pumped [m]
   * @throws IllegalArgumentException if the flow lies outside the curve
   */
  public double headM(double flowM3ps) {
    return headScale * head.at(abscissa(flowM3ps));
  }

  /**
   * Pump efficiency at a flow.
   *
   * @param flowM3ps a flow within the curve [m3/s]
   * @return hydraulic power given over shaft power taken
   * @throws IllegalArgumentException if the flow lies outside the curve
   */
  public double efficiency(double flowM3ps) {
    return efficiencyScale * efficiency.at(abscissa(flowM3ps));
  }

  /**
   * The curve at another speed, by the affinity laws: flow in proportion to the speed, head to its
   * square, efficiency unchanged at corresponding points.
   *
   * <pre>H'(Q) = r² H(Q/r),  η'(Q) = η(Q/r)</pre>
   *
   * <p>The laws are exact for the curve between the points too. The efficiency of a real pump falls
   * when it is slowed down by much: below about 0.7 of the tested speed treat it as an upper bound
   * (common practice, no source).
   *
   * @param ratio r, the new speed over the speed of this curve; positive
   * @return the curve
   */
  public PumpCurve atSpeed(double ratio) {
    if (!(ratio > 0) || Double.isInfinite(ratio)) {
      throw new IllegalArgumentException("a speed ratio must be > 0 but was " + ratio);
    }
    return new PumpCurve(
        head, efficiency, flowScale * ratio, headScale * ratio * ratio, efficiencyScale);
  }

  /**
   * The curve with the impeller turned down, by the affinity laws of diameter: flow in proportion
   * to the diameter, head to its square, efficiency unchanged at corresponding points.
   *
   * <p>The laws of diameter are an approximation, unlike those of speed, because the casing stays:
   * they serve for small trims. Real trims lose efficiency and some more head than computed, so cut
   * in steps. Below 90 % of the diameter take the curve from its maker (common practice, no
   * source). A US Department of Energy tip sheet (Pumping Systems Tip Sheet 7, 2006, read) limits
   * trimming to about 75 % of the greatest impeller.
   *
   * @param ratio new impeller diameter over that of this curve, {@value #LEAST_TRIM} to 1
   * @return the curve
   */
  public PumpCurve trimmed(double ratio) {
    if (!(ratio >= LEAST_TRIM && ratio <= 1)) {
      throw new IllegalArgumentException(
          "an impeller is trimmed to "
              + LEAST_TRIM
              + " to 1 of its diameter but the ratio was "
              + ratio);
    }
    return atSpeed(ratio);
  }

  /**
   * The curve of a worn pump: less head at every flow, at the same shaft power, so that the
   * efficiency falls as the head does.
   *
   * @param headLossShare share of the head that wear has taken, 0 to below 1; the user's estimate
   *     or measurement, for no formula tells it
   * @return the curve
   */
  public PumpCurve worn(double headLossShare) {
    return derated(1 - headLossShare, 1 - headLossShare);
  }

  /**
   * Flow at the best efficiency of the curve. The curve never overshoots its points, so this is the
   * point with the greatest efficiency: it is known no better than the points are spaced.
   *
   * @return the flow; the least one if several points share the greatest efficiency [m3/s]
   */
  public double bestEfficiencyFlowM3ps() {
    double best = leastFlowM3ps();
    for (double flow : pointFlowsM3ps()) {
      if (efficiency(flow) > efficiency(best)) {
        best = flow;
      }
    }
    return best;
  }

  /**
   * The greatest flow at which the pump has a head; the end of its curve when it has more there,
   * and 0 when its check valve stays shut.
   */
  double flowAtM3ps(double headM) {
    if (!(headM(leastFlowM3ps()) >= headM)) {
      return 0;
    }
    return flowScale * head.lastAbscissa(Math.min(headM / headScale, head.at(head.from())));
  }

  /** The flows of the points, ascending; between two of them the head is monotone. */
  double[] pointFlowsM3ps() {
    double[] flows = head.abscissas();
    for (int i = 0; i < flows.length; i++) {
      flows[i] *= flowScale;
    }
    return flows;
  }

  /**
   * The curve with solids in the liquid: head and efficiency of clear liquid times their ratios, at
   * the same flow of mixture.
   *
   * @param headRatio head with solids, in metres of mixture, over head without, in metres of liquid
   * @param efficiencyRatio efficiency with solids over efficiency without
   * @return the curve, in metres of mixture
   */
  public PumpCurve derated(double headRatio, double efficiencyRatio) {
    if (!(headRatio > 0 && headRatio <= 1) || !(efficiencyRatio > 0 && efficiencyRatio <= 1)) {
      throw new IllegalArgumentException(
          "ratios of derating lie above 0 and at most at 1 but were "
              + headRatio
              + " (head) and "
              + efficiencyRatio
              + " (efficiency)");
    }
    return new PumpCurve(
        head, efficiency, flowScale, headScale * headRatio, efficiencyScale * efficiencyRatio);
  }

  /**
   * The curve of the pump in a viscous liquid. Between two points the correction is taken at eight
   * places, so that the corrected curve follows the curve for water and not only its points. A
   * curve that the correction takes to no head ends there.
   *
   * <p>A viscous curve does not follow the laws of speed: correct after {@link #atSpeed}. Scaling
   * the corrected curve to a higher speed errs on the safe side, because a faster pump loses less.
   *
   * @param correction the correction for this curve, at its speed, with efficiency left
   * @return the curve in the liquid; this curve itself when nothing changes
   * @throws IllegalArgumentException if the correction leaves no head where the curve begins
   */
  public PumpCurve viscous(ViscousCorrection correction) {
    if (correction.none()) {
      return this;
    }
    double end = correction.endOfHeadM3ps();
    List<Point> corrected = new ArrayList<>();
    double[] flows = pointFlowsM3ps();
    for (int i = 0; i < flows.length; i++) {
      for (int k = 0; k < (i == flows.length - 1 ? 1 : VISCOUS_STEPS); k++) {
        double water = k == 0 ? flows[i] : flows[i] + (flows[i + 1] - flows[i]) * k / VISCOUS_STEPS;
        if (water < end) {
          corrected.add(corrected(correction, water));
        }
      }
    }
    if (end < flows[flows.length - 1]) {
      corrected.add(corrected(correction, end));
    }
    return through(corrected);
  }

  private Point corrected(ViscousCorrection correction, double waterFlowM3ps) {
    // A curve that ends at no head or no efficiency may end a rounding below.
    return new Point(
        correction.flowRatio() * waterFlowM3ps,
        Math.max(0, correction.headRatio(waterFlowM3ps)) * Math.max(0, headM(waterFlowM3ps)),
        correction.efficiencyRatio() * Math.max(0, efficiency(waterFlowM3ps)));
  }

  private double abscissa(double flowM3ps) {
    double slack = ROUNDING * greatestFlowM3ps();
    if (!(flowM3ps >= leastFlowM3ps() - slack && flowM3ps <= greatestFlowM3ps() + slack)) {
      throw new IllegalArgumentException(
          "a flow of "
              + flowM3ps
              + " m3/s lies outside the pump curve, "
              + leastFlowM3ps()
              + " to "
              + greatestFlowM3ps()
              + " m3/s; it is not extrapolated");
    }
    return Math.min(Math.max(flowM3ps / flowScale, head.from()), head.to());
  }

  /**
   * One measured point.
   *
   * @param flowM3ps flow [m3/s]
   * @param headM head in metres of the liquid pumped [m]
   * @param efficiency pump efficiency, 0 to 1; 0 at shut-off
   */
  public record Point(double flowM3ps, double headM, double efficiency) {
    /**
     * Checks that flow and head are not negative and that the efficiency is a fraction.
     *
     * @param flowM3ps flow [m3/s]
     * @param headM head in metres of the liquid pumped [m]
     * @param efficiency pump efficiency, 0 to 1; 0 at shut-off
     * @throws IllegalArgumentException if one of them is not
     */
    public Point {
      if (!(flowM3ps >= 0) || Double.isInfinite(flowM3ps)) {
        throw new IllegalArgumentException(
            "the flow of a pump curve must be >= 0 but was " + flowM3ps + " m3/s");
      }
      if (!(headM >= 0) || Double.isInfinite(headM)) {
        throw new IllegalArgumentException(
            "the head of a pump curve must be >= 0 but was " + headM + " m");
      }
      if (!(efficiency >= 0 && efficiency < 1)) {
        throw new IllegalArgumentException(
            "a pump efficiency lies in 0 to 1, 1 excluded, but was " + efficiency);
      }
    }
  }
}
