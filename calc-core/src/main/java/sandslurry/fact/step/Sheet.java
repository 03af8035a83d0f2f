package sandslurry.fact.step;

/**
 * The equations of a subject, by their keys, with the trace that keeps the steps: for working that
 * is written from a result, where a step may cost a look-up.
 *
 * @param equations the equations
 * @param trace what keeps the steps
 * @param source the publication of the next steps; empty for those that the equations name
 */
public record Sheet(Equations equations, Trace trace, String source) {
  /**
   * The sheet of a class.
   *
   * @param owner the class, which has its equations beside it
   * @param trace what keeps the steps
   * @return the sheet
   */
  public static Sheet of(Class<?> owner, Trace trace) {
    return new Sheet(Equations.of(owner), trace, "");
  }

  /**
   * Begins a part of the design. Of several states of one part the governing one comes first.
   *
   * @param part the part, in words
   * @param state the state that it is in, in words; empty when there is only one
   */
  public void begin(String part, String state) {
    trace.begin(part, state);
  }

  /**
   * The same sheet for equations of a publication, or of a description, that the code names.
   *
   * @param publication the publication
   * @return the sheet
   */
  public Sheet by(Object publication) {
    return new Sheet(equations, trace, publication.toString());
  }

  /**
   * Keeps a step.
   *
   * @param key the key of its equation
   * @param value its value, in SI
   * @param inputs what is put in, in SI
   * @return the value
   */
  public double step(String key, double value, double... inputs) {
    Equation equation = source.isEmpty() ? equations.of(key) : equations.of(key, source);
    return step(equation, value, inputs);
  }

  /**
   * Keeps a step whose equation depends on the design.
   *
   * @param equation the equation
   * @param value its value, in SI
   * @param inputs what is put in, in SI
   * @return the value
   */
  public double step(Equation equation, double value, double... inputs) {
    return trace.sum(equation, value, inputs);
  }
}
