package sandslurry.ui;

import java.awt.Component;
import java.awt.Cursor;
import java.awt.event.MouseAdapter;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.function.Consumer;
import javax.swing.JFrame;
import javax.swing.SwingWorker;

/** Works with files and printers off the event thread; the window waits meanwhile. */
final class FileWork {
  private final JFrame frame;
  private final Consumer<String> tell;
  private int busy;

  /**
   * Makes it.
   *
   * @param frame the window that waits
   * @param tell says what went wrong
   */
  FileWork(JFrame frame, Consumer<String> tell) {
    this.frame = frame;
    this.tell = tell;
    frame.getGlassPane().addMouseListener(new MouseAdapter() {});
  }

  /** Says that no window waits for this thread: only then may a file be read or a page printed. */
  static boolean isElsewhere() {
    // Asked by name, since to ask the toolkit would start it for a command line.
    return !Thread.currentThread().getClass().getName().equals("java.awt.EventDispatchThread");
  }

  /**
   * Does some work.
   *
   * @param work is done off the event thread
   * @param then goes on with what came of it, on the event thread; not after a failure, which is
   *     told
   */
  <T> void run(Callable<T> work, Consumer<T> then) {
    wait(1);
    new SwingWorker<T, Void>() {
      @Override
      protected T doInBackground() throws Exception {
        return work.call();
      }

      @Override
      protected void done() {
        FileWork.this.wait(-1);
        T result;
        try {
          result = get();
        } catch (InterruptedException e) {
          Thread.currentThread().interrupt();
          return;
        } catch (ExecutionException e) {
          Throwable cause = e.getCause();
          tell.accept(
              cause instanceof BadInputException
                  ? cause.getMessage()
                  : "An error of the program: " + cause);
          return;
        }
        then.accept(result);
      }
    }.execute();
  }

  private void wait(int more) {
    busy += more;
    Component pane = frame.getGlassPane();
    pane.setCursor(Cursor.getPredefinedCursor(Cursor.WAIT_CURSOR));
    pane.setVisible(busy > 0);
  }
}
