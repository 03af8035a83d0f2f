package sandslurry.ui;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.lang.reflect.InvocationTargetException;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JSplitPane;
import javax.swing.SwingUtilities;
import javax.swing.WindowConstants;
import sandslurry.assessment.Evaluation;

/** The window: inputs on the left, what comes of them on the right. */
final class FormWindow {
  private static final Dimension WISHED = new Dimension(1360, 860);
  private static final int INPUTS_WIDTH = 470;

  /** Of a narrow window the inputs take no more. */
  private static final double INPUTS_SHARE = 0.5;

  private final FormModel model;
  private final JFrame frame = new JFrame(Product.NAME);
  private final InputsPanel inputs;
  private final ResultsPanel results;
  private final FormCommands commands;

  FormWindow(FormModel model) {
    this.model = model;
    this.inputs = new InputsPanel(model);
    this.results = new ResultsPanel(model, inputs::focus);
    this.commands = new FormCommands(model, frame, inputs, results);
    JSplitPane split =
        new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, inputs.component(), results.component());
    split.setResizeWeight(0.25);
    Look.named(split, "split", "Inputs and results");
    inputs.component().setMinimumSize(new Dimension(400, 200));
    results.component().setMinimumSize(new Dimension(380, 200));
    JLabel caution = new JLabel(Product.CAUTION);
    caution.setName("caution");
    caution.setBorder(BorderFactory.createEmptyBorder(4, 12, 5, 12));
    frame.setJMenuBar(commands.menuBar());
    frame.add(commands.toolBar(), BorderLayout.NORTH);
    frame.add(split, BorderLayout.CENTER);
    frame.add(caution, BorderLayout.SOUTH);
    frame.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
    frame.addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowClosing(WindowEvent event) {
            commands.quit();
          }
        });
    model.listen(this::refreshTitle);
    refreshTitle();
    frame.setSize(fitting());
    split.setDividerLocation(Math.min(INPUTS_WIDTH, (int) (INPUTS_SHARE * frame.getWidth())));
    frame.setLocationByPlatform(true);
  }

  private Dimension fitting() {
    Rectangle screen = frame.getGraphicsConfiguration().getBounds();
    java.awt.Insets edges =
        Toolkit.getDefaultToolkit().getScreenInsets(frame.getGraphicsConfiguration());
    return new Dimension(
        Math.min(WISHED.width, screen.width - edges.left - edges.right),
        Math.min(WISHED.height, screen.height - edges.top - edges.bottom));
  }

  private void refreshTitle() {
    String name = model.file().map(f -> f.getFileName().toString()).orElse("not saved yet");
    frame.setTitle((model.isModified() ? "* " : "") + name + " - " + Product.NAME);
  }

  JFrame frame() {
    return frame;
  }

  InputsPanel inputs() {
    return inputs;
  }

  ResultsPanel results() {
    return results;
  }

  FormCommands commands() {
    return commands;
  }

  /**
   * Opens the window and waits until it is closed.
   *
   * @param start what the window begins with
   * @param left designs that were left behind unsaved
   */
  static void showAndWait(Consumer<FormModel> start, List<Recovery.Left> left) {
    CountDownLatch closed = new CountDownLatch(1);
    try {
      SwingUtilities.invokeAndWait(
          () -> {
            Look.install();
            FormModel model = new FormModel(new BackgroundEvaluation(Evaluation::assess));
            FormWindow window = new FormWindow(model);
            window.frame.addWindowListener(
                new WindowAdapter() {
                  @Override
                  public void windowClosed(WindowEvent event) {
                    closed.countDown();
                  }
                });
            Thread.setDefaultUncaughtExceptionHandler((thread, e) -> window.commands.broke(e));
            Recovery recovery = new Recovery(Recovery.usualFolder());
            new Autosave(model, recovery).watch(window.frame);
            start.accept(model);
            window.frame.setVisible(true);
            left.forEach(one -> window.commands.offer(one, recovery));
          });
      closed.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (InvocationTargetException e) {
      if (e.getCause() instanceof RuntimeException failure) {
        throw failure;
      }
      if (e.getCause() instanceof Error failure) {
        throw failure;
      }
      throw new IllegalStateException(e);
    }
  }
}
