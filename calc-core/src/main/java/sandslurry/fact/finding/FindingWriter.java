package sandslurry.fact.finding;

import java.util.ArrayList;
import java.util.List;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** What everything that judges a part of a design needs: its findings, and numbers in its units. */
public abstract class FindingWriter {
  /** From here on a time is told in days. */
  private static final double LONG_S = 172_800;

  /** No line rests longer. */
  private static final double YEARS_S = 365 * LONG_S / 2;

  /** A time up to this is told in seconds. */
  private static final double SHORT_S = 120;

  /** The units in which findings are written. */
  protected final UnitSystem units;

  /** What was found so far. */
  protected final List<Finding> findings = new ArrayList<>();

  protected FindingWriter(UnitSystem units) {
    this.units = units;
  }

  protected final void add(
      Severity severity, Topic topic, String element, String what, String why, String cure) {
    findings.add(new Finding(severity, topic, element, what, why, cure));
  }

  protected final String show(Kind<?> kind, double si) {
    return units.show(kind, si);
  }

  /** A time in the unit that its size asks for. */
  protected final String duration(double seconds) {
    if (seconds < SHORT_S) {
      return show(Kind.TIME, seconds);
    }
    return seconds < LONG_S
        ? show(Kind.MINUTES, seconds)
        : seconds < YEARS_S ? show(Kind.DAYS, seconds) : "more than a year";
  }
}
