package sandslurry.fact.step;

import java.util.ArrayList;
import java.util.List;

/**
 * Listens to a computation and keeps its steps. {@link #NONE} keeps nothing and costs nothing: the
 * same code computes with and without working.
 *
 * <p>The part of the design and its state belong to the trace, so that what computes need not know
 * for whom it does. Not for several threads at once.
 */
public final class Trace {
  /** Keeps nothing. */
  public static final Trace NONE = new Trace(null);

  private final List<Step> steps;
  private String element = "";
  private String state = "";

  private Trace(List<Step> steps) {
    this.steps = steps;
  }

  /**
   * A trace that keeps every step.
   *
   * @return the trace, empty
   */
  public static Trace recording() {
    return new Trace(new ArrayList<>());
  }

  /**
   * Whether steps are kept.
   *
   * @return false for {@link #NONE}
   */
  public boolean records() {
    return steps != null;
  }

  /**
   * Begins a part of the design. Of several states of one part the governing one comes first.
   *
   * @param part the part, in words
   * @param stateOfIt the state that it is in, in words; empty when there is only one
   */
  public void begin(String part, String stateOfIt) {
    if (records()) {
      element = part;
      state = stateOfIt;
    }
  }

  /**
   * The steps so far.
   *
   * @return the steps, in order; none for {@link #NONE}
   */
  public List<Step> steps() {
    return records() ? List.copyOf(steps) : List.of();
  }

  /**
   * Keeps a step.
   *
   * @param equation the equation
   * @param value its value, in SI
   * @return the value
   */
  public double step(Equation equation, double value) {
    if (records()) {
      keep(equation, value);
    }
    return value;
  }

  /**
   * Keeps a step.
   *
   * @param equation the equation
   * @param value its value, in SI
   * @param a its first input, in SI
   * @return the value
   */
  public double step(Equation equation, double value, double a) {
    if (records()) {
      keep(equation, value, a);
    }
    return value;
  }

  /**
   * Keeps a step.
   *
   * @param equation the equation
   * @param value its value, in SI
   * @param a its first input, in SI
   * @param b its second input, in SI
   * @return the value
   */
  public double step(Equation equation, double value, double a, double b) {
    if (records()) {
      keep(equation, value, a, b);
    }
    return value;
  }

  /**
   * Keeps a step.
   *
   * @param equation the equation
   * @param value its value, in SI
   * @param a its first input, in SI
   * @param b its second input, in SI
   * @param c its third input, in SI
   * @return the value
   */
  public double step(Equation equation, double value, double a, double b, double c) {
    if (records()) {
      keep(equation, value, a, b, c);
    }
    return value;
  }

  /**
   * Keeps a step.
   *
   * @param equation the equation
   * @param value its value, in SI
   * @param a its first input, in SI
   * @param b its second input, in SI
   * @param c its third input, in SI
   * @param d its fourth input, in SI
   * @param more its other inputs, in SI
   * @return the value
   */
  public double step(
      Equation equation, double value, double a, double b, double c, double d, double... more) {
    if (records()) {
      double[] inputs = new double[4 + more.length];
      inputs[0] = a;
      inputs[1] = b;
      inputs[2] = c;
      inputs[3] = d;
      System.arraycopy(more, 0, inputs, 4, more.length);
      keep(equation, value, inputs);
    }
    return value;
  }

  /**
   * Keeps a step with as many inputs as there are.
   *
   * @param equation the equation
   * @param value its value, in SI
   * @param inputs all inputs, in SI
   * @return the value
   */
  public double sum(Equation equation, double value, double[] inputs) {
    if (records()) {
      keep(equation, value, inputs);
    }
    return value;
  }

  private void keep(Equation equation, double value, double... inputs) {
    steps.add(new Step(element, state, equation, inputs, value));
  }
}
