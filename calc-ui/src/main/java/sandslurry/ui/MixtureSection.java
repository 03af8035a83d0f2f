package sandslurry.ui;

import java.util.List;
import java.util.function.Predicate;
import sandslurry.design.DesignDocument;

/** How much sand the liquid brings, and the flows of the line. */
final class MixtureSection {
  private static final List<Choice> KINDS =
      List.of(
          new Choice("volumeFraction", "sand by volume of mixture"),
          new Choice("massFraction", "sand by mass of mixture"),
          new Choice("sandRate", "sand fed at a rate"),
          new Choice("stream", "stream of the plant"));

  private String chosen = KINDS.get(0).value();

  private MixtureSection() {}

  static InputSection mixture(FormModel model) {
    return new MixtureSection().build(model);
  }

  static InputSection flow(FormModel model) {
    InputSection section = new InputSection(model, "Flow of mixture", "/flow");
    section.text(
        FieldSpec.optional(
            "Minimum", "minimum", "default: the design flow", "26 L/s", "420 gal/min"));
    section.text(FieldSpec.needed("Design", "design", "30 L/s", "470 gal/min"));
    section.text(
        FieldSpec.optional(
            "Maximum", "maximum", "default: the design flow", "33 L/s", "520 gal/min"));
    section.note("The least and greatest flow at which the line really runs, not only the wish.");
    return section;
  }

  static InputSection dilution(FormModel model) {
    InputSection section = new InputSection(model, "Dilution", "/dilution");
    section.part(
        "Look at what dilution of the mixture does",
        "part dilution",
        document -> document.has("/dilution"),
        document -> document.with("/dilution/mostRatio", "10"),
        document -> document.without("/dilution"));
    section.textWhen(
        document -> document.has("/dilution"),
        FieldSpec.standard("Solids of that liquid", "totalSolids", "0 %", "0.5 %"));
    section.textWhen(
        document -> document.has("/dilution"),
        FieldSpec.standard("Most volumes to one", "mostRatio", "10", "10"));
    return section;
  }

  private InputSection build(FormModel model) {
    InputSection section = new InputSection(model, "Sand in the mixture", "/mixture");
    section.choice("Given as", () -> "/mixture/kind", () -> KINDS, this::kind, this::withKind);
    // The reader names the first field when all are missing, whichever is chosen here.
    section.textWhen(
        is("volumeFraction"), FieldSpec.needed("Share by volume", "volumeFraction", "3 %"));
    section.textWhen(
        is("massFraction"),
        FieldSpec.needed("Share by mass", "massFraction", "8 %"),
        "volumeFraction");
    section.textWhen(
        is("sandRate"),
        FieldSpec.needed("Sand fed", "sandRate", "2.5 kg/s", "330 lb/min"),
        "volumeFraction");
    section.textWhen(
        is("stream"),
        FieldSpec.needed("Stream of the plant", "stream", "diluted"),
        "volumeFraction");
    return section;
  }

  private Predicate<DesignDocument> is(String kind) {
    return document -> kind(document).equals(kind);
  }

  private String kind(DesignDocument document) {
    return KINDS.stream()
        .map(Choice::value)
        .filter(kind -> document.has("/mixture/" + kind))
        .findFirst()
        .orElse(chosen);
  }

  private DesignDocument withKind(DesignDocument document, String kind) {
    chosen = kind;
    DesignDocument changed = document;
    for (Choice other : KINDS) {
      if (!other.value().equals(kind)) {
        changed = changed.without("/mixture/" + other.value());
      }
    }
    return changed;
  }
}
