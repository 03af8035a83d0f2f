package sandslurry.assessment;

import java.util.ArrayList;
import java.util.List;
import sandslurry.assessment.Finding.Topic;
import sandslurry.design.Design;
import sandslurry.units.UnitSystem;

/** What is to be said of the inputs: ranges of the data behind them, and their uncertainty. */
final class DataFindings {
  private DataFindings() {}

  static List<Finding> of(Design design, Materials materials) {
    UnitSystem units = design.units();
    List<Finding> findings = new ArrayList<>();
    materials
        .carrier()
        .excesses()
        .forEach(
            excess ->
                findings.add(
                    new Finding(
                        Severity.CAUTION,
                        Topic.DATA,
                        "carrier",
                        "The liquid lies outside the measurements behind its properties.",
                        excess.describe(units) + ".",
                        "Measure its viscosity.")));
    materials
        .carrier()
        .notes()
        .forEach(
            note -> findings.add(new Finding(Severity.NOTE, Topic.DATA, "carrier", note, "", "")));
    materials
        .gradation()
        .notes()
        .forEach(
            note -> findings.add(new Finding(Severity.NOTE, Topic.DATA, "sand", note, "", "")));
    return findings;
  }
}
