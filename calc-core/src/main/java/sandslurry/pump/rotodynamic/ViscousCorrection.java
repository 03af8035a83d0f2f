package sandslurry.pump.rotodynamic;

import java.util.List;
import sandslurry.correlation.Bound;
import sandslurry.pump.derating.HydraulicInstituteViscous;
import sandslurry.units.InUnit;

/**
 * What one liquid takes from one pump, by {@link HydraulicInstituteViscous}.
 *
 * @param best best point in water
 * @param b the parameter B; up to 1 the liquid changes nothing
 * @param flowRatio C_Q, flow in the liquid over flow in water at corresponding points, which is
 *     also the ratio of the heads at the best point; 0 to 1
 * @param efficiencyRatio C_η, efficiency in the liquid over that in water; 0 to 1
 * @param excesses what lay outside the published range
 */
public record ViscousCorrection(
    BestPoint best,
    double b,
    double flowRatio,
    double efficiencyRatio,
    List<Bound.Excess> excesses) {
  /** Geometry of a suction from the side or from above, of which NPSH rises most. */
  private static final double SIDE_INLET = 0.5;

  private static final double SUCTION_FACTOR = 274_000;

  /** Copies the list and checks the ratios. */
  public ViscousCorrection {
    excesses = List.copyOf(excesses);
    if (!(flowRatio >= 0 && flowRatio <= 1) || !(efficiencyRatio >= 0 && efficiencyRatio <= 1)) {
      throw new IllegalArgumentException(
          "ratios of a viscous correction lie in 0 to 1 but were "
              + flowRatio
              + " (flow) and "
              + efficiencyRatio
              + " (efficiency)");
    }
  }

  /**
   * Says whether the pump works as in water.
   *
   * @return true if nothing changes
   */
  public boolean none() {
    return flowRatio == 1 && efficiencyRatio == 1;
  }

  /**
   * Head ratio C_H at a point of the curve for water.
   *
   * @param waterFlowM3ps flow of the point in water, not negative [m3/s]
   * @return head in the liquid over head in water; below 0 beyond {@link #endOfHeadM3ps}
   */
  public double headRatio(double waterFlowM3ps) {
    return 1 - (1 - flowRatio) * Math.pow(waterFlowM3ps / best.flowM3ps(), 0.75);
  }

  /**
   * The flow in water at which the formula leaves no head.
   *
   * @return the flow; infinite when nothing is taken [m3/s]
   */
  public double endOfHeadM3ps() {
    return best.flowM3ps() * Math.pow(1 - flowRatio, -1 / 0.75);
  }

  /**
   * NPSH required in the liquid over that in water.
   *
   * <pre>1 + 0.5 (1/C_H − 1) 274 000 NPSHr / (Q^0.667 N^1.33)</pre>
   *
   * <p>NPSHr [m] and Q [m3/h] at the best point, N [1/min]. The factor 0.5 is that of a suction
   * from the side; straight into the eye it is 0.1, which is never worse. From memory, unverified;
   * the form in US units, with 225 000, gives the same to 1 %.
   *
   * @param bestRequiredM NPSH required at the best point in water, positive [m]
   * @return the ratio, 1 or more; infinite where the formula leaves no head
   */
  public double suctionRatio(double bestRequiredM) {
    if (!(bestRequiredM > 0 && Double.isFinite(bestRequiredM))) {
      throw new IllegalArgumentException(
          "NPSH required must be > 0 but was " + bestRequiredM + " m");
    }
    double scale =
        Math.pow(InUnit.CUBIC_METRE_PER_HOUR.of(best.flowM3ps()), 0.667)
            * Math.pow(InUnit.PER_MINUTE.of(best.speedPs()), 1.33);
    return 1 + SIDE_INLET * (1 / flowRatio - 1) * SUCTION_FACTOR * bestRequiredM / scale;
  }
}
