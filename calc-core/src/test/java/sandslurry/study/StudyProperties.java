package sandslurry.study;

import static org.assertj.core.api.Assertions.assertThat;
import static sandslurry.golden.Shipped.assess;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.line.LineState;
import sandslurry.assessment.line.RunState;
import sandslurry.design.document.DesignDocument;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.Severity;
import sandslurry.pipe.catalogue.PipeCatalogue;
import sandslurry.pipe.catalogue.PipeSystem;
import sandslurry.pipe.catalogue.StandardPipe;
import sandslurry.transport.friction.ClearLiquid.Regime;
import sandslurry.tries.Slow;

/** Sizing finds what trying pipe by pipe finds; a cure does what it says. */
class StudyProperties {
  private static final List<PipeSystem> SYSTEMS = List.of(PipeSystem.values());

  private static DesignDocument parse(String text) {
    return RandomLines.parse(text);
  }

  /** A line of the kind that dairies have; without a pipe when none is named. */
  private static DesignDocument line(Random random, Optional<StandardPipe> pipe) {
    double flow = Math.round(10 * Math.exp(1.2 + 3.2 * random.nextDouble())) / 10.0;
    String carrier =
        random.nextInt(4) > 0
            ? "\"kind\": \"water\", \"temperature\": \"" + (4 + random.nextInt(20)) + " degC\""
            : "\"kind\": \"manure\", \"temperature\": \"12 degC\", \"totalSolids\": \""
                + (1 + random.nextInt(5))
                + " %\"";
    return parse(
        String.format(
            Locale.ROOT,
            """
            {
              "formatVersion": 2,
              "title": "random line",
              "units": "%s",
              "sand": {"gradation": "%s"},
              "carrier": {%s},
              "lines": [
                {
                  "mixture": {"volumeFraction": "%s %%"},
                  "flow": {"minimum": "%s L/s", "design": "%s L/s", "maximum": "%s L/s"},
                  "route": {"runs": [{"name": "Line", %s "length": "%d m", "rise": "%d m"}]}
                }
              ]
            }
            """,
            random.nextBoolean() ? "US" : "metric",
            random.nextBoolean() ? "ASTM C33" : "ASTM C144",
            carrier,
            List.of("0.1", "1", "3", "8").get(random.nextInt(4)),
            flow,
            Math.round(11 * flow) / 10.0,
            Math.round(12 * flow) / 10.0,
            pipe.map(StudyProperties::typed).orElse(""),
            30 + random.nextInt(300),
            random.nextInt(6)));
  }

  private static String typed(StandardPipe pipe) {
    return String.format(
        "\"pipe\": {\"system\": \"%s\", \"size\": \"%s\", \"class\": \"%s\"},",
        pipe.system().standard(), pipe.size(), pipe.wallClass());
  }

  /** Against every pipe typed into the text of the design and read again. */
  @Slow
  @Property(tries = 200, shrinking = ShrinkingMode.OFF)
  void sizingMissesNoPipeThatFitsAndRejectsForTrueReasons(@ForAll long seed) {
    PipeSystem system = SYSTEMS.get(new Random(seed).nextInt(SYSTEMS.size()));
    TreeSet<String> fits = new TreeSet<>();
    for (StandardPipe pipe : PipeCatalogue.all()) {
      if (pipe.system() == system) {
        Random same = new Random(seed);
        same.nextInt(SYSTEMS.size());
        Assessment typed = assess(line(same, Optional.of(pipe)));
        if (typed.findings().stream().noneMatch(f -> f.severity() == Severity.FAIL)) {
          fits.add(pipe.words());
          // What fits keeps its sand in motion and bears its pressure, read from the numbers alone.
          assertThat(runs(typed))
              .filteredOn(run -> run.regime() == Regime.TURBULENT)
              .allSatisfy(
                  run ->
                      assertThat(run.leastVelocityMps())
                          .isGreaterThanOrEqualTo(run.deposition().orElseThrow().limitMps()));
        }
      }
    }
    Random same = new Random(seed);
    same.nextInt(SYSTEMS.size());
    Sizing sizing = Sizing.of(line(same, Optional.empty()), EnumSet.of(system));
    assertThat(sizing.problems()).isEmpty();
    assertThat(sizing.fits().stream().map(f -> f.pipe().words()).collect(Collectors.toSet()))
        .isEqualTo(fits);
    assertThat(sizing.rejected())
        .allSatisfy(
            pipe -> {
              Finding reason = pipe.gravest().orElseThrow();
              assertThat(reason.severity()).isEqualTo(Severity.FAIL);
              if (reason.topic() == Topic.PLUGGING && pipe.window().carriesFromM3ps().isPresent()) {
                double minimum = pipe.assessment().design().oneLine().flow().minimumM3ps();
                assertThat(pipe.window().carriesFromM3ps().getAsDouble()).isGreaterThan(minimum);
              }
            });
    ranked(sizing.fits());
  }

  /** The best verdict first, but what takes over four times the least power after all others. */
  private static void ranked(List<SizedPipe> fits) {
    double least = fits.stream().mapToDouble(f -> f.hydraulicW().orElse(0)).min().orElse(0);
    for (int i = 1; i < fits.size(); i++) {
      boolean before = fits.get(i - 1).hydraulicW().orElse(0) > 4 * least;
      boolean here = fits.get(i).hydraulicW().orElse(0) > 4 * least;
      assertThat(before && !here).isFalse();
      if (before == here) {
        assertThat(fits.get(i).verdict()).isGreaterThanOrEqualTo(fits.get(i - 1).verdict());
      }
    }
  }

  private static List<RunState> runs(Assessment assessment) {
    List<RunState> runs = new ArrayList<>();
    for (LineState state : assessment.line().orElseThrow().states()) {
      runs.addAll(state.runs());
    }
    return runs;
  }

  /** The text of a cure holds the very values that were typed. */
  @Slow
  @Property(tries = 500, shrinking = ShrinkingMode.OFF)
  void aCureTypedBackAsPrintedMendsItsFindingAndBringsNoneAsGrave(@ForAll long seed) {
    DesignDocument document = RandomLines.of(new Random(seed));
    Assessment before = assess(document);
    Optional<Cures> cures = Cures.of(document, before);
    if (cures.isEmpty()) {
      assertThat(before.findings())
          .filteredOn(f -> f.severity().compareTo(Severity.CAUTION) >= 0)
          .allSatisfy(
              f ->
                  assertThat(f.topic())
                      .isNotIn(Topic.PLUGGING, Topic.WEAR, Topic.PRESSURE, Topic.PUMP));
      return;
    }
    Finding finding = cures.get().finding();
    assertThat(cures.get().tried().isEmpty()).isNotEqualTo(cures.get().why().isEmpty());
    for (TriedCure cure : cures.get().tried()) {
      for (TriedCure.Edit edit : cure.edits()) {
        if (!edit.pointer().startsWith("/sand")) {
          assertThat(cure.text()).contains(edit.text());
        }
      }
      Assessment after = assess(parse(cure.typedInto(document).toString()));
      assertThat(after.verdict()).isEqualTo(cure.after());
      assertThat(after.findings())
          .filteredOn(f -> f.severity().compareTo(finding.severity()) >= 0)
          .allSatisfy(
              f -> {
                assertThat(f.topic() == finding.topic() && f.element().equals(finding.element()))
                    .isFalse();
                assertThat(before.findings())
                    .anyMatch(
                        was ->
                            was.topic() == f.topic()
                                && was.element().equals(f.element())
                                && was.severity().compareTo(f.severity()) >= 0);
              });
    }
  }
}
