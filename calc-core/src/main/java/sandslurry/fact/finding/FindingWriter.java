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
   * @param key its key in the message file of this subject
   * @param severity how grave it is
   * @param topic what it is about
   * @param element the part concerned
   * @return the finding, to be given its values and clauses
   */
  protected final Found found(String key, Severity severity, Topic topic, String element) {
    return new Found(Messages.of(getClass()), units, key, severity, topic, element, findings::add);
  }

  /**
   * Adds a finding whose sentences do not yet stand in a message file.
   *
   * @param severity how grave it is
   * @param topic what it is about
   * @param element the part concerned
   * @param what one sentence: what was found
   * @param why the numbers behind it
   * @param cure what would mend it; empty when there is nothing to mend
   */
  protected final void add(
      Severity severity, Topic topic, String element, String what, String why, String cure) {
    findings.add(new Finding(severity, topic, element, what, why, cure));
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

  /**
   * A time in the unit that suits its size.
   *
   * @param seconds the time [s]
   * @return the time with its unit
   */
  protected final String duration(double seconds) {
    return Value.Number.duration(units, seconds);
  }
}
