package sandslurry.fact.finding;

/** How a finding stands, from harmless to bad. */
public enum Severity {
  /** Something to know that does not change the verdict. */
  NOTE,
  /** Meets every criterion with its margin. */
  PASS,
  /** Works by the governing criterion but lacks margin, or the methods disagree or do not apply. */
  CAUTION,
  /** Does not meet a criterion. */
  FAIL;

  /**
   * The graver of two.
   *
   * @param other another severity
   * @return the graver
   */
  public Severity or(Severity other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
