package sandslurry.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sandslurry.golden.Shipped.assess;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import sandslurry.assessment.stop.PulsationResult;
import sandslurry.assessment.stop.StopResult;
import sandslurry.assessment.stop.StopResult.FlushFlow;
import sandslurry.assessment.stop.StopResult.Start;
import sandslurry.design.Documents;
import sandslurry.design.document.DesignDocument;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Severity;

/** What must hold of stop, restart, flush and pulse, over random lines. */
class StopProperties {
  private static double log(Random random, double low, double high) {
    return low * Math.pow(high / low, random.nextDouble());
  }

  private static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }

  private static String run(String name, double boreM, double lengthM, double riseM) {
    return text(
        "{ \"name\": \"%s\", \"bore\": \"%.12g m\", \"roughness\": \"0.05 mm\","
            + " \"rating\": \"2 MPa\", \"length\": \"%.12g m\", \"rise\": \"%.12g m\" }",
        name, boreM, lengthM, riseM);
  }

  /** A line of one or more runs in one bore that goes up and down, its pump and its tank. */
  private record Line(
      String carrier, double sandPercent, double boreM, double velocityMps, List<double[]> runs) {
    static Line of(Random random, boolean sand) {
      List<double[]> runs = new ArrayList<>();
      int count = 1 + random.nextInt(3);
      for (int i = 0; i < count; i++) {
        double length = log(random, 4, 150);
        double rise = Math.min(length, 12) * (random.nextDouble() - 0.5);
        runs.add(new double[] {length, random.nextBoolean() ? rise : 0});
      }
      String carrier =
          random.nextInt(3) == 0
              ? "\"kind\": \"water\", \"temperature\": \"12 degC\""
              : text(
                  "\"kind\": \"rheology\", \"law\": \"Herschel-Bulkley\", \"temperature\": \"12"
                      + " degC\", \"density\": \"1030 kg/m3\", \"yieldStress\": \"%.6g Pa\","
                      + " \"consistency\": \"%.6g\", \"index\": \"%.6g\"",
                  log(random, 0.05, 40), log(random, 0.01, 8), 0.3 + 0.6 * random.nextDouble());
      return new Line(
          carrier,
          sand ? log(random, 0.2, 20) : 0,
          log(random, 0.09, 0.25),
          log(random, 0.3, 4),
          runs);
    }

    /** Each run cut into a number of equal pieces. */
    Line cut(int pieces) {
      List<double[]> cut = new ArrayList<>();
      for (double[] run : runs) {
        for (int i = 0; i < pieces; i++) {
          cut.add(new double[] {run[0] / pieces, run[1] / pieces});
        }
      }
      return new Line(carrier, sandPercent, boreM, velocityMps, cut);
    }

    double flowM3ps() {
      return velocityMps * Math.PI * boreM * boreM / 4;
    }

    DesignDocument document(double level, String pulsation) {
      StringBuilder parts = new StringBuilder();
      for (int i = 0; i < runs.size(); i++) {
        parts
            .append(i == 0 ? "" : ", ")
            .append(run("Run " + (i + 1), boreM, runs.get(i)[0], runs.get(i)[1]));
      }
      return Documents.parse(
          text(
              """
              {
                "formatVersion": 2,
                "sand": { "d50": "0.4 mm", "d85": "0.7 mm" },
                "carrier": { %s },
                "lines": [
                  {
                    "mixture": { "volumeFraction": "%.9g %%" },
                    "flow": { "minimum": "%5$.12g m3/s", "design": "%5$.12g m3/s",
                      "maximum": "%5$.12g m3/s" },
                    "route": { "sourceLevel": "1 m", "runs": [ %3$s ] },
                    "pump": { "kind": "piston", "displacement": "%6$.12g m3",
                      "strokeRate": "30 1/min", "volumetricEfficiency": "95 %%",
                      "pressureLimit": "900 kPa", "cylinders": "2", %4$s },
                    "operation": { "flushLevel": "%7$.9g m" }
                  }
                ]
              }
              """
                  .replaceFirst("%s", "%1\\$s")
                  .replaceFirst("%\\.9g", "%2\\$.9g"),
              carrier,
              sandPercent,
              parts,
              pulsation,
              flowM3ps(),
              flowM3ps() * 2 / 0.95,
              level));
    }
  }

  private static Map<String, Double> numbers(Assessment assessment) {
    Map<String, Double> numbers = new LinkedHashMap<>();
    assessment
        .service()
        .pulsation()
        .ifPresent(
            pulsation -> {
              numbers.put("peak", pulsation.peakPa());
              numbers.put("acceleration", pulsation.accelerationM());
            });
    assessment
        .service()
        .stop()
        .ifPresent(
            stop -> {
              numbers.put("static", stop.pressures().staticPa());
              numbers.put("bed", stop.restart().slidingBedPa());
              numbers.put("yield", stop.restart().yieldPa());
              numbers.put("plug", stop.restart().plugPa());
              FlushFlow supply = stop.supply().orElseThrow();
              numbers.put("start", supply.startPa());
              numbers.put("clean", supply.cleanM3ps().orElse(0));
              numbers.put("loaded", supply.loadedM3ps().orElse(0));
              numbers.put("over the bed", supply.bedM3ps().orElse(0));
              numbers.put("strip", Math.min(10, supply.stripDemand()));
            });
    return numbers;
  }

  /**
   * A run cut in pieces is the same pipe. So the least flow of the flush, which is looked for with
   * the front of the water at joints only, is no less with the front anywhere in between.
   */
  @Property(tries = 60)
  void aRunCutInPiecesIsTheSamePipe(@ForAll long seed) {
    Line line = Line.of(new Random(seed), false);
    double level = log(new Random(seed + 1), 3, 60);
    String pulse = "\"pulsationPassed\": \"30 %\"";
    Map<String, Double> whole = numbers(assess(line.document(level, pulse)));
    Map<String, Double> cut = numbers(assess(line.cut(4).document(level, pulse)));
    whole.forEach(
        (name, value) ->
            assertThat(cut.get(name))
                .as("%s of %s", name, line)
                .isCloseTo(value, within(1e-5 * Math.max(Math.abs(value), 1e-3))));
  }

  /** With the front at the outlet the mixture there still takes its velocity head. */
  @Example
  void theFlushIsSlowestWithItsFrontJustBeforeTheOutlet() {
    aRunCutInPiecesIsTheSamePipe(-2);
  }

  /** A liquor without sand asks for no bed to be carried off, but it must flow out all the same. */
  @Example
  void aSupplyThatStallsWhileItPushesDoesNotPass() {
    noFindingOfAStopContradictsItsNumbers(856513);
    noFindingOfAStopContradictsItsNumbers(538702);
  }

  /** What the report says of stop, flush and pulse never contradicts the numbers beside it. */
  @Property(tries = 150)
  void noFindingOfAStopContradictsItsNumbers(@ForAll long seed) {
    Random random = new Random(seed);
    Line line = Line.of(random, random.nextInt(5) > 0);
    String pulse =
        random.nextBoolean()
            ? text("\"vesselGas\": \"%.6g L\"", log(random, 1, 2000))
            : text("\"pulsationPassed\": \"%d %%\"", random.nextInt(101));
    Assessment assessment = assess(line.document(log(random, 2, 90), pulse));
    List<String> ids = assessment.findings().stream().map(Finding::id).toList();
    for (Finding finding : assessment.findings()) {
      assertThat(finding.what() + finding.why() + finding.cure())
          .doesNotContain("NaN", "Infinity", "{");
    }
    assessment.service().stop().ifPresent(stop -> stop(stop, assessment, ids));
    assessment.service().pulsation().ifPresent(pulsation -> pulse(pulsation, ids));
  }

  private static void pulse(PulsationResult pulsation, List<String> ids) {
    assertThat(ids.contains("stop.relief-opens")).isEqualTo(pulsation.peakPa() > 900e3);
    assertThat(pulsation.peakPa()).isGreaterThanOrEqualTo(pulsation.meanPa());
    if (ids.contains("stop.vessel-damps")) {
      assertThat(pulsation.passed()).isLessThanOrEqualTo(0.05);
    }
    if (ids.contains("stop.vessel-swings") || ids.contains("stop.vessel-small")) {
      assertThat(pulsation.passed()).isEqualTo(1);
    }
  }

  private static void stop(StopResult stop, Assessment assessment, List<String> ids) {
    if (ids.contains("stop.restart-starts")) {
      assertThat(stop.pressures().availablePa())
          .isGreaterThanOrEqualTo(stop.mostPa().orElseThrow());
      assertThat(stop.restartDemand()).isLessThanOrEqualTo(1);
      assertThat(stop.start()).isEqualTo(Start.SURE);
    }
    if (ids.contains("stop.holds-sand")) {
      assertThat(stop.runs()).allMatch(run -> run.bedShare() < 1e-3);
    }
    assertThat(ids.contains("stop.restart-bed-stuck"))
        .isEqualTo(stop.bedMoves() && stop.restartDemand() > 1);
    assertThat(stop.leastPa()).isNotNegative().isLessThanOrEqualTo(stop.expectedPa());
    assertThat(stop.expectedPa()).isLessThanOrEqualTo(stop.mostPa().orElse(Double.MAX_VALUE));
    FlushFlow supply = stop.supply().orElseThrow();
    double clean = supply.cleanM3ps().orElse(0);
    assertThat(supply.loadedM3ps().orElse(0)).isLessThanOrEqualTo(clean);
    if (ids.contains("stop.flush-clears")) {
      StopResult.FlushNeed need = stop.flush().orElseThrow();
      assertThat(supply.startPa()).isLessThanOrEqualTo(supply.startAvailablePa());
      assertThat(supply.loadedM3ps().orElseThrow()).isGreaterThanOrEqualTo(need.clearingM3ps());
      // What strips at the flow of the clean line is what the flow rate asked for strips at.
      assertThat(clean).isGreaterThanOrEqualTo(need.flowM3ps() * (1 - 1e-9));
      assertThat(supply.runs())
          .allMatch(
              run ->
                  run.velocityMps() >= run.clearingMps().orElse(Double.MAX_VALUE) || !stop.lies());
    }
    OptionalDouble worst =
        stop.plugs().stream().mapToDouble(plug -> plug.parts().lengthM() / plug.boreM()).max();
    if (worst.orElse(0) >= 0.5) {
      assertThat(ids).doesNotContain("stop.flush-clears");
    }
    assertThat(
            assessment.findings().stream()
                .filter(f -> f.id().startsWith("stop.restart"))
                .map(Finding::severity)
                .reduce(Severity.PASS, Severity::or))
        .isGreaterThanOrEqualTo(stop.start() == Start.NEVER ? Severity.CAUTION : Severity.NOTE);
  }
}
