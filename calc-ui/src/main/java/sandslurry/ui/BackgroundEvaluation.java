package sandslurry.ui;

import java.util.concurrent.ExecutionException;
import java.util.function.Consumer;
import javax.swing.SwingWorker;
import javax.swing.Timer;
import sandslurry.design.Design;

/** Evaluates off the event thread, once typing has paused; only the newest request is answered. */
final class BackgroundEvaluation implements Evaluator {
  private static final int PAUSE_MS = 150;

  private int newest;
  private Timer pause;

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
  }

  private void start(Design design, int number, Consumer<Outcome> done) {
    new SwingWorker<Outcome, Void>() {
      @Override
      protected Outcome doInBackground() {
        return Outcome.of(design);
      }

      @Override
      protected void done() {
        if (number == newest) {
          try {
            done.accept(get());
          } catch (InterruptedException | ExecutionException e) {
            throw new IllegalStateException(e);
          }
        }
      }
    }.execute();
  }
}
