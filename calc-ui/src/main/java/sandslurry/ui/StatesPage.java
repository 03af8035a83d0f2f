package sandslurry.ui;

import java.util.List;
import java.util.regex.Pattern;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.station.StateResult;
import sandslurry.fact.finding.Severity;
import sandslurry.report.DesignReport;
import sandslurry.report.block.Block;

/** The states of the line, and what else it meets in service, as a page of HTML. */
final class StatesPage {
  private static final Pattern NUMBER = Pattern.compile("-|-?[0-9.]+( to [0-9.]+)?");

  private StatesPage() {}

  static String of(Assessment assessment) {
    List<Block> blocks = DesignReport.service(assessment);
    if (blocks.isEmpty()) {
      return FindingsPage.plain("This design has no transfer line, screw or gravity pipe.");
    }
    StringBuilder html = new StringBuilder(governing(assessment));
    String governs = assessment.service().governing().map(StateResult::name).orElse("");
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
        table(html, (Block.Table) block, governs);
      }
    }
    return html.toString();
  }

  /** The state that decides, before everything else; else how to ask for more states. */
  private static String governing(Assessment assessment) {
    boolean asked = assessment.service().states().stream().anyMatch(StateResult::asked);
    if (!asked) {
      return assessment.line().isEmpty()
          ? ""
          : FindingsPage.plain(
              "The line is judged at its flows only. For worn pumps, cold and warm, thin and thick,"
                  + " low and high pit and one pump out, tick \"Judge the line in more states\".");
    }
    return assessment
        .service()
        .governing()
        .map(
            state ->
                "<table width='100%' cellpadding='6' cellspacing='0'><tr><td bgcolor='#ffffff'>"
                    + "Governing state: <b>"
                    + HtmlView.escape(state.name())
                    + "</b> "
                    + coloured(state.severity().name())
                    + (state.reasons().isEmpty()
                        ? ""
                        : "<br>" + HtmlView.escape(String.join("; ", state.reasons()) + "."))
                    + "</td></tr></table>")
        .orElse("");
  }

  private static void table(StringBuilder html, Block.Table table, String governs) {
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
      // The governing state is told by its word too where states have verdicts.
      boolean governing = table.head().contains("verdict") && row.get(0).equals(governs);
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
