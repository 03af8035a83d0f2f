package sandslurry.assessment;

import java.util.List;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Severity;
import sandslurry.units.UnitSystem;

/**
 * What the scatter of the carrier means for the verdict: a part of the design that is worse with a
 * thinner or a thicker carrier of the same description cannot be passed as if its thickness were
 * known.
 */
final class BandFindings extends FindingWriter {
  private static final List<Topic> TOPICS =
      List.of(Topic.PLUGGING, Topic.PRESSURE, Topic.PUMP, Topic.STOP, Topic.LANE);

  private static final String ELEMENT = "carrier";

  private final List<Finding> base;

  /**
   * The findings with the carrier as described.
   *
   * @param units the units in which findings are read
   * @param base the findings
   */
  BandFindings(UnitSystem units, List<Finding> base) {
    super(units);
    this.base = base;
  }

  /** Findings on what a thinner or a thicker carrier makes worse. */
  List<Finding> of(Assessment.Band band) {
    for (Topic topic : TOPICS) {
      Severity here = worst(base, topic);
      Severity thinner = worst(band.thinner().findings(), topic);
      Severity thicker = worst(band.thicker().findings(), topic);
      if (thinner.or(thicker).compareTo(here) > 0) {
        found("other-liquor", Severity.CAUTION.or(here), topic, ELEMENT)
            .with("topic", topic.word())
            .with("scatter", units -> band.words())
            .with("thinner", thinner.toString())
            .with("here", here.toString())
            .with("thicker", thicker.toString())
            .why("other-liquor")
            .cure("viscometer")
            .add();
      }
    }
    return findings;
  }

  /**
   * What the choice of a law means for the verdict, where the readings do not make it: the worst of
   * the laws that fit decides, whichever the design names.
   */
  List<Finding> byAnotherLaw(String law, Assessment other) {
    for (Topic topic : TOPICS) {
      Severity here = worst(base, topic);
      Severity there = worst(other.findings(), topic);
      if (there.compareTo(here) > 0) {
        found("other-law", there, topic, ELEMENT)
            .with("topic", topic.word())
            .with("here", here.toString())
            .with("there", there.toString())
            .with("law", law)
            .why("other-law")
            .cure("more-readings")
            .add();
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
