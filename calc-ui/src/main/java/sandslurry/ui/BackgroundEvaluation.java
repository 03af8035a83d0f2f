package sandslurry.ui;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import sandslurry.assessment.Assessment;
import sandslurry.design.Design;

/**
 * Evaluates off the event thread, once typing has paused; only the newest request is answered. One
 * design is evaluated at a time: a superseded one is told to stop, and one that still waits is
 * never begun.
 */
final class BackgroundEvaluation implements Evaluator {
  private static final int PAUSE_MS = 150;

  private final ExecutorService worker = worker("evaluation");
  private final Function<Design, Assessment> evaluation;
  private int newest;
  private Timer pause;
  private Future<?> running;

  /**
   * Makes the evaluator.
   *
   * @param evaluation evaluates one design
   */
  BackgroundEvaluation(Function<Design, Assessment> evaluation) {
    this.evaluation = evaluation;
  }

  /** One thread that does not keep the program from ending. */
  static ExecutorService worker(String name) {
    return Executors.newSingleThreadExecutor(
        task -> {
          Thread thread = new Thread(task, name);
          thread.setDaemon(true);
          return thread;
        });
  }

  @Override
  public void request(Design design, Consumer<Outcome> done) {
    cancel();
    int number = newest;
    pause = new Timer(PAUSE_MS, event -> start(design, number, done));
    pause.setRepeats(false);
    pause.start();
  }

  @Override
  public void cancel() {
    newest++;
    if (pause != null) {
      pause.stop();
    }
    if (running != null) {
      running.cancel(true);
    }
  }

  private void start(Design design, int number, Consumer<Outcome> done) {
    running =
        worker.submit(
            () -> {
              // An outcome there is always, whatever happens, so that nothing waits for ever.
              Outcome outcome = Outcome.of(design, evaluation);
              SwingUtilities.invokeLater(
                  () -> {
                    if (number == newest) {
                      done.accept(outcome);
                    }
                  });
            });
  }
}
