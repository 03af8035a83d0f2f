package sandslurry.plant.account;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import sandslurry.numeric.Roots;

/** How much of a remedy, fresh water or purge, keeps a result of a plant at its target. */
public final class Remedy {
  private Remedy() {}

  /**
   * The least amount that reaches a target.
   *
   * @param what what is looked for, to name it when the search fails
   * @param result a result that rises with the remedy, such as the sand caught against extra water;
   *     each value may be a whole balance
   * @param target the result wanted
   * @param most the most of the remedy that can be had
   * @return the least amount; 0 when none is needed; empty when even the most is not enough
   */
  public static OptionalDouble least(
      String what, DoubleUnaryOperator result, double target, double most) {
    if (!(most > 0 && Double.isFinite(most))) {
      throw new IllegalArgumentException(what + ": the most must be > 0 but was " + most);
    }
    if (result.applyAsDouble(0) >= target) {
      return OptionalDouble.of(0);
    }
    if (!(result.applyAsDouble(most) >= target)) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(Roots.between(what, x -> result.applyAsDouble(x) - target, 0, most));
  }
}
