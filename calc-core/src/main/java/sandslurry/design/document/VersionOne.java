package sandslurry.design.document;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import sandslurry.design.DesignFields;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;

/**
 * The design file of version 1, in which the parts of one line stood beside the sand and the
 * carrier: the address of each part then and now.
 */
final class VersionOne {
  private static final String VERSION = "formatVersion";
  private static final String LINES = "lines";
  private static final String LINE = "/lines/0";

  /** Version 1 knew these parts of a line. */
  static final List<String> PARTS =
      List.of(
          "mixture",
          "dilution",
          "flow",
          "route",
          "pump",
          "suction",
          "states",
          "operation",
          "observed");

  private VersionOne() {}

  /** Whether a tree is one of version 1, or looks like one and does not say its version. */
  static boolean is(ObjectNode root) {
    JsonNode version = root.path(VERSION);
    boolean one =
        version.isMissingNode()
            ? PARTS.stream().anyMatch(root::has)
            : version.asText().strip().matches("0{0,5}1");
    return one && !root.has(LINES);
  }

  /** Moves the parts of the line of a tree of version 1 to where they stand now. */
  static void renew(ObjectNode root) {
    ObjectNode line = JsonNodeFactory.instance.objectNode();
    ObjectNode renewed = JsonNodeFactory.instance.objectNode();
    root.properties()
        .forEach(
            field -> {
              if (PARTS.contains(field.getKey())) {
                if (line.isEmpty()) {
                  renewed.putArray(LINES).add(line);
                }
                line.set(field.getKey(), field.getValue());
              } else {
                renewed.set(field.getKey(), field.getValue());
              }
            });
    JsonNode version = root.path(VERSION);
    if (version.isTextual()) {
      renewed.put(VERSION, String.valueOf(DesignFields.FORMAT_VERSION));
    } else if (version.isNumber()) {
      renewed.put(VERSION, DesignFields.FORMAT_VERSION);
    }
    root.removeAll();
    root.setAll(renewed);
  }

  /** The address that counts now of an address of either version. */
  static String renewed(String pointer) {
    int end = pointer.indexOf('/', 1);
    String part = pointer.isEmpty() ? "" : pointer.substring(1, end < 0 ? pointer.length() : end);
    return PARTS.contains(part) ? LINE + pointer : pointer;
  }

  /** A problem as it stands in a file of version 1. */
  static Problem inFile(Problem problem) {
    String field = problem.field();
    if (field.startsWith(LINE + "/")) {
      return new Problem(field.substring(LINE.length()), problem.value(), problem.message());
    }
    if (field.equals("/" + LINES)) {
      return new Problem("/route", problem.value(), problem.message());
    }
    return isUnknown(problem)
        ? new Problem(field, problem.value(), Fields.unknown(known()))
        : problem;
  }

  /** A problem of a file that says version 2 and has a part of a line where version 1 had it. */
  static Problem moved(Problem problem) {
    String name = problem.field().substring(Math.min(1, problem.field().length()));
    return PARTS.contains(name) && isUnknown(problem)
        ? new Problem(
            problem.field(),
            problem.value(),
            "is a part of a line: in version 2 its place is " + LINE + problem.field())
        : problem;
  }

  private static boolean isUnknown(Problem problem) {
    return problem.message().equals(Fields.unknown(names()));
  }

  private static List<String> known() {
    List<String> known = new ArrayList<>(names());
    known.addAll(known.indexOf(LINES), PARTS);
    known.remove(LINES);
    return known;
  }

  private static List<String> names() {
    return DesignFields.DESIGN.all().stream().map(Field::name).toList();
  }
}
