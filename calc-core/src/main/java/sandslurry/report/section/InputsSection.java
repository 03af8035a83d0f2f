package sandslurry.report.section;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.TypedInput;
import sandslurry.report.block.Page;

/**
 * The inputs as they were typed and understood, and what was assumed where nothing was typed. What
 * belongs to a part, such as the pipe of a run, stands in its row; the entries of a list, such as
 * the points of a curve, stand beside each other.
 *
 * @param document the design as typed
 * @param parts the inputs of each part
 * @param places the entries of each place, by name: a list has several
 * @param page takes its blocks
 */
record InputsSection(
    DesignDocument document,
    Map<String, List<TypedInput>> parts,
    Map<String, Map<String, List<TypedInput>>> places,
    Page page)
    implements SectionWriter {
  /** What the title block and the head of the report say. */
  private static final Set<String> SAID_ABOVE = Set.of("Format", "Title", "Report in");

  private static final String ASSUMED = "Assumed: ";

  private static final String BETWEEN = " | ";

  /** So many rows that say the same are one. */
  private static final int FEW = 3;

  private static final String ALL_LINES = "All lines";

  static InputsSection of(DesignDocument document, Page page) {
    return new InputsSection(document, new LinkedHashMap<>(), new LinkedHashMap<>(), page);
  }

  void write() {
    sort();
    inputs();
  }

  private void sort() {
    for (TypedInput input : document.inputs()) {
      boolean said =
          input.part().isEmpty() && SAID_ABOVE.contains(input.label())
              || input.part().equals("Title block")
              // What there is not, or what follows from another input, is no assumption.
              || input.assumed() && input.text().matches("no level|that of its .*")
              // The name of an entry is that of its part.
              || input.label().equals("Name") && input.part().endsWith(input.text());
      if (!said) {
        parts.computeIfAbsent(input.part(), p -> new ArrayList<>()).add(named(input));
      }
    }
    assumedOfAllLines();
    parts.forEach(
        (part, inputs) ->
            places.computeIfAbsent(place(part), p -> new LinkedHashMap<>()).put(part, inputs));
  }

  /** What is assumed alike of several lines is said once, before them. */
  private void assumedOfAllLines() {
    List<String> lines =
        IntStream.range(0, document.size("/lines"))
            .mapToObj(i -> document.text("/lines/" + i + "/name"))
            .toList();
    if (lines.size() < 2) {
      return;
    }
    Map<String, List<TypedInput>> alike = new LinkedHashMap<>();
    for (String part : List.copyOf(parts.keySet())) {
      if (part.startsWith(lines.get(0) + ", ")) {
        String below = part.substring(lines.get(0).length());
        List<TypedInput> shared = new ArrayList<>();
        for (TypedInput input : parts.get(part)) {
          if (input.assumed() && lines.stream().allMatch(line -> has(line + below, input))) {
            shared.add(input);
          }
        }
        if (!shared.isEmpty()) {
          alike.put(ALL_LINES + below, shared);
          lines.forEach(line -> parts.get(line + below).removeIf(i -> isAmong(shared, i)));
        }
      }
    }
    parts.values().removeIf(List::isEmpty);
    Map<String, List<TypedInput>> others = new LinkedHashMap<>(parts);
    parts.clear();
    others.forEach(
        (part, inputs) -> {
          if (part.startsWith(lines.get(0) + ", ")) {
            alike.forEach(parts::putIfAbsent);
          }
          parts.put(part, inputs);
        });
  }

  private boolean has(String part, TypedInput input) {
    return isAmong(parts.getOrDefault(part, List.of()), input);
  }

  private static boolean isAmong(List<TypedInput> inputs, TypedInput input) {
    return inputs.stream()
        .anyMatch(
            i -> i.assumed() && i.label().equals(input.label()) && i.text().equals(input.text()));
  }

  /** The name of the only line stands among the inputs of the whole design. */
  private static TypedInput named(TypedInput input) {
    return input.part().isEmpty() && input.label().equals("Name")
        ? new TypedInput("", "Name of the line", input.text(), input.si(), input.assumed())
        : input;
  }

  private void inputs() {
    heading(1, "Inputs and assumptions");
    Map<String, String> rows = new LinkedHashMap<>();
    places.forEach(
        (place, entries) -> {
          String owner = owner(place);
          String text = text(List.copyOf(entries.values()));
          if (owner.equals(place)) {
            rows.merge(place, text, InputsSection::then);
          } else {
            rows.merge(
                owner, below(place.substring(owner.length() + 2), text), InputsSection::then);
          }
        });
    table(
        List.of(
            "part",
            "as typed (in SI where it differs); a range as low / expected / high, a list with bars;"
                + " what is assumed is the default"),
        alikeTogether(rows));
  }

  /** A row for each place, and one for three or more alike that follow each other. */
  private List<List<String>> alikeTogether(Map<String, String> rows) {
    List<List<String>> table = new ArrayList<>();
    List<String> places = List.copyOf(rows.keySet());
    int end;
    for (int i = 0; i < places.size(); i = end) {
      String said = rows.get(places.get(i));
      end = i + 1;
      while (end < places.size() && rows.get(places.get(end)).equals(said)) {
        end++;
      }
      if (end - i < FEW) {
        places.subList(i, end).forEach(place -> table.add(List.of(title(place), said)));
      } else {
        String names = title(places.get(i)) + " to " + title(places.get(end - 1));
        table.add(List.of(names + " (" + (end - i) + " alike)", said));
      }
    }
    return table;
  }

  /** What belongs to a part of a part, which its labels need not name again. */
  private static String below(String place, String text) {
    boolean assumed = text.startsWith(ASSUMED);
    return place
        + (assumed ? ", assumed: " : ": ")
        + (assumed ? text.substring(ASSUMED.length()) : text).replace(place + ", ", "");
  }

  private static String then(String one, String next) {
    return one + (one.endsWith(".") ? " " : ". ") + next;
  }

  /** A place without the number of its entry, unless it has parts of its own. */
  private String place(String part) {
    return parts.keySet().stream().anyMatch(other -> other.startsWith(part + ", "))
        ? part
        : part.replaceFirst(" \\d+$", "");
  }

  /** The place in whose row this one stands. */
  private String owner(String place) {
    int end = place.lastIndexOf(", ");
    String around = end < 0 ? "" : place.substring(0, end);
    return !places.containsKey(around) || around.isEmpty() || isLarge(around)
        ? place
        : owner(around);
  }

  /** Plant and route: their parts have rows of their own. */
  private static boolean isLarge(String place) {
    return place.matches("Plant|(?!Transfer line, )(.*, )?Transfer line");
  }

  /** The end of a place, with what it belongs to, and which entries of a list it has. */
  private String title(String place) {
    if (place.isEmpty()) {
      return "Design";
    }
    String[] steps = place.split(", ");
    String end = steps[steps.length - 1];
    Set<String> names = places.get(place).keySet();
    if (names.size() > 1) {
      List<String> numbers =
          names.stream().map(name -> name.substring(name.lastIndexOf(' '))).toList();
      end +=
          numbers.size() > 3
              ? numbers.get(0) + " to" + numbers.get(numbers.size() - 1)
              : String.join(",", numbers);
    }
    return steps.length == 1 || steps.length == 2 && isLarge(steps[0])
        ? end
        : steps[steps.length - 2] + ", " + end;
  }

  private static String text(List<List<TypedInput>> entries) {
    Set<String> labels = new LinkedHashSet<>();
    entries.forEach(entry -> entry.forEach(input -> labels.add(input.label())));
    List<String> typed = new ArrayList<>();
    List<String> assumed = new ArrayList<>();
    for (String label : labels) {
      List<Optional<TypedInput>> values =
          entries.stream()
              .map(e -> e.stream().filter(i -> i.label().equals(label)).findFirst())
              .toList();
      boolean all = values.stream().flatMap(Optional::stream).allMatch(TypedInput::assumed);
      // A note ends with a full stop of its own.
      (all ? assumed : typed).add(label + ": " + values(values, all).replaceFirst("\\.$", ""));
    }
    String first = String.join("; ", typed);
    return assumed.isEmpty()
        ? first
        : first + (first.isEmpty() ? "" : ". ") + ASSUMED + String.join("; ", assumed);
  }

  /** The values of all entries, once where they are the same. */
  private static String values(List<Optional<TypedInput>> values, boolean assumed) {
    List<String> texts =
        values.stream()
            .map(
                one ->
                    one.map(i -> i.text() + (i.assumed() && !assumed ? " (assumed)" : ""))
                        .orElse("-"))
            .toList();
    List<String> si =
        values.stream().map(one -> one.flatMap(TypedInput::si).orElse("")).distinct().toList();
    if (texts.stream().distinct().count() == 1) {
      return texts.get(0) + (si.get(0).isEmpty() ? "" : " (" + si.get(0) + ")");
    }
    List<String> all = values.stream().map(one -> one.flatMap(TypedInput::si).orElse("")).toList();
    return listed(texts) + (all.contains("") ? "" : " (" + listed(all) + ")");
  }

  /** Values beside each other, their unit once where they share it. */
  private static String listed(List<String> texts) {
    Set<String> units =
        texts.stream()
            .map(text -> text.matches("-?[0-9.,e+-]+ \\S+") ? text.replaceFirst("^\\S+", "") : "")
            .collect(Collectors.toSet());
    String unit = units.size() == 1 ? units.iterator().next() : "";
    return texts.stream()
            .map(text -> text.substring(0, text.length() - unit.length()))
            .collect(Collectors.joining(BETWEEN))
        + unit;
  }
}
