package sandslurry.units;

/** Text that is not a number with a unit of the measure asked for; the message says why. */
public final class UnitTextException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /**
   * Creates the exception.
   *
   * @param message what is wrong with the text, fit to be shown to the person who typed it
   */
  public UnitTextException(String message) {
    super(message);
  }
}
