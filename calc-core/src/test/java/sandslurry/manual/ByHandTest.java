package sandslurry.manual;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import sandslurry.fact.step.ExpressionValue;
import sandslurry.golden.Shipped;

/**
 * Every number worked by hand on a page of the theory is right, and those of the parlor line are
 * what the program finds.
 */
class ByHandTest {
  private static final Path THEORY = Path.of("..", "docs", "theory");
  private static final Pattern BLOCK =
      Pattern.compile("```(by-hand|by-hand-only)\n(.*?)```", Pattern.DOTALL);
  private static final Pattern INLINE = Pattern.compile("`([^`\n]+ = [^`\n]+ = [^`\n]+)`");
  private static final Pattern NUMBER = Pattern.compile("^(-?\\d+(?:\\.(\\d+))?(?:e(-?\\d+))?)");

  /** What the working calls by the letter of its source, and the pages by one of its own. */
  private static final Map<String, String> CALLED = Map.of("n_RZ", "n", "K_L", "K");

  /**
   * A line worked by hand.
   *
   * @param page where it is
   * @param symbol what is found
   * @param expression the numbers put in
   * @param value what comes of them
   * @param lastDigit what one in the last digit printed is worth
   */
  private record Line(
      String page, String symbol, String expression, double value, double lastDigit) {
    static Line of(String page, String text) {
      String[] parts = text.strip().split(" = ");
      assertThat(parts).as("%s: %s", page, text).hasSize(3);
      Matcher number = NUMBER.matcher(parts[2]);
      assertThat(number.find()).as("%s: %s", page, text).isTrue();
      int decimals = number.group(2) == null ? 0 : number.group(2).length();
      int power = number.group(3) == null ? 0 : Integer.parseInt(number.group(3));
      return new Line(
          page,
          parts[0],
          parts[1],
          Double.parseDouble(number.group(1)),
          Math.pow(10, power - decimals));
    }

    boolean is(double found) {
      return Math.abs(found - value) <= 1.01 * lastDigit;
    }
  }

  private static List<Path> pages() throws IOException {
    try (Stream<Path> files = Files.list(THEORY)) {
      return files.filter(file -> file.toString().endsWith(".md")).sorted().toList();
    }
  }

  private static List<Line> lines(boolean ofTheProgram) throws IOException {
    List<Line> lines = new ArrayList<>();
    for (Path page : pages()) {
      String text = Files.readString(page);
      String name = page.getFileName().toString();
      Matcher block = BLOCK.matcher(text);
      while (block.find()) {
        if (!ofTheProgram || block.group(1).equals("by-hand")) {
          block.group(2).lines().forEach(line -> lines.add(Line.of(name, line)));
        }
      }
      Matcher inline = INLINE.matcher(text);
      while (!ofTheProgram && inline.find()) {
        lines.add(Line.of(name, inline.group(1)));
      }
    }
    return lines;
  }

  @Test
  void everyLineGivesWhatItPrints() throws IOException {
    List<Line> lines = lines(false);
    assertThat(lines).hasSizeGreaterThan(80);
    assertThat(lines)
        .allSatisfy(
            line -> {
              double found = ExpressionValue.of(line.expression(), Map.of());
              assertThat(line.is(found)).as("%s: %s gives %s", line.page(), line, found).isTrue();
            });
  }

  @Test
  void theParlorLineIsWorkedAsByTheProgram() throws IOException {
    var steps = Shipped.assessment("parlor-line.json").working();
    List<Line> lines = lines(true);
    assertThat(lines).hasSizeGreaterThan(40);
    assertThat(lines)
        .allSatisfy(
            line ->
                assertThat(steps)
                    .as("%s: %s", line.page(), line)
                    .anyMatch(
                        step ->
                            step.symbol().equals(CALLED.getOrDefault(line.symbol(), line.symbol()))
                                && line.is(step.value())));
  }
}
