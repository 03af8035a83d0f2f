package sandslurry.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import sandslurry.fact.finding.Finding;
import sandslurry.golden.Shipped;
import sandslurry.report.block.Block;
import sandslurry.report.block.TextView;

/** What a person reads is in the words of the trade, in short sentences. */
class WordsTest {
  /** Private words, each with the trade's word beside it. */
  private static final String PRIVATE =
      String.join(
          "|",
          // "is below", "is above", "is closest"
          "\\bstands? (worst|best|as|at|shut|close)\\b",
          // "given", "shown", "needed", "required"
          "\\b(told|tells|asked|asks|reckoned|believed|hopeful)\\b",
          "\\bto be said\\b",
          "so much\\b",
          // "average over one cleaning cycle"
          "meant from",
          // "minimum pressure", "column separation"
          "low half|\\bcolumns? (that )?parts?\\b",
          // "required velocity"
          "\\bto pass\\b",
          // "common practice, no source" or "from memory, unverified"
          "as quoted in",
          // "underflow", "bedding sand use", "settled bed"
          "dirty end|bedded again");

  /** With keys of the file and words of our libraries. */
  private static final Pattern FORBIDDEN =
      Pattern.compile(
          PRIVATE + "|volumeFraction|totalSolids|StreamReadFeature|[a-z]Kgps|[a-z]M3ps");

  /** Pages that are written from the program, whose words are held there. */
  private static final List<String> WRITTEN =
      List.of("checks.md", "correlations.md", "design-file.md", "findings.md");

  private static final int WORDS_ON_AVERAGE = 25;

  @Test
  void noExampleIsReportedInPrivateWords() {
    List<String> found = new ArrayList<>();
    for (String file : Shipped.files()) {
      List<Block> blocks = DesignReport.everything(Shipped.assessment(file));
      List<Block> working = DesignReport.working(Shipped.assessment(file));
      List<Block> report = blocks.subList(0, blocks.size() - working.size());
      String text = new TextView(2000).write(report);
      Matcher matcher = FORBIDDEN.matcher(text);
      while (matcher.find()) {
        int from = Math.max(0, matcher.start() - 50);
        int to = Math.min(text.length(), matcher.end() + 30);
        found.add(matcher.group() + " :: " + text.substring(from, to).replace('\n', ' '));
      }
    }
    assertThat(found.stream().distinct().toList()).isEmpty();
  }

  @Test
  void noPageIsWrittenInPrivateWords() throws IOException {
    List<String> found = new ArrayList<>();
    try (Stream<Path> files = Files.walk(Path.of("..", "docs"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".md")).sorted().toList()) {
        if (WRITTEN.contains(file.getFileName().toString())) {
          continue;
        }
        Matcher matcher = Pattern.compile(PRIVATE).matcher(Files.readString(file));
        while (matcher.find()) {
          found.add(file + ": " + matcher.group());
        }
      }
    }
    assertThat(found).isEmpty();
  }

  @Test
  void aSentenceOfAFindingHasTwentyFiveWordsOnAverage() {
    int words = 0;
    int sentences = 0;
    for (String file : Shipped.files()) {
      for (Finding finding : Shipped.assessment(file).findings()) {
        for (String text : List.of(finding.what(), finding.why(), finding.cure())) {
          for (String sentence : text.split("(?<=[.:;]) ")) {
            if (!sentence.isBlank()) {
              words += sentence.strip().split("\\s+").length;
              sentences++;
            }
          }
        }
      }
    }
    assertThat((double) words / sentences).isLessThan(WORDS_ON_AVERAGE);
  }
}
