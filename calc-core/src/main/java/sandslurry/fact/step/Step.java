package sandslurry.fact.step;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/**
 * One step of the working: a number, the equation it comes from and what was put in, so that it can
 * be followed by hand. Values put in are in SI, because the equations are.
 */
public final class Step {
  private final String element;
  private final String state;
  private final Equation equation;
  private final double[] inputs;
  private final double value;

  /**
   * A step.
   *
   * @param element the part of the design that it belongs to
   * @param state the state that the part is in; empty when there is only one
   * @param equation the equation
   * @param inputs what was put in, in SI and in the order of the equation
   * @param value the result in SI
   * @throws IllegalArgumentException if there are more or fewer inputs than the equation has
   */
  Step(String element, String state, Equation equation, double[] inputs, double value) {
    if (inputs.length != equation.inputs().size()) {
      throw new IllegalArgumentException(
          equation.symbol() + " has " + inputs.length + " values for " + equation.inputs());
    }
    this.element = element;
    this.state = state;
    this.equation = equation;
    this.inputs = inputs.clone();
    this.value = value;
  }

  /**
   * The part of the design.
   *
   * @return it in words
   */
  public String element() {
    return element;
  }

  /**
   * The state that the part is in.
   *
   * @return it in words; empty when there is only one
   */
  public String state() {
    return state;
  }

  /**
   * The equation.
   *
   * @return the equation
   */
  public Equation equation() {
    return equation;
  }

  /**
   * The symbol of the result.
   *
   * @return that of the equation
   */
  public String symbol() {
    return equation.symbol();
  }

  /**
   * What was put in.
   *
   * @return the values in SI, in the order of the equation
   */
  public List<Double> inputs() {
    return Arrays.stream(inputs).boxed().toList();
  }

  /**
   * The result.
   *
   * @return the value in SI
   */
  public double value() {
    return value;
  }

  /**
   * The values put in, as text in SI.
   *
   * @return for example {@code Q = 0.02839 m3/s; D = 0.1541 m}
   */
  public String substituted() {
    return IntStream.range(0, inputs.length)
        .mapToObj(
            i -> {
              Equation.Input input = equation.inputs().get(i);
              return input.symbol() + " = " + UnitSystem.siText(input.unit(), inputs[i]);
            })
        .collect(Collectors.joining("; "));
  }

  /**
   * The result in SI, and in the unit of the report where that differs.
   *
   * @param system the units of the report
   * @return for example {@code 1.524 m/s (5.00 ft/s)}
   */
  public String result(UnitSystem system) {
    Kind<?> kind = equation.kind();
    String si = UnitSystem.siText(kind, value);
    return kind.measure().units().get(0).symbol().equals(kind.symbol(system))
        ? si
        : si + " (" + system.show(kind, value) + ")";
  }
}
