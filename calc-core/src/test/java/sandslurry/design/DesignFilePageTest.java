package sandslurry.design;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import sandslurry.pipe.catalogue.PipeCatalogue;
import sandslurry.pipe.fittings.FittingKind;
import sandslurry.transport.deposition.DepositionVelocities;
import sandslurry.units.Measure;

/** The page on the design file says what the reader does. */
class DesignFilePageTest {
  private static final Path DOCS = Path.of("..", "docs");
  private static final Pattern ROW =
      Pattern.compile("\\| `(/[^`]+)` \\|[^|]*\\|[^|]*\\| ([^|]* to [^|]*) \\|([^|]*)\\|");
  private static final Pattern SNIPPET = Pattern.compile("```json\n(.*?)```", Pattern.DOTALL);
  private static final Pattern KNOWN = Pattern.compile("the fields are: (.*)");

  private static String page() throws IOException {
    return Files.readString(DOCS.resolve("design-file.md"));
  }

  /** For each field a document in which it may stand. */
  private static DesignDocument base(String field) {
    if (field.startsWith("/lane")) {
      return Documents.lane();
    }
    if (field.startsWith("/plant/targets/gradation")) {
      return Documents.plant()
          .insert("/plant/targets/gradation", 0, "{\"size\": \"0.3 mm\", \"most\": \"90 %\"}");
    }
    if (field.startsWith("/plant/prices")) {
      String price = field.replaceAll("/[^/]*$", "");
      return field.equals("/plant/prices")
          ? Documents.plant()
          : Documents.plant().with(price + "/price", "2").with(price + "/per", "1");
    }
    if (field.startsWith("/plant/pens/0/flush")) {
      return Documents.flushedPlant();
    }
    if (field.startsWith("/plant/units/7/pumps")) {
      return Documents.plant()
          .insert("/plant/units/7/pumps", 0, "{\"stream\": \"back\", \"flow\": \"1 m3/h\"}");
    }
    if (field.startsWith("/plant")) {
      return Documents.plant();
    }
    DesignDocument line = Documents.line();
    if (field.startsWith("/sand/d")) {
      return field.equals("/sand/density")
          ? line
          : line.without("/sand/gradation").with("/sand/d50", "1 mm").with("/sand/d85", "2 mm");
    }
    if (field.startsWith("/sand/gradation")) {
      return line.without("/sand/gradation")
          .insert("/sand/gradation", 0, "{\"size\": \"4 mm\", \"passing\": \"100 %\"}")
          .insert("/sand/gradation", 1, "{\"size\": \"1 mm\", \"passing\": \"50 %\"}");
    }
    if (field.startsWith("/carrier/readings")) {
      return withCarrier(line, "readings")
          .insert("/carrier/readings", 0, "{\"shearRate\": \"5 1/s\", \"shearStress\": \"2 Pa\"}");
    }
    if (field.startsWith("/carrier/laboratory")) {
      DesignDocument sample =
          line.with("/carrier/kind", "manure").with("/carrier/laboratory/totalSolids", "14 %");
      return field.endsWith("volatileSolids")
          ? sample
          : sample.with("/carrier/laboratory/sand", "6 %");
    }
    if (field.equals("/carrier/totalSolids")) {
      return line.with("/carrier/kind", "manure");
    }
    if (field.equals("/carrier/density") || field.equals("/carrier/viscosity")) {
      return withCarrier(line, "measured").with("/carrier/viscosity", "4 cP");
    }
    if (Set.of("/carrier/yieldStress", "/carrier/consistency", "/carrier/index").contains(field)) {
      return withCarrier(line, "rheology")
          .with("/carrier/law", "Herschel-Bulkley")
          .with("/carrier/yieldStress", "2 Pa")
          .with("/carrier/consistency", "0.8")
          .with("/carrier/index", "0.5");
    }
    if (field.startsWith("/mixture")) {
      return line.without("/mixture");
    }
    if (field.startsWith("/dilution")) {
      return line.with("/carrier/kind", "manure").with("/carrier/totalSolids", "6 %");
    }
    if (field.equals("/route/runs/0/bore") || field.equals("/route/runs/0/rating")) {
      return line.without("/route/runs/0/pipe")
          .with("/route/runs/0/bore", "4 in")
          .with("/route/runs/0/roughness", "0.1 mm");
    }
    if (Set.of(
            "/pump/displacement",
            "/pump/strokeRate",
            "/pump/volumetricEfficiency",
            "/pump/mechanicalEfficiency",
            "/pump/pressureLimit",
            "/pump/npsh",
            "/pump/rodShare",
            "/pump/rodToCrank",
            "/pump/pulsationPassed",
            "/pump/vesselGas",
            "/pump/dwell",
            "/pump/changeover")
        .contains(field)) {
      return line.without("/pump")
          .with("/pump/kind", "piston")
          .with("/pump/displacement", "5 gal")
          .with("/pump/strokeRate", "28 1/min")
          .with("/pump/volumetricEfficiency", "90 %")
          .with("/pump/pressureLimit", "150 psi")
          .with("/pump/cylinders", "2");
    }
    if (field.startsWith("/pump/others")) {
      return line.insert("/pump/others", 0, "{\"curveSpeed\": \"1750 rpm\"}");
    }
    if (field.startsWith("/states/th")) {
      return line.with("/carrier/kind", "manure").with("/carrier/totalSolids", "2 %");
    }
    return line;
  }

