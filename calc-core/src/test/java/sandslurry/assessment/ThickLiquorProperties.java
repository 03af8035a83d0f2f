package sandslurry.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static sandslurry.golden.Shipped.assess;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import sandslurry.assessment.line.RunState;
import sandslurry.assessment.stop.StopResult;
import sandslurry.design.Documents;
import sandslurry.design.document.DesignDocument;
import sandslurry.fact.finding.Severity;
import sandslurry.material.liquid.Carriers;
import sandslurry.material.liquid.Rheology;
import sandslurry.transport.bed.SandCarriage;
import sandslurry.transport.friction.ClearLiquid.Regime;

/** One liquor, one verdict: what must hold of lines of thick liquor, over random ones. */
class ThickLiquorProperties {
  /** Lines that are described in four ways: all in the deep profile of the tries. */
  private static final int LINES =
      Double.parseDouble(System.getProperty("tries.share", "0.08")) >= 1 ? 200 : 8;

  /** Share of a number by which each input is moved. */
  private static final double STEP = 1e-3;

  /** A line of one run that a piston pump drives, in SI. */
  private record Line(
      double yieldPa,
      double consistency,
      double index,
      double boreM,
      double lengthM,
      double riseM,
      double d50M,
      double sandShare,
      double flowM3ps) {
    static Line of(Random random) {
      double bore = log(random, 0.1, 0.3);
      double length = log(random, 3, 200);
      return new Line(
          log(random, 0.5, 80),
          log(random, 0.5, 30),
          0.3 + 0.4 * random.nextDouble(),
          bore,
          length,
          random.nextInt(4) == 0 ? Math.min(0.9 * length, 18) * random.nextDouble() : 0,
          log(random, 1e-4, 2e-3),
          log(random, 0.01, 0.22),
          log(random, 0.1, 1.5) * Math.PI * bore * bore / 4);
    }

    private static double log(Random random, double low, double high) {
      return low * Math.pow(high / low, random.nextDouble());
    }

    /** The line with one number after the other moved by a step. */
    List<Line> neighbours() {
      double f = 1 + STEP;
      return List.of(
          with(f, 1, 1, 1, 1, 1),
          with(1, f, 1, 1, 1, 1),
          with(1, 1, f, 1, 1, 1),
          with(1, 1, 1, f, 1, 1),
          with(1, 1, 1, 1, f, 1),
          with(1, 1, 1, 1, 1, f));
    }

    private Line with(double yield, double k, double n, double bore, double length, double grain) {
      return new Line(
          yieldPa * yield,
          consistency * k,
          index * n,
          boreM * bore,
          lengthM * length,
          riseM,
          d50M * grain,
          sandShare,
          flowM3ps);
    }

    DesignDocument document() {
      return document(
          String.format(
              Locale.ROOT,
              "\"kind\": \"rheology\", \"law\": \"Herschel-Bulkley\", \"temperature\": \"10 degC\","
                  + " \"density\": \"1030 kg/m3\", \"yieldStress\": \"%.12g Pa\","
                  + " \"consistency\": \"%.12g\", \"index\": \"%.12g\"",
              yieldPa,
              consistency,
              index));
    }

    /** The line with a liquor described in some way, and a piston pump of 20 strokes a minute. */
    DesignDocument document(String carrier) {
      return Documents.parse(
          String.format(
              Locale.ROOT,
              """
              {
                "formatVersion": 2,
                "sand": { "d50": "%1$.12g m", "d85": "%2$.12g m" },
                "carrier": { %3$s },
                "lines": [
                  {
                    "mixture": { "volumeFraction": "%4$.12g" },
                    "flow": { "minimum": "%5$.12g m3/s", "design": "%5$.12g m3/s",
                      "maximum": "%5$.12g m3/s" },
                    "route": { "runs": [ { "name": "Line", "bore": "%6$.12g m", "roughness": "0.02 mm",
                      "rating": "4 MPa", "length": "%7$.12g m", "rise": "%8$.12g m" } ] },
                    "pump": { "kind": "piston", "displacement": "%9$.12g m3", "strokeRate": "20 1/min",
                      "volumetricEfficiency": "95 %%", "pressureLimit": "1500 kPa", "cylinders": "2" },
                    "operation": { "flushLevel": "25 m" }
                  }
                ]
              }
              """,
              d50M,
              1.8 * d50M,
              carrier,
              sandShare,
              flowM3ps,
              boreM,
              lengthM,
              riseM,
              flowM3ps * 3 / 0.95));
    }
  }

