package sandslurry.assessment;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import sandslurry.assessment.PlantModel.Case;
import sandslurry.assessment.PlantResult.Accounts;
import sandslurry.assessment.PlantResult.LiquorLimit;
import sandslurry.assessment.PlantResult.Sized;
import sandslurry.assessment.PlantResult.WaterSizing;
import sandslurry.circuit.Remedy;
import sandslurry.circuit.Stream;
import sandslurry.design.PlantSpec;
import sandslurry.design.PlantSpec.WaterSpec;
import sandslurry.numeric.UnsolvedException;

/** How much purge, or how much fresh water, brings the sand recovery to its target. */
final class PlantRemedies {
  private final PlantModel model;
  private final PlantSpec spec;
  private final PlantTotals totals;
  private final Function<Case, Optional<Map<String, Stream>>> mean;

  /** Looks by the mean flows of a day, which are empty where a mode has no steady state. */
  PlantRemedies(
      PlantModel model, PlantTotals totals, Function<Case, Optional<Map<String, Stream>>> mean) {
    this.mean = mean;
    this.model = model;
    this.spec = model.spec();
    this.totals = totals;
  }

  WaterSizing sizing(Optional<Accounts> accounts) {
    double target = spec.targets().sandCapture();
    Optional<WaterSpec> growing =
        spec.waters().stream().filter(water -> water.mostM3ps().isPresent()).findFirst();
    if (accounts.isEmpty()
        || growing.isEmpty()
        || !(accounts.get().sand().flushed().sandKgps() > 0)
        || accounts.get().capture().base() >= target) {
      return WaterSizing.NONE;
    }
    double most = growing.get().mostM3ps().getAsDouble();
    double recycled = spec.modes().stream().mapToDouble(model::recycledM3ps).max().orElseThrow();
    Optional<Sized> added =
        accounts.get().extraWater().isPresent()
            ? sized(Case.BASE::withWater, accounts.get().extraWater().getAsDouble())
            : Optional.empty();
    Optional<Sized> replaced = least(Case.BASE::replacing, target, Math.min(most, recycled));
    return new WaterSizing(true, added, replaced);
  }

  private Optional<Sized> least(DoubleFunction<Case> change, double target, double most) {
    if (!(most > 0)) {
      return Optional.empty();
    }
    try {
      OptionalDouble amount =
          Remedy.least(
              "purge",
              x -> mean.apply(change.apply(x)).map(totals::capture).orElse(0.0),
              target,
              most);
      return amount.isPresent() ? sized(change, amount.getAsDouble()) : Optional.empty();
    } catch (UnsolvedException e) {
      return Optional.empty();
    }
  }

  private Optional<Sized> sized(DoubleFunction<Case> change, double amount) {
    Optional<Map<String, Stream>> before = mean.apply(Case.BASE);
    Optional<Map<String, Stream>> after = mean.apply(change.apply(amount));
    if (before.isEmpty() || after.isEmpty()) {
      return Optional.empty();
    }
    LiquorLimit liquor = totals.limit(after.get());
    return Optional.of(
        new Sized(
            amount,
            liquor.sandCapture(),
            liquor.solved(),
            totals.sum(after.get(), totals.surplus()).volumeM3ps(),
            totals.sum(before.get(), totals.surplus()).volumeM3ps()));
  }
}
