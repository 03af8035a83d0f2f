package sandslurry.design;

import java.util.List;
import java.util.Optional;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Type;
import sandslurry.fact.Values;

/** The texts that the title block of a report holds; nothing is computed of them. */
final class TitleBlockFields extends Fields<List<String>> {
  private final List<Field<Optional<String>>> texts =
      List.of(
          text("project", "Project", "the project that the design belongs to", "Barn 2"),
          text("site", "Site", "where it is built", "North yard"),
          text("client", "Client", "for whom it is designed", "Example Dairy"),
          text("designer", "Designer", "who designs it", "A. Example"),
          text("checker", "Checker", "who checks it", "B. Example"),
          text("revision", "Revision", "which issue of the design it is", "1"));

  TitleBlockFields() {
    super("titleBlock", "title block");
  }

  private Field<Optional<String>> text(String name, String label, String meaning, String example) {
    return optional(name, Type.text(), "left free to be filled in")
        .label(label)
        .means(meaning)
        .such(example);
  }

  @Override
  protected Optional<List<String>> make(Values values) {
    return Optional.of(texts.stream().flatMap(field -> values.get(field).stream()).toList());
  }
}
