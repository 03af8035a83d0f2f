package sandslurry.pump.piston;

import sandslurry.correlation.Physics;

/**
 * The flow of a pump whose pistons are pushed by hydraulic cylinders: at constant speed, with a
 * pause at each end of a stroke while the oil is turned over, in a line without an air vessel.
 *
 * <p>A cycle is two strokes of equal time. In a stroke the flow rises evenly over the changeover
 * time, stays level, falls evenly, and then stands for the dwell. One single-acting cylinder pushes
 * in one stroke of a cycle and stands in the other; one double-acting one pushes in both, less by
 * the rod in one of them; two single-acting ones push by turns.
 *
 * <pre>
 * q = shape / mean,   mean = (1/2 − d − c) (1 + s)
 * h = (L/g) V N / (c mean)
 * </pre>
 *
 * <p>q flow over mean flow; d dwell and c changeover as shares of the cycle; s strength of the
 * second stroke, 0, 1 − a or 1; a cross-section of the rod over that of the piston; h head that
 * speeds up a line of length L and mean velocity V as a rigid column; N cycles per second. By
 * definition of the motion; that it stands for a given machine is for its maker to say. A pump
 * whose cylinders overlap so that the flow never stands is not described: with a dwell of 0 the
 * flow still falls to nothing for a moment, which is on the safe side.
 *
 * @param cylinders 1, or 2 that act singly by turns
 * @param doubleActing true if both sides of the one piston pump
 * @param rodAreaShare a, 0 to below 1; only for a double-acting pump
 * @param dwellShare d, time that the flow stands at each end of a stroke over that of the cycle; 0
 *     to below 1/2
 * @param changeoverShare c, time in which the flow starts or stops over that of the cycle, above 0;
 *     2 c at most what the dwell leaves of a stroke
 */
public record HydraulicDrive(
    int cylinders,
    boolean doubleActing,
    double rodAreaShare,
    double dwellShare,
    double changeoverShare)
    implements StrokeDrive {
  /** Share of a cycle that a stroke takes with its dwell. */
  public static final double STROKE = 0.5;

  /** Checks the bounds. */
  public HydraulicDrive {
    if (!(cylinders == 1 || cylinders == 2 && !doubleActing)
        || !(rodAreaShare >= 0 && rodAreaShare < 1)
        || !doubleActing && rodAreaShare != 0
        || !fits(dwellShare, changeoverShare)) {
      throw new IllegalArgumentException(
          "hydraulic cylinders need one piston, or two that act singly, a share of rod of 0 to 1"
              + " only if double acting, and pauses that leave time to push, but have "
              + cylinders
              + ", "
              + rodAreaShare
              + ", "
              + dwellShare
              + ", "
              + changeoverShare);
    }
  }

  /**
   * Says whether dwell and changeover leave a stroke.
   *
   * @param dwellShare d
   * @param changeoverShare c
   * @return true if d is not negative, c positive and d + 2 c at most a half and d below it
   */
  public static boolean fits(double dwellShare, double changeoverShare) {
    return dwellShare >= 0
        && changeoverShare > 0
        && dwellShare + 2 * changeoverShare <= STROKE * (1 + 1e-12);
  }

  @Override
  public double relativeFlow(double angleRad) {
    double place = angleRad / (2 * Math.PI);
    place -= Math.floor(place);
    double strength = place < STROKE ? 1 : second();
    double within = place < STROKE ? place : place - STROKE;
    double left = STROKE - dwellShare - within;
    double shape = Math.min(1, Math.min(within, left) / changeoverShare);
    return strength * Math.max(0, shape) / mean();
  }

  @Override
  public FlowRipple ripple() {
    return new FlowRipple(0, 1 / mean());
  }

  @Override
  public double accelerationHeadM(double lengthM, double meanVelocityMps, double cyclesPerSecond) {
    StrokeDrive.requireLine(lengthM, meanVelocityMps, cyclesPerSecond);
    return lengthM
        / Physics.GRAVITY
        * meanVelocityMps
        * cyclesPerSecond
        / (changeoverShare * mean());
  }

  @Override
  public int pulsesPerCycle() {
    return second() > 0 ? 2 : 1;
  }

  private double second() {
    return cylinders == 2 ? 1 : doubleActing ? 1 - rodAreaShare : 0;
  }

  private double mean() {
    return (STROKE - dwellShare - changeoverShare) * (1 + second());
  }
}