  private static DesignDocument withCarrier(DesignDocument document, String kind) {
    return document.with("/carrier/kind", kind).with("/carrier/density", "1010 kg/m3");
  }

  private static Map<String, String[]> rows() throws IOException {
    Map<String, String[]> rows = new LinkedHashMap<>();
    Matcher matcher = ROW.matcher(page());
    while (matcher.find()) {
      String[] before =
          rows.put(
              matcher.group(1), new String[] {matcher.group(2).strip(), matcher.group(3).strip()});
      assertThat(before).as("%s stands once", matcher.group(1)).isNull();
    }
    return rows;
  }

  @Test
  void everyRangeOnThePageIsTheRangeThatTheReaderNames() throws IOException {
    assertThat(rows()).hasSizeGreaterThan(55);
    for (Map.Entry<String, String[]> row : rows().entrySet()) {
      String range = row.getValue()[0];
      String unit = range.contains(" ") ? range.replaceAll("^\\S+( ?\\S*) to .*$", "$1") : "";
      DesignDocument wrong = base(row.getKey()).with(row.getKey(), "-9e6" + unit);
      assertThat(wrong.read().problems())
          .as("%s: %s", row.getKey(), range)
          .anySatisfy(
              problem -> {
                assertThat(problem.field()).isEqualTo(row.getKey());
                assertThat(problem.message()).isEqualTo("must be " + range);
              });
    }
  }

  @Test
  void aFieldWithoutADefaultIsNeededAndOneWithADefaultIsNot() throws IOException {
    for (Map.Entry<String, String[]> row : rows().entrySet()) {
      String said = row.getValue()[1];
      if (!said.startsWith("needed") || said.contains(",")) {
        continue;
      }
      DesignDocument document = base(row.getKey());
      DesignDocument without =
          document.has(row.getKey())
              ? document.without(row.getKey())
              : document.with(row.getKey(), "1").without(row.getKey());
      assertThat(without.read().problems())
          .as(row.getKey())
          .anySatisfy(
              problem -> {
                assertThat(problem.field()).isEqualTo(row.getKey());
                assertThat(problem.message()).startsWith("is missing");
              });
    }
  }

  @Test
  void everyFieldThatTheReaderKnowsStandsOnThePage() throws IOException {
    Set<String> known = new TreeSet<>();
    Set<String> parts = new TreeSet<>(List.of("", "/flow", "/sand/shape", "/criteria"));
    parts.addAll(List.of("/route/runs/0/pipe", "/route/runs/0/fittings/0", "/lane", "/route"));
    for (String field : rows().keySet()) {
      parts.add(field.substring(0, field.lastIndexOf('/')));
      known.addAll(knownBeside(field.substring(0, field.lastIndexOf('/')), base(field)));
    }
    for (String part : parts) {
      known.addAll(knownBeside(part, base(part)));
    }
    assertThat(known).hasSizeGreaterThan(60);
    String page = page();
    for (String name : known) {
      assertThat(page).as(name).containsPattern("[`/]" + Pattern.quote(name) + "[`/]");
    }
  }

