package sandslurry.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import sandslurry.assessment.Assessment;
import sandslurry.design.Documents;
import sandslurry.design.document.DesignDocument;
import sandslurry.fact.finding.Severity;
import sandslurry.golden.Shipped;
import sandslurry.pipe.catalogue.PipeSystem;

/** Each sort of cure in a line that it mends, and a line that nothing mends. */
class CuresTest {
  private static final String SAND = "\"d50\": \"0.4 mm\", \"d85\": \"0.8 mm\"";
  private static final String WATER = "\"kind\": \"water\", \"temperature\": \"15 degC\"";
  private static final String LEVEL =
      "{\"name\": \"level\", \"bore\": \"100 mm\", \"roughness\": \"0.05 mm\", \"rating\": \"2"
          + " MPa\", \"length\": \"60 m\"}";

  private static DesignDocument line(
      String sand, String carrier, String percent, String flow, String runs) {
    return RandomLines.parse(
        """
        {
          "formatVersion": 2,
          "title": "a line",
          "units": "metric",
          "sand": {%s},
          "carrier": {%s},
          "lines": [
            {
              "mixture": {"volumeFraction": "%s %%"},
              "flow": {"minimum": "%s", "design": "%s", "maximum": "%s"},
              "route": {"runs": [%s]}
            }
          ]
        }
        """
            .formatted(sand, carrier, percent, flow, flow, flow, runs));
  }

  private static Assessment assess(DesignDocument document) {
    return Shipped.assessment(document);
  }

  /** The cures, each evaluated from scratch too. */
  private static Cures cures(DesignDocument document) {
    Cures cures = Cures.of(document, assess(document)).orElseThrow();
    assertThat(cures.tried())
        .allSatisfy(
            cure -> assertThat(assess(cure.typedInto(document)).verdict()).isEqualTo(cure.after()));
    return cures;
  }

  private static List<String> texts(Cures cures) {
    return cures.tried().stream().map(TriedCure::text).toList();
  }

  private static Predicate<String> starting(String words) {
    return text -> text.startsWith(words);
  }

  /** 3 in carries the sand; of 6 in few changes can be tried, and none near 6 in helps. */
  @Test
  void aLineTwiceTooWideGetsAPipeOfTheBoreThatCarries() throws Exception {
    DesignDocument wide =
        DesignDocument.load(Shipped.FOLDER.resolve("lines-of-a-plant.json"))
            .with("/lines/0/route/runs/0/pipe/size", "6 in");
    Cures cures = Cures.of(wide, assess(wide)).orElseThrow();
    assertThat(cures.tried())
        .anySatisfy(
            cure -> {
              assertThat(cure.text()).startsWith("use ").contains(" in place of 6 in");
              assertThat(cure.after()).isLessThan(Severity.FAIL);
            });
  }

  @Test
  void aRunGivenByItsBoreGetsANarrowerBoreOrAStandardPipe() {
    List<String> texts = texts(cures(line(SAND, WATER, "2", "14 L/s", LEVEL)));
    assertThat(texts)
        .anyMatch(starting("take a bore of "))
        .anyMatch(text -> text.startsWith("use ") && text.endsWith("in place of the bore given"));
  }

  @Test
  void onlyTheRampIsChangedWhereOnlyTheRampFails() {
    String ramp = LEVEL.replace("level", "ramp").replace("60 m", "8 m\", \"rise\": \"4 m");
    Cures cures = cures(line(SAND, WATER, "2", "17.5 L/s", LEVEL + ", " + ramp));
    assertThat(cures.finding().element()).isEqualTo("ramp");
    assertThat(cures.tried())
        .filteredOn(cure -> cure.text().startsWith("take a bore"))
        .isNotEmpty()
        .allSatisfy(
            cure -> {
              assertThat(cure.text()).endsWith("in the run \"ramp\"");
              assertThat(cure.edits())
                  .allMatch(edit -> edit.pointer().startsWith("/lines/0/route/runs/1/"));
            });
  }

