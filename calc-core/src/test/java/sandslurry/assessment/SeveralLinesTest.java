package sandslurry.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sandslurry.golden.Shipped.assess;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import sandslurry.assessment.plant.PlantResult.Accounts;
import sandslurry.design.Documents;
import sandslurry.design.RandomDesigns;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.DesignTextException;
import sandslurry.design.document.Problem;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.Severity;
import sandslurry.golden.Shipped;
import sandslurry.golden.ValueWalk;
import sandslurry.plant.Figure;
import sandslurry.report.Answer;
import sandslurry.report.CsvView;
import sandslurry.report.DesignReport;
import sandslurry.report.JsonView;
import sandslurry.report.block.TextView;
import sandslurry.study.Cures;

/** A design of several lines: each is judged as if it were the only one, the worst decides. */
class SeveralLinesTest {
  private static final String PLANT = "lines-of-a-plant.json";

  private static DesignDocument with(DesignDocument document, String name, String line) {
    int place = document.size("/lines");
    return document.insert("/lines", place, line).with("/lines/" + place + "/name", name);
  }

  /** The line of a document under several names. */
  private static DesignDocument copies(DesignDocument document, String... names) {
    DesignDocument several = document.without("/lines");
    for (String name : names) {
      several = with(several, name, document.json("/lines/0"));
    }
    return several;
  }

  /** A line that carries its sand, and one at a third of its flow rate, where the sand settles. */
  private static DesignDocument one() {
    return copies(parlor(), "Wash", "Slow")
        .without("/lines/1/pump")
        .with("/lines/1/flow/minimum", "140 gpm")
        .with("/lines/1/flow/design", "150 gpm")
        .with("/lines/1/flow/maximum", "160 gpm");
  }

  private static DesignDocument parlor() {
    try {
      return DesignDocument.load(Shipped.FOLDER.resolve("parlor-line.json"));
    } catch (IOException | DesignTextException e) {
      throw new IllegalStateException(e);
    }
  }

  private static List<Problem> problems(DesignDocument document) {
    return document.read().problems();
  }

  private static String text(Assessment assessment) {
    return new TextView(100).write(DesignReport.everything(assessment));
  }

  private static void sameLine(Assessment one, Assessment other) {
    assertThat(one.verdict()).isEqualTo(other.verdict());
    assertThat(ValueWalk.findings(one)).isEqualTo(ValueWalk.findings(other));
    assertThat(ValueWalk.of(one)).isEqualTo(ValueWalk.of(other));
  }

  @Test
  void oneLineThatPlugsFailsTheDesignAndIsNamed() {
    Assessment whole = assess(one());
    assertThat(whole.lines().keySet()).containsExactly("Wash", "Slow");
    assertThat(whole.lines().get("Wash").verdict()).isNotEqualTo(Severity.FAIL);
    assertThat(whole.lines().get("Slow").verdict()).isEqualTo(Severity.FAIL);
    assertThat(whole.verdict()).isEqualTo(Severity.FAIL);
    assertThat(whole.findings().get(0).severity()).isEqualTo(Severity.FAIL);
    assertThat(whole.findings())
        .filteredOn(f -> f.severity() == Severity.FAIL)
        .isNotEmpty()
        .allSatisfy(f -> assertThat(f.element()).startsWith("Slow"))
        .anySatisfy(f -> assertThat(f.topic()).isEqualTo(Topic.PLUGGING));
    assertThat(whole.worstFirst().keySet()).containsExactly("Slow", "Wash");
    assertThat(Answer.sentence(whole)).startsWith("Slow");
    String report = text(whole);
    assertThat(report).contains("Slow").contains("Wash").doesNotContain("NaN");
  }

  @Test
  void aLineIsJudgedAsIfItWereTheOnlyOne() {
    Assessment whole = assess(one());
    int place = 0;
    for (Assessment line : whole.lines().values()) {
      sameLine(line, assess(one().ofLine(place)));
      place++;
    }
  }

  @Property(tries = 30)
  void theirOrderChangesNoLine(@ForAll long first, @ForAll long second) {
    DesignDocument base = Documents.parse(RandomDesigns.plausibleLine(first));
    String other = Documents.parse(RandomDesigns.plausibleLine(second)).json("/lines/0");
    DesignDocument there = with(copies(base, "A"), "B", other).without("/lines/1/dilution");
    DesignDocument back = there.without("/lines/0").insert("/lines", 1, there.json("/lines/0"));
    if (!problems(there).isEmpty()) {
      // The carrier of the one need not suit the states of the other.
      assertThat(problems(back)).hasSameSizeAs(problems(there));
      return;
    }
    Assessment forth = assess(there);
    Assessment reversed = assess(back);
    assertThat(forth.lines().keySet()).containsExactly("A", "B");
    assertThat(reversed.lines().keySet()).containsExactly("B", "A");
    forth.lines().forEach((name, line) -> sameLine(line, reversed.lines().get(name)));
    assertThat(reversed.verdict()).isEqualTo(forth.verdict());
    Severity worst = forth.lines().get("A").verdict().or(forth.lines().get("B").verdict());
    assertThat(forth.verdict().compareTo(worst)).isNotNegative();
    assertThat(ValueWalk.findings(reversed)).isEqualTo(ValueWalk.findings(forth));
  }

