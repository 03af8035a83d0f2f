package sandslurry.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import sandslurry.design.Documents;
import sandslurry.design.document.DesignDocument;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Severity;
import sandslurry.fact.finding.Value;

/** A box whose screw lifts less sand than settles in it. */
class PlantScrewTest {
  private static final String SCREW = "/plant/units/0/screwCapacity";

  /** 8.8 t of sand a day, 0.25 m3/h in bulk, into a box. */
  private static DesignDocument plant() {
    return Documents.plantOf(
        """
        { "name": "Box", "kind": "box", "in": "manure, wash", "sand": "sand",
          "overflow": "over", "length": "4 m", "width": "1.5 m", "waterDepth": "1 m" }
        """);
  }

  private static Finding screw(DesignDocument document) {
    return Evaluation.assess(document.read().design().orElseThrow()).findings().stream()
        .filter(finding -> finding.id().equals("plant.screw-overloaded"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aScrewThatIsOverloadedAllDayFails() {
    Finding finding = screw(plant().with(SCREW, "0.1 m3/h"));
    assertThat(finding.severity()).isEqualTo(Severity.FAIL);
    assertThat(finding.cures()).contains("larger-screw");
    assertThat(number(finding, "load") * number(finding, "lifts")).isCloseTo(1, within(1e-9));
  }

  /** 3 m3, half of the box, over what is left of the sand: 8.8 t/d at 2650 kg/m3 and 45 % pores. */
  @Test
  void whatIsLeftFillsHalfOfTheBox() {
    Finding finding = screw(plant().with(SCREW, "0.1 m3/h"));
    double settlesM3ps = number(finding, "load") * 0.1 / 3600;
    assertThat(settlesM3ps).isBetween(0.95 * bulkM3ps(), bulkM3ps());
    assertThat(number(finding, "fills")).isCloseTo(3 / (settlesM3ps - 0.1 / 3600), within(1.0));
  }

  private static double bulkM3ps() {
    return 400 * 22.0 / 86400 / 2650 / (1 - 0.45);
  }

  private static double number(Finding finding, String name) {
    return ((Value.Number) finding.values().get(name)).si();
  }

  /** Over two hours of a mode the box holds what the screw does not lift. */
  @Test
  void overloadedInAShortModeIsACaution() {
    DesignDocument modes =
        plant()
            .with(SCREW, "0.24 m3/h")
            .with("/plant/modes/0/name", "night")
            .with("/plant/modes/0/from", "0 h")
            .with("/plant/modes/0/to", "22 h")
            .with("/plant/modes/0/flows/0/stream", "wash")
            .with("/plant/modes/0/flows/0/flow", "400 m3/h")
            .with("/plant/modes/1/name", "day")
            .with("/plant/modes/1/from", "22 h")
            .with("/plant/modes/1/to", "24 h");
    assertThat(screw(modes).severity()).isEqualTo(Severity.CAUTION);
  }
}
