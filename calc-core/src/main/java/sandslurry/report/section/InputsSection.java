package sandslurry.report.section;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import sandslurry.design.DesignDocument;
import sandslurry.design.TypedInput;
import sandslurry.report.block.Block;
import sandslurry.units.UnitSystem;

/** The inputs as they were typed and understood, and what was assumed where nothing was typed. */
final class InputsSection extends SectionWriter {
  private InputsSection(UnitSystem units) {
    super(units);
  }

  static List<Block> of(DesignDocument document, UnitSystem units) {
    InputsSection section = new InputsSection(units);
    section.inputs(document);
    return section.blocks();
  }

  private void inputs(DesignDocument document) {
    heading(1, "Inputs and assumptions");
    Map<String, List<TypedInput>> parts = new LinkedHashMap<>();
    for (TypedInput input : document.inputs()) {
      parts.computeIfAbsent(input.part(), p -> new ArrayList<>()).add(input);
    }
    List<List<String>> rows = new ArrayList<>();
    parts.forEach(
        (part, inputs) ->
            rows.add(
                List.of(
                    part.isEmpty() ? "design" : part, texts(inputs, false), texts(inputs, true))));
    table(List.of("part", "as typed (and in SI)", "assumed (default)"), rows);
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
