package sandslurry.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static sandslurry.outside.Ours.ours;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sandslurry.assessment.line.FlowCase;
import sandslurry.assessment.line.LineState;
import sandslurry.assessment.station.PumpResult;
import sandslurry.assessment.station.StateResult.SuctionPoint;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.DesignTextException;
import sandslurry.material.Proportions;
import sandslurry.units.Measure;

/** Published examples that run from the text of a design file through the whole chain. */
class ChainReferenceTest {
  private static final String WATER_LIKE =
      "\"kind\": \"measured\", \"temperature\": \"20 degC\", \"density\": \"1000 kg/m3\","
          + " \"viscosity\": \"1 cP\"";

  private static Assessment assess(
      String sand,
      String carrier,
      String mixture,
      String flow,
      String level,
      String run,
      String more) {
    String text =
        """
        {
          "formatVersion": 1,
          "sand": { %s },
          "carrier": { %s },
          "mixture": { %s },
          "flow": { "design": "%s" },
          "route": { "sourceLevel": "%s", "runs": [ { %s } ] }%s
        }
        """
            .formatted(sand, carrier, mixture, flow, level, run, more);
    try {
      return Evaluation.assess(DesignDocument.parse(text).read().design().orElseThrow());
    } catch (DesignTextException e) {
      throw new AssertionError(text, e);
    }
  }

  private static LineState line(
      String sand, String carrier, String mixture, String flow, String run) {
    return assess(sand, carrier, mixture, flow, "0 m", run + ", \"length\": \"100 m\"", "")
        .line()
        .orElseThrow()
        .at(FlowCase.DESIGN)
        .orElseThrow();
  }

  private static String grains(double millimetres, double density) {
    return "\"d50\": \"%s mm\", \"d85\": \"%s mm\", \"density\": \"%s kg/m3\""
        .formatted(millimetres, millimetres, density);
  }

  private static String bore(double metres) {
    return "\"bore\": \"" + metres + " m\", \"roughness\": \"0.05 mm\"";
  }

  private static double deposition(LineState state, String id) {
    return state.runs().get(0).depositionModels().stream()
        .filter(e -> e.model().id().equals(id))
        .findFirst()
        .orElseThrow()
        .valueMps();
  }

  /**
   * Example 4-2 of Abulnaga, Slurry Systems Handbook (2002), as worked in an open notebook (read):
   * sand of 0.3 mm and 2.65 at 27 % by volume in water, pipe of 28.25 in, F_L by Schiller and
   * Herbich 0.9644571340435376, 4.647574091490368 m/s (g = 9.80665). Tolerance: the notebook enters
   * 0.0254 m for the inch as we do; 1e-6 for the way round a log-normal d50.
   */
  @Test
  void aHandbookExampleOfDurandsVelocityWithTheCurveOfSchillerAndHerbich() {
    LineState state =
        line(
            grains(0.3, 2650),
            WATER_LIKE,
            "\"volumeFraction\": \"27 %\"",
            "1.9 m3/s\", \"highestSandFraction\": \"27 %",
            bore(28.25 * 0.0254));
    ours(deposition(state, "durand-1953")).isCloseTo(4.647574, withinPercentage(1e-4));
  }

  /**
   * The same notebook, an example of a pump maker's manual: F_L = 1.34, bore 0.20 m, s = 2.65:
   * 3.4090793021576955 m/s. And the worked example of an open lecture on slurry transport (read):
   * F_L = 1.34, bore 0.3 m, ore of 4500 kg/m3: 6.08 m/s (rounded). The constant is the plateau of
   * the English print, which is shown here and governs nothing.
   */
  @ParameterizedTest
  @CsvSource({"0.2, 2650, 3.4090793, 1e-4", "0.3, 4500, 6.08, 0.1"})
  void twoWorkedExamplesOfDurandsVelocityWithAGivenFactor(
      double bore, double density, double printed, double percent) {
    LineState state =
        line(
            grains(0.3, density),
            WATER_LIKE,
            "\"volumeFraction\": \"10 %\"",
            "200 L/s",
            bore(bore));
    ours(deposition(state, "durand-plateau-english")).isCloseTo(printed, withinPercentage(percent));
  }

