package sandslurry.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.function.Supplier;
import sandslurry.design.DesignDocument;
import sandslurry.separation.cyclone.HydrocycloneModels;

/** The fields of one unit of the plant, those of its kind. */
final class UnitEditor {
  private static final List<Choice> KINDS =
      List.of(
          new Choice("box", "dilution settling box"),
          new Choice("lane", "settling lane"),
          new Choice("cyclone", "hydrocyclone"),
          new Choice("screen", "coarse screen"),
          new Choice("fibreSeparator", "fibre separator"),
          new Choice("splitter", "splitter"),
          new Choice("pit", "pit or tank"),
          new Choice("storage", "storage"));

  /** What the fields of a kind that is chosen anew start with. */
  private static final Map<String, String> FRESH =
      Map.of(
          "lane", "{\"reaches\": [{}]}",
          "splitter", "{\"outlets\": [{}, {}]}",
          "pit", "{\"pumps\": [{}]}",
          "storage", "{\"months\": [{\"name\": \"year\", \"length\": \"365 d\"}]}");

  /** Fields that a unit keeps when it becomes another kind, where the other kind has them. */
  private static final List<String> COMMON = List.of("name", "in");

  private final FormModel model;
  private final Supplier<String> unit;
  private final InputSection section;

  private UnitEditor(FormModel model, Supplier<String> unit) {
    this.model = model;
    this.unit = unit;
    this.section = new InputSection(model, "Unit", unit);
  }

  static InputSection of(FormModel model, Supplier<String> unit) {
    return new UnitEditor(model, unit).build();
  }

  static String summary(DesignDocument document, String unit) {
    String kind = document.text(unit + "/kind");
    return KINDS.stream()
        .filter(k -> k.value().equalsIgnoreCase(kind))
        .findFirst()
        .map(Choice::label)
        .orElse(kind);
  }

  private InputSection build() {
    section.text(FieldSpec.needed("Name", "name", "Box"));
    section.choice("Kind", "kind", KINDS, this::withKind);
    section.text(FieldSpec.needed("Streams in, by commas", "in", "manure, recycle"));
    box();
    lane();
    cyclone();
    cakes();
    splitter();
    pit();
    storage();
    section.textWhen(
        is("box", "lane", "cyclone", "screen", "fibreSeparator"),
        FieldSpec.standard("Running time a day", "runningTime", "24 h", "20 h"));
    return section;
  }

  private Predicate<DesignDocument> is(String... kinds) {
    return document -> {
      String kind = document.text(unit.get() + "/kind");
      for (String one : kinds) {
        if (one.equalsIgnoreCase(kind)) {
          return true;
        }
      }
      return false;
    };
  }

  /** Another kind has other fields; undo brings the old ones back. */
  private DesignDocument withKind(DesignDocument document, String kind) {
    if (kind.equals(document.text(unit.get() + "/kind"))) {
      return document;
    }
    DesignDocument changed =
        document
            .withPart(unit.get(), FRESH.getOrDefault(kind, "{}"))
            .with(unit.get() + "/kind", kind);
    for (String field : COMMON) {
      changed = changed.with(unit.get() + "/" + field, document.text(unit.get() + "/" + field));
    }
    return changed;
  }

  private void needed(Predicate<DesignDocument> when, String label, String field, String... such) {
    section.textWhen(when, FieldSpec.needed(label, field, such));
  }

  private void standard(
      Predicate<DesignDocument> when, String label, String field, String standard, String... such) {
    section.textWhen(when, FieldSpec.standard(label, field, standard, such));
  }

  private void optional(
      Predicate<DesignDocument> when, String label, String field, String empty, String... such) {
    section.textWhen(when, FieldSpec.optional(label, field, empty, such));
  }

  private void table(
      Predicate<DesignDocument> when, String label, String list, String what, String... columns) {
    List<ListTable.Column> all = new ArrayList<>();
    for (int i = 0; i < columns.length; i += 2) {
      all.add(ListTable.Column.text(columns[i], columns[i + 1]));
    }
    section.table(label, new ListTable(model, () -> unit.get() + "/" + list, what, all), when);
  }

