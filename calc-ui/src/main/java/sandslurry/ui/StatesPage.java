package sandslurry.ui;

import java.util.List;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.station.StateResult;
import sandslurry.report.DesignReport;
import sandslurry.report.block.Block;
import sandslurry.report.block.HtmlBody;

/** The states of the line, and what else it meets in service, as a page of HTML. */
final class StatesPage {
  private StatesPage() {}

  static String of(Assessment assessment) {
    List<Block> blocks = DesignReport.service(assessment);
    if (blocks.isEmpty()) {
      return FindingsPage.plain("This design has no transfer line, screw or gravity pipe.");
    }
    StringBuilder html = new StringBuilder(governing(assessment));
    String governs = assessment.service().governing().map(StateResult::name).orElse("");
    html.append(HtmlBlocks.of(blocks, governs));
    return html.toString();
  }

  /** The state that decides, before everything else; else how to ask for more states. */
  private static String governing(Assessment assessment) {
    boolean named = assessment.service().states().stream().anyMatch(StateResult::named);
    if (!named) {
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
                    + HtmlBody.escape(state.name())
                    + "</b> "
                    + HtmlBlocks.coloured(state.severity().name())
                    + (state.reasons().isEmpty()
                        ? ""
                        : "<br>" + HtmlBody.escape(String.join("; ", state.reasons()) + "."))
                    + "</td></tr></table>")
        .orElse("");
  }
}
