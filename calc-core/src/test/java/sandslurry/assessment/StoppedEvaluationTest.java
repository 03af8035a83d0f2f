package sandslurry.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.concurrent.CancellationException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sandslurry.design.Design;
import sandslurry.design.document.DesignDocument;

/** An evaluation that nobody waits for any more ends at once. */
class StoppedEvaluationTest {
  /** Far more than it takes, for a machine that has much else to do. */
  private static final long PATIENCE_MS = 20_000;

  private static Design example(String file) throws Exception {
    return DesignDocument.load(Path.of("..", "docs", "examples", file)).read().design().get();
  }

  @ParameterizedTest
  @ValueSource(strings = {"two-pumps-six-states.json", "closed-loop-dairy.json"})
  void anInterruptedThreadGivesNoAssessment(String file) throws Exception {
    Design design = example(file);
    Thread.currentThread().interrupt();
    assertThatThrownBy(() -> Evaluation.assess(design)).isInstanceOf(CancellationException.class);
    assertThat(Thread.interrupted()).as("the interrupt is left for the caller to see").isTrue();
  }

  @Test
  void aTaskThatIsCancelledEndsItsThread() throws Exception {
    FutureTask<Assessment> task = Evaluation.task(example("pen-to-storage.json"));
    Thread thread = new Thread(task);
    thread.start();
    TimeUnit.MILLISECONDS.sleep(50);
    task.cancel(true);
    thread.join(PATIENCE_MS);
    assertThat(thread.isAlive()).isFalse();
    assertThatThrownBy(task::get).isInstanceOf(CancellationException.class);
  }

  @Test
  void aTaskThatIsLeftAloneGivesTheAssessment() throws Exception {
    FutureTask<Assessment> task = Evaluation.task(example("parlor-line.json"));
    task.run();
    assertThat(task.get().verdict())
        .isEqualTo(Evaluation.assess(example("parlor-line.json")).verdict());
  }
}
