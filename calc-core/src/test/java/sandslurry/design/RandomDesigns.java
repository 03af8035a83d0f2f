package sandslurry.design;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import javax.measure.Quantity;
import sandslurry.pipe.catalogue.PipeCatalogue;
import sandslurry.pipe.fittings.FittingKind;
import sandslurry.units.Measure;

/**
 * Design files made at random from a seed, of values that the reader allows: often the least or the
 * greatest allowed, to find what only happens in the corners. The same seed gives the same design
 * in whatever units it is typed.
 */
public final class RandomDesigns {
  private static final Map<Measure<?>, String> US =
      Map.of(
          Measure.LENGTH, "ft",
          Measure.FLOW, "gal/min",
          Measure.MASS_FLOW, "lb/min",
          Measure.DENSITY, "lb/ft3",
          Measure.VISCOSITY, "cP",
          Measure.PRESSURE, "psi",
          Measure.TEMPERATURE, "degF",
          Measure.SPEED, "ft/s",
          Measure.VOLUME, "gal",
          Measure.TIME, "min");

  private final Random random;
  private final long seed;
  private final double corners;
  private final boolean us;

  private RandomDesigns(long seed, double corners, boolean us) {
    this.random = new Random(seed);
    this.seed = seed;
    this.corners = corners;
    this.us = us;
  }

  /**
   * A design with values at and between the ends of their ranges, typed in SI.
   *
   * @param seed any number
   * @return the text of a design file; a few are refused by the reader for sand that is mostly silt
   */
  public static String extreme(long seed) {
    return new RandomDesigns(seed, 0.3, false).design();
  }

  /**
   * A design with values between the ends of their ranges.
   *
   * @param seed any number
   * @param us true to type it in US customary units, false in SI
   * @return the text of a design file
   */
  public static String inside(long seed, boolean us) {
    return new RandomDesigns(seed, 0, us).design();
  }

  /**
   * A line such as is built: sand in water or thin manure through standard pipe.
   *
   * @param seed any number
   * @return the text of a design file without problems
   */
  public static String plausibleLine(long seed) {
    return new RandomDesigns(seed, 0, false).plausible();
  }

  /**
   * A line with the odd turns that real ones take: one to three runs of unlike bore, level, steep
   * or falling; sand up to gravel and up to 30 % of the volume; carriers from water to thick liquor
   * with a yield stress; flows from far too low to ample.
   *
   * @param seed any number
   * @param us true to type it in US customary units, false in SI
   * @return the text of a design file without problems
   */
  public static String oddLine(long seed, boolean us) {
    return new RandomDesigns(seed, 0, us).odd();
  }

  private double between(double low, double high) {
    double p = random.nextDouble();
    double share = random.nextDouble();
    if (p < corners / 2) {
      return low;
    }
    if (p < corners) {
      return high;
    }
    double base = Math.max(low, high * 1e-5);
    return low < 0 ? low + (high - low) * share : base * Math.pow(high / base, share);
  }

  private <Q extends Quantity<Q>> String typed(Measure<Q> measure, double si) {
    double number = us && US.containsKey(measure) ? measure.entry(US.get(measure)).fromSi(si) : si;
    String unit = us && US.containsKey(measure) ? US.get(measure) : measure.units().get(0).symbol();
    return "\"" + number + " " + unit + "\"";
  }

  private <Q extends Quantity<Q>> String field(
      String name, Measure<Q> measure, double low, double high) {
    return field(name, measure, between(low, high));
  }

  private <Q extends Quantity<Q>> String field(String name, Measure<Q> measure, double si) {
    return "\"" + name + "\": " + typed(measure, si);
  }

  private String perhaps(String text) {
    return random.nextBoolean() ? ", " + text : "";
  }

