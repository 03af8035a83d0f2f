package sandslurry.separation.lane;

import sandslurry.separation.Numbers;

/**
 * Lanes in turn: one fills while the others drain, are dug out and wait.
 *
 * @param fillS time in which a lane fills [s]
 * @param drainS time it is left to drain [s]
 * @param digS time to dig it out [s]
 */
public record LaneTurn(double fillS, double drainS, double digS) {
  /** Checks that the times are not negative and that filling takes some time. */
  public LaneTurn {
    Numbers.positive("the time to fill", fillS, "s");
    Numbers.notNegative("the time to drain", drainS, "s");
    Numbers.notNegative("the time to dig", digS, "s");
  }

  /**
   * Least number of lanes of which one can always be fed.
   *
   * @return 1 for the one that fills and as many as drain and are dug meanwhile
   */
  public double lanesNeeded() {
    return 1 + Math.ceil((drainS + digS) / fillS);
  }

  /**
   * Time that a lane waits, clean, for its turn.
   *
   * @param lanes number of lanes, 1 or more
   * @return the time, negative by what is lacking when there are too few [s]
   */
  public double waitS(int lanes) {
    if (!(lanes >= 1)) {
      throw new IllegalArgumentException("need one lane or more but have " + lanes);
    }
    return (lanes - 1) * fillS - drainS - digS;
  }

  /**
   * Share of the time in which no lane is ready.
   *
   * @param lanes number of lanes, 1 or more
   * @return what is lacking over the time from one filling of a lane to its next; 0 with enough
   */
  public double idleShare(int lanes) {
    return Math.max(0, -waitS(lanes)) / (fillS + drainS + digS);
  }
}
