package sandslurry.plant.unit;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import sandslurry.plant.Figure;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/**
 * What who runs a unit looks at. The numbers are those of the design; what to look at is common
 * practice, no source.
 *
 * @param daily what to look at each day
 * @param monthly what to look at each month
 * @param wrong what shows that it goes wrong
 * @param clean when and how to clean it
 */
public record Care(String daily, String monthly, String wrong, String clean) {
  /**
   * The numbers of the design that it is said with.
   *
   * @param units the units of the report
   * @param figures the figures of the unit
   * @param bedding whether a stream is used as bedding
   * @param lasts time until it is full: a storage of what comes, a pit of sand by a quarter
   * @param liquor total solids of the liquor that leaves for good
   */
  public record Numbers(
      UnitSystem units,
      List<Figure> figures,
      Predicate<String> bedding,
      Optional<Figure> lasts,
      Optional<Figure> liquor) {
    /** A figure of the unit after some words; nothing where it has none. */
    String figure(String what, String before) {
      return figures.stream()
          .filter(figure -> figure.what().startsWith(what))
          .findFirst()
          .map(figure -> before + figure.shown(units))
          .orElse("");
    }

    String show(Kind<?> kind, double value) {
      return units.show(kind, value);
    }
  }
}
