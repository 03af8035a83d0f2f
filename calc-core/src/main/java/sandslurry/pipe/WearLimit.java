package sandslurry.pipe;

import java.util.Optional;
import sandslurry.units.Measure;

/**
 * The velocity above which wear is a caution: that of the criteria, or else half as much again as
 * there is at the lowest flow rate that carries the sand, but not less than that at which abrasion
 * begins to be a problem, nor more than that of the fastest lines that are built.
 *
 * @param set the limit of the criteria, where one is set [m/s]
 * @param carriesFromM3ps the lowest flow rate that carries the sand in the whole line; 0 when none
 *     does [m3/s]
 */
public record WearLimit(Optional<Double> set, double carriesFromM3ps) {
  /**
   * Faster than this, pipe abrasion becomes a problem [m/s]: "Speed limits for slurry pumps",
   * McNally Institute, mcnallyinstitute.com/s-html/s074.htm ("greater than 10 ft/sec").
   */
  public static final double ABRASIVE_MPS = Measure.SPEED.si(Measure.SPEED.of(10, "ft/s"));

  /**
   * "Brute force systems", such as dredging lines, run as fast as 5.5 to 6 m/s: "Fluid Mechanics,
   * Heat Transfer, and Mass Transfer: Chemical Engineering Practice", page 221 [m/s].
   */
  public static final double FASTEST_MPS = 6;

  /**
   * Times what the sand needs: faster is wear for nothing (a choice of this program, no source).
   */
  private static final double SURPLUS = 1.5;

  /**
   * The limit in a run.
   *
   * @param velocityMps mean velocity there [m/s]
   * @param flowM3ps at this flow rate [m3/s]
   * @return velocity [m/s]
   */
  public double limitMps(double velocityMps, double flowM3ps) {
    return set.orElseGet(
        () -> {
          double enough = SURPLUS * velocityMps * carriesFromM3ps / flowM3ps;
          return Math.min(Math.max(enough, ABRASIVE_MPS), FASTEST_MPS);
        });
  }
}
