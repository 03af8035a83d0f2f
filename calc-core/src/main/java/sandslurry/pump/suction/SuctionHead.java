package sandslurry.pump.suction;

import sandslurry.correlation.Estimate;
import sandslurry.correlation.Physics;
import sandslurry.material.liquid.Water;

/** Net positive suction head: whether the liquid reaches the impeller without boiling. */
public final class SuctionHead {
  private SuctionHead() {}

  /**
   * Net positive suction head available at a site: air pressure of the standard atmosphere at the
   * altitude, vapour pressure of water at the temperature.
   *
   * @param altitudeM altitude above sea level [m]
   * @param temperatureK temperature of the liquor, 0 to 100 °C [K]
   * @param mixtureDensityKgM3 density of the mixture [kg/m3]
   * @param floodM height of the liquid surface above the pump inlet; negative for a lift [m]
   * @param suctionLossM head lost on the suction side, for a piston pump with its acceleration
   *     head, in metres of mixture; not negative [m]
   * @return NPSH available [m], and whether the altitude lay outside the standard
   */
  public static Estimate atSiteM(
      double altitudeM,
      double temperatureK,
      double mixtureDensityKgM3,
      double floodM,
      double suctionLossM) {
    Estimate air = new StandardAtmosphere().pressurePa(altitudeM);
    return new Estimate(
        availableM(
            air.value(),
            Water.vapourPressurePa(temperatureK),
            mixtureDensityKgM3,
            floodM,
            suctionLossM),
        air.excesses());
  }

  /**
   * Net positive suction head available.
   *
   * <pre>NPSHa = (p_air − p_vapour) / (ρ g) + z − h</pre>
   *
   * <p>All heads are in metres of the mixture, so its own density belongs in the first term: a
   * dense mixture has fewer metres in one atmosphere. Compare with the NPSH that the pump needs and
   * leave a {@link SuctionMargin}.
   *
   * @param airPressurePa absolute pressure on the liquid surface, see {@link StandardAtmosphere}
   *     [Pa]
   * @param vapourPressurePa absolute vapour pressure, see {@link
   *     sandslurry.material.liquid.Water#vapourPressurePa} [Pa]
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
