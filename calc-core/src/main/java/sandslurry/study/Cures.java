package sandslurry.study;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sandslurry.assessment.Assessment;
import sandslurry.design.document.DesignDocument;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.Severity;

/**
 * What mends the gravest finding on a line. Each change is typed into the design with its number
 * rounded to the safe side, the whole design is evaluated again, and the change is kept only if the
 * finding is gone and none as grave has come in its place. Where there are changes after which
 * nothing as grave is left at all, those alone are kept.
 *
 * @param finding the finding to be mended
 * @param tried the changes that mend it, of each sort the one that changes least
 * @param why why there is none; empty when there is one
 */
public record Cures(Finding finding, List<TriedCure> tried, String why) {
  private static final Set<Topic> TOPICS =
      EnumSet.of(Topic.PLUGGING, Topic.WEAR, Topic.PRESSURE, Topic.STATES, Topic.PUMP);

  /** Copies the list. */
  public Cures {
    tried = List.copyOf(tried);
  }

  /**
   * Looks for cures.
   *
   * @param document the design as typed
   * @param assessment what came of it
   * @return what mends its gravest finding on the line; nothing when there is no caution or failure
   *     of the line, and beside a plant, where each try costs a second, nothing for a caution
   */
  public static Optional<Cures> of(DesignDocument document, Assessment assessment) {
    if (!assessment.lines().isEmpty()) {
      return ofWorst(document, assessment);
    }
    if (assessment.line().isEmpty()) {
      return Optional.empty();
    }
    Severity least = assessment.plant().isPresent() ? Severity.FAIL : Severity.CAUTION;
    return assessment.findings().stream()
        .filter(finding -> finding.severity().compareTo(least) >= 0)
        .filter(finding -> TOPICS.contains(finding.topic()))
        .findFirst()
        .map(finding -> new CureSearch(document, assessment, finding).run());
  }

  /** Of several lines the worst is mended, as if it were the only one beside the plant. */
  private static Optional<Cures> ofWorst(DesignDocument document, Assessment assessment) {
    String worst = assessment.worstFirst().keySet().iterator().next();
    int place = List.copyOf(assessment.lines().keySet()).indexOf(worst);
    return of(document.ofLine(place), assessment.beside(worst)).map(cures -> cures.at(place));
  }

  /** The same changes of the line at a place in the list. */
  private Cures at(int place) {
    return new Cures(finding, tried.stream().map(cure -> cure.at(place)).toList(), why);
  }
}
