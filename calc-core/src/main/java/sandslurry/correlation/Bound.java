package sandslurry.correlation;

import java.util.Optional;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/**
 * The limits of one input of a correlation.
 *
 * @param what the input, in words: "grain size d50"
 * @param kind how a value of this input is shown
 * @param low the least value inside the range, in SI
 * @param high the greatest value inside the range, in SI; may be infinite
 * @param published whether the source prints them; if not they are the span of its data, or ours
 */
public record Bound(String what, Kind<?> kind, double low, double high, boolean published) {
  /**
   * Published limits.
   *
   * @param what the input, in words
   * @param kind how a value of this input is shown
   * @param low the least value, in SI
   * @param high the greatest value, in SI; may be infinite
   */
  public Bound(String what, Kind<?> kind, double low, double high) {
    this(what, kind, low, high, true);
  }

  /**
   * Limits within which we use a correlation, of which its source prints none.
   *
   * @param what the input, in words
   * @param kind how a value of this input is shown
   * @param low the least value, in SI
   * @param high the greatest value, in SI; may be infinite
   * @return the limits
   */
  public static Bound used(String what, Kind<?> kind, double low, double high) {
    return new Bound(what, kind, low, high, false);
  }

  /**
   * Says whether a value lies within the limits.
   *
   * @param value the value used, in SI
   * @return true inside or at a limit; NaN counts as outside
   */
  boolean contains(double value) {
    return value >= low && value <= high;
  }

  /**
   * Compares a value with the limits.
   *
   * @param value the value used, in SI
   * @return the transgression, or nothing when the value lies inside; NaN counts as outside
   */
  public Optional<Excess> check(double value) {
    return contains(value) ? Optional.empty() : Optional.of(new Excess(this, value));
  }

  /**
   * The limits in words.
   *
   * @param system the units to write in
   * @return for example "bore 50.0 mm to 500.0 mm"
   */
  public String describe(UnitSystem system) {
    String text =
        Double.isInfinite(high)
            ? "at least " + system.show(kind, low)
            : Double.isInfinite(low)
                ? "at most " + system.show(kind, high)
                : system.show(kind, low) + " to " + system.show(kind, high);
    return what + " " + text;
  }

  /**
   * A value that lies outside its published limits.
   *
   * @param bound the limits
   * @param value the value used, in SI
   */
  public record Excess(Bound bound, double value) {
    /**
     * The transgression in a few words, with the limit that is crossed.
     *
     * @param system the units to write in
     * @return for example "grain size 7.00 mm (published up to 6.00 mm)"
     */
    public String describe(UnitSystem system) {
      String used = Double.isFinite(value) ? system.show(bound.kind(), value) : "not defined";
      return bound.what()
          + " "
          + used
          + (bound.published() ? " (published " : " (own limits ")
          + crossed(system)
          + ")";
    }

    /**
     * The limit that is crossed.
     *
     * @param system the units to write in
     * @return for example "up to 6.00 mm"
     */
    public String crossed(UnitSystem system) {
      return value > bound.high()
          ? "up to " + system.show(bound.kind(), bound.high())
          : value < bound.low()
              ? "from " + system.show(bound.kind(), bound.low())
              : bound.describe(system).substring(bound.what().length() + 1);
    }
  }
}