  /**
   * The same notebook, example 1-A: solids of 2.65 at 30 % by mass in water, 140 t/h: 466.667 t/h
   * and 379.49685534591197 m3/h of mixture of specific gravity 1.2296983758700697 with
   * 0.1392111368909513 of the volume solids. The lecture: 25 % of ore of 4500 kg/m3 make 1875
   * kg/m3. Tolerance: the rounding of what is typed.
   */
  @Test
  void twoWorkedExamplesOfAMixture() {
    LineState state =
        line(
            grains(0.3, 2650),
            WATER_LIKE,
            "\"massFraction\": \"30 %\"",
            "379.49685534591197 m3/h",
            bore(0.25));
    ours(state.mixtureDensityKgM3()).isCloseTo(1229.6983758700697, within(1e-6));
    ours(state.sandFraction()).isCloseTo(0.1392111368909513, within(1e-12));
    double sand = Measure.MASS_FLOW.entry("t/h").fromSi(state.sandRateKgps());
    ours(sand).isCloseTo(140, within(1e-6));
    ours(sand / Proportions.massFraction(0.1392111368909513, 1000, 2650))
        .isCloseTo(466.6667, within(1e-3));
    LineState ore =
        line(grains(0.2, 4500), WATER_LIKE, "\"volumeFraction\": \"25 %\"", "500 L/s", bore(0.3));
    ours(ore.mixtureDensityKgM3()).isCloseTo(1875, within(1e-6));
  }

  /**
   * Laminar flow by an independent open library of engineering rheology (functions read): its own
   * printed example, K = 0.5 Pa.s^0.6, n = 0.6, bore 50 mm, 1 L/s: 615.0 Pa/m; and its function for
   * a yield stress, evaluated outside this project with SciPy. The last is a liquid of the kind
   * that a demo design has.
   */
  @ParameterizedTest
  @CsvSource({
    "0,  0.5,  0.6,  0.05, 1,  615.0099, 1e-4",
    "5,  2,    0.5,  0.1,  2,  648.75221, 1e-4",
    "12, 0.02, 1,    0.1,  4,  583.54990, 1e-4",
    "40, 36,   0.35, 0.1,  10, 10213.017, 1e-4"
  })
  void laminarLinesLoseWhatAnIndependentLibraryTells(
      double yield,
      double k,
      double n,
      double bore,
      double litres,
      double gradient,
      double percent) {
    String law =
        yield > 0
            ? "\"law\": \"Herschel-Bulkley\", \"yieldStress\": \"" + yield + " Pa\","
            : "\"law\": \"power law\",";
    LineState state =
        line(
            grains(0.3, 2650),
            "\"kind\": \"rheology\", \"temperature\": \"10 degC\", \"density\": \"1030 kg/m3\", "
                + law
                + " \"consistency\": "
                + k
                + ", \"index\": "
                + n,
            "\"volumeFraction\": \"0 %\"",
            litres + " L/s",
            bore(bore));
    ours(state.runs().get(0).friction().pa() / 100).isCloseTo(gradient, withinPercentage(percent));
  }

  /**
   * A level line of 120 m and 102.26 mm that rises 4 m from a pit whose level is 1 m above its
   * start, water of 10 degC, roughness 0.05 mm, fed by a pump of 30 m less 0.5 m a L/s. Flow and
   * head where both curves meet were solved outside this project with SciPy 1.17.1 and the friction
   * factor of the general-purpose library CalebBell/fluids 1.3.1 (Colebrook), water of IAPWS at 10
   * degC. Tolerance: the friction law here is Churchill's, up to 1 % from Colebrook.
   */
  @Test
  void aPumpAndItsLineMeetWhereAnIndependentCalculationSaysSo() {
    PumpResult.Duty duty =
        assess(
                grains(0.3, 2650),
                "\"kind\": \"water\", \"temperature\": \"10 degC\"",
                "\"volumeFraction\": \"0 %\"",
                "27 L/s",
                "1 m",
                bore(0.10226) + ", \"length\": \"120 m\", \"rise\": \"4 m\"",
                """
                , "pump": {
                  "kind": "rotodynamic", "curveSpeed": "1750 rpm",
                  "curve": [
                    { "flow": "0 L/s", "head": "30 m", "efficiency": "0 %" },
                    { "flow": "20 L/s", "head": "20 m", "efficiency": "50 %" },
                    { "flow": "40 L/s", "head": "10 m", "efficiency": "50 %" }
                  ]
                }
                """
                    .replaceAll("\\s+", " "))
            .pump()
            .orElseThrow()
            .governing()
            .orElseThrow();
    ours(duty.flowM3ps()).isCloseTo(0.027771022, withinPercentage(0.5));
    ours(duty.headM()).isCloseTo(16.114489, withinPercentage(0.5));
  }

