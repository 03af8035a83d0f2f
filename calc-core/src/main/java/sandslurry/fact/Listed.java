package sandslurry.fact;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A list of groups.
 *
 * @param <E> what is read from each
 */
public final class Listed<E> extends Content<List<E>> {
  private final Part<E> entry;
  private final String none;

  /**
   * Makes the content.
   *
   * @param entry the fields of each entry
   * @param none said when there is no entry; empty when there may be none
   */
  Listed(Part<E> entry, String none) {
    this.entry = entry;
    this.none = none;
  }

  /**
   * The entry.
   *
   * @return the fields of each entry
   */
  public Part<E> entry() {
    return entry;
  }

  /**
   * Whether there must be an entry.
   *
   * @return true when a list without one is refused
   */
  public boolean isNeeded() {
    return !none.isEmpty();
  }

  @Override
  Optional<List<E>> read(Place place, Tree value, List<Values> inside) {
    if (!value.isList()) {
      place.problem(value, "must be a list [ ... ]");
      return Optional.empty();
    }
    List<Tree> trees = value.entries();
    if (trees.isEmpty() && !none.isEmpty()) {
      place.problem(value, none);
      return Optional.empty();
    }
    List<E> read = new ArrayList<>();
    for (int i = 0; i < trees.size(); i++) {
      if (!trees.get(i).isRefused()) {
        entry.read(place.entry(i), trees.get(i), inside).ifPresent(read::add);
      }
    }
    return read.size() == trees.size() ? Optional.of(List.copyOf(read)) : Optional.empty();
  }

  @Override
  Optional<List<E>> standard(Place place, String text, List<Values> inside) {
    if (none.isEmpty()) {
      return Optional.of(List.of());
    }
    place.problems().add(place.pointer(), "", none);
    return Optional.empty();
  }

  @Override
  String wanted() {
    return none;
  }

  @Override
  public <R> R match(Cases<R> cases) {
    return cases.list(this);
  }
}
