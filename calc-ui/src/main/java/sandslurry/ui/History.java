package sandslurry.ui;

import java.util.ArrayList;
import java.util.List;
import sandslurry.design.document.DesignDocument;

/** Undo as a list of documents. Successive edits of one field are one step. */
final class History {
  private static final int DEEPEST = 500;

  private final List<DesignDocument> documents = new ArrayList<>();
  private int now;
  private String edited = "";

  History(DesignDocument first) {
    documents.add(first);
  }

  DesignDocument current() {
    return documents.get(now);
  }

  /**
   * Adds a step.
   *
   * @param document the new document
   * @param field what is being edited; the step replaces the one before when that was an edit of
   *     the same field. Empty for a step of its own
   */
  void add(DesignDocument document, String field) {
    boolean sameEdit = !field.isEmpty() && field.equals(edited) && now == documents.size() - 1;
    documents.subList(now + 1, documents.size()).clear();
    if (sameEdit && now > 0) {
      documents.set(now, document);
    } else {
      documents.add(document);
      now++;
    }
    if (documents.size() > DEEPEST) {
      documents.remove(0);
      now--;
    }
    edited = field;
  }

  /** The next edit is a step of its own. */
  void endEdit() {
    edited = "";
  }

  boolean canUndo() {
    return now > 0;
  }

  boolean canRedo() {
    return now < documents.size() - 1;
  }

  void undo() {
    now--;
    endEdit();
  }

  void redo() {
    now++;
    endEdit();
  }
}
