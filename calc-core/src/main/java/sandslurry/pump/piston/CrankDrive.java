package sandslurry.pump.piston;

import sandslurry.correlation.Physics;

/**
 * The flow of a piston pump within a turn of its crank, in a line without an air vessel, of a
 * liquid that does not give, with valves that open at once.
 *
 * <pre>
 * v(φ) = sin φ + sin φ cos φ / √(λ² − sin² φ)       piston speed over r ω
 * q(φ) = Σ [max(v, 0) + s max(−v, 0)] / mean          s = 0 single acting, 1 − a double acting
 * </pre>
 *
 * <p>φ angle of the crank from the dead centre far from it; λ length of the connecting rod over
 * crank radius r; ω speed of turning; a cross-section of the piston rod over that of the piston.
 * The sum runs over the cylinders, whose cranks stand evenly apart: 360°/z, but 180°/z for an even
 * number of double-acting ones (90° for two). Suction and discharge mirror each other in time, so
 * their ripple and their greatest acceleration are the same. With an infinite rod the motion is a
 * sine. A pump driven by a hydraulic cylinder has no crank: see {@link HydraulicDrive}.
 *
 * @param cylinders z, at least 1
 * @param doubleActing true if both sides of a piston pump
 * @param rodAreaShare a, 0 to below 1; only for double-acting pumps
 * @param rodToCrank λ, above 1; infinite for a sine
 */
public record CrankDrive(
    int cylinders, boolean doubleActing, double rodAreaShare, double rodToCrank)
    implements StrokeDrive {
  private static final int STEPS_PER_HALF_SPACING = 720;
  private static final double BESIDE = 1e-9;

  /** Checks the bounds. */
  public CrankDrive {
    if (cylinders < 1
        || !(rodAreaShare >= 0 && rodAreaShare < 1)
        || !(rodToCrank > 1)
        || !doubleActing && rodAreaShare != 0) {
      throw new IllegalArgumentException(
          "a crank drive needs a cylinder, a rod longer than the crank and, only if double acting,"
              + " a share of rod of 0 to 1 but has "
              + cylinders
              + ", "
              + rodToCrank
              + ", "
              + rodAreaShare);
    }
  }

  @Override
  public double relativeFlow(double angleRad) {
    double sum = 0;
    for (int i = 0; i < cylinders; i++) {
      double angle = angleRad + i * spacing();
      double speed = Math.sin(angle) * (1 + Math.cos(angle) / rodTerm(angle));
      sum += speed > 0 ? speed : otherSide() * -speed;
    }
    return sum / mean();
  }

  @Override
  public FlowRipple ripple() {
    double least = 1;
    double greatest = 1;
    for (int i = 0; i < steps(); i++) {
      double flow = relativeFlow(2 * Math.PI * i / steps());
      least = Math.min(least, flow);
      greatest = Math.max(greatest, flow);
    }
    // A dead centre falls on a step but for a rounding.
    return new FlowRipple(least < BESIDE ? 0 : least, greatest);
  }

  /**
   * Greatest acceleration or slowing of the flow.
   *
   * @return greatest |dq/dφ| [1/rad]
   */
  public double greatestAccelerationPerRad() {
    double greatest = 0;
    for (int i = 0; i < steps(); i++) {
      double angle = 2 * Math.PI * i / steps();
      // At a dead centre the slope has a step: both sides are asked.
      greatest = Math.max(greatest, Math.abs(slope(angle - BESIDE)));
      greatest = Math.max(greatest, Math.abs(slope(angle + BESIDE)));
    }
    return greatest;
  }

  /**
   * Head that it takes to speed up the liquid in a line at the worst moment, as a rigid column.
   *
   * <pre>h = (L/g) V ω |dq/dφ|</pre>
   *
   * <p>It holds for a line in which a pressure wave runs to and fro in a small part of a turn; in a
   * long line the head is that of a pressure wave, {@link sandslurry.pipe.surge.Joukowsky1898}.
   * Elastic liquid, pipe and free gas take some off: the formula of the pump handbooks divides by
   * 1.5 for water.
   *
   * @param lengthM L, length of line filled with liquid up to a free surface or air vessel [m]
   * @param meanVelocityMps V, mean velocity in it, not negative [m/s]
   * @param cyclesPerSecond turns of the crank per second, not negative [1/s]
   * @return h, in metres of the liquid [m]
   */
  @Override
  public double accelerationHeadM(double lengthM, double meanVelocityMps, double cyclesPerSecond) {
    StrokeDrive.requireLine(lengthM, meanVelocityMps, cyclesPerSecond);
    return lengthM
        / Physics.GRAVITY
        * meanVelocityMps
        * 2
        * Math.PI
        * cyclesPerSecond
        * greatestAccelerationPerRad();
  }

  /** That of the cylinders; twice as many when both sides pump. */
  @Override
  public int pulsesPerCycle() {
    return doubleActing ? 2 * cylinders : cylinders;
  }

  private double slope(double angleRad) {
    double sum = 0;
    for (int i = 0; i < cylinders; i++) {
      double angle = angleRad + i * spacing();
      double sine = Math.sin(angle);
      double cosine = Math.cos(angle);
      double rod = rodTerm(angle);
      double slope = cosine + Math.cos(2 * angle) / rod + sine * sine * cosine * cosine / cube(rod);
      sum += sine > 0 ? slope : otherSide() * -slope;
    }
    return sum / mean();
  }

  private static double cube(double x) {
    return x * x * x;
  }

  private double rodTerm(double angle) {
    double sine = Math.sin(angle);
    return Math.sqrt(rodToCrank * rodToCrank - sine * sine);
  }

  private double otherSide() {
    return doubleActing ? 1 - rodAreaShare : 0;
  }

  private double mean() {
    return cylinders * (1 + otherSide()) / Math.PI;
  }

  private double spacing() {
    return (doubleActing && cylinders % 2 == 0 ? Math.PI : 2 * Math.PI) / cylinders;
  }

  private int steps() {
    return 2 * cylinders * STEPS_PER_HALF_SPACING;
  }
}
