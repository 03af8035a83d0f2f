package sandslurry.design.document;

import sandslurry.units.ShownText;

/**
 * Something wrong with one field of a design.
 *
 * @param field JSON Pointer (RFC 6901) of the field, such as {@code /lines/0/route/runs/0/length}
 * @param value the text found there, empty when there is none; shortened and without characters
 *     that cannot be seen
 * @param message what is wrong, with the allowed range and unit
 */
public record Problem(String field, String value, String message) {
  /** Keeps of value and message what can be shown: a file may hold texts of any length and kind. */
  public Problem {
    value = ShownText.brief(value);
    message = ShownText.message(message);
  }

  @Override
  public String toString() {
    return ShownText.message(field) + (value.isEmpty() ? ": " : " = \"" + value + "\": ") + message;
  }
}
