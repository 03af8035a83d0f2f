package sandslurry.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static sandslurry.ui.EventThread.onEventThread;
import static sandslurry.ui.PanelsTest.find;

import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JList;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sandslurry.assessment.Assessment;
import sandslurry.design.document.DesignDocument;

/** A design of several lines in the form: one is edited, and nothing of the others is lost. */
class LinesPanelTest {
  private static final String FLOW = "/flow/design";

  @BeforeAll
  static void look() throws Exception {
    EventThread.installLook();
  }

  private static DesignDocument two() {
    DesignDocument one = Designs.example("parlor-line.json").with("/lines/0/name", "First");
    return one.insert("/lines", 1, one.json("/lines/0")).with("/lines/1/name", "Second");
  }

  private static void choose(InputsPanel inputs, int line) {
    find(inputs.component(), JList.class, "/lines").setSelectedIndex(line);
  }

  private static void type(InputsPanel inputs, String pointer, String text) {
    find(inputs.component(), JTextComponent.class, pointer).setText(text);
  }

  private static void click(InputsPanel inputs, String name) {
    find(inputs.component(), AbstractButton.class, name).doClick(0);
  }

  @Test
  void theLineThatIsChosenIsEditedAndNoOther() throws Exception {
    onEventThread(
        () -> {
          FormModel model = new FormModel(Designs.NEVER);
          model.startFrom(two());
          InputsPanel inputs = new InputsPanel(model);
          type(inputs, "/lines/0" + FLOW, "351 gpm");
          choose(inputs, 1);
          type(inputs, "/lines/1" + FLOW, "352 gpm");
          choose(inputs, 0);
          inputs.commit();
          assertThat(model.document())
              .isEqualTo(
                  two().with("/lines/0" + FLOW, "351 gpm").with("/lines/1" + FLOW, "352 gpm"));
          return null;
        });
  }

  @Test
  void linesAreAddedRenamedMovedAndRemoved() throws Exception {
    onEventThread(
        () -> {
          FormModel model = new FormModel(Designs.NEVER);
          model.startFrom(two());
          InputsPanel inputs = new InputsPanel(model);
          choose(inputs, 1);
          click(inputs, "/lines add");
          assertThat(model.document().size("/lines")).isEqualTo(3);
          type(inputs, "/lines/2/name", "Third");
          inputs.commit();
          assertThat(model.document().text("/lines/2/name")).isEqualTo("Third");
          assertThat(model.reading().problems())
              .isNotEmpty()
              .allSatisfy(problem -> assertThat(problem.field()).startsWith("/lines/2/"));
          click(inputs, "/lines remove");
          assertThat(model.document()).isEqualTo(two());
          click(inputs, "/lines up");
          assertThat(model.document().text("/lines/0/name")).isEqualTo("Second");
          click(inputs, "/lines down");
          assertThat(model.document()).isEqualTo(two());
          click(inputs, "/lines remove");
          assertThat(model.document().text("/lines/0/name")).isEqualTo("First");
          assertThat(model.document().size("/lines")).isEqualTo(1);
          return null;
        });
  }

  @Test
  void aProblemOfAnotherLineIsReached() throws Exception {
    onEventThread(
        () -> {
          FormModel model = new FormModel(Designs.NEVER);
          model.startFrom(two().with("/lines/1" + FLOW, "350 psi"));
          InputsPanel inputs = new InputsPanel(model);
          inputs.focus("/lines/1" + FLOW);
          assertThat(model.line()).isEqualTo(1);
          assertThat(find(inputs.component(), JTextComponent.class, "/lines/1" + FLOW).getText())
              .isEqualTo("350 psi");
          return null;
        });
  }

  @Test
  void thePagesOfALineAreThoseOfTheLineThatIsEdited() throws Exception {
    onEventThread(
        () -> {
          FormModel model = new FormModel(Designs.AT_ONCE);
          model.startFrom(two());
          Assessment whole = model.shown().orElseThrow();
          List<Assessment> lines = List.copyOf(whole.lines().values());
          assertThat(model.ofLine(model.shown())).containsSame(lines.get(0));
          model.choose(1);
          assertThat(model.ofLine(model.shown())).containsSame(lines.get(1));
          ResultsPanel results = new ResultsPanel(model, pointer -> {});
          for (String title : results.titles()) {
            results.open(title);
          }
          model.choose(0);
          assertThat(results.reportText().orElseThrow()).contains("First").contains("Second");
          return null;
        });
  }
}
