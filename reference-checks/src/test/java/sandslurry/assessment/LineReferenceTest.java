package sandslurry.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sandslurry.outside.Ours.ours;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sandslurry.assessment.line.FlowCase;
import sandslurry.assessment.line.LineState;
import sandslurry.design.document.DesignDocument;
import sandslurry.units.Measure;

/** Whole designs, from the text of a file to the result, against published examples. */
class LineReferenceTest {
  private static LineState line(
      String sand, String carrier, String mixture, String flow, String run) throws Exception {
    String text =
        """
        {
          "formatVersion": 2,
          "sand": { %s },
          "carrier": { %s },
          "lines": [
            {
              "mixture": { %s },
              "flow": { "design": "%s" },
              "route": { "runs": [ { %s, "length": "100 ft" } ] }
            }
          ]
        }
        """
            .formatted(sand, carrier, mixture, flow, run);
    return Evaluation.assess(DesignDocument.parse(text).read().design().orElseThrow())
        .line()
        .orElseThrow()
        .at(FlowCase.DESIGN)
        .orElseThrow();
  }

  /**
   * Hydraulic Institute, Engineering Data Book, section II.B (read in the public repository
   * hydraulic-institute/edb): solids of specific gravity 2.2, 35 % by weight in a liquid of
   * specific gravity 1.2, make a mixture of specific gravity 1.43 (printed to three digits).
   */
  @Test
  void theMixtureOfThePumpManualHasTheDensityPrintedThere() throws Exception {
    LineState state =
        line(
            "\"d50\": \"0.3 mm\", \"d85\": \"0.5 mm\", \"density\": \"2200 kg/m3\"",
            "\"kind\": \"measured\", \"temperature\": \"60 degF\", \"density\": \"1200 kg/m3\","
                + " \"viscosity\": \"2 cP\"",
            "\"massFraction\": \"35 %\"",
            "300 gpm",
            "\"bore\": \"4 in\", \"roughness\": \"0.05 mm\"");
    ours(state.mixtureDensityKgM3()).isCloseTo(1430, within(5.0));
  }

  /**
   * The same section: 2400 short tons of dry solids of specific gravity 2.7 in 24 hours at 30 % by
   * weight in water are 1084 US gallons of mixture a minute. Its constants 4 and 1.23 are rounded,
   * which leaves half a per cent.
   */
  @Test
  void theFlowOfThePumpManualMovesTheSolidsPrintedThere() throws Exception {
    LineState state =
        line(
            "\"d50\": \"0.3 mm\", \"d85\": \"0.5 mm\", \"density\": \"2700 kg/m3\"",
            "\"kind\": \"measured\", \"temperature\": \"60 degF\", \"density\": \"1000 kg/m3\","
                + " \"viscosity\": \"1 cP\"",
            "\"massFraction\": \"30 %\"",
            "1084 gpm",
            "\"bore\": \"8 in\", \"roughness\": \"0.05 mm\"");
    double tonsPerHour = Measure.MASS_FLOW.entry("ton/h").fromSi(state.sandRateKgps());
    ours(24 * tonsPerHour).isCloseTo(2400, within(0.005 * 2400));
  }

  /**
   * The experiments of Graf, Robinson and Yucel (1970, Lehigh University, Fritz Engineering
   * Laboratory, Transport of Solid Suspension in Conduits, part 1) on sand in pipes of four and six
   * inches at less than 5 % by volume, for the same limit as ours: the velocity at which grains
   * form a stationary bed (definition read in that report's abstract and in Miedema, Slurry
   * Transport, section 6.7). Their fit F_L = 0.928 C^0.105 d^0.058 (C in per cent by volume, d in
   * millimetres) with V = F_L sqrt(2 g D (s - 1)), Robinson and Graf (1972): from memory,
   * unverified; the last column is worked out with it, g = 9.81 m/s2 and s = 2.65. Correlations for
   * deposition differ by a quarter among themselves: the tolerance.
   */
  @ParameterizedTest
  @CsvSource({
    "4.00 in, 0.45, 1, 1.607",
    "4.00 in, 0.45, 3, 1.803",
    "4.00 in, 0.88, 1, 1.671",
    "4.00 in, 0.88, 5, 1.978",
    "6.00 in, 0.45, 1, 1.968",
    "6.00 in, 0.45, 3, 2.209",
    "6.00 in, 0.88, 1, 2.046",
    "6.00 in, 0.88, 5, 2.423"
  })
  void theLimitIsThatOfTheLehighExperimentsWithinAQuarter(
      String bore, double sizeMm, double percent, double publishedMps) throws Exception {
    LineState state =
        line(
            "\"d50\": \"" + sizeMm + " mm\", \"d85\": \"" + sizeMm + " mm\"",
            "\"kind\": \"water\", \"temperature\": \"20 degC\"",
            "\"volumeFraction\": \"" + percent + " %\"",
            "500 gpm",
            "\"bore\": \"" + bore + "\", \"roughness\": \"0.05 mm\"");
    double limit = state.runs().get(0).deposition().orElseThrow().limitMps();
    ours(limit).isCloseTo(publishedMps, within(0.25 * publishedMps));
  }

  /**
   * A rule of the trade for pipes of no stated size: sand of 200 to 20 mesh (0.074 to 0.84 mm) is
   * kept moving from 1.5 to 2 m/s (The Engineering ToolBox, Slurry Transport - Minimum Flow
   * Velocity). It holds for small pipes; in larger ones the limit is higher, and this program must
   * not be talked down by the rule.
   */
  @Test
  void theRuleOfTheTradeHoldsInPipesOfThreeAndFourInchesAndNotInTen() throws Exception {
    for (String bore : new String[] {"3 in", "4 in"}) {
      ours(limitOfMasonrySand(bore)).isBetween(1.5, 2.05);
    }
    assertThat(limitOfMasonrySand("10 in")).isGreaterThan(2.5);
  }

  private static double limitOfMasonrySand(String bore) throws Exception {
    return line(
            "\"gradation\": \"ASTM C144\"",
            "\"kind\": \"water\", \"temperature\": \"60 degF\"",
            "\"volumeFraction\": \"5 %\"",
            "500 gpm",
            "\"bore\": \"" + bore + "\", \"roughness\": \"0.05 mm\"")
        .runs()
        .get(0)
        .deposition()
        .orElseThrow()
        .limitMps();
  }
}
