package sandslurry.assessment.plant.account;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.plant.PlantDay;
import sandslurry.assessment.plant.PlantMeanDay;
import sandslurry.assessment.plant.PlantModel;
import sandslurry.assessment.plant.PlantModel.Case;
import sandslurry.assessment.plant.PlantModel.Liquors;
import sandslurry.assessment.plant.PlantResult.ModeResult;
import sandslurry.assessment.plant.PlantResult.MonthResult;
import sandslurry.assessment.plant.PlantResult.Year;
import sandslurry.design.plant.PlantSpec.ModeSpec;
import sandslurry.design.plant.YearSpec.MonthSpec;
import sandslurry.plant.Stream;
import sandslurry.plant.account.StorageYear;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.unit.StorageUnit;

/**
 * The months of the year of a plant: in each the modes at rest in liquor of its temperature.
 *
 * <p>Each temperature is looked at once, from the one nearest to that of the design on, and its
 * balance is looked for from that of the temperature before, as a plant goes through its seasons.
 */
final class PlantYear {
  private final PlantModel model;
  private final PlantDay day;
  private final Map<Double, Map<ModeSpec, SteadyBalance>> balances = new HashMap<>();

  PlantYear(PlantModel model, PlantDay day, List<ModeResult> modes) {
    this.model = model;
    this.day = day;
    Map<ModeSpec, SteadyBalance> given = new LinkedHashMap<>();
    modes.forEach(mode -> given.put(mode.mode(), mode.balance().orElseThrow()));
    double design = model.liquor().temperatureK();
    balances.put(design, given);
    months().stream()
        .map(MonthSpec::liquorK)
        .distinct()
        .filter(temperature -> temperature != design)
        .sorted(Comparator.comparingDouble(temperature -> Math.abs(temperature - design)))
        .forEach(
            temperature ->
                PlantDay.atRest(model, Case.BASE.in(Liquors.at(temperature)), near(temperature))
                    .ifPresent(found -> balances.put(temperature, found)));
  }

  private List<MonthSpec> months() {
    return model.spec().year().months();
  }

  private Map<ModeSpec, SteadyBalance> near(double temperatureK) {
    return balances.entrySet().stream()
        .min(Comparator.comparingDouble(entry -> Math.abs(entry.getKey() - temperatureK)))
        .orElseThrow()
        .getValue();
  }

  /** The balances in a case that differs by a temperature that was looked at. */
  Optional<Map<ModeSpec, SteadyBalance>> balances(Case one) {
    OptionalDouble temperature = one.liquors().temperatureK();
    return temperature.isPresent()
            && one.equals(Case.BASE.in(Liquors.at(temperature.getAsDouble())))
        ? Optional.ofNullable(balances.get(temperature.getAsDouble()))
        : Optional.empty();
  }

  /**
   * The mean flows of each month; those of the mean day in a month in which a mode comes to no
   * rest.
   */
  List<Map<String, Stream>> flows() {
    return months().stream().map(month -> flows(month).orElse(day.streams())).toList();
  }

  private Optional<Map<String, Stream>> flows(MonthSpec month) {
    return Optional.ofNullable(balances.get(month.liquorK()))
        .map(found -> day.byDay(model.totals(), PlantDay.weighted(model, found)));
  }

  /** The year; empty where no months are given. */
  Optional<Year> year(PlantMeanDay base) {
    if (months().isEmpty()) {
      return Optional.empty();
    }
    List<MonthResult> results = new ArrayList<>();
    for (MonthSpec month : months()) {
      Optional<Map<String, Stream>> flows = flows(month);
      results.add(
          new MonthResult(
              month,
              flows
                  .map(f -> OptionalDouble.of(model.totals().capture(f)))
                  .orElse(OptionalDouble.empty()),
              flows
                  .map(f -> OptionalDouble.of(model.totals().limit(f).solved()))
                  .orElse(OptionalDouble.empty())));
    }
    Map<String, StorageYear> storages = new LinkedHashMap<>();
    for (StorageUnit storage : model.spec().storages()) {
      storages.put(
          storage.name(),
          StorageYear.of(base.storage(storage), model.spec().year().emptyings(storage.name())));
    }
    return Optional.of(new Year(results, storages));
  }
}
