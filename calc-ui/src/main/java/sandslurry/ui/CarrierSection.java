package sandslurry.ui;

import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import sandslurry.design.DesignDocument;

/** The liquid that carries the sand. */
final class CarrierSection {
  private static final String KIND = "/carrier/kind";

  private static final Map<String, List<String>> FIELDS =
      Map.of(
          "water", List.of(),
          "manure", List.of("totalSolids"),
          "measured", List.of("density", "viscosity"));

  private CarrierSection() {}

  static InputSection of(FormModel model) {
    InputSection section = new InputSection(model, "Carrier liquid", "/carrier");
    section.choice(
        "Liquid",
        () -> KIND,
        () ->
            List.of(
                new Choice("water", "water"),
                new Choice("manure", "manure liquor by its total solids"),
                new Choice("measured", "liquid of measured density and viscosity")),
        document -> document.text(KIND),
        CarrierSection::withKind);
    section.text(FieldSpec.needed("Temperature", "temperature", "15 degC", "60 degF"));
    section.textWhen(is("manure"), FieldSpec.needed("Total solids, no sand", "totalSolids", "3 %"));
    section.textWhen(
        is("measured"), FieldSpec.needed("Density", "density", "1010 kg/m3", "63 lb/ft3"));
    section.textWhen(
        is("measured"), FieldSpec.needed("Dynamic viscosity", "viscosity", "4 mPa.s", "4 cP"));
    return section;
  }

  private static Predicate<DesignDocument> is(String kind) {
    return document -> document.text(KIND).equalsIgnoreCase(kind);
  }

  /** Another liquid does not have the fields of the one before. */
  private static DesignDocument withKind(DesignDocument document, String kind) {
    DesignDocument changed = document.with(KIND, kind);
    List<String> kept = FIELDS.getOrDefault(kind, List.of());
    for (List<String> fields : FIELDS.values()) {
      for (String field : fields) {
        if (!kept.contains(field)) {
          changed = changed.without("/carrier/" + field);
        }
      }
    }
    return changed;
  }
}
