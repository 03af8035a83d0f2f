package sandslurry.fact;

import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import javax.measure.IncommensurableException;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import sandslurry.units.Kind;
import sandslurry.units.Measure;
import sandslurry.units.ShownText;
import sandslurry.units.UnitTextException;

/**
 * How one text becomes a value, and what may be typed.
 *
 * @param <S> the value
 */
public final class Type<S> extends Content<S> {
  private final Function<String, S> parse;
  private final String wanted;
  private final Function<String, String> range;
  private final Optional<Measure<?>> measure;
  private final Map<String, String> choices;
  private final boolean number;

  private Type(
      Function<String, S> parse,
      String wanted,
      Function<String, String> range,
      Optional<Measure<?>> measure,
      Map<String, String> choices,
      boolean number) {
    this.parse = parse;
    this.wanted = wanted;
    this.range = range;
    this.measure = measure;
    this.choices = choices;
    this.number = number;
  }

  /**
   * A quantity with its unit, which is read in SI.
   *
   * @param measure what kind of quantity
   * @param low the least that may be typed, with its unit
   * @param high the greatest that may be typed, with its unit
   * @param <Q> the quantity
   * @return the type
   */
  public static <Q extends Quantity<Q>> Type<Double> quantity(
      Measure<Q> measure, String low, String high) {
    return quantity(measure, low, high, "");
  }

  /**
   * The same with what to do about a quantity beyond the limits.
   *
   * @param measure what kind of quantity
   * @param low the least that may be typed, with its unit
   * @param high the greatest that may be typed, with its unit
   * @param advice what to do
   * @param <Q> the quantity
   * @return the type
   */
  public static <Q extends Quantity<Q>> Type<Double> quantity(
      Measure<Q> measure, String low, String high, String advice) {
    Quantity<Q> least = measure.parse(low);
    double lowSi = measure.si(least);
    double highSi = measure.si(measure.parse(high));
    Function<Quantity<Q>, String> range =
        unit ->
            measure.writeLike(lowSi, unit, RoundingMode.CEILING)
                + " to "
                + measure.writeLike(highSi, unit, RoundingMode.FLOOR);
    // Without a unit typed nobody knows which one is meant.
    String inBoth =
        range.apply(least)
            + Kind.usUnit(measure, measure.write(least).replaceFirst("^\\S+ ?", ""))
                .map(us -> " (" + range.apply(measure.parse("1 " + us)) + ")")
                .orElse("");
    return new Type<>(
        text -> {
          Quantity<Q> quantity;
          try {
            quantity = measure.parse(text);
          } catch (UnitTextException e) {
            throw new UnitTextException(e.getMessage() + "; allowed are " + inBoth);
          }
          double si = measure.si(quantity);
          if (!(si >= lowSi && si <= highSi)) {
            throw new UnitTextException("must be " + range.apply(quantity) + advice);
          }
          return si;
        },
        "a " + measure.name() + " is needed, " + inBoth,
        like -> range.apply(like.isEmpty() ? least : measure.parse(like)),
        Optional.of(measure),
        Map.of(),
        measure.units().get(0).symbol().isEmpty());
  }

  /**
   * A whole number from 1 on.
   *
   * @param high the greatest, of at most six figures
   * @return the type
   */
  public static Type<Integer> count(int high) {
    String allowed = "a whole number from 1 to " + high;
    return new Type<>(
        text -> {
          String figures = text.strip();
          int count = figures.matches("\\d{1,6}") ? Integer.parseInt(figures) : 0;
          if (count < 1 || count > high) {
            throw new UnitTextException("must be " + allowed);
          }
          return count;
        },
        allowed + " is needed",
        like -> allowed,
        Optional.empty(),
        Map.of(),
        true);
  }

  /**
   * One of a closed list.
   *
   * @param values what there is to choose from
   * @param name how each is written in files; in any case when read
   * @param words how each reads for a person
   * @param <T> what is chosen
   * @return the type
   */
  public static <T> Type<T> choice(
      List<T> values, Function<T, String> name, Function<T, String> words) {
    Map<String, T> named = new LinkedHashMap<>();
    Map<String, String> choices = new LinkedHashMap<>();
    values.forEach(value -> named.put(name.apply(value), value));
    named.forEach((key, value) -> choices.put(key, words.apply(value)));
    String all = String.join(", ", named.keySet());
    return new Type<>(
        text ->
            named.entrySet().stream()
                .filter(entry -> entry.getKey().equalsIgnoreCase(text.strip()))
                .findFirst()
                .orElseThrow(() -> new UnitTextException("must be one of: " + all))
                .getValue(),
        "one of " + all,
        like -> "",
        Optional.empty(),
        choices,
        false);
  }

  /**
   * Yes or no.
   *
   * @param yes what yes means, for a person
   * @param no what no means
   * @return the type
   */
  public static Type<Boolean> yesNo(String yes, String no) {
    return choice(List.of(true, false), b -> b ? "yes" : "no", b -> b ? yes : no);
  }

