package sandslurry.outside;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.assertj.core.api.AbstractDoubleAssert;
import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;

/**
 * A value of ours beside one from outside: asserted, and kept for the page of checks. Each run of
 * the tests leaves the values of a class in {@code target/checks}.
 */
public final class Ours extends AbstractDoubleAssert<Ours> {
  static final Path KEPT = Path.of("target", "checks");

  /** Between the ends of a published band. */
  static final String BAND = " to ";

  private static final Map<String, Set<String>> ROWS = new TreeMap<>();

  static {
    Runtime.getRuntime().addShutdownHook(new Thread(Ours::keep));
  }

  private Ours(double value) {
    super(value, Ours.class);
  }

  /**
   * Begins a comparison.
   *
   * @param value our value
   * @return to be compared with what was published
   */
  public static Ours ours(double value) {
    return new Ours(value);
  }

  @Override
  public Ours isCloseTo(double published, Offset<Double> offset) {
    row("" + published, String.format(Locale.ROOT, "%.3g", offset.value));
    return super.isCloseTo(published, offset);
  }

  @Override
  public Ours isCloseTo(double published, Percentage percentage) {
    row("" + published, String.format(Locale.ROOT, "%.3g %%", percentage.value));
    return super.isCloseTo(published, percentage);
  }

  @Override
  public Ours isBetween(Double least, Double most) {
    row(least + BAND + most, "the band");
    return super.isBetween(least, most);
  }

  private void row(String published, String tolerance) {
    StackWalker.StackFrame test =
        StackWalker.getInstance()
            .walk(
                frames ->
                    frames
                        .filter(f -> f.getClassName().startsWith("sandslurry."))
                        .filter(f -> !f.getClassName().equals(Ours.class.getName()))
                        .reduce((inner, outer) -> outer)
                        .orElseThrow());
    String method = test.getMethodName().replaceFirst("^lambda\\$(\\w+)\\$\\d+$", "$1");
    synchronized (ROWS) {
      ROWS.computeIfAbsent(test.getClassName(), name -> new LinkedHashSet<>())
          .add(method + "\t" + published + "\t" + actual + "\t" + tolerance);
    }
  }

  private static void keep() {
    synchronized (ROWS) {
      try {
        Files.createDirectories(KEPT);
        for (Map.Entry<String, Set<String>> rows : ROWS.entrySet()) {
          Files.write(KEPT.resolve(rows.getKey() + ".tsv"), rows.getValue());
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }
}
