package sandslurry.design;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the texts of a document into a checked design, by the fields of a design. */
final class DesignReader {
  private DesignReader() {}

  static Reading read(ObjectNode root) {
    List<Problem> problems = new ArrayList<>();
    Optional<Design> design =
        DesignFields.DESIGN.read(
            new JsonTree(root),
            (field, value, message) -> problems.add(new Problem(field, value, message)));
    return new Reading(problems.isEmpty() ? design : Optional.empty(), problems);
  }
}
