package sandslurry.transport.deposition;

import java.util.List;
import sandslurry.correlation.About;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Correlation;
import sandslurry.correlation.Estimate;
import sandslurry.fact.step.Equation;
import sandslurry.numeric.MonotoneCurve;
import sandslurry.units.Kind;

/**
 * How much an upward slope adds to the deposition velocity, after the chart of Wilson and Tse.
 *
 * <pre>V(θ) = V(0) + Δ(θ) √(2 g D (s − 1))</pre>
 *
 * <p>V(θ) deposition velocity in a pipe rising at the angle θ [m/s]; V(0) that of the level pipe
 * [m/s]; Δ increment of the Durand number; g gravity [m/s²]; D bore [m]; s density of sand over
 * density of carrier. Points of the chart used: 0° 0, 5° 0.08, 10° 0.15, 20° 0.27, 30° 0.34, 35°
 * 0.36, from memory, unverified, joined by a monotone curve. They were checked against the force
 * balance of a sliding bed, in which a slope multiplies the driving shear by cos θ + sin θ/μs: with
 * μs = 0.4 and a Durand number of 0.75 for the level pipe that gives 0.08, 0.14, 0.25, 0.34 and
 * 0.38.
 *
 * <p>Downward the chart is negative; that credit is <b>not</b> given here, the increment is 0:
 * tests in descending pipes (Matoušek and others, 2018, ASME FEDSM2018-83423, abstract) found the
 * flow more stratified than in the level pipe, and sand that does come to rest slides as an
 * avalanche. Above 35° the increment stays at its maximum and the result says that it is out of
 * range: towards the vertical there is no bed any more and the question becomes whether the liquid
 * rises faster than the sand falls.
 */
public final class WilsonTse1984 implements Correlation {
  private static final double STEEPEST_DEGREES = 35;
  private static final MonotoneCurve CHART =
      new MonotoneCurve(
          new double[] {0, 5, 10, 20, 30, STEEPEST_DEGREES},
          new double[] {0, 0.08, 0.15, 0.27, 0.34, 0.36});
  private static final Bound RISE =
      new Bound(
          "rise per length of pipe",
          Kind.NUMBER,
          -1,
          // A hair more than the sine, so that 35 degrees itself is inside whatever the rounding.
          Math.sin(Math.toRadians(STEEPEST_DEGREES)) * (1 + 1e-12));

  private static final Citation SOURCE =
      new Citation("Wilson and Tse", 1984, "Hydrotransport 9, BHRA, Rome")
          .fromMemory("chart values");
  private static final String STEEP =
      "a bed ceases to be possible from 60 to 75 degrees; "
          + "rule of the theory page on the deposition velocity";
  static final Equation INCREMENT =
      Equation.lookup(
          "Delta",
          "what an upward slope adds, over sqrt(2 g D (s - 1))",
          "chart, by the angle of the pipe",
          Kind.NUMBER,
          SOURCE.toString(),
          "theta");
  static final Equation HIGH_ON_SLOPE = onSlope("V_h", "at the highest concentration");
  static final Equation SLUG_ON_SLOPE = onSlope("V_s", "for a slug of sand");
  static final Equation USUAL_ON_SLOPE = onSlope("V_u", "at the usual concentration");
  static final Equation PAST =
      Equation.of(
          "p",
          "how far past 60 degrees on the way to 75",
          "min(1, max(0, (abs(theta) - pi/3) / (pi/12)))",
          Kind.NUMBER,
          STEEP,
          "theta");
  static final Equation LIFT =
      Equation.of(
          "V_lift",
          "velocity that lifts the coarsest grains, all but 1 % of the sand finer",
          "w abs(sin(theta))",
          Kind.VELOCITY,
          Equation.DEFINITION,
          "w m/s, theta");
  static final Equation STEEP_LIMIT =
      steep("V_lim", "deposition velocity on this slope", "V_h", "V_lift");
  static final Equation STEEP_REQUIRED =
      steep("V_req2", "required velocity on this slope", "V_req", "2 V_lift");

  private static final About ABOUT =
      new About(
          "wilson-tse-1984",
          "Wilson and Tse, upward slope",
          "V(theta) = V(0) + Delta(theta) sqrt(2 g D (s - 1))",
          SOURCE,
          List.of(RISE));

  /**
   * Increment of the Durand number.
   *
   * @param upwardAngleRad angle of the pipe in the direction of flow, upward positive, −π/2 to π/2
   *     [rad]
   * @return Δ, 0 for level and descending pipes, and whether the slope lay outside the chart
   * @throws IllegalArgumentException if the angle is not one between the verticals
   */
  public Estimate durandIncrement(double upwardAngleRad) {
    if (!(Math.abs(upwardAngleRad) <= Math.PI / 2)) {
      throw new IllegalArgumentException(
          "a slope lies between straight down and straight up but was " + upwardAngleRad + " rad");
    }
    double degrees = Math.toDegrees(upwardAngleRad);
    return Estimate.checks()
        .check(RISE, Math.sin(upwardAngleRad))
        .value(CHART.at(Math.min(Math.max(degrees, 0), STEEPEST_DEGREES)));
  }

  private static Equation onSlope(String symbol, String when) {
    return Equation.of(
        symbol,
        "deposition velocity with what the slope adds, " + when,
        symbol + "0 + Delta min(sqrt(2 g D (s - 1)), " + symbol + "0/0.75)",
        Kind.VELOCITY,
        SOURCE.toString(),
        symbol + "0 m/s",
        "Delta",
        "D m",
        "s");
  }

  private static Equation steep(String symbol, String meaning, String bed, String lift) {
    return Equation.of(
        symbol,
        meaning,
        "max(LIFT, BED (max(LIFT, BED/40)/BED)^p)".replace("LIFT", lift).replace("BED", bed),
        Kind.VELOCITY,
        STEEP,
        bed + " m/s",
        "V_lift m/s",
        "p");
  }

  @Override
  public About about() {
    return ABOUT;
  }
}
