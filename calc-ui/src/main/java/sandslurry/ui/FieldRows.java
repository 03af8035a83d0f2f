package sandslurry.ui;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import sandslurry.design.document.DesignDocument;
import sandslurry.fact.Content;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Kinds;
import sandslurry.fact.Listed;
import sandslurry.fact.Part;
import sandslurry.fact.Span;
import sandslurry.fact.Type;

/** Adds the rows of fields to a section: label, tip, default and condition are those declared. */
final class FieldRows {
  /** A table of more columns is too narrow to be read: its entries are edited one at a time. */
  private static final int MOST_COLUMNS = 4;

  private static final String OWN = "sieves";
  private static final String NONE = "none";

  /** Fields that say how an entry is called, not what it is. */
  private static final Set<String> NAMES = Set.of("name", "stream");

  private final FormModel model;
  private final InputSection section;
  private final Supplier<String> at;
  private final Predicate<DesignDocument> there;

  /** What is chosen of fields that exclude each other, until the document shows one. */
  private final Map<List<Field<?>>, Field<?>> chosen = new LinkedHashMap<>();

  /**
   * Prepares the rows of a group.
   *
   * @param model the model
   * @param section where they go
   * @param at pointer of the group
   * @param there when the group is shown
   */
  FieldRows(
      FormModel model, InputSection section, Supplier<String> at, Predicate<DesignDocument> there) {
    this.model = model;
    this.section = section;
    this.at = at;
    this.there = there;
  }

  /** Adds all fields of a part but some. */
  void add(Content<?> content, String... without) {
    if (content instanceof Kinds<?> kinds) {
      addKinds(kinds, Optional.empty(), List::of);
    } else if (content instanceof Fields<?> fields) {
      addAll(fields, Set.of(without));
    } else {
      throw new IllegalArgumentException("no group of fields");
    }
  }

  private void addAll(Fields<?> fields, Set<String> without) {
    for (Field<?> field : fields.all()) {
      if (!without.contains(field.name())) {
        List<Field<?>> others =
            fields.alternatives().stream()
                .filter(set -> set.contains(field))
                .findFirst()
                .orElse(List.of());
        Predicate<DesignDocument> shown = isShown(fields, field);
        if (!others.isEmpty()) {
          if (!chosen.containsKey(others)) {
            addAlternatives(others);
          }
          shown = shown.and(document -> chosen(document, others) == field);
        }
        Optional<Field<?>> list = listOf(fields, field);
        if (list.isPresent()) {
          addNamedOrList(field, list.get());
        } else {
          add(field, shown, others.isEmpty() || others.get(0) == field ? "" : others.get(0).name());
        }
      }
    }
  }

  /** The list that may stand in place of a choice of the same name. */
  private static Optional<Field<?>> listOf(Fields<?> fields, Field<?> choice) {
    return fields.all().stream()
        .filter(field -> field != choice && isText(choice))
        .filter(field -> field.name().equals(choice.name()) && !isText(field))
        .findFirst();
  }

  private void addNamedOrList(Field<?> named, Field<?> list) {
    Supplier<String> place = () -> at.get() + "/" + named.name();
    List<Choice> choices = choices(named);
    choices.add(new Choice(OWN, "sieves of your own"));
    Predicate<DesignDocument> own = document -> document.json(place.get()).startsWith("[");
    section.choiceWhen(
        there,
        section.choice(
            named.label(),
            place,
            () -> choices,
            document -> own.test(document) ? OWN : document.text(place.get()),
            (document, value) ->
                value.equals(OWN)
                    ? document.without(place.get()).insert(place.get(), 0, "{}")
                    : document.without(place.get()).with(place.get(), value)));
  }

  private Predicate<DesignDocument> isShown(Fields<?> fields, Field<?> field) {
    return there.and(document -> fields.isShown(field, document.seen(at.get())));
  }

  /** Which of several fields is given. */
  private void addAlternatives(List<Field<?>> fields) {
    chosen.put(fields, fields.get(0));
    ChoiceRow row =
        section.choice(
            "Given as",
            () -> at.get() + "/" + fields.get(0).name() + " or another",
            () -> fields.stream().map(f -> new Choice(f.name(), f.label())).toList(),
            document -> chosen(document, fields).name(),
            (document, name) -> withChosen(document, fields, name));
    section.choiceWhen(there, row);
  }