  @Test
  void stonesAreScreenedOff() {
    String sand =
        "\"gradation\": [{\"size\": \"0.1 mm\", \"passing\": \"0 %\"},"
            + " {\"size\": \"0.2 mm\", \"passing\": \"70 %\"},"
            + " {\"size\": \"3 mm\", \"passing\": \"72 %\"},"
            + " {\"size\": \"8 mm\", \"passing\": \"100 %\"}]";
    Cures cures = cures(line(sand, WATER, "4", "15.5 L/s", LEVEL));
    assertThat(texts(cures)).anyMatch(starting("screen the sand at "));
  }

  @Test
  void aLaboratorysValueIsReplacedByTheSolidsOfTheDilution() {
    String laboratory =
        "\"kind\": \"manure\", \"temperature\": \"8 degC\", \"laboratory\":"
            + " {\"totalSolids\": \"18 %\", \"sand\": \"9 %\"}";
    Cures cures = cures(line(SAND, laboratory, "1", "24 L/s", LEVEL));
    assertThat(texts(cures)).anyMatch(starting("dilute the liquor to "));
  }

  @Test
  void lessSandIsACureWithItsHighestShare() {
    DesignDocument document =
        line(SAND, WATER, "5", "16.5 L/s", LEVEL).with("/lines/0/flow/highestSandFraction", "7 %");
    assertThat(texts(cures(document)))
        .anyMatch(
            text ->
                text.startsWith("bring no more than ") && text.contains(", at no time more than "));
  }

  /** Fine sand needs more velocity in warm liquid; what is kept cool enough passes. */
  @Test
  void aNarrowerRangeOfTemperatureIsACure() {
    DesignDocument document =
        line("\"d50\": \"0.15 mm\", \"d85\": \"0.2 mm\"", WATER, "10", "16.6 L/s", LEVEL);
    double least = least(document);
    DesignDocument just =
        document
            .with("/lines/0/flow/minimum", least + " L/s")
            .with("/lines/0/flow/design", least + " L/s")
            .with("/lines/0/flow/maximum", least + " L/s");
    assertThat(texts(cures(just))).anyMatch(starting("keep the liquid between "));
  }

  /** The lowest flow rate that carries the sand at the temperature of the carrier alone. */
  private static double least(DesignDocument document) {
    String only = document.text("/carrier/temperature");
    DesignDocument there =
        document.with("/lines/0/flow/coldest", only).with("/lines/0/flow/warmest", only);
    double flow = assess(there).line().orElseThrow().window().carriesFromM3ps().orElseThrow();
    return Math.ceil(1.002 * flow * 1e5) / 100;
  }

  @Test
  void besideAPlantTheLineIsMendedToo() {
    DesignDocument document =
        Documents.plant()
            .without("/plant/modes")
            .with("/lines/0/mixture/stream", "from box")
            .with("/lines/0/flow/minimum", "20 L/s")
            .with("/lines/0/flow/design", "22 L/s")
            .with("/lines/0/route/runs/0/pipe/system", "ASTM D1785")
            .with("/lines/0/route/runs/0/pipe/size", "6 in")
            .with("/lines/0/route/runs/0/pipe/class", "Sch 40")
            .with("/lines/0/route/runs/0/length", "90 m");
    assertThat(cures(document).tried()).isNotEmpty();
  }

  @Test
  void whereNothingMendsItItSaysWhatWasTried() {
    Cures cures = cures(line(SAND, WATER, "6", "0.6 L/s", LEVEL));
    assertThat(cures.tried()).isEmpty();
    assertThat(cures.why())
        .contains("Each leaves a finding as grave", "other bores", "standard pipes");
  }

  @Test
  void whereNoPipeFitsTheNearestIsShownWithWhatMakesItFit() throws Exception {
    DesignDocument document =
        DesignDocument.load(Path.of("..", "docs", "examples", "oversized-line-plugs.json"));
    Sizing sizing = Sizing.of(document, EnumSet.of(PipeSystem.ASTM_D1785));
    assertThat(sizing.fits()).isEmpty();
    Sizing.Nearest nearest = sizing.nearest(document).orElseThrow();
    assertThat(nearest.pipe().size()).isEqualTo("4 in");
    assertThat(nearest.cures().tried()).isNotEmpty();
    DesignDocument laid = Sizing.laid(document, nearest.pipe());
    assertThat(nearest.cures().tried())
        .allSatisfy(
            cure -> assertThat(assess(cure.typedInto(laid)).verdict()).isLessThan(Severity.FAIL));
  }
}
