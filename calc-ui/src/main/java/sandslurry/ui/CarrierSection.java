package sandslurry.ui;

import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Predicate;
import sandslurry.design.DesignDocument;

/** A liquid that carries the sand: that of the design, or that of one state. */
final class CarrierSection {
  private static final List<Choice> KINDS =
      List.of(
          new Choice("water", "water"),
          new Choice("manure", "manure liquor by its solids"),
          new Choice("measured", "measured density and viscosity"),
          new Choice("rheology", "measured law of rheology"),
          new Choice("readings", "viscometer readings"));

  /** The fields of every kind, beside kind and temperature. */
  private static final Map<String, List<String>> FIELDS =
      Map.of(
          "water", List.of(),
          "manure", List.of("totalSolids", "laboratory"),
          "measured", List.of("density", "viscosity"),
          "rheology",
              List.of(
                  "density",
                  "totalSolids",
                  "law",
                  "viscosity",
                  "yieldStress",
                  "plasticViscosity",
                  "consistency",
                  "index"),
          "readings", List.of("density", "totalSolids", "law", "equalErrors", "readings"));

  private static final List<Choice> LAWS =
      List.of(
          new Choice("Newtonian", "Newtonian"),
          new Choice("power law", "power law"),
          new Choice("Bingham", "Bingham"),
          new Choice("Herschel-Bulkley", "Herschel-Bulkley"));

  /** The parameters of every law. */
  private static final Map<String, List<String>> PARAMETERS =
      Map.of(
          "Newtonian", List.of("viscosity"),
          "power law", List.of("consistency", "index"),
          "Bingham", List.of("yieldStress", "plasticViscosity"),
          "Herschel-Bulkley", List.of("yieldStress", "consistency", "index"));

  private final String at;

  private CarrierSection(String at) {
    this.at = at;
  }

  static InputSection of(FormModel model) {
    return of(model, "Carrier liquid", "/carrier");
  }

  /** The fields of a liquid that stands at a pointer. */
  static InputSection of(FormModel model, String title, String at) {
    return new CarrierSection(at).build(model, title);
  }

  private InputSection build(FormModel model, String title) {
    InputSection section = new InputSection(model, title, at);
    section.choice(
        "Liquid",
        () -> at + "/kind",
        () -> KINDS,
        document -> document.text(at + "/kind"),
        this::withKind);
    section.text(FieldSpec.needed("Temperature", "temperature", "15 degC", "60 degF"));
    new ManureSolids(at).addTo(section, is("manure"));
    Predicate<DesignDocument> measured = is("measured");
    Predicate<DesignDocument> rheology = is("rheology");
    Predicate<DesignDocument> readings = is("readings");
    section.textWhen(
        measured.or(rheology).or(readings),
        FieldSpec.needed("Density", "density", "1010 kg/m3", "63 lb/ft3"));
    section.textWhen(
        rheology.or(readings),
        FieldSpec.optional("Total solids, no sand", "totalSolids", "optional", "6 %"));
    section.choiceWhen(rheology, section.choice("Law", "law", LAWS, this::withLaw));
    section.textWhen(
        measured.or(rheology.and(has("viscosity"))),
        FieldSpec.needed("Dynamic viscosity", "viscosity", "4 mPa.s", "4 cP"));
    section.textWhen(
        rheology.and(has("yieldStress")), FieldSpec.needed("Yield stress", "yieldStress", "2 Pa"));
    section.textWhen(
        rheology.and(has("plasticViscosity")),
        FieldSpec.needed("Plastic viscosity", "plasticViscosity", "30 mPa.s", "30 cP"));
    section.textWhen(
        rheology.and(has("consistency")),
        FieldSpec.needed("Consistency [Pa.s^n]", "consistency", "0.5"));
    section.textWhen(rheology.and(has("index")), FieldSpec.needed("Flow index n", "index", "0.5"));
    addReadings(section, model, readings);
    return section;
  }

  private void addReadings(InputSection section, FormModel model, Predicate<DesignDocument> shown) {
    section.table(
        "Viscometer readings",
        new ListTable(
            model,
            () -> at + "/readings",
            "reading",
            List.of(
                ListTable.Column.text("shearRate", "Shear rate"),
                ListTable.Column.text("shearStress", "Shear stress"))),
        shown);
    section.choiceWhen(
        shown,
        section.choice(
            "Law fitted",
            "law",
            List.of(
                new Choice("", "the one that fits best"),
                LAWS.get(0),
                LAWS.get(1),
                LAWS.get(2),
                LAWS.get(3))));
    section.choiceWhen(
        shown,
        section.choice(
            "Readings err alike in",
            "equalErrors",
            List.of(
                new Choice("", "per cent (default)"),
                new Choice("per cent", "per cent"),
                new Choice("pascals", "pascals"))));
  }

  private Predicate<DesignDocument> is(String kind) {
    return document -> document.text(at + "/kind").equalsIgnoreCase(kind);
  }

  private Predicate<DesignDocument> has(String parameter) {
    return document ->
        PARAMETERS.getOrDefault(document.text(at + "/law"), List.of()).contains(parameter);
  }

  /** Another liquid does not have the fields of the one before. */
  private DesignDocument withKind(DesignDocument document, String kind) {
    return without(document.with(at + "/kind", kind), FIELDS, FIELDS.getOrDefault(kind, List.of()));
  }

  private DesignDocument withLaw(DesignDocument document, String law) {
    return without(
        document.with(at + "/law", law), PARAMETERS, PARAMETERS.getOrDefault(law, List.of()));
  }

  private DesignDocument without(
      DesignDocument document, Map<String, List<String>> all, List<String> kept) {
    TreeSet<String> gone = new TreeSet<>();
    all.values().forEach(gone::addAll);
    kept.forEach(gone::remove);
    DesignDocument changed = document;
    for (String field : gone) {
      changed = changed.without(at + "/" + field);
    }
    return changed;
  }
}
