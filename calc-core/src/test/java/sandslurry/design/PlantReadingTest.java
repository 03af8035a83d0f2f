package sandslurry.design;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.Reading;
import sandslurry.design.plant.PlantSpec;
import sandslurry.plant.unit.BoxUnit;
import sandslurry.plant.unit.PlantUnit;

/** Reading of the part "plant". */
class PlantReadingTest {
  private static void refuses(DesignDocument document, String field, String message) {
    assertThat(document.read().problems())
        .anySatisfy(
            problem -> {
              assertThat(problem.field()).isEqualTo(field);
              assertThat(problem.message()).contains(message);
            });
  }

  @Test
  void aPlantAloneMakesADesign() {
    Reading reading = Documents.plant().read();
    assertThat(reading.problems()).isEmpty();
    PlantSpec plant = reading.design().orElseThrow().plant().orElseThrow();
    assertThat(plant.units()).hasSize(8);
    assertThat(plant.modes()).hasSize(2);
  }

  @Test
  void everythingThatIsWrongIsToldAtOnceWithItsPlace() {
    DesignDocument document =
        Documents.plant()
            .with("/plant/pens/0/milk", "36")
            .with("/plant/pens/0/sandPerStall/low", "40 kg/d")
            .with("/plant/units/0/length", "-3 m")
            .with("/plant/units/1/reaches/0/width", "2 kg")
            .with("/plant/units/2/apex", "400 mm")
            .with("/plant/units/3/openning", "10 mm")
            .with("/plant/units/5/outlets/0/share", "70 %")
            .with("/plant/units/6/weirVolume", "70 m3")
            .with("/plant/units/7/in", "surplus, nowhere")
            .with("/plant/modes/1/to", "22 h")
            .with("/plant/products/0/use", "feed")
            .with("/plant/targets/sandCapture", "120 %");
    refuses(document, "/plant/pens/0/milk", "has no unit");
    refuses(document, "/plant/pens/0/sandPerStall", "needs \"low\"");
    refuses(document, "/plant/units/0/length", "must be 0.2 m to 1000 m");
    refuses(document, "/plant/units/1/reaches/0/width", "mass");
    refuses(document, "/plant/units/2/body", "the apex");
    refuses(document, "/plant/units/3/openning", "is not a field here");
    refuses(document, "/plant/units/5/outlets", "sum 1");
    refuses(document, "/plant/units/6/weirVolume", "below the capacity");
    refuses(document, "/plant/units/7/name", "\"nowhere\" flows into");
    refuses(document, "/plant/units/5/name", "\"bleed\" leaves");
    refuses(document, "/plant/modes", "from 0 h to 24 h");
    refuses(document, "/plant/products/0/use", "must be one of: bedding, fibre, settled, waste");
    refuses(document, "/plant/targets/sandCapture", "must be 0 % to 100 %");
    assertThat(document.read().design()).isEmpty();
  }

  @Test
  void aModeCanOnlySetWhatIsPumpedOrFresh() {
    refuses(
        Documents.plant().with("/plant/modes/1/flows/0/stream", "pressed"),
        "/plant/modes/1/flows",
        "those are: recycle, wash");
  }

  @Test
  void thePitHoldsWhatItStartsWithAndItsWeirIsBelowTheBrim() {
    refuses(
        Documents.plant().with("/plant/units/6/startVolume", "70000 gal"),
        "/plant/units/6/startVolume",
        "must not be above the capacity");
    refuses(
        Documents.plant().with("/plant/units/6/weirVolume", "70000 gal"),
        "/plant/units/6/weirVolume",
        "must be below the capacity");
  }

  @Test
  void namesOfUnitsAndFeedsAreGivenOnce() {
    refuses(
        Documents.plant().with("/plant/units/1/name", "Box"), "/plant/units/0/name", "two units");
    refuses(
        Documents.plant().with("/plant/pens/1/stream", "manure"),
        "/plant/pens",
        "fed by more than one");
  }

  @Test
  void missingPartsAreNamed() {
    refuses(Documents.plant().without("/plant/units"), "/plant/units", "one unit or more");
    refuses(Documents.plant().without("/plant/pens"), "/plant/pens", "one pen or more");
    refuses(
        Documents.plant().without("/plant/units/6/pumps").without("/plant/units/6/overflow"),
        "/plant/units/6/pumps",
        "is missing");
    refuses(
        Documents.plant().without("/plant/units/6/weirVolume"),
        "/plant/units/6/weirVolume",
        "is missing");
    refuses(
        Documents.plant().with("/plant/units/6/weirVolume", "60 m3"),
        "/plant/units/6/weirVolume",
        "below the capacity");
    refuses(Documents.plant().with("/plant/units/6/kind", "tank"), "/plant/units/6/kind", "box");
  }

