package sandslurry.ui;

import java.util.concurrent.Callable;
import java.util.concurrent.FutureTask;
import javax.swing.SwingUtilities;

/** Runs what tests do to components where components live. */
final class EventThread {
  static {
    // Read before any window is there, as the program does: its thread reads no files.
    Examples.all();
  }

  private EventThread() {}

  static <T> T onEventThread(Callable<T> work) throws Exception {
    FutureTask<T> task = new FutureTask<>(work);
    SwingUtilities.invokeAndWait(task);
    return task.get();
  }

  static void installLook() throws Exception {
    onEventThread(
        () -> {
          Look.install();
          return null;
        });
  }
}
