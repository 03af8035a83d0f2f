package sandslurry.ui;

import java.util.Optional;
import java.util.function.Function;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.Evaluation;
import sandslurry.design.Design;

/**
 * What the form has to show as results.
 *
 * @param state how far it came
 * @param assessment the assessment, only when it belongs to the inputs as they stand
 * @param message why there is none
 */
record Outcome(State state, Optional<Assessment> assessment, String message) {
  enum State {
    /** The inputs have problems, so there is nothing to evaluate. */
    PROBLEMS,
    /** An evaluation is under way. */
    WORKING,
    /** The assessment is there. */
    DONE,
    /** The evaluation ended in an error of the program. */
    BROKEN
  }

  static final Outcome PROBLEMS = new Outcome(State.PROBLEMS, Optional.empty(), "");
  static final Outcome WORKING = new Outcome(State.WORKING, Optional.empty(), "");

  /**
   * Evaluates a design; an error of the program, or of the machine that runs it, becomes a message,
   * never a wrong number.
   */
  static Outcome of(Design design) {
    return of(design, Evaluation::assess);
  }

  static Outcome of(Design design, Function<Design, Assessment> evaluation) {
    try {
      return new Outcome(State.DONE, Optional.ofNullable(evaluation.apply(design)), "");
    } catch (RuntimeException | Error e) {
      return new Outcome(
          State.BROKEN,
          Optional.empty(),
          "This design could not be evaluated: " + e.toString().replaceAll("\\s+", " "));
    }
  }
}