  /** Demand over what is available, each capped, by what it decides. */
  private static Map<String, Double> demands(Assessment assessment) {
    Map<String, Double> demands = new LinkedHashMap<>();
    RunState run = assessment.line().orElseThrow().states().get(0).runs().get(0);
    run.carriage().ifPresent(c -> demands.put("sand", c.demand()));
    StopResult stop = assessment.service().stop().orElseThrow();
    demands.put("restart", stop.restartDemand());
    demands.put("start of the flush", stop.supply().orElseThrow().startDemand());
    demands.put("strip", stop.supply().orElseThrow().stripDemand());
    assessment.service().pulsation().ifPresent(p -> demands.put("pulse", p.peakPa() / 1.5e6));
    demands.replaceAll((name, demand) -> Math.min(demand, 10));
    return demands;
  }

  private static boolean inTransition(Assessment assessment) {
    return assessment.line().orElseThrow().states().stream()
        .flatMap(state -> state.runs().stream())
        .anyMatch(run -> run.regime() == Regime.TRANSITIONAL);
  }

  @Property(tries = 100)
  void aSmallChangeMovesTheVerdictByOneStepAndNoDemandByMoreThanTwoPerCent(@ForAll long seed) {
    Line line = Line.of(new Random(seed));
    Assessment here = assess(line.document());
    Map<String, Double> demands = demands(here);
    for (Line moved : line.neighbours()) {
      Assessment there = assess(moved.document());
      if (inTransition(here) || inTransition(there)) {
        continue;
      }
      assertThat(Math.abs(here.verdict().ordinal() - there.verdict().ordinal()))
          .as("%s %s", line, moved)
          .isLessThanOrEqualTo(1);
      notFarApart(demands, demands(there), line + " " + moved);
    }
  }

  private static void notFarApart(Map<String, Double> here, Map<String, Double> there, String of) {
    there.forEach(
        (name, demand) -> {
          double before = here.get(name);
          assertThat(Math.abs(demand - before))
              .as("%s: %s to %s, %s", name, before, demand, of)
              .isLessThanOrEqualTo(0.02 * Math.max(before, 0.1));
        });
  }

  /**
   * In the transition to turbulence a line is a caution; it fails only where it would fail as a
   * laminar and as a turbulent one, for such a line plugs whichever it is.
   */
  @Property(tries = 60)
  void inTheTransitionALineIsACautionUnlessItPlugsEitherWay(@ForAll long seed) {
    Random random = new Random(seed);
    Line line = Line.of(random);
    for (RunState run : transitional(line)) {
      SandCarriage carriage = run.carriage().orElseThrow();
      boolean settlesTurbulent = carriage.velocityMps() < run.deposition().orElseThrow().limitMps();
      boolean settlesLaminar = carriage.demand() > 1;
      assertThat(run.severity())
          .as("%s", line)
          .isEqualTo(settlesTurbulent && settlesLaminar ? Severity.FAIL : Severity.CAUTION);
    }
  }

  /** The line at flows from laminar to turbulent, where it is neither. */
  private static List<RunState> transitional(Line line) {
    List<RunState> found = new ArrayList<>();
    for (double factor = 0.5; factor < 20; factor *= 1.3) {
      Line faster =
          new Line(
              line.yieldPa() / 10,
              line.consistency() / 10,
              line.index(),
              line.boreM(),
              line.lengthM(),
              line.riseM(),
              line.d50M(),
              line.sandShare(),
              line.flowM3ps() * factor);
      DesignDocument document =
          faster.document().without("/lines/0/operation").without("/lines/0/pump");
      assess(document).line().orElseThrow().states().stream()
          .flatMap(state -> state.runs().stream())
          .filter(run -> run.regime() == Regime.TRANSITIONAL)
          .forEach(found::add);
    }
    return found;
  }

