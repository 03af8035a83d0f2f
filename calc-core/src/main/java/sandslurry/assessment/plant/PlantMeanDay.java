package sandslurry.assessment.plant;

import java.util.List;
import java.util.Map;
import sandslurry.assessment.plant.PlantModel.Case;
import sandslurry.design.plant.PlantSpec.Use;
import sandslurry.design.plant.PlantSpec.WaterSpec;
import sandslurry.plant.Stream;
import sandslurry.plant.account.BedQuality;
import sandslurry.plant.account.SandAccount;
import sandslurry.plant.account.StorageAccount;
import sandslurry.plant.account.WaterAccount;
import sandslurry.plant.unit.StorageUnit;
import sandslurry.units.InUnit;

/**
 * The mean flows of a day in a case, and the accounts that are kept of them.
 *
 * @param model the plant
 * @param totals its streams put together
 * @param of the case
 * @param streams the mean flows by stream
 */
public record PlantMeanDay(
    PlantModel model, PlantTotals totals, Case of, Map<String, Stream> streams) {
  /**
   * Sand products that return as bedding.
   *
   * @return mean flow
   */
  public Stream recovered() {
    return totals.sum(streams, totals.products(Use.BEDDING));
  }

  /**
   * Quality of the recovered bedding.
   *
   * @return moisture, fines and organic matter
   */
  public BedQuality bed() {
    return BedQuality.of(recovered());
  }

  /**
   * Where the sand goes.
   *
   * @return bedded, flushed, recovered and lost
   */
  public SandAccount sand() {
    return totals.account(model.bedded(of), streams);
  }

  /**
   * Sand recovered for bedding over sand flushed.
   *
   * @return share; 0 when no sand is flushed
   */
  public double capture() {
    return totals.capture(streams);
  }

  /**
   * What a storage holds month by month.
   *
   * @param storage the storage
   * @return the account
   */
  public StorageAccount storage(StorageUnit storage) {
    Stream inflow = totals.sum(streams, storage.inlets());
    return new StorageAccount(
        storage.pond(),
        storage.months().stream()
            .map(
                month ->
                    new StorageAccount.Month(
                        month.name(),
                        month.days(),
                        inflow.volumeM3ps(),
                        month.rainM(),
                        month.evaporationM()))
            .toList(),
        storage.stormM(),
        storage.freeboardM(),
        storage.settledSandM3(),
        inflow.sandKgps(),
        model.constituents().sandDensityKgM3(),
        model.spec().porosity());
  }

  /**
   * Fresh and recycled water.
   *
   * @return mean flows of both
   */
  public WaterAccount water() {
    Stream fresh =
        totals
            .sum(streams, model.spec().waters().stream().map(WaterSpec::stream).toList())
            .plus(
                model
                    .constituents()
                    .water(
                        model.spec().pens().stream()
                                .mapToDouble(pen -> of.ends().water().apply(pen.pen().waterM3ps()))
                                .sum()
                            * model.constituents().waterDensityKgM3()));
    return new WaterAccount(fresh, totals.sum(streams, List.copyOf(model.recycles())));
  }

  /**
   * What must be hauled from the storages in a year; without storage, what leaves as waste.
   *
   * @return volume [m3]
   */
  public double hauledPerYearM3() {
    if (model.spec().storages().isEmpty()) {
      return totals.sum(streams, totals.products(Use.WASTE)).volumeM3ps()
          * InUnit.ofDays(PlantTotals.YEAR_D);
    }
    double sum = 0;
    for (StorageUnit storage : model.spec().storages()) {
      StorageAccount account = storage(storage);
      double days = 0;
      double net = 0;
      for (int i = 0; i < account.months().size(); i++) {
        net += account.netInflowM3(i);
        days += account.months().get(i).days();
      }
      sum += Math.max(0, net) * PlantTotals.YEAR_D / days;
    }
    return sum;
  }
}
