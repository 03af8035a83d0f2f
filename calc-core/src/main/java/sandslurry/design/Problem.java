package sandslurry.design;

/**
 * Something wrong with one field of a design.
 *
 * @param field JSON Pointer (RFC 6901) of the field, such as {@code /route/runs/0/length}
 * @param value the text found there, empty when there is none
 * @param message what is wrong, with the allowed range and unit
 */
public record Problem(String field, String value, String message) {
  @Override
  public String toString() {
    return field + (value.isEmpty() ? ": " : " = \"" + value + "\": ") + message;
  }
}
