package sandslurry.assessment.plant.account;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import sandslurry.assessment.plant.PlantModel;
import sandslurry.assessment.plant.PlantModel.Case;
import sandslurry.assessment.plant.PlantResult.Accounts;
import sandslurry.assessment.plant.PlantResult.LiquorLimit;
import sandslurry.assessment.plant.PlantResult.Sized;
import sandslurry.assessment.plant.PlantResult.WaterSizing;
import sandslurry.design.plant.PlantSpec.WaterSpec;
import sandslurry.plant.Stream;

/**
 * How much purge, or how much fresh water, brings the sand recovery to its target.
 *
 * @param model the plant
 * @param books its accounts, which try the remedies
 */
public record PlantRemedies(PlantModel model, PlantAccounts books) {
  /**
   * Purge and fresh water that bring the sand recovery to its target.
   *
   * @param accounts the accounts; empty when the plant comes to no balance
   * @return both remedies; {@code NONE} when none is needed or none is possible
   */
  public WaterSizing sizing(Optional<Accounts> accounts) {
    double target = model.spec().targets().sandCapture();
    Optional<WaterSpec> growing =
        model.spec().waters().stream().filter(water -> water.mostM3ps().isPresent()).findFirst();
    if (accounts.isEmpty()
        || growing.isEmpty()
        || !(accounts.get().sand().flushed().sandKgps() > 0)
        || accounts.get().capture().base() >= target) {
      return WaterSizing.NONE;
    }
    double most = growing.get().mostM3ps().getAsDouble();
    double recycled =
        model.spec().modes().stream().mapToDouble(model::recycledM3ps).max().orElseThrow();
    Optional<Sized> added =
        accounts.get().remedies().waterM3ps().isPresent()
            ? sized(Case.BASE::withWater, accounts.get().remedies().waterM3ps().getAsDouble())
            : Optional.empty();
    OptionalDouble purge =
        books.remedy("purge", Case.BASE::replacing, target, Math.min(most, recycled));
    Optional<Sized> replaced =
        purge.isPresent() ? sized(Case.BASE::replacing, purge.getAsDouble()) : Optional.empty();
    return new WaterSizing(true, added, replaced);
  }

  private Optional<Sized> sized(DoubleFunction<Case> change, double amount) {
    Optional<Map<String, Stream>> before = books.streams(Case.BASE);
    Optional<Map<String, Stream>> after = books.streams(change.apply(amount));
    if (before.isEmpty() || after.isEmpty()) {
      return Optional.empty();
    }
    LiquorLimit liquor = model.totals().limit(after.get());
    return Optional.of(
        new Sized(
            amount,
            liquor.sandCapture(),
            liquor.solved(),
            model.totals().sum(after.get(), model.totals().surplus()).volumeM3ps(),
            model.totals().sum(before.get(), model.totals().surplus()).volumeM3ps()));
  }
}
