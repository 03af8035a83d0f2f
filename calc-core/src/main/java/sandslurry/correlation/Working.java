package sandslurry.correlation;

import java.util.Arrays;
import java.util.List;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Step;
import sandslurry.fact.step.Trace;
import sandslurry.units.Kind;

/** Collects the steps of the working while a part of a design is evaluated. */
public final class Working {
  /** Source of a step that follows from the definition of its terms. */
  public static final String DEFINITION = "definition";

  /** Source of a value that is in common use and that nobody published. */
  public static final String COMMON = "common practice, no source";

  /** In. */
  public record In(String symbol, Kind<?> kind, double value) {}

  private final Trace trace = Trace.recording();

  public Working(String element) {
    trace.begin(element, "");
  }

  public List<Step> steps() {
    return trace.steps();
  }

  public static In in(String symbol, Kind<?> kind, double value) {
    return new In(symbol, kind, value);
  }

  /** Notes a step and gives its value back. */
  public double step(
      String symbol,
      String meaning,
      String equation,
      Kind<?> kind,
      double value,
      String source,
      In... inputs) {
    Equation e =
        new Equation(
            Equation.How.COMPUTED,
            symbol,
            meaning,
            equation.startsWith(symbol + " = ")
                ? equation.substring(symbol.length() + 3)
                : equation,
            kind,
            source,
            Arrays.stream(inputs)
                .map(
                    i -> new Equation.Input(i.symbol(), i.kind().measure().units().get(0).symbol()))
                .toList());
    double[] v = Arrays.stream(inputs).mapToDouble(In::value).toArray();
    return switch (v.length) {
      case 0 -> trace.step(e, value);
      case 1 -> trace.step(e, value, v[0]);
      case 2 -> trace.step(e, value, v[0], v[1]);
      case 3 -> trace.step(e, value, v[0], v[1], v[2]);
      default ->
          trace.step(
              e, value, v[0], v[1], v[2], v[3], Arrays.copyOfRange(v, 4, Math.max(4, v.length)));
    };
  }

  /** Notes a step taken with a published correlation. */
  public double step(
      String symbol, String meaning, Correlation model, Kind<?> kind, double value, In... inputs) {
    return step(
        symbol,
        meaning + " by " + model.name(),
        model.equation(),
        kind,
        value,
        model.citation().toString(),
        inputs);
  }
}
