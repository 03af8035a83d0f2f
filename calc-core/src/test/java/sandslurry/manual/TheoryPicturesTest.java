package sandslurry.manual;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import sandslurry.assessment.Assessment;
import sandslurry.correlation.Physics;
import sandslurry.golden.Shipped;
import sandslurry.manual.LineChart.Axis;
import sandslurry.material.Slurry;
import sandslurry.material.liquid.HerschelBulkley;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;
import sandslurry.material.sand.GrainShape;
import sandslurry.material.sand.StandardSand;
import sandslurry.pipe.Bore;
import sandslurry.pipe.catalogue.PipeCatalogue;
import sandslurry.pipe.surge.Joukowsky1898;
import sandslurry.plant.unit.Liquor;
import sandslurry.pump.derating.SolidsDerating;
import sandslurry.pump.derating.SolidsDeratings;
import sandslurry.separation.cyclone.CyclonePerformance;
import sandslurry.settling.HinderedSettling;
import sandslurry.settling.HinderedSettlings;
import sandslurry.settling.SettlingVelocities;
import sandslurry.settling.SettlingVelocityModel;
import sandslurry.transport.deposition.DepositionRule;
import sandslurry.transport.deposition.SandLoad;
import sandslurry.transport.friction.ClearLiquid;
import sandslurry.transport.friction.LaminarPipeFlow;
import sandslurry.transport.headloss.HeadLosses;
import sandslurry.units.Measure;

/**
 * The charts of the theory pages show what the program computes; {@code -Dpages.renew=true} draws
 * them anew.
 */
class TheoryPicturesTest {
  private static final Path FOLDER = Path.of("..", "docs", "theory", "pictures");
  private static final Liquid WATER = new Liquid(999.02, 1.121e-3);
  private static final Liquid AT_20C = new Liquid(998.207, 1.0016e-3);
  private static final Bore BORE = new Bore(0.10226, 1e-4);
  private static final double QUARTZ_KG_M3 = 2650;
  private static final double D50_M = 0.53015e-3;
  private static final double D85_M = 1.2048e-3;
  private static final double MM = 1000;

  private static Slurry sand(double d50M, double d85M, double fraction) {
    return new Slurry(WATER, QUARTZ_KG_M3, GrainShape.NATURAL, d50M, d85M, fraction);
  }

  private static double deposition(double grainM, double fraction) {
    return DepositionRule.DEFAULT
        .judge(SandLoad.even(sand(grainM, grainM, fraction)), BORE, 0, 0)
        .limitMps();
  }

  private static void isCurrent(String name, LineChart chart) throws IOException {
    Path file = FOLDER.resolve(name + ".svg");
    if (Boolean.getBoolean("pages.renew")) {
      Files.writeString(file, chart.svg());
    }
    assertThat(Files.readString(file)).as("-Dpages.renew=true draws it").isEqualTo(chart.svg());
  }

  @Test
  void theJCurveOfTheParlorLine() throws IOException {
    LineChart chart =
        new LineChart(
            new Axis("velocity, m/s", 0, 4.5, false, 0, 1, 2, 3, 4),
            new Axis("friction, m of water per m", 0, 0.2, false, 0, 0.05, 0.1, 0.15, 0.2));
    chart.curve("clear water", 0.1, 4.4, v -> ClearLiquid.of(WATER, BORE, v).gradient());
    for (double c : new double[] {0.03, 0.10}) {
      Slurry slurry = sand(D50_M, D85_M, c);
      chart.curve(
          Math.round(100 * c) + " % sand",
          0.3,
          4.4,
          v -> HeadLosses.DEFAULT.gradient(slurry, BORE, v).value());
    }
    chart.mark(deposition(D50_M, 0.03), "deposition velocity, 3 %");
    chart.word(0.9, 0.17, "part of the sand");
    chart.word(0.9, 0.158, "lies on the floor");
    chart.word(2.8, 0.17, "eddies lift the sand,");
    chart.word(2.8, 0.158, "the coarse part rolls");
    isCurrent("j-curve", chart);
  }

