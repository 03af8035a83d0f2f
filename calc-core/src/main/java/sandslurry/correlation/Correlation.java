package sandslurry.correlation;

/** A member of a family of published correlations. */
public interface Correlation {
  /**
   * What is to be known of it.
   *
   * @return key, name, equation, source and limits
   */
  About about();

  /**
   * Its key for files.
   *
   * @return that of {@link #about}
   */
  default String id() {
    return about().id();
  }

  /**
   * The name shown to people.
   *
   * @return that of {@link #about}
   */
  default String name() {
    return about().name();
  }

  /**
   * The source.
   *
   * @return that of {@link #about}
   */
  default Citation citation() {
    return about().citation();
  }
}
