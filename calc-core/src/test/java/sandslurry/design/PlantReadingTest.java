package sandslurry.design;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

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
    refuses(document, "/plant/units/6/capacity", "within the capacity");
    refuses(document, "/plant/units/7/name", "\"nowhere\" flows into");
    refuses(document, "/plant/units/5/name", "\"bleed\" leaves");
    refuses(document, "/plant/modes", "from 0 h to 24 h");
    refuses(document, "/plant/products/0/use", "must be one of: bedding, fibre, waste");
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
  void aFlushedPenAndAStorageThatGivesBackMakeUnitsOfTheirOwn() {
    Reading reading = Documents.flushedPlant().read();
    assertThat(reading.problems()).isEmpty();
    PlantSpec plant = reading.design().orElseThrow().plant().orElseThrow();
    assertThat(plant.units())
        .extracting(PlantSpec.UnitSpec::kind)
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
