package sandslurry.numeric;

import java.util.concurrent.CancellationException;

/** Lets a long search stop as soon as the thread it runs on is interrupted. */
public final class Interruption {
  private Interruption() {}

  /**
   * To be called at least every few milliseconds by whatever takes long; it costs next to nothing.
   *
   * @throws CancellationException if the thread was interrupted; it stays so
   */
  public static void check() {
    if (Thread.currentThread().isInterrupted()) {
      throw new CancellationException("stopped, because its thread was interrupted");
    }
  }
}
