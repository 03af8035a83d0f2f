package sandslurry.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sandslurry.design.Documents;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Severity;

/** A cyclone behind a pit whose pump starts and stops by the level. */
class PlantCycloneTest {
  /** A mixed pit, a pump and a cyclone whose sand is drained. */
  private static Assessment plant(String body, double pumpM3ph) {
    String units =
        """
        { "name": "Pit", "kind": "pit", "in": "manure, wash",
          "capacity": "80 m3", "mixer": { "diameter": "0.6 m", "speed": "300 rpm" },
          "pumps": [ { "stream": "up", "flow": "%s m3/h" } ] },
        { "name": "Cyclone", "kind": "cyclone", "in": "up", "underflow": "sand",
          "overflow": "over", "body": "%s", "apex": "38 mm" }
        """;
    return Evaluation.assess(
        Documents.plantOf(String.format(Locale.ROOT, units, pumpM3ph, body))
            .read()
            .design()
            .orElseThrow());
  }

  private static Optional<Severity> said(Assessment assessment, String id) {
    return assessment.findings().stream()
        .filter(f -> f.element().equals("Cyclone") && f.id().equals("plant." + id))
        .map(Finding::severity)
        .findFirst();
  }

  @Test
  void itIsJudgedAtTheFlowRateOfThePumpAndNotAtTheMeanOfTheDay() {
    Assessment good = plant("200 mm", 36);
    assertThat(said(good, "cyclone-pressure")).isEmpty();
    assertThat(said(good, "no-vortex")).isEmpty();
    // 136 m3/h through 100 mm is some 9 MPa, which no pump gives, however little comes in a day.
    Assessment never = plant("100 mm", 136);
    assertThat(said(never, "cyclone-not-pumped")).contains(Severity.FAIL);
    assertThat(never.verdict()).isEqualTo(Severity.FAIL);
    assertThat(said(plant("200 mm", 60), "cyclone-pressure")).contains(Severity.CAUTION);
    assertThat(said(plant("400 mm", 36), "no-vortex")).contains(Severity.CAUTION);
  }
}
