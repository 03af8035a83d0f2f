package sandslurry.ui;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;
import sandslurry.circuit.ManureProductions;
import sandslurry.design.DesignDocument;

/** The plant from the pens to the storage, in the order of the way that the manure takes. */
final class PlantInputs {
  private static final String PLANT = "/plant";
  private static final Predicate<DesignDocument> THERE = document -> document.has(PLANT);
  private static final String EMPTY = "{\"pens\": [{}], \"units\": [{}]}";

  private PlantInputs() {}

  /** The sections of the plant; all but the first have something to show only when it is there. */
  static List<InputSection> of(FormModel model) {
    return List.of(plant(model), pens(model), units(model), day(model), targets(model));
  }

  private static InputSection plant(FormModel model) {
    InputSection section = new InputSection(model, "Plant", PLANT);
    section.part(
        "The design has a plant, from the pens to the storage",
        "part plant",
        THERE,
        document -> document.withPart(PLANT, EMPTY),
        document -> document.without(PLANT));
    section.choiceWhen(
        THERE,
        "Manure production by",
        "production",
        ManureProductions.all().stream().map(p -> new Choice(p.id(), p.name())).toList());
    section.textWhen(
        THERE, FieldSpec.standard("Dissolved, of solids", "dissolvedShare", "20 %", "20 %"));
    section.textWhen(THERE, FieldSpec.standard("Fibre, of solids", "fibreShare", "54 %", "54 %"));
    section.textWhen(
        THERE, FieldSpec.standard("Fall of coated grains", "coatingFactor", "1", "0.8"));
    section.textWhen(THERE, FieldSpec.standard("Porosity of sand", "porosity", "40 %", "40 %"));
    section.textWhen(
        THERE, FieldSpec.standard("Recovered sand bedded", "rebeddedShare", "100 %", "95 %"));
    section.showWhen(
        THERE,
        section.note(
            "Units are connected by streams: a stream is a name that one pen, water or unit makes"
                + " and one unit or product takes. The plant takes the sand and the temperature from"
                + " above; its liquor is what its balance makes of it."));
    return section;
  }

  private static InputSection pens(FormModel model) {
    InputSection section = new InputSection(model, "Pens and fresh water", () -> PLANT + "/pens");
    section.list(
        new ListEditor(
            model,
            () -> PLANT + "/pens",
            new ListEditor.Kind("Pens", "pen", "{}", 1, PlantInputs::pen),
            pen -> pen(model, pen)),
        THERE);
    section.table(
        "Fresh water",
        new ListTable(
            model,
            () -> PLANT + "/waters",
            "water",
            List.of(
                ListTable.Column.text("stream", "Stream"),
                ListTable.Column.text("flow", "Flow"),
                ListTable.Column.text("most", "Could be at most"))),
        THERE);
    return section;
  }

  private static String pen(DesignDocument document, String pen) {
    String cows = document.text(pen + "/cows");
    return cows.isBlank() ? "" : cows + " cows";
  }

  private static InputSection pen(FormModel model, Supplier<String> pen) {
    InputSection section = new InputSection(model, "Pen", pen);
    section.text(FieldSpec.needed("Name", "name", "North pen"));
    section.text(FieldSpec.needed("Stream that it makes", "stream", "manure north"));
    section.text(FieldSpec.standard("Lactating cows", "cows", "0", "300"));
    section.text(FieldSpec.standard("Milk a cow", "milk", "36 kg/d", "36 kg/d", "80 lb/d"));
    section.text(FieldSpec.standard("Dry cows", "dryCows", "0", "40"));
    section.text(FieldSpec.standard("Heifers", "heifers", "0", "60"));
    section.text(FieldSpec.standard("Calves", "calves", "0", "20"));
    section.range(FieldSpec.standard("Manure, times equation", "manureFactor", "1", "1"));
    section.text(FieldSpec.standard("Sand-bedded stalls", "stalls", "0", "300"));
    section.range(
        FieldSpec.standard("Dry sand a stall", "sandPerStall", "0 kg/d", "20 kg/d", "50 lb/d"));
    section.range(FieldSpec.standard("Water of the pen", "water", "0 m3/d", "3 m3/d", "900 gal/d"));
    section.text(FieldSpec.standard("Scraping interval", "scrapeInterval", "8 h", "8 h"));
    return section;
  }

