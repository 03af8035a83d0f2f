package sandslurry.fact.step;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads the text of an {@link Equation}, for whoever typesets it or works it out. A space
 * multiplies, {@code ^} raises, brackets of every shape group. {@code 24/Re (1 + Re)} is (24/Re)(1
 * + Re); what could be read in two ways, {@code a / b c}, is refused.
 *
 * @param <T> what is made of it
 */
public final class Expression<T> {
  /**
   * Makes something of an expression, from its smallest parts up.
   *
   * @param <T> what is made
   */
  public interface Form<T> {
    /**
     * A number.
     *
     * @param text as it is printed
     * @return what is made of it
     */
    T number(String text);

    /**
     * A symbol.
     *
     * @param name its name, such as {@code rho_s}
     * @param unit the unit in which its number counts; empty for SI
     * @return what is made of it
     */
    T symbol(String name, String unit);

    /**
     * Something in brackets.
     *
     * @param open the opening bracket
     * @param inside what is in them
     * @return what is made of it
     */
    T group(char open, T inside);

    /**
     * A sum or a difference.
     *
     * @param left its first part
     * @param plus whether the second part is added
     * @param right its second part
     * @return what is made of it
     */
    T sum(T left, boolean plus, T right);

    /**
     * The negative of something.
     *
     * @param of of what
     * @return what is made of it
     */
    T minus(T of);

    /**
     * A product.
     *
     * @param left its first factor
     * @param right its second factor
     * @return what is made of it
     */
    T product(T left, T right);

    /**
     * A quotient.
     *
     * @param top what is divided
     * @param bottom by what
     * @return what is made of it
     */
    T quotient(T top, T bottom);

    /**
     * A power.
     *
     * @param base what is raised
     * @param exponent to what
     * @return what is made of it
     */
    T power(T base, T exponent);

    /**
     * A function.
     *
     * @param name its name, such as {@code sqrt}
     * @param of its arguments
     * @return what is made of it
     */
    T function(String name, List<T> of);

    /**
     * One of several values, by the first condition that holds.
     *
     * @param cases what it may be, in order
     * @return what is made of it
     */
    T choice(List<Case<T>> cases);
  }

  /**
   * A case of a choice.
   *
   * @param <T> what is made of expressions
   * @param value its value
   * @param when what must hold, all of it; nothing for the last case
   */
  public record Case<T>(T value, List<Comparison<T>> when) {
    /** Copies the list. */
    public Case {
      when = List.copyOf(when);
    }
  }

  /**
   * A comparison.
   *
   * @param <T> what is made of expressions
   * @param left its left side
   * @param sign one of {@code < <= > >=}
   * @param right its right side
   */
  public record Comparison<T>(T left, String sign, T right) {}

  private static final Pattern TOKEN =
      Pattern.compile(
          "(?<space>\\s*)(?:(?<number>\\d+\\.?\\d*(?:[eE][+-]?\\d+)?)"
              + "|(?<name>\\p{L}[\\p{L}\\p{N}_]*(?:\\*(?![\\p{L}\\p{N}(]))?'?(?:\\[[^\\]\\s]+\\])?)"
              + "|(?<sign><=|>=|[-+*/^()\\[\\]{}<>,;]))");
  private static final Set<String> FUNCTIONS =
      Set.of(
          "sqrt", "exp", "ln", "log10", "cosh", "tanh", "sin", "cos", "tan", "arcsin", "arctan",
          "min", "max", "abs", "second");
  private static final Set<String> SIGNS = Set.of("<", "<=", ">", ">=");

  private final String text;
  private final Form<T> form;
  private final List<String> tokens = new ArrayList<>();
  private final List<Boolean> spaced = new ArrayList<>();
  private int at;

  private Expression(String text, Form<T> form) {
    this.text = text;
    this.form = form;
    Matcher matcher = TOKEN.matcher(text);
    int end = 0;
    while (end < text.length()) {
      if (!matcher.find(end) || matcher.start() != end) {
        throw error("cannot read on at \"" + text.substring(end) + "\"");
      }
      tokens.add(matcher.group().strip());
      spaced.add(!matcher.group("space").isEmpty());
      end = matcher.end();
    }
  }

