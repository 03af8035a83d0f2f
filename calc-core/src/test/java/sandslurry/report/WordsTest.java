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

  private static final int WORDS_ON_AVERAGE = 25;

  /** No single sentence is longer. */
  private static final int LONGEST = 40;

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

  /** The page of checks is written from the names of tests, for whoever reads tests. */
  private static boolean isPage(Path file) {
    return file.toString().endsWith(".md") && !file.endsWith("checks.md");
  }

  @Test
  void noPageIsWrittenInPrivateWords() throws IOException {
    List<String> found = new ArrayList<>();
    List<Path> pages = new ArrayList<>(List.of(Path.of("..", "README.md")));
    try (Stream<Path> files = Files.walk(Path.of("..", "docs"))) {
      files.filter(WordsTest::isPage).sorted().forEach(pages::add);
    }
    for (Path file : pages) {
      Matcher matcher = Pattern.compile(PRIVATE).matcher(Files.readString(file));
      while (matcher.find()) {
        found.add(file + ": " + matcher.group());
      }
    }
    assertThat(found).isEmpty();
  }

  /** Every message of every finding, also of those that no example has. */
  @Test
  void noMessageIsInPrivateWordsOrLongSentences() throws IOException {
    List<String> found = new ArrayList<>();
    List<Path> messages;
    try (Stream<Path> files = Files.walk(Path.of("src", "main", "resources"))) {
      messages =
          files
              .filter(f -> f.toString().matches(".*\\.(properties|txt|equations)"))
              .sorted()
              .toList();
    }
    assertThat(messages).hasSizeGreaterThan(8);
    for (Path file : messages) {
      int words = 0;
      int sentences = 0;
      for (String line : Files.readAllLines(file)) {
        String text = line.replaceFirst("^[^=:]+[=:] ", "");
        if (line.startsWith("#") || text.isBlank()) {
          continue;
        }
        Matcher matcher = FORBIDDEN.matcher(text);
        while (matcher.find()) {
          found.add(file + ": " + matcher.group());
        }
        for (String sentence : text.split("(?<=[.:;]) ")) {
          int length = sentence.strip().split("\\s+").length;
          words += length;
          sentences++;
          if (length > LONGEST) {
            found.add(file + ": " + length + " words: " + sentence);
          }
        }
      }
      assertThat((double) words / sentences).as(file.toString()).isLessThan(WORDS_ON_AVERAGE);
    }
    assertThat(found).isEmpty();
  }

  /** What the program says in its own code: the form, the command line, reports. */
  @Test
  void noTextOfTheProgramIsInPrivateWords() throws IOException {
    Pattern text = Pattern.compile("\"((?:[^\"\\\\\n]|\\\\.)*)\"");
    List<String> found = new ArrayList<>();
    for (String module : List.of("calc-core", "calc-ui")) {
      Path code = Path.of("..", module, "src", "main", "java");
      try (Stream<Path> files = Files.walk(code)) {
        for (Path file : files.filter(f -> f.toString().endsWith(".java")).sorted().toList()) {
          Matcher texts = text.matcher(Files.readString(file));
          while (texts.find()) {
            Matcher matcher = Pattern.compile(PRIVATE).matcher(texts.group(1));
            if (matcher.find()) {
              found.add(file.getFileName() + ": " + texts.group(1));
            }
          }
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
