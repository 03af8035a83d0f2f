package sandslurry.report;

import java.util.ArrayList;
import java.util.List;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.Finding;
import sandslurry.assessment.Severity;

/** The report of an Assessment, in the units of its design. */
public final class Report {
  private Report() {}

  /**
   * Writes the report.
   *
   * @param assessment the assessment
   * @return the report as data
   */
  public static List<Block> of(Assessment assessment) {
    List<Block> blocks = new ArrayList<>();
    blocks.addAll(FindingsSection.of(assessment));
    blocks.addAll(MaterialSection.of(assessment));
    blocks.addAll(LineSection.of(assessment));
    blocks.addAll(PumpSection.of(assessment));
    blocks.addAll(ServiceSection.of(assessment));
    blocks.addAll(LaneSection.of(assessment));
    assessment
        .plant()
        .ifPresent(
            plant ->
                blocks.addAll(
                    PlantSection.of(
                        plant,
                        assessment.design().plant().orElseThrow(),
                        assessment.design().units())));
    blocks.addAll(LaneSection.ofPlant(assessment));
    blocks.addAll(BandSection.of(assessment));
    blocks.addAll(SafetySection.of(assessment));
    blocks.addAll(WorkingSection.of(assessment));
    return List.copyOf(blocks);
  }

  /**
   * The part of the report that tells what the line meets in service: its states, each pump, stop
   * and restart, a day.
   *
   * @param assessment the assessment
   * @return that part as data; empty when there is nothing to tell
   */
  public static List<Block> service(Assessment assessment) {
    return ServiceSection.of(assessment);
  }

  /**
   * The verdict in one line.
   *
   * @param assessment the assessment
   * @return the verdict with the gravest finding
   */
  public static String headline(Assessment assessment) {
    Severity verdict = assessment.verdict();
    if (verdict == Severity.PASS) {
      return "PASS: every criterion is met with its margin";
    }
    Finding gravest = assessment.findings().get(0);
    return verdict + ": " + gravest.element() + ": " + gravest.what();
  }
}
