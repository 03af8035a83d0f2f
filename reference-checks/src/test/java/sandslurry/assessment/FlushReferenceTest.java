package sandslurry.assessment;

import static org.assertj.core.api.Assertions.withinPercentage;
import static sandslurry.outside.Ours.ours;

import org.junit.jupiter.api.Test;
import sandslurry.assessment.stop.StopResult.FlushFlow;
import sandslurry.design.document.DesignDocument;

/** The flow of a flush from a tank against a general-purpose library. */
class FlushReferenceTest {
  private static final String TEXT =
      """
      {
        "formatVersion": 2,
        "sand": { "d50": "0.5 mm", "d85": "1 mm" },
        "carrier": { "kind": "water", "temperature": "20 degC" },
        "lines": [
          {
            "mixture": { "volumeFraction": "9 %" },
            "flow": { "design": "45 L/s" },
            "route": {
              "runs": [
                { "bore": "150 mm", "roughness": "0.1 mm", "length": "100 m", "rise": "2 m" }
              ]
            },
            "operation": { "flushLevel": "12 m" }
          }
        ]
      }
      """;

  /**
   * Source: CalebBell/fluids 1.3.1 (friction_factor, and V_horiz_conical for the depth of the bed),
   * with the balance 12 m = 2 m + (f L/D + 1) V²/2g solved by bisection in water of 998.2 kg/m3 and
   * 1.0016 mPa.s: 67.72 L/s in the clean pipe; over a bed of 15 % of its section, as rough as 1 mm,
   * 40.46 L/s. Tolerance: the difference of the friction formulas, 1 %; with the bed 1.5 %, because
   * the d85 of the sand without its fines is a little more than 1 mm.
   */
  @Test
  void aTankIntoTheCleanPipeAndOverItsBed() throws Exception {
    FlushFlow supply =
        Evaluation.assess(DesignDocument.parse(TEXT).read().design().orElseThrow())
            .service()
            .stop()
            .orElseThrow()
            .supply()
            .orElseThrow();
    ours(1000 * supply.cleanM3ps().orElseThrow()).isCloseTo(67.72, withinPercentage(1));
    ours(1000 * supply.bedM3ps().orElseThrow()).isCloseTo(40.46, withinPercentage(1.5));
  }
}
