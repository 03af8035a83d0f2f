package sandslurry.fact.step;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import sandslurry.fact.step.Equation.How;
import sandslurry.units.Measure;
import sandslurry.units.UnitSystem;

/** Follows the steps of a working by hand: from the printed inputs to the printed value. */
public final class Followed {
  /** What the equation makes of the inputs before they were rounded for print, as a share. */
  private static final double EXACT = 1e-9;

  private static final int DIGITS = 5;

  private Followed() {}

  /** Every step gives what it prints. */
  public static void all(List<Step> steps) {
    assertThat(problems(steps)).isEmpty();
  }

  /** What is wrong with the steps, a line each. */
  public static List<String> problems(List<Step> steps) {
    return steps.stream()
        .flatMap(
            step ->
                problem(step).stream()
                    .map(
                        what ->
                            step.element()
                                + ", "
                                + step.state()
                                + ": "
                                + step.equation().meaning()
                                + ": "
                                + step.equation().printed()
                                + " with "
                                + step.substituted()
                                + " gives "
                                + step.result(UnitSystem.METRIC)
                                + " -- "
                                + what))
        .collect(Collectors.toList());
  }

  private static Optional<String> problem(Step step) {
    Equation equation = step.equation();
    if (!Double.isFinite(step.value())) {
      return Optional.of("no number");
    }
    for (Equation.Input input : equation.inputs()) {
      if (!input.unit().isEmpty() && !isSi(input.unit())) {
        return Optional.of("\"" + input.unit() + "\" is no SI unit");
      }
    }
    if (equation.meaning().isBlank() || equation.source().isBlank() || equation.text().isBlank()) {
      return Optional.of("says nothing");
    }
    if (equation.how() != How.COMPUTED) {
      return equation.text().contains("=") ? Optional.of("an equation is none") : Optional.empty();
    }
    try {
      return compare(step);
    } catch (IllegalArgumentException e) {
      return Optional.of(e.getMessage());
    }
  }

  private static Optional<String> compare(Step step) {
    Equation equation = step.equation();
    Map<String, Double> exact = new HashMap<>();
    Map<String, Double> printed = new HashMap<>();
    List<Double> half = new ArrayList<>();
    for (int i = 0; i < equation.inputs().size(); i++) {
      Equation.Input input = equation.inputs().get(i);
      double value = step.inputs().get(i);
      exact.put(input.symbol(), value);
      String text = UnitSystem.siText("", value);
      printed.put(input.symbol(), Double.parseDouble(text));
      half.add(halfDigit(text));
    }
    if (exact.size() < equation.inputs().size()) {
      return Optional.of("two inputs of one symbol");
    }
    double scale =
        Math.max(
            Math.abs(step.value()),
            1e-3 * exact.values().stream().mapToDouble(Math::abs).max().orElse(0));
    double followed = ExpressionValue.of(equation.text(), exact);
    if (!(Math.abs(followed - step.value()) <= EXACT * scale)) {
      return Optional.of("but the equation gives " + followed + " for " + step.value());
    }
    String text = UnitSystem.siText("", step.value());
    double byHand = ExpressionValue.of(equation.text(), printed);
    // One less nearly one keeps no more than the digits of a double.
    double room = halfDigit(text) + Math.ulp(1.0);
    for (int i = 0; i < half.size(); i++) {
      String symbol = equation.inputs().get(i).symbol();
      double apart = 0;
      for (double sign : new double[] {-1, 1}) {
        Map<String, Double> moved = new HashMap<>(printed);
        moved.merge(symbol, sign * half.get(i), Double::sum);
        double there = Math.abs(ExpressionValue.of(equation.text(), moved) - byHand);
        apart = Double.isFinite(there) ? Math.max(apart, there) : apart;
      }
      room += apart;
    }
    // The printed digits are half a digit each at most; the square of that is not counted above.
    if (!(Math.abs(byHand - Double.parseDouble(text)) <= 1.01 * room)) {
      return Optional.of("but by hand it is " + byHand);
    }
    for (Equation.Input input : equation.inputs()) {
      if (!equation.text().contains(input.symbol())) {
        return Optional.of("\"" + input.symbol() + "\" is not in the equation");
      }
    }
    return Optional.empty();
  }

  private static double halfDigit(String number) {
    double value = Math.abs(Double.parseDouble(number));
    return value == 0 ? 1e-15 : 0.5 * Math.pow(10, Math.floor(Math.log10(value)) - DIGITS + 1);
  }

  private static boolean isSi(String unit) {
    return List.of("m2", "kg/m4", "Pa.s^n").contains(unit)
        || Measure.all().stream().anyMatch(m -> m.units().get(0).symbol().equals(unit));
  }
}