  private String design() {
    boolean line = random.nextInt(4) > 0;
    boolean lane = !line || random.nextBoolean();
    StringBuilder text = new StringBuilder("{ \"formatVersion\": 1");
    text.append(", \"units\": \"").append(us ? "US" : "metric").append('"');
    text.append(", \"sand\": ").append(sand()).append(", \"carrier\": ").append(carrier());
    if (line) {
      text.append(", \"mixture\": {").append(mixture()).append("}, \"flow\": ").append(flow());
      text.append(", \"route\": ").append(route());
      if (random.nextInt(3) > 0) {
        text.append(", \"pump\": ").append(random.nextInt(3) > 0 ? rotodynamic() : piston());
      }
    }
    if (lane) {
      text.append(", \"lane\": ").append(lane(line));
    }
    text.append(perhaps("\"criteria\": " + criteria()));
    // Drawn from a seed of its own, so that the rest of a design stays what it was.
    text.append(new RandomDesigns(~seed, corners, us).service(line, text.indexOf("\"pump\"") > 0));
    return text.append('}').toString();
  }

  /** What the line meets in service; in every fourth design, because every state takes time. */
  private String service(boolean line, boolean pump) {
    if (random.nextInt(4) > 0) {
      return "";
    }
    StringBuilder text = new StringBuilder();
    if (line) {
      text.append(", \"states\": {\"flushWater\": \"yes\"")
          .append(perhaps(field("lowSourceLevel", Measure.LENGTH, -30, 0)))
          .append(perhaps(field("highSourceLevel", Measure.LENGTH, 0, 100)))
          .append(pump ? perhaps(field("wornHead", Measure.FRACTION, 0, 0.5)) : "")
          .append("}, \"operation\": {")
          .append(field("dailyVolume", Measure.VOLUME, 0.01, 1e5))
          .append(perhaps(field("batchVolume", Measure.VOLUME, 0.01, 1e5)))
          .append(perhaps(field("flushFlow", Measure.FLOW, 5e-5, 2)))
          .append("}, \"observed\": {")
          .append(field("flow", Measure.FLOW, 5e-5, 2))
          .append(", ")
          .append(
              random.nextBoolean()
                  ? field("pressure", Measure.PRESSURE, -1e5, 5e6)
                  : "\"pressureIs\": \"rise of the pump\", "
                      + field("pressure", Measure.PRESSURE, 0, 1e6))
          .append(perhaps(field("flowUncertainty", Measure.FRACTION, 0, 0.5)))
          .append(perhaps(field("runningTimeSinceCleaning", Measure.TIME, 60, 1e8)))
          .append('}');
    }
    if (pump) {
      text.append(", \"suction\": {")
          .append(field("altitude", Measure.LENGTH, -400, 5000))
          .append(", ")
          .append(field("bore", Measure.LENGTH, 0.02, 1.2))
          .append(", ")
          .append(field("roughness", Measure.LENGTH, 0, 0.002))
          .append(", ")
          .append(field("length", Measure.LENGTH, 0.1, 2e4))
          .append('}');
    }
    return text.append(", \"screw\": {")
        .append(field("diameter", Measure.LENGTH, 0.05, 3))
        .append(perhaps(field("pitch", Measure.LENGTH, 0.05, 3)))
        .append(", ")
        .append(field("speed", Measure.ROTATION, 0.5 / 60, 400 / 60.0))
        .append(perhaps(field("slope", Measure.SLOPE, 0, 0.99)))
        .append(", ")
        .append(field("length", Measure.LENGTH, 0.5, 200))
        .append(", ")
        .append(field("load", Measure.FLOW, 5e-5, 2))
        .append(", ")
        .append(field("bulkDensity", Measure.DENSITY, 500, 3000))
        .append("}, \"gravityRun\": {")
        .append(field("bore", Measure.LENGTH, 0.02, 1.2))
        .append(", ")
        .append(field("slope", Measure.SLOPE, 1e-4, 0.3))
        .append(", ")
        .append(field("flow", Measure.FLOW, 0.1, 2))
        .append(", ")
        .append(field("leastFlow", Measure.FLOW, 5e-5, 0.1))
        .append(", ")
        .append(field("sandFraction", Measure.FRACTION, 0, 0.4))
        .append('}')
        .toString();
  }

