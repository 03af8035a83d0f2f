package sandslurry.ui;

import java.util.List;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.Finding;
import sandslurry.assessment.SafetyCaution;
import sandslurry.design.Problem;

/** Findings, problems and cautions as pages of HTML. */
final class FindingsPage {
  private FindingsPage() {}

  static String findings(Assessment assessment) {
    StringBuilder html = new StringBuilder();
    for (Finding finding : assessment.findings()) {
      html.append(head(finding))
          .append(line("Why", finding.why()))
          .append(line("Cure", finding.cure()));
      html.append("</td></tr></table>");
    }
    return html.toString();
  }

  private static String head(Finding finding) {
    String colour = HtmlView.colour(Look.of(finding.severity()));
    return "<table width='100%' cellpadding='5' cellspacing='0' style='margin-bottom:6px'><tr>"
        + "<td width='86' valign='top' align='center' bgcolor='"
        + colour
        + "'><font color='#ffffff'><b>"
        + finding.severity().name()
        + "</b></font></td><td bgcolor='#ffffff'><b>"
        + HtmlView.escape(finding.what())
        + "</b><br><font color='#555555'>"
        + HtmlView.escape(place(finding))
        + "</font>";
  }

  private static String place(Finding finding) {
    String topic = finding.topic().word();
    return finding.element().equals(topic) ? topic : finding.element() + ", " + topic;
  }

  private static String line(String word, String text) {
    return text.isEmpty() ? "" : "<br><i>" + word + ":</i> " + HtmlView.escape(text);
  }

  static String problems(List<Problem> problems) {
    StringBuilder html = new StringBuilder("<p><b>What needs attention</b></p><ul>");
    for (Problem problem : problems) {
      String link =
          "<a href='"
              + problem.field()
              + "'>"
              + HtmlView.escape(FieldNames.words(problem.field()))
              + "</a>";
      String value =
          problem.value().isEmpty() ? "" : " = \"" + HtmlView.escape(problem.value()) + '"';
      html.append("<li>")
          .append(ProblemLine.sentence(link + value, HtmlView.escape(problem.message())))
          .append("</li>");
    }
    return html.append("</ul>").toString();
  }

  static String safety(Assessment assessment) {
    StringBuilder html = new StringBuilder();
    for (SafetyCaution caution : assessment.cautions()) {
      html.append("<p><b>")
          .append(HtmlView.escape(caution.title()))
          .append("</b><br>")
          .append(HtmlView.escape(caution.text()))
          .append("<br><font color='#555555'>(")
          .append(HtmlView.escape(caution.source()))
          .append(")</font></p>");
    }
    return html.toString();
  }

  static String plain(String text) {
    return "<p>" + HtmlView.escape(text) + "</p>";
  }
}
