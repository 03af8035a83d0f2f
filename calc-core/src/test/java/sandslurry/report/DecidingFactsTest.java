package sandslurry.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sandslurry.assessment.Assessment;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.DesignTextException;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.Severity;
import sandslurry.golden.Shipped;

/** The table of what decides holds what the verdict is judged by, not a milder case. */
class DecidingFactsTest {
  private static Assessment line(String liquor, String temperatures, String flow) {
    try {
      return Shipped.assessment(
          DesignDocument.parse(
              """
              {"formatVersion": 2, "sand": {"d50": "0.15 mm", "d85": "0.25 mm"},
               "carrier": {%s, "temperature": "12 degC"},
               "lines": [{"mixture": {"volumeFraction": "0.5 %%"},
                 "flow": {"minimum": "%s", "design": "%s"%s},
                 "route": {"runs": [{"name": "Buried line", "bore": "154 mm", "roughness": "0.05 mm",
                   "length": "100 m"}]}}]}
              """
                  .formatted(liquor, flow, flow, temperatures)));
    } catch (DesignTextException e) {
      throw new AssertionError(e);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          "kind": "water"                          | ''                                           | 22 L/s |
          "kind": "water"                          | ''                                           | 40 L/s | 2.00 degC
          "kind": "manure", "totalSolids": "2 %"   | ''                                           | 27.9 L/s | thicker liquor
          "kind": "manure", "totalSolids": "2 %"   | , "coldest": "5 degC", "warmest": "30 degC"  | 27.9 L/s | thicker liquor
          "kind": "manure", "totalSolids": "2 %"   | , "coldest": "5 degC", "warmest": "30 degC"  | 40 L/s | thicker liquor
          "kind": "manure", "totalSolids": "5 %"   | ''                                           | 55 L/s | thicker liquor
          "kind": "manure", "totalSolids": "8 %"   | ''                                           | 55 L/s |
          """)
  void whatIsShownOfTheVelocityIsWhatTheVerdictIsJudgedBy(
      String liquor, String temperatures, String flow, String named) {
    Assessment assessment = line(liquor, temperatures, flow);
    Severity plugging =
        assessment.findings().stream()
            .filter(f -> f.topic() == Topic.PLUGGING)
            .map(Finding::severity)
            .reduce(Severity.PASS, Severity::or);
    Optional<Deciding> shown = DecidingFacts.governing(assessment);

    assertThat(shown).isPresent();
    assertThat(shown.get().closeness() < 0)
        .as(plugging + ", shown " + shown.get())
        .isEqualTo(plugging != Severity.PASS);
    if (named != null) {
      assertThat(shown.get().what()).contains(named);
    }
  }
}
