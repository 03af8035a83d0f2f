package sandslurry.ui;

import java.util.List;
import java.util.function.Predicate;
import sandslurry.design.DesignDocument;

/** The solids of manure liquor: known without the sand, or from a laboratory that counts it. */
final class ManureSolids {
  private static final String FREE = "totalSolids";
  private static final List<Choice> WAYS =
      List.of(
          new Choice(FREE, "total solids without sand"),
          new Choice("sand", "laboratory: total solids and sand"),
          new Choice("volatileSolids", "laboratory: total and volatile solids"));

  private final String at;

  /** The way chosen, until the document shows one. */
  private String chosen = FREE;

  /**
   * Makes the fields.
   *
   * @param at pointer of the liquid
   */
  ManureSolids(String at) {
    this.at = at;
  }

  private String laboratory() {
    return at + "/laboratory";
  }

  void addTo(InputSection section, Predicate<DesignDocument> manure) {
    ChoiceRow way =
        section.choice(
            "Solids known as", () -> at + "/solids", () -> WAYS, this::way, this::withWay);
    section.choiceWhen(manure, way);
    section.textWhen(manure.and(is(FREE)), FieldSpec.needed("Total solids, no sand", FREE, "3 %"));
    Predicate<DesignDocument> laboratory = manure.and(is(FREE).negate());
    section.textWhen(
        laboratory,
        FieldSpec.needed("Total solids with sand", "laboratory/totalSolids", "9 %"),
        FREE);
    section.textWhen(
        manure.and(is("sand")), FieldSpec.needed("Sand in the sample", "laboratory/sand", "5 %"));
    section.textWhen(
        manure.and(is("volatileSolids")),
        FieldSpec.needed("Volatile solids", "laboratory/volatileSolids", "3 %"),
        "laboratory/sand");
  }

  private Predicate<DesignDocument> is(String way) {
    return document -> way(document).equals(way);
  }

  private String way(DesignDocument document) {
    if (document.has(at + "/" + FREE)) {
      return FREE;
    }
    if (document.has(laboratory() + "/sand")) {
      return "sand";
    }
    if (document.has(laboratory() + "/volatileSolids")) {
      return "volatileSolids";
    }
    return document.has(laboratory()) && chosen.equals(FREE) ? "sand" : chosen;
  }

  private DesignDocument withWay(DesignDocument document, String way) {
    chosen = way;
    if (way.equals(FREE)) {
      return document.without(laboratory());
    }
    String other = way.equals("sand") ? "volatileSolids" : "sand";
    return document.without(at + "/" + FREE).without(laboratory() + "/" + other);
  }
}
