package sandslurry.fact.step;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.DoubleStream;
import sandslurry.correlation.Physics;
import sandslurry.units.Measure;

/**
 * Reads the text of an {@link Equation} and evaluates it: an own reading of what is printed, apart
 * from the code that computed it.
 *
 * <p>A space multiplies, {@code ^} raises, brackets of every shape group. {@code 24/Re (1 + Re)} is
 * (24/Re)(1 + Re); what could be read in two ways, {@code a / b c}, is refused.
 */
public final class Expression {
  private static final Pattern TOKEN =
      Pattern.compile(
          "(?<space>\\s*)(?:(?<number>\\d+\\.?\\d*(?:[eE][+-]?\\d+)?)"
              + "|(?<name>\\p{L}[\\p{L}\\p{N}_]*(?:\\*(?![\\p{L}\\p{N}(]))?'?(?:\\[[^\\]\\s]+\\])?)"
              + "|(?<sign><=|>=|[-+*/^()\\[\\]{}<>,;]))");
  private static final Set<String> FUNCTIONS =
      Set.of(
          "sqrt", "exp", "ln", "log10", "cosh", "tanh", "sin", "cos", "tan", "arcsin", "arctan",
          "min", "max", "abs", "second");

  private final String text;
  private final Map<String, Double> values;
  private final List<String> tokens = new ArrayList<>();
  private final List<Boolean> spaced = new ArrayList<>();
  private int at;

  private Expression(String text, Map<String, Double> values) {
    this.text = text;
    this.values = new HashMap<>(values);
    this.values.putIfAbsent("g", Physics.GRAVITY);
    this.values.put("pi", Math.PI);
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
   * The value of an expression.
   *
   * @param text the right-hand side of an equation
   * @param values what its symbols stand for, in SI
   * @return the value
   * @throws IllegalArgumentException if the text is no expression or names an unknown symbol
   */
  public static double value(String text, Map<String, Double> values) {
    Expression expression = new Expression(text, values);
    double value = expression.choice();
    if (expression.at < expression.tokens.size()) {
      throw expression.error("does not end at \"" + expression.tokens.get(expression.at) + "\"");
    }
    return value;
  }

  private double choice() {
    double chosen = sum();
    boolean found = true;
    if (take("for")) {
      found = condition();
      while (take(";")) {
        boolean last = take("else");
        double next = sum();
        boolean holds = last;
        if (!last) {
          require("for");
          holds = condition();
        }
        if (!found && holds) {
          chosen = next;
          found = true;
        }
      }
    }
    if (!found) {
      throw error("no case holds");
    }
    return chosen;
  }

  private boolean condition() {
    boolean holds = comparison();
    while (take("and")) {
      holds &= comparison();
    }
    return holds;
  }

  private boolean comparison() {
    double left = sum();
    String sign = next();
    double right = sum();
    return switch (sign) {
      case "<" -> left < right;
      case "<=" -> left <= right;
      case ">" -> left > right;
      case ">=" -> left >= right;
      default -> throw error("\"" + sign + "\" compares nothing");
    };
  }

  private double sum() {
    double value = take("-") ? -product() : product();
    while (peek("+") || peek("-")) {
      boolean plus = next().equals("+");
      double term = product();
      value += plus ? term : -term;
    }
    return value;
  }

  private double product() {
    double value = power();
    boolean divided = false;
    while (at < tokens.size()) {
      if (peek("*")) {
        at++;
        value *= power();
      } else if (peek("/")) {
        boolean wide = spaced.get(at);
        at++;
        value /= power();
        divided = wide;
      } else if (startsFactor()) {
        if (divided) {
          throw error("a quotient times \"" + tokens.get(at) + "\" can be read in two ways");
        }
        value *= power();
      } else {
        break;
      }
    }
    return value;
  }

  private boolean startsFactor() {
    String token = tokens.get(at);
    char first = token.charAt(0);
    return !Set.of("for", "else", "and").contains(token)
        && (Character.isLetterOrDigit(first) || "([{".indexOf(first) >= 0);
  }

  private double power() {
    double base = factor();
    if (take("^")) {
      double sign = take("-") ? -1 : 1;
      return Math.pow(base, sign * factor());
    }
    return base;
  }

  private double factor() {
    String token = next();
    int group = "([{".indexOf(token.charAt(0));
    if (group >= 0) {
      double value = choice();
      require(String.valueOf(")]}".charAt(group)));
      return value;
    }
    if (Character.isDigit(token.charAt(0))) {
      return Double.parseDouble(token);
    }
    if (FUNCTIONS.contains(token)) {
      return function(token);
    }
    Double value = values.get(token);
    if (value == null && token.endsWith("]")) {
      int open = token.indexOf('[');
      value = inUnit(token.substring(0, open), token.substring(open + 1, token.length() - 1));
    }
    if (value == null) {
      throw error("\"" + token + "\" has no value");
    }
    return value;
  }

  private double function(String name) {
    if (!peek("(")) {
      double single = power();
      return apply(name, new double[] {single});
    }
    require("(");
    List<Double> arguments = new ArrayList<>();
    do {
      arguments.add(choice());
    } while (take(","));
    require(")");
    return apply(name, arguments.stream().mapToDouble(Double::doubleValue).toArray());
  }

  private double apply(String name, double[] x) {
    return switch (name) {
      case "sqrt" -> Math.sqrt(x[0]);
      case "exp" -> Math.exp(x[0]);
      case "ln" -> Math.log(x[0]);
      case "log10" -> Math.log10(x[0]);
      case "cosh" -> Math.cosh(x[0]);
      case "tanh" -> Math.tanh(x[0]);
      case "sin" -> Math.sin(x[0]);
      case "cos" -> Math.cos(x[0]);
      case "tan" -> Math.tan(x[0]);
      case "arcsin" -> Math.asin(x[0]);
      case "arctan" -> Math.atan(x[0]);
      case "abs" -> Math.abs(x[0]);
      case "min" -> DoubleStream.of(x).min().orElseThrow();
      case "max" -> DoubleStream.of(x).max().orElseThrow();
      case "second" -> DoubleStream.of(x).sorted().skip(x.length - 2L).findFirst().orElseThrow();
      default -> throw error("\"" + name + "\" is no function");
    };
  }

  /** The number of a unit that a value in SI is. */
  private Double inUnit(String name, String unit) {
    Double si = values.get(name);
    for (Measure<?> measure : Measure.all()) {
      if (si != null && measure.units().stream().anyMatch(u -> u.symbol().equals(unit))) {
        return si / si(measure, unit);
      }
    }
    return null;
  }

  private static <Q extends javax.measure.Quantity<Q>> double si(Measure<Q> measure, String unit) {
    return measure.si(measure.parse("1 " + unit));
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
