package sandslurry.outside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The page of all checks against values from outside is what the tests compared. It runs after all
 * others; {@code -Dchecks.renew=true} writes the page anew.
 */
class ChecksPageTest {
  private static final Path PAGE = Path.of("..", "docs", "checks.md");
  private static final Path SOURCES = Path.of("src", "test", "java");
  private static final double LEAST_PERCENT = 1e-4;
  private static final Pattern COMMENT =
      Pattern.compile(
          "/\\*\\*(.*?)\\*/|((?:^[ \\t]*//[^\\n]*\\n)+)", Pattern.DOTALL | Pattern.MULTILINE);

  /** One class of checks: its file, and the rows that it left. */
  private record Checks(String name, String code, List<String[]> rows) {}

  private static List<Checks> all() throws IOException {
    List<Checks> all = new ArrayList<>();
    try (Stream<Path> files = Files.walk(SOURCES)) {
      for (Path file : files.filter(f -> f.toString().endsWith("Test.java")).sorted().toList()) {
        String code = Files.readString(file);
        if (code.contains("Ours.ours;") && !file.endsWith("ChecksPageTest.java")) {
          String name = SOURCES.relativize(file).toString().replace(".java", "").replace('/', '.');
          Path kept = Ours.KEPT.resolve(name + ".tsv");
          assumeTrue(Files.exists(kept), "the page needs a run of all tests of this module");
          all.add(
              new Checks(
                  name, code, Files.readAllLines(kept).stream().map(r -> r.split("\t")).toList()));
        }
      }
    }
    return all;
  }

  @Test
  void thePageHoldsEveryComparison() throws IOException {
    List<Checks> all = all();
    int count = all.stream().mapToInt(checks -> checks.rows().size()).sum();
    StringBuilder page =
        new StringBuilder(
            """
            # Checks against the outside world

            Every value from outside that the tests compare ours with: where it was published, how near we come, and
            the tolerance with its reason; one of 0.01 %% or less is for rounding alone. Written from what the tests
            compared, %d values in all; where a source is marked from memory, nobody has read it beside the code.
            The factors of units stand beside those of NIST SP 811 in `UnitFactorsReferenceTest`.
            """
                .formatted(count));
    for (Checks checks : all) {
      page.append(text(checks));
    }
    if (Boolean.getBoolean("checks.renew")) {
      Files.writeString(PAGE, page);
    }
    assertThat(Files.readString(PAGE)).isEqualTo(page.toString());
  }

  /** What a comment on a tolerance speaks of. */
  private static final Pattern REASON = Pattern.compile("(?i)toleran|digit|round");

  private static final double ROUNDING = 1e-4;

  @Test
  void everyToleranceHasItsReason() throws IOException {
    List<String> without = new ArrayList<>();
    for (Checks checks : all()) {
      for (String[] row : checks.rows()) {
        String source = source(checks, row[0]);
        if (source.isEmpty() || isWide(row) && !REASON.matcher(source).find()) {
          without.add(checks.name() + "." + row[0]);
        }
      }
    }
    assertThat(without.stream().distinct()).isEmpty();
  }

  private static boolean isWide(String[] row) {
    if (row[1].contains(Ours.BAND)) {
      return false;
    }
    double tolerance = Double.parseDouble(row[3].replace(" %", ""));
    double unit = row[3].endsWith("%") ? 100 : Math.abs(Double.parseDouble(row[1]));
    return tolerance > 1.001 * ROUNDING * (unit > 0 ? unit : 1);
  }

  private static String text(Checks checks) {
    String simple = checks.name().substring(checks.name().lastIndexOf('.') + 1);
    StringBuilder text =
        new StringBuilder("\n## " + words(simple.replaceFirst("(Reference)?Test$", "")) + "\n");
    Map<String, List<String[]>> byTest = new LinkedHashMap<>();
    checks.rows().stream()
        .sorted((a, b) -> place(checks, a[0]) - place(checks, b[0]))
        .forEach(row -> byTest.computeIfAbsent(row[0], t -> new ArrayList<>()).add(row));
    byTest.forEach(
        (test, rows) -> {
          text.append("\n**").append(words(test)).append(".** ").append(source(checks, test));
          text.append("\n\n| published | ours | difference | tolerance |\n|---|---|---|---|\n");
          rows.forEach(row -> text.append(line(row)));
        });
    return text.toString();
  }

  private static String line(String[] row) {
    String[] band = row[1].split(Ours.BAND);
    if (band.length > 1) {
      return "| "
          + number(Double.parseDouble(band[0]), 3)
          + Ours.BAND
          + number(Double.parseDouble(band[1]), 3)
          + " | "
          + number(Double.parseDouble(row[2]), 3)
          + " | inside | the band |\n";
    }
    double published = Double.parseDouble(row[1]);
    double ours = Double.parseDouble(row[2]);
    double percent = 100 * (ours - published) / Math.abs(published);
    // What two processors may compute differently in the last place is not shown.
    String difference =
        published == 0
            ? number(ours, 2)
            : Math.abs(percent) < LEAST_PERCENT ? "none" : number(percent, 2) + " %";
    return "| "
        + number(published, 6)
        + " | "
        + number(ours, 6)
        + " | "
        + difference
        + " | "
        + row[3]
        + " |\n";
  }

  private static String number(double value, int digits) {
    String text = String.format(Locale.ROOT, "%." + digits + "g", value);
    return text.contains(".") && !text.contains("e") ? text.replaceFirst("\\.?0+$", "") : text;
  }

  private static int place(Checks checks, String test) {
    return checks.code().indexOf(" " + test + "(");
  }

  /** The comment above a test, else the one inside it, else that of its class. */
  private static String source(Checks checks, String test) {
    String code = checks.code();
    int at = Math.max(0, place(checks, test));
    int from = Math.max(code.lastIndexOf("\n  }\n", at), code.indexOf("class "));
    int end = code.indexOf("\n  }\n", at);
    return Stream.of(
            code.substring(from, Math.max(from, at)),
            code.substring(at, end),
            code.substring(0, code.indexOf("class ")))
        .map(ChecksPageTest::comment)
        .filter(text -> !text.isEmpty())
        .findFirst()
        .orElse("");
  }

  private static String comment(String code) {
    Matcher comment = COMMENT.matcher(code);
    StringBuilder all = new StringBuilder();
    while (comment.find()) {
      all.append(' ').append(comment.group(1) == null ? comment.group(2) : comment.group(1));
    }
    return all.toString()
        .replaceAll("(?m)^\\s*(\\*|//)", " ")
        .replaceAll("\\{@(?:code|link) ([^}]*)}", "$1")
        .replaceAll("</?[a-z]+>", "")
        .replaceAll("\\s+", " ")
        .replace("|", "\\|")
        .strip();
  }

  private static String words(String camel) {
    String spaced =
        camel
            .replaceAll("(?<=[a-z0-9])(?=[A-Z])|(?<=[A-Z])(?=[A-Z][a-z])", " ")
            .replaceAll("(?<=[a-z])(?=[0-9])", " ");
    return spaced.substring(0, 1).toUpperCase(Locale.ROOT)
        + spaced.substring(1).toLowerCase(Locale.ROOT);
  }
}
