package sandslurry.report.section;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.TypedInput;
import sandslurry.units.UnitSystem;

/** The inputs as they were typed and understood, and what was assumed where nothing was typed. */
final class InputsSection extends SectionWriter {
  InputsSection(DesignDocument document, UnitSystem units) {
    super(units);
    heading(1, "Inputs and assumptions");
    Map<String, List<TypedInput>> parts = new LinkedHashMap<>();
    for (TypedInput input : document.inputs()) {
      parts.computeIfAbsent(input.part(), p -> new ArrayList<>()).add(input);
    }
    Map<String, String> rows = new LinkedHashMap<>();
    parts.forEach(
        (part, inputs) -> {
          // The name of an entry is that of its part.
          inputs.removeIf(i -> i.label().equals("Name") && part.endsWith(i.text()));
          String assumed = texts(inputs, true);
          String text = texts(inputs, false);
          rows.merge(
              place(part),
              text
                  + (assumed.isEmpty() ? "" : (text.isEmpty() ? "" : ". ") + "Assumed: " + assumed),
              (one, next) -> one + " / " + next);
        });
    List<List<String>> table = new ArrayList<>();
    rows.forEach((part, text) -> table.add(List.of(shortened(part), text)));
    table(
        List.of(
            "part",
            "as typed (and in SI); a range as low / expected / high; what is assumed is the default"),
        table);
  }

  /** A place without the number of its entry: entries without a name of their own are one part. */
  private static String place(String part) {
    return part.isEmpty() ? "Design" : part.replaceFirst(" \\d+$", "");
  }

  /** The end of a place, with what it belongs to. */
  private static String shortened(String place) {
    String[] steps = place.split(", ");
    return steps.length < 3
        ? steps[steps.length - 1]
        : steps[steps.length - 2] + ", " + steps[steps.length - 1];
  }

  private static String texts(List<TypedInput> inputs, boolean assumed) {
    return inputs.stream()
        .filter(input -> input.assumed() == assumed)
        .map(
            input ->
                input.label()
                    + ": "
                    + input.text()
                    + input.si().map(si -> " (" + si + ")").orElse(""))
        .collect(Collectors.joining("; "));
  }
}
