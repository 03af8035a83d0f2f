package sandslurry.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;
import sandslurry.design.DesignDocument;
import sandslurry.material.sand.StandardSand;
import sandslurry.plant.pen.ManureProductions;

/** The plant from the pens to the storage, in the order of the way that the manure takes. */
final class PlantInputs {
  private static final String PLANT = "/plant";
  private static final Predicate<DesignDocument> THERE = document -> document.has(PLANT);
  private static final String EMPTY = "{\"pens\": [{}], \"units\": [{}]}";

  private static final String SIEVES = "sieves";

  private PlantInputs() {}

  /** The sections of the plant; all but the first have something to show only when it is there. */
  static List<InputSection> of(FormModel model) {
    return List.of(
        plant(model), pens(model), units(model), day(model), targets(model), prices(model));
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
        THERE, FieldSpec.standard("Recovered sand bedded", "rebeddedShare", "95 %", "90 %"));
    section.rangeWhen(
        THERE, FieldSpec.standard("Bedded sand that comes", "sandReachingPlant", "100 %", "90 %"));
    section.rangeWhen(
        THERE,
        FieldSpec.optional(
            "Fibre that settles", "organicSettleableShare", "default: 55 %, 35 to 75", "50 %"));
    section.rangeWhen(
        THERE,
        FieldSpec.standard("Its fall in water", "organicSettlingVelocity", "3 mm/s", "3 mm/s"));
    section.showWhen(
        THERE,
        section.note(
            "Units are connected by streams: a stream is a name that one pen, water or unit makes"
                + " and one unit or product takes. The plant takes the sand and the temperature"
                + " from above; its liquor is what its balance makes of it."));
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
    section.text(FieldSpec.optional("First one at", "firstScraping", "fed evenly all day", "5 h"));
    section.textWhen(
        document ->
            document.has(pen.get() + "/firstScraping")
                || document.has(pen.get() + "/scrapeDuration"),
        FieldSpec.optional(
            "Each comes within", "scrapeDuration", "default: 30 min, or the flush", "30 min"));
    flush(section, pen);
    return section;
  }

  private static void flush(InputSection section, Supplier<String> pen) {
    Supplier<String> flush = () -> pen.get() + "/flush";
    Predicate<DesignDocument> there = document -> document.has(flush.get());
    section.part(
        "It is flushed instead of scraped",
        "part flush",
        there,
        document -> document.withPart(flush.get(), "{}"),
        document -> document.without(flush.get()));
    section.textWhen(there, FieldSpec.needed("Stream of flush water", "flush/in", "flush water"));
    section.textWhen(
        there, FieldSpec.needed("Water of one flush", "flush/volume", "40 m3", "10000 gal"));
    section.textWhen(
        there, FieldSpec.needed("Rate of the flush", "flush/rate", "0.4 m3/s", "6500 gpm"));
    section.textWhen(there, FieldSpec.needed("Alley length", "flush/length", "90 m", "300 ft"));
    section.textWhen(there, FieldSpec.needed("Alley width", "flush/width", "3.6 m", "12 ft"));
    section.textWhen(there, FieldSpec.needed("Alley slope", "flush/slope", "3 %"));
    section.textWhen(
        there, FieldSpec.standard("Alley, Manning's n", "flush/manning", "0.02", "0.02"));
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
                new ListTable.Column(
                    "use", "Use", List.of("bedding", "fibre", "settled", "waste")))),
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
    gradation(section, model);
    return section;
  }

  private static void gradation(InputSection section, FormModel model) {
    String place = PLANT + "/targets/gradation";
    List<Choice> choices = new ArrayList<>();
    choices.add(new Choice("", "not judged"));
    for (StandardSand sand : StandardSand.values()) {
      choices.add(new Choice(sand.id(), sand.label()));
    }
    choices.add(new Choice(SIEVES, "sieves of your own"));
    Predicate<DesignDocument> own = document -> document.json(place).startsWith("[");
    section.choiceWhen(
        THERE,
        section.choice(
            "Gradation wanted",
            () -> place,
            () -> choices,
            document -> own.test(document) ? SIEVES : document.text(place),
            (document, value) ->
                value.equals(SIEVES)
                    ? document.without(place).insert(place, 0, "{}")
                    : document.without(place).with(place, value)));
    section.table(
        "Sieves, with the least and the most that may pass",
        new ListTable(
            model,
            () -> place,
            "sieve",
            List.of(
                ListTable.Column.text("size", "Sieve opening"),
                ListTable.Column.text("least", "Least passing"),
                ListTable.Column.text("most", "Most passing"))),
        own);
  }

  private static InputSection prices(FormModel model) {
    InputSection section = new InputSection(model, "Prices of your own", PLANT + "/prices");
    section.textWhen(THERE, FieldSpec.optional("Currency", "currency", "shown behind the sums"));
    price(section, "Price of sand delivered", "sand", "12", "1 t", "1 ton");
    price(section, "Price of hauling", "hauling", "4", "1 m3", "1000 gal");
    price(section, "Price of electricity", "electricity", "0.15", "1 kWh");
    price(section, "Price of water", "water", "1.2", "1 m3", "1000 gal");
    section.showWhen(THERE, section.note("No price is assumed; the report says which is missing."));
    return section;
  }

  private static void price(
      InputSection section, String label, String field, String price, String... per) {
    String place = PLANT + "/prices/" + field;
    Predicate<DesignDocument> there = document -> document.has(place);
    section.showWhen(
        THERE,
        section.part(
            label,
            "part price " + field,
            there,
            document -> document.withPart(place, "{}"),
            document -> document.without(place)));
    section.rangeWhen(there, FieldSpec.needed("Price", field + "/price", price));
    section.textWhen(there, FieldSpec.needed("for", field + "/per", per));
  }
}
