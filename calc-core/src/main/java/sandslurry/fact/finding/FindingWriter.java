package sandslurry.fact.finding;

import java.util.ArrayList;
import java.util.List;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** What everything that judges a part of a design needs: its findings, and numbers in its units. */
public abstract class FindingWriter {
  /** The units in which findings are written. */
  protected final UnitSystem units;

  /** What was found so far. */
  protected final List<Finding> findings = new ArrayList<>();

  /**
   * Begins with no findings.
   *
   * @param units the units in which findings are read
   */
  protected FindingWriter(UnitSystem units) {
    this.units = units;
  }

  /**
   * Begins a finding; it counts when it is added.
   *
   * @param key its key in the message file of this subject, which says what it is about
   * @param severity how grave it is
   * @param element the part concerned
   * @return the finding, to be given its values and clauses
   */
  public final Found found(String key, Severity severity, String element) {
    Messages messages = Messages.of(getClass());
    return found(key, severity, messages.topic(key), element);
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
  public final Found found(
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
  public final Found found(String key, Severity severity, Topic topic, String element) {
    return new Found(Messages.of(getClass()), units, key, severity, topic, element, findings::add);
  }

  /**
   * A number with its unit, in the units of the design.
   *
   * @param kind what it is
   * @param si its value in SI
   * @return the text
   */
  protected final String show(Kind<?> kind, double si) {
    return units.show(kind, si);
  }
}
