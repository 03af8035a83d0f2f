package sandslurry.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static sandslurry.ui.EventThread.onEventThread;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JTextField;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sandslurry.assessment.Assessment;
import sandslurry.design.document.DesignDocument;

/** The plant on the form, built and painted without a display. */
class PlantPanelsTest {
  @BeforeAll
  static void look() throws Exception {
    EventThread.installLook();
  }

  private static DesignDocument example() throws Exception {
    return DesignDocument.load(Path.of("..", "docs", "examples", "closed-loop-dairy.json"));
  }

  private static FormModel model() throws Exception {
    FormModel model = new FormModel(Designs.NEVER);
    model.startFrom(example());
    return model;
  }

  private static <C extends JComponent> C find(InputsPanel inputs, Class<C> type, String name) {
    return PanelsTest.find(inputs.component(), type, name);
  }

  @Test
  void aUnitIsChosenFromTheListAndItsFieldsAreChanged() throws Exception {
    onEventThread(
        () -> {
          FormModel model = model();
          InputsPanel inputs = new InputsPanel(model);
          JList<?> units = find(inputs, JList.class, "/plant/units");
          assertThat(units.getModel().getSize()).isEqualTo(10);
          units.setSelectedIndex(2);
          find(inputs, JTextField.class, "/plant/units/2/apex").setText("60 mm");
          assertThat(model.document()).isEqualTo(example().with("/plant/units/2/apex", "60 mm"));
          find(inputs, JTextField.class, "/plant/units/2/apex").setText("60 mn");
          assertThat(
                  find(inputs, JTextField.class, "/plant/units/2/apex")
                      .getClientProperty("JComponent.outline"))
              .isEqualTo("error");
          assertThat(units.getModel().getElementAt(2).toString()).contains("needs attention");
          return null;
        });
  }

  @Test
  void aUnitOfAnotherKindKeepsItsNameAndAsksForWhatThatKindNeeds() throws Exception {
    onEventThread(
        () -> {
          FormModel model = model();
          InputsPanel inputs = new InputsPanel(model);
          JComboBox<?> kind = find(inputs, JComboBox.class, "/plant/units/0/kind");
          kind.setSelectedIndex(1);
          assertThat(model.document().text("/plant/units/0/kind")).isEqualTo("lane");
          assertThat(model.document().text("/plant/units/0/name")).isEqualTo("Box");
          assertThat(model.document().text("/plant/units/0/in")).contains("manure high");
          assertThat(model.problemsAt("/plant/units/0/reaches/0/length")).isNotEmpty();
          assertThat(model.reading().problems()).noneMatch(p -> p.message().contains("not known"));
          model.undo();
          assertThat(model.document()).isEqualTo(example());
          return null;
        });
  }

  @Test
  void aRangeBecomesAValueWhenItsEndsAreTakenAwayAndARangeAgainWhenTheyComeBack() throws Exception {
    onEventThread(
        () -> {
          FormModel model = model();
          InputsPanel inputs = new InputsPanel(model);
          String water = "/plant/pens/0/water";
          assertThat(find(inputs, JTextField.class, water + "/base").getText()).isEqualTo("3 m3/d");
          find(inputs, JTextField.class, water + "/low").setText("");
          find(inputs, JTextField.class, water + "/high").setText("");
          assertThat(model.document().text(water)).isEqualTo("3 m3/d");
          assertThat(model.reading().problems()).isEmpty();
          find(inputs, JTextField.class, water).setText("4 m3/d");
          find(inputs, JTextField.class, water + "/low").setText("2 m3/d");
          assertThat(model.problemsAt(water)).isNotEmpty();
          find(inputs, JTextField.class, water + "/high").setText("6 m3/d");
          assertThat(model.reading().problems()).isEmpty();
          assertThat(model.document().text(water + "/base")).isEqualTo("4 m3/d");
          return null;
        });
  }

  @Test
  void aPlantIsMadeFromNothingOnTheForm() throws Exception {
    onEventThread(
        () -> {
          FormModel model = new FormModel(Designs.NEVER);
          model.startFrom(Designs.example("parlor-line.json"));
          InputsPanel inputs = new InputsPanel(model);
          find(inputs, JCheckBox.class, "part plant").doClick(0);
          find(inputs, JTextField.class, "/plant/pens/0/name").setText("Pen");
          find(inputs, JTextField.class, "/plant/pens/0/stream").setText("manure");
          find(inputs, JTextField.class, "/plant/pens/0/cows").setText("100");
          find(inputs, JTextField.class, "/plant/units/0/name").setText("Pond");
          find(inputs, JComboBox.class, "/plant/units/0/kind").setSelectedIndex(8);
          find(inputs, JTextField.class, "/plant/units/0/in").setText("manure");
          find(inputs, JTextField.class, "/plant/units/0/floorLength").setText("60 m");
          find(inputs, JTextField.class, "/plant/units/0/floorWidth").setText("40 m");
          find(inputs, JTextField.class, "/plant/units/0/depth").setText("4 m");
          assertThat(model.reading().problems()).isEmpty();
          find(inputs, JCheckBox.class, "part plant").doClick(0);
          assertThat(model.document()).isEqualTo(Designs.example("parlor-line.json"));
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
    Assessment assessment = Designs.assessment(example());
    onEventThread(
        () -> {
          FlowDrawing drawing = FlowDrawing.onPaper(assessment).orElseThrow();
          String words = drawing.getAccessibleContext().getAccessibleDescription();
          assessment
              .plant()
              .orElseThrow()
              .main()
              .sheet()
              .forEach(edge -> assertThat(words).contains(edge.from() + ", " + edge.stream()));
          BufferedImage image = drawing.picture();
          int[] pixels =
              image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
          assertThat(java.util.Arrays.stream(pixels).distinct().count()).isGreaterThan(50);
          return null;
        });
  }
}
