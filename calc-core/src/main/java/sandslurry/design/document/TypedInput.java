package sandslurry.design.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sandslurry.design.DesignFields;
import sandslurry.fact.Content;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Kinds;
import sandslurry.fact.Listed;
import sandslurry.fact.Seen;
import sandslurry.fact.Span;
import sandslurry.fact.Tree;
import sandslurry.fact.Type;
import sandslurry.units.ShownText;

/**
 * An input as it was typed, or the default that counts because nothing was typed.
 *
 * @param part the part of the design, in words
 * @param label what it is, in the trade's words
 * @param text what was typed, or the default
 * @param si how it was understood, in SI; empty where it tells no more or is no quantity
 * @param assumed whether nothing was typed
 */
public record TypedInput(
    String part, String label, String text, Optional<String> si, boolean assumed) {
  /** What is left out, and is not nothing, is said in words that begin so. */
  private static final String DEFAULT = "default: ";

  /** Puts the text on one line, without characters that cannot be seen. */
  public TypedInput {
    text = ShownText.escaped(text.replaceAll("\\s+", " "));
  }

  /** Every input of a design in the order of its fields. */
  static List<TypedInput> all(Tree root) {
    List<TypedInput> inputs = new ArrayList<>();
    new Walk(root, inputs).group(DesignFields.DESIGN, root, root, "");
    return List.copyOf(inputs);
  }

  /** Goes down from group to group. */
  private record Walk(Tree root, List<TypedInput> inputs) {
    void group(Fields<?> fields, Tree around, Tree here, String part) {
      Seen seen = new Seen(root, around, here);
      for (Field<?> field : fields.all()) {
        Tree value = here.at(field.name());
        if (!fields.applies(field, seen)) {
          continue;
        }
        if (value.isThere()) {
          field.content().match(new There(this, here, value, part, field.label()));
        } else if (field.absent().startsWith(DEFAULT) && fields.isShown(field, seen)) {
          String meant = field.absent().substring(DEFAULT.length());
          inputs.add(new TypedInput(part, field.label(), meant, Optional.empty(), true));
        } else if (!field.isNeeded() && !field.isOptional() && fields.isShown(field, seen)) {
          field.content().match(new Assumed(this, here, value, part, field));
        }
      }
    }

    void kinds(Kinds<?> kinds, Tree around, Tree here, String part) {
      String name = here.at(kinds.kind().name()).text().orElse("").strip();
      kinds.all().stream()
          .filter(fields -> fields.name().equalsIgnoreCase(name))
          .findFirst()
          .ifPresent(fields -> group(fields, around, here, part));
    }
  }

  /** A field in which something stands. */
  private record There(Walk walk, Tree around, Tree value, String part, String label)
      implements Content.Cases<Void> {
    private String below() {
      return part.isEmpty() ? label : part + ", " + label;
    }

    @Override
    public Void text(Type<?> type) {
      String text = value.text().orElse("");
      walk.inputs()
          .add(new TypedInput(part, label, meant(type, text), type.understood(text), false));
      return null;
    }

    @Override
    public Void span(Span<?> span) {
      List<String> ends = new ArrayList<>();
      for (String end : List.of("low", "base", "high")) {
        value.at(end).text().ifPresent(ends::add);
      }
      String text = value.text().orElse(String.join(" / ", ends));
      walk.inputs().add(new TypedInput(part, label, text, Optional.empty(), false));
      return null;
    }

    @Override
    public Void group(Fields<?> fields) {
      walk.group(fields, around, value, below());
      return null;
    }

    @Override
    public Void kinds(Kinds<?> kinds) {
      walk.kinds(kinds, around, value, below());
      return null;
    }

    @Override
    public Void list(Listed<?> list) {
      int number = 1;
      for (Tree entry : value.entries()) {
        Optional<String> name = entry.at("name").text();
        if (list.entry() == DesignFields.LINE) {
          // The parts of the only line need not say whose they are.
          String line = value.entries().size() == 1 ? "" : name.orElse("Line " + number);
          walk.group(DesignFields.LINE, value, entry, line);
        } else {
          String one = name.orElse(label.split("[;,:]")[0] + " " + number);
          list.entry().match(new There(walk, value, entry, part, one));
        }
        number++;
      }
      return null;
    }
  }

  /** A field in which nothing stands and whose default counts. */
  private record Assumed(Walk walk, Tree around, Tree value, String part, Field<?> field)
      implements Content.Cases<Void> {
    @Override
    public Void text(Type<?> type) {
      if (field.standard().isEmpty()) {
        return null;
      }
      walk.inputs()
          .add(
              new TypedInput(
                  part,
                  field.label(),
                  meant(type, field.standard()),
                  type.understood(field.standard()),
                  true));
      return null;
    }

    @Override
    public Void span(Span<?> span) {
      if (field.standard().isEmpty()) {
        return null;
      }
      walk.inputs()
          .add(new TypedInput(part, field.label(), field.standard(), Optional.empty(), true));
      return null;
    }

    @Override
    public Void group(Fields<?> fields) {
      // A group that need not be written has defaults of its own, such as the criteria.
      walk.group(
          fields, around, value, part.isEmpty() ? field.label() : part + ", " + field.label());
      return null;
    }

    @Override
    public Void kinds(Kinds<?> kinds) {
      return null;
    }

    @Override
    public Void list(Listed<?> list) {
      return null;
    }
  }

  /** A choice in words; any other text as it is. */
  private static String meant(Type<?> type, String text) {
    return type.choices().getOrDefault(text.strip(), text);
  }
}
