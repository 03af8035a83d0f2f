package sandslurry.fact.step;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import sandslurry.correlation.Physics;
import sandslurry.fact.step.Expression.Case;
import sandslurry.fact.step.Expression.Comparison;
import sandslurry.units.Measure;

/** Works an equation out from what is printed, apart from the code that computed it. */
public final class ExpressionValue implements Expression.Form<Double> {
  private final String text;
  private final Map<String, Double> values;

  /** The last exponential, the very object: 1 less it keeps its digits however near to 1 it is. */
  private Double exponential;

  private double exponent;

  private ExpressionValue(String text, Map<String, Double> values) {
    this.text = text;
    this.values = new HashMap<>(values);
    this.values.putIfAbsent("g", Physics.GRAVITY);
    this.values.put("pi", Math.PI);
  }

  /**
   * The value of an expression.
   *
   * @param text the right-hand side of an equation
   * @param values what its symbols stand for, in SI
   * @return the value
   * @throws IllegalArgumentException if the text is no expression or names an unknown symbol
   */
  public static double of(String text, Map<String, Double> values) {
    return Expression.read(text, new ExpressionValue(text, values));
  }

  @Override
  public Double number(String number) {
    return Double.parseDouble(number);
  }

  @Override
  public Double group(char open, Double inside) {
    return inside;
  }

  @Override
  public Double sum(Double left, boolean plus, Double right) {
    if (!plus && left == 1 && right == exponential) {
      return -Math.expm1(exponent);
    }
    return plus ? left + right : left - right;
  }

  @Override
  public Double minus(Double of) {
    return -of;
  }

  @Override
  public Double product(Double left, Double right) {
    return left * right;
  }

  @Override
  public Double quotient(Double top, Double bottom) {
    return top / bottom;
  }

  @Override
  public Double power(Double base, Double exponent) {
    return Math.pow(base, exponent);
  }

  @Override
  public Double function(String name, List<Double> of) {
    if (name.equals("exp")) {
      exponent = of.get(0);
      exponential = Math.exp(exponent);
      return exponential;
    }
    return apply(name, of.stream().mapToDouble(Double::doubleValue).toArray());
  }

  @Override
  public Double choice(List<Case<Double>> cases) {
    return cases.stream()
        .filter(one -> one.when().stream().allMatch(ExpressionValue::holds))
        .findFirst()
        .map(Case::value)
        .orElseThrow(() -> error("no case holds"));
  }

  private static boolean holds(Comparison<Double> comparison) {
    double left = comparison.left();
    double right = comparison.right();
    return switch (comparison.sign()) {
      case "<" -> left < right;
      case "<=" -> left <= right;
      case ">" -> left > right;
      default -> left >= right;
    };
  }

  private double apply(String name, double[] x) {
    return switch (name) {
      case "sqrt" -> Math.sqrt(x[0]);
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

  @Override
  public Double symbol(String name, String unit) {
    String whole = unit.isEmpty() ? name : name + "[" + unit + "]";
    Double value = values.get(whole);
    if (value == null && !unit.isEmpty()) {
      value = inUnit(name, unit);
    }
    if (value == null) {
      throw error("\"" + whole + "\" has no value");
    }
    return value;
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

  private IllegalArgumentException error(String what) {
    return new IllegalArgumentException("\"" + text + "\": " + what);
  }
}
