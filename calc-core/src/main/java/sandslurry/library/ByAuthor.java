package sandslurry.library;

import java.util.List;
import javax.measure.Quantity;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Correlation;
import sandslurry.correlation.Estimate;
import sandslurry.units.Measure;
import sandslurry.units.UnitSystem;

/**
 * What one published correlation gives. Immutable.
 *
 * @param <Q> what it gives
 */
public final class ByAuthor<Q extends Quantity<Q>> {
  private final Correlation model;
  private final Estimate estimate;
  private final Quantity<Q> value;

  private ByAuthor(Correlation model, Estimate estimate, Quantity<Q> value) {
    this.model = model;
    this.estimate = estimate;
    this.value = value;
  }

  static <Q extends Quantity<Q>> ByAuthor<Q> of(
      Correlation model, Estimate estimate, Measure<Q> measure) {
    return new ByAuthor<>(model, estimate, measure.of(estimate.value()));
  }

  /**
   * The correlation.
   *
   * @return the name that it goes by
   */
  public String author() {
    return model.name();
  }

  /**
   * What it gives.
   *
   * @return its value
   */
  public Quantity<Q> value() {
    return value;
  }

  /**
   * What lies outside its published range. Only who asks for the words waits for them: they take
   * longer than the value.
   *
   * @return each input in words, with its value and limits; empty inside
   */
  public List<String> outside() {
    return estimate.excesses().stream().map(e -> e.describe(UnitSystem.METRIC)).toList();
  }

  /**
   * Where it was published.
   *
   * @return the publication
   */
  public Citation source() {
    return model.citation();
  }

  /**
   * Whether all inputs lie inside the published range.
   *
   * @return true inside
   */
  public boolean inRange() {
    return estimate.inRange();
  }

  @Override
  public String toString() {
    return author() + ": " + value;
  }
}