  private Field<?> chosen(DesignDocument document, List<Field<?>> fields) {
    return fields.stream()
        .filter(field -> document.has(at.get() + "/" + field.name()))
        .findFirst()
        .orElse(chosen.get(fields));
  }

  private DesignDocument withChosen(DesignDocument document, List<Field<?>> fields, String name) {
    DesignDocument changed = document;
    for (Field<?> field : fields) {
      if (field.name().equals(name)) {
        chosen.put(fields, field);
      } else {
        changed = changed.without(at.get() + "/" + field.name());
      }
    }
    return changed;
  }

  /**
   * Adds a group of one of several kinds: the kind, the fields of all, then those of each.
   *
   * @param kinds the kinds
   * @param none what is chosen when there is none, if that may be
   * @param with what goes with the group
   */
  void addKinds(Kinds<?> kinds, Optional<String> none, Supplier<List<String>> with) {
    Field<?> kind = kinds.kind();
    List<Choice> choices = new ArrayList<>();
    none.ifPresent(words -> choices.add(new Choice(NONE, words)));
    kinds.all().forEach(fields -> choices.add(new Choice(fields.name(), fields.title())));
    section.choiceWhen(
        there,
        section.choice(
            kind.label(),
            () -> at.get() + "/" + kind.name(),
            () -> choices,
            document ->
                none.isPresent() && !document.has(at.get())
                    ? NONE
                    : document.text(at.get() + "/" + kind.name()),
            (document, name) ->
                name.equals(NONE) ? without(document, with) : withKind(document, kinds, name)));
    if (none.isPresent()) {
      new FieldRows(model, section, at, document -> document.has(at.get())).addFieldsOf(kinds);
    } else {
      addFieldsOf(kinds);
    }
  }

  private DesignDocument without(DesignDocument document, Supplier<List<String>> with) {
    DesignDocument changed = document.without(at.get());
    for (String part : with.get()) {
      changed = changed.without(part);
    }
    return changed;
  }

  private void addFieldsOf(Kinds<?> kinds) {
    Field<?> kind = kinds.kind();
    Set<String> common = kinds.common().all().stream().map(Field::name).collect(Collectors.toSet());
    addAll(kinds.common(), Set.of(kind.name()));
    for (Fields<?> fields : kinds.all()) {
      new FieldRows(
              model,
              section,
              at,
              there.and(document -> document.seen(at.get()).is(kind, fields.name())))
          .addAll(fields, common);
    }
  }

  /** Another kind keeps the fields that it has too. */
  private DesignDocument withKind(DesignDocument document, Kinds<?> kinds, String name) {
    String place = at.get();
    if (name.equals(document.text(place + "/" + kinds.kind().name()))) {
      return document;
    }
    Fields<?> chosenKind =
        kinds.all().stream().filter(fields -> fields.name().equals(name)).findFirst().orElseThrow();
    DesignDocument changed = document.withPart(place, chosenKind.fresh());
    for (Field<?> field : chosenKind.all()) {
      changed = changed.withThoseOf(document, document.places(place + "/" + field.name()));
    }
    return changed.with(place + "/" + kinds.kind().name(), name);
  }

  /** Adds one field. */
  void add(Field<?> field, Predicate<DesignDocument> shown, String problemsToo) {
    Supplier<String> place = () -> at.get() + "/" + field.name();
    field
        .content()
        .match(
            new Content.Cases<Void>() {
              @Override
              public Void text(Type<?> type) {
                if (type.choices().isEmpty()) {
                  section.textWhen(shown, at, field, problemsToo);
                } else {
                  section.choiceWhen(shown, choice(field, place));
                }
                return null;
              }

              @Override
              public Void span(Span<?> span) {
                section.rangeWhen(shown, at, field);
                return null;
              }

              @Override
              public Void group(Fields<?> fields) {
                addPart(field, fields, place, shown);
                return null;
              }

              @Override
              public Void kinds(Kinds<?> kinds) {
                addPart(field, kinds, place, shown);
                return null;
              }

              @Override
              public Void list(Listed<?> list) {
                addList(field, list.entry(), place, shown);
                return null;
              }
            });
  }

  private ChoiceRow choice(Field<?> field, Supplier<String> place) {
    List<Choice> choices = choices(field);
    return section.choice(
        field.label(),
        place,
        () -> choices,
        document -> document.has(place.get()) ? document.text(place.get()) : field.standard(),
        (document, name) -> document.with(place.get(), name));
  }

