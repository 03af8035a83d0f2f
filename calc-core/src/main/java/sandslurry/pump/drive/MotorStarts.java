package sandslurry.pump.drive;

import java.util.OptionalDouble;
import sandslurry.units.Measure;

/**
 * How often the motor of a pump may start, when its maker does not say.
 *
 * <p>Least times from start to start of squirrel-cage induction motors, by their rating: 10 to 15
 * minutes below 15 kW, 15 to 20 from 15 to 75 kW, 20 to 30 to 185 kW, and above as recommended by
 * the maker (U.S. Army Corps of Engineers, Engineering Instructions 11C201, 1 March 1997, Table
 * 7-1; read on a public page). The shorter time of each row is a limit here, the longer one good
 * design. The maker's figure comes first; for soft starters and submerged motors it may be another.
 */
public final class MotorStarts {
  private static final double SMALL_W = Measure.POWER.entry("kW").toSi(15);
  private static final double MIDDLE_W = Measure.POWER.entry("kW").toSi(75);
  private static final double LARGE_W = Measure.POWER.entry("kW").toSi(185);

  private MotorStarts() {}

  /**
   * The most frequent starts.
   *
   * @param ratingW rating of the motor, positive [W]
   * @return one over the shorter time of its row; empty when only its maker can say [1/s]
   */
  public static OptionalDouble mostPs(double ratingW) {
    if (!(ratingW > 0 && Double.isFinite(ratingW))) {
      throw new IllegalArgumentException("a rating must be > 0 but was " + ratingW + " W");
    }
    if (ratingW > LARGE_W) {
      return OptionalDouble.empty();
    }
    double minutes = ratingW < SMALL_W ? 10 : ratingW < MIDDLE_W ? 15 : 20;
    return OptionalDouble.of(1 / Measure.TIME.entry("min").toSi(minutes));
  }
}
