package sandslurry.assessment.plant.judged;

import java.util.List;
import sandslurry.assessment.plant.PlantModel;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.design.plant.PlantSpec;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Found;
import sandslurry.fact.finding.Severity;
import sandslurry.plant.network.UnitNote;
import sandslurry.plant.unit.PlantTopicWriter;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** What everything that judges a part of a plant needs. */
abstract class PlantFindingWriter extends PlantTopicWriter {
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
