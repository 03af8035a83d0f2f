package sandslurry.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Files that try to break the program end with code 3 and a reason on a line, or with a verdict:
 * quickly, within a small memory, without a trace of the program's inside and without a number that
 * is none.
 */
class HostileFilesTest {
  private static final Duration LONGEST = Duration.ofSeconds(5);
  private static final int LONGEST_LINE = 900;
  private static final Pattern NO_NUMBER =
      Pattern.compile("(?<![\\w\"])(NaN|-?Infinity|null)(?![\\w\"])");
  private static final Pattern INSIDE =
      Pattern.compile(
          "Exception|\\tat |java\\.|sandslurry\\.|com\\.fasterxml|Unexpected error|JsonReadFeature"
              + "|ALLOW_|Source: ");

  /** What a terminal would obey, or that turns the direction of writing. */
  private static final Pattern INVISIBLE = Pattern.compile("[\\p{Cntrl}\\p{Cf}&&[^\\r\\n]]");

  private static final Map<String, Ended> ENDED = new HashMap<>();

  /** How one of them ended: its code, what it took of the processor, what it said. */
  private record Ended(int code, Duration worked, String out, String err) {}

  static List<HostileDesigns.Hostile> hostile() {
    return HostileDesigns.all();
  }

  /** A small memory is enough for every one of them, one after the other in one process. */
  @BeforeAll
  static void judged(@TempDir Path folder) throws Exception {
    List<HostileDesigns.Hostile> all = HostileDesigns.all();
    for (int i = 0; i < all.size(); i++) {
      Files.write(folder.resolve(name(i)), all.get(i).content());
    }
    Process process =
        new ProcessBuilder(
                ChildProgram.command(
                    List.of("-Xmx256m", "-XX:+ExitOnOutOfMemoryError"),
                    HostileDesigns.class,
                    folder.toString()))
            .redirectErrorStream(true)
            .start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor(1, TimeUnit.MINUTES)).isTrue();
    assertThat(process.exitValue()).as(said).isZero();
    assertThat(said.lines()).hasSameSizeAs(all).allMatch(line -> line.matches("[0-3] \\d+ .*"));
    List<String> lines = said.lines().toList();
    for (int i = 0; i < all.size(); i++) {
      String[] words = lines.get(i).split(" ");
      assertThat(words[2]).isEqualTo(name(i));
      ENDED.put(
          all.get(i).name(),
          new Ended(
              Integer.parseInt(words[0]),
              Duration.ofMillis(Long.parseLong(words[1])),
              Files.readString(folder.resolve(name(i) + ".out")),
              Files.readString(folder.resolve(name(i) + ".err"))));
    }
    assertThat(ENDED).hasSameSizeAs(all);
  }

  private static String name(int number) {
    return String.format("%03d.json", number);
  }

  @ParameterizedTest
  @MethodSource("hostile")
  void aHostileFileIsRefusedInWordsOrJudged(HostileDesigns.Hostile hostile) {
    Ended ended = ENDED.get(hostile.name());
    int code = ended.code();
    String out = ended.out();
    String err = ended.err();

    assertThat(ended.worked()).as("time of the processor").isLessThan(LONGEST);
    assertThat(err).doesNotContainPattern(INSIDE).doesNotContainPattern(INVISIBLE);
    assertThat(out).doesNotContainPattern(INVISIBLE).doesNotContainPattern(NO_NUMBER);
    if (hostile.said().equals(HostileDesigns.JUDGED)) {
      assertThat(err).isEmpty();
      assertThat(code).isLessThan(3);
    } else if (!hostile.said().equals(HostileDesigns.EITHER)) {
      assertThat(code).as(err).isEqualTo(3);
    }
    if (code == 3) {
      assertThat(out).isEmpty();
      assertThat(err.lines())
          .isNotEmpty()
          .hasSizeLessThanOrEqualTo(101)
          .allMatch(line -> line.length() < LONGEST_LINE)
          .doesNotHaveDuplicates();
    }
    if (code == 3 && !hostile.said().equals(HostileDesigns.EITHER)) {
      Pattern said = Pattern.compile(hostile.said());
      assertThat(err.lines()).anyMatch(line -> said.matcher(line).find());
    }
  }
}
