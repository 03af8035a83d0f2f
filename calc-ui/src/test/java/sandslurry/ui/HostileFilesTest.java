package sandslurry.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
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

  @TempDir private Path folder;

  static List<HostileDesigns.Hostile> hostile() {
    return HostileDesigns.all();
  }

  @ParameterizedTest
  @MethodSource("hostile")
  void aHostileFileIsRefusedInWordsOrJudged(HostileDesigns.Hostile hostile) throws IOException {
    Path file = Files.write(folder.resolve("design.json"), hostile.content());
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    var machine = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    long start = machine.getProcessCpuTime();
    int code = Main.run(new PrintWriter(out), new PrintWriter(err), "judge", file.toString());
    long worked = machine.getProcessCpuTime() - start;

    assertThat(Duration.ofNanos(worked)).as("time of the processor").isLessThan(LONGEST);
    assertThat(err.toString()).doesNotContainPattern(INSIDE).doesNotContainPattern(INVISIBLE);
    assertThat(out.toString()).doesNotContainPattern(INVISIBLE).doesNotContainPattern(NO_NUMBER);
    if (hostile.said().equals(HostileDesigns.JUDGED)) {
      assertThat(err.toString()).isEmpty();
      assertThat(code).isLessThan(3);
    } else if (!hostile.said().equals(HostileDesigns.EITHER)) {
      assertThat(code).as(err.toString()).isEqualTo(3);
    }
    if (code == 3) {
      assertThat(out.toString()).isEmpty();
      assertThat(err.toString().lines())
          .isNotEmpty()
          .hasSizeLessThanOrEqualTo(101)
          .allMatch(line -> line.length() < LONGEST_LINE)
          .doesNotHaveDuplicates();
    }
    if (code == 3 && !hostile.said().equals(HostileDesigns.EITHER)) {
      Pattern said = Pattern.compile(hostile.said());
      assertThat(err.toString().lines()).anyMatch(line -> said.matcher(line).find());
    }
  }

  @Test
  void aSmallMemoryIsEnoughForEveryOneOfThem() throws Exception {
    int number = 0;
    for (HostileDesigns.Hostile hostile : HostileDesigns.all()) {
      Files.write(folder.resolve(String.format("%03d.json", number++)), hostile.content());
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
    assertThat(said.lines()).hasSize(number).allMatch(line -> line.matches("[0-3] \\d+ .*"));
  }
}
