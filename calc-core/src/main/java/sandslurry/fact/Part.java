package sandslurry.fact;

import java.util.List;
import java.util.Optional;

/**
 * A group of fields, of one kind or of several.
 *
 * @param <S> what is read from it
 */
public abstract sealed class Part<S> extends Content<S> permits Fields, Kinds {
  /** Only the two. */
  Part() {}

  /** The fields that count for a group as it stands; empty when that cannot be told. */
  abstract Optional<? extends Fields<? extends S>> of(Tree group);

  @Override
  Optional<S> read(Place place, Tree value, List<Values> inside) {
    if (!value.isGroup()) {
      place.problem(value, "must be a group of fields { ... }");
      return Optional.empty();
    }
    return readGroup(place, value, inside);
  }

  abstract Optional<S> readGroup(Place place, Tree value, List<Values> inside);

  @Override
  Optional<S> standard(Place place, String text, List<Values> inside) {
    return readGroup(place, Absent.GROUP, inside);
  }

  @Override
  String wanted() {
    return "";
  }
}
