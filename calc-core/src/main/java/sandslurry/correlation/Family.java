package sandslurry.correlation;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The correlations that answer one question.
 *
 * @param what what they give, in words: "settling velocity"
 * @param all every member, the default first where there is one
 * @param <M> what a member is
 */
public record Family<M extends Correlation>(String what, List<M> all) {
  /** Copies the list and checks that no key stands twice. */
  public Family {
    all = List.copyOf(all);
    Set<String> ids = new HashSet<>();
    for (M member : all) {
      if (!ids.add(member.id())) {
        throw new IllegalArgumentException(what + ": the key " + member.id() + " stands twice");
      }
    }
  }

  /**
   * Makes a family.
   *
   * @param what what its members give, in words
   * @param all every member
   * @param <M> what a member is
   * @return the family
   */
  @SafeVarargs
  @SuppressWarnings("varargs")
  public static <M extends Correlation> Family<M> of(String what, M... all) {
    return new Family<>(what, List.of(all));
  }

  /**
   * The member of a key.
   *
   * @param id the key as in files
   * @return the member, if there is one
   */
  public Optional<M> find(String id) {
    return all.stream().filter(member -> member.id().equals(id)).findFirst();
  }
}
