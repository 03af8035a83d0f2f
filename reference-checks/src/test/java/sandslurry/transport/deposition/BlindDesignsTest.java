package sandslurry.transport.deposition;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.Evaluation;
import sandslurry.assessment.line.LineState;
import sandslurry.assessment.line.RunState;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.DesignTextException;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.Severity;
import sandslurry.transport.friction.ClearLiquid.Regime;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/**
 * Forty designs that were written before their author had read the rule, each with what it must
 * come to and why. They are not to be tuned: {@code expectations.csv} stays as it was written,
 * {@code arguments.csv} says in a few words what to make of each verdict.
 */
class BlindDesignsTest {
  private static final Path FOLDER = Path.of("src/test/resources/blind-designs");

  /** Must plug by a large margin; is run every day; in between, of which nothing is demanded. */
  private static final List<String> CLASSES = List.of("plugs", "runs", "between");

  private static final Map<String, Blind> DESIGNS = new LinkedHashMap<>();

  /**
   * A design with its verdicts on settling sand.
   *
   * @param expected its class
   * @param run the run of pipe that decides, at the flow rate and the state that decide
   * @param before by the largest deposition velocity of any concentration, 25 % and 0.3 m/s
   * @param now by the rule, temperatures considered
   * @param whole verdict on the whole design
   * @param argument what to make of it
   */
  private record Blind(
      String expected,
      RunState run,
      Severity before,
      Severity now,
      Severity whole,
      String argument) {}

  @BeforeAll
  static void evaluate() throws IOException, DesignTextException {
    Map<String, String> arguments = new HashMap<>();
    rows("arguments.csv").forEach(row -> arguments.put(row[0], row[1]));
    for (String[] row : rows("expectations.csv").toList()) {
      Assessment assessment =
          Evaluation.assess(
              DesignDocument.parse(Files.readString(FOLDER.resolve(row[0] + ".json")))
                  .read()
                  .design()
                  .orElseThrow());
      List<RunState> runs =
          assessment.line().orElseThrow().states().stream()
              .map(LineState::runs)
              .flatMap(List::stream)
              .toList();
      DESIGNS.put(
          row[0],
          new Blind(
              row[1],
              runs.stream().min(BlindDesignsTest::closest).orElseThrow(),
              runs.stream().map(BlindDesignsTest::before).reduce(Severity.PASS, Severity::or),
              assessment.findings().stream()
                  .filter(f -> f.topic() == Topic.PLUGGING)
                  .map(Finding::severity)
                  .reduce(Severity.PASS, Severity::or),
              assessment.verdict(),
              arguments.getOrDefault(row[0], "")));
    }
  }

  /** The rows of a table whose last column may hold commas in quotation marks. */
  private static Stream<String[]> rows(String file) throws IOException {
    return Files.readAllLines(FOLDER.resolve(file)).stream()
        .skip(1)
        .map(line -> line.replace("\"", ""))
        .map(line -> line.split(",", file.startsWith("exp") ? 3 : 2));
  }

  private static int closest(RunState one, RunState other) {
    return Double.compare(share(one), share(other));
  }

  private static double share(RunState run) {
    return speed(run) / run.deposition().orElseThrow().requiredMps();
  }

  private static double speed(RunState run) {
    return run.leastVelocityMps();
  }

  /** Laminar flow is judged as it was. */
  private static Severity before(RunState run) {
    if (run.regime() != Regime.TURBULENT) {
      return run.severity();
    }
    double slug = run.deposition().orElseThrow().slugMps();
    return speed(run) < slug
        ? Severity.FAIL
        : speed(run) < requiredBefore(run) ? Severity.CAUTION : Severity.PASS;
  }

  private static double requiredBefore(RunState run) {
    double slug = run.deposition().orElseThrow().slugMps();
    return Math.max(1.25 * slug, slug + 0.3);
  }

  @Test
  void thereAreTenThatPlugFifteenThatRunAndFifteenBetween() throws IOException {
    assertThat(
            CLASSES.stream()
                .map(c -> DESIGNS.values().stream().filter(d -> d.expected().equals(c)).count())
                .toList())
        .isEqualTo(List.of(10L, 15L, 15L));
    try (Stream<Path> files = Files.list(FOLDER)) {
      assertThat(files.filter(f -> f.toString().endsWith(".json")).count()).isEqualTo(40);
    }
    assertThat(DESIGNS.values()).allSatisfy(design -> assertThat(design.argument()).isNotEmpty());
  }

  @Test
  void everyLineThatMustPlugFailsForItsSand() {
    assertThat(DESIGNS)
        .allSatisfy(
            (name, design) -> {
              if (design.expected().equals("plugs")) {
                assertThat(design.now()).as(name).isEqualTo(Severity.FAIL);
              }
            });
  }

  @Test
  void theTableOfVerdictsIsCurrent() throws IOException {
    StringBuilder table =
        new StringBuilder(
            "| design | velocity, m/s | required before / now, m/s | sand before | sand now"
                + " | whole design | |\n|---|---|---|---|---|---|---|\n");
    for (String expected : CLASSES) {
      DESIGNS.forEach(
          (name, design) -> {
            if (design.expected().equals(expected)) {
              table.append(row(name, design));
            }
          });
    }
    table.append('\n').append(counts());
    PagePart.isCurrent("blind designs", table.toString());
  }

  private static String row(String name, Blind design) {
    return String.join(
            " | ",
            "| " + name,
            number(speed(design.run())),
            design.run().regime() == Regime.TURBULENT
                ? number(requiredBefore(design.run()))
                    + " / "
                    + number(design.run().deposition().orElseThrow().requiredMps())
                : design.run().regime().words(),
            design.before().name(),
            design.now().name(),
            design.whole().name(),
            design.argument() + " |")
        + "\n";
  }

  private static String number(double velocityMps) {
    return String.valueOf(UnitSystem.METRIC.show(Kind.VELOCITY, velocityMps)).replace(" m/s", "");
  }

  /** One line a class: how many of its designs came to what. */
  private static String counts() {
    List<String> lines = new ArrayList<>();
    for (String expected : CLASSES) {
      Map<Severity, Long> counts =
          DESIGNS.values().stream()
              .filter(d -> d.expected().equals(expected))
              .collect(Collectors.groupingBy(Blind::now, Collectors.counting()));
      lines.add(
          expected
              + ": "
              + counts.getOrDefault(Severity.PASS, 0L)
              + " pass, "
              + counts.getOrDefault(Severity.CAUTION, 0L)
              + " caution, "
              + counts.getOrDefault(Severity.FAIL, 0L)
              + " fail");
    }
    return String.join("; ", lines) + " (sand alone).\n";
  }
}
