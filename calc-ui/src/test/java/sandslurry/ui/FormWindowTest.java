package sandslurry.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static sandslurry.ui.EventThread.onEventThread;

import java.awt.GraphicsEnvironment;
import java.awt.Window;
import java.awt.event.InputEvent;
import java.awt.print.PageFormat;
import java.awt.print.Pageable;
import java.awt.print.Printable;
import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JMenuItem;
import javax.swing.JTextField;
import javax.swing.JToolBar;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sandslurry.assessment.Evaluation;
import sandslurry.design.document.DesignDocument;

/**
 * The form on a display: skipped where there is none, but a failure where the environment says that
 * there must be one.
 */
class FormWindowTest {
  private static final long PATIENCE_MS = 30_000;

  private FormModel model;
  private FormWindow window;

  @BeforeEach
  void open() throws Exception {
    if (GraphicsEnvironment.isHeadless()) {
      if ("1".equals(System.getenv("SANDSLURRY_REQUIRE_DISPLAY"))) {
        fail("SANDSLURRY_REQUIRE_DISPLAY is set, but there is no display");
      }
      Assumptions.abort("there is no display");
    }
    onEventThread(
        () -> {
          Look.install();
          model = new FormModel(new BackgroundEvaluation(Evaluation::assess));
          window = new FormWindow(model);
          model.startFrom(Designs.example("parlor-line.json"));
          window.frame().setVisible(true);
          return null;
        });
  }

  @AfterEach
  void close() throws Exception {
    if (window != null) {
      onEventThread(
          () -> {
            window.frame().dispose();
            return null;
          });
    }
  }

  private String verdict() throws Exception {
    return onEventThread(
        () -> PanelsTest.find(window.frame().getContentPane(), JLabel.class, "verdict").getText());
  }

  private void awaitVerdict(String wanted) throws Exception {
    long end = System.currentTimeMillis() + PATIENCE_MS;
    while (!verdict().equals(wanted) && System.currentTimeMillis() < end) {
      Thread.sleep(20);
    }
    assertThat(verdict()).isEqualTo(wanted);
  }

  private void type(String field, String text) throws Exception {
    onEventThread(
        () -> {
          JTextField component =
              PanelsTest.find(window.frame().getContentPane(), JTextField.class, field);
          component.requestFocusInWindow();
          component.selectAll();
          component.replaceSelection(text);
          return null;
        });
  }

  /** Saves as the window does, beside the event thread. */
  private void save(Path file) throws Exception {
    DesignDocument document = onEventThread(model::document);
    FormFile saved = FormFile.save(file, document);
    onEventThread(
        () -> {
          model.saved(document, saved);
          return null;
        });
  }

  @Test
  void aNumberTypedChangesTheVerdictAndUndoBringsItBack() throws Exception {
    awaitVerdict("PASS");
    type("/lines/0/flow/minimum", "100 gpm");
    awaitVerdict("FAIL");
    type("/lines/0/flow/minimum", "4 psi");
    awaitVerdict("NO VERDICT");
    onEventThread(
        () -> {
          model.undo();
          return null;
        });
    awaitVerdict("PASS");
  }

  @Test
  void aDesignIsSavedReopenedAndItsReportPrinted(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("design.json");
    awaitVerdict("PASS");
    save(file);
    type("/title", "Line of the test");
    assertThat(onEventThread(() -> window.frame().getTitle())).startsWith("* design.json");
    onEventThread(
        () -> {
          window.commands().save();
          return null;
        });
    long end = System.currentTimeMillis() + PATIENCE_MS;
    while (onEventThread(() -> model.isModified()) && System.currentTimeMillis() < end) {
      Thread.sleep(20);
    }
    assertThat(onEventThread(() -> window.frame().getTitle())).startsWith("design.json");

    FormFile.Opened opened = FormFile.open(file);
    onEventThread(
        () -> {
          model.startNew();
          model.start(opened);
          return null;
        });
    awaitVerdict("PASS");
    assertThat(onEventThread(() -> model.document().text("/title"))).isEqualTo("Line of the test");

    String report = onEventThread(() -> window.results().reportText().orElseThrow());
    assertThat(report).startsWith("Line of the test");
  }

  @Test
  void aFileOfTwoWindowsIsSavedOverOnlyWhenAPersonSaysSo(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("design.json");
    save(file);
    DesignDocument other = DesignDocument.load(file).with("/title", "Of the other window");
    other.save(file);
    type("/title", "Of this window");
    saveAndAnswer("Cancel");
    assertThat(DesignDocument.load(file)).isEqualTo(other);
    assertThat(onEventThread(() -> model.isModified())).isTrue();

    saveAndAnswer("Save over it");
    long end = System.currentTimeMillis() + PATIENCE_MS;
    while (onEventThread(() -> model.isModified()) && System.currentTimeMillis() < end) {
      Thread.sleep(20);
    }
    assertThat(DesignDocument.load(file).text("/title")).isEqualTo("Of this window");
    assertThat(DesignDocument.load(folder.resolve("design.json.bak"))).isEqualTo(other);
  }

  /** Saves by the command of the window and answers the question that comes. */
  private void saveAndAnswer(String answer) throws Exception {
    SwingUtilities.invokeLater(window.commands()::save);
    long end = System.currentTimeMillis() + PATIENCE_MS;
    while (System.currentTimeMillis() < end) {
      if (onEventThread(() -> answered(answer))) {
        return;
      }
      Thread.sleep(20);
    }
    fail("no question with the answer \"" + answer + "\" came");
  }

