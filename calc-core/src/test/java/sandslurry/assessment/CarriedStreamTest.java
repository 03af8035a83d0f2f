package sandslurry.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sandslurry.assessment.materials.Materials;
import sandslurry.assessment.plant.CarriedStream;
import sandslurry.assessment.plant.CarriedStreams;
import sandslurry.assessment.plant.PlantModel;
import sandslurry.design.Design;
import sandslurry.design.Documents;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.material.MixtureSpec;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.Severity;
import sandslurry.golden.Shipped;
import sandslurry.material.sand.Gradation;
import sandslurry.plant.Constituents;
import sandslurry.plant.Stream;
import sandslurry.report.DesignReport;
import sandslurry.report.block.TextView;
import sandslurry.units.Measure;

/** A line that carries a stream of the plant. */
class CarriedStreamTest {
  private static DesignDocument line(String stream) {
    return Documents.plant()
        .with("/lines/0/mixture/stream", stream)
        .with("/lines/0/flow/minimum", "20 L/s")
        .with("/lines/0/flow/design", "22 L/s")
        .with("/lines/0/route/runs/0/pipe/system", "ASTM D1785")
        .with("/lines/0/route/runs/0/pipe/size", "4 in")
        .with("/lines/0/route/runs/0/pipe/class", "Sch 40")
        .with("/lines/0/route/runs/0/length", "90 m");
  }

  private static Assessment assess(DesignDocument document) {
    return reported(Shipped.assessment(document));
  }

  private static Assessment reported(Assessment assessment) {
    assertThat(new TextView(100).write(DesignReport.everything(assessment))).doesNotContain("NaN");
    return assessment;
  }

  private static List<CarriedStream> modes(DesignDocument document, Assessment assessment) {
    Design design = document.read().design().orElseThrow();
    return new CarriedStreams(new PlantModel(design), assessment.plant().orElseThrow())
        .of(((MixtureSpec.OfStream) design.oneLine().mixture()).stream());
  }

  @ParameterizedTest
  @ValueSource(strings = {"from box", "from lane", "underflow", "recycle", "manure"})
  void theLineCarriesThatMuchSandOfThatSizeInThatLiquor(String stream) {
    DesignDocument document = line(stream);
    Design design = document.read().design().orElseThrow();
    // What the plant sends does not ask who carries it.
    for (CarriedStream mode : modes(document, Shipped.assessment(Documents.plant()))) {
      if (!(mode.flowM3ps() > 0)) {
        continue;
      }
      Stream flows = mode.stream().orElseThrow();
      Design alone = mode.in(design).orElseThrow();
      reported(Evaluation.line(alone));
      Materials materials = Materials.of(alone);
      double share = materials.sandFraction(1);
      if (!(flows.sandKgps() > 0)) {
        assertThat(share).isZero();
        assertThat(materials.carrier().totalSolids().orElseThrow())
            .isCloseTo(flows.totalSolids(), within(1e-12));
        continue;
      }
      double mineral = flows.sandKgps() + flows.kgps(Constituents.MINERAL_FINES);
      assertThat(share * materials.sandDensityKgM3() * flows.volumeM3ps())
          .isCloseTo(mineral, within(1e-9 * mineral));
      assertThat(materials.finesShare())
          .isCloseTo(flows.kgps(Constituents.MINERAL_FINES) / mineral, within(1e-9));
      assertThat(materials.mixtureDensityKgM3(share))
          .isCloseTo(flows.densityKgM3(), within(1e-3 * flows.densityKgM3()));
      assertThat(materials.carrier().totalSolids().orElseThrow())
          .isCloseTo(flows.manureTotalSolids(), within(1e-12));
      double passing = 0;
      for (var size : flows.sandClasses()) {
        passing += size.massFraction();
        assertThat(materials.coarse().fractionPassing(size.highM()))
            .isCloseTo(passing, within(1e-9));
      }
      assertThat(materials.coarse().fractionPassing(Gradation.FINES_BOUNDARY_M)).isZero();
    }
  }

  @Test
  void nothingIsBetterThanInTheWorstMode() {
    DesignDocument document = line("from box");
    Assessment whole = assess(document);
    List<CarriedStream> modes = modes(document, whole);
    assertThat(modes).hasSize(5);
    for (CarriedStream mode : modes) {
      Design alone = mode.in(document.read().design().orElseThrow()).orElseThrow();
      for (Finding finding : Evaluation.line(alone).findings()) {
        assertThat(whole.findings())
            .filteredOn(f -> f.topic() == finding.topic())
            .anyMatch(f -> f.severity().compareTo(finding.severity()) >= 0);
      }
    }
  }

