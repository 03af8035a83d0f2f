package sandslurry.fact.step;

import java.util.List;
import java.util.stream.Collectors;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/**
 * One step of the working: a number, the equation it comes from and what was put in, so that it can
 * be followed by hand. Values put in are in SI, because the equations are.
 *
 * @param element the part of the design that the step belongs to
 * @param symbol the symbol of the result
 * @param meaning the result in words
 * @param equation the equation as plain text
 * @param inputs what was put in
 * @param kind what the result is
 * @param value the result in SI
 * @param source where the equation comes from
 */
public record Step(
    String element,
    String symbol,
    String meaning,
    String equation,
    List<Input> inputs,
    Kind<?> kind,
    double value,
    String source) {
  /** Copies the list. */
  public Step {
    inputs = List.copyOf(inputs);
  }

  /**
   * A value put into an equation.
   *
   * @param symbol its symbol
   * @param kind what it is
   * @param value its value in SI
   */
  public record Input(String symbol, Kind<?> kind, double value) {
    @Override
    public String toString() {
      return symbol + " = " + inSi(kind, value);
    }
  }

  /**
   * The values put in, as text in SI.
   *
   * @return for example {@code Q = 0.02839 m3/s; D = 0.1541 m}
   */
  public String substituted() {
    return inputs.stream().map(Input::toString).collect(Collectors.joining("; "));
  }

  /**
   * The result in SI, and in the unit of the report where that differs.
   *
   * @param system the units of the report
   * @return for example {@code 1.524 m/s (5.00 ft/s)}
   */
  public String result(UnitSystem system) {
    String si = inSi(kind, value);
    String shown = system.show(kind, value);
    return kind.measure().units().get(0).symbol().equals(kind.symbol(system))
        ? si
        : si + " (" + shown + ")";
  }

  private static String inSi(Kind<?> kind, double value) {
    return UnitSystem.siText(kind, value);
  }
}
