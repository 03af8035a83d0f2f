package sandslurry.assessment;

import java.util.ArrayList;
import java.util.List;
import sandslurry.assessment.Finding.Topic;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** What everything that judges a part of a design needs: its findings, and numbers in its units. */
abstract class FindingWriter {
  /** The units in which findings are written. */
  final UnitSystem units;

  /** What was found so far. */
  final List<Finding> findings = new ArrayList<>();

  FindingWriter(UnitSystem units) {
    this.units = units;
  }

  final void add(
      Severity severity, Topic topic, String element, String what, String why, String cure) {
    findings.add(new Finding(severity, topic, element, what, why, cure));
  }

  final String show(Kind<?> kind, double si) {
    return units.show(kind, si);
  }
}
