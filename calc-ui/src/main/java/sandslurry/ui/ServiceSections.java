package sandslurry.ui;

import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import sandslurry.design.DesignDocument;

/** What a line meets in service beside its design state. */
final class ServiceSections {
  private static final String SUCTION = "/suction";
  private static final String STATES = "/states";
  private static final String OPERATION = "/operation";
  private static final String SCREW = "/screw";
  private static final String GRAVITY = "/gravityRun";

  private ServiceSections() {}

  static InputSection suction(FormModel model) {
    InputSection section = new InputSection(model, "Suction side", SUCTION);
    Predicate<DesignDocument> there = document -> document.has(SUCTION);
    section.part(
        "Judge the suction line and the NPSH",
        "part suction",
        there,
        document -> document.with(SUCTION + "/altitude", "0 m"),
        document -> document.without(SUCTION));
    section.textWhen(there, FieldSpec.standard("Altitude", "altitude", "0 m", "300 m", "1000 ft"));
    InputSection editor = RunEditor.of(model, () -> SUCTION);
    editor.heading().setText("Pipe from the pit to the pump");
    section.inner(editor, there);
    section.showWhen(
        there,
        section.note(
            "The pit stands above the pump by the pit level of the transfer line. Each of several"
                + " pumps in parallel has such a pipe of its own."));
    return section;
  }

  static InputSection states(FormModel model) {
    InputSection section = new InputSection(model, "States beside the design", STATES);
    Predicate<DesignDocument> there = document -> document.has(STATES);
    Predicate<DesignDocument> pump = there.and(document -> document.has("/pump"));
    Predicate<DesignDocument> manure = there.and(document -> carrier(document, "manure"));
    Predicate<DesignDocument> known =
        there.and(document -> carrier(document, "manure") || carrier(document, "water"));
    section.part(
        "Judge the line in more states",
        "part states",
        there,
        document -> document.with(STATES + "/flushWater", "yes"),
        document -> document.without(STATES));
    section.textWhen(
        pump.or(there.and(d -> d.has(STATES + "/wornHead"))),
        FieldSpec.optional("Head lost by wear", "wornHead", "not judged", "10 %"));
    section.textWhen(
        known.or(there.and(d -> d.has(STATES + "/coldest"))),
        FieldSpec.optional("Coldest", "coldest", "not judged", "4 degC", "39 degF"));
    section.textWhen(
        known.or(there.and(d -> d.has(STATES + "/warmest"))),
        FieldSpec.optional("Warmest", "warmest", "not judged", "25 degC", "77 degF"));
    section.textWhen(
        manure.or(there.and(d -> d.has(STATES + "/thinnest"))),
        FieldSpec.optional("Thinnest, solids", "thinnest", "not judged", "1 %"));
    section.textWhen(
        manure.or(there.and(d -> d.has(STATES + "/thickest"))),
        FieldSpec.optional("Thickest, solids", "thickest", "not judged", "4 %"));
    section.textWhen(
        there,
        FieldSpec.optional("Lowest pit level", "lowSourceLevel", "not judged", "0.5 m", "2 ft"));
    section.textWhen(
        there,
        FieldSpec.optional("Highest pit level", "highSourceLevel", "not judged", "3 m", "10 ft"));
    section.textWhen(
        there, FieldSpec.optional("Least sand, by volume", "thinnestSand", "not judged", "1 %"));
    section.textWhen(
        there, FieldSpec.optional("Most sand, by volume", "thickestSand", "not judged", "6 %"));
    section.choiceWhen(
        there,
        section.choice(
            "Flush with water",
            () -> STATES + "/flushWater",
            () ->
                List.of(
                    new Choice("yes", "by the pump itself: judged"),
                    new Choice("no", "not by the pump")),
            document ->
                document.text(STATES + "/flushWater").equalsIgnoreCase("yes") ? "yes" : "no",
            (document, value) -> document.with(STATES + "/flushWater", value)));
    for (String state : List.of("thinnest", "thickest", "coldest", "warmest")) {
      liquid(section, model, state);
    }
    return section;
  }

  /** A liquid of its own in one state, in place of a number for that state. */
  private static void liquid(InputSection section, FormModel model, String state) {
    String place = STATES + "/" + state + "Carrier";
    Predicate<DesignDocument> own = document -> document.has(place);
    section.showWhen(
        document -> document.has(STATES),
        section.part(
            "The liquid at its " + state + " was measured",
            "part " + state + " carrier",
            own,
            document ->
                document.without(STATES + "/" + state).withPart(place, "{\"kind\": \"measured\"}"),
            document -> document.without(place)));
    section.inner(CarrierSection.of(model, "Liquid at its " + state, place), own);
  }

