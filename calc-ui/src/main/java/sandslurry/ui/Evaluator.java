package sandslurry.ui;

import java.util.function.Consumer;
import sandslurry.design.Design;

/** Evaluates designs, at once or later; a later request replaces an earlier one. */
interface Evaluator {
  /**
   * Asks for an evaluation.
   *
   * @param design the design
   * @param done gets the outcome, on the thread that asked
   */
  void request(Design design, Consumer<Outcome> done);

  /** Forgets what was asked: its outcome is of no interest any more. */
  void cancel();
}