  private static List<Choice> choices(Field<?> field) {
    List<Choice> choices = new ArrayList<>();
    if (field.isOptional()) {
      choices.add(new Choice("", field.absent()));
    }
    Map<String, String> words = ((Type<?>) field.content()).choices();
    words.forEach((name, label) -> choices.add(new Choice(name, label)));
    return choices;
  }

  private void addPart(
      Field<?> field, Part<?> part, Supplier<String> place, Predicate<DesignDocument> shown) {
    boolean mayBeAbsent = field.isOptional() && !isAlternative(field);
    Predicate<DesignDocument> inside =
        mayBeAbsent ? shown.and(document -> document.has(place.get())) : shown;
    if (mayBeAbsent) {
      section.showWhen(
          shown,
          section.part(
              field.label(),
              "part " + field.name(),
              document -> document.has(place.get()),
              document -> document.withPart(place.get(), "{}"),
              () -> List.of(place.get())));
    }
    new FieldRows(model, section, place, inside).add(part);
  }

  private boolean isAlternative(Field<?> field) {
    return chosen.keySet().stream().anyMatch(set -> set.contains(field));
  }

  private void addList(
      Field<?> field, Part<?> entry, Supplier<String> place, Predicate<DesignDocument> shown) {
    if (entry instanceof Fields<?> fields
        && fields.all().size() <= MOST_COLUMNS
        && fields.all().stream().allMatch(FieldRows::isText)) {
      List<ListTable.Column> columns = fields.all().stream().map(FieldRows::column).toList();
      section.table(field.label(), new ListTable(model, place, fields.title(), columns), shown);
      return;
    }
    String word = entry instanceof Fields<?> one ? one.title() : "unit";
    String fresh = entry instanceof Fields<?> one ? one.fresh() : "{}";
    section.list(
        new ListEditor(
            model,
            place,
            new ListEditor.Kind(field.label(), word, fresh, least(field), summary(entry)),
            pointer -> {
              InputSection fields = new InputSection(model, word, pointer);
              rows(fields, entry, pointer);
              return fields;
            }),
        shown);
  }

  private void rows(InputSection fields, Part<?> entry, Supplier<String> pointer) {
    if (entry instanceof Fields<?> run && RunEditor.isRun(run)) {
      new RunEditor(model, pointer).addTo(fields, run, any -> true);
    } else {
      new FieldRows(model, fields, pointer, any -> true).add(entry);
    }
  }

  private static int least(Field<?> field) {
    return field.content() instanceof Listed<?> list && list.isNeeded() ? 1 : 0;
  }

  private static boolean isText(Field<?> field) {
    return field.content() instanceof Type<?>;
  }

  private static ListTable.Column column(Field<?> field) {
    return new ListTable.Column(
        field.name(),
        field.label(),
        List.copyOf(((Type<?>) field.content()).choices().keySet()),
        field.help());
  }

  /** A few words on an entry: its kind, its choices, and what must be given of it. */
  private static BiFunction<DesignDocument, String, String> summary(Part<?> entry) {
    if (entry instanceof Kinds<?> kinds) {
      return (document, place) ->
          kinds.all().stream()
              .filter(fields -> document.seen(place).is(kinds.kind(), fields.name()))
              .findFirst()
              .map(Fields::title)
              .orElse("");
    }
    List<Field<?>> fields =
        ((Fields<?>) entry).all().stream().filter(f -> !NAMES.contains(f.name())).toList();
    boolean asks = fields.stream().anyMatch(Field::isNeeded);
    return (document, place) ->
        fields.stream()
            .map(field -> telling(field, text(document, place + "/" + field.name()), asks))
            .filter(text -> !text.isBlank())
            .limit(2)
            .collect(Collectors.joining(", "));
  }

  private static String telling(Field<?> field, String text, boolean asks) {
    if (text.isBlank() || asks && field.isNeeded()) {
      return text;
    }
    if (field.content() instanceof Type<?> type && !type.choices().isEmpty()) {
      return type.choices().getOrDefault(text.toLowerCase(Locale.ROOT), text);
    }
    return asks ? "" : text + " " + field.label().toLowerCase(Locale.ROOT);
  }

  private static String text(DesignDocument document, String place) {
    return document.has(place + "/base") ? document.text(place + "/base") : document.text(place);
  }
}
