package sandslurry.design;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.Problem;
import sandslurry.design.document.Reading;
import sandslurry.golden.Shipped;

/** Whatever stands in any place of a design, it is read or refused with a reason. */
class WrongTypesProperties {
  private static final ObjectMapper JSON = new ObjectMapper();

  private static final List<String> WRONG =
      List.of(
          "null",
          "[]",
          "{}",
          "[null]",
          "[{}]",
          "[[]]",
          "{\"\": {}}",
          "true",
          "-1",
          "1e400",
          "\"\"",
          "\"x\"",
          "\"NaN\"",
          "\"1e308\"",
          "\"-1 %\"",
          "\"\\u202e\"");

  /** A place of a shipped design. */
  record Place(String file, String pointer) {}

  private static void collect(String file, String pointer, JsonNode node, List<Place> places) {
    if (!pointer.isEmpty()) {
      places.add(new Place(file, pointer));
    }
    node.properties()
        .forEach(field -> collect(file, pointer + "/" + field.getKey(), field.getValue(), places));
    for (int i = 0; node.isArray() && i < node.size(); i++) {
      collect(file, pointer + "/" + i, node.get(i), places);
    }
  }

  private static JsonNode tree(String file) throws IOException {
    return JSON.readTree(Files.readString(Shipped.FOLDER.resolve(file)));
  }

  @Provide
  Arbitrary<Place> places() throws IOException {
    List<Place> places = new ArrayList<>();
    for (String file : Shipped.files()) {
      collect(file, "", tree(file), places);
    }
    return Arbitraries.of(places);
  }

  @Provide
  Arbitrary<String> wrong() {
    return Arbitraries.of(WRONG);
  }

  @Property(tries = 20_000)
  void itIsReadOrRefusedWithAReason(@ForAll("places") Place place, @ForAll("wrong") String wrong)
      throws Exception {
    JsonNode root = tree(place.file());
    int cut = place.pointer().lastIndexOf('/');
    String name = place.pointer().substring(cut + 1);
    if (root.at(place.pointer().substring(0, cut)) instanceof ArrayNode list) {
      list.set(Integer.parseInt(name), "here");
    } else {
      ((ObjectNode) root.at(place.pointer().substring(0, cut))).put(name, "here");
    }
    DesignDocument document = DesignDocument.parse(root.toString().replace("\"here\"", wrong));
    Reading reading = document.read();

    assertThat(reading.design().isPresent()).isEqualTo(reading.problems().isEmpty());
    assertThat(reading.problems())
        .extracting(Problem::toString)
        .allSatisfy(
            told ->
                assertThat(told)
                    .doesNotContain("Exception", "sandslurry.")
                    .doesNotContainPattern("[\\p{Cntrl}\\p{Cf}]"));
    // Nothing that stands in a file is lost on its way through the program.
    assertThat(DesignDocument.parse(document.toString())).isEqualTo(document);
  }
}
