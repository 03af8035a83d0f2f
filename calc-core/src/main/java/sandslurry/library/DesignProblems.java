package sandslurry.library;

import java.util.List;
import java.util.stream.Collectors;
import sandslurry.design.document.Problem;

/** What is wrong with what was given, all at once: each field, its value and the limits. */
public final class DesignProblems extends IllegalArgumentException {
  private static final long serialVersionUID = 1;

  private final transient List<Problem> problems;

  DesignProblems(List<Problem> problems) {
    super(problems.stream().map(Problem::toString).collect(Collectors.joining("\n")));
    this.problems = List.copyOf(problems);
  }

  /**
   * The problems.
   *
   * @return each with the field of the design file, its value and what is wrong
   */
  public List<Problem> problems() {
    return problems == null ? List.of() : problems;
  }
}
