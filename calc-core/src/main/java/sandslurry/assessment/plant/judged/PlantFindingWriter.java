package sandslurry.assessment.plant.judged;

import java.util.List;
import java.util.Locale;
import sandslurry.assessment.plant.Figure;
import sandslurry.assessment.plant.PlantModel;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.design.plant.PlantSpec;
import sandslurry.design.plant.UnitSpec;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Severity;
import sandslurry.plant.Range;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** What everything that judges a part of a plant needs. */
abstract class PlantFindingWriter extends FindingWriter {
  final PlantModel model;
  final PlantSpec spec;
  final PlantResult result;

  PlantFindingWriter(PlantModel model, PlantResult result, UnitSystem units) {
    super(units);
    this.model = model;
    this.spec = model.spec();
    this.result = result;
  }

  abstract List<Finding> all();

  final void add(Severity severity, String element, String what, String why, String cure) {
    add(severity, Topic.PLANT, element, what, why, cure);
  }

  final String show(Kind<?> kind, Range range) {
    return new Figure("", kind, range).shown(units);
  }

  /** The low end of a figure, with no more digits than its range supports. */
  final String least(Figure figure) {
    Range range = figure.range();
    return units.number(figure.kind(), range.low(), range.low(), range.high())
        + " "
        + figure.kind().symbol(units);
  }

  /** What a unit says of itself, told at the unit with when it is so. */
  final void said(String note, String when) {
    String unit = element(note);
    add(
        Severity.CAUTION,
        unit,
        unit.equals("plant") ? note : capital(note.substring(unit.length() + 1).strip()),
        when,
        "");
  }

  /** The unit that a note begins with, or the plant. */
  final String element(String note) {
    return spec.units().stream()
        .map(UnitSpec::name)
        .filter(name -> note.startsWith(name + ":"))
        .findFirst()
        .orElse("plant");
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
