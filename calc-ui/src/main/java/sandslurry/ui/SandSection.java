package sandslurry.ui;

import java.util.ArrayList;
import java.util.List;
import sandslurry.design.DesignDocument;
import sandslurry.material.sand.StandardSand;

/** The bedding sand: sizes, density, shape. */
final class SandSection {
  private static final String GRADATION = "/sand/gradation";
  private static final String SIEVES = "sieves";
  private static final String TWO_SIZES = "two sizes";
  private static final int FIRST_ROWS = 3;

  /** True from the choice of two sizes until the document shows one of them. */
  private boolean twoSizesChosen;

  private SandSection() {}

  static InputSection of(FormModel model) {
    return new SandSection().build(model);
  }

  private InputSection build(FormModel model) {
    InputSection section = new InputSection(model, "Sand", "/sand");
    section.choice(
        "Grain sizes from",
        () -> GRADATION,
        () -> kind(model.document()).equals(SIEVES) ? List.of() : List.of(GRADATION),
        SandSection::choices,
        this::kind,
        this::withKind);
    section.table(
        "Sieve analysis",
        new ListTable(
            model,
            () -> GRADATION,
            "sieve",
            List.of(
                ListTable.Column.text("size", "Sieve opening"),
                ListTable.Column.text("passing", "Passing by mass"))),
        document -> kind(document).equals(SIEVES));
    section.textWhen(
        document -> kind(document).equals(TWO_SIZES),
        FieldSpec.needed("d50, half is finer", "d50", "0.4 mm"));
    section.textWhen(
        document -> kind(document).equals(TWO_SIZES),
        FieldSpec.needed("d85, 85 % is finer", "d85", "0.9 mm"));
    section.text(
        FieldSpec.standard("Grain density", "density", "2650 kg/m3", "2650 kg/m3", "165 lb/ft3"));
    section.text(FieldSpec.standard("Shape, Corey factor", "shape/corey", "0.7", "0.7"));
    section.text(FieldSpec.standard("Shape, roundness", "shape/roundness", "3.5", "3.5"));
    section.text(FieldSpec.standard("Shape, sphericity", "shape/sphericity", "0.8", "0.8"));
    return section;
  }

  private static List<Choice> choices() {
    List<Choice> choices = new ArrayList<>();
    for (StandardSand sand : StandardSand.values()) {
      choices.add(new Choice(sand.id(), sand.label()));
    }
    choices.add(new Choice(SIEVES, "sieve analysis"));
    choices.add(new Choice(TWO_SIZES, "d50 and d85"));
    return choices;
  }

  private String kind(DesignDocument document) {
    if (document.json(GRADATION).startsWith("[")) {
      return SIEVES;
    }
    boolean sizes = document.has("/sand/d50") || document.has("/sand/d85");
    boolean named = document.has(GRADATION);
    if (sizes || twoSizesChosen && !named) {
      return TWO_SIZES;
    }
    return document.text(GRADATION);
  }

  private DesignDocument withKind(DesignDocument document, String kind) {
    if (kind.equals(kind(document))) {
      return document;
    }
    twoSizesChosen = kind.equals(TWO_SIZES);
    DesignDocument bare = document.without(GRADATION).without("/sand/d50").without("/sand/d85");
    if (twoSizesChosen) {
      return bare;
    }
    if (!kind.equals(SIEVES)) {
      return bare.with(GRADATION, kind);
    }
    for (int i = 0; i < FIRST_ROWS; i++) {
      bare = bare.insert(GRADATION, i, "{}");
    }
    return bare;
  }
}
