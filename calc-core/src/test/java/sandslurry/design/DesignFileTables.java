package sandslurry.design;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import sandslurry.fact.Content;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Kinds;
import sandslurry.fact.Listed;
import sandslurry.fact.Part;
import sandslurry.fact.Span;
import sandslurry.fact.Type;

/** The tables of docs/design-file.md, one for each group of fields, by the address of the group. */
final class DesignFileTables {
  private static final String HEAD =
      "| field of `%s | meaning | examples | allowed | left out |\n"
          + "| --- | --- | --- | --- | --- |\n";

  private final Map<String, String> tables = new LinkedHashMap<>();
  private final Set<Part<?>> told = new LinkedHashSet<>();

  private DesignFileTables() {}

  /** All tables. Groups that hold the same fields are told once. */
  static Map<String, String> all() {
    DesignFileTables page = new DesignFileTables();
    page.part("", DesignFields.DESIGN);
    return page.tables;
  }

  private void part(String address, Part<?> part) {
    if (!told.add(part)) {
      return;
    }
    part.match(
        new Groups() {
          @Override
          public Void group(Fields<?> fields) {
            table(address.isEmpty() ? "/" : address, fields.all());
            fields.all().forEach(field -> inside(address, field));
            return null;
          }

          @Override
          public Void kinds(Kinds<?> kinds) {
            table(address, kinds.common().all());
            List<String> common = kinds.common().all().stream().map(Field::name).toList();
            for (Fields<?> fields : kinds.all()) {
              List<Field<?>> own =
                  fields.all().stream().filter(f -> !common.contains(f.name())).toList();
              if (!own.isEmpty()) {
                table(address + " " + fields.name(), own);
              }
              own.forEach(field -> inside(address, field));
            }
            return null;
          }
        });
  }

  private void inside(String address, Field<?> field) {
    String place = address + "/" + field.name();
    if (field.content() instanceof Part<?> part) {
      part(place, part);
    } else if (field.content() instanceof Listed<?> list) {
      part(place + "/0", list.entry());
    }
  }

  private void table(String address, List<Field<?>> fields) {
    StringBuilder rows = new StringBuilder(HEAD.formatted(titled(address)));
    for (Field<?> field : fields) {
      rows.append("| `")
          .append(field.name())
          .append("` | ")
          .append(meaning(field))
          .append(" | ")
          .append(
              field.examples().stream()
                  .map(text -> "`\"" + text + "\"`")
                  .collect(Collectors.joining(", ")))
          .append(" | ")
          .append(allowed(field))
          .append(" | ")
          .append(field.isNeeded() ? "needed" : leftOut(field))
          .append(" |\n");
    }
    String before = tables.put(address, rows.toString());
    if (before != null && !before.equals(rows.toString())) {
      throw new IllegalStateException("two tables for " + address);
    }
  }

  private static String titled(String address) {
    String[] words = address.split(" ");
    return words.length == 1 ? words[0] + "`" : words[0] + "`, kind `" + words[1] + "`";
  }

  private static String meaning(Field<?> field) {
    return field.content() instanceof Span<?> ? field.meaning() + "; *range*" : field.meaning();
  }

  private static String leftOut(Field<?> field) {
    if (field.isOptional()) {
      return field.absent();
    }
    if (field.content() instanceof Listed<?> list && list.isNeeded()) {
      return "needed";
    }
    if (field.content() instanceof Listed<?> || field.content() instanceof Type<?>) {
      return field.standard().isEmpty() ? "none" : "`\"" + field.standard() + "\"`";
    }
    return field.standard().isEmpty() ? "its defaults" : "`\"" + field.standard() + "\"`";
  }

  private static String allowed(Field<?> field) {
    return field
        .content()
        .match(
            new Content.Cases<String>() {
              @Override
              public String text(Type<?> type) {
                if (!type.choices().isEmpty()) {
                  return choices(type.choices());
                }
                String range = type.range("");
                return range.isEmpty() ? "a text" : range;
              }

              @Override
              public String span(Span<?> span) {
                return span.type().range("");
              }

              @Override
              public String group(Fields<?> fields) {
                return "a group `{ ... }`";
              }

              @Override
              public String kinds(Kinds<?> kinds) {
                return "a group `{ ... }`";
              }

              @Override
              public String list(Listed<?> list) {
                return "a list `[ ... ]`";
              }
            });
  }

  private static String choices(Map<String, String> choices) {
    List<String> told = new ArrayList<>();
    choices.forEach(
        (name, words) ->
            told.add("`" + name + "`" + (words.equalsIgnoreCase(name) ? "" : ": " + words)));
    return String.join(", ", told);
  }

  /** What is a group of fields. */
  private interface Groups extends Content.Cases<Void> {
    @Override
    default Void text(Type<?> type) {
      throw new IllegalStateException("no group");
    }

    @Override
    default Void span(Span<?> span) {
      throw new IllegalStateException("no group");
    }

    @Override
    default Void list(Listed<?> list) {
      throw new IllegalStateException("no group");
    }
  }
}
