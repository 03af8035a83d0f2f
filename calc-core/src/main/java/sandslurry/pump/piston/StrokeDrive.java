package sandslurry.pump.piston;

/** How a drive moves the pistons of a pump, and so how the flow of the pump goes within a cycle. */
public sealed interface StrokeDrive permits CrankDrive, HydraulicDrive {
  /** Steps in which {@link #surplusShare} goes through a cycle. */
  int SURPLUS_STEPS = 7200;

  /**
   * Momentary flow.
   *
   * @param angleRad place in the cycle, 2 π for a whole one [rad]
   * @return flow over mean flow
   */
  double relativeFlow(double angleRad);

  /**
   * Least and greatest momentary flow.
   *
   * @return the ripple
   */
  FlowRipple ripple();

  /**
   * Head that it takes to speed up the liquid in a line at the worst moment, as a rigid column.
   *
   * @param lengthM length of line filled with liquid up to a free surface or air vessel [m]
   * @param meanVelocityMps mean velocity in it, not negative [m/s]
   * @param cyclesPerSecond cycles per second, not negative [1/s]
   * @return head in metres of the liquid [m]
   */
  double accelerationHeadM(double lengthM, double meanVelocityMps, double cyclesPerSecond);

  /**
   * How often in a cycle the flow swells.
   *
   * @return 1 or more
   */
  int pulsesPerCycle();

  /**
   * Volume that one swell brings above the mean flow: what an air vessel must store.
   *
   * @return that volume over the volume delivered in a cycle
   */
  default double surplusShare() {
    double above = 0;
    for (int i = 0; i < SURPLUS_STEPS; i++) {
      above += Math.max(0, relativeFlow(2 * Math.PI * (i + 0.5) / SURPLUS_STEPS) - 1);
    }
    return above / SURPLUS_STEPS / pulsesPerCycle();
  }

  /**
   * Checks what an acceleration head is worked out from.
   *
   * @param lengthM length of line, 0 or more [m]
   * @param velocityMps mean velocity, 0 or more [m/s]
   * @param cyclesPerSecond cycles per second, 0 or more [1/s]
   * @throws IllegalArgumentException if one of them is negative or no number
   */
  static void requireLine(double lengthM, double velocityMps, double cyclesPerSecond) {
    if (!(lengthM >= 0 && Double.isFinite(lengthM))
        || !(velocityMps >= 0 && Double.isFinite(velocityMps))
        || !(cyclesPerSecond >= 0 && Double.isFinite(cyclesPerSecond))) {
      throw new IllegalArgumentException(
          "acceleration head needs a length, a velocity and a rate >= 0 but has "
              + lengthM
              + " m, "
              + velocityMps
              + " m/s, "
              + cyclesPerSecond
              + " 1/s");
    }
  }
}