  private static boolean carrier(DesignDocument document, String kind) {
    return document.text("/carrier/kind").toLowerCase(Locale.ROOT).equals(kind);
  }

  static InputSection operation(FormModel model) {
    InputSection section = dayAndFlush(model);
    Predicate<DesignDocument> there = document -> document.has(OPERATION);
    section.choiceWhen(
        there,
        section.choice(
            "Flush by the pump",
            "flushPump",
            document ->
                document.text(OPERATION + "/flushPump").equalsIgnoreCase("yes") ? "yes" : "no",
            List.of(new Choice("no", "no"), new Choice("yes", "the pump of the line, on water"))));
    section.textWhen(
        there,
        FieldSpec.optional("Level of flush water", "flushLevel", "optional", "12 m", "40 ft"));
    section.table(
        "Curve of a flush pump of its own, behind that level",
        new ListTable(
            model,
            () -> OPERATION + "/flushCurve",
            "point",
            List.of(ListTable.Column.text("flow", "Flow"), ListTable.Column.text("head", "Head"))),
        there);
    return section;
  }

  private static InputSection dayAndFlush(FormModel model) {
    return optional(
        model,
        "A day of pumping, and the flush",
        OPERATION,
        "Judge a day of pumping and the flush",
        document ->
            document.with(OPERATION + "/dailyVolume", "1 m3").without(OPERATION + "/dailyVolume"),
        "The flush takes two volumes of the line. It has one supply: one whose flow is known, or the"
            + " pump of the line, or a tank at a level, with a pump of its own or without.",
        FieldSpec.optional("Volume a day", "dailyVolume", "not judged", "400 m3", "14000 ft3"),
        FieldSpec.optional("Batch between levels", "batchVolume", "optional", "20 m3", "700 ft3"),
        FieldSpec.optional(
            "Most starts in an hour", "mostStartsPerHour", "default: by the motor rating", "4"),
        FieldSpec.optional("Time to come to rest", "stopTime", "a sudden stop", "5 s"),
        FieldSpec.optional("Flow of flush water", "flushFlow", "not judged", "55 L/s", "870 gpm"),
        FieldSpec.optional("Volume of flush water", "flushVolume", "optional", "10 m3", "350 ft3"));
  }

  static InputSection screw(FormModel model) {
    return optional(
        model,
        "Screw conveyor",
        SCREW,
        "A screw conveyor feeds the pit",
        document -> document.with(SCREW + "/slope", "0 %"),
        "A check of capacity for what stands in a heap. Guard and lock out every auger.",
        FieldSpec.needed("Diameter of screw", "diameter", "400 mm", "16 in"),
        FieldSpec.standard("Diameter of shaft", "shaft", "0 mm", "80 mm", "3 in"),
        FieldSpec.optional("Pitch", "pitch", "default: the diameter", "400 mm", "16 in"),
        FieldSpec.needed("Speed of screw", "speed", "40 rpm"),
        FieldSpec.standard("Slope of screw", "slope", "0 %", "10 %"),
        FieldSpec.needed("Length of screw", "length", "18 m", "60 ft"),
        FieldSpec.needed("Load, by volume", "load", "3 L/s", "50 gal/min"),
        FieldSpec.needed("Bulk density", "bulkDensity", "1200 kg/m3", "75 lb/ft3"),
        FieldSpec.optional(
            "Pens scraped to it in", "scrapeTime", "optional, with a plant", "40 min"));
  }

  static InputSection gravityRun(FormModel model) {
    return optional(
        model,
        "Gravity pipe",
        GRAVITY,
        "A gravity pipe runs part full",
        document -> document.with(GRAVITY + "/manning", "0.013"),
        "By Manning's formula, which does not hold for thick manure.",
        FieldSpec.needed("Bore of gravity pipe", "bore", "300 mm", "12 in"),
        FieldSpec.needed("Slope of gravity pipe", "slope", "1 %"),
        FieldSpec.standard("Manning's n of pipe", "manning", "0.013", "0.013"),
        FieldSpec.needed("Flow in gravity pipe", "flow", "30 L/s", "480 gal/min"));
  }

  private static InputSection optional(
      FormModel model,
      String title,
      String pointer,
      String label,
      java.util.function.UnaryOperator<DesignDocument> add,
      String note,
      FieldSpec... fields) {
    InputSection section = new InputSection(model, title, pointer);
    Predicate<DesignDocument> there = document -> document.has(pointer);
    section.part(
        label, "part " + pointer.substring(1), there, add, document -> document.without(pointer));
    for (FieldSpec field : fields) {
      section.textWhen(there, field);
    }
    section.showWhen(there, section.note(note));
    return section;
  }
}
