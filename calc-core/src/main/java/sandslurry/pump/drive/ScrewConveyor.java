package sandslurry.pump.drive;

import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Estimate;
import sandslurry.correlation.Physics;
import sandslurry.fact.step.Equation;
import sandslurry.units.Kind;

/**
 * Throughput and power of a screw conveyor, such as the auger in a floor channel.
 *
 * <pre>
 * Q = φ (π/4)(D² − d²) S n c,   c = 1 − 0.02 β      (β in degrees, to 20)
 * P = ṁ g (λ L + H) + 50 W/m² D L
 * </pre>
 *
 * <p>Q volume carried [m³/s]; φ share of the trough that is filled; D screw, d shaft diameter [m];
 * S pitch [m]; n turns per second; c what the slope leaves; P power at the screw shaft [W]; ṁ mass
 * carried [kg/s]; L length, H lift [m]; λ resistance of the material.
 *
 * <p>The relation of volume is that of CEMA 350 and, with d = 0, of ISO 7119 and DIN 15262; its
 * common form was read on public pages, and it gives the capacities that a public worksheet lists.
 * The power and λ were read on a public page that names no standard; that they are those of ISO
 * 7119, and the factor of slope, are from memory, unverified. The factor lies at the low end of
 * what a maker's guide states (read): a loss of 10 to 40 % up to 20°, 10 to 70 % up to 30°, 30 to
 * 90 % up to 45°.
 *
 * <p>All of it was made for bulk solids that stand in a heap. Sand-laden manure that flows runs
 * back over the flights of a sloping screw and is carried by less; one that stands behaves as bulk.
 * A screw that works flooded in its own pit carries more than φ = 0.45. Treat the result as a check
 * of capacity, not as a design.
 *
 * @param diameterM D [m]
 * @param shaftDiameterM d, 0 to neglect it as ISO 7119 does [m]
 * @param pitchM S [m]
 * @param slopeRad β, 0 to below 45° [rad]
 */
public record ScrewConveyor(
    double diameterM, double shaftDiameterM, double pitchM, double slopeRad) {
  /** Filling of the trough with abrasive material such as sand (read on public pages). */
  public static final double ABRASIVE_LOADING = 0.15;

  /** Filling of the trough with light, free-flowing material, the most (read on public pages). */
  public static final double GREATEST_LOADING = 0.45;

  /** λ of sand and abrasive minerals, the severest of 2 to 4 (read on a public page). */
  public static final double ABRASIVE_RESISTANCE = 4;

  /** The source of the relation. */
  static final Citation SOURCE =
      new Citation(
          "International Organization for Standardization",
          1981,
          "ISO 7119, Screw conveyors, design rules for drive power (year from memory, unverified);"
              + " with CEMA 350; neither text was seen");

  /** Filling of the trough. */
  public static final Equation LOAD =
      SOURCE.equation(
          "phi",
          "filling of the trough",
          "Q / (pi/4 (D^2 - d^2) S n (1 - 0.02 * 180 beta/pi))",
          Kind.PERCENT,
          "Q m3/s, D m, d m, S m, n 1/s, beta");

  /** Power at the shaft. */
  public static final Equation POWER =
      SOURCE.equation(
          "P",
          "power at its shaft",
          "m g (lambda L + L sin(beta)) + 50 D L",
          Kind.POWER,
          "m kg/s, lambda, L m, beta, D m");

  private static final double STEEPEST_RAD = Math.PI / 4;
  private static final double LOSS_PER_DEGREE = 0.02;
  private static final double IDLE_W_PER_M2 = 50;
  private static final Bound SLOPE =
      new Bound("slope of the conveyor", Kind.PERCENT, 0, Math.tan(Math.toRadians(20)));
  private static final Bound LOADING =
      new Bound("filling of the trough", Kind.PERCENT, 0, GREATEST_LOADING);

  /** Checks the geometry. */
  public ScrewConveyor {
    if (!(diameterM > 0 && Double.isFinite(diameterM))
        || !(shaftDiameterM >= 0 && shaftDiameterM < diameterM)
        || !(pitchM > 0 && Double.isFinite(pitchM))
        || !(slopeRad >= 0 && slopeRad < STEEPEST_RAD)) {
      throw new IllegalArgumentException(
          "a screw conveyor needs a diameter wider than its shaft, a pitch > 0 and a slope of 0 to"
              + " below 45 degrees but has "
              + diameterM
              + " m, "
              + shaftDiameterM
              + " m, "
              + pitchM
              + " m, "
              + Math.toDegrees(slopeRad)
              + " degrees");
    }
  }

  /**
   * Volume carried.
   *
   * @param turnsPerSecond n, not negative [1/s]
   * @param loading φ, 0 to 1
   * @return Q [m3/s], and what lay outside the range
   */
  public Estimate capacityM3ps(double turnsPerSecond, double loading) {
    requireTurns(turnsPerSecond);
    if (!(loading >= 0 && loading <= 1)) {
      throw new IllegalArgumentException(
          "the filling of a trough lies in 0 to 1 but was " + loading);
    }
    return Estimate.checks()
        .check(SLOPE, Math.tan(slopeRad))
        .check(LOADING, loading)
        .value(loading * sweptM3() * turnsPerSecond);
  }

  /**
   * The filling at which the conveyor carries a flow: compare it with {@link #ABRASIVE_LOADING}.
   *
   * @param flowM3ps the flow, not negative [m3/s]
   * @param turnsPerSecond n, positive [1/s]
   * @return φ; above 1 the conveyor cannot carry the flow at all; and what lay outside the range
   */
  public Estimate loading(double flowM3ps, double turnsPerSecond) {
    requireFlow(flowM3ps);
    requireTurns(turnsPerSecond);
    double loading = flowM3ps / (sweptM3() * turnsPerSecond);
    return Estimate.checks()
        .check(SLOPE, Math.tan(slopeRad))
        .check(LOADING, loading)
        .value(loading);
  }

  /**
   * Power at the screw shaft.
   *
   * @param massKgps ṁ, not negative [kg/s]
   * @param lengthM L, positive [m]
   * @param resistance λ, positive, see {@link #ABRASIVE_RESISTANCE}
   * @return P [W]
   */
  public double powerW(double massKgps, double lengthM, double resistance) {
    if (!(massKgps >= 0) || !(lengthM > 0) || !(resistance > 0)) {
      throw new IllegalArgumentException(
          "the power of a screw needs a mass flow >= 0, a length and a resistance > 0 but has "
              + massKgps
              + " kg/s, "
              + lengthM
              + " m, "
              + resistance);
    }
    double lift = lengthM * Math.sin(slopeRad);
    return massKgps * Physics.GRAVITY * (resistance * lengthM + lift)
        + IDLE_W_PER_M2 * diameterM * lengthM;
  }

  private double sweptM3() {
    return Math.PI
        / 4
        * (diameterM * diameterM - shaftDiameterM * shaftDiameterM)
        * pitchM
        * (1 - LOSS_PER_DEGREE * Math.toDegrees(slopeRad));
  }

  private static void requireTurns(double turns) {
    if (!(turns >= 0 && Double.isFinite(turns))) {
      throw new IllegalArgumentException("a speed must be >= 0 but was " + turns + " 1/s");
    }
  }

  private static void requireFlow(double flow) {
    if (!(flow >= 0 && Double.isFinite(flow))) {
      throw new IllegalArgumentException("a flow must be >= 0 but was " + flow + " m3/s");
    }
  }
}
