package sandslurry.material;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Rheology of a manure liquor that is thinned with liquid of fewer solids.
 *
 * <p>A liquor described by its solids is looked up at the new solids. A liquor whose rheology was
 * measured at known solids keeps its own measure of thickness: its stresses are multiplied by the
 * ratio in which the table of {@link Carriers#manure} falls from the old solids to the new, taken
 * at 50 1/s, and its flow index rises by as much as that of the table. The yield stress falls in
 * the same ratio. That shape is an assumption of this program, no source; it is exact for no
 * dilution and ends at water.
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
    Carrier table = Carriers.manure(totalSolids, temperatureK);
    boolean fromTable = undiluted.scatter() > 1;
    Rheology rheology =
        fromTable
            ? table.rheology()
            : scaled(
                undiluted.rheology(),
                Carriers.manure(before, temperatureK).rheology(),
                table.rheology());
    return new Carrier(
        undiluted.description() + ", diluted",
        temperatureK,
        densityKgM3,
        rheology,
        undiluted.vapourPressurePa(),
        OptionalDouble.of(totalSolids),
        fromTable ? table.shearRates() : Optional.empty(),
        fromTable ? table.scatter() : 1,
        List.of(),
        List.of());
  }

  private static Rheology scaled(Rheology measured, Rheology tableBefore, Rheology tableAfter) {
    double ratio =
        tableAfter.apparentViscosityPaS(REFERENCE_PS)
            / tableBefore.apparentViscosityPaS(REFERENCE_PS);
    double index = Math.min(1, measured.index() + tableAfter.index() - tableBefore.index());
    double flowing = ratio * measured.flowingViscosityPaS(REFERENCE_PS);
    double consistency = flowing / Math.pow(REFERENCE_PS, index - 1);
    double yield = ratio * measured.yieldStressPa();
    return yield > 0
        ? new HerschelBulkley(yield, consistency, index)
        : new PowerLaw(consistency, index);
  }
}
