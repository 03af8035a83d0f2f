package sandslurry.study;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.DesignTextException;
import sandslurry.pipe.catalogue.PipeCatalogue;
import sandslurry.pipe.catalogue.StandardPipe;

/**
 * Lines of all kinds: one to three runs, level or steep, in standard pipes or by their bore; sand
 * of a standard, log-normal or with coarse stones; water, liquor, a laboratory's value; a pump or
 * none.
 */
final class RandomLines {
  private RandomLines() {}

  static DesignDocument parse(String text) {
    try {
      return DesignDocument.parse(text);
    } catch (DesignTextException e) {
      throw new IllegalStateException(e);
    }
  }

  static DesignDocument of(Random random) {
    double flow = Math.round(10 * Math.exp(1.2 + 3.2 * random.nextDouble())) / 10.0;
    String highest = random.nextInt(3) == 0 ? ", \"highestSandFraction\": \"14 %\"" : "";
    return parse(
        String.format(
            Locale.ROOT,
            """
            {"formatVersion": 1, "title": "random line", "units": "%s", "sand": {%s},
             "carrier": {%s}, "mixture": {%s},
             "flow": {"minimum": "%s L/s", "design": "%s L/s", "maximum": "%s L/s"%s},
             "route": {"runs": [%s]}%s}
            """,
            random.nextBoolean() ? "US" : "metric",
            sand(random),
            carrier(random),
            mixture(random, flow),
            flow,
            Math.round(11 * flow) / 10.0,
            Math.round(12 * flow) / 10.0,
            highest,
            IntStream.rangeClosed(1, 1 + random.nextInt(3))
                .mapToObj(i -> run(random, i, flow))
                .collect(Collectors.joining(", ")),
            random.nextInt(3) == 0 ? pump(random, flow) : ""));
  }

  private static String sand(Random random) {
    return switch (random.nextInt(4)) {
      case 0 -> "\"gradation\": \"ASTM C33\"";
      case 1 -> "\"gradation\": \"ASTM C144\"";
      case 2 -> "\"d50\": \"0.3 mm\", \"d85\": \"0.6 mm\"";
      default ->
          "\"gradation\": [{\"size\": \"0.15 mm\", \"passing\": \"5 %\"},"
              + " {\"size\": \"0.6 mm\", \"passing\": \"80 %\"},"
              + " {\"size\": \"3 mm\", \"passing\": \"85 %\"},"
              + " {\"size\": \"8 mm\", \"passing\": \"100 %\"}]";
    };
  }

  private static String carrier(Random random) {
    return switch (random.nextInt(5)) {
      case 0 ->
          "\"kind\": \"manure\", \"temperature\": \"12 degC\", \"totalSolids\": \""
              + (1 + random.nextInt(6))
              + " %\"";
      case 1 ->
          "\"kind\": \"manure\", \"temperature\": \"50 degF\", \"laboratory\":"
              + " {\"totalSolids\": \"9 %\", \"sand\": \"5 %\"}";
      default -> "\"kind\": \"water\", \"temperature\": \"" + (4 + random.nextInt(20)) + " degC\"";
    };
  }

  private static String mixture(Random random, double flow) {
    return switch (random.nextInt(4)) {
      case 0 -> "\"massFraction\": \"6 %\"";
      case 1 -> String.format(Locale.ROOT, "\"sandRate\": \"%.2f kg/s\"", 0.05 * flow);
      default ->
          "\"volumeFraction\": \"" + List.of("0.1", "1", "3", "8").get(random.nextInt(4)) + " %\"";
    };
  }

  /** Of a bore that the flow rate passes at 1 to 4 m/s. */
  private static String run(Random random, int number, double flowLps) {
    double velocity = 1 + 3 * random.nextDouble();
    double bore = Math.sqrt(4 * flowLps / 1000 / Math.PI / velocity);
    String pipe =
        random.nextInt(3) == 0
            ? String.format(
                Locale.ROOT, "\"bore\": \"%.0f mm\", \"roughness\": \"0.05 mm\"", 1000 * bore)
            : typed(nearest(random, bore));
    int length = 6 + random.nextInt(150);
    double slope = random.nextInt(4) == 0 ? 0.6 * random.nextDouble() : 0.01;
    return String.format(
        Locale.ROOT,
        "{\"name\": \"Run %d\", %s, \"length\": \"%d m\", \"rise\": \"%.1f m\"}",
        number,
        pipe,
        length,
        slope * Math.min(length, 30));
  }

  private static StandardPipe nearest(Random random, double boreM) {
    List<StandardPipe> pipes =
        PipeCatalogue.all().stream()
            .filter(pipe -> Math.abs(Math.log(pipe.meanBoreM() / boreM)) < 0.3)
            .toList();
    List<StandardPipe> some = pipes.isEmpty() ? PipeCatalogue.all() : pipes;
    return some.get(random.nextInt(some.size()));
  }

  private static String typed(StandardPipe pipe) {
    return String.format(
        "\"pipe\": {\"system\": \"%s\", \"size\": \"%s\", \"class\": \"%s\"}",
        pipe.system().standard(), pipe.size(), pipe.wallClass());
  }

  private static String pump(Random random, double flowLps) {
    double head = 8 + 40 * random.nextDouble();
    return String.format(
        Locale.ROOT,
        """
        , "pump": {"kind": "rotodynamic", "curveSpeed": "1450 rpm", "speed": "%d rpm",
         "impeller": "300 mm", "curve": [
          {"flow": "0 L/s", "head": "%.1f m", "efficiency": "0 %%"},
          {"flow": "%.1f L/s", "head": "%.1f m", "efficiency": "48 %%"},
          {"flow": "%.1f L/s", "head": "%.1f m", "efficiency": "50 %%"},
          {"flow": "%.1f L/s", "head": "%.1f m", "efficiency": "30 %%"}]}
        """,
        1200 + random.nextInt(500),
        1.2 * head,
        0.7 * flowLps,
        1.1 * head,
        1.2 * flowLps,
        head,
        2 * flowLps,
        0.5 * head);
  }
}
