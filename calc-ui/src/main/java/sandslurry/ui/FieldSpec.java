package sandslurry.ui;

import java.util.List;
import java.util.stream.Collectors;
import sandslurry.design.DesignDocument;

/**
 * What the form says of one text field.
 *
 * @param label its label, in the words of the trade
 * @param field its name in the file
 * @param standard the text that counts when it is left empty; empty for a field that is needed or
 *     that may stay away
 * @param empty what an empty field means, shown in it
 * @param examples texts that would be right, one in metric units first
 */
record FieldSpec(String label, String field, String standard, String empty, List<String> examples) {

  static FieldSpec needed(String label, String field, String... examples) {
    String such = "such as " + examples[examples.length - 1];
    return new FieldSpec(label, field, "", such, List.of(examples));
  }

  static FieldSpec optional(String label, String field, String empty, String... examples) {
    return new FieldSpec(label, field, "", empty, List.of(examples));
  }

  static FieldSpec standard(String label, String field, String standard, String... examples) {
    return new FieldSpec(label, field, standard, "default " + standard, List.of(examples));
  }

  /**
   * Says what may be typed. The range is asked of the reader itself: a text far outside makes it
   * name the limits, so they are written down in one place only.
   */
  String help(DesignDocument document, String pointer) {
    if (examples.isEmpty()) {
      return label;
    }
    String ranges =
        examples.stream()
            .map(example -> range(document, pointer, example))
            .filter(text -> !text.isEmpty())
            .distinct()
            .collect(Collectors.joining(", or "));
    String such = "Such as " + String.join(" or ", examples) + ".";
    return ranges.isEmpty() ? such : such + " Allowed: " + ranges + ".";
  }

  private static String range(DesignDocument document, String pointer, String example) {
    String absurd = example.replaceFirst("^[-+0-9.]+", "1e30");
    return document.with(pointer, absurd).read().problems().stream()
        .filter(p -> p.field().equals(pointer) && p.message().startsWith("must be "))
        .map(p -> p.message().substring("must be ".length()))
        .findFirst()
        .orElse("");
  }
}
