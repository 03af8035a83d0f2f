package sandslurry.report.block;

/** Writes every kind of block: one method a kind, so that a new kind is forgotten by nobody. */
public interface BlockWriter {
  /**
   * Writes a heading.
   *
   * @param heading the heading
   */
  void heading(Block.Heading heading);

  /**
   * Writes a paragraph.
   *
   * @param paragraph the paragraph
   */
  void paragraph(Block.Paragraph paragraph);

  /**
   * Writes the verdict.
   *
   * @param verdict the verdict
   */
  void verdict(Block.Verdict verdict);

  /**
   * Writes a card.
   *
   * @param card the card
   */
  void marked(Block.Marked card);

  /**
   * Writes a step of the working.
   *
   * @param step the step
   */
  void computed(Block.Computed step);

  /**
   * Writes a list.
   *
   * @param list the list
   */
  void items(Block.Items list);

  /**
   * Writes a table.
   *
   * @param table the table
   */
  void table(Block.Table table);

  /**
   * Writes an operating window.
   *
   * @param window the window
   */
  void window(Block.Window window);

  /**
   * Writes a picture, or nothing where none can be drawn.
   *
   * @param picture the picture
   */
  void picture(Block.Picture picture);

  /**
   * Writes room to be filled in by hand.
   *
   * @param room the room
   */
  void room(Block.Room room);
}