  @Test
  void depositionAgainstGrainSizeAndConcentration() throws IOException {
    LineChart chart =
        new LineChart(
            new Axis("grain size, mm", 0.06, 6, true, 0.06, 0.1, 0.2, 0.5, 1, 2, 5),
            new Axis("deposition velocity, m/s", 0, 2.5, false, 0, 0.5, 1, 1.5, 2, 2.5));
    Map<Double, String> shares = new TreeMap<>();
    shares.put(0.0001, "0.01 %");
    shares.put(0.001, "0.1 %");
    shares.put(0.01, "1 %");
    shares.put(0.03, "3 %");
    shares.put(0.10, "10 %");
    List<double[]> measured = measuredInFourInches();
    shares.forEach(
        (c, name) -> {
          chart.curve(name, 0.06, 5.9, d -> deposition(d / MM, c));
          measured.stream()
              .filter(row -> Math.abs(row[3] / 100 - c) < 1e-9)
              .forEach(row -> chart.point(row[2], row[4]));
        });
    isCurrent("deposition", chart);
  }

  /**
   * Deposits that were measured in pipe of this size: bore, roughness, grain, per cent, velocity.
   */
  private static List<double[]> measuredInFourInches() throws IOException {
    List<double[]> rows =
        measured("deposits").stream()
            .filter(line -> line.startsWith("Lehigh,101.6,"))
            .map(line -> line.substring("Lehigh,".length()))
            .map(TheoryPicturesTest::numbers)
            .toList();
    assertThat(rows).hasSize(8);
    return rows;
  }

  /** Lines of the measurements that the reference checks hold, without their heading. */
  private static List<String> measured(String what) throws IOException {
    Path folder = Path.of("..", "reference-checks", "src", "test", "resources");
    List<String> lines = Files.readAllLines(folder.resolve("measured-" + what + ".csv"));
    return lines.subList(1, lines.size());
  }

  private static double[] numbers(String line) {
    return Stream.of(line.split(",")).mapToDouble(Double::parseDouble).toArray();
  }

  /** The drag that was measured of spheres, as the fall of spheres of quartz in water of 20 °C. */
  @Test
  void settlingVelocityAgainstGrainSize() throws IOException {
    LineChart chart =
        new LineChart(
            new Axis("grain size, mm", 0.05, 20, true, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20),
            new Axis("settling velocity, m/s", 0.001, 1, true, 0.001, 0.01, 0.1, 1));
    SettlingVelocityModel spheres =
        SettlingVelocities.FAMILY.find("turton-levenspiel-1986").orElseThrow();
    chart.curve(
        "natural sand", 0.05, 19.9, d -> fall(SettlingVelocities.DEFAULT, d, GrainShape.NATURAL));
    chart.curve("spheres", 0.05, 19.9, d -> fall(spheres, d, GrainShape.SPHERE));
    double nu = AT_20C.kinematicViscosityM2ps();
    double weight = Physics.GRAVITY * (QUARTZ_KG_M3 / AT_20C.densityKgM3() - 1);
    for (String line : measured("drag")) {
      double reynolds = numbers(line)[0];
      double size = Math.cbrt(0.75 * numbers(line)[1] * reynolds * reynolds * nu * nu / weight);
      chart.point(MM * size, reynolds * nu / size);
    }
    isCurrent("settling-velocity", chart);
  }

  private static double fall(SettlingVelocityModel model, double millimetres, GrainShape shape) {
    return model.velocityMps(new Grain(millimetres / MM, QUARTZ_KG_M3, shape), AT_20C).value();
  }

  @Test
  void exponentOfHinderedSettling() throws IOException {
    LineChart chart =
        new LineChart(
            new Axis("Reynolds number of one grain", 0.1, 1000, true, 0.1, 1, 10, 100, 1000),
            new Axis("exponent n", 2, 5.5, false, 2, 3, 4, 5));
    for (HinderedSettling law : HinderedSettlings.FAMILY.all()) {
      if (law != HinderedSettlings.DEFAULT) {
        chart.curve(law.citation().authors(), 0.1, 990, re -> law.exponent(re, 0.1).value());
      }
    }
    HinderedSettling rowe = HinderedSettlings.DEFAULT;
    chart.curve(rowe.citation().authors(), 0.1, 990, re -> rowe.exponent(re, 0.1).value());
    for (String line : measured("exponents")) {
      chart.point(numbers(line)[0], numbers(line)[1]);
    }
    isCurrent("hindered-settling", chart);
  }