  @Test
  void aPitFilledInBatchesSendsMoreSandAtTimesThanInTheMean() {
    DesignDocument document =
        line("diluted")
            .with("/plant/units/0/in", "diluted, underflow")
            .insert(
                "/plant/units",
                8,
                """
                {
                  "name": "Mixing pit", "kind": "pit", "in": "manure, wash, recycle",
                  "pumps": [ { "stream": "diluted", "flow": "12 m3/h" } ],
                  "overflow": "spill", "capacity": "40 m3", "weirVolume": "35 m3",
                  "startVolume": "5 m3",
                  "mixer": { "diameter": "0.8 m", "speed": "400 rpm", "runningTime": "24 h" }
                }
                """)
            .with("/plant/units/0/in", "diluted, spill, underflow")
            .with("/plant/pens/0/scrapeInterval", "12 h")
            .with("/plant/pens/0/firstScraping", "6 h");
    List<CarriedStream> times = modes(document, assess(document));
    double sandiest = times.get(times.size() - 1).stream().orElseThrow().sandVolumeShare();
    for (CarriedStream time : times.subList(0, times.size() - 1)) {
      assertThat(sandiest).isGreaterThan(1.2 * time.stream().orElseThrow().sandVolumeShare());
    }
  }

  @Test
  void theSandThatCirculatesIsCoarserThanNewSand() {
    DesignDocument document = line("from box");
    List<CarriedStream> times = modes(document, assess(document));
    Design design = document.read().design().orElseThrow();
    assertThat(times.get(1).when()).endsWith("with the circulating sand");
    Materials fresh = Materials.of(times.get(0).in(design).orElseThrow());
    Materials circulating = Materials.of(times.get(1).in(design).orElseThrow());
    assertThat(circulating.finesShare()).isLessThan(fresh.finesShare());
  }

  @Test
  void aLineThatTakesLessThanThePlantSendsFails() {
    Assessment assessment =
        assess(
            line("from box")
                .without("/lines/0/flow/minimum")
                .with("/lines/0/flow/design", "1.5 L/s"));
    assertThat(assessment.findings())
        .anySatisfy(
            f -> {
              assertThat(f.severity()).isEqualTo(Severity.FAIL);
              assertThat(f.topic()).isEqualTo(Topic.DAY);
              assertThat(f.id()).isEqualTo("design.stream-too-much");
            });
  }

  @Test
  void theHoursOfTheLineMoveWhatThePlantSends() {
    DesignDocument document = line("from box");
    Assessment assessment = assess(document);
    double volume =
        modes(document, assessment).stream().mapToDouble(m -> m.lastsS() * m.flowM3ps()).sum();
    double hours =
        Measure.TIME
            .of(volume / 0.022, "s")
            .to(Measure.TIME.of(1, "h").getUnit())
            .getValue()
            .doubleValue();
    assertThat(assessment.findings())
        .anySatisfy(
            f ->
                assertThat(f.why())
                    .contains("the line runs " + String.format("%.3g", hours) + " h of the day"));
  }

  @Test
  void aCakeIsNoLiquorThatALineCouldBeJudgedWith() {
    Assessment assessment = assess(line("fibre"));
    assertThat(assessment.line()).isEmpty();
    assertThat(assessment.verdict()).isEqualTo(Severity.FAIL);
    assertThat(assessment.findings().get(0).what())
        .startsWith("The liquor is thicker ")
        .endsWith(" than any whose flow was measured.");
  }

  @Test
  void aPlantWithoutASteadyStateLeavesTheLineUnjudgedAndFailed() {
    DesignDocument document =
        line("from box")
            .without("/plant/units/6")
            .with("/plant/units/5/outlets/0/stream", "recycle")
            .with("/plant/units/5/outlets/0/share", "100 %")
            .with("/plant/units/5/outlets/1/share", "0 %")
            .with("/plant/units/6/in", "bleed")
            .without("/plant/modes");
    Assessment assessment = assess(document);
    assertThat(assessment.plant().orElseThrow().main().failure()).isPresent();
    assertThat(assessment.findings())
        .anySatisfy(
            f -> {
              assertThat(f.severity()).isEqualTo(Severity.FAIL);
              assertThat(f.topic()).isEqualTo(Topic.PLUGGING);
              assertThat(f.what()).startsWith("The line cannot be judged in the mode ");
            });
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          /lines/0/mixture/stream    | nowhere | is no stream of the plant; they are: manure, dry, wash
          /carrier/kind      | manure  | must be water, the water of the plant
          """)
  void whatDoesNotFitIsRefused(String pointer, String value, String message) {
    DesignDocument document = line("from box").with(pointer, value);
    if (value.equals("manure")) {
      document = document.with("/carrier/totalSolids", "3 %");
    }
    assertThat(document.read().problems()).hasSize(1);
    assertThat(document.read().problems().get(0).message()).startsWith(message);
  }

  @Test
  void aStreamNeedsAPlant() {
    DesignDocument document =
        Documents.line().without("/lines/0/mixture").with("/lines/0/mixture/stream", "from box");
    assertThat(document.read().problems()).hasSize(1);
    assertThat(document.read().problems().get(0).message())
        .isEqualTo("needs a plant that has such a stream");
  }
}
