package sandslurry.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import sandslurry.assessment.Evaluation;
import sandslurry.design.Documents;
import sandslurry.design.document.DesignDocument;
import sandslurry.report.block.TextView;

/** A line of many runs is worked once in full, for the run that is closest to settling. */
class WorkingOfRunsTest {
  private static final String RUN = "/lines/0/route/runs/";

  private static String working(DesignDocument document) {
    return new TextView(100)
        .write(DesignReport.working(Evaluation.assess(document.read().design().orElseThrow())));
  }

  /** A line as runs that differ in nothing or in their bore. */
  private static DesignDocument runs(int count, String last) {
    DesignDocument document = Documents.line();
    for (int i = 1; i < count; i++) {
      document =
          document
              .with(RUN + i + "/name", "run " + i)
              .with(RUN + i + "/pipe/system", "ASTM D1785")
              .with(RUN + i + "/pipe/size", i == count - 1 ? last : "4 in")
              .with(RUN + i + "/pipe/class", "Sch 40")
              .with(RUN + i + "/roughness", "0.1 mm")
              .with(RUN + i + "/length", "8 ft")
              .with(RUN + i + "/rise", "0.16 ft");
    }
    return document;
  }

  @Test
  void runsAlikeAreWorkedOnce() {
    assertThat(working(runs(9, "4 in")))
        .containsOnlyOnce("deposition velocity: minimum flow rate")
        .contains("The same numbers hold for")
        .hasSizeLessThan(2 * working(runs(1, "4 in")).length());
  }

  @Test
  void theRunClosestToSettlingIsTheOneInFull() {
    assertThat(working(runs(4, "6 in")))
        .contains("Working of run 3: deposition velocity")
        .doesNotContain("Working of Buried line: deposition velocity");
  }
}
