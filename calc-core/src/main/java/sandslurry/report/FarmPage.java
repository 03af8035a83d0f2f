package sandslurry.report;

import java.util.ArrayList;
import java.util.List;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.stop.StopResult;
import sandslurry.assessment.stop.StopResult.FlushNeed;
import sandslurry.fact.finding.Value;
import sandslurry.report.block.Block;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** What a design means on the farm, without a term that a farmer would have to look up. */
final class FarmPage {
  private final Assessment assessment;
  private final UnitSystem units;

  private FarmPage(Assessment assessment) {
    this.assessment = assessment;
    this.units = assessment.design().units();
  }

  static List<Block> of(Assessment assessment) {
    FarmPage page = new FarmPage(assessment);
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Paragraph(page.verdict()));
    List<String> rules = page.rules();
    blocks.add(Block.Items.numbered(rules));
    return blocks;
  }

  private String verdict() {
    return switch (assessment.verdict()) {
      case FAIL ->
          "As designed this does not work. Do not build it like this: change what the first page"
              + " names, then have it judged again.";
      case CAUTION ->
          "It may work, but something is too close or not known well enough. Settle the points"
              + " of the first page before you build.";
      default ->
          "By this calculation it works, as long as it is built and run as written here: the same"
              + " pipe, the same sand, the same flow rate.";
    };
  }

  private List<String> rules() {
    List<String> shown = new ArrayList<>();
    ofLine(assessment, "the line", shown);
    assessment.lines().forEach((name, line) -> ofLine(line, name, shown));
    shown.add(
        "Never go down into a pit, tank or channel, and never reach into a pump, auger or plugged"
            + " pipe. Manure gas kills within seconds, and a plugged pipe can hold pressure.");
    shown.add(
        "Watch the sand: a coarser sand, less water or a worn pump changes the answer. Have it"
            + " judged again.");
    return shown;
  }

  private void ofLine(Assessment line, String name, List<String> rules) {
    List<String> rule = new ArrayList<>();
    line.line().stream()
        .flatMapToDouble(result -> result.window().carriesFromM3ps().stream())
        .filter(flow -> flow > 0)
        .forEach(
            flow ->
                rule.add(
                    "Keep "
                        + name
                        + " above "
                        + units.showAtLeast(Kind.FLOW, flow)
                        + " whenever it carries sand: below that the sand settles and plugs it."));
    line.service()
        .stop()
        .filter(stop -> stop.filling().sandKg() > 0)
        .flatMap(StopResult::flush)
        .ifPresent(flush -> rule.add(flush(flush, rule.isEmpty() ? name : "it")));
    if (!rule.isEmpty()) {
      rules.add(String.join(" ", rule));
    }
  }

  private String flush(FlushNeed flush, String name) {
    return "Before every stop run clean water through "
        + name
        + ": "
        + units.showAtLeast(Kind.FLOW, flush.flowM3ps())
        + " for at least "
        + new Value.Number(Kind.TIME, flush.timeS()).show("longest", units)
        + ".";
  }
}
