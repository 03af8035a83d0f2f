package sandslurry.assessment;

import java.util.ArrayList;
import java.util.List;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.Severity;

/**
 * What the scatter of the carrier means for the verdict: a part of the design that stands worse
 * with a thinner or a thicker carrier of the same description cannot be passed as if its thickness
 * were known.
 */
final class BandFindings {
  private BandFindings() {}

  private static final List<Topic> TOPICS =
      List.of(Topic.PLUGGING, Topic.PRESSURE, Topic.PUMP, Topic.STOP, Topic.LANE);

  static List<Finding> of(List<Finding> base, Assessment.Band band) {
    List<Finding> findings = new ArrayList<>();
    for (Topic topic : TOPICS) {
      Severity here = worst(base, topic);
      Severity thinner = worst(band.thinner().findings(), topic);
      Severity thicker = worst(band.thicker().findings(), topic);
      if (thinner.or(thicker).compareTo(here) > 0) {
        findings.add(
            new Finding(
                Severity.CAUTION.or(here),
                topic,
                "carrier",
                "With another liquor of the same description the verdict on "
                    + topic.word()
                    + " would be worse.",
                band.words()
                    + " It is "
                    + thinner
                    + " with the thinner, "
                    + here
                    + " as described, "
                    + thicker
                    + " with the thicker.",
                "Measure the liquor with a viscometer, or leave margin for the worse case."));
      }
    }
    return findings;
  }

  /**
   * What the choice of a law means for the verdict, where the readings do not make it: the worst of
   * the laws that fit decides, whichever was asked for.
   */
  static List<Finding> byAnotherLaw(String law, List<Finding> base, Assessment other) {
    List<Finding> findings = new ArrayList<>();
    for (Topic topic : TOPICS) {
      Severity here = worst(base, topic);
      Severity there = worst(other.findings(), topic);
      if (there.compareTo(here) > 0) {
        findings.add(
            new Finding(
                there,
                topic,
                "carrier",
                "By another law of flow that fits the readings about as well, the verdict on "
                    + topic.word()
                    + " is worse, and nothing tells which law holds.",
                "It is " + here + " by the law taken and " + there + " by the " + law + " law.",
                "Take more readings, at the shear rates of the line and below 1 1/s, until one law"
                    + " is left."));
      }
    }
    return findings;
  }

  /** The gravest of the findings on a topic. */
  static Severity worst(List<Finding> findings, Topic topic) {
    return findings.stream()
        .filter(f -> f.topic() == topic)
        .map(Finding::severity)
        .reduce(Severity.PASS, Severity::or);
  }
}
