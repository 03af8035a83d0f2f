package sandslurry.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.Evaluation;
import sandslurry.design.Design;
import sandslurry.design.RandomDesigns;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.DesignTextException;
import sandslurry.design.document.Problem;
import sandslurry.design.document.Reading;
import sandslurry.report.block.TextView;

/** Whatever is in a file, a person gets a report or a list of problems and never an exception. */
class NoExceptionProperties {
  private static final List<String> EXAMPLES = examples();
  private static final Pattern VALUE = Pattern.compile(": (\"[^\"]*\"|[0-9.]+)");

  /** Values that people and programs leave in files. */
  private static final List<String> SPOILT =
      List.of(
          "\"\"",
          "\" \"",
          "\"0\"",
          "\"-1 m\"",
          "\"1e308 m\"",
          "\"-0 %\"",
          "\"1e-320 mm\"",
          "\"NaN\"",
          "\"Infinity m\"",
          "\"5 furlongs\"",
          "\"10 m3/s\"",
          "\"0 gpm\"",
          "\"100 %\"",
          "\"50 %\"",
          "\"1/0 in\"",
          "\"1,5 m\"",
          "\"½ in\"",
          "\"6'\"",
          "\"3 mm\"",
          "\"0.001 mm\"",
          "\"1 km\"",
          "\"20 km\"",
          "\"45 degC\"",
          "\"-40 F\"",
          "\"2000 L/s\"",
          "\"0.05 L/s\"",
          "\"piston\"",
          "\"manure\"",
          "\"ASTM C33\"",
          "\"12 in\"",
          "\"yes\"",
          "null",
          "true",
          "17",
          "-3.5e7",
          "[]",
          "{}",
          "[1, \"a\", {}]",
          "{\"a\": {\"b\": [null]}}");

  private static List<String> examples() {
    try (Stream<Path> files = Files.list(Path.of("..", "docs", "examples"))) {
      return files
          .filter(file -> file.toString().endsWith(".json"))
          .sorted()
          .map(NoExceptionProperties::text)
          .toList();
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  /**
   * A value that is a name: a person may call a run or a pit "Infinity"; only numbers must not be.
   */
  private static final Pattern NAME =
      Pattern.compile(
          "\"(title|notes|name|stream|in|sand|overflow|underflow|cake|liquid|currency)\"$");

  private static void shown(Design design) {
    Assessment assessment = Evaluation.assess(design);
    String report = new TextView(100).write(DesignReport.everything(assessment));
    assertThat(report).doesNotContain("NaN").doesNotContain("Infinity");
    assertThat(sandslurry.report.Answer.sentence(assessment)).isNotBlank();
  }

  private static void readAndShown(String text) {
    DesignDocument document;
    try {
      document = DesignDocument.parse(text);
    } catch (DesignTextException refused) {
      assertThat(refused.getMessage()).isNotBlank();
      return;
    }
    Reading reading = document.read();
    for (Problem problem : reading.problems()) {
      assertThat(problem.field()).startsWith("/");
      assertThat(problem.message()).isNotBlank();
    }
    reading.design().ifPresent(NoExceptionProperties::shown);
  }

  @Property(tries = 350, maxDiscardRatio = 50)
  void anExampleWithSpoiltValuesIsShownOrRefusedInWords(
      @ForAll long seed, @ForAll @IntRange(min = 1, max = 4) int times) {
    Random random = new Random(seed);
    String text = EXAMPLES.get(random.nextInt(EXAMPLES.size()));
    for (int i = 0; i < times; i++) {
      List<String> values = VALUE.matcher(text).results().map(r -> r.group()).toList();
      Matcher matcher = VALUE.matcher(text);
      int which = random.nextInt(values.size());
      for (int k = 0; k <= which; k++) {
        matcher.find();
      }
      if (NAME.matcher(text.substring(0, matcher.start())).find()) {
        continue;
      }
      String with =
          random.nextInt(4) == 0
              ? values.get(random.nextInt(values.size()))
              : ": " + SPOILT.get(random.nextInt(SPOILT.size()));
      text = text.substring(0, matcher.start()) + with + text.substring(matcher.end());
    }
    readAndShown(text);
  }

  @Property(tries = 350, maxDiscardRatio = 50)
  void anExampleWithSpoiltCharactersIsShownOrRefusedInWords(
      @ForAll long seed, @ForAll @IntRange(min = 1, max = 5) int times) {
    Random random = new Random(seed);
    StringBuilder text = new StringBuilder(EXAMPLES.get(random.nextInt(EXAMPLES.size())));
    String characters = "{}[]\",:0123456789eE.-+ %/mft\n\\\u0000\ud83d\u00b3~";
    for (int i = 0; i < times; i++) {
      int at = random.nextInt(text.length());
      char character = characters.charAt(random.nextInt(characters.length()));
      switch (random.nextInt(4)) {
        case 0 -> text.deleteCharAt(at);
        case 1 -> text.insert(at, character);
        case 2 -> text.setCharAt(at, character);
        default -> text.delete(at, Math.min(text.length(), at + random.nextInt(60)));
      }
    }
    readAndShown(text.toString());
  }

  @Property(tries = 400, maxDiscardRatio = 50)
  void aDesignInTheCornersOfItsRangesIsShown(@ForAll long seed) throws DesignTextException {
    Optional<Design> design = DesignDocument.parse(RandomDesigns.extreme(seed)).read().design();
    Assume.that(design.isPresent());
    shown(design.get());
  }

  @Property(tries = 100, maxDiscardRatio = 50)
  void aPartThatIsLeftOutIsMissedInWords(@ForAll long seed) throws DesignTextException {
    Random random = new Random(seed);
    DesignDocument document = DesignDocument.parse(EXAMPLES.get(random.nextInt(EXAMPLES.size())));
    List<String> parts =
        List.of(
            "/sand",
            "/carrier",
            "/lines/0/mixture",
            "/lines/0/flow",
            "/lines/0/route",
            "/lines/0/route/runs",
            "/lines/0/route/runs/0",
            "/lines/0/route/runs/0/pipe",
            "/lines/0/pump",
            "/lines/0/pump/curve",
            "/lines/0/pump/curve/0",
            "/lane",
            "/criteria",
            "/sand/gradation",
            "/sand/gradation/0",
            "/units",
            "/title",
            "/formatVersion");
    for (int i = 0; i < 3; i++) {
      document = document.without(parts.get(random.nextInt(parts.size())));
    }
    readAndShown(document.toString());
  }
}
