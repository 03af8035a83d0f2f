package sandslurry.design.plant;

import java.util.Locale;
import java.util.Optional;
import sandslurry.design.plant.PlantSpec.Prices;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Span;
import sandslurry.fact.Type;
import sandslurry.fact.Values;
import sandslurry.plant.Range;
import sandslurry.units.Measure;

/** The fields of the user's prices. */
final class PriceFields extends Fields<Prices> {
  private static final Type<Double> PER_VOLUME =
      Type.quantity(Measure.VOLUME, "0.001 m3", "10000 m3");

  private final Field<String> currency =
      standard("currency", Type.text().map(String::strip), "")
          .label("Currency")
          .means("your currency, shown behind the sums");
  private final Field<Optional<Range>> sand =
      price(
          "sand",
          "Price of sand delivered",
          "12",
          Type.quantity(Measure.MASS, "1 kg", "1000000 kg"),
          "1 t",
          "1 ton");
  private final Field<Optional<Range>> hauling =
      price("hauling", "Price of hauling", "4", PER_VOLUME, "1 m3", "1000 gal");
  private final Field<Optional<Range>> electricity =
      price(
          "electricity",
          "Price of electricity",
          "0.15",
          Type.quantity(Measure.ENERGY, "0.001 kWh", "10000 kWh"),
          "1 kWh");
  private final Field<Optional<Range>> water =
      price("water", "Price of water", "1.2", PER_VOLUME, "1 m3", "1000 gal");

  PriceFields() {
    super("prices", "prices of your own");
  }

  private Field<Optional<Range>> price(
      String name, String label, String price, Type<Double> amount, String... per) {
    return optional(name, new PerFields(price, amount, per), "not known")
        .label(label)
        .means(label.toLowerCase(Locale.ROOT));
  }

  @Override
  protected Optional<Prices> make(Values values) {
    return Optional.of(
        new Prices(
            values.get(currency),
            values.get(sand),
            values.get(hauling),
            values.get(electricity),
            values.get(water)));
  }

  /** A price for an amount, read as the price for the SI unit. */
  private static final class PerFields extends Fields<Range> {
    private final Field<Range> price;
    private final Field<Double> per;

    PerFields(String price, Type<Double> amount, String... per) {
      super("price", "price");
      this.price =
          needed("price", new Span<>(Type.quantity(Measure.NUMBER, "0", "1000000"), Range::new))
              .label("Price")
              .means("price of that amount")
              .such(price);
      this.per =
          needed("per", amount).label("for").means("the amount that has that price").such(per);
    }

    @Override
    protected Optional<Range> make(Values values) {
      double amount = values.get(per);
      return Optional.of(values.get(price).map(sum -> sum / amount));
    }
  }
}
