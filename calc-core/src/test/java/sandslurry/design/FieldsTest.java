package sandslurry.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import sandslurry.design.document.DesignDocument;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Kinds;
import sandslurry.fact.Listed;
import sandslurry.fact.Part;
import sandslurry.fact.Span;
import sandslurry.fact.Type;

/** What holds for every field, of whatever part. */
class FieldsTest {
  private static final Pattern NUMBER = Pattern.compile("^(-?\\d+(?:\\.\\d+)?)(.*)$");

  private static List<Field<?>> all() {
    Set<Field<?>> found = new LinkedHashSet<>();
    collect(DesignFields.DESIGN, found);
    return new ArrayList<>(found);
  }

  private static void collect(Part<?> part, Set<Field<?>> found) {
    List<Field<?>> fields = new ArrayList<>();
    if (part instanceof Kinds<?> kinds) {
      kinds.all().forEach(kind -> fields.addAll(kind.all()));
    } else {
      fields.addAll(((Fields<?>) part).all());
    }
    for (Field<?> field : fields) {
      if (found.add(field)) {
        if (field.content() instanceof Part<?> inner) {
          collect(inner, found);
        } else if (field.content() instanceof Listed<?> list) {
          collect(list.entry(), found);
        }
      }
    }
  }

  @Test
  void everyFieldSaysWhatItIsAndItsExamplesAndItsDefaultAreRight() {
    assertThat(all()).hasSizeGreaterThan(220);
    for (Field<?> field : all()) {
      assertThat(field.label()).as(field.name()).isNotBlank().hasSizeLessThan(60);
      assertThat(field.meaning()).as(field.name()).isNotBlank().doesNotEndWith(".");
      if (field.isOptional()) {
        assertThat(field.absent()).as(field.name()).isNotBlank();
      }
      Type<?> type =
          field.content() instanceof Span<?> span
              ? span.type()
              : field.content() instanceof Type<?> text ? text : null;
      if (type != null) {
        field.examples().forEach(example -> assertThat(type.parse(example)).isNotNull());
        assertThat(type.parse(field.standard().isEmpty() ? first(field, type) : field.standard()))
            .as(field.name())
            .isNotNull();
      }
    }
  }

  private static String first(Field<?> field, Type<?> type) {
    return type.choices().isEmpty()
        ? field.examples().isEmpty() ? "a text" : field.examples().get(0)
        : type.choices().keySet().iterator().next();
  }

  @Test
  void everyNumberThatIsTypedReachesTheDesign() {
    int changed = 0;
    for (DesignDocument document :
        List.of(Documents.line(), Documents.lane(), Documents.plant(), Documents.flushedPlant())) {
      String before = words(document);
      for (String address : leaves(document, "")) {
        Matcher number = NUMBER.matcher(document.text(address));
        if (!number.matches()
            || address.matches("/sand/d.5|/sand/d50|/sand/gradation.*|.*/size|/formatVersion")) {
          continue;
        }
        double value = Double.parseDouble(number.group(1));
        String other = (value == 0 ? "0.0" : value * 0.9999 + "") + number.group(2);
        DesignDocument moved = document.with(address, other);
        if (value != 0 && moved.read().problems().isEmpty()) {
          assertThat(words(moved)).as(address).isNotEqualTo(before);
          changed++;
        }
      }
    }
    assertThat(changed).isGreaterThan(70);
  }

  private static List<String> leaves(DesignDocument document, String at) {
    List<String> found = new ArrayList<>();
    for (int i = 0; i < document.size(at); i++) {
      found.addAll(leaves(document, at + "/" + i));
    }
    for (String name : document.seen(at).here().names()) {
      found.addAll(leaves(document, at + "/" + name));
    }
    if (!document.text(at).isEmpty()) {
      found.add(at);
    }
    return found;
  }

  /** The design in words; a gradation, which is the same in all, shows only its address. */
  private static String words(DesignDocument document) {
    return document.read().design().orElseThrow().toString().replaceAll("@[0-9a-f]+", "");
  }
}
