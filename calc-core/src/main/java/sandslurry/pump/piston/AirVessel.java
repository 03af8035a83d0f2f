package sandslurry.pump.piston;

import java.util.OptionalDouble;

/**
 * A vessel with gas beside the pump, and what it leaves of the swing of the flow in the line.
 *
 * <pre>
 * ω0² = n p / (V I),   I = Σ ρ L / A
 * k = 1 / ((ω/ω0)² − 1)                     for ω above √2 ω0
 * V ΔV:  p' = p (V / (V − ΔV))^n
 * </pre>
 *
 * <p>V gas at the pressure of the line [m³]; p that pressure, absolute [Pa]; n exponent of the gas,
 * 1 slow, 1.4 fast; I inertance of the line [kg/m⁴] of lengths L and sections A, filled with a
 * mixture of density ρ; ω 2 π times the swells per second; k share of the swing of the flow that
 * enters the line; ΔV volume that a swell brings above the mean; p' pressure when it is stored.
 *
 * <p>Gas and line are a spring and a mass. Near ω0 they swing together and the vessel makes the
 * pulsing worse, so below √2 ω0 no share is given. Friction, which is left out, makes k a little
 * smaller there. The balance was derived here from that of forces on a rigid column and of the gas;
 * the storage of ΔV between two pressures is what makers of vessels size by. Vessels for manure
 * lose their gas and fill with sand: one that nobody recharges is none.
 *
 * @param gasM3 V [m3]
 * @param absolutePa p [Pa]
 * @param exponent n
 */
public record AirVessel(double gasM3, double absolutePa, double exponent) {
  /** n when heat has no time to leave the gas: the stiffest and so the severest. */
  public static final double FAST = 1.4;

  /** Checks the bounds. */
  public AirVessel {
    if (!(gasM3 > 0 && Double.isFinite(gasM3))
        || !(absolutePa > 0 && Double.isFinite(absolutePa))
        || !(exponent >= 1 && exponent <= 2)) {
      throw new IllegalArgumentException(
          "an air vessel needs gas and an absolute pressure > 0 and an exponent of 1 to 2 but has "
              + gasM3
              + " m3, "
              + absolutePa
              + " Pa, "
              + exponent);
    }
  }

  /**
   * Frequency at which gas and line swing by themselves.
   *
   * @param inertanceKgM4 I, positive [kg/m4]
   * @return ω0/(2 π) [1/s]
   */
  public double ownFrequencyPs(double inertanceKgM4) {
    requireInertance(inertanceKgM4);
    return Math.sqrt(exponent * absolutePa / (gasM3 * inertanceKgM4)) / (2 * Math.PI);
  }

  /**
   * Share of the swing of the flow that enters the line.
   *
   * @param inertanceKgM4 I, positive [kg/m4]
   * @param swellsPs swells per second, positive [1/s]
   * @return k, up to 1; nothing when the vessel does not damp, so that the swing may grow
   */
  public OptionalDouble passedShare(double inertanceKgM4, double swellsPs) {
    if (!(swellsPs > 0 && Double.isFinite(swellsPs))) {
      throw new IllegalArgumentException("swells must be > 0 but were " + swellsPs + " 1/s");
    }
    double ratio = swellsPs / ownFrequencyPs(inertanceKgM4);
    double passed = 1 / (ratio * ratio - 1);
    return ratio > 1 && passed <= 1 ? OptionalDouble.of(passed) : OptionalDouble.empty();
  }

  /**
   * The gas that leaves a share of the swing.
   *
   * @param absolutePa p [Pa]
   * @param exponent n
   * @param inertanceKgM4 I, positive [kg/m4]
   * @param swellsPs swells per second, positive [1/s]
   * @param passedShare k, above 0 to 1
   * @return V at that pressure [m3]
   */
  public static double gasForM3(
      double absolutePa,
      double exponent,
      double inertanceKgM4,
      double swellsPs,
      double passedShare) {
    requireInertance(inertanceKgM4);
    if (!(absolutePa > 0) || !(swellsPs > 0) || !(passedShare > 0 && passedShare <= 1)) {
      throw new IllegalArgumentException(
          "a vessel needs a pressure and swells > 0 and a share of 0 to 1 but has "
              + absolutePa
              + " Pa, "
              + swellsPs
              + " 1/s, "
              + passedShare);
    }
    double turning = 2 * Math.PI * swellsPs;
    return exponent * absolutePa * (1 + 1 / passedShare) / (inertanceKgM4 * turning * turning);
  }

  private static void requireInertance(double inertance) {
    if (!(inertance > 0 && Double.isFinite(inertance))) {
      throw new IllegalArgumentException("an inertance must be > 0 but was " + inertance);
    }
  }
}
