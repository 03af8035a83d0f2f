package sandslurry.ui;

import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.function.Supplier;
import sandslurry.design.DesignDocument;

/** The pump that drives the line. */
final class PumpSection {
  private static final String KIND = "/pump/kind";
  private static final String NONE = "none";
  private static final String OTHERS = "/pump/others";
  private static final String AS_FIRST = "default: that of the first pump";
  private static final int FIRST_POINTS = 3;
  private static final List<ListTable.Column> CURVE =
      List.of(
          ListTable.Column.text("flow", "Flow"),
          ListTable.Column.text("head", "Head"),
          ListTable.Column.text("efficiency", "Efficiency"),
          ListTable.Column.text("npsh", "NPSH"));

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
    others(section, model);
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
        new ListTable(model, () -> "/pump/curve", "point", CURVE),
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
    section.textWhen(
        rotodynamic,
        FieldSpec.optional(
            "Maker's greatest flow",
            "maximumFlow",
            "default: 1.25 of the best",
            "30 L/s",
            "500 gal/min"));
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

  /** Any number of pumps with curves of their own. */
  private static void others(InputSection section, FormModel model) {
    section.list(
        new ListEditor(
            model,
            () -> OTHERS,
            new ListEditor.Kind(
                "More pumps, each with a curve of its own",
                "pump",
                "{\"curve\": [{}, {}, {}]}",
                0,
                PumpSection::summary),
            pump -> other(model, pump)),
        is("rotodynamic"));
  }

  private static String summary(DesignDocument document, String pump) {
    String speed =
        document.has(pump + "/speed")
            ? document.text(pump + "/speed")
            : document.text(pump + "/curveSpeed");
    return (isStandby(document, pump) ? "stands by" : "runs too")
        + (speed.isBlank() ? "" : ", " + speed);
  }

  private static boolean isStandby(DesignDocument document, String pump) {
    return document.text(pump + "/standby").equalsIgnoreCase("yes");
  }

  private static InputSection other(FormModel model, Supplier<String> pump) {
    InputSection section = new InputSection(model, "Pump", pump);
    section.text(FieldSpec.optional("Name", "name", "optional"));
    section.choice(
        "This pump",
        "standby",
        document -> isStandby(document, pump.get()) ? "yes" : "no",
        List.of(
            new Choice("no", "runs together with the first"),
            new Choice("yes", "stands by for the first")));
    section.text(FieldSpec.needed("Speed of the curve", "curveSpeed", "1750 rpm"));
    section.text(
        FieldSpec.optional("Driven speed", "speed", "default: that of the curve", "1600 rpm"));
    section.text(FieldSpec.optional("Impeller diameter", "impeller", AS_FIRST, "300 mm", "12 in"));
    section.text(
        FieldSpec.optional("Head lost by wear", "wornHead", "default: that of the states", "15 %"));
    section.text(FieldSpec.optional("Drive efficiency", "driveEfficiency", AS_FIRST, "85 %"));
    section.text(FieldSpec.optional("Motor rating", "motorRating", AS_FIRST, "15 kW", "20 hp"));
    section.text(FieldSpec.standard("Service factor", "serviceFactor", "1", "1.15"));
    section.table(
        "Curve with clear water",
        new ListTable(model, () -> pump.get() + "/curve", "point", CURVE),
        document -> true);
    return section;
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
    section.choiceWhen(
        pulsing,
        "Pistons are driven by",
        "cylinderDrive",
        List.of(new Choice("crank", "a crank"), new Choice("hydraulic", "hydraulic cylinders")));
    Predicate<DesignDocument> hydraulic =
        pulsing.and(document -> document.text("/pump/cylinderDrive").equalsIgnoreCase("hydraulic"));
    Predicate<DesignDocument> crank =
        pulsing.and(hydraulic.negate().or(document -> document.has("/pump/rodToCrank")));
    section.textWhen(crank, FieldSpec.standard("Rod length over crank", "rodToCrank", "6", "6"));
    section.textWhen(
        hydraulic.or(pulsing.and(document -> document.has("/pump/dwell"))),
        FieldSpec.standard("Dwell at stroke end", "dwell", "0 s", "0.3 s"));
    section.textWhen(
        hydraulic.or(pulsing.and(document -> document.has("/pump/changeover"))),
        FieldSpec.standard("Changeover time", "changeover", "0.1 s", "0.2 s"));
    section.textWhen(
        pulsing,
        FieldSpec.optional("Gas in an air vessel", "vesselGas", "no vessel", "200 L", "50 gal"));
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
