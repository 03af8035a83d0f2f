package sandslurry.ui;

import sandslurry.design.DesignDocument;

/** The transfer line: levels, the list of its runs, and the run that is selected. */
final class RouteSection {
  private static final String RUNS = "/route/runs";

  private RouteSection() {}

  static InputSection of(FormModel model) {
    InputSection section = new InputSection(model, "Transfer line", "/route");
    section.part(
        "The design has a transfer line",
        "part route",
        RouteSection::isThere,
        document -> document.insert(RUNS, 0, "{}"),
        RouteSection::withoutLine);
    section.textWhen(
        RouteSection::isThere,
        FieldSpec.standard("Pit level above line start", "sourceLevel", "0 m", "1 m", "3 ft"));
    section.textWhen(
        RouteSection::isThere,
        FieldSpec.standard("Outlet below surface", "outletHead", "0 m", "0.5 m", "2 ft"));
    section.list(
        new ListEditor(
            model,
            () -> RUNS,
            new ListEditor.Kind(
                "Pipe runs in the order of flow", "run", "{}", 1, RouteSection::pipe),
            run -> RunEditor.of(model, run)),
        RouteSection::isThere);
    return section;
  }

  private static boolean isThere(DesignDocument document) {
    return document.has("/route");
  }

  private static DesignDocument withoutLine(DesignDocument document) {
    return document
        .without("/route")
        .without("/pump")
        .without("/suction")
        .without("/states")
        .without("/operation")
        .without("/flow")
        .without("/mixture")
        .without("/dilution");
  }

  private static String pipe(DesignDocument document, String run) {
    String pipe =
        document.has(run + "/bore")
            ? document.text(run + "/bore")
            : (document.text(run + "/pipe/size") + " " + document.text(run + "/pipe/class"))
                .strip();
    String length = document.text(run + "/length");
    return pipe + (length.isBlank() || pipe.isBlank() ? "" : ", ") + length;
  }
}
