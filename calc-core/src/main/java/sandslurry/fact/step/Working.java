package sandslurry.fact.step;

import java.util.ArrayList;
import java.util.List;
import sandslurry.correlation.Correlation;
import sandslurry.units.Kind;

/** Collects the steps of the working while a part of a design is evaluated. */
public final class Working {
  /** Source of a step that follows from the definition of its terms. */
  public static final String DEFINITION = "definition";

  /** Source of a value that is in common use and that nobody published. */
  public static final String COMMON = "common practice, no source";

  private final String element;
  private final List<Step> steps = new ArrayList<>();

  public Working(String element) {
    this.element = element;
  }

  public List<Step> steps() {
    return steps;
  }

  public static Step.Input in(String symbol, Kind<?> kind, double value) {
    return new Step.Input(symbol, kind, value);
  }

  /** Notes a step and gives its value back. */
  public double step(
      String symbol,
      String meaning,
      String equation,
      Kind<?> kind,
      double value,
      String source,
      Step.Input... inputs) {
    steps.add(new Step(element, symbol, meaning, equation, List.of(inputs), kind, value, source));
    return value;
  }

  /** Notes a step taken with a published correlation. */
  public double step(
      String symbol,
      String meaning,
      Correlation model,
      Kind<?> kind,
      double value,
      Step.Input... inputs) {
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
