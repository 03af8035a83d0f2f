package sandslurry.report.section;

import java.util.ArrayList;
import java.util.List;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.design.Design;
import sandslurry.design.document.DesignDocument;
import sandslurry.report.block.Block;
import sandslurry.units.UnitSystem;

/** The chapters of the design report. */
public final class Chapters {
  private Chapters() {}

  /**
   * The inputs.
   *
   * @param document the design as typed
   * @param assessment what came of it
   * @return the inputs as typed, and the defaults that count
   */
  public static List<Block> inputs(DesignDocument document, Assessment assessment) {
    return new InputsSection(document, assessment.design().units()).blocks();
  }

  /**
   * The tables of results.
   *
   * @param assessment what came of a design
   * @return materials, line, pump, service, lane, plant and band
   */
  public static List<Block> tables(Assessment assessment) {
    List<Block> blocks = new ArrayList<>(new MaterialSection(assessment).blocks());
    blocks.addAll(LineSection.of(assessment));
    blocks.addAll(new PumpSection(assessment).blocks());
    blocks.addAll(service(assessment));
    blocks.addAll(LaneSection.of(assessment));
    assessment
        .plant()
        .ifPresent(
            plant ->
                blocks.addAll(
                    new PlantSection(
                            plant,
                            assessment.design().plant().orElseThrow(),
                            assessment.design().units())
                        .blocks()));
    blocks.addAll(LaneSection.ofPlant(assessment));
    blocks.addAll(new BandSection(assessment).blocks());
    return blocks;
  }

  /**
   * The line in service beside its design state.
   *
   * @param assessment what came of a design
   * @return its states, each pump, water hammer, stop and restart, a day; empty when there is none
   */
  public static List<Block> service(Assessment assessment) {
    Design design = assessment.design();
    UnitSystem units = design.units();
    ServiceResult result = assessment.service();
    List<Block> blocks = new ArrayList<>(new StatesSection(units, result).blocks());
    blocks.addAll(new PumpsInStatesSection(design, result).blocks());
    result.pulsation().ifPresent(p -> blocks.addAll(new PulsationSection(units, p).blocks()));
    blocks.addAll(new SurgeSection(units, result.surges()).blocks());
    result
        .stop()
        .ifPresent(
            s -> blocks.addAll(new StopSection(units, s, design.pump().isPresent()).blocks()));
    blocks.addAll(FeedSection.of(units, result));
    return blocks;
  }

  /**
   * The findings.
   *
   * @param assessment what came of a design
   * @return a card for each part with its worst, and a table of what is met
   */
  public static List<Block> findings(Assessment assessment) {
    return new FindingsSection(assessment).blocks();
  }

  /**
   * The safety cautions.
   *
   * @param assessment what came of a design
   * @return the cautions in full
   */
  public static List<Block> safety(Assessment assessment) {
    return new SafetySection(assessment).blocks();
  }

  /**
   * The working.
   *
   * @param assessment what came of a design
   * @return every step with its equation, values and source
   */
  public static List<Block> working(Assessment assessment) {
    return new WorkingSection(assessment).blocks();
  }
}
