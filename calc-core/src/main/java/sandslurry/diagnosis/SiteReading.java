package sandslurry.diagnosis;

/**
 * A pressure and a flow rate read at the same time. Nineteen times out of twenty the true values
 * are within the uncertainties (two standard deviations).
 *
 * @param flowM3ps the flow rate, positive [m3/s]
 * @param pressurePa the pressure [Pa]
 * @param flowUncertainty uncertainty of the flow rate as a share of it, not negative
 * @param uncertaintyPa uncertainty of the pressure, not negative [Pa]
 */
public record SiteReading(
    double flowM3ps, double pressurePa, double flowUncertainty, double uncertaintyPa) {
  /** Checks that the numbers are finite and the flow rate positive. */
  public SiteReading {
    if (!(flowM3ps > 0 && Double.isFinite(flowM3ps))
        || !Double.isFinite(pressurePa)
        || !(flowUncertainty >= 0 && flowUncertainty < 1)
        || !(uncertaintyPa >= 0 && Double.isFinite(uncertaintyPa))) {
      throw new IllegalArgumentException(
          "a reading needs a flow rate > 0, a pressure and uncertainties of 0 or more, that of the"
              + " flow rate below 1, but has "
              + flowM3ps
              + " m3/s, "
              + pressurePa
              + " Pa, "
              + flowUncertainty
              + " and "
              + uncertaintyPa
              + " Pa");
    }
  }

  /**
   * How far a calculated pressure and the one read may differ when the law is right.
   *
   * <pre>U² = Up² + ((P(Q + Uq) − P(Q − Uq))/2)² + (m (P − P0))²</pre>
   *
   * @param law the calculated pressure by flow rate
   * @param modelShare m, uncertainty of the calculated friction as a share of it
   * @param staticPa P0, what of the pressure is no friction [Pa]
   * @return U and its parts
   */
  public Difference difference(Law law, double modelShare, double staticPa) {
    double byFlow =
        (law.pressurePa(flowM3ps * (1 + flowUncertainty))
                - law.pressurePa(flowM3ps * (1 - flowUncertainty)))
            / 2;
    double byModel = modelShare * (law.pressurePa(flowM3ps) - staticPa);
    return new Difference(uncertaintyPa, Math.abs(byFlow), Math.abs(byModel));
  }

  /**
   * By how much two pressures may differ.
   *
   * @param readingPa by the pressure read [Pa]
   * @param flowPa by the flow rate read [Pa]
   * @param modelPa by the calculated friction [Pa]
   */
  public record Difference(double readingPa, double flowPa, double modelPa) {
    /**
     * All together.
     *
     * @return the root of the sum of squares [Pa]
     */
    public double totalPa() {
      return Math.sqrt(readingPa * readingPa + flowPa * flowPa + modelPa * modelPa);
    }
  }

  /** A calculated pressure by flow rate. */
  @FunctionalInterface
  public interface Law {
    /**
     * The pressure.
     *
     * @param flowM3ps flow rate [m3/s]
     * @return pressure [Pa]; NaN where there is none
     */
    double pressurePa(double flowM3ps);
  }
}
