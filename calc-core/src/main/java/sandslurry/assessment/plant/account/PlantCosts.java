package sandslurry.assessment.plant.account;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sandslurry.design.plant.PlantSpec.Prices;
import sandslurry.plant.Figure;
import sandslurry.plant.Range;
import sandslurry.units.Kind;

/**
 * What reaches storage in a year, and what that and the rest of the plant cost by the user's
 * prices.
 *
 * @param figures amounts and sums of money
 * @param missing the prices that were not given, in words
 */
record PlantCosts(List<Figure> figures, List<String> missing) {
  /** The amounts of a year: kilograms, cubic metres, joules. */
  record Year(
      Range boughtKg,
      Range lostKg,
      Range hauledM3,
      Range cleanedM3,
      Range energyJ,
      Range waterM3) {}

  static PlantCosts of(Prices prices, Year year) {
    List<Figure> figures = new ArrayList<>();
    figures.add(new Figure("volume to be hauled from storage", Kind.VOLUME, year.hauledM3()));
    if (year.cleanedM3().high() > 0) {
      figures.add(
          new Figure("bulk volume of sand hauled with the bedding", Kind.VOLUME, year.cleanedM3()));
    }
    String money = prices.currency().isEmpty() ? "" : ", in " + prices.currency();
    List<String> missing = new ArrayList<>();
    List<Range> sums = new ArrayList<>();
    cost(
        figures, missing, sums, "sand bought" + money, "sand", prices.sandPerKg(), year.boughtKg());
    prices
        .sandPerKg()
        .ifPresent(
            price ->
                figures.add(
                    new Figure(
                        "of which for sand lost with all that leaves" + money,
                        Kind.NUMBER,
                        year.lostKg().times(price))));
    cost(
        figures,
        missing,
        sums,
        "hauling" + money,
        "hauling",
        prices.haulingPerM3(),
        year.hauledM3().plus(year.cleanedM3()));
    cost(
        figures,
        missing,
        sums,
        "electricity" + money,
        "electricity",
        prices.energyPerJ(),
        year.energyJ());
    cost(
        figures,
        missing,
        sums,
        "fresh water" + money,
        "water",
        prices.waterPerM3(),
        year.waterM3());
    if (sums.size() > 1) {
      figures.add(
          new Figure(
              (missing.isEmpty() ? "all of these" : "all of these that have a price") + money,
              Kind.NUMBER,
              sums.stream().reduce(Range.of(0), Range::plus)));
    }
    return new PlantCosts(List.copyOf(figures), List.copyOf(missing));
  }

  private static void cost(
      List<Figure> figures,
      List<String> missing,
      List<Range> sums,
      String what,
      String field,
      Optional<Range> price,
      Range amount) {
    if (price.isEmpty()) {
      missing.add(field);
      return;
    }
    Range sum = amount.times(price.get());
    sums.add(sum);
    figures.add(new Figure(what, Kind.NUMBER, sum));
  }
}
