package sandslurry.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static sandslurry.ui.EventThread.onEventThread;

import java.time.Duration;
import java.util.List;
import java.util.stream.IntStream;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JEditorPane;
import javax.swing.JTable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sandslurry.assessment.Assessment;
import sandslurry.study.Cures;

/** The pages of the results: those that a design has, and what stands first on them. */
class ResultPagesTest {
  @BeforeAll
  static void look() throws Exception {
    EventThread.installLook();
  }

  private static List<String> titles(ResultsPanel results) {
    return IntStream.range(0, results.tabs().getTabCount())
        .mapToObj(results.tabs()::getTitleAt)
        .toList();
  }

  @Test
  void aChapterThatTheDesignLacksHasNoPageAndGetsOneWhenItComes() throws Exception {
    onEventThread(
        () -> {
          FormModel model = new FormModel(Designs.NEVER);
          model.startFrom(Designs.example("parlor-line.json"));
          ResultsPanel results = new ResultsPanel(model, pointer -> {});
          assertThat(titles(results)).contains("Deposition").doesNotContain("Lane", "Plant");
          results.open("Hydraulic grade line");
          model.change(document -> document.with("/lane/length", "30 m"));
          assertThat(titles(results)).contains("Lane");
          assertThat(results.tabs().getTitleAt(results.tabs().getSelectedIndex()))
              .isEqualTo("Hydraulic grade line");
          model.change(document -> document.without("/lines/0/route").without("/lines/0/pump"));
          assertThat(titles(results)).doesNotContain("Hydraulic grade line");
          assertThat(results.tabs().getSelectedIndex()).isZero();
          return null;
        });
  }

  @Test
  void theGoverningStateStandsFirstWithItsVerdictAsAWord() {
    Assessment assessment = Designs.assessment(Designs.example("two-pumps-six-states.json"));
    var governing = assessment.service().governing().orElseThrow();
    String page = StatesPage.of(assessment);
    assertThat(page.substring(0, page.indexOf("</table>")))
        .contains("Governing state", governing.name(), governing.severity().name());
    assertThat(page.split("\\(governs\\)", -1)).hasSize(2);
  }

  @Test
  void aLineWithoutStatesSaysHowToAskForThem() {
    Assessment assessment = Designs.assessment(Designs.example("thick-manure-piston.json"));
    assertThat(StatesPage.of(assessment)).contains("Judge the line in more states");
  }

  @Test
  void theAnswerGainsTheCuresThatThePrintedOneHas() throws Exception {
    FormModel model = Designs.model("correlations-disagree.json");
    Cures cures =
        Cures.of(model.document(), model.outcome().assessment().orElseThrow()).orElseThrow();
    assertThat(cures.tried()).isNotEmpty();
    JEditorPane page =
        onEventThread(
            () ->
                PanelsTest.find(
                    new ResultsPanel(model, pointer -> {}).component(),
                    JEditorPane.class,
                    "findings"));
    long end = System.nanoTime() + Duration.ofMinutes(1).toNanos();
    String text = "";
    while (!text.contains("was tried") && System.nanoTime() < end) {
      text = onEventThread(page::getText);
      Thread.sleep(50);
    }
    assertThat(text).contains("was tried");
  }

  @Test
  void theLanePageShowsEachOfItsThreeChartsWithNumbers() throws Exception {
    FormModel model = Designs.model("settling-lane.json");
    onEventThread(
        () -> {
          ResultsPanel results = new ResultsPanel(model, pointer -> {});
          results.open("Lane");
          JComboBox<?> page = PanelsTest.find(results.component(), JComboBox.class, "lane page");
          JTable numbers = PanelsTest.find(results.component(), JTable.class, "lane chart numbers");
          for (int i = 0; i < page.getItemCount(); i++) {
            page.setSelectedIndex(i);
            assertThat(numbers.getRowCount()).as(page.getItemAt(i).toString()).isGreaterThan(5);
          }
          return null;
        });
  }

  @Test
  void theSizePageSizesWhenAskedAlsoALineWithoutAPipe() throws Exception {
    FormModel model = new FormModel(Designs.NEVER);
    ResultsPanel results =
        onEventThread(
            () -> {
              model.startFrom(
                  Designs.example("parlor-line.json").without("/lines/0/route/runs/0/pipe"));
              ResultsPanel made = new ResultsPanel(model, pointer -> {});
              made.open("Size");
              PanelsTest.find(made.component(), JComboBox.class, "sizing system")
                  .setSelectedItem("ASTM D1785");
              PanelsTest.find(made.component(), JButton.class, "size the line").doClick();
              return made;
            });
    String page = "";
    for (int i = 0; i < 600 && !page.contains("Rejected"); i++) {
      Thread.sleep(100);
      page =
          onEventThread(
              () -> PanelsTest.find(results.component(), JEditorPane.class, "sizing").getText());
    }
    assertThat(page).contains("4 in Sch 40", "PASS", "Ask a pump supplier for", "Rejected");
    onEventThread(
        () -> {
          model.change(document -> document.with("/lines/0/route/runs/0/length", "400 ft"));
          assertThat(PanelsTest.find(results.component(), JEditorPane.class, "sizing").getText())
              .as("what was found of other inputs is gone")
              .doesNotContain("Rejected");
          return null;
        });
  }
}