  @Test
  void derating() throws IOException {
    LineChart chart =
        new LineChart(
            new Axis("d50, mm", 0.05, 5, true, 0.05, 0.1, 0.2, 0.5, 1, 2, 5),
            new Axis("head with sand over head without", 0.6, 1, false, 0.6, 0.7, 0.8, 0.9, 1));
    SolidsDerating cave = SolidsDeratings.FAMILY.find("cave-1976").orElseThrow();
    SolidsDerating engin = SolidsDeratings.FAMILY.find("engin-gur-2003").orElseThrow();
    OptionalDouble impeller = OptionalDouble.of(0.3048);
    for (double c : new double[] {0.03, 0.15}) {
      String share = Math.round(100 * c) + " %";
      chart.curve(
          "Cave, " + share,
          0.05,
          4.9,
          d -> cave.headRatio(sand(d / MM, d / MM, c), impeller).value());
      chart.curve(
          "Engin and Gur, " + share,
          0.05,
          4.9,
          d -> engin.headRatio(sand(d / MM, d / MM, c), impeller).value());
    }
    isCurrent("derating", chart);
  }

  @Test
  void plugFlow() throws IOException {
    double mean = 1.27;
    double radius = 0.05;
    LineChart chart =
        new LineChart(
            new Axis(
                "distance from the axis over the radius of the pipe",
                -1,
                1,
                false,
                -1,
                -0.5,
                0,
                0.5,
                1),
            new Axis("velocity over the mean", 0, 2.2, false, 0, 0.5, 1, 1.5, 2));
    var thick = LaminarPipeFlow.at(new HerschelBulkley(40, 36, 0.35), 2 * radius, mean);
    var thin = LaminarPipeFlow.at(new HerschelBulkley(0.001, 0.5, 1), 2 * radius, mean);
    chart.curve("40 Pa yield stress", -1, 1, r -> thick.velocityMps(Math.abs(r) * radius) / mean);
    chart.curve("Newtonian liquid", -1, 1, r -> thin.velocityMps(Math.abs(r) * radius) / mean);
    chart.mark(-thick.plugRadiusRatio(), "plug: nothing is sheared");
    chart.mark(thick.plugRadiusRatio(), "");
    isCurrent("plug-flow", chart);
  }

  @Test
  void theStandardSands() throws IOException {
    LineChart chart =
        new LineChart(
            new Axis("grain size, mm", 0.05, 10, true, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10),
            new Axis("passing, %", 0, 100, false, 0, 20, 40, 60, 80, 100));
    for (StandardSand sand : StandardSand.values()) {
      chart.curve(sand.id(), 0.05, 10, size -> 100 * sand.middle().fractionPassing(size / MM));
    }
    isCurrent("gradation", chart);
  }

  @Test
  void surgeOfASuddenStop() throws IOException {
    LineChart chart =
        new LineChart(
            new Axis("velocity stopped, m/s", 0, 4, false, 0, 1, 2, 3, 4),
            new Axis("rise of pressure, kPa", 0, 5000, false, 0, 1000, 2000, 3000, 4000, 5000));
    Map.of(
            "steel, Sch 40", PipeCatalogue.get("ASME B36.10M", "4 in", "Sch 40"),
            "PVC, Sch 40", PipeCatalogue.get("ASTM D1785", "4 in", "Sch 40"),
            "PVC, SDR 26", PipeCatalogue.get("ASTM D2241", "4 in", "SDR 26"))
        .entrySet()
        .stream()
        .sorted(Map.Entry.comparingByKey())
        .forEach(
            pipe ->
                chart.curve(
                    pipe.getKey(),
                    0,
                    4,
                    v -> new Joukowsky1898().surgePa(pipe.getValue(), 1048, v) / 1000));
    isCurrent("surge", chart);
  }

