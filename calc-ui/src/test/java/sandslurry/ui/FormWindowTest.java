package sandslurry.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static sandslurry.ui.EventThread.onEventThread;

import java.awt.GraphicsEnvironment;
import java.awt.Window;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JTextField;
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
    onEventThread(
        () -> {
          model.save(file);
          return null;
        });
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

    onEventThread(
        () -> {
          model.startNew();
          model.open(file);
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
    onEventThread(
        () -> {
          model.save(file);
          return null;
        });
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
    onEventThread(
        () -> {
          model.save(file);
          return null;
        });
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
              if (item instanceof javax.swing.JMenuItem entry) {
                assertThat(entry.getMnemonic() != 0 || entry.getAccelerator() != null)
                    .as(entry.getText())
                    .isTrue();
              }
            }
          }
          return null;
        });
  }

  @Test
  void noTwoCommandsShareAKey() throws Exception {
    List<KeyStroke> keys =
        onEventThread(
            () -> {
              List<KeyStroke> found = new ArrayList<>();
              var bar = window.frame().getJMenuBar();
              for (int m = 0; m < bar.getMenuCount(); m++) {
                for (var item : bar.getMenu(m).getMenuComponents()) {
                  if (item instanceof javax.swing.JMenuItem entry
                      && entry.getAccelerator() != null) {
                    found.add(entry.getAccelerator());
                  }
                }
              }
              return found;
            });
    assertThat(keys).hasSizeGreaterThan(25).doesNotHaveDuplicates();
  }

  @Test
  void aProblemLeadsToItsField() throws Exception {
    type("/lines/0/flow/minimum", "4 psi");
    awaitVerdict("NO VERDICT");
    assertThat(onEventThread(() -> window.inputs().focus("/lines/0/flow/minimum"))).isTrue();
  }
}
