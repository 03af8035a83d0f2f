package sandslurry.correlation;

/** Constants that more than one room needs. */
public final class Physics {
  /**
   * Standard gravity [m/s2], exact by the 3rd General Conference on Weights and Measures (1901).
   */
  public static final double GRAVITY = 9.80665;

  /**
   * Standard atmosphere [Pa], exact by the 10th General Conference on Weights and Measures (1954).
   */
  public static final double ATMOSPHERE_PA = 101325;

  private Physics() {}
}
