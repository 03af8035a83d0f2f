package sandslurry.fact;

import java.util.List;
import java.util.Optional;

/**
 * A value, or a group of its least, its expected and its greatest value.
 *
 * @param <S> what the three make
 */
public final class Span<S> extends Content<S> {
  private static final List<String> ENDS = List.of("low", "base", "high");

  private final Type<Double> type;
  private final Maker<S> maker;

  /**
   * Makes a value with its range from three numbers in ascending order.
   *
   * @param <S> the value
   */
  @FunctionalInterface
  public interface Maker<S> {
    /**
     * Makes it.
     *
     * @param low the least
     * @param base the expected
     * @param high the greatest
     * @return the value
     */
    S of(double low, double base, double high);
  }

  /**
   * Makes the content.
   *
   * @param type how each of the three is typed
   * @param maker makes a value of them
   */
  public Span(Type<Double> type, Maker<S> maker) {
    this.type = type;
    this.maker = maker;
  }

  /**
   * How each of the three is typed.
   *
   * @return the type
   */
  public Type<Double> type() {
    return type;
  }

  @Override
  Optional<S> read(Place place, Tree value, List<Values> inside) {
    if (!value.isGroup()) {
      return type.read(place, value, inside).map(v -> maker.of(v, v, v));
    }
    Double[] ends = new Double[ENDS.size()];
    for (int i = 0; i < ends.length; i++) {
      Place at = place.below(ENDS.get(i));
      Tree end = value.at(ENDS.get(i));
      if (end.isThere()) {
        ends[i] = type.read(at, end, inside).orElse(null);
      } else {
        at.problem(end, "is missing: " + type.wanted());
      }
    }
    for (String name : value.names()) {
      if (!ENDS.contains(name)) {
        place.below(name).problem(value.at(name), Fields.unknown(ENDS));
      }
    }
    if (ends[0] == null || ends[1] == null || ends[2] == null) {
      return Optional.empty();
    }
    if (!(ends[0] <= ends[1] && ends[1] <= ends[2])) {
      place.problem(value, "needs \"low\" <= \"base\" <= \"high\"");
      return Optional.empty();
    }
    return Optional.of(maker.of(ends[0], ends[1], ends[2]));
  }

  @Override
  Optional<S> standard(Place place, String text, List<Values> inside) {
    double value = type.parse(text);
    return Optional.of(maker.of(value, value, value));
  }

  @Override
  String wanted() {
    return type.wanted();
  }

  @Override
  public <R> R match(Cases<R> cases) {
    return cases.span(this);
  }
}
