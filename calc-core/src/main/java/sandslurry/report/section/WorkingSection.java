package sandslurry.report.section;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import sandslurry.assessment.Assessment;
import sandslurry.fact.step.Step;
import sandslurry.report.block.Block;

/** The steps behind every number. */
final class WorkingSection extends SectionWriter {
  private final Assessment assessment;

  private WorkingSection(Assessment assessment) {
    super(assessment.design().units());
    this.assessment = assessment;
  }

  static List<Block> of(Assessment assessment) {
    WorkingSection section = new WorkingSection(assessment);
    section.working();
    return section.blocks();
  }

  private void working() {
    heading(1, "Working");
    paragraph(
        "Equations and the values put in are in SI, because the equations are; results follow in"
            + " the units of the report. Gravity is 9.80665 m/s2.");
    Map<String, List<Step>> byElement =
        assessment.working().stream()
            .collect(Collectors.groupingBy(Step::element, LinkedHashMap::new, Collectors.toList()));
    byElement.forEach(
        (element, steps) -> {
          heading(2, "Working of " + element);
          for (Step step : steps) {
            List<String> lines = new ArrayList<>();
            lines.add(step.meaning() + ": " + step.equation());
            if (!step.inputs().isEmpty()) {
              lines.add("with " + step.substituted());
            }
            lines.add("gives " + step.symbol() + " = " + step.result(units));
            lines.add("(" + step.source() + ")");
            add(new Block.Marked(step.symbol(), lines));
          }
        });
  }
}
