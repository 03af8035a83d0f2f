package sandslurry.correlation;

import java.util.ArrayList;
import java.util.List;

/**
 * A value from a correlation, with the inputs that lay outside its published range.
 *
 * <p>A value outside the range is still given, so that it can be shown and compared, but it says
 * so; nothing is clamped.
 *
 * @param value the value, in the SI unit that the giver names
 * @param excesses what lay outside the published range; empty when all inputs were inside
 */
public record Estimate(double value, List<Bound.Excess> excesses) {
  /**
   * Checks that the value is a finite number and copies the list.
   *
   * @throws ArithmeticException if the value is NaN or infinite
   */
  public Estimate {
    if (!Double.isFinite(value)) {
      throw new ArithmeticException("a correlation gave " + value);
    }
    excesses = List.copyOf(excesses);
  }

  /**
   * Says whether the correlation was used as published.
   *
   * @return true when every input lay inside the published range
   */
  public boolean inRange() {
    return excesses.isEmpty();
  }

  /**
   * Starts to collect the checks of one evaluation.
   *
   * @return an empty collector
   */
  public static Checks checks() {
    return new Checks();
  }

  /** Collects range checks, then the value. */
  public static final class Checks {
    // Most inputs lie inside, and a curve asks a correlation thousands of times.
    private List<Bound.Excess> excesses = List.of();

    private Checks() {}

    /**
     * Checks one input.
     *
     * @param bound its published limits
     * @param value the value used, in SI
     * @return this collector
     */
    public Checks check(Bound bound, double value) {
      if (!bound.contains(value)) {
        if (excesses.isEmpty()) {
          excesses = new ArrayList<>();
        }
        excesses.add(new Bound.Excess(bound, value));
      }
      return this;
    }

    /**
     * Ends the collection.
     *
     * @param value the value of the correlation
     * @return the value with what lay outside
     */
    public Estimate value(double value) {
      return new Estimate(value, excesses);
    }
  }
}
