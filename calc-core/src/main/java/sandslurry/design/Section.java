package sandslurry.design;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import sandslurry.plant.Range;
import sandslurry.units.InUnit;
import sandslurry.units.UnitTextException;

/**
 * One JSON object of a design while it is read. Every field asked for is remembered, so that fields
 * nobody asked for can be refused; every problem goes to one shared list, and reading goes on.
 */
final class Section {
  private final ObjectNode node;
  private final String pointer;
  private final List<Problem> problems;
  private final Set<String> known = new LinkedHashSet<>();

  Section(ObjectNode node, String pointer, List<Problem> problems) {
    this.node = node;
    this.pointer = pointer;
    this.problems = problems;
  }

  String pointer(String field) {
    // RFC 6901: a name may itself hold the mark between names.
    return pointer + "/" + field.replace("~", "~0").replace("/", "~1");
  }

  boolean has(String field) {
    known.add(field);
    JsonNode value = node.path(field);
    return !value.isMissingNode() && !value.isNull();
  }

  void problem(String field, String message) {
    problems.add(new Problem(pointer(field), shown(node.path(field)), message));
  }

  private static String shown(JsonNode value) {
    return value.isValueNode() && !value.isNull() ? value.asText() : "";
  }

  /** The text of a field, or nothing when it is absent or not a text or number. */
  Optional<String> text(String field) {
    if (!has(field)) {
      return Optional.empty();
    }
    JsonNode value = node.path(field);
    if (value.isTextual() || value.isNumber()) {
      return Optional.of(value.asText());
    }
    problem(field, "must be a text");
    return Optional.empty();
  }

  <Q extends Quantity<Q>> Optional<Quantity<Q>> optional(String field, Limits<Q> limits) {
    Optional<String> text = text(field);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    try {
      Quantity<Q> quantity = limits.measure().parse(text.get());
      if (limits.allow(quantity)) {
        return Optional.of(quantity);
      }
      problem(field, limits.describe(quantity));
    } catch (UnitTextException e) {
      problem(field, e.getMessage());
    }
    return Optional.empty();
  }

  <Q extends Quantity<Q>> Optional<Quantity<Q>> required(String field, Limits<Q> limits) {
    if (!has(field)) {
      problem(field, "is missing: a " + limits.measure().name() + " is needed");
      return Optional.empty();
    }
    return optional(field, limits);
  }

  /** A quantity that has a default: absent means the default, wrong means nothing. */
  <Q extends Quantity<Q>> Optional<Quantity<Q>> orDefault(
      String field, Limits<Q> limits, String standard) {
    return has(field) ? optional(field, limits) : Optional.of(limits.measure().parse(standard));
  }

  Optional<Integer> count(String field, int low, int high) {
    Optional<String> text = text(field);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    if (text.get().strip().matches("\\d{1,6}")) {
      int count = Integer.parseInt(text.get().strip());
      if (count >= low && count <= high) {
        return Optional.of(count);
      }
    }
    problem(field, "must be a whole number from " + low + " to " + high);
    return Optional.empty();
  }

  /** One of the names of a closed list. */
  <T> Optional<T> choice(String field, Map<String, T> choices) {
    Optional<String> text = text(field);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    for (Map.Entry<String, T> choice : choices.entrySet()) {
      if (choice.getKey().equalsIgnoreCase(text.get().strip())) {
        return Optional.of(choice.getValue());
      }
    }
    problem(field, "must be one of: " + String.join(", ", choices.keySet()));
    return Optional.empty();
  }

  <T> Optional<T> requiredChoice(String field, Map<String, T> choices) {
    if (!has(field)) {
      problem(field, "is missing: one of " + String.join(", ", choices.keySet()));
      return Optional.empty();
    }
    return choice(field, choices);
  }

  Optional<Section> part(String field) {
    if (!has(field)) {
      return Optional.empty();
    }
    if (node.path(field) instanceof ObjectNode object) {
      return Optional.of(new Section(object, pointer(field), problems));
    }
    problem(field, "must be a group of fields { ... }");
    return Optional.empty();
  }

  Optional<Section> requiredPart(String field) {
    if (!has(field)) {
      problem(field, "is missing");
      return Optional.empty();
    }
    return part(field);
  }

  boolean isGroup(String field) {
    return has(field) && node.path(field).isObject();
  }

  /** A part that is not there, every field of which takes its default. */
  Section blank(String field) {
    return new Section(node.objectNode(), pointer(field), problems);
  }

  boolean isList(String field) {
    return has(field) && node.path(field).isArray();
  }

