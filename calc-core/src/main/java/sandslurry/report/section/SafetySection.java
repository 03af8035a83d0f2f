package sandslurry.report.section;

import java.util.List;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.SafetyCaution;
import sandslurry.report.block.Block;

/** The dangers to people. */
final class SafetySection extends SectionWriter {
  private final Assessment assessment;

  SafetySection(Assessment assessment) {
    super(assessment.design().units());
    this.assessment = assessment;
    for (SafetyCaution caution : assessment.cautions()) {
      // The statement of the review closes the report.
      if (caution.title().equals(SafetyCaution.REVIEW)) {
        continue;
      }
      add(
          new Block.Marked(
              "SAFETY",
              List.of(caution.title() + ". " + caution.text() + " (" + caution.source() + ")")));
    }
  }
}