  /** The same for the solids of a liquor, through the content at which thick manure yields. */
  @Property(tries = 40)
  void nothingStepsAtASolidsContent(@ForAll long seed) {
    Random random = new Random(seed);
    Line line = Line.of(random);
    double solids = random.nextBoolean() ? 9.995 : 5 + 7.9 * random.nextDouble();
    Assessment here = assess(line.document(manure(solids)));
    Assessment there = assess(line.document(manure(solids * (1 + STEP))));
    Assume.that(!inTransition(here) && !inTransition(there));
    assertThat(Math.abs(here.verdict().ordinal() - there.verdict().ordinal()))
        .isLessThanOrEqualTo(1);
    notFarApart(demands(here), demands(there), "solids of " + solids + " % in " + line);
  }

  private static String manure(double percent) {
    return String.format(
        Locale.ROOT,
        "\"kind\": \"manure\", \"temperature\": \"10 degC\", \"totalSolids\": \"%.12g %%\"",
        percent);
  }

  private static String readings(Rheology law, double density, Random noise) {
    StringBuilder rows = new StringBuilder();
    for (int i = 0; i < 10; i++) {
      double rate = 0.1 * Math.pow(5e3, i / 9.0);
      double stress =
          law.shearStressPa(rate) * (noise == null ? 1 : 1 + 0.05 * noise.nextGaussian());
      rows.append(i == 0 ? "" : ", ")
          .append(
              String.format(
                  Locale.ROOT,
                  "{ \"shearRate\": \"%.12g 1/s\", \"shearStress\": \"%.12g Pa\" }",
                  rate,
                  stress));
    }
    return String.format(
        Locale.ROOT,
        "\"kind\": \"readings\", \"temperature\": \"10 degC\", \"density\": \"%.12g kg/m3\","
            + " \"readings\": [ %s ]",
        density,
        rows);
  }

  @Property(tries = 1)
  void oneLiquorHasOneVerdictHoweverItIsDescribed(@ForAll long seed) {
    Random random = new Random(seed);
    int lines = LINES;
    int better = 0;
    for (int i = 0; i < lines; i++) {
      Line line = Line.of(random);
      double solids = 4 + 9 * random.nextDouble();
      Rheology law = Carriers.manureRheology(solids / 100, 283.15);
      double density = Carriers.manure(solids / 100, 283.15).densityKgM3();
      Severity exact = assess(line.document(readings(law, density, null))).verdict();
      List<Severity> worse = new ArrayList<>();
      worse.add(assess(line.document(readings(law, density, random))).verdict());
      worse.add(
          assess(
                  line.document(
                      String.format(
                          Locale.ROOT,
                          "\"kind\": \"rheology\", \"law\": \"power law\","
                              + " \"temperature\": \"10 degC\", \"density\": \"%.12g kg/m3\","
                              + " \"consistency\": \"%.12g\", \"index\": \"%.12g\"",
                          density,
                          law.consistency(),
                          law.index())))
              .verdict());
      worse.add(assess(line.document(manure(solids))).verdict());
      for (Severity severity : worse) {
        if (exact == Severity.FAIL) {
          assertThat(severity).as("%s at %s %%", line, solids).isGreaterThan(Severity.PASS);
        }
        better += severity.compareTo(exact) < 0 ? 1 : 0;
      }
    }
    assertThat(better).isLessThanOrEqualTo(Math.max(1, 3 * lines / 20));
  }

  @Property(tries = 20)
  void theVerdictOnReadingsDoesNotDependOnTheLawAskedFor(
      @ForAll long seed, @ForAll @IntRange(min = 0, max = 60) int yield) {
    Random random = new Random(seed);
    Line line = Line.of(random);
    Rheology law =
        new sandslurry.material.liquid.HerschelBulkley(yield, line.consistency(), line.index());
    String readings = readings(law, 1030, random);
    Severity free = assess(line.document(readings)).verdict();
    for (String asked : List.of("power law", "Bingham", "Herschel-Bulkley")) {
      assertThat(assess(line.document(readings + ", \"law\": \"" + asked + "\"")).verdict())
          .as(asked)
          .isEqualTo(free);
    }
  }

  @Example
  void aLooserCriterionDoesNotLowerThePressure() {
    Line line = new Line(40, 36, 0.35, 0.1, 8, 0, 1.5e-4, 0.05, 0.01);
    DesignDocument document = line.document();
    assertThat(
            friction(assess(document.with("/criteria/floorShare", "40 %")))
                / friction(assess(document)))
        .isEqualTo(1);
  }

  private static double friction(Assessment assessment) {
    return assessment.line().orElseThrow().states().get(0).runs().get(0).friction().pa();
  }
}
