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
    return InputsSection.of(document, assessment.design().units());
  }

  /**
   * The tables of results.
   *
   * @param assessment what came of a design
   * @return materials, line, pump, service, lane, plant and band
   */
  public static List<Block> tables(Assessment assessment) {
    List<Block> blocks = new ArrayList<>(MaterialSection.of(assessment));
    blocks.addAll(LineSection.of(assessment));
    blocks.addAll(PumpSection.of(assessment));
    blocks.addAll(service(assessment));
    blocks.addAll(LaneSection.of(assessment));
    assessment
        .plant()
        .ifPresent(
            plant ->
                blocks.addAll(
                    PlantSection.of(
                        plant,
                        assessment.design().plant().orElseThrow(),
                        assessment.design().units())));
    blocks.addAll(LaneSection.ofPlant(assessment));
    blocks.addAll(BandSection.of(assessment));
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
    List<Block> blocks = new ArrayList<>(StatesSection.of(units, result));
    blocks.addAll(PumpsInStatesSection.of(design, result));
    result.pulsation().ifPresent(p -> blocks.addAll(PulsationSection.of(units, p)));
    blocks.addAll(SurgeSection.of(units, result.surges()));
    result
        .stop()
        .ifPresent(s -> blocks.addAll(StopSection.of(units, s, design.pump().isPresent())));
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
    return FindingsSection.of(assessment);
  }

  /**
   * The safety cautions.
   *
   * @param assessment what came of a design
   * @return the cautions in full
   */
  public static List<Block> safety(Assessment assessment) {
    return SafetySection.of(assessment);
  }

  /**
   * The working.
   *
   * @param assessment what came of a design
   * @return every step with its equation, values and source
   */
  public static List<Block> working(Assessment assessment) {
    return WorkingSection.of(assessment);
  }
}
