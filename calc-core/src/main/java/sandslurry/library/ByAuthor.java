package sandslurry.library;

import java.util.List;
import javax.measure.Quantity;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Correlation;
import sandslurry.correlation.Estimate;
import sandslurry.units.Measure;
import sandslurry.units.UnitSystem;

/**
 * What one published correlation gives.
 *
 * @param author the name that it goes by
 * @param value its value
 * @param outside what lies outside its published range, in words; empty inside
 * @param source the publication
 * @param <Q> what it gives
 */
public record ByAuthor<Q extends Quantity<Q>>(
    String author, Quantity<Q> value, List<String> outside, Citation source) {
  /** Copies the list. */
  public ByAuthor {
    outside = List.copyOf(outside);
  }

  /**
   * Whether all inputs lie inside the published range.
   *
   * @return true inside
   */
  public boolean inRange() {
    return outside.isEmpty();
  }

  static <Q extends Quantity<Q>> ByAuthor<Q> of(
      Correlation model, Estimate estimate, Measure<Q> measure) {
    return new ByAuthor<>(
        model.name(),
        measure.of(estimate.value()),
        estimate.excesses().stream().map(e -> words(e)).toList(),
        model.citation());
  }

  private static String words(Bound.Excess excess) {
    return excess.describe(UnitSystem.METRIC);
  }
}
