package sandslurry.design.document;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * How large a design may be: far more than anything that is built, and little enough to be judged
 * at once on a small machine. What is refused here is not read any further.
 */
final class DocumentLimits {
  static final int BYTES = 1 << 20;
  static final int DEPTH = 32;
  static final int FIELD_NAME = 60;
  static final int NUMBER = 100;
  static final int ENTRIES = 200;

  /** Lists whose every entry is evaluated with every other. */
  private static final Map<String, Integer> SHORT_LISTS =
      Map.of(
          "lines", 40, "runs", 200, "pens", 60, "waters", 60, "units", 60, "modes", 24, "others",
          12, "reaches", 20);

  static final int FIELDS = 100;
  static final int TEXT = 400;
  static final int NOTES = 20_000;
  static final int PROBLEMS = 100;

  private final List<Problem> problems;

  private DocumentLimits(List<Problem> problems) {
    this.problems = problems;
  }

  /** A copy in which null stands for everything that was refused, with the reasons. */
  static ObjectNode within(ObjectNode root, List<Problem> problems) {
    ObjectNode copy = root.deepCopy();
    if (root.size() > FIELDS) {
      problems.add(new Problem("", "", tooMany("fields", root.size(), FIELDS)));
      copy.retain(root.properties().stream().limit(FIELDS).map(Map.Entry::getKey).toList());
    }
    new DocumentLimits(problems).group(copy, "");
    return copy;
  }

  /** The first problems, and how many more there are. */
  static List<Problem> first(List<Problem> problems) {
    if (problems.size() <= PROBLEMS) {
      return List.copyOf(problems);
    }
    List<Problem> first = new ArrayList<>(problems.subList(0, PROBLEMS));
    first.add(
        new Problem("", "", "has " + (problems.size() - PROBLEMS) + " more problems after these"));
    return List.copyOf(first);
  }

  private void group(ObjectNode group, String pointer) {
    for (Map.Entry<String, JsonNode> field : List.copyOf(group.properties())) {
      String place = pointer + "/" + field.getKey().replace("~", "~0").replace("/", "~1");
      String why = refusal(field.getKey(), field.getValue());
      if (why.isEmpty()) {
        inside(field.getValue(), place);
      } else {
        problems.add(new Problem(place, "", why));
        group.putNull(field.getKey());
      }
    }
  }

  private void inside(JsonNode node, String place) {
    if (node instanceof ObjectNode group) {
      group(group, place);
    } else if (node instanceof ArrayNode list) {
      for (int i = 0; i < list.size(); i++) {
        String why = refusal("", list.get(i));
        if (why.isEmpty()) {
          inside(list.get(i), place + "/" + i);
        } else {
          problems.add(new Problem(place + "/" + i, "", why));
          list.setNull(i);
        }
      }
    }
  }

  private static String refusal(String name, JsonNode node) {
    if (node.isNull()) {
      return "is null: write a value, or leave the field out";
    }
    int most = name.equals("notes") ? NOTES : TEXT;
    if (node.isTextual() && node.textValue().length() > most) {
      return tooMany("characters", node.textValue().length(), most);
    }
    int entries = SHORT_LISTS.getOrDefault(name, ENTRIES);
    if (node.isArray() && node.size() > entries) {
      return tooMany("entries", node.size(), entries);
    }
    if (node.isObject() && node.size() > FIELDS) {
      return tooMany("fields", node.size(), FIELDS);
    }
    return "";
  }

  private static String tooMany(String what, int has, int most) {
    return "has " + has + " " + what + ": at most " + most + " are allowed";
  }
}
