package sandslurry.fact;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Supplier;

/** A group of fields as it was read: every field is there, or wrong, which has been told then. */
public final class Values {
  private final Fields<?> fields;
  private final Place place;
  private final Tree tree;
  private final Map<Field<?>, Object> good = new HashMap<>();
  private final Map<Field<?>, List<Values>> inside = new LinkedHashMap<>();
  private final Set<Field<?>> wrong = new HashSet<>();
  private boolean broken;

  /** Reads all fields that there are; fields of which that cannot be told are left alone. */
  Values(Fields<?> fields, Place place, Tree tree) {
    this.fields = fields;
    this.place = place;
    this.tree = tree;
    for (Field<?> field : fields.all()) {
      if (fields.decidedBy(field).filter(wrong::contains).isPresent()) {
        wrong.add(field);
      } else if (fields.applies(field, seen())) {
        List<Values> groups = new ArrayList<>();
        Optional<?> read = field.read(place, tree, groups);
        inside.put(field, groups);
        if (read.isPresent()) {
          good.put(field, read.get());
        } else {
          wrong.add(field);
        }
      }
    }
  }

  /** Refuses every name that no field has. */
  void refuseUnknown() {
    Set<String> known = new LinkedHashSet<>();
    inside.keySet().forEach(field -> known.add(field.name()));
    Set<String> undecided = new HashSet<>();
    wrong.forEach(field -> undecided.add(field.name()));
    for (String name : tree.names()) {
      if (!known.contains(name) && !undecided.contains(name)) {
        place.below(name).problem(tree.at(name), Fields.unknown(known));
      }
    }
  }

  boolean allGood() {
    return wrong.isEmpty() && !isBroken();
  }

  /** Whether a rule of this group or of one inside it does not hold. */
  private boolean isBroken() {
    return broken
        || inside.values().stream().anyMatch(groups -> groups.stream().anyMatch(Values::isBroken));
  }

  /**
   * The fields of this group.
   *
   * @return the fields that were read
   */
  public Fields<?> fields() {
    return fields;
  }

  /**
   * Whether fields are right.
   *
   * @param fields fields of this group
   * @return false while one of them is wrong
   */
  public boolean good(Field<?>... fields) {
    return good(List.of(fields));
  }

  boolean good(Collection<Field<?>> fields) {
    return fields.stream().noneMatch(wrong::contains);
  }

  /**
   * The value of a field.
   *
   * @param field a field of this group that is right
   * @param <T> its value
   * @return the value
   * @throws IllegalStateException if the field is wrong or not there
   */
  @SuppressWarnings("unchecked") // A field was put in with what it read.
  public <T> T get(Field<T> field) {
    if (!good.containsKey(field)) {
      throw new IllegalStateException(place.pointer() + "/" + field + " has no value");
    }
    return (T) good.get(field);
  }

  /**
   * What stands in a field, as it was typed but well spelt.
   *
   * @param field the field, which holds one text that is right
   * @return the text of it, or of its default
   */
  public String written(Field<?> field) {
    String typed = tree.at(field.name()).text().orElse(field.standard());
    return ((Type<?>) field.content()).written(typed);
  }

  /**
   * A number that may be missing, as the kernels take it.
   *
   * @param field a field of this group
   * @return its value; empty where it was not given
   */
  public OptionalDouble number(Field<Optional<Double>> field) {
    return get(field).map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
  }

  /**
   * The value of a field that may be wrong.
   *
   * @param field a field of this group
   * @param <T> its value
   * @return the value; empty while the field is wrong or not there
   */
  public <T> Optional<T> maybe(Field<T> field) {
    return good.containsKey(field) ? Optional.of(get(field)) : Optional.empty();
  }

  /**
   * Whether something stands in a field.
   *
   * @param field a field of this group
   * @return true when it was given, right or wrong
   */
  public boolean has(Field<?> field) {
    return tree.at(field.name()).isThere();
  }

  /**
   * The group as it stands.
   *
   * @return what conditions look at
   */
  public Seen seen() {
    return new Seen(place.root(), place.around(), tree);
  }

  /**
   * The place of this group in its list.
   *
   * @return 0 for the first and for a group in no list
   */
  public int index() {
    return place.index();
  }

  /**
   * The groups in a field.
   *
   * @param field a group or a list of groups
   * @return each as it was read
   */
  public List<Values> inside(Field<?> field) {
    return inside.getOrDefault(field, List.of());
  }

  /**
   * Tells that a field is wrong.
   *
   * @param field a field of this group
   * @param message what is wrong
   */
  public void problem(Field<?> field, String message) {
    broken = true;
    place.below(field.name()).problem(tree.at(field.name()), message);
  }

  /**
   * Makes something that may refuse its values for reasons that no single field shows.
   *
   * @param blamed the field at which a refusal is told
   * @param maker makes it
   * @param <M> what is made
   * @return what was made; empty when it was refused
   */
  public <M> Optional<M> made(Field<?> blamed, Supplier<M> maker) {
    try {
      return Optional.of(maker.get());
    } catch (IllegalArgumentException e) {
      problem(blamed, e.getMessage());
      return Optional.empty();
    }
  }
}
