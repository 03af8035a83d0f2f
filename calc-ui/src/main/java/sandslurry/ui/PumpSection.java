package sandslurry.ui;

import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import javax.swing.JCheckBox;
import sandslurry.design.DesignDocument;

/** The pump that drives the line. */
final class PumpSection {
  private static final String KIND = "/pump/kind";
  private static final String NONE = "none";
  private static final String OTHER = "/pump/others/0";
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
    section.textWhen(
        document -> document.has("/pump"),
        FieldSpec.optional(
            "Motor rating, each pump", "motorRating", "optional", "18.5 kW", "25 hp"));
    section.textWhen(
        document -> document.has("/pump/motorRating"),
        FieldSpec.standard("Service factor", "serviceFactor", "1", "1.15"));
    other(section, model);
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
                ListTable.Column.text("efficiency", "Efficiency"),
                ListTable.Column.text("npsh", "NPSH"))),
        rotodynamic);
    section.textWhen(
        rotodynamic, FieldSpec.standard("Trim of the diameter", "trim", "100 %", "95 %"));
    section.textWhen(
        rotodynamic,
        FieldSpec.optional(
            "Maker's minimum flow",
            "minimumFlow",
            "default: half of the best",
            "5 L/s",
            "80 gal/min"));
    section.textWhen(rotodynamic, FieldSpec.standard("Such pumps together", "count", "1", "2"));
    section.choiceWhen(
        rotodynamic,
        section.choice(
            "Several pumps work",
            () -> "/pump/arrangement",
            () ->
                List.of(
                    new Choice("parallel", "in parallel, side by side"),
                    new Choice("series", "in series, one after the other")),
            document ->
                document.has("/pump/arrangement")
                    ? document.text("/pump/arrangement").toLowerCase(Locale.ROOT)
                    : "parallel",
            (document, value) -> document.with("/pump/arrangement", value)));
  }

  /** One more pump of another curve; further ones stay in the file as they are. */
  private static void other(InputSection section, FormModel model) {
    Predicate<DesignDocument> there = is("rotodynamic").and(document -> document.has(OTHER));
    JCheckBox box =
        section.part(
            "There is one more pump, of another curve",
            "part other pump",
            document -> document.has(OTHER),
            PumpSection::withOther,
            document -> document.without("/pump/others"));
    section.showWhen(is("rotodynamic"), box);
    section.textWhen(there, OTHER, FieldSpec.optional("Its name", "name", "optional"));
    section.choiceWhen(
        there,
        section.choice(
            "It",
            () -> OTHER + "/standby",
            () ->
                List.of(
                    new Choice("no", "runs together with the first"),
                    new Choice("yes", "stands by for the first")),
            document -> document.text(OTHER + "/standby").equalsIgnoreCase("yes") ? "yes" : "no",
            (document, value) -> document.with(OTHER + "/standby", value)));
    section.textWhen(
        there, OTHER, FieldSpec.needed("Speed of its curve", "curveSpeed", "1750 rpm"));
    section.textWhen(
        there,
        OTHER,
        FieldSpec.optional("Its driven speed", "speed", "default: that of the curve", "1600 rpm"));
    section.table(
        "Its curve with clear water",
        new ListTable(
            model,
            () -> OTHER + "/curve",
            "point",
            List.of(
                ListTable.Column.text("flow", "Flow"),
                ListTable.Column.text("head", "Head"),
                ListTable.Column.text("efficiency", "Efficiency"),
                ListTable.Column.text("npsh", "NPSH"))),
        there);
  }

  private static DesignDocument withOther(DesignDocument document) {
    DesignDocument changed = document.insert("/pump/others", 0, "{}");
    for (int i = 0; i < FIRST_POINTS; i++) {
      changed = changed.insert(OTHER + "/curve", i, "{}");
    }
    return changed;
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
    section.textWhen(
        piston, FieldSpec.optional("NPSH required", "npsh", "optional", "3 m", "10 ft"));
    section.textWhen(piston, FieldSpec.optional("Cylinders", "cylinders", "pulse not judged", "2"));
    Predicate<DesignDocument> pulsing = piston.and(document -> document.has("/pump/cylinders"));
    section.choiceWhen(
        pulsing,
        section.choice(
            "A piston pushes",
            () -> "/pump/acting",
            () ->
                List.of(
                    new Choice("single", "with one side"), new Choice("double", "with both sides")),
            document ->
                document.text("/pump/acting").equalsIgnoreCase("double") ? "double" : "single",
            (document, value) -> document.with("/pump/acting", value)));
    section.textWhen(
        pulsing, FieldSpec.standard("Rod over piston area", "rodShare", "0 %", "10 %"));
    section.textWhen(pulsing, FieldSpec.standard("Rod length over crank", "rodToCrank", "6", "6"));
    section.textWhen(
        pulsing, FieldSpec.standard("Pulse past the vessel", "pulsationPassed", "100 %", "20 %"));
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
      return changed.without("/suction").without("/states/wornHead");
    }
    changed = changed.with(KIND, kind);
    for (int i = 0; kind.equals("rotodynamic") && i < FIRST_POINTS; i++) {
      changed = changed.insert("/pump/curve", i, "{}");
    }
    return changed;
  }
}
