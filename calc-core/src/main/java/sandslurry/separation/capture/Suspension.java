package sandslurry.separation.capture;

/**
 * What turbulence does with a grain, by the ratio of its settling velocity to the shear velocity.
 */
public enum Suspension {
  /** w/u* below 1: turbulence lifts the grain as fast as it falls. */
  STAYS_UP("stays up"),
  /** w/u* of 1 to 2: the grain falls, but bursts of turbulence hold some of its kind up. */
  FALLS_IN_PART("falls in part"),
  /** w/u* above 2: the grain falls readily. */
  FALLS("falls");

  /**
   * Below this ratio turbulence holds grains in suspension: the criterion of Bagnold (1966), from
   * memory, unverified.
   */
  public static final double HELD_BELOW = 1;

  /**
   * Above this ratio the flume tests that Hsu and Yu report (ASCE conference on settling basins,
   * abstract read) caught all grains.
   */
  public static final double CAUGHT_ABOVE = 2;

  private final String words;

  Suspension(String words) {
    this.words = words;
  }

  /**
   * Judges a grain.
   *
   * @param settlingVelocityMps settling velocity [m/s]
   * @param shearVelocityMps shear velocity of the flow [m/s]
   * @return what turbulence does with it
   */
  public static Suspension of(double settlingVelocityMps, double shearVelocityMps) {
    if (settlingVelocityMps > CAUGHT_ABOVE * shearVelocityMps) {
      return FALLS;
    }
    return settlingVelocityMps >= HELD_BELOW * shearVelocityMps ? FALLS_IN_PART : STAYS_UP;
  }

  /**
   * The judgement in words.
   *
   * @return for example "stays up"
   */
  public String words() {
    return words;
  }
}
