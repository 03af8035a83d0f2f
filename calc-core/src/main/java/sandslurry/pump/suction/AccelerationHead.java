package sandslurry.pump.suction;

import java.util.List;
import java.util.OptionalDouble;
import sandslurry.correlation.About;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Correlation;
import sandslurry.correlation.Estimate;
import sandslurry.correlation.Physics;
import sandslurry.pump.piston.CrankDrive;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;

/**
 * Acceleration head of a piston pump by the formula of the pump handbooks.
 *
 * <pre>h = L V N C / (k g)</pre>
 *
 * <p>h head, in metres of the liquid, that the suction side lacks and the discharge side bears on
 * top at the worst moment of a cycle [m]; L length of line filled with liquid [m]; V mean velocity
 * in it [m/s]; N turns per minute; C constant of the kind of pump; k give of the liquid; g gravity
 * [m/s²]. C contains the 60 of the minute, so the formula is the same in feet. C is π/30 times the
 * greatest acceleration of {@link CrankDrive} for a connecting rod of about five cranks, which was
 * found here: 0.40 for one single-acting cylinder.
 *
 * <p>The formula and its constants C were read on public pages that copy the handbooks' table; the
 * give k is from memory, unverified. It is not for long lines.
 */
public final class AccelerationHead implements Correlation {
  /** k of water and liquids like it. */
  public static final double WATER = 1.5;

  /** k of water without air, the least and so the severest. */
  public static final double WATER_WITHOUT_AIR = 1.4;

  private static final Bound LENGTH = new Bound("length of line", Kind.LENGTH, 0, 15);

  private static final About ABOUT =
      new About(
          "acceleration-head",
          "Acceleration head of the pump handbooks",
          "h = L V N C / (k g)",
          new Citation(
              "Hydraulic Institute",
              1994,
              "ANSI/HI 6.1-6.5, Reciprocating Power Pumps; formula and constants read on later pages,"
                  + " year from memory, unverified"),
          List.of(LENGTH));

  /** Creates the formula; it has no state. */
  public AccelerationHead() {}

  /**
   * The constant of a kind of pump.
   *
   * @param cylinders how many
   * @param doubleActing true if both sides of a piston pump
   * @return C; nothing for a kind that the handbooks do not list, for which {@link CrankDrive} has
   *     the acceleration
   */
  public static OptionalDouble constant(int cylinders, boolean doubleActing) {
    if (doubleActing) {
      return switch (cylinders) {
        case 1 -> OptionalDouble.of(0.200);
        case 2 -> OptionalDouble.of(0.115);
        default -> OptionalDouble.empty();
      };
    }
    return switch (cylinders) {
      case 1 -> OptionalDouble.of(0.400);
      case 2 -> OptionalDouble.of(0.200);
      case 3 -> OptionalDouble.of(0.066);
      case 5 -> OptionalDouble.of(0.040);
      default -> OptionalDouble.empty();
    };
  }

  /**
   * Acceleration head.
   *
   * @param lengthM L, not negative [m]
   * @param meanVelocityMps V, not negative [m/s]
   * @param cyclesPerSecond turns per second, not negative [1/s]
   * @param constant C, see {@link #constant}
   * @param give k, see {@link #WATER}
   * @return h [m], and what lay outside the range
   */
  public Estimate headM(
      double lengthM,
      double meanVelocityMps,
      double cyclesPerSecond,
      double constant,
      double give) {
    requireLine(lengthM, meanVelocityMps, cyclesPerSecond);
    if (!(constant > 0) || !(give >= 1)) {
      throw new IllegalArgumentException(
          "acceleration head needs C > 0 and k >= 1 but has " + constant + " and " + give);
    }
    return Estimate.checks()
        .check(LENGTH, lengthM)
        .value(
            lengthM
                * meanVelocityMps
                * InUnit.perMinute(cyclesPerSecond)
                * constant
                / (give * Physics.GRAVITY));
  }

  /**
   * Checks what every acceleration of a suction line is asked with.
   *
   * @param lengthM length of the line, 0 or more [m]
   * @param velocityMps mean velocity, 0 or more [m/s]
   * @param cyclesPerSecond strokes of one cylinder, 0 or more [1/s]
   * @throws IllegalArgumentException if one of them is negative or no number
   */
  public static void requireLine(double lengthM, double velocityMps, double cyclesPerSecond) {
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

  @Override
  public About about() {
    return ABOUT;
  }
}
