package sandslurry.report.block;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What is told of several parts, each clause once.
 *
 * @param shared the clauses that are told of all
 * @param own what else is told, with the parts of which it is
 */
public record Told(List<String> shared, Map<String, Set<String>> own) {
  /**
   * Takes together what is the same.
   *
   * @param parts the names of the parts
   * @param told the clauses that are told of each
   * @param between what stands between the clauses of a part
   * @return each clause once
   */
  public static Told of(List<String> parts, List<List<String>> told, String between) {
    Set<String> shared = new LinkedHashSet<>(told.isEmpty() ? List.of() : told.get(0));
    told.forEach(shared::retainAll);
    Map<String, Set<String>> own = new LinkedHashMap<>();
    for (int i = 0; i < parts.size(); i++) {
      String rest =
          told.get(i).stream()
              .filter(clause -> !shared.contains(clause))
              .collect(Collectors.joining(between));
      if (!rest.isEmpty()) {
        own.computeIfAbsent(rest, r -> new LinkedHashSet<>()).add(parts.get(i));
      }
    }
    return new Told(List.copyOf(shared), own);
  }

  /**
   * What is not told of all.
   *
   * @param between what stands between the names of parts
   * @return a line each, with the names of its parts before it
   */
  public List<String> own(String between) {
    return own.entrySet().stream()
        .map(one -> String.join(between, one.getValue()) + ": " + one.getKey())
        .toList();
  }
}