  private String sand() {
    double fine = between(5e-5, 25e-3);
    double coarse = Math.max(fine, between(5e-5, 25e-3));
    String sizes =
        switch (random.nextInt(4)) {
          case 0 -> "\"gradation\": \"ASTM C33\"";
          case 1 ->
              "\"gradation\": [{"
                  + field("size", Measure.LENGTH, Math.min(fine, coarse * 0.9))
                  + ", \"passing\": \""
                  + 10 * random.nextInt(4)
                  + " %\"}, {"
                  + field("size", Measure.LENGTH, coarse)
                  + ", \"passing\": \"100 %\"}]";
          default ->
              field("d50", Measure.LENGTH, fine) + ", " + field("d85", Measure.LENGTH, coarse);
        };
    return "{"
        + sizes
        + perhaps(field("density", Measure.DENSITY, 1500, 5000))
        + perhaps(
            "\"shape\": {"
                + field("corey", Measure.FRACTION, 0.2, 1)
                + ", "
                + field("roundness", Measure.NUMBER, 0, 6)
                + ", "
                + field("sphericity", Measure.FRACTION, 0.3, 1)
                + "}")
        + "}";
  }

  private String carrier() {
    String kind =
        switch (random.nextInt(3)) {
          case 0 -> "\"kind\": \"water\"";
          case 1 -> "\"kind\": \"manure\", " + field("totalSolids", Measure.FRACTION, 0, 0.13);
          default ->
              "\"kind\": \"measured\", "
                  + field("density", Measure.DENSITY, 900, 1300)
                  + ", "
                  + field("viscosity", Measure.VISCOSITY, 3e-4, 5);
        };
    return "{" + field("temperature", Measure.TEMPERATURE, 273.25, 318.15) + ", " + kind + "}";
  }

  private String mixture() {
    return switch (random.nextInt(3)) {
      case 0 -> field("volumeFraction", Measure.FRACTION, 0, 0.4);
      case 1 -> field("massFraction", Measure.FRACTION, 0, 0.64);
      default -> field("sandRate", Measure.MASS_FLOW, 0, 500);
    };
  }

  private String flow() {
    double design = between(5e-5, 2);
    return "{"
        + field("design", Measure.FLOW, design)
        + perhaps(field("minimum", Measure.FLOW, Math.min(design, between(5e-5, 2))))
        + perhaps(field("maximum", Measure.FLOW, Math.max(design, between(5e-5, 2))))
        + "}";
  }

  private String route() {
    StringBuilder runs = new StringBuilder();
    int count = 1 + random.nextInt(3);
    for (int i = 0; i < count; i++) {
      runs.append(i == 0 ? "" : ", ").append(run());
    }
    return "{"
        + field("sourceLevel", Measure.LENGTH, -30, 100)
        + perhaps(field("outletHead", Measure.LENGTH, 0, 50))
        + ", \"runs\": ["
        + runs
        + "]}";
  }

  private String run() {
    double length = between(0.1, 20000);
    double steepest = Math.min(200, corners > 0 ? length : 0.999 * length);
    double rise = Math.max(-steepest, Math.min(steepest, between(-200, 200)));
    double bore = between(0.02, 1.2);
    String pipe =
        random.nextBoolean()
            ? "\"pipe\": " + standardPipe() + perhaps(field("roughness", Measure.LENGTH, 0, 5e-3))
            : field("bore", Measure.LENGTH, bore)
                + ", "
                + field("roughness", Measure.LENGTH, Math.min(between(0, 5e-3), 0.0999 * bore))
                + perhaps(field("rating", Measure.PRESSURE, 1e4, 5e7));
    return "{"
        + field("length", Measure.LENGTH, length)
        + ", "
        + field("rise", Measure.LENGTH, rise)
        + ", "
        + pipe
        + perhaps("\"fittings\": [" + fitting() + "]")
        + "}";
  }

  private String standardPipe() {
    List<String> systems = PipeCatalogue.systems();
    String system = systems.get(random.nextInt(systems.size()));
    List<String> sizes = PipeCatalogue.sizes(system);
    List<String> classes = PipeCatalogue.classes(system);
    String size;
    String pipeClass;
    do {
      size = sizes.get(random.nextInt(sizes.size()));
      pipeClass = classes.get(random.nextInt(classes.size()));
    } while (PipeCatalogue.find(system, size, pipeClass).isEmpty());
    return String.format(
        Locale.ROOT,
        "{\"system\": \"%s\", \"size\": \"%s\", \"class\": \"%s\"}",
        system,
        size,
        pipeClass);
  }

