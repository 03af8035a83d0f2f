package sandslurry.ui;

/**
 * One entry of a list to choose from.
 *
 * @param value what the document says
 * @param label what a person reads
 */
record Choice(String value, String label) {
  static Choice of(String value) {
    return new Choice(value, value);
  }

  @Override
  public String toString() {
    return label;
  }
}
