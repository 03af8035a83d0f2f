package sandslurry.ui;

import java.awt.GraphicsEnvironment;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import sandslurry.fact.finding.Severity;
import sandslurry.report.block.Block;
import sandslurry.report.block.HtmlBody;

/** Pieces of a report as HTML for a page of the form. */
final class HtmlBlocks {
  /** From more columns on a table is wide. */
  private static final int WIDE = 8;

  /** The fewest columns of a table that is parted, and the pixels of a screen that one takes. */
  private static final int FEWEST = 5;

  private static final int COLUMN = 180;

  private static final String VERDICT = "verdict";

  private static final Pattern NUMBER = Pattern.compile("-|-?[0-9.]+( to [0-9.]+)?( [^ ]+)?");

  private HtmlBlocks() {}

  /**
   * Headings, paragraphs, marked paragraphs, lists and tables.
   *
   * @param blocks the pieces
   * @param governs first cell of the row of a table of verdicts that governs; empty for none
   * @return HTML
   */
  static String of(List<Block> blocks, String governs) {
    StringBuilder html = new StringBuilder();
    for (Block block : blocks) {
      if (block instanceof Block.Heading heading) {
        html.append("<p><b>").append(HtmlBody.escape(heading.text())).append("</b></p>");
      } else if (block instanceof Block.Paragraph paragraph) {
        html.append(FindingsPage.plain(paragraph.text()));
      } else if (block instanceof Block.Marked marked) {
        html.append("<p><b>")
            .append(coloured(marked.mark()))
            .append("</b> ")
            .append(HtmlBody.escape(String.join(" ", marked.lines())))
            .append("</p>");
      } else if (block instanceof Block.Items items) {
        html.append("<ul>");
        items
            .items()
            .forEach(text -> html.append("<li>").append(HtmlBody.escape(text)).append("</li>"));
        html.append("</ul>");
      } else {
        narrowed(verdictFirst((Block.Table) block), mostColumns())
            .forEach(table -> table(html, table, governs));
      }
    }
    return html.toString();
  }

  /** Columns for which the results have room on this screen. */
  private static int mostColumns() {
    return GraphicsEnvironment.isHeadless()
        ? Integer.MAX_VALUE
        : Math.max(
            FEWEST,
            GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds().width
                / COLUMN);
  }

  /** A table that is too wide in parts below each other, each with what its rows are called. */
  static List<Block.Table> narrowed(Block.Table table, int most) {
    int columns = table.head().size();
    if (columns <= most) {
      return List.of(table);
    }
    int names = columns > 1 && table.head().get(1).equals("pump") ? 2 : 1;
    int parts = (int) Math.ceil((columns - names) / (double) (most - names));
    int each = (int) Math.ceil((columns - names) / (double) parts);
    List<Block.Table> narrow = new ArrayList<>();
    for (int from = names; from < columns; from += each) {
      int start = from;
      int end = Math.min(columns, from + each);
      narrow.add(
          new Block.Table(
              part(table.head(), names, start, end),
              table.rows().stream().map(row -> part(row, names, start, end)).toList()));
    }
    return narrow;
  }

  private static List<String> part(List<String> row, int names, int from, int end) {
    List<String> part = new ArrayList<>(row.subList(0, names));
    part.addAll(row.subList(from, end));
    return part;
  }

  /** A wide table may have to be scrolled sideways: its verdicts stand where they are seen. */
  private static Block.Table verdictFirst(Block.Table table) {
    int last = table.head().size() - 1;
    return last < WIDE || !table.head().get(last).equals(VERDICT)
        ? table
        : new Block.Table(
            second(table.head()), table.rows().stream().map(HtmlBlocks::second).toList());
  }

  private static List<String> second(List<String> row) {
    List<String> moved = new ArrayList<>(row);
    moved.add(1, moved.remove(moved.size() - 1));
    return moved;
  }

  private static void table(StringBuilder html, Block.Table table, String governs) {
    html.append("<table cellpadding='")
        .append(table.head().size() > WIDE ? 2 : 3)
        .append("' cellspacing='1' bgcolor='#dddddd'><tr>");
    table
        .head()
        .forEach(
            h ->
                html.append("<td bgcolor='#f2f2f2'><b>")
                    .append(HtmlBody.escape(h))
                    .append("</b></td>"));
    html.append("</tr>");
    for (List<String> row : table.rows()) {
      html.append("<tr>");
      // The governing state is told by its word too where states have verdicts.
      boolean governing = table.head().contains(VERDICT) && row.get(0).equals(governs);
      for (String cell : row) {
        boolean number = NUMBER.matcher(cell).matches();
        html.append(number ? "<td align='right'" : "<td")
            .append(" bgcolor='#ffffff'>")
            .append(number ? cell.replace(" ", "&nbsp;") : coloured(cell))
            .append(governing && cell.equals(governs) ? " <b>(governs)</b>" : "")
            .append("</td>");
      }
      html.append("</tr>");
    }
    html.append("</table>");
  }

  /** A verdict stands in its colour, and as a word. */
  static String coloured(String cell) {
    for (Severity severity : Severity.values()) {
      if (severity.name().equals(cell)) {
        return "<font color='"
            + HtmlView.colour(Look.of(severity))
            + "'><b>"
            + cell
            + "</b></font>";
      }
    }
    return HtmlBody.escape(cell);
  }
}
