package sandslurry.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sandslurry.golden.Shipped.assess;

import java.util.List;
import org.junit.jupiter.api.Test;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.plant.PlantTotals;
import sandslurry.design.Documents;
import sandslurry.design.document.DesignDocument;
import sandslurry.fact.finding.Finding;
import sandslurry.study.UnitSizing.Aim;
import sandslurry.study.UnitSizing.Row;
import sandslurry.units.Measure;

/** Sizes of units: typed back they do what was wanted, and more is wanted of larger ones. */
class UnitSizingTest {
  private static double metres(String text) {
    return Measure.LENGTH.si(Measure.LENGTH.parse(text));
  }

  /** The plant of the tests without cyclone and lane: its box alone recovers sand. */
  private static DesignDocument boxPlant() {
    return Documents.parse(
        """
        {
          "formatVersion": 1,
          "sand": { "gradation": "ASTM C144" },
          "carrier": { "kind": "water", "temperature": "15 degC" },
          "plant": {
            "coldest": "4 degC",
            "pens": [
              { "name": "Pen", "stream": "manure", "cows": "300", "milk": "36 kg/d",
                "stalls": "300", "sandPerStall": "20 kg/d" }
            ],
            "waters": [ { "stream": "wash", "flow": "12 m3/h" } ],
            "units": [
              { "name": "Box", "kind": "box", "in": "manure, wash", "sand": "sand",
                "overflow": "over", "length": "2 m", "width": "1 m" },
              { "name": "Pit", "kind": "pit", "in": "over",
                "pumps": [ { "stream": "away", "flow": "20 m3/h" } ],
                "capacity": "60 m3", "weirVolume": "40 m3", "overflow": "rest" }
            ],
            "products": [
              { "stream": "sand", "use": "bedding" },
              { "stream": "away", "use": "waste" },
              { "stream": "rest", "use": "waste" }
            ],
            "targets": { "sandCapture": "80 %" }
          }
        }
        """);
  }

  @Test
  void aBoxTypedBackCapturesAndRecoversWhatWasWanted() {
    DesignDocument document = boxPlant();
    Assessment before = assess(document);
    double smaller = 0;
    for (double wanted : new double[] {0.7, 0.8, 0.9}) {
      UnitSizing sizing = UnitSizing.of(document, before, "Box", Aim.CAPTURE, wanted);
      assertThat(sizing.rows())
          .extracting(Row::feed)
          .contains("average", "coldest liquor", "greatest hour", "sandiest moment");
      Row average = sizing.rows().get(0);
      assertThat(average.measured().value()).isBetween(wanted, wanted + 0.005);
      // Cold liquor needs more room, and the row that governs is the largest.
      Row cold = sizing.rows().get(1);
      assertThat(metres(cold.typed().get(0))).isGreaterThan(metres(average.typed().get(0)));
      double largest = metres(sizing.governing().get(0).typed().get(0));
      assertThat(sizing.rows())
          .allSatisfy(row -> assertThat(metres(row.typed().get(0))).isLessThanOrEqualTo(largest));
      assertThat(metres(average.typed().get(0))).isGreaterThan(smaller);
      smaller = metres(average.typed().get(0));
      // Typed back, the plant recovers it: here its box is all that recovers sand.
      Assessment after = assess(average.in(document));
      assertThat(after.plant().orElseThrow().accounts().orElseThrow().capture().base())
          .isGreaterThanOrEqualTo(wanted - 1e-6);
    }
  }

  @Test
  void theRecoveryOfThePlantIsTheCaptureOfItsOnlyBoxAndMeetsItsTarget() {
    DesignDocument document =
        boxPlant()
            .with("/plant/targets/sandCapture", "90 %")
            .with("/plant/units/0/length", "0.8 m")
            .with("/plant/units/0/width", "0.4 m");
    Assessment before = assess(document);
    Row capture = UnitSizing.of(document, before, "Box", Aim.CAPTURE, 0.9).rows().get(0);
    Row recovery = UnitSizing.of(document, before, "Box", Aim.RECOVERY, 0.9).rows().get(0);
    assertThat(metres(recovery.typed().get(0)))
        .isCloseTo(metres(capture.typed().get(0)), within(0.01));
    // What the findings ask of the settling area is the same.
    assertThat(before.findings()).extracting(Finding::id).contains("plant.recovery-low");
    double more =
        before.plant().orElseThrow().accounts().orElseThrow().remedies().area().orElseThrow();
    double area = metres(recovery.typed().get(0)) * metres(recovery.typed().get(1));
    assertThat(area / 0.32).isCloseTo(1 + more, within(0.02 * (1 + more)));
    assertThat(assess(recovery.in(document)).findings())
        .extracting(Finding::id)
        .doesNotContain("plant.recovery-low");
  }

