package sandslurry.report.section;

import java.util.List;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.SafetyCaution;
import sandslurry.report.block.Block;
import sandslurry.report.block.Page;

/** The dangers to people. */
record SafetySection(Assessment assessment, Page page) implements SectionWriter {
  void write() {
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
