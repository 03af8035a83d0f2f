package sandslurry.assessment.plant.judged;

import sandslurry.fact.finding.Found;
import sandslurry.fact.finding.Severity;
import sandslurry.plant.network.UnitNote;
import sandslurry.plant.unit.PlantTopicWriter;
import sandslurry.units.Kind;

/** What everything that judges a part of a plant needs. */
interface PlantFindingWriter extends PlantTopicWriter {
  void all();

  /**
   * What a unit says of its feed; its clause says when.
   *
   * @param note what it says
   * @param lastsS how long the feed lasts [s]
   */
  default Found noted(UnitNote note, double lastsS) {
    return switch (note.reason()) {
      case SCREW_OVERLOADED ->
          found(
                  "screw-overloaded",
                  note.wanted() < lastsS ? Severity.FAIL : Severity.CAUTION,
                  note.unit())
              .with("load", Kind.PERCENT, note.value())
              .with("lifts", Kind.PERCENT, 1 / note.value())
              .with("fills", Kind.HOURS, note.wanted())
              .why("screw-overloaded")
              .cure("larger-screw");
      case TOO_THICK ->
          found("nothing-settles", Severity.CAUTION, note.unit())
              .with("solids", Kind.PERCENT, note.value())
              .why("nothing-settles");
      case ROPES ->
          found("ropes", Severity.CAUTION, note.unit())
              .with("sand", Kind.PERCENT, note.value())
              .with("limit", Kind.PERCENT, note.wanted())
              .why("ropes");
      case NO_VORTEX ->
          found("no-vortex", Severity.CAUTION, note.unit())
              .with("head", Kind.HEAD, note.value())
              .with("height", Kind.HEAD, note.wanted())
              .why("no-vortex")
              .cure("no-vortex");
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
