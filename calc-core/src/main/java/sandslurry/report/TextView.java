package sandslurry.report;

import java.util.ArrayList;
import java.util.List;

/** Writes the blocks of a report as plain text, wrapped to a width, for a terminal or a printer. */
public final class TextView {
  private static final String GAP = "  ";

  private final int width;

  /**
   * Makes a view.
   *
   * @param width the greatest number of characters in a line of running text
   */
  public TextView(int width) {
    this.width = width;
  }

  /**
   * Writes the blocks.
   *
   * @param blocks the report
   * @return its text; every line ends with a line feed
   */
  public String write(List<Block> blocks) {
    StringBuilder text = new StringBuilder();
    for (Block block : blocks) {
      if (block instanceof Block.Heading heading) {
        heading(text, heading);
      } else if (block instanceof Block.Paragraph paragraph) {
        wrap(paragraph.text(), "", "").forEach(line -> text.append(line).append('\n'));
      } else if (block instanceof Block.Marked marked) {
        marked(text, marked);
      } else if (block instanceof Block.Table table) {
        table(text, table);
      }
      text.append('\n');
    }
    return text.toString();
  }

  private static void heading(StringBuilder text, Block.Heading heading) {
    String rule = (heading.level() == 1 ? "=" : "-").repeat(heading.text().length());
    text.append(heading.text()).append('\n').append(rule).append('\n');
  }

  private void marked(StringBuilder text, Block.Marked marked) {
    String first = String.format("%-9s", marked.mark());
    String indent = " ".repeat(first.length());
    for (int i = 0; i < marked.lines().size(); i++) {
      wrap(marked.lines().get(i), i == 0 ? first : indent, indent)
          .forEach(line -> text.append(line).append('\n'));
    }
  }

  private void table(StringBuilder text, Block.Table table) {
    int columns = table.head().size();
    int[] widths = new int[columns];
    List<List<String>> all = new ArrayList<>();
    all.add(table.head());
    all.addAll(table.rows());
    for (List<String> row : all) {
      for (int i = 0; i < columns; i++) {
        widths[i] = Math.max(widths[i], row.get(i).length());
      }
    }
    int others = 0;
    for (int i = 0; i < columns - 1; i++) {
      others += widths[i] + GAP.length();
    }
    int last = Math.max(20, width - others);
    for (int r = 0; r < all.size(); r++) {
      row(text, all.get(r), widths, last);
      if (r == 0) {
        rule(text, widths, Math.min(last, widths[columns - 1]));
      }
    }
  }

  /** Writes a row; only the last column is wrapped, because prose stands there. */
  private void row(StringBuilder text, List<String> cells, int[] widths, int lastWidth) {
    StringBuilder line = new StringBuilder();
    int columns = cells.size();
    for (int i = 0; i < columns - 1; i++) {
      String cell = cells.get(i);
      String pad = " ".repeat(widths[i] - cell.length());
      line.append(isNumber(cell) ? pad + cell : cell + pad).append(GAP);
    }
    String indent = " ".repeat(line.length());
    String cell = cells.get(columns - 1);
    if (isNumber(cell)) {
      int room = Math.min(widths[columns - 1], lastWidth);
      line.append(" ".repeat(Math.max(0, room - cell.length()))).append(cell);
      text.append(line).append('\n');
      return;
    }
    List<String> wrapped = new TextView(lastWidth).wrap(cell, "", "");
    text.append((line + wrapped.get(0)).stripTrailing()).append('\n');
    wrapped.stream().skip(1).forEach(more -> text.append(indent).append(more).append('\n'));
  }

  private static void rule(StringBuilder text, int[] widths, int last) {
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < widths.length - 1; i++) {
      line.append("-".repeat(widths[i])).append(GAP);
    }
    text.append(line).append("-".repeat(last)).append('\n');
  }

  private static boolean isNumber(String cell) {
    return cell.matches("[+-]?[0-9.]+(e[+-]?[0-9]+)?%?");
  }

  private List<String> wrap(String text, String first, String next) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder(first);
    boolean empty = true;
    for (String word : text.strip().split("\\s+")) {
      if (!empty && line.length() + 1 + word.length() > width) {
        lines.add(line.toString().stripTrailing());
        line = new StringBuilder(next);
        empty = true;
      }
      if (!empty) {
        line.append(' ');
      }
      line.append(word);
      empty = false;
    }
    lines.add(line.toString().stripTrailing());
    return lines;
  }
}