  private static InputSection units(FormModel model) {
    InputSection section = new InputSection(model, "Units of the plant", () -> PLANT + "/units");
    section.list(
        new ListEditor(
            model,
            () -> PLANT + "/units",
            new ListEditor.Kind("Units", "unit", "{}", 1, UnitEditor::summary),
            unit -> UnitEditor.of(model, unit)),
        THERE);
    return section;
  }

  private static InputSection day(FormModel model) {
    InputSection section =
        new InputSection(model, "Products, machines, modes", () -> PLANT + "/modes");
    section.table(
        "Products: streams that leave the plant",
        new ListTable(
            model,
            () -> PLANT + "/products",
            "product",
            List.of(
                ListTable.Column.text("stream", "Stream"),
                new ListTable.Column("use", "Use", List.of("bedding", "fibre", "waste")))),
        THERE);
    section.list(
        new ListEditor(
            model,
            () -> PLANT + "/machines",
            new ListEditor.Kind(
                "Machines of known power",
                "machine",
                "{}",
                0,
                (document, machine) ->
                    Optional.of(document.text(machine + "/power"))
                        .filter(power -> !power.isBlank())
                        .orElse(document.text(machine + "/power/base"))),
            machine -> machine(model, machine)),
        THERE);
    section.list(
        new ListEditor(
            model,
            () -> PLANT + "/modes",
            new ListEditor.Kind(
                "Modes of the day; none is one mode all day",
                "mode",
                "{}",
                0,
                (document, mode) ->
                    document.text(mode + "/from") + " to " + document.text(mode + "/to")),
            mode -> mode(model, mode)),
        THERE);
    return section;
  }

  private static InputSection machine(FormModel model, Supplier<String> machine) {
    InputSection section = new InputSection(model, "Machine", machine);
    section.text(FieldSpec.needed("Name", "name", "screw of the box"));
    section.range(FieldSpec.needed("Electric power", "power", "3 kW", "4 hp"));
    section.text(FieldSpec.standard("Running time a day", "runningTime", "24 h", "8 h"));
    return section;
  }

  private static InputSection mode(FormModel model, Supplier<String> mode) {
    InputSection section = new InputSection(model, "Mode", mode);
    section.text(FieldSpec.needed("Name", "name", "recycle dilutes"));
    section.text(FieldSpec.needed("From", "from", "0 h"));
    section.text(FieldSpec.needed("To", "to", "20 h"));
    section.table(
        "Flows that differ in this mode: pumps of pits, fresh water",
        new ListTable(
            model,
            () -> mode.get() + "/flows",
            "flow",
            List.of(
                ListTable.Column.text("stream", "Stream"), ListTable.Column.text("flow", "Flow"))),
        document -> true);
    return section;
  }

  private static InputSection targets(FormModel model) {
    InputSection section = new InputSection(model, "Targets of the plant", PLANT + "/targets");
    section.textWhen(
        THERE, FieldSpec.standard("Sand recovered, least", "sandCapture", "85 %", "85 %"));
    section.textWhen(
        THERE, FieldSpec.standard("Organic matter in sand", "bedOrganicMatter", "3 %", "3 %"));
    section.textWhen(
        THERE, FieldSpec.standard("Moisture of sand, most", "bedMoisture", "20 %", "20 %"));
    section.textWhen(
        THERE, FieldSpec.optional("Solids of liquor, most", "liquorSolids", "not judged", "3 %"));
    section.textWhen(
        THERE, FieldSpec.optional("Time of storage, least", "storage", "not judged", "180 d"));
    return section;
  }
}
