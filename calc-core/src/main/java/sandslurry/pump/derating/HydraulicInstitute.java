package sandslurry.pump.derating;

import java.util.List;
import sandslurry.correlation.About;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Correlation;
import sandslurry.correlation.Estimate;
import sandslurry.units.Kind;

/**
 * Corrections to the head reduction read from the chart for slurry pumps by Addie, Sellgren and
 * Wilson, which ANSI/HI 12.1-12.6 uses.
 *
 * <pre>RH = RH0 ((S − 1) / 1.65)^0.65 (1 − X)² (C / 0.15)</pre>
 *
 * <p>RH head reduction, 1 − HR; RH0 the reduction that the chart gives for the impeller diameter
 * and d50 in hand at C = 0.15, S = 2.65 and no fines; S relative density of the solids; X share of
 * the solids finer than 0.075 mm (that size from memory, unverified); C volume fraction of solids
 * in the mixture.
 *
 * <p>The chart is not reproduced here, so this is no member of {@link SolidsDeratings}: it corrects
 * a value that the user has read. The reduction grows in proportion to C up to 0.15 to 0.20. The
 * efficiency reduction is about equal for impellers below 0.4 m and smaller for larger ones; it may
 * exceed the head reduction when C is above 0.20.
 */
public final class HydraulicInstitute implements Correlation {
  private static final double CHART_VOLUME_FRACTION = 0.15;
  private static final double CHART_SUBMERGED_DENSITY = 1.65;
  private static final Bound CONCENTRATION =
      new Bound("volume fraction of sand", Kind.PERCENT, 0, 0.2);

  private static final About ABOUT =
      new About(
          "hydraulic-institute",
          "Addie, Sellgren and Wilson, corrections to the chart",
          "RH = RH0 ((S - 1)/1.65)^0.65 (1 - X)^2 (C/0.15)",
          new Citation(
              "Wilson, Addie, Sellgren and Clift",
              2006,
              "Slurry Transport Using Centrifugal Pumps, 3rd edition, Springer; exponents checked against"
                  + " the worked example of a pump-handbook chapter by the same authors"),
          List.of(CONCENTRATION));

  /**
   * Head reduction.
   *
   * @param chartReduction RH0, 0 to 1
   * @param densityRatio S, above 1
   * @param finesShare X, 0 to 1
   * @param volumeFraction C, 0 to 1
   * @return RH, and what lay outside the published range
   */
  public Estimate headReduction(
      double chartReduction, double densityRatio, double finesShare, double volumeFraction) {
    if (!(chartReduction >= 0 && chartReduction <= 1)
        || !(densityRatio > 1)
        || !(finesShare >= 0 && finesShare <= 1)
        || !(volumeFraction >= 0 && volumeFraction <= 1)) {
      throw new IllegalArgumentException(
          "need a chart reduction, a share of fines and a volume fraction of 0 to 1 and a relative"
              + " density above 1 but have "
              + chartReduction
              + ", "
              + finesShare
              + ", "
              + volumeFraction
              + ", "
              + densityRatio);
    }
    double density = Math.pow((densityRatio - 1) / CHART_SUBMERGED_DENSITY, 0.65);
    double fines = (1 - finesShare) * (1 - finesShare);
    return Estimate.checks()
        .check(CONCENTRATION, volumeFraction)
        .value(chartReduction * density * fines * volumeFraction / CHART_VOLUME_FRACTION);
  }

  @Override
  public About about() {
    return ABOUT;
  }
}
