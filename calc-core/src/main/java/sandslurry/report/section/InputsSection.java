package sandslurry.report.section;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import sandslurry.assessment.Assessment;
import sandslurry.design.DesignDocument;
import sandslurry.report.block.Block;
import sandslurry.units.Kind;

/** The inputs as they were typed, and what was assumed where nothing was typed. */
final class InputsSection extends SectionWriter {
  private final DesignDocument document;
  private final Assessment assessment;

  private InputsSection(DesignDocument document, Assessment assessment) {
    super(assessment.design().units());
    this.document = document;
    this.assessment = assessment;
  }

  static List<Block> of(DesignDocument document, Assessment assessment) {
    InputsSection section = new InputsSection(document, assessment);
    section.typed();
    section.criteria();
    return section.blocks();
  }

  private void typed() {
    heading(1, "Inputs");
    List<List<String>> rows = new ArrayList<>();
    document
        .parts()
        .forEach(
            (place, fields) ->
                rows.add(
                    List.of(
                        place(place),
                        fields.entrySet().stream()
                            .map(e -> field(e.getKey()) + e.getValue())
                            .collect(Collectors.joining("; ")))));
    table(List.of("part", "as typed"), rows);
  }

  /** The margins, with what is typed and what is the default. */
  private void criteria() {
    heading(2, "Criteria");
    var criteria = assessment.design().criteria();
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        criterion(
            "margin over the deposition velocity",
            "velocityMarginShare",
            show(Kind.PERCENT, criteria.marginFraction())));
    rows.add(
        criterion(
            "margin as a velocity, if that is larger",
            "velocityMargin",
            show(Kind.VELOCITY, criteria.marginVelocity())));
    rows.add(
        criterion(
            "velocity above which wear is a caution",
            "wearVelocity",
            show(Kind.VELOCITY, criteria.wearVelocity())));
    rows.add(
        criterion(
            "share of the pressure rating for the working pressure",
            "pressureShare",
            show(Kind.PERCENT, criteria.pressureShare())));
    rows.add(
        criterion(
            "capture of a settling lane",
            "sandCapture",
            show(Kind.PERCENT, criteria.sandCapture())));
    rows.add(
        criterion(
            "share of the coarse sand on the floor in laminar flow",
            "floorShare",
            show(Kind.PERCENT, criteria.floorShare())));
    table(List.of("criterion", "value", "from"), rows);
  }

  private List<String> criterion(String what, String field, String value) {
    return List.of(what, value, document.has("/criteria/" + field) ? "as typed" : "default");
  }

  /** A field in words, such as "stroke rate "; nothing for an entry of a list. */
  private static String field(String key) {
    return key.matches("\\d+") ? "" : words(key) + " ";
  }

  private static String place(String pointer) {
    if (pointer.isEmpty()) {
      return "design";
    }
    return Arrays.stream(pointer.substring(1).split("/"))
        .map(
            part -> part.matches("\\d+") ? String.valueOf(Integer.parseInt(part) + 1) : words(part))
        .collect(Collectors.joining(", "))
        .replaceAll(", (\\d+)", " $1");
  }

  private static String words(String key) {
    return key.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
  }
}