  private void box() {
    Predicate<DesignDocument> box = is("box");
    needed(is("box", "lane"), "Sand stream", "sand", "sand");
    needed(is("box", "lane"), "Overflow stream", "overflow", "box overflow");
    needed(box, "Length of surface", "length", "3 m", "10 ft");
    needed(box, "Width of surface", "width", "1.2 m", "4 ft");
    standard(box, "Water depth over screw", "waterDepth", "1 m", "1.2 m", "4 ft");
    standard(box, "Effective surface", "effectiveShare", "100 %", "80 %");
    standard(box, "Moisture of raked sand", "sandMoisture", "18 %", "18 %");
    standard(box, "Rinse, pore volumes", "rinsePoreVolumes", "0", "1.5");
    section.rangeWhen(
        box,
        FieldSpec.optional(
            "Rinse efficiency", "rinseEfficiency", "default: 60 %, 35 to 86", "60 %"));
    optional(box, "Screw capacity, bulk", "screwCapacity", "not checked", "3 m3/h", "100 ft3/h");
    standard(box, "Porosity of raked sand", "porosity", "45 %", "45 %");
    standard(box, "Shear rate of viscosity", "shearRate", "10 1/s", "10 1/s");
  }

  private void lane() {
    Predicate<DesignDocument> lane = is("lane");
    section.list(
        new ListEditor(
            model,
            () -> unit.get() + "/reaches",
            new ListEditor.Kind(
                "Reaches from the inlet on",
                "reach",
                "{}",
                1,
                (document, reach) ->
                    document.text(reach + "/length") + " by " + document.text(reach + "/width")),
            this::reach),
        lane);
    optional(lane, "Judged when filled to", "filled", "clean to clean-out", "50 %");
    standard(lane, "Lanes in turn", "lanes", "1", "2");
    standard(lane, "Time to drain", "drainTime", "3 d", "3 d");
    optional(lane, "Longest way to a drain", "drainPath", "default: all reaches", "3 m", "10 ft");
    standard(lane, "Time to dig out", "digTime", "0.5 d", "0.5 d");
    standard(lane, "Time in the stack", "stackTime", "14 d", "28 d");
    standard(lane, "Height of the stack", "stackHeight", "1.5 m", "1.5 m", "5 ft");
  }

  private InputSection reach(Supplier<String> reach) {
    InputSection fields = new InputSection(model, "Reach", reach);
    fields.text(FieldSpec.needed("Length", "length", "30 m", "100 ft"));
    fields.text(FieldSpec.needed("Width", "width", "2 m", "6 ft"));
    fields.text(FieldSpec.standard("Slope", "slope", "0 %", "0.2 %"));
    fields.text(FieldSpec.standard("Manning's n", "manning", "0.015", "0.015"));
    fields.text(
        FieldSpec.optional(
            "Weir level over floor", "waterLevel", "default: normal depth", "200 mm", "8 in"));
    fields.text(FieldSpec.needed("Depth kept for sand", "sandStorageDepth", "300 mm", "12 in"));
    fields.text(FieldSpec.standard("Effective floor", "effectiveShare", "100 %", "80 %"));
    return fields;
  }

  private void cyclone() {
    Predicate<DesignDocument> cyclone = is("cyclone");
    needed(cyclone, "Underflow stream", "underflow", "underflow");
    needed(cyclone, "Overflow stream", "overflow", "cyclone overflow");
    needed(cyclone, "Body diameter", "body", "250 mm", "10 in");
    needed(cyclone, "Apex diameter", "apex", "40 mm", "1.5 in");
    optional(cyclone, "Inlet, as a circle", "inlet", "default: 0.28 body", "70 mm", "3 in");
    optional(cyclone, "Vortex finder", "vortexFinder", "default: 0.34 body", "85 mm", "3.5 in");
    optional(cyclone, "Free vortex height", "freeVortex", "default: 4.6 body", "1.1 m", "4 ft");
    standard(cyclone, "Cyclones in parallel", "parallel", "1", "2");
    section.choiceWhen(
        cyclone,
        "Cut and pressure by",
        "model",
        HydrocycloneModels.all().stream().map(m -> new Choice(m.id(), m.name())).toList());
    standard(cyclone, "Shear rate of viscosity", "shearRate", "200 1/s", "200 1/s");
    standard(cyclone, "Feed pump efficiency", "pumpEfficiency", "50 %", "50 %");
  }

