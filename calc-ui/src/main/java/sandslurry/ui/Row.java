package sandslurry.ui;

/** A part of the form that shows a part of the document. */
interface Row {
  /** Takes over what the document and its reading say now. */
  void refresh();

  /** Finishes an edit that the document does not know of yet. */
  default void commit() {}

  /** Gives the focus to the field of a problem, if it is here. */
  default boolean focus(String pointer) {
    return false;
  }
}