  /**
   * Reads an expression.
   *
   * @param <T> what is made of it
   * @param text the right-hand side of an equation
   * @param form makes it
   * @return what was made
   * @throws IllegalArgumentException if the text is no expression, or can be read in two ways
   */
  public static <T> T read(String text, Form<T> form) {
    Expression<T> reader = new Expression<>(text, form);
    T all = reader.choice();
    if (reader.at < reader.tokens.size()) {
      throw reader.error("does not end at \"" + reader.tokens.get(reader.at) + "\"");
    }
    return all;
  }

  private T choice() {
    T first = sum();
    if (!take("for")) {
      return first;
    }
    List<Case<T>> cases = new ArrayList<>();
    cases.add(new Case<>(first, condition()));
    while (take(";")) {
      boolean last = take("else");
      T next = sum();
      if (!last) {
        require("for");
      }
      cases.add(new Case<>(next, last ? List.of() : condition()));
    }
    return form.choice(cases);
  }

  private List<Comparison<T>> condition() {
    List<Comparison<T>> all = new ArrayList<>();
    do {
      T left = sum();
      String sign = next();
      if (!SIGNS.contains(sign)) {
        throw error("\"" + sign + "\" compares nothing");
      }
      all.add(new Comparison<>(left, sign, sum()));
    } while (take("and"));
    return all;
  }

  private T sum() {
    T all = take("-") ? form.minus(product()) : product();
    while (peek("+") || peek("-")) {
      boolean plus = next().equals("+");
      all = form.sum(all, plus, product());
    }
    return all;
  }

  private T product() {
    T all = power();
    boolean divided = false;
    while (at < tokens.size()) {
      if (take("*")) {
        all = form.product(all, power());
      } else if (peek("/")) {
        divided = spaced.get(at);
        at++;
        all = form.quotient(all, power());
      } else if (startsFactor()) {
        if (divided) {
          throw error("a quotient times \"" + tokens.get(at) + "\" can be read in two ways");
        }
        all = form.product(all, power());
      } else {
        break;
      }
    }
    return all;
  }

  private boolean startsFactor() {
    String token = tokens.get(at);
    char first = token.charAt(0);
    return !Set.of("for", "else", "and").contains(token)
        && (Character.isLetterOrDigit(first) || "([{".indexOf(first) >= 0);
  }

  private T power() {
    T base = factor();
    if (take("^")) {
      boolean negative = take("-");
      T exponent = factor();
      return form.power(base, negative ? form.minus(exponent) : exponent);
    }
    return base;
  }

  private T factor() {
    String token = next();
    int group = "([{".indexOf(token.charAt(0));
    if (group >= 0) {
      T inside = choice();
      require(String.valueOf(")]}".charAt(group)));
      return form.group(token.charAt(0), inside);
    }
    if (Character.isDigit(token.charAt(0))) {
      return form.number(token);
    }
    if (!Character.isLetter(token.charAt(0))) {
      throw error("\"" + token + "\" has no value");
    }
    if (FUNCTIONS.contains(token)) {
      return form.function(token, arguments());
    }
    int open = token.indexOf('[');
    return open < 0
        ? form.symbol(token, "")
        : form.symbol(token.substring(0, open), token.substring(open + 1, token.length() - 1));
  }

  private List<T> arguments() {
    if (!peek("(")) {
      return List.of(power());
    }
    require("(");
    List<T> arguments = new ArrayList<>();
    do {
      arguments.add(choice());
    } while (take(","));
    require(")");
    return arguments;
  }

  private boolean peek(String token) {
    return at < tokens.size() && tokens.get(at).equals(token);
  }

  private boolean take(String token) {
    boolean found = peek(token);
    at += found ? 1 : 0;
    return found;
  }

  private void require(String token) {
    if (!take(token)) {
      throw error("needs \"" + token + "\" after " + tokens.subList(0, at));
    }
  }

  private String next() {
    if (at >= tokens.size()) {
      throw error("ends too soon");
    }
    return tokens.get(at++);
  }

  private IllegalArgumentException error(String what) {
    return new IllegalArgumentException("\"" + text + "\": " + what);
  }
}
