package sandslurry.fact.finding;

import sandslurry.fact.finding.Finding.Topic;
import sandslurry.units.Kind;

/** What judges a part of a design, in the sentences of the message file beside its class. */
public interface FindingWriter {
  /**
   * What takes the findings.
   *
   * @return the findings so far, with the units in which they are read
   */
  Findings findings();

  /**
   * Begins a finding; it counts when it is added.
   *
   * @param key its key in the message file of this subject, which says what it is about
   * @param severity how grave it is
   * @param element the part concerned
   * @return the finding, to be given its values and clauses
   */
  default Found found(String key, Severity severity, String element) {
    return Messages.of(getClass()).found(findings(), key, severity, element);
  }

  /**
   * Begins a pass, or something graver.
   *
   * @param pass key of the pass
   * @param other key of the other
   * @param passes which of them it is
   * @param severity how grave the other is
   * @param element the part concerned
   * @return the finding, to be given its values and clauses
   */
  default Found found(
      String pass, String other, boolean passes, Severity severity, String element) {
    return found(passes ? pass : other, passes ? Severity.PASS : severity, element);
  }

  /**
   * Begins a finding that may be about one thing or another.
   *
   * @param key its key in the message file of this subject
   * @param severity how grave it is
   * @param topic what it is about
   * @param element the part concerned
   * @return the finding, to be given its values and clauses
   */
  default Found found(String key, Severity severity, Topic topic, String element) {
    return new Found(Messages.of(getClass()), findings(), key, severity, topic, element);
  }

  /**
   * A number with its unit, in the units of the design.
   *
   * @param kind what it is
   * @param si its value in SI
   * @return the text
   */
  default String show(Kind<?> kind, double si) {
    return findings().units().show(kind, si);
  }
}
