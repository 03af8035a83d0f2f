package sandslurry.design.document;

import java.util.List;
import java.util.Optional;
import sandslurry.design.Design;

/**
 * What came of reading a document: a design, or every problem that stands in the way of one.
 *
 * @param design the design, present only when there is no problem
 * @param problems all problems, empty when there is a design
 */
public record Reading(Optional<Design> design, List<Problem> problems) {
  /** Copies the list and checks that it says the same as the design. */
  public Reading {
    problems = List.copyOf(problems);
    if (design.isPresent() != problems.isEmpty()) {
      throw new IllegalArgumentException("a reading has either a design or problems");
    }
  }
}
