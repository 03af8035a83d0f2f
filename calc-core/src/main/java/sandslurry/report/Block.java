package sandslurry.report;

import java.util.ArrayList;
import java.util.List;

/** A piece of a report, as data: what is said, not how it is painted. */
public sealed interface Block {
  /**
   * A heading.
   *
   * @param level 1 for a chapter, 2 for a part of one
   * @param text the heading
   */
  record Heading(int level, String text) implements Block {}

  /**
   * A paragraph.
   *
   * @param text running text
   */
  record Paragraph(String text) implements Block {}

  /**
   * A sentence that stands out, with a mark before it.
   *
   * @param mark a word such as FAIL
   * @param lines the sentences, the first beside the mark
   */
  record Marked(String mark, List<String> lines) implements Block {
    /** Copies the list. */
    public Marked {
      lines = List.copyOf(lines);
    }
  }

  /**
   * A table.
   *
   * @param head the headings, with units
   * @param rows the cells, as many to a row as there are headings
   */
  record Table(List<String> head, List<List<String>> rows) implements Block {
    /** Copies the lists and checks that the table is square. */
    public Table {
      head = List.copyOf(head);
      List<List<String>> copies = new ArrayList<>();
      for (List<String> row : rows) {
        if (row.size() != head.size()) {
          throw new IllegalArgumentException(
              "a row of " + row.size() + " cells under " + head.size() + " headings");
        }
        copies.add(List.copyOf(row));
      }
      rows = List.copyOf(copies);
    }
  }
}
