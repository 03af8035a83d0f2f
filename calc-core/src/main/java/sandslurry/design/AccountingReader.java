package sandslurry.design;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Volume;
import sandslurry.design.PlantSpec.Accounting;
import sandslurry.design.PlantSpec.Prices;
import sandslurry.design.PlantSpec.Targets;
import sandslurry.design.PlantSpec.WantedGradation;
import sandslurry.material.sand.StandardSand;
import sandslurry.plant.Range;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;
import sandslurry.units.Measure;
import sandslurry.units.UnitSystem;

/**
 * Reads what a plant is judged by, and what only its accounts need: losses, how fibre settles,
 * prices.
 */
final class AccountingReader {
  private static final Limits<Dimensionless> REACHING = Limits.of(Measure.FRACTION, "1 %", "100 %");
  private static final Limits<Dimensionless> LIQUOR = Limits.of(Measure.FRACTION, "0.1 %", "50 %");
  private static final Limits<Speed> FALL = Limits.of(Measure.SPEED, "0.001 mm/s", "50 mm/s");
  private static final Limits<Dimensionless> PRICE = Limits.of(Measure.FRACTION, "0", "1000000");
  private static final Limits<Mass> PER_MASS = Limits.of(Measure.MASS, "1 kg", "1000000 kg");
  private static final Limits<Volume> PER_VOLUME =
      Limits.of(Measure.VOLUME, "0.001 m3", "10000 m3");
  private static final Limits<Energy> PER_ENERGY =
      Limits.of(Measure.ENERGY, "0.001 kWh", "10000 kWh");
  private static final Limits<Length> SIEVE = Limits.of(Measure.LENGTH, "0.075 mm", "100 mm");

  /** The published share of feedlot manure that settles, and its middle. */
  private static final Range SETTLEABLE = new Range(0.35, 0.55, 0.75);

  private final Section plant;

  AccountingReader(Section plant) {
    this.plant = plant;
  }

  Optional<Accounting> accounting() {
    Optional<Range> reaching = plant.range("sandReachingPlant", REACHING, Range.of(1));
    Optional<Range> velocity = plant.range("organicSettlingVelocity", FALL, "3 mm/s");
    Optional<Range> share = plant.range("organicSettleableShare", DesignReader.SHARE, SETTLEABLE);
    Optional<Prices> prices = prices(plant.part("prices").orElseGet(() -> plant.blank("prices")));
    return Section.there(reaching, velocity, share, prices)
        ? Optional.of(new Accounting(reaching.get(), velocity.get(), share.get(), prices.get()))
        : Optional.empty();
  }

  Optional<Targets> targets() {
    Section part = plant.part("targets").orElseGet(() -> plant.blank("targets"));
    Optional<Double> capture = part.si("sandCapture", DesignReader.SHARE, "85 %");
    Optional<Double> organic = part.si("bedOrganicMatter", DesignReader.SHARE, "3 %");
    Optional<Double> moisture = part.si("bedMoisture", DesignReader.SHARE, "20 %");
    OptionalDouble liquor = part.may("liquorSolids", LIQUOR);
    OptionalDouble storage = part.may("storage", PlantLimits.WAIT);
    Optional<Optional<WantedGradation>> gradation = wanted(part);
    part.refuseUnknown();
    return Section.there(capture, organic, moisture, gradation)
        ? Optional.of(
            new Targets(
                capture.get(),
                organic.get(),
                moisture.get(),
                liquor,
                storage.isPresent()
                    ? OptionalDouble.of(InUnit.days(storage.getAsDouble()))
                    : OptionalDouble.empty(),
                gradation.get()))
        : Optional.empty();
  }

  private static Optional<Prices> prices(Section part) {
    Optional<String> currency = part.has("currency") ? part.text("currency") : Optional.of("");
    Optional<Optional<Range>> sand = price(part, "sand", PER_MASS);
    Optional<Optional<Range>> hauling = price(part, "hauling", PER_VOLUME);
    Optional<Optional<Range>> energy = price(part, "electricity", PER_ENERGY);
    Optional<Optional<Range>> water = price(part, "water", PER_VOLUME);
    part.refuseUnknown();
    return Section.there(currency, sand, hauling, energy, water)
        ? Optional.of(
            new Prices(
                currency.get().strip(), sand.get(), hauling.get(), energy.get(), water.get()))
        : Optional.empty();
  }

  /** A price for an amount, as a price for the SI unit; absent, or wrong. */
  private static <Q extends Quantity<Q>> Optional<Optional<Range>> price(
      Section part, String field, Limits<Q> limits) {
    if (!part.has(field)) {
      return Optional.of(Optional.empty());
    }
    Optional<Section> group = part.part(field);
    if (group.isEmpty()) {
      return Optional.empty();
    }
    Section one = group.get();
    Optional<Range> price = Optional.empty();
    if (one.has("price")) {
      price = one.range("price", PRICE, Range.of(0));
    } else {
      one.problem("price", "is missing: a number is needed");
    }
    Optional<Quantity<Q>> per = one.required("per", limits);
    one.refuseUnknown();
    if (price.isEmpty() || per.isEmpty()) {
      return Optional.empty();
    }
    double amount = limits.measure().si(per.get());
    return Optional.of(price.map(range -> range.map(sum -> sum / amount)));
  }

  /** The gradation wanted: none, the name of a standard, or sieves with their limits. */
  private static Optional<Optional<WantedGradation>> wanted(Section targets) {
    if (!targets.has("gradation")) {
      return Optional.of(Optional.empty());
    }
    if (!targets.isList("gradation")) {
      return targets
          .choice("gradation", SandReader.SANDS)
          .map(sand -> Optional.of(new WantedGradation(sand.id(), sand.limits())));
    }
    List<StandardSand.Limit> limits = new ArrayList<>();
    Set<Double> sizes = new HashSet<>();
    List<Section> rows = targets.list("gradation");
    for (Section row : rows) {
      Optional<Quantity<Length>> size = row.required("size", SIEVE);
      Optional<Quantity<Dimensionless>> least = row.orDefault("least", DesignReader.SHARE, "0 %");
      Optional<Quantity<Dimensionless>> most = row.orDefault("most", DesignReader.SHARE, "100 %");
      row.refuseUnknown();
      if (size.isEmpty() || least.isEmpty() || most.isEmpty()) {
        continue;
      }
      double sizeM = Measure.LENGTH.si(size.get());
      if (!(Measure.FRACTION.si(least.get()) <= Measure.FRACTION.si(most.get()))) {
        row.problem("most", "must not be below \"least\"");
      } else if (!sizes.add(sizeM)) {
        row.problem(
            "size",
            "the sieve of " + UnitSystem.METRIC.show(Kind.GRAIN, sizeM) + " is given twice");
      } else {
        limits.add(
            new StandardSand.Limit(
                sizeM, Measure.FRACTION.si(least.get()), Measure.FRACTION.si(most.get())));
      }
    }
    if (rows.isEmpty()) {
      targets.problem("gradation", "a gradation wanted needs one sieve or more");
    }
    return limits.size() == rows.size() && !rows.isEmpty()
        ? Optional.of(Optional.of(new WantedGradation("the gradation wanted", limits)))
        : Optional.empty();
  }
}