  private String fitting() {
    FittingKind kind;
    do {
      kind = FittingKind.values()[random.nextInt(FittingKind.values().length)];
    } while (kind == FittingKind.PIPE_EXIT);
    int count = random.nextDouble() < corners ? 1000 : 1 + random.nextInt(9);
    return "{\"kind\": \"" + kind.id() + "\", \"count\": " + count + "}";
  }

  private String rotodynamic() {
    int count = 3 + random.nextInt(4);
    TreeSet<Double> flows = new TreeSet<>();
    if (random.nextBoolean()) {
      flows.add(0.0);
    }
    while (flows.size() < count) {
      flows.add(between(1e-6, 1.9) + 1e-4 * random.nextDouble());
    }
    StringBuilder curve = new StringBuilder();
    for (double flow : flows) {
      curve.append(curve.isEmpty() ? "{" : ", {").append(field("flow", Measure.FLOW, flow));
      curve.append(", ").append(field("head", Measure.LENGTH, 0, 500));
      curve.append(", ").append(field("efficiency", Measure.FRACTION, 1e-5, 0.95)).append('}');
    }
    return "{\"kind\": \"rotodynamic\", "
        + field("curveSpeed", Measure.ROTATION, 50 / 60.0, 100)
        + perhaps(field("speed", Measure.ROTATION, 50 / 60.0, 100))
        + perhaps(field("impeller", Measure.LENGTH, 0.05, 2))
        + perhaps(field("driveEfficiency", Measure.FRACTION, 0.2, 1))
        + ", \"curve\": ["
        + curve
        + "]}";
  }

  private String piston() {
    return "{\"kind\": \"piston\", "
        + field("displacement", Measure.VOLUME, 1e-5, 1)
        + ", "
        + field("strokeRate", Measure.FREQUENCY, 0.5 / 60, 5)
        + ", "
        + field("volumetricEfficiency", Measure.FRACTION, 0.2, 1)
        + ", "
        + field("pressureLimit", Measure.PRESSURE, 1e4, 5e7)
        + perhaps(field("mechanicalEfficiency", Measure.FRACTION, 0.2, 1))
        + "}";
  }

  private String lane(boolean line) {
    boolean depth = random.nextBoolean();
    return "{"
        + field("length", Measure.LENGTH, 1, 500)
        + ", "
        + field("width", Measure.LENGTH, 0.2, 50)
        + ", "
        + field("slope", Measure.SLOPE, depth ? 0 : 1e-6, 0.1)
        + ", "
        + field("manning", Measure.NUMBER, 0.008, 0.06)
        + ", "
        + field("flow", Measure.FLOW, 5e-5, 2)
        + ", "
        + field("sandStorageDepth", Measure.LENGTH, 0.005, 5)
        + (depth ? ", " + field("depth", Measure.LENGTH, 0.005, 5) : "")
        + (line && random.nextBoolean()
            ? ""
            : ", " + field("sandVolumeFraction", Measure.FRACTION, 0, 0.4))
        + perhaps(field("runningTime", Measure.TIME, 60, 86400))
        + perhaps(field("coatingFactor", Measure.FRACTION, 0.3, 1))
        + "}";
  }

  private String criteria() {
    return "{"
        + field("velocityMarginShare", Measure.FRACTION, 0, 2)
        + ", "
        + field("velocityMargin", Measure.SPEED, 0, 3)
        + ", "
        + field("wearVelocity", Measure.SPEED, 0.5, 10)
        + ", "
        + field("pressureShare", Measure.FRACTION, 0.1, 1)
        + ", "
        + field("sandCapture", Measure.FRACTION, 0, 1)
        + ", \"worstSizeGoverns\": \""
        + (random.nextBoolean() ? "yes" : "no")
        + "\"}";
  }

