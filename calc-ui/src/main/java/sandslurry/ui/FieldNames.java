package sandslurry.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Says in words where a field is. */
final class FieldNames {
  private static final Map<String, String> ENTRIES =
      Map.ofEntries(
          Map.entry("lines", "line"),
          Map.entry("runs", "run"),
          Map.entry("curve", "curve point"),
          Map.entry("gradation", "sieve"),
          Map.entry("fittings", "fitting"),
          Map.entry("readings", "reading"),
          Map.entry("pens", "pen"),
          Map.entry("waters", "water"),
          Map.entry("units", "unit"),
          Map.entry("reaches", "reach"),
          Map.entry("outlets", "outlet"),
          Map.entry("pumps", "pump"),
          Map.entry("months", "month"),
          Map.entry("emptyings", "emptying"),
          Map.entry("products", "product"),
          Map.entry("modes", "mode"),
          Map.entry("flows", "flow"),
          Map.entry("machines", "machine"),
          Map.entry("others", "other pump"));

  private FieldNames() {}

  /**
   * The place of a field in words.
   *
   * @param pointer a JSON Pointer such as {@code /lines/0/route/runs/0/length}
   * @return for example "Line 1, route, run 1, length"
   */
  static String words(String pointer) {
    List<String> words = new ArrayList<>();
    for (String part : pointer.substring(Math.min(1, pointer.length())).split("/")) {
      if (part.matches("\\d{1,6}") && !words.isEmpty()) {
        String list = words.remove(words.size() - 1);
        words.add(ENTRIES.getOrDefault(list, list) + " " + (Integer.parseInt(part) + 1));
      } else {
        words.add(part.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT));
      }
    }
    String text = String.join(", ", words);
    return text.isEmpty()
        ? "Design"
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
