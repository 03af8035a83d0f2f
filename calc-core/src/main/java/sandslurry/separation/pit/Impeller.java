package sandslurry.separation.pit;

import sandslurry.separation.Numbers;

/**
 * A mixer in a pit.
 *
 * @param diameterM diameter of the impeller [m]
 * @param suspensionNumber Zwietering's S, which holds the kind of impeller and the shape of the pit
 * @param powerNumber power number in turbulent flow, for the power it takes
 */
public record Impeller(double diameterM, double suspensionNumber, double powerNumber) {
  /** Checks that all are positive. */
  public Impeller {
    Numbers.positive("the diameter of the impeller", diameterM, "m");
    Numbers.positive("Zwietering's S", suspensionNumber, "");
    Numbers.positive("the power number", powerNumber, "");
  }

  /**
   * Power drawn.
   *
   * @param speedRps speed [1/s]
   * @param mixtureDensityKgM3 density of the mixture [kg/m3]
   * @return Np ρ N³ D⁵ [W]
   */
  public double powerW(double speedRps, double mixtureDensityKgM3) {
    return powerNumber
        * Numbers.positive("the density", mixtureDensityKgM3, "kg/m3")
        * Math.pow(Numbers.notNegative("the speed", speedRps, "1/s"), 3)
        * Math.pow(diameterM, 5);
  }

  /**
   * Usual kinds of impeller, with S and power number for an impeller a third as wide as a baffled
   * round tank and a quarter of the depth above its floor.
   *
   * <p>All numbers are from memory, unverified, and differ between sources by a quarter; a pit
   * without baffles, square or with a mixer from the side is none of these. Take them for a first
   * estimate only and ask the maker of the mixer.
   */
  public enum Kind {
    /** Marine propeller, pitch equal to diameter. */
    PROPELLER(6.6, 0.35),
    /** Turbine of four blades at 45 degrees that pumps down. */
    PITCHED_BLADE(5.8, 1.27),
    /** Turbine of flat blades. */
    FLAT_BLADE(7.1, 3.0),
    /** Disc turbine of six flat blades. */
    DISC_TURBINE(7.5, 5.0);

    private final double suspensionNumber;
    private final double powerNumber;

    Kind(double suspensionNumber, double powerNumber) {
      this.suspensionNumber = suspensionNumber;
      this.powerNumber = powerNumber;
    }

    /**
     * An impeller of this kind.
     *
     * @param diameterM its diameter [m]
     * @return the impeller
     */
    public Impeller of(double diameterM) {
      return new Impeller(diameterM, suspensionNumber, powerNumber);
    }
  }
}
