package sandslurry.fact;

/** Takes what is wrong with the fields that are read. */
@FunctionalInterface
public interface Problems {
  /**
   * Takes a problem.
   *
   * @param pointer JSON Pointer (RFC 6901) of the field
   * @param value what stands there, cut where it is long; empty when nothing does
   * @param message what is wrong, with the allowed range and unit
   */
  void add(String pointer, String value, String message);
}
