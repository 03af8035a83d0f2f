package sandslurry.pump.suction;

import sandslurry.pump.rotodynamic.BestPoint;
import sandslurry.units.InUnit;

/**
 * Suction energy: how hard cavitation would hit the inlet of a pump.
 *
 * <pre>E = D_e n S s</pre>
 *
 * <p>D_e diameter of the eye, about 0.9 of the suction nozzle [in]; n speed [1/min]; S suction
 * specific speed, US; s specific gravity. The product of nozzle, speed and S was read in a trade
 * article; the factor 0.9 and the limits 160 and 240 million for pumps with a suction from the end
 * are those of Budris and of ANSI/HI 9.6.1-1998, from memory, unverified.
 *
 * @param value E
 */
public record SuctionEnergy(double value) {
  private static final double EYE_SHARE = 0.9;
  private static final double HIGH_FROM = 160e6;
  private static final double VERY_HIGH_FROM = 1.5 * HIGH_FROM;

  /** Checks that the value is positive. */
  public SuctionEnergy {
    if (!(value > 0 && Double.isFinite(value))) {
      throw new IllegalArgumentException("a suction energy must be > 0 but was " + value);
    }
  }

  /**
   * The suction energy of a pump.
   *
   * @param nozzleM bore of the suction nozzle; that of the suction pipe is on the safe side [m]
   * @param best best point in water at the speed driven
   * @param requiredM NPSH required there [m]
   * @param specificGravity density of the mixture over that of cold water
   * @return the suction energy
   */
  public static SuctionEnergy of(
      double nozzleM, BestPoint best, double requiredM, double specificGravity) {
    double speed = InUnit.PER_MINUTE.of(best.speedPs());
    double suction =
        speed
            * Math.sqrt(InUnit.GALLON_PER_MINUTE.of(best.flowM3ps()))
            / Math.pow(InUnit.FOOT.of(requiredM), 0.75);
    return new SuctionEnergy(
        EYE_SHARE * InUnit.INCH.of(nozzleM) * speed * suction * specificGravity);
  }

  /**
   * How high it is.
   *
   * @return the grade; a limit belongs to the higher
   */
  public Grade grade() {
    return value < HIGH_FROM ? Grade.LOW : value < VERY_HIGH_FROM ? Grade.HIGH : Grade.VERY_HIGH;
  }

  /** How high a suction energy is. */
  public enum Grade {
    /** Cavitation is a matter of lost head. */
    LOW("low"),
    /** Cavitation is loud and wears. */
    HIGH("high"),
    /** Cavitation destroys. */
    VERY_HIGH("very high");

    private final String words;

    Grade(String words) {
      this.words = words;
    }

    /**
     * The grade in words.
     *
     * @return for example "low"
     */
    public String words() {
      return words;
    }
  }
}
