package sandslurry.pump.piston;

import java.util.Optional;

/**
 * Where the relief valve of a piston pump may be set: above the greatest working pressure, so that
 * it stays shut, and so far below the rating of the weakest part that the pressure while it blows
 * stays within the rating.
 *
 * <p>A tenth on either side is common practice, no source. The codes for the vessel and the pipe
 * come first. A relief valve that manure can clog is none: it needs a flushed or a diaphragm-sealed
 * inlet. It does not stop a surge, which is faster.
 *
 * @param leastPa least setting [Pa]
 * @param greatestPa greatest setting [Pa]
 */
public record ReliefWindow(double leastPa, double greatestPa) {
  /** Setting over greatest working pressure, and rating over setting. */
  static final double MARGIN = 1.1;

  /**
   * The window.
   *
   * @param greatestWorkingPa greatest pressure in operation, with ripple and acceleration; not
   *     negative [Pa]
   * @param weakestRatingPa rating of the weakest part of pump and line, warm; positive [Pa]
   * @return the window; nothing when the rating leaves no room
   */
  public static Optional<ReliefWindow> of(double greatestWorkingPa, double weakestRatingPa) {
    if (!(greatestWorkingPa >= 0 && Double.isFinite(greatestWorkingPa))
        || !(weakestRatingPa > 0 && Double.isFinite(weakestRatingPa))) {
      throw new IllegalArgumentException(
          "a relief needs a working pressure >= 0 and a rating > 0 but has "
              + greatestWorkingPa
              + " Pa and "
              + weakestRatingPa
              + " Pa");
    }
    double least = MARGIN * greatestWorkingPa;
    double greatest = weakestRatingPa / MARGIN;
    return least <= greatest ? Optional.of(new ReliefWindow(least, greatest)) : Optional.empty();
  }

  /**
   * Whether a relief is set inside the window.
   *
   * @param settingPa pressure at which it opens [Pa]
   * @return true from the least to the greatest setting
   */
  public boolean holds(double settingPa) {
    return settingPa >= leastPa && settingPa <= greatestPa;
  }

  /**
   * The rating that leaves room for a relief.
   *
   * @param greatestWorkingPa greatest pressure in operation [Pa]
   * @return the least rating of the weakest part, 0 or more [Pa]
   */
  public static double neededRatingPa(double greatestWorkingPa) {
    return MARGIN * MARGIN * Math.max(greatestWorkingPa, 0);
  }
}