  /**
   * Any text; characters that cannot be seen are read as their escapes.
   *
   * @return the type
   */
  public static Type<String> text() {
    return text("");
  }

  /**
   * Any text that must be given.
   *
   * @param wanted what it is, said when it is missing
   * @return the type
   */
  public static Type<String> text(String wanted) {
    return new Type<>(ShownText::escaped, wanted, like -> "", Optional.empty(), Map.of(), false);
  }

  /**
   * A name, which must not be blank.
   *
   * @param wanted what it names, said when it is missing
   * @return the type
   */
  public static Type<String> name(String wanted) {
    return new Type<>(
        text -> {
          if (text.isBlank()) {
            throw new UnitTextException("must not be blank: " + wanted);
          }
          return ShownText.escaped(text.strip());
        },
        wanted,
        like -> "",
        Optional.empty(),
        Map.of(),
        false);
  }

  /**
   * The same texts, as other values.
   *
   * @param other makes the other value
   * @param <T> the other value
   * @return the type
   */
  public <T> Type<T> map(Function<S, T> other) {
    return new Type<>(parse.andThen(other), wanted, range, measure, choices, number);
  }

  /**
   * The same texts, asked for in other words.
   *
   * @param words what is needed, said after "is missing"
   * @return the type
   */
  public Type<S> wanted(String words) {
    return new Type<>(parse, words, range, measure, choices, number);
  }

  /**
   * Reads a text that is known to be right, such as a default.
   *
   * @param text the text
   * @return its value
   * @throws UnitTextException if it is not right after all
   */
  public S parse(String text) {
    return parse.apply(text);
  }

  /**
   * A text as it is repeated in a problem.
   *
   * @param text the text
   * @return the text, cut where it is long
   */
  public static String brief(String text) {
    return Place.brief(text);
  }

  @Override
  Optional<S> read(Place place, Tree value, List<Values> inside) {
    Optional<String> text = value.text();
    if (text.isEmpty()) {
      place.problem(value, "must be a text");
      return Optional.empty();
    }
    try {
      return Optional.of(parse.apply(text.get()));
    } catch (UnitTextException e) {
      place.problem(value, e.getMessage());
      return Optional.empty();
    }
  }

  @Override
  Optional<S> standard(Place place, String text, List<Values> inside) {
    return Optional.of(parse.apply(text));
  }

  /**
   * What is said when it is missing.
   *
   * @return the sentence; empty when there is nothing to say
   */
  @Override
  public String wanted() {
    return wanted;
  }

  /**
   * What is allowed.
   *
   * @param like an example, in the unit of which it is said; may be empty
   * @return for example "1 m to 500 m"; empty where any text or a choice is taken
   */
  public String range(String like) {
    return range.apply(like);
  }

  /** A text that is right, as a program would write it. */
  String written(String text) {
    return measure.map(quantity -> rewritten(quantity, text)).orElse(text);
  }

  private static <Q extends Quantity<Q>> String rewritten(Measure<Q> measure, String text) {
    return measure.write(measure.parse(text));
  }

  /**
   * A quantity in SI.
   *
   * @param text the text of it
   * @return the number and unit; empty for anything that is no quantity, a pure number or wrong,
   *     and where it says no more than what was typed: a time, a power of ten of SI, a number hard
   *     to read
   */
  public Optional<String> understood(String text) {
    try {
      return measure.flatMap(quantity -> inSi(quantity.parse(text)));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private static Optional<String> inSi(Quantity<?> quantity) {
    Quantity<?> si = quantity.toSystemUnit();
    String unit = si.getUnit().toString();
    double value = si.getValue().doubleValue();
    // Nobody reads a share, a time or a speed of rotation more easily in SI.
    boolean tells = !Set.of("one", "s", "Hz").contains(unit) && isEasilyRead(value);
    return tells && !sameDigits(quantity.getUnit(), si.getUnit())
        ? Optional.of(String.format(Locale.ROOT, "%.4g %s", value, unit))
        : Optional.empty();
  }

  private static boolean isEasilyRead(double value) {
    return value == 0 || Math.abs(value) >= 0.001 && Math.abs(value) < 1e5;
  }

  /**
   * Millimetres are metres with another decimal point, degrees Celsius kelvins from another zero.
   */
  private static boolean sameDigits(Unit<?> typed, Unit<?> si) {
    try {
      UnitConverter converter = typed.getConverterToAny(si);
      double power = Math.log10(converter.convert(1.0) - converter.convert(0.0));
      return Math.abs(power - Math.rint(power)) < 1e-9;
    } catch (IncommensurableException e) {
      throw new IllegalStateException("a unit and its SI unit measure the same", e);
    }
  }

  /**
   * What there is to choose from.
   *
   * @return words for a person by the name in files; empty unless this is a choice
   */
  public Map<String, String> choices() {
    return choices;
  }

  /**
   * Whether a bare number may stand here.
   *
   * @return true for fractions and counts
   */
  public boolean isNumber() {
    return number;
  }

  @Override
  public <R> R match(Cases<R> cases) {
    return cases.text(this);
  }
}
