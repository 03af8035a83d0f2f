package sandslurry.ui;

import java.awt.Window;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import javax.swing.Timer;
import sandslurry.design.document.DesignDocument;

/** Keeps a design that has changes a moment after each, off the event thread. */
final class Autosave {
  private static final int PAUSE_MS = 1_000;

  private final FormModel model;
  private final Recovery recovery;
  private final ExecutorService writer = BackgroundEvaluation.worker("autosave");
  private final Timer pause = new Timer(PAUSE_MS, event -> keep());
  private DesignDocument last;

  Autosave(FormModel model, Recovery recovery) {
    this.model = model;
    this.recovery = recovery;
    pause.setRepeats(false);
  }

  /** Follows the design until its window is closed, which asks what to do with changes. */
  void watch(Window window) {
    model.listen(this::follow);
    window.addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowClosed(WindowEvent event) {
            pause.stop();
            writer.shutdownNow();
            recovery.clear();
          }
        });
  }

  private void follow() {
    if (model.document() != last) {
      last = model.document();
      pause.restart();
    } else if (!model.isModified()) {
      pause.restart();
    }
  }

  private void keep() {
    DesignDocument document = model.document();
    Optional<FormFile> file = model.seen();
    boolean modified = model.isModified();
    writer.execute(
        () -> {
          try {
            if (modified) {
              recovery.keep(document, file);
            } else {
              recovery.clear();
            }
          } catch (IOException e) {
            // Nobody can be told at every letter; saving itself tells what is wrong.
          }
        });
  }
}
