package sandslurry.report;

import java.util.ArrayList;
import java.util.List;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.Finding;
import sandslurry.design.Design;

/** The verdict and the findings. */
final class FindingsSection extends SectionWriter {
  private final Assessment assessment;
  private final Design design;

  private FindingsSection(Assessment assessment) {
    super(assessment.design().units());
    this.assessment = assessment;
    this.design = assessment.design();
  }

  static List<Block> of(Assessment assessment) {
    FindingsSection section = new FindingsSection(assessment);
    section.summary();
    return section.blocks();
  }

  private void summary() {
    heading(1, design.title());
    add(
        new Block.Marked(
            assessment.verdict().name(),
            List.of(
                Report.headline(assessment).substring(assessment.verdict().name().length() + 2))));
    paragraph(
        "Screening estimate of sand-laden manure hydraulics. A licensed practitioner must review"
            + " the design; local codes come first.");
    heading(1, "Findings");
    for (Finding finding : assessment.findings()) {
      List<String> lines = new ArrayList<>();
      lines.add("[" + finding.topic().word() + "] " + finding.element() + ": " + finding.what());
      if (!finding.why().isEmpty()) {
        lines.add("Why: " + finding.why());
      }
      if (!finding.cure().isEmpty()) {
        lines.add("Cure: " + finding.cure());
      }
      add(new Block.Marked(finding.severity().name(), lines));
    }
  }
}