  private static List<String> knownBeside(String part, DesignDocument document) {
    return document.with(part + "/unheardOf", "1").read().problems().stream()
        .map(problem -> KNOWN.matcher(problem.message()))
        .filter(Matcher::find)
        .flatMap(found -> Stream.of(found.group(1).split(", ")))
        .toList();
  }

  @Test
  void everySnippetOnEveryPageReadsWithoutAProblem() throws Exception {
    ObjectMapper json = new ObjectMapper();
    int count = 0;
    for (Path file : pages()) {
      Matcher matcher = SNIPPET.matcher(Files.readString(file));
      while (matcher.find()) {
        ObjectNode snippet = (ObjectNode) json.readTree(matcher.group(1));
        ObjectNode whole = snippet;
        if (!snippet.has("formatVersion")) {
          DesignDocument base = snippet.has("lane") ? Documents.lane() : Documents.line();
          whole = (ObjectNode) json.readTree(base.toString());
          whole.setAll(snippet);
        }
        assertThat(DesignDocument.parse(whole.toString()).read().problems())
            .as("%s: %s", file, matcher.group(1))
            .isEmpty();
        count++;
      }
    }
    assertThat(count).isGreaterThanOrEqualTo(10);
  }

  private static List<Path> pages() throws IOException {
    List<Path> pages = new ArrayList<>();
    try (Stream<Path> files = Files.walk(DOCS)) {
      files.filter(file -> file.toString().endsWith(".md")).sorted().forEach(pages::add);
    }
    return pages;
  }

  @Test
  void everyLinkBetweenPagesLeadsSomewhere() throws IOException {
    Pattern link = Pattern.compile("\\]\\(([^)#:]+)(#[^)]*)?\\)");
    for (Path file : pages()) {
      Matcher matcher = link.matcher(Files.readString(file));
      while (matcher.find()) {
        assertThat(file.resolveSibling(matcher.group(1)).normalize())
            .as("link in %s", file)
            .exists();
      }
    }
  }

  @Test
  void everyUnitPipeFittingAndCorrelationOnThePageIsThatOfTheProgram() throws IOException {
    String page = page();
    Set<Measure<?>> used =
        Set.of(
            Measure.LENGTH,
            Measure.SPEED,
            Measure.FLOW,
            Measure.MASS_FLOW,
            Measure.MASS,
            Measure.ENERGY,
            Measure.VOLUME,
            Measure.DENSITY,
            Measure.VISCOSITY,
            Measure.PRESSURE,
            Measure.TEMPERATURE,
            Measure.TIME,
            Measure.FREQUENCY,
            Measure.POWER,
            Measure.SHEAR_RATE,
            Measure.FRACTION);
    for (Measure<?> measure : used) {
      String units =
          measure.units().stream()
              .map(unit -> unit.symbol().isEmpty() ? "a bare number" : "`" + unit.symbol() + "`")
              .collect(Collectors.joining(", "));
      assertThat(page).contains("| " + measure.name() + " | " + units + " |");
    }
    for (String system : PipeCatalogue.systems()) {
      assertThat(page)
          .contains(
              "| `"
                  + system
                  + "` | "
                  + ticked(PipeCatalogue.sizes(system))
                  + " | "
                  + ticked(PipeCatalogue.classes(system))
                  + " |");
    }
    DepositionVelocities.all()
        .forEach(
            model ->
                assertThat(page)
                    .contains(
                        "| `"
                            + model.id()
                            + "` | "
                            + model.name()
                            + " | "
                            + DepositionVelocities.defaultRole(model)
                                .name()
                                .toLowerCase(java.util.Locale.ROOT)
                            + " |"));
    for (FittingKind kind : FittingKind.values()) {
      if (kind != FittingKind.PIPE_EXIT) {
        assertThat(page).contains("`" + kind.id() + "`");
      }
    }
  }

  private static String ticked(List<String> names) {
    return names.stream().map(name -> "`" + name + "`").collect(Collectors.joining(", "));
  }
}
