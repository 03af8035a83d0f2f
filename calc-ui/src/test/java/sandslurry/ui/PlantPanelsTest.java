package sandslurry.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static sandslurry.ui.EventThread.onEventThread;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import javax.swing.JTextArea;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sandslurry.assessment.Assessment;
import sandslurry.design.DesignDocument;

/** The plant on the form, built and painted without a display. */
class PlantPanelsTest {
  @BeforeAll
  static void look() throws Exception {
    EventThread.installLook();
  }

  private static DesignDocument example() throws Exception {
    return DesignDocument.load(Path.of("..", "docs", "examples", "closed-loop-dairy.json"));
  }

  /** A model that evaluates nothing. */
  private static FormModel model() throws Exception {
    FormModel model =
        new FormModel(
            new Evaluator() {
              @Override
              public void request(
                  sandslurry.design.Design design, java.util.function.Consumer<Outcome> whenDone) {}

              @Override
              public void cancel() {}
            });
    model.startFrom(example());
    return model;
  }

  @Test
  void theTextOfThePlantIsAppliedWhenItIsRightAndKeptWhenItIsNot() throws Exception {
    onEventThread(
        () -> {
          FormModel model = model();
          InputSection section = PlantInputs.of(model);
          model.listen(section::refresh);
          section.refresh();
          JTextArea text = PanelsTest.find(section.panel(), JTextArea.class, "plant text");
          assertThat(text.getText()).isEqualTo(model.document().indented("/plant"));
          text.setText(text.getText().replace("\"50 mm\"", "\"60 mm\""));
          section.commit();
          assertThat(model.document().text("/plant/units/2/apex")).isEqualTo("60 mm");
          DesignDocument before = model.document();
          text.setText("{ \"pens\": ");
          section.commit();
          assertThat(model.document()).isEqualTo(before);
          assertThat(text.getText()).isEqualTo("{ \"pens\": ");
          return null;
        });
  }

  @Test
  void aFormThatIsOnlyLookedAtLeavesThePlantAsItIs() throws Exception {
    onEventThread(
        () -> {
          FormModel model = model();
          InputsPanel inputs = new InputsPanel(model);
          inputs.refresh();
          inputs.commit();
          assertThat(model.document()).isEqualTo(example());
          assertThat(model.isModified()).isFalse();
          return null;
        });
  }

  @Test
  void theDrawingShowsEveryStreamWithItsFlow() throws Exception {
    Assessment assessment =
        Outcome.of(example().read().design().orElseThrow()).assessment().orElseThrow();
    onEventThread(
        () -> {
          FlowDrawing drawing = new FlowDrawing();
          drawing.show(
              assessment.plant().orElseThrow().main().sheet(), assessment.design().units());
          String words = drawing.getAccessibleContext().getAccessibleDescription();
          assessment
              .plant()
              .orElseThrow()
              .main()
              .sheet()
              .forEach(edge -> assertThat(words).contains(edge.from() + ", " + edge.stream()));
          drawing.setSize(drawing.getPreferredSize());
          BufferedImage image =
              new BufferedImage(
                  drawing.getWidth(), drawing.getHeight(), BufferedImage.TYPE_INT_RGB);
          Graphics2D g = image.createGraphics();
          drawing.paint(g);
          g.dispose();
          int[] pixels =
              image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
          assertThat(java.util.Arrays.stream(pixels).distinct().count()).isGreaterThan(50);
          return null;
        });
  }
}
