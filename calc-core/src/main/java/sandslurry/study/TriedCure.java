package sandslurry.study;

import java.util.List;
import sandslurry.design.document.DesignDocument;
import sandslurry.fact.finding.Severity;

/**
 * A change of a design that was typed into it, evaluated and found to mend it.
 *
 * @param text what to do, with the values as typed
 * @param edits the fields changed
 * @param after verdict of the changed design
 */
public record TriedCure(String text, List<Edit> edits, Severity after) {
  /** Copies the list. */
  public TriedCure {
    edits = List.copyOf(edits);
  }

  /**
   * A field as it is typed.
   *
   * @param pointer JSON Pointer of the field
   * @param text what is typed
   */
  public record Edit(String pointer, String text) {}

  /** The same change of the line at a place in the list; it was tried on that line alone. */
  TriedCure at(int place) {
    List<Edit> moved =
        edits.stream()
            .map(
                edit ->
                    new Edit(
                        edit.pointer().replaceFirst("^/lines/0/", "/lines/" + place + "/"),
                        edit.text()))
            .toList();
    return new TriedCure(text, moved, after);
  }

  /**
   * The design with the cure typed into it.
   *
   * @param document the design
   * @return the changed design
   */
  DesignDocument typedInto(DesignDocument document) {
    DesignDocument changed = document;
    for (Edit edit : edits) {
      changed = changed.with(edit.pointer(), edit.text());
    }
    return changed;
  }
}
