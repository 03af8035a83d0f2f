package sandslurry.assessment.plant;

import java.util.ArrayList;
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
 * @param of the case
 * @param streams the mean flows by stream
 * @param byMonth the mean flows in each month of the year; empty where they are taken to be those
 *     of the mean day
 */
public record PlantMeanDay(
    PlantModel model, Case of, Map<String, Stream> streams, List<Map<String, Stream>> byMonth) {
  /** Copies the list. */
  public PlantMeanDay {
    byMonth = List.copyOf(byMonth);
  }

  /**
   * Sand products that return as bedding.
   *
   * @return mean flow
   */
  public Stream recovered() {
    return model.totals().sum(streams, model.totals().products(Use.BEDDING));
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
    return model.totals().account(model.bedded(of), streams);
  }

  /**
   * Sand recovered for bedding over sand flushed.
   *
   * @return share; 0 when no sand is flushed
   */
  public double capture() {
    return model.totals().capture(streams);
  }

  /**
   * What a storage holds month by month.
   *
   * @param storage the storage
   * @return the account
   */
  public StorageAccount storage(StorageUnit storage) {
    List<StorageAccount.Month> weather = model.totals().weather(storage);
    List<StorageAccount.Month> months = new ArrayList<>();
    double days = 0;
    double sand = 0;
    for (int i = 0; i < weather.size(); i++) {
      StorageAccount.Month month = weather.get(i);
      Stream inflow =
          model.totals().sum(byMonth.isEmpty() ? streams : byMonth.get(i), storage.inlets());
      months.add(
          new StorageAccount.Month(
              month.name(),
              month.days(),
              inflow.volumeM3ps(),
              month.rainM(),
              month.evaporationM()));
      days += month.days();
      sand += month.days() * inflow.sandKgps();
    }
    return new StorageAccount(
        storage.pond(),
        months,
        storage.stormM(),
        storage.freeboardM(),
        storage.settledSandM3(),
        sand / days,
        model.constituents().sandDensityKgM3(),
        model.spec().porosity(),
        storage.runoffAreaM2());
  }

  /**
   * Fresh and recycled water.
   *
   * @return mean flows of both
   */
  public WaterAccount water() {
    Stream fresh =
        model
            .totals()
            .sum(streams, model.spec().waters().stream().map(WaterSpec::stream).toList())
            .plus(
                model
                    .constituents()
                    .water(
                        model.spec().pens().stream()
                                .mapToDouble(pen -> of.ends().water().apply(pen.pen().waterM3ps()))
                                .sum()
                            * model.constituents().waterDensityKgM3()));
    return new WaterAccount(fresh, model.totals().sum(streams, List.copyOf(model.recycles())));
  }

  /**
   * What must be hauled from the storages in a year; without storage, what leaves as waste.
   *
   * @return volume [m3]
   */
  public double hauledPerYearM3() {
    if (model.spec().storages().isEmpty()) {
      return model.totals().sum(streams, model.totals().products(Use.WASTE)).volumeM3ps()
          * InUnit.DAY.si(PlantTotals.YEAR_D);
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