  private String plausible() {
    double velocity = 0.8 + 3 * random.nextDouble();
    String[] sizes = {"3 in", "4 in", "6 in", "8 in", "10 in", "12 in"};
    double[] bores = {0.078, 0.102, 0.154, 0.203, 0.254, 0.303};
    int size = random.nextInt(sizes.length);
    double flow = velocity * Math.PI / 4 * bores[size] * bores[size];
    double d50 = 0.15e-3 * Math.pow(8, random.nextDouble());
    return "{ \"formatVersion\": 1, \"sand\": {"
        + field("d50", Measure.LENGTH, d50)
        + ", "
        + field("d85", Measure.LENGTH, d50 * (1.2 + 2 * random.nextDouble()))
        + "}, \"carrier\": {"
        + field("temperature", Measure.TEMPERATURE, 275 + 25 * random.nextDouble())
        + (random.nextBoolean()
            ? ", \"kind\": \"water\"}"
            : ", \"kind\": \"manure\", "
                + field("totalSolids", Measure.FRACTION, 0.05 * random.nextDouble())
                + "}")
        + ", \"mixture\": {"
        + field("volumeFraction", Measure.FRACTION, 0.005 + 0.12 * random.nextDouble())
        + "}, \"flow\": {"
        + field("minimum", Measure.FLOW, flow * (0.7 + 0.3 * random.nextDouble()))
        + ", "
        + field("design", Measure.FLOW, flow)
        + "}, \"route\": { \"runs\": [{"
        + field("length", Measure.LENGTH, 20 + 300 * random.nextDouble())
        + ", "
        + field("rise", Measure.LENGTH, 10 * random.nextDouble() - 2)
        + ", \"pipe\": {\"system\": \"ASTM D1785\", \"size\": \""
        + sizes[size]
        + "\", \"class\": \"Sch 40\"}}]}}";
  }

  private String odd() {
    double bore = between(0.05, 0.3);
    double flow = between(0.3, 4) * Math.PI / 4 * bore * bore;
    double d50 = between(1e-4, 2e-3);
    String carrier =
        switch (random.nextInt(4)) {
          case 0 -> "\"kind\": \"water\"";
          case 1 -> "\"kind\": \"manure\", " + field("totalSolids", Measure.FRACTION, 0.01, 0.12);
          case 2 ->
              "\"kind\": \"measured\", \"density\": \"1020 kg/m3\", "
                  + field("viscosity", Measure.VISCOSITY, 1e-3, 0.5);
          default ->
              "\"kind\": \"rheology\", \"law\": \"Herschel-Bulkley\","
                  + " \"density\": \"1030 kg/m3\", \"yieldStress\": \""
                  + between(0.05, 60)
                  + " Pa\", \"consistency\": "
                  + between(0.01, 20)
                  + ", \"index\": "
                  + between(0.3, 0.9);
        };
    int count = 1 + random.nextInt(3);
    StringBuilder runs = new StringBuilder();
    for (int i = 0; i < count; i++) {
      double length = between(3, 400);
      double slope =
          switch (random.nextInt(4)) {
            case 0 -> 0;
            case 1 -> between(-0.9, 0.9);
            default -> between(-0.1, 0.1);
          };
      runs.append(i == 0 ? "{" : ", {")
          .append(field("length", Measure.LENGTH, length))
          .append(", ")
          .append(field("rise", Measure.LENGTH, Math.max(-100, Math.min(100, slope * length))))
          .append(", ")
          .append(field("bore", Measure.LENGTH, bore * (i == 0 ? 1 : between(0.8, 1.6))))
          .append(", ")
          .append(field("roughness", Measure.LENGTH, 2e-6, 2e-4))
          .append("}");
    }
    return "{ \"formatVersion\": 1, \"units\": \""
        + (us ? "US" : "metric")
        + "\", \"sand\": {"
        + field("d50", Measure.LENGTH, d50)
        + ", "
        + field("d85", Measure.LENGTH, Math.min(0.02, d50 * between(1.1, 10)))
        + "}, \"carrier\": {"
        + field("temperature", Measure.TEMPERATURE, 274, 303)
        + ", "
        + carrier
        + "}, \"mixture\": {"
        + field("volumeFraction", Measure.FRACTION, 0.001, 0.3)
        + "}, \"flow\": {"
        + field("minimum", Measure.FLOW, flow * between(0.6, 1))
        + ", "
        + field("design", Measure.FLOW, flow)
        + ", "
        + field("maximum", Measure.FLOW, flow * between(1, 1.4))
        + "}, \"route\": { \"sourceLevel\": \"1 m\", \"runs\": ["
        + runs
        + "]}}";
  }
}
