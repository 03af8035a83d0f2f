package sandslurry.assessment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Findings;
import sandslurry.fact.finding.Severity;
import sandslurry.fact.finding.Value;

/**
 * What the scatter of the carrier means for the verdict: a part of the design that is worse with a
 * thinner or a thicker carrier of the same description cannot be passed as if its thickness were
 * known.
 *
 * @param base the findings
 * @param findings takes what is found
 */
record BandFindings(List<Finding> base, Findings findings) implements FindingWriter {
  private static final List<Topic> TOPICS =
      List.of(Topic.PLUGGING, Topic.PRESSURE, Topic.PUMP, Topic.STOP, Topic.LANE);

  private static final String ELEMENT = "carrier";

  /** The topics that a finding names, the first of which is its own. */
  private static final String NAMED = "topics";

  /** The verdicts on a topic by three liquors. */
  private record Verdicts(Severity thinner, Severity here, Severity thicker) {
    String worseEnd() {
      return thinner == thicker ? "thinner or thicker" : isThickerWorse() ? "thicker" : "thinner";
    }

    private boolean isThickerWorse() {
      return thicker.compareTo(thinner) > 0;
    }

    Assessment worse(Assessment.Band band) {
      return isThickerWorse() ? band.thicker() : band.thinner();
    }
  }

  private static String gravest(Assessment there, Topic topic) {
    return there.findings().stream()
        .filter(f -> f.topic() == topic)
        .max(Comparator.comparing(Finding::severity))
        .map(f -> f.place() + ": " + f.what())
        .orElse("");
  }

  private static String words(List<Topic> topics) {
    List<String> words = topics.stream().map(Topic::word).toList();
    String last = words.get(words.size() - 1);
    return words.size() == 1
        ? last
        : String.join(", ", words.subList(0, words.size() - 1))
            + (last.contains(" and ") ? ", " : " and ")
            + last;
  }

  /** Findings on what a thinner or a thicker carrier makes worse. */
  void of(Assessment.Band band) {
    Map<Verdicts, List<Topic>> worse = new LinkedHashMap<>();
    for (Topic topic : TOPICS) {
      Verdicts verdicts =
          new Verdicts(
              worst(band.thinner().findings(), topic),
              worst(base, topic),
              worst(band.thicker().findings(), topic));
      if (verdicts.thinner().or(verdicts.thicker()).compareTo(verdicts.here()) > 0) {
        worse.computeIfAbsent(verdicts, v -> new ArrayList<>()).add(topic);
      }
    }
    worse.forEach(
        (verdicts, topics) ->
            found("other-liquor", Severity.CAUTION.or(verdicts.here()), topics.get(0), ELEMENT)
                .with(NAMED, words(topics))
                .with("end", verdicts.worseEnd())
                .with("there", verdicts.thinner().or(verdicts.thicker()).toString())
                .with("finds", units -> gravest(verdicts.worse(band), topics.get(0)))
                .with("scatter", units -> band.words())
                .with("thinner", verdicts.thinner().toString())
                .with("here", verdicts.here().toString())
                .with("thicker", verdicts.thicker().toString())
                .why("other-liquor-finds")
                .why("other-liquor")
                .cure("viscometer")
                .add());
  }

  /**
   * What the choice of a law means for the verdict, where the readings do not make it: the worst of
   * the laws that fit decides, whichever the design names.
   */
  void byAnotherLaw(String law, Assessment other) {
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
  }

  /** Whether a finding on what another liquor does names a topic beside its own. */
  private static boolean names(Finding finding, Topic topic) {
    return finding.values().get(NAMED) instanceof Value.Name named
        && named.text().contains(topic.word());
  }

  /** The gravest of the findings on a topic. */
  static Severity worst(List<Finding> findings, Topic topic) {
    return findings.stream()
        .filter(f -> f.topic() == topic || names(f, topic))
        .map(Finding::severity)
        .reduce(Severity.PASS, Severity::or);
  }
}
