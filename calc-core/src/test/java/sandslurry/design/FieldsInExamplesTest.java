package sandslurry.design;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import sandslurry.fact.Content;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Kinds;
import sandslurry.fact.Listed;
import sandslurry.fact.Part;
import sandslurry.golden.Shipped;

/** Whoever looks for a field finds it in use: each is in at least one example. */
class FieldsInExamplesTest {
  private final Map<Field<?>, String> declared = new LinkedHashMap<>();
  private final Set<Part<?>> entered = new LinkedHashSet<>();
  private final Set<Field<?>> used = new LinkedHashSet<>();

  @Test
  void everyFieldIsInAtLeastOneExample() throws Exception {
    declare("", DesignFields.DESIGN);
    assertThat(declared).hasSizeGreaterThan(220);
    for (String file : Shipped.files()) {
      use(
          DesignFields.DESIGN,
          new ObjectMapper().readTree(Files.readString(Shipped.FOLDER.resolve(file))));
    }
    Set<String> missing = new TreeSet<>();
    declared.forEach(
        (field, address) -> {
          if (!used.contains(field)) {
            missing.add(address);
          }
        });
    assertThat(missing).as("fields in no example").isEmpty();
  }

  private void declare(String address, Part<?> part) {
    if (!entered.add(part)) {
      return;
    }
    if (part instanceof Kinds<?> kinds) {
      kinds.all().forEach(kind -> declare(address + " " + kind.name(), kind));
      return;
    }
    for (Field<?> field : ((Fields<?>) part).all()) {
      String place = address + "/" + field.name();
      declared.putIfAbsent(field, place);
      Part<?> inner = inner(field.content());
      if (inner != null) {
        declare(place, inner);
      }
    }
  }

  private static Part<?> inner(Content<?> content) {
    return content instanceof Part<?> part
        ? part
        : content instanceof Listed<?> list ? list.entry() : null;
  }

  private void use(Part<?> part, JsonNode typed) {
    if (typed.isArray()) {
      typed.forEach(entry -> use(part, entry));
      return;
    }
    Fields<?> fields = part instanceof Kinds<?> kinds ? chosen(kinds, typed) : (Fields<?>) part;
    for (Field<?> field : fields.all()) {
      if (typed.has(field.name())) {
        used.add(field);
        Part<?> inner = inner(field.content());
        if (inner != null) {
          use(inner, typed.get(field.name()));
        }
      }
    }
  }

  private static Fields<?> chosen(Kinds<?> kinds, JsonNode typed) {
    String kind = typed.path(kinds.kind().name()).asText(kinds.kind().standard());
    return kinds.all().stream()
        .filter(fields -> fields.name().equals(kind))
        .findFirst()
        .orElseThrow(() -> new AssertionError(kind + " is no kind"));
  }
}