  List<Section> list(String field) {
    List<Section> entries = new ArrayList<>();
    if (!has(field)) {
      return entries;
    }
    if (!(node.path(field) instanceof ArrayNode array)) {
      problem(field, "must be a list [ ... ]");
      return entries;
    }
    for (int i = 0; i < array.size(); i++) {
      if (array.get(i) instanceof ObjectNode object) {
        entries.add(new Section(object, pointer(field) + "/" + i, problems));
      } else {
        problems.add(
            new Problem(
                pointer(field) + "/" + i,
                shown(array.get(i)),
                "must be a group of fields { ... }"));
      }
    }
    return entries;
  }

  /** Says that exactly one of some fields is needed, when none or several are there. */
  void exactlyOne(String... fields) {
    List<String> present = Arrays.stream(fields).filter(this::has).toList();
    String all = Arrays.stream(fields).map(f -> "\"" + f + "\"").collect(Collectors.joining(", "));
    if (present.isEmpty()) {
      problem(fields[0], "is missing: give exactly one of " + all);
    } else if (present.size() > 1) {
      present.forEach(f -> problem(f, "give exactly one of " + all));
    }
  }

  /** Refuses every field that nobody asked for. */
  void refuseUnknown() {
    node.fieldNames()
        .forEachRemaining(
            name -> {
              if (!known.contains(name)) {
                problem(name, "is not a field here; the fields are: " + String.join(", ", known));
              }
            });
  }

  /** The SI value of a field with a default. */
  <Q extends Quantity<Q>> Optional<Double> si(String field, Limits<Q> limits, String standard) {
    return orDefault(field, limits, standard).map(limits.measure()::si);
  }

  <Q extends Quantity<Q>> Optional<Double> si(String field, Limits<Q> limits) {
    return required(field, limits).map(limits.measure()::si);
  }

  <Q extends Quantity<Q>> OptionalDouble may(String field, Limits<Q> limits) {
    Optional<Double> value = optional(field, limits).map(limits.measure()::si);
    return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
  }

  /** Builds a kernel object; what it refuses for reasons that no single field shows is told. */
  <T> Optional<T> built(String field, Supplier<T> maker) {
    try {
      return Optional.of(maker.get());
    } catch (IllegalArgumentException e) {
      problem(field, e.getMessage());
      return Optional.empty();
    }
  }

  static boolean there(Optional<?>... values) {
    return Arrays.stream(values).allMatch(Optional::isPresent);
  }

  static <T> List<T> all(List<Section> parts, Function<Section, Optional<T>> reader) {
    List<T> read = new ArrayList<>();
    parts.forEach(part -> reader.apply(part).ifPresent(read::add));
    return read;
  }

  Optional<String> name(String field, String what) {
    Optional<String> text = text(field).map(String::strip).filter(name -> !name.isEmpty());
    if (!has(field)) {
      problem(field, "is missing: " + what);
    } else if (text.isEmpty()) {
      problem(field, "must not be blank: " + what);
    }
    return text;
  }

  /** A value or a group of the least, the expected and the greatest. */
  <Q extends Quantity<Q>> Optional<Range> range(String field, Limits<Q> limits, String standard) {
    return range(field, limits, Range.of(limits.measure().si(limits.measure().parse(standard))));
  }

  /** The same with a default that has a width of its own. */
  <Q extends Quantity<Q>> Optional<Range> range(String field, Limits<Q> limits, Range standard) {
    if (!has(field)) {
      return Optional.of(standard);
    }
    if (!isGroup(field)) {
      return si(field, limits).map(Range::of);
    }
    Section group = part(field).orElseThrow();
    Optional<Double> low = group.si("low", limits);
    Optional<Double> base = group.si("base", limits);
    Optional<Double> high = group.si("high", limits);
    group.refuseUnknown();
    if (!there(low, base, high)) {
      return Optional.empty();
    }
    if (!(low.get() <= base.get() && base.get() <= high.get())) {
      problem(field, "needs \"low\" <= \"base\" <= \"high\"");
      return Optional.empty();
    }
    return Optional.of(new Range(low.get(), base.get(), high.get()));
  }

  /** A name, blank where it is missing or wrong, which has been told then. */
  String nameOrBlank(String field, String what) {
    return name(field, what).orElse("");
  }

  /** The share of the day that something runs. */
  Optional<Double> runningShare() {
    return si("runningTime", DesignReader.RUNNING_TIME, "24 h")
        .map(seconds -> seconds / InUnit.ofDays(1));
  }
}
