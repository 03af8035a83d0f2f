package sandslurry.report.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import sandslurry.report.block.Block;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/**
 * What is shown of each of several things, declared once: the column of a table and, where it has
 * an id, a figure for other programs.
 *
 * @param id its id as a figure, which never changes; empty for a column alone
 * @param label its heading, without the unit
 * @param kind what the numbers are; empty for a column of words
 * @param value the number of one thing in SI with its range, if it has one
 * @param text what it says of one thing in place of a number
 * @param <T> the things
 */
public record Column<T>(
    String id,
    String label,
    Optional<Kind<?>> kind,
    Function<T, Optional<Spread>> value,
    Optional<Function<T, String>> text) {
  private static final String NONE = "-";

  /**
   * A number with its range.
   *
   * @param low its least value in SI
   * @param value its expected value in SI
   * @param high its greatest value in SI
   */
  public record Spread(double low, double value, double high) {
    private Spread(double si) {
      this(si, si, si);
    }
  }

  /**
   * A column of words.
   *
   * @param label its heading
   * @param text what it says of one thing
   * @return the column
   * @param <T> the things
   */
  public static <T> Column<T> text(String label, Function<T, String> text) {
    return new Column<>("", label, Optional.empty(), thing -> Optional.empty(), Optional.of(text));
  }

  /**
   * A column of numbers.
   *
   * @param label its heading, without the unit
   * @param kind what the numbers are
   * @param si the number of one thing in SI
   * @return the column
   * @param <T> the things
   */
  public static <T> Column<T> of(String label, Kind<?> kind, ToDoubleFunction<T> si) {
    return of(label, kind, si, "");
  }

  /**
   * A column of numbers, which is a figure for other programs too.
   *
   * @param label its heading, without the unit
   * @param kind what the numbers are
   * @param si the number of one thing in SI
   * @param id its id, which never changes
   * @return the column
   * @param <T> the things
   */
  public static <T> Column<T> of(String label, Kind<?> kind, ToDoubleFunction<T> si, String id) {
    return spread(label, kind, thing -> Optional.of(new Spread(si.applyAsDouble(thing))), id);
  }

  /**
   * A column of numbers that not everything has.
   *
   * @param label its heading, without the unit
   * @param kind what the numbers are
   * @param si the number of one thing in SI, if it has one
   * @return the column
   * @param <T> the things
   */
  public static <T> Column<T> maybe(String label, Kind<?> kind, Function<T, OptionalDouble> si) {
    return maybe(label, kind, si, "");
  }

  /**
   * A column of numbers that not everything has, which is a figure for other programs too.
   *
   * @param label its heading, without the unit
   * @param kind what the numbers are
   * @param si the number of one thing in SI, if it has one
   * @param id its id, which never changes
   * @return the column
   * @param <T> the things
   */
  public static <T> Column<T> maybe(
      String label, Kind<?> kind, Function<T, OptionalDouble> si, String id) {
    return spread(
        label, kind, thing -> si.apply(thing).stream().mapToObj(Spread::new).findFirst(), id);
  }

  /**
   * A number with its range that not everything has, which is a figure for other programs too.
   *
   * @param label its heading, without the unit
   * @param kind what the numbers are
   * @param si the number of one thing in SI, if it has one
   * @param id its id, which never changes
   * @return the column
   * @param <T> the things
   */
  public static <T> Column<T> spread(
      String label, Kind<?> kind, Function<T, Optional<Spread>> si, String id) {
    return new Column<>(id, label, Optional.of(kind), si, Optional.empty());
  }

  /**
   * The same figure, of which a table says more than the number.
   *
   * @param words what it says of one thing
   * @return the column
   */
  public Column<T> saying(Function<T, String> words) {
    return new Column<>(id, label, kind, value, Optional.of(words));
  }

  private String cell(T thing, BiFunction<Kind<?>, Spread, String> shown) {
    return text.map(words -> words.apply(thing))
        .or(() -> value.apply(thing).map(si -> shown.apply(kind.orElseThrow(), si)))
        .orElse(NONE);
  }

  /** The heading; its unit is left out where the column before has the same. */
  private String heading(Optional<Kind<?>> before, UnitSystem units) {
    String symbol = kind.map(k -> k.symbol(units)).orElse("");
    boolean again =
        before.isPresent() && before.get().symbol(units).equals(symbol) && !symbol.equals("%");
    return symbol.isEmpty() || again ? label : label + " [" + symbol + "]";
  }

  /**
   * The table of several things.
   *
   * @param things a row each
   * @param columns what is shown of them
   * @param units the units of the report
   * @return the table
   * @param <T> the things
   */
  public static <T> Block.Table table(List<T> things, List<Column<T>> columns, UnitSystem units) {
    List<String> head = new ArrayList<>();
    Optional<Kind<?>> before = Optional.empty();
    for (Column<T> column : columns) {
      head.add(column.heading(before, units));
      before = column.kind;
    }
    return new Block.Table(
        head,
        things.stream()
            .map(
                thing ->
                    columns.stream()
                        .map(
                            column ->
                                column.cell(
                                    thing,
                                    (kind, si) ->
                                        units.number(kind, si.value())
                                            + units.ends(kind, si.low(), si.high())))
                        .toList())
            .toList());
  }

  /**
   * The table of what is known of one thing, a row each.
   *
   * @param thing the thing
   * @param columns what is known of it
   * @param units the units of the report
   * @return the table; a dash where the thing has no number
   * @param <T> the thing
   */
  public static <T> Block.Table facts(T thing, List<Column<T>> columns, UnitSystem units) {
    return new Block.Table(
        List.of("what", "value"),
        columns.stream()
            .map(
                column ->
                    List.of(
                        column.label,
                        column.cell(thing, (kind, si) -> units.show(kind, si.value()))))
            .toList());
  }

  /**
   * The figures of one thing.
   *
   * @param thing the thing
   * @param columns what is known of it
   * @param element the part that it belongs to
   * @param at where it holds, such as the name of a state
   * @return those that have an id and a value
   * @param <T> the things
   */
  public static <T> List<ReportFigure> figures(
      T thing, List<Column<T>> columns, String element, String at) {
    List<ReportFigure> figures = new ArrayList<>();
    for (Column<T> column : columns) {
      if (!column.id.isEmpty()) {
        column
            .value
            .apply(thing)
            .ifPresent(
                si ->
                    figures.add(
                        new ReportFigure(
                            column.id,
                            column.label,
                            element,
                            at,
                            column.kind.orElseThrow(),
                            si.low(),
                            si.value(),
                            si.high())));
      }
    }
    return figures;
  }
}