  private void cakes() {
    Predicate<DesignDocument> screen = is("screen");
    Predicate<DesignDocument> fibre = is("fibreSeparator");
    needed(screen.or(fibre), "Cake stream", "cake", "fibre");
    needed(screen.or(fibre), "Liquid stream", "liquid", "pressed");
    needed(screen, "Opening", "opening", "10 mm", "0.4 in");
    optional(fibre, "Opening", "opening", "optional", "0.5 mm");
    standard(screen, "Fibre caught", "fibreCapture", "2 %", "2 %");
    standard(fibre, "Fibre caught", "fibreCapture", "50 %", "50 %");
    standard(screen, "Fines caught", "finesCapture", "0 %", "0 %");
    standard(fibre, "Fines caught", "finesCapture", "10 %", "10 %");
    standard(screen, "Solids of the cake", "cakeSolids", "20 %", "20 %");
    standard(fibre, "Solids of the cake", "cakeSolids", "26 %", "26 %");
  }

  private void splitter() {
    table(
        is("splitter"),
        "Streams out and their shares, in all 100 %",
        "outlets",
        "outlet",
        "stream",
        "Stream",
        "share",
        "Share");
  }

  private void pit() {
    Predicate<DesignDocument> pit = is("pit");
    table(
        pit,
        "Pumps, in the order that they are served",
        "pumps",
        "pump",
        "stream",
        "Stream",
        "flow",
        "Flow");
    optional(pit, "Overflow stream", "overflow", "none");
    needed(pit, "Volume to the brim", "capacity", "60 m3", "16000 gal");
    optional(
        pit,
        "Volume to the weir",
        "weirVolume",
        "needed with a stream over it",
        "40 m3",
        "10000 gal");
    optional(
        pit, "Volume at the start", "startVolume", "default: to the weir", "40 m3", "10000 gal");
    standard(pit, "Depth to the brim", "depth", "3 m", "3 m", "10 ft");
    Predicate<DesignDocument> mixed = pit.and(d -> d.has(unit.get() + "/mixer"));
    section.showWhen(
        pit,
        section.part(
            "It has a mixer",
            "part mixer",
            document -> document.has(unit.get() + "/mixer"),
            document -> document.withPart(unit.get() + "/mixer", "{}"),
            document -> document.without(unit.get() + "/mixer")));
    section.choiceWhen(
        mixed,
        "Impeller",
        "mixer/impeller",
        List.of(
            Choice.of("propeller"),
            Choice.of("pitched blade"),
            Choice.of("flat blade"),
            Choice.of("disc turbine")));
    needed(mixed, "Impeller diameter", "mixer/diameter", "0.5 m", "20 in");
    needed(mixed, "Mixer speed", "mixer/speed", "200 rpm");
    optional(mixed, "Zwietering's S", "mixer/suspensionNumber", "default: by the impeller", "6.6");
    optional(mixed, "Power number", "mixer/powerNumber", "default: by the impeller", "0.35");
    standard(mixed, "Mixer runs a day", "mixer/runningTime", "24 h", "6 h");
  }

  private void storage() {
    Predicate<DesignDocument> storage = is("storage");
    needed(storage, "Floor length", "floorLength", "60 m", "200 ft");
    needed(storage, "Floor width", "floorWidth", "40 m", "130 ft");
    standard(storage, "Side slope, run to rise", "sideSlope", "0", "2");
    needed(storage, "Depth to the top", "depth", "4 m", "13 ft");
    table(
        storage,
        "Pumps that give liquor back",
        "pumps",
        "pump",
        "stream",
        "Stream",
        "flow",
        "Flow");
    standard(storage, "Sand that settles", "sandSettling", "100 %", "100 %");
    Predicate<DesignDocument> pumped =
        storage.and(
            document ->
                document.has(unit.get() + "/pumps")
                    || document.has(unit.get() + "/fibreSettling")
                    || document.has(unit.get() + "/finesSettling")
                    || document.has(unit.get() + "/poolVolume"));
    needed(pumped, "Fibre that settles", "fibreSettling", "60 %");
    needed(pumped, "Fines that settle", "finesSettling", "40 %");
    optional(
        pumped, "Volume while pumped", "poolVolume", "default: half", "5000 m3", "1000000 gal");
    standard(storage, "Design storm", "storm", "0 mm", "130 mm", "5 in");
    standard(storage, "Freeboard", "freeboard", "0.3 m", "0.3 m", "1 ft");
    standard(storage, "Settled sand, in bulk", "settledSand", "0 m3", "100 m3", "3500 ft3");
    table(
        storage,
        "Months of its year; one of 365 d will do",
        "months",
        "month",
        "name",
        "Name",
        "length",
        "Length",
        "rain",
        "Rain",
        "evaporation",
        "Evaporation");
  }
}
