package sandslurry.fact;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import sandslurry.fact.Field.Absence;

/**
 * The fields of a group, in the order in which they are shown. A subject declares its own by
 * extending this class: each field once, as a constant of the instance, and what is made of them in
 * {@link #make}.
 *
 * @param <S> what is read from the group
 */
public abstract non-sealed class Fields<S> extends Part<S> {
  private final String name;
  private final String title;
  private final List<Field<?>> all = new ArrayList<>();
  private final List<Rule> rules = new ArrayList<>();
  private final List<List<Field<?>>> alternatives = new ArrayList<>();
  private final Map<Field<?>, Predicate<Seen>> applies = new HashMap<>();
  private final Map<Field<?>, Field<?>> decides = new HashMap<>();
  private final Map<Field<?>, Predicate<Seen>> belongs = new HashMap<>();
  private String fresh = "{}";

  /**
   * Makes a group without fields.
   *
   * @param name its name in files, where it is one of several kinds; else a short name
   * @param title what it is, for a person
   */
  protected Fields(String name, String title) {
    this.name = name;
    this.title = title;
  }

  /**
   * Makes what the group describes. It is called when every field is right and every rule holds.
   *
   * @param values the values of the fields
   * @return what is made; empty when it cannot be, which is told through the values
   */
  protected abstract Optional<S> make(Values values);

  /**
   * Checks what no single rule can say. It is called when the fields were read, right or wrong.
   *
   * @param values the values of the fields
   */
  protected void check(Values values) {}

  /**
   * Declares a field that must be given.
   *
   * @param field its name in files
   * @param content what stands in it
   * @param <T> what is read from it
   * @return the field
   */
  protected final <T> Field<T> needed(String field, Content<T> content) {
    return add(new Field<>(field, content, Absence.MISSING, ""));
  }

  /**
   * Declares a field that has a default.
   *
   * @param field its name in files
   * @param content what stands in it
   * @param standard the text that counts when it is left out; empty for a group, all fields of
   *     which then take their defaults
   * @param <T> what is read from it
   * @return the field
   */
  protected final <T> Field<T> standard(String field, Content<T> content, String standard) {
    return add(new Field<>(field, content, Absence.STANDARD, standard));
  }

  /**
   * Declares a field that may be left out.
   *
   * @param field its name in files
   * @param content what stands in it
   * @param absent what it means to leave it out, in a few words
   * @param <T> what is read from it
   * @return the field
   */
  protected final <T> Field<Optional<T>> optional(String field, Content<T> content, String absent) {
    return add(new Field<>(field, content, Absence.LEFT_OUT, absent));
  }

  /**
   * Declares a list, which may be empty.
   *
   * @param field its name in files
   * @param entry the fields of each entry
   * @param <E> what is read from each entry
   * @return the field
   */
  protected final <E> Field<List<E>> list(String field, Part<E> entry) {
    return list(field, entry, "");
  }

  /**
   * Declares a list of one entry or more.
   *
   * @param field its name in files
   * @param entry the fields of each entry
   * @param none said when there is no entry; empty when there may be none
   * @param <E> what is read from each entry
   * @return the field
   */
  protected final <E> Field<List<E>> list(String field, Part<E> entry, String none) {
    return standard(field, new Listed<>(entry, none), "");
  }

  private <T> Field<T> add(Field<T> field) {
    all.add(field);
    return field;
  }

  /**
   * Declares what a new one has, for a person to fill in.
   *
   * @param json the group as it stands in a file
   */
  protected final void begins(String json) {
    fresh = json;
  }

  /**
   * What a new one has, for a person to fill in.
   *
   * @return the group as it stands in a file
   */
  public final String fresh() {
    return fresh;
  }

  /**
   * Declares that there is a field only for some choices.
   *
   * @param field the field
   * @param choice the field of the choice; while it is wrong, the other is neither read nor refused
   * @param names the names for which there is the field
   */
  protected final void when(Field<?> field, Field<?> choice, String... names) {
    when(field, seen -> List.of(names).stream().anyMatch(name -> seen.is(choice, name)));
    decides.put(field, choice);
  }

  /**
   * Declares that there is a field only at times.
   *
   * @param field the field
   * @param condition when there is the field
   */
  protected final void when(Field<?> field, Predicate<Seen> condition) {
    applies.put(field, condition);
  }

  /**
   * Whether there is a field in every group of this kind.
   *
   * @param field the field
   * @return false for a field that there is only for some choices or at times
   */
  public final boolean isAlways(Field<?> field) {
    return !applies.containsKey(field);
  }

  /**
   * Whether there is a field in a group as it stands.
   *
   * @param field the field
   * @param seen the group
   * @return false where the field would be unknown
   */
  public final boolean applies(Field<?> field, Seen seen) {
    return applies.getOrDefault(field, any -> true).test(seen);
  }

  /** The choice that says whether there is a field. */
  final Optional<Field<?>> decidedBy(Field<?> field) {
    return Optional.ofNullable(decides.get(field));
  }

  final void first(Field<?> field) {
    all.add(0, field);
  }

  /**
   * Declares what must hold between fields; skipped while one of them is wrong.
   *
   * @param blamed the field at which it is told
   * @param needs the other fields that it looks at
   * @param holds whether it holds
   * @param sentence what is told when it does not
   */
  protected final void rule(
      Field<?> blamed,
      List<Field<?>> needs,
      Predicate<Values> holds,
      Function<Values, String> sentence) {
    List<Field<?>> fields = new ArrayList<>(needs);
    fields.add(blamed);
    rules.add(new Rule(blamed, fields, holds, sentence));
  }

  /**
   * Declares that a field means something only at times.
   *
   * @param field the field
   * @param condition when it does
   * @param sentence what is told when it is given all the same
   */
  protected final void onlyWhen(Field<?> field, Predicate<Seen> condition, String sentence) {
    shownWhen(field, condition);
    rules.add(
        new Rule(
            field,
            List.of(),
            values -> !values.has(field) || condition.test(values.seen()),
            values -> sentence));
  }

  /**
   * Declares that an empty field is worth showing only at times.
   *
   * @param field the field
   * @param condition when it is
   */
  protected final void shownWhen(Field<?> field, Predicate<Seen> condition) {
    belongs.merge(field, condition, Predicate::and);
  }

  /**
   * Declares that a field that may be left out is needed at times.
   *
   * @param field the field
   * @param condition when it is
   * @param why said after "is missing"
   */
  protected final void neededWhen(Field<?> field, Predicate<Seen> condition, String why) {
    rules.add(
        new Rule(
            field,
            List.of(),
            values -> values.has(field) || !condition.test(values.seen()),
            values -> "is missing: " + why));
  }

  /**
   * Declares that exactly one of some fields is needed.
   *
   * @param fields the fields, each of which may be left out
   */
  protected final void exactlyOne(Field<?>... fields) {
    List<Field<?>> each = List.of(fields);
    alternatives.add(each);
    String sentence =
        "give exactly one of "
            + each.stream().map(f -> "\"" + f.name() + "\"").collect(Collectors.joining(", "));
    rules.add(
        new Rule(
            each.get(0),
            List.of(),
            values -> each.stream().anyMatch(values::has),
            values -> "is missing: " + sentence));
    for (Field<?> field : each) {
      rules.add(
          new Rule(
              field,
              List.of(),
              values -> !values.has(field) || each.stream().filter(values::has).count() == 1,
              values -> sentence));
    }
  }

  /**
   * The name.
   *
   * @return its name in files, where it is one of several kinds
   */
  public final String name() {
    return name;
  }

  /**
   * The title.
   *
   * @return what it is, for a person
   */
  public final String title() {
    return title;
  }

  /**
   * The fields.
   *
   * @return all of them in the order in which they are shown
   */
  public final List<Field<?>> all() {
    return List.copyOf(all);
  }

  /**
   * A field by its name.
   *
   * @param called its name in files
   * @return the first field that is called so
   * @throws IllegalArgumentException if there is none
   */
  public final Field<?> field(String called) {
    return all.stream()
        .filter(field -> field.name().equals(called))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(title + " has no field " + called));
  }

  /**
   * The sets of fields of which exactly one is given.
   *
   * @return each set
   */
  public final List<List<Field<?>>> alternatives() {
    return List.copyOf(alternatives);
  }

  /**
   * Whether a field is worth showing in a group as it stands.
   *
   * @param field the field
   * @param seen the group
   * @return true when there is the field and it means something, or something stands in it
   */
  public final boolean isShown(Field<?> field, Seen seen) {
    return applies(field, seen)
        && (seen.has(field) || belongs.getOrDefault(field, any -> true).test(seen));
  }

  /**
   * Reads a whole tree by these fields.
   *
   * @param root the tree
   * @param problems takes everything that is wrong
   * @return what was read; empty when something is wrong with it
   */
  public final Optional<S> read(Tree root, Problems problems) {
    return readGroup(new Place(root, "", 0, problems), root, new ArrayList<>());
  }

  @Override
  final Optional<? extends Fields<? extends S>> of(Tree group) {
    return Optional.of(this);
  }

  @Override
  final Optional<S> readGroup(Place place, Tree value, List<Values> inside) {
    Values values = new Values(this, place, value);
    inside.add(values);
    rules.forEach(rule -> rule.check(values));
    check(values);
    values.refuseUnknown();
    return values.allGood() ? make(values) : Optional.empty();
  }

  /**
   * What is told of a name that no field has.
   *
   * @param known the names that fields have
   * @return the sentence
   */
  public static String unknown(Collection<String> known) {
    return "is not a field here; the fields are: " + String.join(", ", known);
  }

  @Override
  public final <R> R match(Cases<R> cases) {
    return cases.group(this);
  }
}
