package sandslurry.assessment.plant;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import sandslurry.plant.Figure;
import sandslurry.plant.Range;
import sandslurry.units.Kind;

/**
 * What a plant comes to in the expected case and in all others that are looked at.
 *
 * @param base the expected case
 * @param others the other cases
 * @param <T> what a case comes to
 */
public record Spread<T>(T base, List<T> others) {
  /**
   * A quantity over all cases.
   *
   * @param value the quantity of a case, in the SI unit of its kind
   * @return expected value with the least and the greatest
   */
  public Range range(ToDoubleFunction<T> value) {
    return Range.over(base, others, value);
  }

  /**
   * A quantity over all cases as a row of a table.
   *
   * @param what its label
   * @param kind its kind of quantity
   * @param value the quantity of a case, in the SI unit of its kind
   * @return the figure
   */
  public Figure figure(String what, Kind<?> kind, ToDoubleFunction<T> value) {
    return new Figure(what, kind, range(value));
  }

  /**
   * A quantity over the cases that have it.
   *
   * @param what its label
   * @param kind its kind of quantity
   * @param value the quantity of a case, in the SI unit of its kind
   * @return the figure; empty when the expected case has none
   */
  public Optional<Figure> figureIfAny(
      String what, Kind<?> kind, Function<T, OptionalDouble> value) {
    return value.apply(base).isEmpty()
        ? Optional.empty()
        : Optional.of(
            where(one -> value.apply(one).isPresent())
                .figure(what, kind, one -> value.apply(one).getAsDouble()));
  }

  /**
   * The same expected case with those of the others that a condition holds for.
   *
   * @param condition the condition
   * @return the cases left
   */
  public Spread<T> where(Predicate<T> condition) {
    return new Spread<>(base, others.stream().filter(condition).toList());
  }
}
