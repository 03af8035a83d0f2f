package sandslurry.speed;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sandslurry.assessment.Evaluation;
import sandslurry.design.Design;
import sandslurry.design.document.DesignDocument;

/**
 * What an evaluation costs. Times depend on the machine and are printed on demand only; memory
 * allocated does not, and grows with whatever is worked out for nothing.
 */
class EvaluationTimesTest {
  private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();
  private static final long WARM_NS = 4_000_000_000L;
  private static final int FEWEST = 5;
  private static final int WARMING = 20;

  private static Design design(String name) throws Exception {
    return DesignDocument.load(Path.of("..", "docs", "examples", name + ".json"))
        .read()
        .design()
        .orElseThrow();
  }

  /**
   * What an evaluation allocates today, stored: a tenth more fails. The numbers are those of the
   * compiler of a plain build, which keeps nothing off the heap and so gives the same each time;
   * the other compiler allocates a fifth to a quarter less.
   */
  @ParameterizedTest
  @CsvSource({
    "parlor-line, 1.3",
    "viscometer-readings, 5.1",
    "valley-of-dilution, 16.3",
    "thick-liquor-rotodynamic, 12.7",
    "two-pumps-six-states, 6.7"
  })
  void anEvaluationAllocatesNoMoreThanStored(String name, double storedMegabytes) throws Exception {
    Design design = design(name);
    long least = Long.MAX_VALUE;
    for (int i = 0; i < WARMING; i++) {
      long before = THREADS.getCurrentThreadAllocatedBytes();
      Evaluation.assess(design);
      least = Math.min(least, THREADS.getCurrentThreadAllocatedBytes() - before);
    }
    assertThat(least / 1e6).isLessThan(1.1 * storedMegabytes);
  }

  /** Prints the table of docs/performance.md. */
  @Test
  @EnabledIfSystemProperty(named = "times", matches = "true")
  void times() throws Exception {
    for (String name :
        List.of(
            "parlor-line",
            "viscometer-readings",
            "valley-of-dilution",
            "thick-liquor-rotodynamic",
            "two-pumps-six-states",
            "settling-lane",
            "closed-loop-dairy",
            "flushed-barn-lagoon",
            "pen-to-storage")) {
      Design design = design(name);
      long end = THREADS.getCurrentThreadCpuTime() + WARM_NS;
      List<Double> milliseconds = new ArrayList<>();
      while (THREADS.getCurrentThreadCpuTime() < end || milliseconds.size() < FEWEST) {
        long start = THREADS.getCurrentThreadCpuTime();
        Evaluation.assess(design);
        milliseconds.add((THREADS.getCurrentThreadCpuTime() - start) / 1e6);
      }
      // The second half is warm.
      List<Double> warm = milliseconds.subList(milliseconds.size() / 2, milliseconds.size());
      long before = THREADS.getCurrentThreadAllocatedBytes();
      Evaluation.assess(design);
      long bytes = THREADS.getCurrentThreadAllocatedBytes() - before;
      System.out.printf(
          Locale.ROOT,
          "| `%s` | %.3g ms | %.2g MB |%n",
          name,
          warm.stream().sorted().toList().get(warm.size() / 2),
          bytes / 1e6);
    }
  }
}
