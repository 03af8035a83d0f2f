package sandslurry.numeric;

/** An equation that has no root where one was looked for, with the evidence in the message. */
public final class UnsolvedException extends ArithmeticException {
  private static final long serialVersionUID = 1L;

  /**
   * Creates the exception.
   *
   * @param message what was solved for and what was found instead
   */
  public UnsolvedException(String message) {
    super(message);
  }
}
