package sandslurry.ui;

import java.util.List;

/** Title, notes and the units of the report. */
final class DesignSection {
  private static final String UNITS = "/units";

  private DesignSection() {}

  static InputSection of(FormModel model) {
    InputSection section = new InputSection(model, "Design", "");
    section.text(FieldSpec.optional("Title", "title", "what the report is called"));
    section.text(FieldSpec.optional("Notes", "notes", "optional"));
    section.choice(
        "Report in",
        () -> UNITS,
        () -> List.of(new Choice("metric", "metric units"), new Choice("US", "US customary units")),
        document -> document.has(UNITS) ? document.text(UNITS) : "metric",
        (document, units) -> document.with(UNITS, units));
    section.note(
        "Type every quantity with its unit, metric or US, as in 300 ft, 6 in, 0.9 m3/min.");
    return section;
  }
}