  @Test
  void pricesAreReadForTheirAmountAndTheirMistakesAreTold() {
    DesignDocument priced =
        Documents.plant()
            .with("/plant/prices/currency", " crowns ")
            .with("/plant/prices/sand/price", "9.0718474")
            .with("/plant/prices/sand/per", "1 ton");
    assertThat(priced.read().problems()).isEmpty();
    PlantSpec.Prices prices =
        priced.read().design().orElseThrow().plant().orElseThrow().accounting().prices();
    assertThat(prices.currency()).isEqualTo("crowns");
    // A short ton is 907.18474 kg.
    assertThat(prices.sandPerKg().orElseThrow().base())
        .isCloseTo(0.01, org.assertj.core.api.Assertions.within(1e-12));
    assertThat(prices.waterPerM3()).isEmpty();
    refuses(priced.without("/plant/prices/sand/per"), "/plant/prices/sand/per", "is missing");
    refuses(priced.without("/plant/prices/sand/price"), "/plant/prices/sand/price", "is missing");
    refuses(priced.with("/plant/prices/sand/per", "1 m3"), "/plant/prices/sand/per", "mass");
    refuses(priced.with("/plant/prices/diesel", "1"), "/plant/prices/diesel", "is not a field");
    refuses(
        Documents.plant().with("/plant/prices/sand", "12"),
        "/plant/prices/sand",
        "must be a group of fields");
    assertThat(
            Documents.plant()
                .read()
                .design()
                .orElseThrow()
                .plant()
                .orElseThrow()
                .accounting()
                .prices()
                .sandPerKg())
        .isEmpty();
  }

  @Test
  void aGradationWantedIsAStandardOrSieves() {
    DesignDocument standard = Documents.plant().with("/plant/targets/gradation", "ASTM C144");
    assertThat(standard.read().problems()).isEmpty();
    assertThat(
            standard
                .read()
                .design()
                .orElseThrow()
                .plant()
                .orElseThrow()
                .targets()
                .gradation()
                .orElseThrow()
                .limits())
        .hasSize(7);
    refuses(
        Documents.plant().with("/plant/targets/gradation", "beach"),
        "/plant/targets/gradation",
        "must be one of: ASTM C33, ASTM C144");
    DesignDocument own =
        Documents.plant()
            .insert(
                "/plant/targets/gradation",
                0,
                "{\"size\": \"0.3 mm\", \"least\": \"50 %\", \"most\": \"40 %\"}");
    refuses(own, "/plant/targets/gradation/0/most", "must not be below");
    DesignDocument twice =
        own.with("/plant/targets/gradation/0/most", "60 %")
            .insert("/plant/targets/gradation", 1, "{\"size\": \"300 um\"}");
    refuses(twice, "/plant/targets/gradation/1/size", "given twice");
  }

  @Test
  void lossesAndTheWayFibreSettlesMayBeRanges() {
    PlantSpec.Accounting standard =
        Documents.plant().read().design().orElseThrow().plant().orElseThrow().accounting();
    assertThat(standard.sandReachingPlant().low()).isEqualTo(1);
    assertThat(standard.organicSettleableShare().high()).isEqualTo(0.75);
    DesignDocument range =
        Documents.plant()
            .with("/plant/sandReachingPlant/low", "70 %")
            .with("/plant/sandReachingPlant/base", "85 %")
            .with("/plant/sandReachingPlant/high", "95 %")
            .with("/plant/units/0/rinseEfficiency", "50 %");
    PlantSpec plant = range.read().design().orElseThrow().plant().orElseThrow();
    assertThat(plant.accounting().sandReachingPlant().base()).isEqualTo(0.85);
    assertThat(((BoxUnit) plant.units().get(0)).rinseEfficiency().hasWidth()).isFalse();
    refuses(
        range.with("/plant/sandReachingPlant/low", "90 %"),
        "/plant/sandReachingPlant",
        "needs \"low\"");
  }

  @Test
  void aFlushedPenAndAStorageThatGivesBackMakeUnitsOfTheirOwn() {
    Reading reading = Documents.flushedPlant().read();
    assertThat(reading.problems()).isEmpty();
    PlantSpec plant = reading.design().orElseThrow().plant().orElseThrow();
    assertThat(plant.units())
        .extracting(PlantUnit::kind)
        .containsOnlyOnce("flush", "pool")
        .hasSize(10);
    assertThat(plant.units().get(plant.units().size() - 1).inlets())
        .containsExactly("settled in Storage", "stays in Storage");
    assertThat(plant.pens().get(0).stream()).isEqualTo("manure of Pen");
    assertThat(plant.pens().get(0).batches().orElseThrow().durationS())
        .isCloseTo(20 / 0.43, org.assertj.core.api.Assertions.within(1e-9));
  }

  @Test
  void flushAndBatchesThatCannotBeAreRefused() {
    refuses(
        Documents.flushedPlant().with("/plant/pens/0/flush/in", "pressed"),
        "/plant/pens/0/flush",
        "must be fresh water or pumped");
    refuses(
        Documents.flushedPlant().with("/plant/pens/0/scrapeInterval", "7 h"),
        "/plant/pens/0/firstScraping",
        "whole number of batches");
    refuses(
        Documents.flushedPlant().without("/plant/units/7/fibreSettling"),
        "/plant/units/7/fibreSettling",
        "is missing");
    refuses(
        Documents.plant()
            .with("/plant/pens/0/firstScraping", "5 h")
            .with("/plant/pens/0/scrapeDuration", "9 h"),
        "/plant/pens/0/firstScraping",
        "a batch lasts");
  }
}
