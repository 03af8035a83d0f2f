package sandslurry.ui;

import sandslurry.design.DesignDocument;

/** The settling lane. */
final class LaneSection {
  private static final FieldSpec[] FIELDS = {
    FieldSpec.needed("Length", "length", "30 m", "100 ft"),
    FieldSpec.needed("Clear width", "width", "3 m", "10 ft"),
    FieldSpec.standard("Slope", "slope", "0 %", "0.25 %"),
    FieldSpec.standard("Manning's n", "manning", "0.015", "0.015"),
    FieldSpec.needed("Flow of mixture", "flow", "30 L/s", "470 gal/min"),
    FieldSpec.optional(
        "Depth, if a weir sets it", "depth", "default: normal depth", "150 mm", "6 in"),
    FieldSpec.optional("Sand by volume", "sandVolumeFraction", "default: as in the line", "2 %"),
    FieldSpec.needed("Depth kept for sand", "sandStorageDepth", "300 mm", "12 in"),
    FieldSpec.standard("Running time a day", "runningTime", "24 h", "8 h"),
    FieldSpec.standard("Fall of coated grains", "coatingFactor", "1", "0.8")
  };

  private LaneSection() {}

  static InputSection of(FormModel model) {
    InputSection section = new InputSection(model, "Settling lane", "/lane");
    section.part(
        "The design has a settling lane",
        "part lane",
        LaneSection::isThere,
        document -> document.with("/lane/manning", "0.015"),
        document -> document.without("/lane"));
    for (FieldSpec field : FIELDS) {
      section.textWhen(LaneSection::isThere, field);
    }
    section.showWhen(
        LaneSection::isThere,
        section.note(
            "Without a depth the lane flows at the normal depth of its slope. Without a share of"
                + " sand it takes that of the line. The last field is a factor on the settling"
                + " velocity."));
    return section;
  }

  private static boolean isThere(DesignDocument document) {
    return document.has("/lane");
  }
}
