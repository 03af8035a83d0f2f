package sandslurry.speed;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.Callable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.Evaluation;
import sandslurry.design.Design;
import sandslurry.design.document.DesignDocument;

/** How many powers, logarithms and the like an evaluation needs: the same on every machine. */
class CallsTest {
  /** What is counted, so that the counting loader can load it in a world of its own. */
  public static final class Counted implements Callable<Assessment> {
    private final Design design;

    /**
     * Reads a design.
     *
     * @param file its file
     * @throws Exception if it cannot be read
     */
    public Counted(Path file) throws Exception {
      design = DesignDocument.load(file).read().design().orElseThrow();
    }

    @Override
    public Assessment call() {
      return Evaluation.assess(design);
    }
  }

  /** Counts of today, in thousands: a tenth more fails. */
  @ParameterizedTest
  @CsvSource({
    "parlor-line, 12.6",
    "viscometer-readings, 107",
    "valley-of-dilution, 642",
    "thick-liquor-rotodynamic, 284",
    "two-pumps-six-states, 36.2"
  })
  void anEvaluationCallsNoMoreThanStored(String name, double storedThousands) throws Exception {
    Callable<?> counted =
        (Callable<?>)
            new CountingLoader()
                .loadClass(Counted.class.getName())
                .getConstructor(Path.class)
                .newInstance(Path.of("..", "docs", "examples", name + ".json"));
    // The first evaluation also makes constants.
    counted.call();
    CountingLoader.taken();
    counted.call();
    Map<String, Integer> calls = CountingLoader.taken();
    int all = calls.values().stream().mapToInt(Integer::intValue).sum();
    if (Boolean.getBoolean("calls")) {
      System.out.println(name + ": " + all);
      calls.entrySet().stream()
          .sorted(Map.Entry.<String, Integer>comparingByValue().reversed())
          .limit(25)
          .forEach(entry -> System.out.println("  " + entry.getValue() + " " + entry.getKey()));
    }
    assertThat(all / 1e3).isLessThan(1.1 * storedThousands);
  }
}
