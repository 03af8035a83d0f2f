package sandslurry.ui;

import java.util.List;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.Severity;
import sandslurry.report.Block;
import sandslurry.report.Report;

/** The states of the line, and what else it meets in service, as a page of HTML. */
final class StatesPage {
  private StatesPage() {}

  static String of(Assessment assessment) {
    List<Block> blocks = Report.service(assessment);
    if (blocks.isEmpty()) {
      return FindingsPage.plain("This design has no transfer line, screw or gravity pipe.");
    }
    StringBuilder html = new StringBuilder();
    for (Block block : blocks) {
      if (block instanceof Block.Heading heading) {
        html.append("<p><b>").append(HtmlView.escape(heading.text())).append("</b></p>");
      } else if (block instanceof Block.Paragraph paragraph) {
        html.append(FindingsPage.plain(paragraph.text()));
      } else if (block instanceof Block.Marked marked) {
        html.append("<p><b>")
            .append(coloured(marked.mark()))
            .append("</b> ")
            .append(HtmlView.escape(String.join(" ", marked.lines())))
            .append("</p>");
      } else {
        table(html, (Block.Table) block);
      }
    }
    return html.toString();
  }

  private static void table(StringBuilder html, Block.Table table) {
    html.append("<table cellpadding='3' cellspacing='1' bgcolor='#dddddd'><tr>");
    table
        .head()
        .forEach(
            h ->
                html.append("<td bgcolor='#f2f2f2'><b>")
                    .append(HtmlView.escape(h))
                    .append("</b></td>"));
    html.append("</tr>");
    for (List<String> row : table.rows()) {
      html.append("<tr>");
      row.forEach(
          cell -> html.append("<td bgcolor='#ffffff'>").append(coloured(cell)).append("</td>"));
      html.append("</tr>");
    }
    html.append("</table>");
  }

  /** A verdict stands in its colour, and as a word. */
  private static String coloured(String cell) {
    for (Severity severity : Severity.values()) {
      if (severity.name().equals(cell)) {
        return "<font color='"
            + HtmlView.colour(Look.of(severity))
            + "'><b>"
            + cell
            + "</b></font>";
      }
    }
    return HtmlView.escape(cell);
  }
}
