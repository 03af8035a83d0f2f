package sandslurry.assessment.plant.judged;

import java.util.List;
import sandslurry.assessment.plant.PlantModel;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.design.plant.PlantSpec;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Found;
import sandslurry.fact.finding.Severity;
import sandslurry.plant.Figure;
import sandslurry.plant.Range;
import sandslurry.plant.network.UnitNote;
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

  final Found found(String key, Severity severity, String element) {
    return found(key, severity, Topic.PLANT, element);
  }

  /** A pass, or something graver. */
  final Found found(String pass, String other, boolean passes, Severity severity, String element) {
    return found(passes ? pass : other, passes ? Severity.PASS : severity, element);
  }

  static Found with(Found found, String name, Kind<?> kind, Range range) {
    return found.with(name, kind, range.base(), range.low(), range.high());
  }

  static Found with(Found found, String name, Figure figure) {
    return with(found, name, figure.kind(), figure.range());
  }

  /** A whole number. */
  static String count(double number) {
    return String.valueOf(Math.round(number));
  }

  /** What a unit says of its feed; its clause says when. */
  final Found noted(UnitNote note) {
    return switch (note.reason()) {
      case SCREW_OVERLOADED ->
          found("screw-overloaded", Severity.CAUTION, note.unit())
              .with("load", Kind.PERCENT, note.value())
              .why("screw-overloaded");
      case TOO_THICK ->
          found("nothing-settles", Severity.CAUTION, note.unit())
              .with("solids", Kind.PERCENT, note.value())
              .why("nothing-settles");
      case ROPES ->
          found("ropes", Severity.CAUTION, note.unit())
              .with("sand", Kind.PERCENT, note.value())
              .with("limit", Kind.PERCENT, note.wanted())
              .why("ropes");
      case CAKE_DRIER ->
          found("cake-drier", Severity.CAUTION, note.unit())
              .with("solids", Kind.PERCENT, note.value())
              .with("wanted", Kind.PERCENT, note.wanted())
              .why("cake-drier");
      case LIQUOR_SHORT ->
          found("liquor-short", Severity.CAUTION, note.unit())
              .with("solids", Kind.PERCENT, note.value())
              .why("liquor-short");
    };
  }
}
