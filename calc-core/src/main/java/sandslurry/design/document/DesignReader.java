package sandslurry.design.document;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sandslurry.design.Design;
import sandslurry.design.DesignFields;

/** Reads the texts of a document into a checked design, by the fields of a design. */
final class DesignReader {
  private DesignReader() {}

  static Reading read(ObjectNode root, boolean old) {
    List<Problem> problems = new ArrayList<>();
    ObjectNode within = DocumentLimits.within(root, problems);
    List<String> refused = problems.stream().map(Problem::field).toList();
    Optional<Design> design =
        DesignFields.DESIGN.read(
            new JsonTree(within),
            (field, value, message) -> {
              // What was refused stands as null: its reason is told already.
              if (!refused.contains(field)) {
                problems.add(new Problem(field, value, message));
              }
            });
    problems.replaceAll(old ? VersionOne::inFile : VersionOne::moved);
    return new Reading(
        problems.isEmpty() ? design : Optional.empty(), DocumentLimits.first(problems));
  }
}
