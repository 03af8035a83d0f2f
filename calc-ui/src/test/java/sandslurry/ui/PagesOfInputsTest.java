package sandslurry.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static sandslurry.ui.EventThread.onEventThread;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import javax.swing.JEditorPane;
import javax.swing.JLabel;
import javax.swing.JTextArea;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sandslurry.design.Design;

/** Whatever the pages show belongs to the inputs beside them, or says that it does not. */
class PagesOfInputsTest {
  /** Evaluates only when told to. */
  private static final class ByHand implements Evaluator {
    private Runnable waiting = () -> {};

    @Override
    public void request(Design design, Consumer<Outcome> done) {
      waiting = () -> done.accept(Outcome.of(design));
    }

    @Override
    public void cancel() {
      waiting = () -> {};
    }
  }

  private final ByHand evaluator = new ByHand();

  @BeforeAll
  static void look() throws Exception {
    EventThread.installLook();
  }

  private static String report(ResultsPanel results) {
    return PanelsTest.find(results.component(), JTextArea.class, "report").getText();
  }

  @Test
  void thePagesOfOneDesignAreGoneOnceAnotherIsOpen() throws Exception {
    onEventThread(
        () -> {
          FormModel model = new FormModel(evaluator);
          ResultsPanel results = new ResultsPanel(model, pointer -> {});
          model.startFrom(Designs.example("parlor-line.json"));
          results.open("Report");
          evaluator.waiting.run();
          assertThat(report(results)).contains("PASS");

          model.startFrom(Designs.example("oversized-line-plugs.json"));
          for (String title : results.titles()) {
            results.open(title);
          }
          assertThat(report(results)).isEqualTo("The design is being evaluated.");
          assertThat(PanelsTest.find(results.component(), JEditorPane.class, "findings").getText())
              .doesNotContain("PASS")
              .contains("being evaluated");
          return null;
        });
  }

  @Test
  void atTheStartACompleteFileHasNoListOfMissingInputsBesideIt() throws Exception {
    onEventThread(
        () -> {
          FormModel model = new FormModel(evaluator);
          ResultsPanel results = new ResultsPanel(model, pointer -> {});
          JEditorPane findings =
              PanelsTest.find(results.component(), JEditorPane.class, "findings");
          assertThat(findings.getText()).contains("needs attention");
          model.startFrom(Designs.example("parlor-line.json"));
          assertThat(findings.getText()).doesNotContain("attention");
          return null;
        });
  }

  @Test
  void afterAnEditThePagesAreMarkedAndCannotBeCopiedUntilTheyFollow() throws Exception {
    onEventThread(
        () -> {
          FormModel model = new FormModel(evaluator);
          ResultsPanel results = new ResultsPanel(model, pointer -> {});
          JLabel behind = PanelsTest.find(results.component(), JLabel.class, "behind");
          JTextArea report = PanelsTest.find(results.component(), JTextArea.class, "report");
          model.startFrom(Designs.example("parlor-line.json"));
          results.open("Report");
          evaluator.waiting.run();
          assertThat(behind.isVisible()).isFalse();
          assertThat(report.isEnabled()).isTrue();

          model.edit("/lines/0/flow/minimum", "100 gpm");
          assertThat(behind.isVisible()).isTrue();
          assertThat(report.isEnabled()).isFalse();
          assertThat(results.reportText()).isEmpty();

          evaluator.waiting.run();
          assertThat(behind.isVisible()).isFalse();
          assertThat(report.isEnabled()).isTrue();
          assertThat(report.getText()).contains("FAIL");
          return null;
        });
  }

  @Test
  void aPageThatNobodyLooksAtIsNotBuilt() throws Exception {
    onEventThread(
        () -> {
          FormModel model = new FormModel(Designs.AT_ONCE);
          ResultsPanel results = new ResultsPanel(model, pointer -> {});
          model.startFrom(Designs.example("parlor-line.json"));
          assertThat(report(results)).isEmpty();
          results.open("Report");
          assertThat(report(results)).contains("PASS");
          return null;
        });
  }

  @Test
  void aViewThatFailsKeepsNoOtherFromHearing() {
    FormModel model = new FormModel(Designs.AT_ONCE);
    List<String> heard = new ArrayList<>();
    model.listen(() -> heard.add("before"));
    model.listen(
        () -> {
          throw new IllegalStateException("a broken view");
        });
    model.listen(() -> heard.add("after"));

    assertThatThrownBy(() -> model.edit("/title", "x")).hasMessage("a broken view");
    assertThat(heard).containsExactly("before", "after");
  }

  @Test
  void anErrorOfTheMachineEndsTheWorkingState() throws Exception {
    CountDownLatch answered = new CountDownLatch(1);
    Outcome[] outcome = new Outcome[1];
    onEventThread(
        () -> {
          new BackgroundEvaluation(
                  design -> {
                    throw new StackOverflowError();
                  })
              .request(
                  design(),
                  done -> {
                    outcome[0] = done;
                    answered.countDown();
                  });
          return null;
        });
    assertThat(answered.await(10, TimeUnit.SECONDS)).isTrue();
    assertThat(outcome[0].state()).isEqualTo(Outcome.State.BROKEN);
    assertThat(outcome[0].message()).contains("StackOverflowError");
  }

  @Test
  void aSupersededEvaluationIsToldToStopAndOnlyOneRunsAtATime() throws Exception {
    CountDownLatch begun = new CountDownLatch(1);
    CountDownLatch stopped = new CountDownLatch(1);
    CountDownLatch answered = new CountDownLatch(1);
    List<String> answers = new ArrayList<>();
    BackgroundEvaluation[] evaluation = new BackgroundEvaluation[1];
    onEventThread(
        () -> {
          evaluation[0] =
              new BackgroundEvaluation(
                  design -> {
                    if (begun.getCount() > 0) {
                      begun.countDown();
                      try {
                        Thread.sleep(60_000);
                      } catch (InterruptedException e) {
                        stopped.countDown();
                      }
                    }
                    return null;
                  });
          evaluation[0].request(design(), done -> answers.add("first"));
          return null;
        });
    assertThat(begun.await(10, TimeUnit.SECONDS)).isTrue();
    onEventThread(
        () -> {
          evaluation[0].request(
              design(),
              done -> {
                answers.add("second");
                answered.countDown();
              });
          return null;
        });
    assertThat(stopped.await(10, TimeUnit.SECONDS)).isTrue();
    assertThat(answered.await(10, TimeUnit.SECONDS)).isTrue();
    assertThat(answers).containsExactly("second");
  }

  private static Design design() {
    return Designs.example("parlor-line.json").read().design().orElseThrow();
  }
}