  private static boolean answered(String answer) {
    for (Window dialog : Window.getWindows()) {
      if (dialog instanceof JDialog asking && asking.isShowing()) {
        for (JComponent component : PanelsTest.all(asking.getContentPane())) {
          if (component instanceof JButton button && answer.equals(button.getText())) {
            button.doClick();
            return true;
          }
        }
      }
    }
    return false;
  }

  /** A pipe that nobody writes to stands for a disk or a network that does not answer. */
  @Test
  void theWindowAnswersWhileAFileDoesNot(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("design.json");
    save(file);
    byte[] before = Files.readAllBytes(file);
    Files.delete(file);
    try {
      Assumptions.assumeTrue(
          new ProcessBuilder("mkfifo", file.toString()).start().waitFor() == 0, "no pipes here");
    } catch (IOException e) {
      Assumptions.abort("no pipes here");
    }
    type("/title", "typed meanwhile");
    onEventThread(
        () -> {
          window.commands().save();
          return null;
        });
    assertTimeoutPreemptively(
        Duration.ofMillis(PATIENCE_MS),
        () -> {
          assertThat(onEventThread(() -> window.frame().getGlassPane().isVisible())).isTrue();
          // The file as the window knows it, then what it saves, then a last look at it.
          Files.write(file, before);
          assertThat(Files.readString(file)).contains("typed meanwhile");
          Files.write(file, before);
          while (onEventThread(() -> model.isModified())) {
            Thread.sleep(20);
          }
          assertThat(onEventThread(() -> window.frame().getGlassPane().isVisible())).isFalse();
        });
  }

  @Test
  void everyCommandIsInTheMenuWithAKeyOrAMnemonic() throws Exception {
    onEventThread(
        () -> {
          var bar = window.frame().getJMenuBar();
          for (int m = 0; m < bar.getMenuCount(); m++) {
            assertThat(bar.getMenu(m).getMnemonic()).isNotZero();
            for (var item : bar.getMenu(m).getMenuComponents()) {
              if (item instanceof JMenuItem entry) {
                assertThat(entry.getMnemonic() != 0 || entry.getAccelerator() != null)
                    .as(entry.getText())
                    .isTrue();
              }
            }
          }
          return null;
        });
  }

  /** By a key of the whole window, by Alt and a letter of its bars, by a letter within a menu. */
  @Test
  void noTwoCommandsShareAKey() throws Exception {
    onEventThread(
        () -> {
          List<KeyStroke> keys = new ArrayList<>();
          var bar = window.frame().getJMenuBar();
          for (int m = 0; m < bar.getMenuCount(); m++) {
            keys.add(alt(bar.getMenu(m).getMnemonic()));
            List<Integer> letters = new ArrayList<>();
            for (var item : bar.getMenu(m).getMenuComponents()) {
              if (item instanceof JMenuItem entry) {
                if (entry.getAccelerator() != null) {
                  keys.add(entry.getAccelerator());
                }
                if (entry.getMnemonic() != 0) {
                  letters.add(entry.getMnemonic());
                }
              }
            }
            assertThat(letters).as(bar.getMenu(m).getText()).doesNotHaveDuplicates();
          }
          for (JComponent component : PanelsTest.all(window.frame().getContentPane())) {
            if (component instanceof JButton button && button.getParent() instanceof JToolBar) {
              keys.add(alt(button.getMnemonic()));
            }
          }
          assertThat(keys).hasSizeGreaterThan(35).doesNotHaveDuplicates();
          return null;
        });
  }

  private static KeyStroke alt(int letter) {
    return KeyStroke.getKeyStroke(letter, InputEvent.ALT_DOWN_MASK);
  }

  /** A printer that keeps who made it print. */
  private static final class Paper extends PrinterJob {
    private final CompletableFuture<Thread> printing = new CompletableFuture<>();
    private Pageable pages;

    @Override
    public void print() throws PrinterException {
      pages.getPrintable(0);
      printing.complete(Thread.currentThread());
    }

    @Override
    public boolean printDialog() {
      return true;
    }

    @Override
    public void setPageable(Pageable document) {
      pages = document;
    }

    @Override
    public void setPrintable(Printable painter) {}

    @Override
    public void setPrintable(Printable painter, PageFormat format) {}

    @Override
    public PageFormat pageDialog(PageFormat page) {
      return page;
    }

    @Override
    public PageFormat defaultPage(PageFormat page) {
      return page;
    }

    @Override
    public PageFormat validatePage(PageFormat page) {
      return page;
    }

    @Override
    public void setCopies(int copies) {}

    @Override
    public int getCopies() {
      return 1;
    }

    @Override
    public String getUserName() {
      return "";
    }

    @Override
    public void setJobName(String jobName) {}

    @Override
    public String getJobName() {
      return "";
    }

    @Override
    public void cancel() {}

    @Override
    public boolean isCancelled() {
      return false;
    }
  }

  @Test
  void theReportIsPrintedBesideTheThreadOfTheWindow() throws Exception {
    awaitVerdict("PASS");
    Paper paper = new Paper();
    Thread ofTheWindow =
        onEventThread(
            () -> {
              window.commands().print(paper);
              return Thread.currentThread();
            });
    assertThat(paper.printing.get(PATIENCE_MS, TimeUnit.MILLISECONDS)).isNotSameAs(ofTheWindow);
    assertThat(paper.pages.getNumberOfPages()).isGreaterThan(1);
  }

  @Test
  void aProblemLeadsToItsField() throws Exception {
    type("/lines/0/flow/minimum", "4 psi");
    awaitVerdict("NO VERDICT");
    assertThat(onEventThread(() -> window.inputs().focus("/lines/0/flow/minimum"))).isTrue();
  }
}
