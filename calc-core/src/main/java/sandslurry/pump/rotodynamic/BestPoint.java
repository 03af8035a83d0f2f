package sandslurry.pump.rotodynamic;

import sandslurry.units.InUnit;

/**
 * The point of best efficiency of a rotodynamic pump in clear water at the speed driven.
 *
 * @param flowM3ps flow there, that of one eye of the impeller; positive [m3/s]
 * @param headM head there, that of one stage; positive [m]
 * @param speedPs turns per second; positive [1/s]
 */
public record BestPoint(double flowM3ps, double headM, double speedPs) {
  /** Checks that all are positive. */
  public BestPoint {
    if (!(flowM3ps > 0 && Double.isFinite(flowM3ps))
        || !(headM > 0 && Double.isFinite(headM))
        || !(speedPs > 0 && Double.isFinite(speedPs))) {
      throw new IllegalArgumentException(
          "a best point needs flow, head and speed > 0 but has "
              + flowM3ps
              + " m3/s, "
              + headM
              + " m, "
              + speedPs
              + " 1/s");
    }
  }

  /**
   * The best point of a curve.
   *
   * @param curve the curve for clear water at the speed driven
   * @param speedPs that speed [1/s]
   * @return the best point
   * @throws IllegalArgumentException if the curve has its best efficiency at no flow or no head
   */
  public static BestPoint of(PumpCurve curve, double speedPs) {
    double flow = curve.bestEfficiencyFlowM3ps();
    return new BestPoint(flow, curve.headM(flow), speedPs);
  }

  /**
   * Specific speed: what shape the impeller has, whatever its size and speed.
   *
   * <pre>n_s = n √Q / H^0.75   with n [1/min], Q [m3/s], H [m]</pre>
   *
   * <p>US practice takes gal/min and ft; its number is 51.6 times this one.
   *
   * @return n_s, metric
   */
  public double specificSpeed() {
    return specificSpeed(headM);
  }

  /**
   * Suction specific speed: how hard the impeller sucks. The same at every speed.
   *
   * <pre>S = n √Q / NPSHr^0.75   with n [1/min], Q [m3/s], NPSHr [m]</pre>
   *
   * <p>The trade takes the greatest impeller that the casing holds; a trimmed one shows somewhat
   * less.
   *
   * @param requiredM NPSH required at this point, that of 3 % loss of head; positive [m]
   * @return S, metric; the US number is 51.6 times this one
   */
  public double suctionSpecificSpeed(double requiredM) {
    if (!(requiredM > 0 && Double.isFinite(requiredM))) {
      throw new IllegalArgumentException("NPSH required must be > 0 but was " + requiredM + " m");
    }
    return specificSpeed(requiredM);
  }

  private double specificSpeed(double head) {
    return InUnit.PER_MINUTE.of(speedPs) * Math.sqrt(flowM3ps) / Math.pow(head, 0.75);
  }
}
