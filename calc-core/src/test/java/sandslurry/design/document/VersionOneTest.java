package sandslurry.design.document;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sandslurry.design.Documents;
import sandslurry.golden.Shipped;

class VersionOneTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Path OLD =
      Path.of("src", "test", "resources", "version-1", "two-pumps-six-states.json");

  /** A design as version 1 had it: the parts of its line at the top. */
  private static String old(DesignDocument document) throws Exception {
    ObjectNode root = (ObjectNode) JSON.readTree(document.toString());
    JsonNode line = root.at("/lines/0");
    root.remove("lines");
    if (line instanceof ObjectNode parts) {
      parts.remove("name");
      root.setAll(parts);
    }
    return root.put("formatVersion", 1).toString();
  }

  /** Version 1 had one line. */
  private static DesignDocument oneLine(DesignDocument document) {
    DesignDocument one = document;
    while (one.size("/lines") > 1) {
      one = one.without("/lines/1");
    }
    return one;
  }

  private static List<Problem> problems(String text) throws Exception {
    return DesignDocument.parse(text).read().problems();
  }

  /** A design to be compared: all that it holds, without the addresses of its objects. */
  private static String design(DesignDocument document) {
    return document.read().design().orElseThrow().toString().replaceAll("@[0-9a-f]+", "");
  }

  private static String old() throws Exception {
    return old(Documents.line());
  }

  @Test
  void everyExampleOfVersionOneIsTheDesignThatItIsNow() throws Exception {
    for (String file : Shipped.files()) {
      DesignDocument now =
          oneLine(DesignDocument.load(Shipped.FOLDER.resolve(file))).without("/lines/0/name");
      DesignDocument then = DesignDocument.parse(old(now));
      assertThat(then.isOld()).isTrue();
      assertThat(now.isOld()).isFalse();
      assertThat(design(then)).as(file).isEqualTo(design(now));
      DesignDocument saved = DesignDocument.parse(then.toString());
      assertThat(saved.isOld()).isFalse();
      assertThat(JSON.readTree(saved.toString())).isEqualTo(JSON.readTree(now.toString()));
    }
  }

  @Test
  void aFileThatWasSavedInVersionOneIsReadAsItWasMeant() throws Exception {
    assertThat(Files.readString(OLD)).contains("\"formatVersion\": 1");
    assertThat(design(DesignDocument.load(OLD)))
        .isEqualTo(design(DesignDocument.load(Shipped.FOLDER.resolve(OLD.getFileName()))));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          /flow/design         | "460 psi"
          /flow/desing         | "460 gpm"
          /route/runs/0/length | "0 ft"
          /mixture             | 5
          /pump/kind           | "ram"
          /states/coldest      | null
          /route/runs/0/a~1b   | 1
          /sand/d10            | "1 mm"
          /colour              | "red"
          /lines0              | []
          """)
  void aProblemIsNamedAtItsPlaceInTheFile(String place, String value) throws Exception {
    ObjectNode root = (ObjectNode) JSON.readTree(old());
    int cut = place.lastIndexOf('/');
    ObjectNode group = root;
    if (cut > 0) {
      JsonNode there = root.at(place.substring(0, cut));
      group = there instanceof ObjectNode object ? object : root.putObject(place.substring(1, cut));
    }
    group.set(place.substring(cut + 1).replace("~1", "/"), JSON.readTree(value));
    assertThat(problems(root.toString())).extracting(Problem::field).contains(place);
    // Nothing that was typed is lost.
    DesignDocument document = DesignDocument.parse(root.toString());
    assertThat(document.json(place)).isEqualTo(value.equals("5") ? "5" : value);
    // The form has the places of the file as it will be saved.
    assertThat(document.renewed().read().problems())
        .extracting(Problem::field)
        .contains(VersionOne.renewed(place));
  }

  @Test
  void whatIsNotKnownAtTheTopIsToldWithTheFieldsOfThatVersion() throws Exception {
    String spoilt = old().replaceFirst("\\{", "{\"colour\": \"red\",");
    assertThat(problems(spoilt))
        .singleElement()
        .extracting(Problem::message)
        .asString()
        .contains("mixture, dilution, flow, route")
        .doesNotContain("lines");
  }

  @Test
  void whatIsMissingIsToldOfTheLineOfThatVersion() throws Exception {
    ObjectNode root = (ObjectNode) JSON.readTree(old());
    root.remove("route");
    assertThat(problems(root.toString())).extracting(Problem::field).containsExactly("/route");
    root.remove(VersionOne.PARTS);
    assertThat(problems(root.toString())).extracting(Problem::field).containsExactly("/route");
    root.remove("formatVersion");
    assertThat(problems(root.toString()))
        .extracting(Problem::field)
        .containsExactly("/formatVersion", "/lines");
  }

  @Test
  void aFileThatDoesNotSayItsVersionIsReadAsItLooks() throws Exception {
    assertThat(problems(old().replace("\"formatVersion\":1,", "")))
        .extracting(Problem::field)
        .containsExactly("/formatVersion");
    assertThat(problems(old().replace("\"formatVersion\":1", "\"formatVersion\":\"1\""))).isEmpty();
  }

  @Test
  void linesAreNotOfVersionOneAndAreNotLost() throws Exception {
    String both = old().replaceFirst("\\{", "{\"lines\": [{\"name\": \"A\"}],");
    DesignDocument document = DesignDocument.parse(both);
    assertThat(document.read().problems())
        .anySatisfy(
            problem -> {
              assertThat(problem.field()).isEqualTo("/formatVersion");
              assertThat(problem.message()).contains("\"lines\" belong to version 2");
            });
    assertThat(JSON.readTree(document.toString())).isEqualTo(JSON.readTree(both));
  }

  @Test
  void aPartOfALineAtTheTopOfVersionTwoIsToldItsPlace() throws Exception {
    List<Problem> told = problems(old().replace("\"formatVersion\":1", "\"formatVersion\":2"));
    assertThat(told)
        .extracting(Problem::field)
        .containsExactlyInAnyOrder("/lines", "/mixture", "/flow", "/route", "/pump");
    assertThat(told)
        .filteredOn(problem -> !problem.field().equals("/lines"))
        .allSatisfy(
            problem ->
                assertThat(problem.message())
                    .endsWith("in version 2 its place is /lines/0" + problem.field()));
  }

  @Test
  void anotherVersionIsRefused() throws Exception {
    for (String version : List.of("0", "3", "99", "\"two\"", "1.5", "true", "[1]", "{}")) {
      for (String text : List.of(old(), Documents.line().toString())) {
        String other =
            text.replaceFirst("\"formatVersion\" ?: ?\\d", "\"formatVersion\":" + version);
        assertThat(problems(other))
            .as(other)
            .anySatisfy(problem -> assertThat(problem.field()).isEqualTo("/formatVersion"));
      }
    }
  }

  @Test
  void anAddressOfVersionOneMeansTheFirstLine() throws Exception {
    DesignDocument line = Documents.line();
    assertThat(line.with("/flow/design", "470 gpm"))
        .isEqualTo(line.with("/lines/0/flow/design", "470 gpm"));
    assertThat(line.without("/pump")).isEqualTo(line.without("/lines/0/pump"));
    assertThat(line.size("/route/runs")).isEqualTo(1);
    // What stands at the top against the rules can be taken away, and nothing else goes with it.
    DesignDocument stray =
        DesignDocument.parse(line.toString().replaceFirst("\\{", "{\"flow\": {\"a\": 1},"));
    assertThat(stray.read().problems()).extracting(Problem::field).containsExactly("/flow");
    assertThat(stray.without("/flow")).isEqualTo(line);
  }
}
