package sandslurry.fact;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A group of one of several kinds, each with fields of its own. The field {@code kind} says which.
 *
 * @param <S> what is read from it
 */
public final class Kinds<S> extends Part<S> {
  private static final String KIND = "kind";

  private final Field<String> kind;
  private final Fields<S> common;
  private final Map<String, Fields<? extends S>> kinds = new LinkedHashMap<>();

  /**
   * Makes the kinds.
   *
   * @param label label of the field that says which
   * @param meaning its meaning in one sentence
   * @param common the fields that every kind has; they are read when the kind is not known
   * @param kinds the kinds by their names in files
   */
  public Kinds(
      String label, String meaning, Fields<S> common, List<? extends Fields<? extends S>> kinds) {
    this.common = common;
    kinds.forEach(fields -> this.kinds.put(fields.name(), fields));
    this.kind =
        new Field<String>(
                KIND,
                Type.choice(
                    List.copyOf(this.kinds.keySet()), n -> n, n -> this.kinds.get(n).title()),
                Field.Absence.MISSING,
                "")
            .label(label)
            .means(meaning);
    common.first(kind);
    kinds.forEach(fields -> fields.first(kind));
  }

  /**
   * The field that says which kind it is.
   *
   * @return the field
   */
  public Field<String> kind() {
    return kind;
  }

  /**
   * The fields that every kind has.
   *
   * @return these fields
   */
  public Fields<S> common() {
    return common;
  }

  /**
   * All kinds.
   *
   * @return the fields of each
   */
  public List<Fields<? extends S>> all() {
    return List.copyOf(kinds.values());
  }

  @Override
  Optional<? extends Fields<? extends S>> of(Tree group) {
    String name = group.at(KIND).text().orElse("").strip();
    return kinds.entrySet().stream()
        .filter(entry -> entry.getKey().equalsIgnoreCase(name))
        .map(Map.Entry::getValue)
        .findFirst();
  }

  @Override
  Optional<S> readGroup(Place place, Tree value, List<Values> inside) {
    Optional<? extends Fields<? extends S>> fields = of(value);
    if (fields.isPresent()) {
      return fields.get().readGroup(place, value, inside).map(s -> s);
    }
    inside.add(new Values(common, place, value));
    return Optional.empty();
  }

  @Override
  public <R> R match(Cases<R> cases) {
    return cases.kinds(this);
  }
}
