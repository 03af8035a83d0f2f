package sandslurry.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.assessment.plant.PlantResult.WaterSizing;
import sandslurry.design.Documents;
import sandslurry.design.document.DesignDocument;
import sandslurry.fact.finding.Severity;
import sandslurry.golden.Shipped;
import sandslurry.plant.Stream;
import sandslurry.plant.account.StorageAccount;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.schedule.UnitDay;
import sandslurry.plant.unit.PitUnit;
import sandslurry.report.DesignReport;
import sandslurry.report.block.TextView;

/** Flush, batches, pits that settle, storages that give back, and the sizing of purge and water. */
class PlantFlushTest {
  private static Assessment assess(DesignDocument document) {
    return Shipped.assessment(document);
  }

  private static void says(Assessment assessment, Severity severity, String element, String id) {
    assertThat(assessment.findings())
        .anySatisfy(
            finding -> {
              assertThat(finding.element()).isEqualTo(element);
              assertThat(finding.id()).isEqualTo("plant." + id);
              assertThat(finding.severity()).isEqualTo(severity);
            });
  }

  private static String text(Assessment assessment) {
    return new TextView(100).write(DesignReport.everything(assessment)).replaceAll("\\s+", " ");
  }

  private static DesignDocument plant() {
    // A short lane is soon full of sand at rest, a long one is long searched for it.
    return Documents.flushedPlant()
        .without("/plant/modes")
        .with("/plant/units/1/reaches/0/length", "10 m");
  }

  @Test
  void aFlushedPenIsJudgedFedInBatchesAndItsStorageIsCountedOnce() {
    Assessment assessment = assess(plant());
    says(assessment, Severity.PASS, "Flush of Pen", "flush");
    says(assessment, Severity.PASS, "Flush of Pen", "flush-moves");
    says(assessment, Severity.PASS, "Flush of Pen", "flush-refills");
    PlantResult result = assessment.plant().orElseThrow();
    SteadyBalance balance = result.main().balance().orElseThrow();
    // The net inflow of the storage is what comes in a day less what is pumped back; the day
    // repeats itself, so that its pool keeps next to nothing.
    StorageAccount account = result.accounts().orElseThrow().storages().get("Storage");
    Map<String, Stream> daily = result.days().last().orElseThrow().meanFlows();
    double comes =
        assessment.design().plant().orElseThrow().pits().stream()
            .filter(pit -> pit.name().equals("Pool of Storage"))
            .flatMap(pit -> pit.inlets().stream())
            .mapToDouble(stream -> daily.get(stream).volumeM3ps())
            .sum();
    double back = balance.stream("flush water").volumeM3ps();
    assertThat(result.accounts().orElseThrow().basis().byDay()).isTrue();
    assertThat(back).isCloseTo(2.5 / 3600, within(1e-12));
    assertThat(account.months().get(0).inflowM3ps()).isCloseTo(comes - back, within(1e-6 * comes));
    // What settles in it makes the liquor that goes back thinner than what comes.
    assertThat(balance.stream("flush water").totalSolids())
        .isLessThan(balance.feed("Pool of Storage").totalSolids());
    assertThat(balance.stream("flush water").sandKgps()).isZero();
    UnitDay box = result.days().last().orElseThrow().units().get("Box");
    assertThat(box.peakOverMean()).isGreaterThan(20);
    assertThat(result.days().days()).allMatch(day -> day.imbalance() < 1e-9);
    double fed = balance.stream("manure of Pen").massKgps();
    assertThat(result.days().last().orElseThrow().meanFlows().get("manure of Pen").massKgps())
        .isCloseTo(fed, within(1e-9 * fed));
    assertThat(text(assessment))
        .contains(
            "Pens are scraped or flushed at the hours of the inputs",
            "Manure of Dry barn is fed evenly");
  }

  @Test
  void aFlushThatIsTooSlowAndNotRefilledIsTold() {
    Assessment assessment =
        assess(
            plant()
                .with("/plant/pens/0/flush/slope", "0.2 %")
                .with("/plant/units/7/pumps/0/flow", "1 m3/h")
                .without("/plant/pens/0/firstScraping"));
    says(assessment, Severity.CAUTION, "Flush of Pen", "flush-less");
    says(assessment, Severity.CAUTION, "Flush of Pen", "flush-short");
    assertThat(text(assessment)).contains("Manure is fed evenly");
  }

  @Test
  void aPitWithoutAMixerKeepsSandAndAMixerThatSuspendsAllKeepsNone() {
    DesignDocument still =
        Documents.plant().without("/plant/modes").without("/plant/units/6/mixer");
    Assessment assessment = assess(still.with("/plant/units/1/reaches/0/length", "2 m"));
    PlantResult result = assessment.plant().orElseThrow();
    double settles =
        result.main().balance().orElseThrow().stream(PitUnit.settledIn("Pit")).sandKgps();
    assertThat(settles).isPositive();
    assertThat(assessment.findings())
        .anyMatch(f -> f.element().equals("Pit") && f.id().equals("plant.sand-in-pit"));
    Assessment mixed =
        assess(
            Documents.plant()
                .without("/plant/modes")
                .with("/plant/units/1/reaches/0/length", "2 m")
                .with("/plant/units/6/mixer/speed", "1500 rpm"));
    says(mixed, Severity.NOTE, "Pit", "none-settles");
    assertThat(
            mixed.plant().orElseThrow().main().balance().orElseThrow().stream("settled in Pit")
                .massKgps())
        .isZero();
  }

  @Test
  void whatIsSizedReallyDoesItAndWhatNoAmountDoesIsSaid() {
    DesignDocument document =
        Documents.plant()
            .without("/plant/modes")
            .with("/plant/units/0/length", "0.6 m")
            .with("/plant/units/0/width", "0.5 m")
            .with("/plant/units/1/reaches/0/length", "2 m")
            .with("/plant/units/1/reaches/0/width", "1 m");
    Assessment never = assess(document.with("/plant/targets/sandCapture", "100 %"));
    says(never, Severity.NOTE, "purge and fresh water", "water-none");
    double capture = never.plant().orElseThrow().accounts().orElseThrow().capture().base();
    String little = Math.min(99, (capture + 0.002) * 100) + " %";
    WaterSizing sizing =
        assess(document.with("/plant/targets/sandCapture", little)).plant().orElseThrow().sizing();
    assertThat(sizing.looked()).isTrue();
    if (sizing.replaced().isPresent()) {
      assertThat(sizing.replaced().get().capture()).isCloseTo(capture + 0.002, within(1e-6));
      assertThat(sizing.replaced().get().surplusM3ps())
          .isGreaterThan(sizing.replaced().get().surplusBeforeM3ps());
    }
    assertThat(sizing.added().isPresent() || sizing.replaced().isPresent()).isTrue();
  }
}