  @Test
  void retentionIsVolumeOverFlowAndAPitIsCleanedOutTheLessTheLargerItIs() {
    DesignDocument document = boxPlant();
    Assessment before = assess(document);
    UnitSizing hour = UnitSizing.of(document, before, "Pit", Aim.RETENTION, 3600);
    double flow =
        new PlantTotals(new sandslurry.assessment.plant.PlantModel(before.design()))
            .sum(
                before.plant().orElseThrow().main().balance().orElseThrow().streams(),
                List.of("over"))
            .volumeM3ps();
    double weir = Measure.VOLUME.si(Measure.VOLUME.parse(hour.rows().get(0).typed().get(1)));
    assertThat(weir).isCloseTo(flow * 3600, within(0.006 * weir));
    UnitSizing box = UnitSizing.of(document, before, "Box", Aim.RETENTION, 600);
    assertThat(box.rows()).extracting(Row::dimension).contains("water depth");
    assertThat(UnitSizing.of(document, before, "Box", Aim.INTERVAL, 86400).rows()).isEmpty();
    assertThat(UnitSizing.of(document, before, "Pit", Aim.CAPTURE, 0.5).rows()).isEmpty();
  }

  /** Little comes in a day, but the pump that starts and stops sends its 40 m3/h while it runs. */
  @Test
  void liquorStaysInABoxByTheFlowRateOfThePumpThatFeedsIt() {
    DesignDocument document =
        boxPlant()
            .with("/plant/units/0/in", "away")
            .with("/plant/units/1/in", "manure, wash")
            .with("/plant/units/1/pumps/0/flow", "40 m3/h")
            .with("/plant/products/1/stream", "over");
    UnitSizing box = UnitSizing.of(document, assess(document), "Box", Aim.RETENTION, 120);
    Row deeper =
        box.rows().stream()
            .filter(row -> row.dimension().equals("water depth") && row.feed().equals("average"))
            .findFirst()
            .orElseThrow();
    // 2 m of length, 1 m of width: 40 m3/h for 120 s are 1.333 m3.
    assertThat(metres(deeper.typed().get(0))).isCloseTo(0.667, within(0.007));
  }

  @Test
  void whereNoSizeReachesTheAimItSaysWhichGrainsAreLost() {
    DesignDocument document = boxPlant();
    Row none =
        UnitSizing.of(document, assess(document), "Box", Aim.CAPTURE, 0.9999999).rows().get(0);
    assertThat(none.typed()).isEmpty();
    assertThat(none.in(document)).isEqualTo(document);
    assertThat(none.measured().value()).isLessThan(0.9999999);
  }

  @Test
  void aSettlingLaneTypedBackCapturesWhatWasWantedAndLastsAsLong() {
    DesignDocument document = Documents.lane();
    Assessment before = assess(document);
    double now = before.lane().orElseThrow().cycle().likely().meanRecovery();
    double wanted = Math.min(0.98, now + 0.3 * (1 - now));
    for (Row row : UnitSizing.of(document, before, UnitSizing.LANE, Aim.CAPTURE, wanted).rows()) {
      if (!row.typed().isEmpty()) {
        assertThat(assess(row.in(document)).lane().orElseThrow().cycle().likely().meanRecovery())
            .isGreaterThanOrEqualTo(wanted);
      }
    }
    double interval = before.lane().orElseThrow().cycle().likely().intervalS().orElseThrow();
    List<Row> rows =
        UnitSizing.of(document, before, UnitSizing.LANE, Aim.INTERVAL, 1.5 * interval).rows();
    assertThat(rows).hasSize(3).anySatisfy(row -> assertThat(row.typed()).isNotEmpty());
    for (Row row : rows) {
      if (!row.typed().isEmpty()) {
        assertThat(
                assess(row.in(document))
                    .lane()
                    .orElseThrow()
                    .cycle()
                    .likely()
                    .intervalS()
                    .orElseThrow())
            .isGreaterThanOrEqualTo(1.5 * interval);
      }
    }
  }
}
