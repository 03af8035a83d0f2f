package sandslurry.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.Problem;

/**
 * The three fields of a value that may have a range: the value itself, and its ends. In the
 * document it is a text as long as it has no ends, and a group with them.
 */
final class RangeRow {
  private final TextRow base;
  private final TextRow low;
  private final TextRow high;

  /**
   * Makes the fields.
   *
   * @param model the model
   * @param part pointer of the part that the value belongs to
   * @param spec what the form says of it
   */
  RangeRow(FormModel model, Supplier<String> part, FieldSpec spec) {
    Supplier<String> place = () -> part.get() + "/" + spec.field();
    Supplier<String> valuePlace = () -> valuePlace(model.document(), place.get());
    this.base =
        new TextRow(
            model,
            spec,
            valuePlace,
            () -> own(model, place.get()),
            (document, text) -> document.with(valuePlace(document, place.get()), text));
    this.low = end(model, place, spec, "low");
    this.high = end(model, place, spec, "high");
    low.label().setText("range, if known");
  }

  private static TextRow end(FormModel model, Supplier<String> place, FieldSpec spec, String end) {
    return new TextRow(
        model,
        spec.end(end),
        () -> place.get() + "/" + end,
        () -> model.problemsAt(place.get() + "/" + end),
        (document, text) -> withEnd(document, place.get(), end, text));
  }

  /** Problems of the whole and of the value; those of the ends stand at the ends. */
  private static List<Problem> own(FormModel model, String place) {
    List<Problem> problems = new ArrayList<>(model.problemsAt(place));
    problems.removeIf(p -> p.field().equals(place + "/low") || p.field().equals(place + "/high"));
    return problems;
  }

  private static boolean isGroup(DesignDocument document, String place) {
    return document.json(place).startsWith("{");
  }

  private static String valuePlace(DesignDocument document, String place) {
    return isGroup(document, place) ? place + "/base" : place;
  }

  private static DesignDocument withEnd(
      DesignDocument document, String place, String end, String text) {
    String value = document.text(valuePlace(document, place));
    DesignDocument changed = document;
    if (!isGroup(document, place)) {
      changed = changed.without(place).with(place + "/base", value);
    }
    changed = changed.with(place + "/" + end, text);
    boolean ends = changed.has(place + "/low") || changed.has(place + "/high");
    return ends ? changed : changed.without(place).with(place, value);
  }

  TextRow base() {
    return base;
  }

  TextRow low() {
    return low;
  }

  TextRow high() {
    return high;
  }
}