  private static SuctionPoint suction(String altitude, String temperature, String level) {
    return assess(
            grains(0.3, 2650),
            "\"kind\": \"water\", \"temperature\": \"" + temperature + "\"",
            "\"volumeFraction\": \"0 %\"",
            "20 L/s",
            level,
            "\"bore\": \"4 in\", \"roughness\": \"0.05 mm\", \"length\": \"300 ft\"",
            """
            , "pump": {
              "kind": "rotodynamic", "curveSpeed": "1750 rpm",
              "curve": [
                { "flow": "0 L/s", "head": "40 m", "efficiency": "0 %%" },
                { "flow": "20 L/s", "head": "30 m", "efficiency": "50 %%" },
                { "flow": "60 L/s", "head": "5 m", "efficiency": "30 %%" }
              ]
            },
            "suction": {
              "altitude": "%s", "bore": "6 in", "roughness": "0.05 mm", "length": "12 ft"
            }
            """
                .formatted(altitude, temperature)
                .replaceAll("\\s+", " "))
        .service()
        .states()
        .stream()
        .flatMap(state -> state.point().stream())
        .flatMap(point -> point.pumps().stream())
        .flatMap(pump -> pump.suction().stream())
        .findFirst()
        .orElseThrow();
  }

  /**
   * NPSH in the suction of a whole design. On a mountain: chapter on centrifugal pumps at
   * civilengineeringhandbook.tk (read), 7000 ft, water of 50 degF, 8 ft of lift: 26.2 - 8.0 - 0.411
   * ft before the losses. Suction lift: a pump maker's "Best practice no. 25", example 5 (read at
   * user-naksuao.cld.bz), 1000 ft, water of 85 degF: air 32.8 ft, vapour 1.38 ft, NPSH required 16
   * ft, losses 5 ft; so the pump may stand 10.42 ft above the water (the sum is ours). What is
   * available here, with our own losses added back, must be that. Tolerance: 0.15 ft, tables of the
   * atmosphere of other makers.
   */
  @ParameterizedTest
  @CsvSource({"7000 ft, 50 degF, -8 ft, 17.789", "1000 ft, 85 degF, -10.42 ft, 21"})
  void suctionHeadOfAWholeDesignIsThatOfTheExamples(
      String altitude, String temperature, String level, double feet) {
    SuctionPoint point = suction(altitude, temperature, level);
    double before = point.availableM() + point.lossM();
    assertThat(point.lossM()).isPositive();
    ours(Measure.LENGTH.entry("ft").fromSi(before)).isCloseTo(feet, within(0.15));
  }

  /**
   * The Engineering ToolBox, Slurry Transport - Minimum Flow Velocity (read): coarse solids of 20
   * to 4 mesh (0.84 to 4.76 mm) are kept moving from 2 to 3.25 m/s. The deposition velocity of this
   * program, for quartz of these sizes in pipes of the trade.
   */
  @ParameterizedTest
  @CsvSource({"4 in, 1", "4 in, 4", "6 in, 1", "6 in, 4", "8 in, 2"})
  void coarseSandAsksForAVelocityWithinTheRuleOfTheTrade(String bore, double millimetres) {
    LineState state =
        line(
            grains(millimetres, 2650),
            "\"kind\": \"water\", \"temperature\": \"15 degC\"",
            "\"volumeFraction\": \"5 %\"",
            "50 L/s",
            "\"bore\": \"" + bore + "\", \"roughness\": \"0.05 mm\"");
    ours(state.runs().get(0).deposition().orElseThrow().limitMps()).isBetween(2.0, 3.25);
  }

  /**
   * The same page: sludge of less than 2 % solids flows like water, above that it loses 1.5 to 4
   * times as much. At 1.5 m/s in 4 inches; the rule names neither sludge nor velocity, so manure of
   * 1 % is allowed a quarter more than water, and thick manure must lie within the rule.
   */
  @ParameterizedTest
  @CsvSource({"1, 1, 1.25", "5, 1.2, 4", "7, 1.5, 4"})
  void manureLosesMoreThanWaterAsTheRuleForSludgeSays(double percent, double least, double most) {
    double ratio =
        gradient("\"kind\": \"manure\", \"totalSolids\": \"" + percent + " %\"")
            / gradient("\"kind\": \"water\"");
    ours(ratio).isBetween(least, most);
  }

  private static double gradient(String carrier) {
    return line(
                grains(0.3, 2650),
                carrier + ", \"temperature\": \"20 degC\"",
                "\"volumeFraction\": \"0 %\"",
                "12.2 L/s",
                "\"bore\": \"4 in\", \"roughness\": \"0.05 mm\"")
            .runs()
            .get(0)
            .friction()
            .pa()
        / 100;
  }
}
