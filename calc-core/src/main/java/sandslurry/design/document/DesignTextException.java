package sandslurry.design.document;

/** A text that is not a JSON document at all; the message says where. */
public final class DesignTextException extends Exception {
  private static final long serialVersionUID = 1L;

  /**
   * Creates the exception.
   *
   * @param message what is wrong, with line and column
   */
  DesignTextException(String message) {
    super(message);
  }
}
