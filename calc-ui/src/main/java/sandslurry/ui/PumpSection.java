package sandslurry.ui;

import java.util.List;
import java.util.function.Predicate;
import sandslurry.design.DesignDocument;

/** The pump that drives the line. */
final class PumpSection {
  private static final String KIND = "/pump/kind";
  private static final String NONE = "none";
  private static final int FIRST_POINTS = 3;

  private PumpSection() {}

  static InputSection of(FormModel model) {
    InputSection section = new InputSection(model, "Pump", "/pump");
    section.choice(
        "Pump",
        () -> KIND,
        () ->
            List.of(
                new Choice(NONE, "none: gravity, or not chosen yet"),
                new Choice("rotodynamic", "centrifugal pump by its curve"),
                new Choice("piston", "piston pump")),
        document -> document.has("/pump") ? document.text(KIND) : NONE,
        PumpSection::withKind);
    rotodynamic(section, model);
    piston(section);
    section.textWhen(
        document -> document.has("/pump"),
        FieldSpec.standard("Drive efficiency", "driveEfficiency", "90 %", "90 %"));
    return section;
  }

  private static void rotodynamic(InputSection section, FormModel model) {
    Predicate<DesignDocument> rotodynamic = is("rotodynamic");
    section.textWhen(rotodynamic, FieldSpec.needed("Speed of the curve", "curveSpeed", "1750 rpm"));
    section.textWhen(
        rotodynamic,
        FieldSpec.optional("Driven speed", "speed", "default: that of the curve", "1600 rpm"));
    section.textWhen(
        rotodynamic,
        FieldSpec.optional("Impeller diameter", "impeller", "optional", "300 mm", "12 in"));
    section.table(
        "Curve with clear water",
        new ListTable(
            model,
            () -> "/pump/curve",
            "point",
            List.of(
                ListTable.Column.text("flow", "Flow"),
                ListTable.Column.text("head", "Head"),
                ListTable.Column.text("efficiency", "Efficiency"))),
        rotodynamic);
  }

  private static void piston(InputSection section) {
    Predicate<DesignDocument> piston = is("piston");
    section.textWhen(
        piston, FieldSpec.needed("Swept volume per stroke", "displacement", "20 L", "5 gal"));
    section.textWhen(piston, FieldSpec.needed("Stroke rate", "strokeRate", "60 1/min"));
    section.textWhen(
        piston, FieldSpec.needed("Volumetric efficiency", "volumetricEfficiency", "85 %"));
    section.textWhen(
        piston,
        FieldSpec.standard("Mechanical efficiency", "mechanicalEfficiency", "85 %", "85 %"));
    section.textWhen(
        piston, FieldSpec.needed("Relief pressure", "pressureLimit", "700 kPa", "100 psi"));
  }

  private static Predicate<DesignDocument> is(String kind) {
    return document -> document.text(KIND).equalsIgnoreCase(kind);
  }

  /** Another kind of pump starts anew; undo brings the old one back. */
  private static DesignDocument withKind(DesignDocument document, String kind) {
    if (kind.equals(document.text(KIND))) {
      return document;
    }
    DesignDocument changed = document.without("/pump");
    if (kind.equals(NONE)) {
      return changed;
    }
    changed = changed.with(KIND, kind);
    for (int i = 0; kind.equals("rotodynamic") && i < FIRST_POINTS; i++) {
      changed = changed.insert("/pump/curve", i, "{}");
    }
    return changed;
  }
}
