package sandslurry.design;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import sandslurry.design.document.DesignDocument;
import sandslurry.golden.Shipped;
import sandslurry.pipe.catalogue.PipeCatalogue;
import sandslurry.units.Measure;

/** The page on the design file says what the reader does. */
class DesignFilePageTest {
  private static final Path DOCS = Path.of("..", "docs");
  private static final Pattern SNIPPET = Pattern.compile("```json\n(.*?)```", Pattern.DOTALL);
  private static final Path SCHEMA = DOCS.resolve("design.schema.json");
  private static final boolean RENEW = Boolean.getBoolean("fields.renew");

  private static String page() throws IOException {
    return Files.readString(DOCS.resolve("design-file.md"));
  }

  @Test
  void everyTableOfFieldsIsThatOfTheFieldsRead() throws IOException {
    String page = page();
    for (Map.Entry<String, String> table : DesignFileTables.all().entrySet()) {
      String start = "<!-- fields " + table.getKey() + " -->\n";
      int from = page.indexOf(start);
      assertThat(from).as("a place for the fields of %s", table.getKey()).isNotNegative();
      int to = page.indexOf("<!-- end -->", from);
      String told = page.substring(from + start.length(), to);
      if (RENEW) {
        page = page.substring(0, from + start.length()) + table.getValue() + page.substring(to);
      } else {
        assertThat(told).isEqualTo(table.getValue());
      }
    }
    if (RENEW) {
      Files.writeString(DOCS.resolve("design-file.md"), page);
      Files.writeString(SCHEMA, DesignSchema.text());
    }
    assertThat(Files.readString(SCHEMA)).isEqualTo(DesignSchema.text());
    assertThat(page.split("<!-- fields ", -1)).hasSize(DesignFileTables.all().size() + 1);
  }

  @Test
  void everyExampleIsAsTheSchemaHasIt() throws IOException {
    Schema schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(Files.readString(SCHEMA));
    for (String file : Shipped.files()) {
      String text = Files.readString(Shipped.FOLDER.resolve(file));
      assertThat(schema.validate(text, InputFormat.JSON)).as(file).isEmpty();
      for (String wrong : List.of("\"colour\": 1, \"sand\"", "\"units\": \"imperial\", \"sand\"")) {
        String spoilt = text.replaceFirst("\"units\": \"[a-zA-Z]+\",", "");
        spoilt = spoilt.replaceFirst("\"sand\"", wrong);
        assertThat(schema.validate(spoilt, InputFormat.JSON)).as(file).isNotEmpty();
      }
    }
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
          JsonNode line = whole.at("/lines/0");
          for (Map.Entry<String, JsonNode> part : snippet.properties()) {
            boolean ofLine =
                DesignFields.LINE.all().stream().anyMatch(f -> f.name().equals(part.getKey()));
            ((ObjectNode) (ofLine ? line : whole)).set(part.getKey(), part.getValue());
          }
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
  void everyUnitAndPipeOnThePageIsThatOfTheProgram() throws IOException {
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
            Measure.ROTATION,
            Measure.FREQUENCY,
            Measure.POWER,
            Measure.SHEAR_RATE,
            Measure.FRACTION,
            Measure.SLOPE,
            Measure.NUMBER);
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
  }

  private static String ticked(List<String> names) {
    return names.stream().map(name -> "`" + name + "`").collect(Collectors.joining(", "));
  }
}