  @Test
  void partitionOfACyclone() throws IOException {
    LineChart chart =
        new LineChart(
            new Axis("grain size over cut size", 0.1, 10, true, 0.1, 0.2, 0.5, 1, 2, 5, 10),
            new Axis("share that goes below, %", 0, 100, false, 0, 20, 40, 60, 80, 100));
    double cut = 1e-4;
    for (double sharpness : new double[] {1.5, 2.5}) {
      CyclonePerformance sharp = new CyclonePerformance(cut, 1e5, 0.2, sharpness, List.of());
      chart.curve("sharpness " + sharpness, 0.1, 10, d -> 100 * sharp.correctedPartition(d * cut));
    }
    CyclonePerformance usual = new CyclonePerformance(cut, 1e5, 0.2, 2.5, List.of());
    chart.curve(
        "2.5, a fifth split", 0.1, 10, d -> 100 * (0.2 + 0.8 * usual.correctedPartition(d * cut)));
    isCurrent("partition", chart);
  }

  /** The cow of the table in the page: its manure, the dry matter in it and what is caught. */
  @Test
  void whatTheLiquorOfALoopThickensTo() throws IOException {
    LineChart chart =
        new LineChart(
            new Axis("fresh water, gal a cow and day", 0, 100, false, 0, 20, 40, 60, 80, 100),
            new Axis("solids of the liquor at rest, %", 0, 14, false, 0, 2, 4, 6, 8, 10, 12, 14));
    double manureKg = Measure.MASS.si(Measure.MASS.parse("148 lb"));
    double solidsKg = Measure.MASS.si(Measure.MASS.parse("19 lb"));
    double gallonKg = WATER.densityKgM3() * Measure.VOLUME.si(Measure.VOLUME.parse("1 gal"));
    for (double caught : new double[] {0, 0.4, 0.7}) {
      chart.curve(
          Math.round(100 * caught) + " % caught",
          0,
          100,
          gallons ->
              100
                  * Liquor.limit(
                      (1 - caught) * solidsKg, manureKg - solidsKg + gallons * gallonKg));
    }
    isCurrent("loop-solids", chart);
  }

  /** Rings: where the program has the pump of the example in its states. */
  @Test
  void pumpAndLineInTheirStates() throws Exception {
    Assessment assessment = Shipped.assessment("pen-to-storage.json");
    LineChart chart =
        new LineChart(
            new Axis("flow rate, L/s", 0, 28, false, 0, 4, 8, 12, 16, 20, 24, 28),
            new Axis("head, m of slurry", 0, 20, false, 0, 4, 8, 12, 16, 20));
    NavigableMap<Double, Double> pump = new TreeMap<>();
    assessment.pump().orElseThrow().curve().forEach(p -> pump.put(p.flowM3ps(), p.headM()));
    NavigableMap<Double, Double> line = new TreeMap<>();
    assessment.line().orElseThrow().systemCurve().forEach(p -> line.put(p.flowM3ps(), p.headM()));
    chart.curve("pump, new", 0, 28, q -> at(pump, q / MM));
    ring(chart, assessment, "pump duty");
    chart.curve("pump, 8 % worn", 0, 28, q -> 0.92 * at(pump, q / MM));
    ring(chart, assessment, "pump worn");
    chart.curve("line, pit as designed", 0, 28, q -> at(line, q / MM));
    chart.curve("line, pit at its lowest", 0, 28, q -> at(line, q / MM) + 0.5);
    ring(chart, assessment, "pit at its lowest");
    chart.curve("line, pit at its highest", 0, 28, q -> at(line, q / MM) - 1.5);
    ring(chart, assessment, "pit at its highest");
    isCurrent("pump-states", chart);
  }

  private static void ring(LineChart chart, Assessment assessment, String state) {
    assessment.service().states().stream()
        .filter(one -> one.name().equals(state))
        .flatMap(one -> one.point().stream())
        .forEach(point -> chart.point(MM * point.flowM3ps(), point.headM()));
  }

  /** The height of a curve between its points; nothing beyond its ends. */
  private static double at(NavigableMap<Double, Double> curve, double along) {
    Map.Entry<Double, Double> low = curve.floorEntry(along);
    Map.Entry<Double, Double> high = curve.ceilingEntry(along);
    if (low == null || high == null) {
      return Double.NaN;
    }
    double span = high.getKey() - low.getKey();
    double share = span > 0 ? (along - low.getKey()) / span : 0;
    return low.getValue() + share * (high.getValue() - low.getValue());
  }
}
