package sandslurry.golden;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sandslurry.assessment.Assessment;

/**
 * Nothing of an example changes unnoticed: its verdict, its findings, every number and every line
 * of its report. A change that is meant renews the files with the one command in DEVELOPERS.md; the
 * difference then shows in the commit.
 */
class GoldenTest {
  private static final Path FOLDER =
      Path.of("..", "calc-core", "src", "test", "resources", "golden");
  private static final boolean RENEW = Boolean.getBoolean("golden.renew");

  /** Coarser than the nine digits kept, much finer than any change of a model. */
  private static final double SAME = 5e-9;

  /** What is left of a difference of equal numbers, in any unit of SI. */
  private static final double NOTHING = 1e-13;

  private static final int SHOWN = 8;

  static List<String> files() {
    return Shipped.files();
  }

  @ParameterizedTest
  @MethodSource("files")
  void anExampleGivesTheValuesKept(String file) throws IOException {
    Assessment assessment = Shipped.assessment(file);
    List<String> lines = new ArrayList<>();
    lines.add("verdict = " + assessment.verdict());
    ValueWalk.findings(assessment).forEach(finding -> lines.add("finding = " + finding));
    ValueWalk.of(assessment).forEach((path, value) -> lines.add(path + " = " + value));
    Path kept = FOLDER.resolve(file.replace(".json", ".values"));
    if (RENEW) {
      write(kept, String.join("\n", lines) + "\n");
    }
    List<String> differences = differences(Files.readAllLines(kept), lines);
    assertThat(differences.stream().limit(SHOWN).toList())
        .as("%s: %s values or findings differ, first of them", file, differences.size())
        .isEmpty();
  }

  @ParameterizedTest
  @MethodSource("files")
  void anExampleIsReportedAsKept(String file) throws IOException {
    String report = Shipped.report(file);
    Path kept = FOLDER.resolve(file.replace(".json", ".txt"));
    if (RENEW) {
      write(kept, report);
    }
    List<String> was = Files.readAllLines(kept);
    List<String> is = report.lines().toList();
    List<String> differences = new ArrayList<>();
    was.stream().filter(line -> !is.contains(line)).forEach(line -> differences.add("- " + line));
    is.stream().filter(line -> !was.contains(line)).forEach(line -> differences.add("+ " + line));
    assertThat(differences.stream().limit(SHOWN).toList())
        .as("%s: %s lines of the report differ, first of them", file, differences.size())
        .isEmpty();
    assertThat(is).as("%s: the order of the lines", file).isEqualTo(was);
  }

  /** A number that is new is no difference, a finding that is new is one. */
  private static List<String> differences(List<String> kept, List<String> found) {
    Map<String, String> was = byPath(kept);
    Map<String, String> is = byPath(found);
    List<String> differences = new ArrayList<>();
    was.forEach(
        (path, value) -> {
          String now = is.get(path);
          if (now == null) {
            differences.add("missing: " + path + " = " + value);
          } else if (!same(value, now)) {
            differences.add(path + " = " + value + ", now " + now);
          }
        });
    is.forEach(
        (path, value) -> {
          if (path.startsWith("finding") && !was.containsKey(path)) {
            differences.add("new: " + path);
          }
        });
    return differences;
  }

  private static Map<String, String> byPath(List<String> lines) {
    Map<String, String> byPath = new TreeMap<>();
    for (String line : lines) {
      int equals = line.lastIndexOf(" = ");
      if (line.startsWith("finding")) {
        byPath.merge(line, "1", (count, one) -> count + one);
      } else {
        byPath.put(line.substring(0, equals), line.substring(equals + 3));
      }
    }
    return byPath;
  }

  private static boolean same(String was, String is) {
    if (was.equals(is)) {
      return true;
    }
    try {
      double a = Double.parseDouble(was);
      double b = Double.parseDouble(is);
      return Math.abs(a - b) <= SAME * Math.max(Math.abs(a), Math.abs(b)) + NOTHING;
    } catch (NumberFormatException e) {
      return false;
    }
  }

  private static void write(Path file, String text) throws IOException {
    Files.createDirectories(FOLDER);
    Files.writeString(file, text);
  }
}