  @Test
  void copiesOfALineHaveEqualVerdicts() {
    Assessment alone = assess(Documents.line());
    String[] names = new String[40];
    for (int i = 0; i < names.length; i++) {
      names[i] = "Copy " + i;
    }
    DesignDocument several = copies(Documents.line(), names);
    Assessment whole = assess(several);
    assertThat(whole.lines()).hasSize(40);
    Map<String, String> values = ValueWalk.of(whole.lines().get("Copy 0"));
    whole
        .lines()
        .values()
        .forEach(
            line -> {
              assertThat(line.verdict()).isEqualTo(alone.verdict());
              assertThat(ValueWalk.of(line)).isEqualTo(values);
            });
    assertThat(values).isEqualTo(ValueWalk.of(alone));
    assertThat(whole.verdict()).isEqualTo(alone.verdict());
    assertThat(problems(with(several, "One more", Documents.line().json("/lines/0"))))
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.field()).isEqualTo("/lines");
              assertThat(problem.message()).contains("at most 40");
            });
  }

  @Test
  void twoLinesOfOneNameAreRefused() {
    assertThat(problems(copies(Documents.line(), "A", "A")))
        .extracting(Problem::field)
        .containsExactly("/lines/1/name");
    // The second of two lines without names is called Line 2.
    assertThat(problems(copies(Documents.line(), "Line 2", "B").without("/lines/1/name")))
        .extracting(Problem::field)
        .containsExactly("/lines/1/name");
    assertThat(problems(copies(Documents.line(), "A", "B").without("/lines/1/name"))).isEmpty();
  }

  @Test
  void aProblemOfALineNamesItsPlace() {
    assertThat(problems(one().with("/lines/1/flow/design", "150 psi")))
        .extracting(Problem::field)
        .containsExactly("/lines/1/flow/design");
    assertThat(problems(one().without("/lines/1/route")))
        .extracting(Problem::field)
        .containsExactly("/lines/1/route");
    assertThat(problems(Documents.line().without("/lines/0")))
        .extracting(Problem::field)
        .containsExactly("/lines");
  }

  @Test
  void theWorstLineIsMended() {
    DesignDocument document = one();
    Cures cures = Cures.of(document, assess(document)).orElseThrow();
    assertThat(cures.tried()).isNotEmpty();
    cures
        .tried()
        .forEach(
            cure ->
                assertThat(cure.edits())
                    .allSatisfy(
                        edit ->
                            assertThat(edit.pointer())
                                .matches("/lines/1/.*|/carrier/.*|/sand/.*")));
    DesignDocument mended = document;
    for (var edit : cures.tried().get(0).edits()) {
      mended = mended.with(edit.pointer(), edit.text());
    }
    assertThat(assess(mended).lines().get("Slow").verdict())
        .isEqualTo(cures.tried().get(0).after());
  }

  @Test
  void otherProgramsSeeWhichLineANumberIsOf() {
    Map<String, Assessment> results = Map.of("two.json", assess(one()));
    assertThat(JsonView.write(results)).contains("\"lines\"").contains("\"name\" : \"Slow\"");
    assertThat(CsvView.write(results))
        .contains(",lowest-flow-rate,")
        .contains(",Slow,")
        .contains(",\"Wash, Buried line\",");
  }

  @Test
  void theEnergyOfAPlantIsThatOfItsLinesAndMachines() {
    Assessment whole = Shipped.assessment(PLANT);
    Accounts accounts = whole.plant().orElseThrow().accounts().orElseThrow();
    List<Figure> energy = accounts.figures().groups().get("Energy");
    double sum = 0;
    double all = 0;
    List<String> lines = new ArrayList<>();
    for (Figure figure : energy) {
      if (figure.what().startsWith("all of them, mean")) {
        all = figure.range().base();
        break;
      }
      sum += figure.range().base();
      if (figure.what().startsWith("pumps of ")) {
        lines.add(figure.what());
      }
    }
    assertThat(sum).isCloseTo(all, within(1e-9 * all));
    assertThat(lines).hasSize(3);
    // Every pump of the plant has its line: none is left out and none is counted twice.
    assertThat(accounts.figures().notCounted()).isEmpty();
    assertThat(energy).noneMatch(figure -> figure.what().startsWith("pump of "));
  }

  @Test
  void withoutItsLinesThePumpsOfAPlantAreNotKnown() throws Exception {
    DesignDocument plant = DesignDocument.load(Shipped.FOLDER.resolve(PLANT)).without("/lines");
    Accounts accounts = assess(plant).plant().orElseThrow().accounts().orElseThrow();
    assertThat(accounts.figures().notCounted()).hasSize(2);
    assertThat(accounts.figures().groups().get("Energy"))
        .anyMatch(figure -> figure.what().startsWith("pump of Cyclone"));
    // A line changes nothing in the balance of the plant.
    Accounts with = Shipped.assessment(PLANT).plant().orElseThrow().accounts().orElseThrow();
    assertThat(with.capture()).isEqualTo(accounts.capture());
    assertThat(with.liquor()).isEqualTo(accounts.liquor());
  }

  @Test
  void everyFindingOnALineIsInTheWhole() {
    Assessment whole = Shipped.assessment(PLANT);
    whole
        .lines()
        .forEach(
            (name, line) -> {
              for (Finding finding : line.findings()) {
                assertThat(whole.findings())
                    .anyMatch(
                        f ->
                            f.id().equals(finding.id())
                                && f.severity() == finding.severity()
                                && (f.element().equals(finding.element())
                                    || f.element().startsWith(name)));
              }
            });
  }
}
