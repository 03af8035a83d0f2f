package sandslurry.assessment.line;

/** A flow at which the line is judged. */
public enum FlowCase {
  /** The least flow at which the line really runs. */
  MINIMUM("minimum"),
  /** The flow that the line is designed for. */
  DESIGN("design"),
  /** The greatest flow at which the line really runs. */
  MAXIMUM("maximum"),
  /** The flow that the pump given really drives through the line. */
  DUTY("pump duty");

  private final String words;

  FlowCase(String words) {
    this.words = words;
  }

  /**
   * The case in words.
   *
   * @return for example "minimum"
   */
  public String words() {
    return words;
  }
}
