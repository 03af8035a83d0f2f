package sandslurry.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.SafetyCaution;
import sandslurry.design.document.Problem;
import sandslurry.report.Answer;
import sandslurry.report.block.Block;
import sandslurry.report.block.HtmlBody;
import sandslurry.report.section.Chapters;
import sandslurry.study.Cures;

/** Findings, problems and cautions as pages of HTML. */
final class FindingsPage {
  /** A page of the form has no pictures; its window is a row of numbers that wraps. */
  private static final HtmlBody.Drawings DRAWINGS =
      new HtmlBody.Drawings() {
        @Override
        public String picture(Block.Picture picture) {
          return "";
        }

        @Override
        public String window(Block.Window window) {
          // What sets the ends follows as a paragraph.
          StringBuilder html =
              new StringBuilder("<p><b>Operating window, ")
                  .append(HtmlBody.escape(window.unit()))
                  .append("</b></p><table><tr>");
          for (Block.Window.Place place : window.places()) {
            html.append("<td><b>")
                .append(HtmlBody.escape(place.number()))
                .append("</b><br/>")
                .append(HtmlBody.escape(place.word()))
                .append("</td><td>")
                .append(place.works() ? "&#8211;" : "")
                .append("</td>");
          }
          return html.append("</tr></table>").toString();
        }
      };

  private FindingsPage() {}

  /** The answer as it is printed, with the cures found so far, and below it every finding. */
  static String findings(Assessment assessment, Optional<Cures> cures) {
    List<Block> answer = Answer.of(assessment, cures);
    // Verdict and sentence stand in the banner above.
    List<Block> page = new ArrayList<>(answer.subList(2, answer.size()));
    page.add(new Block.Heading(3, "Findings"));
    page.addAll(Chapters.findings(assessment));
    return new HtmlBody(DRAWINGS).write(page).replace("/>", ">");
  }

  static String problems(List<Problem> problems) {
    StringBuilder html = new StringBuilder("<p><b>What needs attention</b></p><ul>");
    for (Problem problem : problems) {
      String link =
          "<a href=\""
              + HtmlBody.escape(problem.field())
              + "\">"
              + HtmlBody.escape(FieldNames.words(problem.field()))
              + "</a>";
      String value =
          problem.value().isEmpty() ? "" : " = \"" + HtmlBody.escape(problem.value()) + '"';
      html.append("<li>")
          .append(ProblemLine.sentence(link + value, HtmlBody.escape(problem.message())))
          .append("</li>");
    }
    return html.append("</ul>").toString();
  }

  static String safety(Assessment assessment) {
    StringBuilder html = new StringBuilder();
    for (SafetyCaution caution : assessment.cautions()) {
      html.append("<p><b>")
          .append(HtmlBody.escape(caution.title()))
          .append("</b><br>")
          .append(HtmlBody.escape(caution.text()))
          .append("<br><font color='#555555'>(")
          .append(HtmlBody.escape(caution.source()))
          .append(")</font></p>");
    }
    return html.toString();
  }

  static String plain(String text) {
    return "<p>" + HtmlBody.escape(text) + "</p>";
  }
}
