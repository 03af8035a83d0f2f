package sandslurry.material.liquid;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Rheology of a manure liquor that is thinned with liquid of fewer solids.
 *
 * <p>A liquor described by its solids is looked up at the new solids. A liquor whose rheology was
 * measured at known solids is followed by the table of {@link Carriers#manure}, whose thickness at
 * 50 1/s it exceeds (or falls short of) by a factor f: with t the solids after over those before,
 *
 * <pre>
 * flowing part at 50 1/s:  table(after) f^t
 * flow index:              n_table(after) + t [n − n_table(before)]
 * yield stress:            τy t table(after)/table(before)
 * </pre>
 *
 * <p>That shape is an assumption of this program, no source; it is exact for no dilution and ends
 * at water.
 */
public final class DilutedRheology {
  private static final double REFERENCE_PS = 50;

  private DilutedRheology() {}

  /**
   * The diluted carrier.
   *
   * @param undiluted a carrier whose total solids are known
   * @param totalSolids solids after dilution, not above those before
   * @param densityKgM3 density after dilution [kg/m3]
   * @return the carrier
   * @throws IllegalArgumentException if the solids of the undiluted carrier are not known
   */
  public static Carrier carrier(Carrier undiluted, double totalSolids, double densityKgM3) {
    if (undiluted.totalSolids().isEmpty()) {
      throw new IllegalArgumentException("the solids of the undiluted carrier are not known");
    }
    double before = undiluted.totalSolids().getAsDouble();
    if (totalSolids == before) {
      return undiluted;
    }
    double temperatureK = undiluted.temperatureK();
    Carrier table = Carriers.manure(ofTable(totalSolids), temperatureK);
    boolean fromTable = undiluted.scatter().source() == Carrier.Source.SOLIDS;
    Rheology rheology =
        fromTable
            ? table.rheology()
            : scaled(
                undiluted.rheology(),
                Carriers.manureRheology(ofTable(before), temperatureK),
                table.rheology(),
                totalSolids / before);
    return new Carrier(
        undiluted.description() + ", diluted",
        temperatureK,
        densityKgM3,
        rheology,
        undiluted.vapourPressurePa(),
        OptionalDouble.of(totalSolids),
        fromTable ? table.shearRates() : Optional.empty(),
        fromTable ? table.scatter() : Carrier.Scatter.none(rheology),
        List.of(),
        List.of());
  }

  /** A liquor thicker than those of the table is followed as if it had the most solids of it. */
  private static double ofTable(double totalSolids) {
    return Math.min(totalSolids, Carriers.HIGHEST_TOTAL_SOLIDS);
  }

  /**
   * The law between that measured and that of the table, which a share of 1 and of 0 of the solids
   * before give.
   */
  private static Rheology scaled(
      Rheology measured, Rheology tableBefore, Rheology tableAfter, double shareOfSolids) {
    double ofTable =
        measured.flowingViscosityPaS(REFERENCE_PS) / tableBefore.flowingViscosityPaS(REFERENCE_PS);
    double table = tableAfter.flowingViscosityPaS(REFERENCE_PS);
    double flowing = table * Math.pow(ofTable, shareOfSolids);
    double index = tableAfter.index() + shareOfSolids * (measured.index() - tableBefore.index());
    double consistency = flowing / Math.pow(REFERENCE_PS, index - 1);
    double yield =
        measured.yieldStressPa()
            * shareOfSolids
            * (table / tableBefore.flowingViscosityPaS(REFERENCE_PS));
    return yield > 0
        ? new HerschelBulkley(yield, consistency, index)
        : new PowerLaw(consistency, index);
  }
}
