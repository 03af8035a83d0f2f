package sandslurry.ui;

import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import javax.swing.SwingUtilities;
import sandslurry.assessment.Assessment;
import sandslurry.design.document.DesignDocument;
import sandslurry.study.Cures;

/** Looks for cures off the event thread while the answer is read; a newer design stops it. */
final class BackgroundCures {
  private final ExecutorService worker = BackgroundEvaluation.worker("cures");
  private Optional<Assessment> wanted = Optional.empty();
  private Optional<Cures> found = Optional.empty();
  private Future<?> running;

  /** What mends a design, as far as it has been found. */
  Optional<Cures> of(Assessment assessment) {
    return isWanted(assessment) ? found : Optional.empty();
  }

  /**
   * Looks for what mends a design, unless that is done or under way.
   *
   * @param document the design as typed
   * @param assessment what came of it; empty when there is nothing to mend
   * @param done is told on the event thread that there are cures, unless another design came
   */
  void request(DesignDocument document, Optional<Assessment> assessment, Runnable done) {
    if (assessment.isPresent() && isWanted(assessment.get())) {
      return;
    }
    if (running != null) {
      running.cancel(true);
    }
    wanted = assessment;
    found = Optional.empty();
    assessment.ifPresent(
        of ->
            running =
                worker.submit(
                    () ->
                        Cures.of(document, of)
                            .ifPresent(
                                cures -> SwingUtilities.invokeLater(() -> take(of, cures, done)))));
  }

  private void take(Assessment of, Cures cures, Runnable done) {
    if (isWanted(of)) {
      found = Optional.of(cures);
      done.run();
    }
  }

  private boolean isWanted(Assessment assessment) {
    return wanted.filter(one -> one == assessment).isPresent();
  }
}
