package sandslurry.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static sandslurry.ui.EventThread.onEventThread;

import java.awt.Dimension;
import java.awt.GraphicsEnvironment;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import javax.swing.JLabel;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import sandslurry.assessment.Evaluation;

/**
 * The screenshot of the guide: the form with the parlor line. {@code -Dpages.renew=true} takes it
 * anew, on a display.
 */
class GuideScreenshotTest {
  private static final Path FILE = Path.of("..", "docs", "guide", "pictures", "form.png");
  private static final int WIDE = 1280;
  private static final int HIGH = 800;
  private static final long PATIENCE_MS = 30_000;

  @Test
  void itIsOfTheSizeOfTheWindow() throws Exception {
    if (Boolean.getBoolean("pages.renew")) {
      Assumptions.assumeFalse(GraphicsEnvironment.isHeadless(), "there is no display");
      take();
    }
    BufferedImage image = ImageIO.read(FILE.toFile());
    assertThat(image.getWidth()).isEqualTo(WIDE);
    assertThat(image.getHeight()).isEqualTo(HIGH);
  }

  private static void take() throws Exception {
    FormWindow window =
        onEventThread(
            () -> {
              Look.install();
              FormModel model = new FormModel(new BackgroundEvaluation(Evaluation::assess));
              FormWindow made = new FormWindow(model);
              model.startFrom(Designs.example("parlor-line.json"));
              made.frame().setVisible(true);
              made.frame().getRootPane().setPreferredSize(new Dimension(WIDE, HIGH));
              made.frame().pack();
              return made;
            });
    long end = System.currentTimeMillis() + PATIENCE_MS;
    while (!verdict(window).equals("PASS") && System.currentTimeMillis() < end) {
      Thread.sleep(50);
    }
    Thread.sleep(500);
    onEventThread(
        () -> {
          BufferedImage image = new BufferedImage(WIDE, HIGH, BufferedImage.TYPE_INT_RGB);
          window.frame().getRootPane().paint(image.createGraphics());
          ImageIO.write(image, "png", FILE.toFile());
          window.frame().dispose();
          return null;
        });
  }

  private static String verdict(FormWindow window) throws Exception {
    return onEventThread(
        () -> PanelsTest.find(window.frame().getContentPane(), JLabel.class, "verdict").getText());
  }
}
