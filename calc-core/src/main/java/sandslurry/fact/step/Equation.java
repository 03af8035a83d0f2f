package sandslurry.fact.step;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import sandslurry.units.Kind;

/**
 * An equation of the working, declared once beside the code that computes it.
 *
 * <p>Its text is plain and can be read by a program, and a test does: with the values of a step put
 * in it gives the value of the step. A product is written with a space, a power with {@code ^}, a
 * choice as {@code a for x < 1; b for x < 2; else c}; {@code g} is gravity, {@code x[mm]} the
 * number of millimetres. All other values are in SI.
 *
 * @param how how the value comes about
 * @param symbol the symbol of the result
 * @param meaning the result in words
 * @param text the right-hand side; of a search or a look-up what was searched or looked up, in
 *     words
 * @param kind what the result is
 * @param source where the equation comes from
 * @param inputs what is put in
 */
public record Equation(
    How how,
    String symbol,
    String meaning,
    String text,
    Kind<?> kind,
    String source,
    List<Input> inputs) {
  /** Source of an equation that follows from the definition of its terms. */
  public static final String DEFINITION = "definition";

  /** Source of a value that is in common use and that nobody published. */
  public static final String COMMON = "common practice, no source";

  /** How a value comes about. */
  public enum How {
    /** By putting values into the equation. */
    COMPUTED,
    /** By a search: a root, the largest over several sizes, a sum over time. */
    SEARCHED,
    /** By reading a table, a chart, a curve of the maker or a property of a substance. */
    LOOKED_UP
  }

  /**
   * What is put into an equation.
   *
   * @param symbol its symbol
   * @param unit its SI unit, empty for a pure number
   */
  public record Input(String symbol, String unit) {
    private static Input of(String text) {
      int space = text.indexOf(' ');
      return space < 0
          ? new Input(text, "")
          : new Input(text.substring(0, space), text.substring(space + 1));
    }
  }

  /** Copies the list. */
  public Equation {
    inputs = List.copyOf(inputs);
  }

  /**
   * An equation whose value follows from what is put in.
   *
   * @param symbol the symbol of the result
   * @param meaning the result in words
   * @param text the right-hand side
   * @param kind what the result is
   * @param source where it comes from
   * @param inputs each symbol put in, with its SI unit after a space: {@code "Q m3/s, D m"}
   * @return the equation
   */
  public static Equation of(
      String symbol, String meaning, String text, Kind<?> kind, String source, String... inputs) {
    return new Equation(How.COMPUTED, symbol, meaning, text, kind, source, read(inputs));
  }

  /**
   * A value that is searched for.
   *
   * @param symbol the symbol of the result
   * @param meaning the result in words
   * @param text what is searched among what, in words
   * @param kind what the result is
   * @param source where the rule comes from
   * @param inputs each symbol that the search depends on, with its SI unit
   * @return the equation
   */
  public static Equation search(
      String symbol, String meaning, String text, Kind<?> kind, String source, String... inputs) {
    return new Equation(How.SEARCHED, symbol, meaning, text, kind, source, read(inputs));
  }

  /**
   * A value that is read from a table, a chart, a curve or the properties of a substance.
   *
   * @param symbol the symbol of the result
   * @param meaning the result in words
   * @param text what is looked up where, in words
   * @param kind what the result is
   * @param source where the table comes from
   * @param inputs each symbol by which it is looked up, with its SI unit
   * @return the equation
   */
  public static Equation lookup(
      String symbol, String meaning, String text, Kind<?> kind, String source, String... inputs) {
    return new Equation(How.LOOKED_UP, symbol, meaning, text, kind, source, read(inputs));
  }

  /**
   * A sum of things of one kind.
   *
   * @param symbol the symbol of the result
   * @param meaning the result in words
   * @param source where it comes from
   * @param term a term with its SI unit, which are numbered: {@code "dp Pa"}
   * @param terms how many there are
   * @return the equation
   */
  public static Equation sum(String symbol, String meaning, String source, String term, int terms) {
    Input first = Input.of(term);
    List<Input> all =
        IntStream.rangeClosed(1, terms)
            .mapToObj(i -> new Input(first.symbol() + i, first.unit()))
            .toList();
    String text = all.stream().map(Input::symbol).collect(Collectors.joining(" + "));
    return new Equation(How.COMPUTED, symbol, meaning, text, Kind.PRESSURE, source, all);
  }

  /**
   * The same equation for one of several things.
   *
   * @param what the thing, in words that follow the meaning: "in Line 1"
   * @return the equation with that in its meaning
   */
  public Equation about(String what) {
    return new Equation(how, symbol, meaning + " " + what, text, kind, source, inputs);
  }

  /**
   * The same equation under another symbol.
   *
   * @param other the symbol
   * @return the equation of that symbol
   */
  public Equation as(String other) {
    return new Equation(how, other, meaning, text, kind, source, inputs);
  }

  /**
   * The same equation of another source.
   *
   * @param publication the publication
   * @return the equation by that
   */
  Equation by(String publication) {
    return new Equation(how, symbol, meaning, text, kind, publication, inputs);
  }

  /**
   * The equation as it is printed.
   *
   * @return the symbol and its right-hand side
   */
  public String printed() {
    return how == How.COMPUTED ? symbol + " = " + text : text;
  }

  static List<Input> read(String... inputs) {
    return Arrays.stream(inputs).flatMap(i -> Arrays.stream(i.split(", "))).map(Input::of).toList();
  }
}
