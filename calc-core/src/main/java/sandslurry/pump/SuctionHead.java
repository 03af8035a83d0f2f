package sandslurry.pump;

import sandslurry.correlation.Physics;

/** Net positive suction head: whether the liquid reaches the impeller without boiling. */
public final class SuctionHead {
  private SuctionHead() {}

  /**
   * Net positive suction head available.
   *
   * <pre>NPSHa = (p_air − p_vapour) / (ρ g) + z − h</pre>
   *
   * <p>All heads are in metres of the mixture, so its own density belongs in the first term: a
   * dense mixture has fewer metres in one atmosphere. Compare with the NPSH that the pump needs and
   * leave a margin, which for solids is wider than for water (a ratio of 1.2 to 1.5; from memory,
   * unverified).
   *
   * @param airPressurePa absolute pressure on the liquid surface, see {@link StandardAtmosphere}
   *     [Pa]
   * @param vapourPressurePa absolute vapour pressure, see {@link
   *     sandslurry.material.Water#vapourPressurePa} [Pa]
   * @param mixtureDensityKgM3 density of the mixture [kg/m3]
   * @param floodM height of the liquid surface above the pump inlet; negative for a lift [m]
   * @param suctionLossM head lost on the suction side, in metres of mixture, not negative [m]
   * @return NPSH available; negative when the pump cannot be fed at all [m]
   */
  public static double availableM(
      double airPressurePa,
      double vapourPressurePa,
      double mixtureDensityKgM3,
      double floodM,
      double suctionLossM) {
    if (!(airPressurePa > 0)
        || !(vapourPressurePa >= 0)
        || !(mixtureDensityKgM3 > 0)
        || !(suctionLossM >= 0)
        || !Double.isFinite(floodM)) {
      throw new IllegalArgumentException(
          "need an air pressure and a density > 0, a vapour pressure and a loss >= 0 and a finite"
              + " level but have "
              + airPressurePa
              + " Pa, "
              + mixtureDensityKgM3
              + " kg/m3, "
              + vapourPressurePa
              + " Pa, "
              + suctionLossM
              + " m, "
              + floodM
              + " m");
    }
    return (airPressurePa - vapourPressurePa) / (mixtureDensityKgM3 * Physics.GRAVITY)
        + floodM
        - suctionLossM;
  }
}
