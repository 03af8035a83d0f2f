package sandslurry.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Severity;
import sandslurry.golden.Shipped;
import sandslurry.report.block.Block;
import sandslurry.report.block.TextView;
import sandslurry.report.section.ReportFigures;

/** The answer is short, holds what decides, and says nothing twice. */
class AnswerTest {
  private static final int WIDTH = 100;
  private static final int LINES_OF_A_LINE = 60;
  private static final int LINES_OF_A_PLANT = 100;

  static List<String> files() {
    return Shipped.files();
  }

  @ParameterizedTest
  @MethodSource("files")
  void itFitsOnAScreen(String file) {
    Assessment assessment = Shipped.assessment(file);
    String text = new TextView(WIDTH).write(Answer.of(assessment));

    assertThat(text.lines())
        .hasSizeLessThanOrEqualTo(
            assessment.plant().isPresent() ? LINES_OF_A_PLANT : LINES_OF_A_LINE)
        .allMatch(line -> line.length() <= WIDTH);
    assertThat(text).contains(assessment.verdict().name(), "Not known", "Dangers", "licensed");
  }

  /** The first screen of the project shows what really comes out. */
  @Test
  void theReadmeShowsRealOutput() throws IOException {
    String readme = Files.readString(Path.of("..", "README.md"));
    String shown =
        readme
            .substring(readme.indexOf("## What you get"), readme.indexOf("`judge` prints"))
            .lines()
            .skip(2)
            .map(line -> line.length() > 4 ? line.substring(4) : line)
            .collect(Collectors.joining("\n"))
            .strip();

    assertThat(shown.lines()).hasSizeGreaterThan(7);
    assertThat(new TextView(WIDTH).write(Answer.of(Shipped.assessment("parlor-line.json"))))
        .contains(shown);
  }

  /** A plant is there to recover sand: its verdict begins with that, unless it fails elsewhere. */
  @ParameterizedTest
  @MethodSource("files")
  void theVerdictOfAPlantSaysWhatItRecovers(String file) {
    Assessment assessment = Shipped.assessment(file);
    if (assessment.plant().flatMap(PlantResult::accounts).isPresent()) {
      assertThat(Answer.sentence(assessment)).contains("of the sand flushed", "wanted");
      assertThat(
              assessment.findings().get(0).id().startsWith("plant.recovery")
                  || assessment.verdict() != Severity.FAIL)
          .isEqualTo(Answer.sentence(assessment).startsWith("Recovers"));
    }
  }

  /** What mends a finding is said once, beside it. */
  @ParameterizedTest
  @MethodSource("files")
  void noCureIsSaidTwice(String file) {
    Assessment assessment = Shipped.assessment(file);
    String text = new TextView(100_000).write(Answer.of(assessment));
    for (Finding finding : assessment.findings()) {
      if (finding.cure().length() > 30) {
        assertThat(text.split(Pattern.quote(finding.cure()), -1).length - 1)
            .as(finding.cure())
            .isLessThanOrEqualTo(1);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("files")
  void nothingIsSaidTwice(String file) {
    List<String> items =
        Answer.of(Shipped.assessment(file)).stream()
            .filter(Block.Items.class::isInstance)
            .flatMap(b -> ((Block.Items) b).items().stream())
            .toList();

    assertThat(items).doesNotHaveDuplicates();
  }

  /** Its limit and its head loss are by texts that were read. */
  @Test
  void whatWasReadIsNotNamed() {
    assertThat(FromMemory.sentence(Shipped.assessment("correlations-disagree.json"))).isEmpty();
  }

  /** Only what decides is named. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          parlor-line.json          | deposition velocity by Wilson, factor for the concentration; | head loss by
          line-slows-down.json      | friction by Wilson and Thomas, thickened sub-layer           | manure by
          settling-lane.json        | settling by Camp and Dobbins                                 | head loss by
          closed-loop-dairy.json    | cut size by Plitt, revised by Flintoff, Plitt and Turak      | head loss by
          """)
  void whatDecidesFromMemoryIsNamed(String file, String named, String not) {
    String sentence = FromMemory.sentence(Shipped.assessment(file)).orElseThrow();

    assertThat(sentence).contains("from memory, unverified", named).doesNotContain(not);
    assertThat(new TextView(WIDTH).write(Answer.of(Shipped.assessment(file))))
        .containsOnlyOnce("from memory, unverified: ");
  }

  @ParameterizedTest
  @MethodSource("files")
  void everyNumberOfTheFiguresIsANumber(String file) {
    Assessment assessment = Shipped.assessment(file);

    assertThat(ReportFigures.of(assessment))
        .isNotEmpty()
        .allSatisfy(
            figure -> {
              assertThat(figure.low()).isFinite().isLessThanOrEqualTo(figure.value());
              assertThat(figure.high()).isFinite().isGreaterThanOrEqualTo(figure.value());
              assertThat(figure.label()).isNotBlank();
            });
    assertThat(CsvView.write(Map.of(file, assessment)).lines())
        .hasSize(ReportFigures.of(assessment).size() + 1);
    assertThat(JsonView.write(Map.of(file, assessment)))
        .contains("\"verdict\" : \"" + assessment.verdict() + "\"");
  }

  /** The maximum flow rate of the parlor line is above its duty point. */
  @Test
  void aFlowRateThatThePumpDoesNotReachIsMarked() throws Exception {
    JsonNode judged =
        new ObjectMapper()
            .readTree(JsonView.write(Map.of("line", Shipped.assessment("parlor-line.json"))))
            .findValue("judged");

    assertThat(judged).hasSize(4);
    for (JsonNode flow : judged) {
      assertThat(flow.get("reached").asBoolean())
          .isEqualTo(!flow.get("at").asText().equals("maximum"));
    }
  }
}
