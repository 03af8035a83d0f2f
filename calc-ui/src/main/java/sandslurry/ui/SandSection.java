package sandslurry.ui;

import java.util.ArrayList;
import java.util.List;
import sandslurry.design.DesignFields;
import sandslurry.design.document.DesignDocument;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Listed;
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
    Fields<?> fields = (Fields<?>) DesignFields.DESIGN.field("sand").content();
    FieldRows rows = new FieldRows(model, section, () -> "/sand", any -> true);
    for (Field<?> field : fields.all()) {
      if (field.content() instanceof Listed<?>) {
        rows.add(field, document -> kind(document).equals(SIEVES), "");
      }
    }
    rows.add(fields.field("d50"), document -> kind(document).equals(TWO_SIZES), "");
    rows.add(fields.field("d85"), document -> kind(document).equals(TWO_SIZES), "");
    rows.add(fields, GRADATION.substring("/sand/".length()), "d50", "d85");
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
