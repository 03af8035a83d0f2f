package sandslurry.report.section;

import java.util.List;
import java.util.function.Consumer;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.design.Design;
import sandslurry.design.document.DesignDocument;
import sandslurry.report.block.Block;
import sandslurry.report.block.Page;

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
    return written(assessment, page -> InputsSection.of(document, page).write());
  }

  /**
   * The tables of results.
   *
   * @param assessment what came of a design
   * @return materials, line, pump, service, lane, plant and band
   */
  public static List<Block> tables(Assessment assessment) {
    return tables(assessment, true);
  }

  /**
   * The tables of results of one of several lines, without the correlations that decide nothing:
   * its drawing has them.
   *
   * @param assessment what came of the line
   * @return materials, line, pump, service and band
   */
  public static List<Block> ofOneOfSeveral(Assessment assessment) {
    return tables(assessment, false);
  }

  private static List<Block> tables(Assessment assessment, boolean all) {
    Page page = new Page(assessment.design().units());
    new MaterialSection(assessment, page).write();
    new LineSection(assessment, all, page).write();
    new PumpSection(assessment, page).write();
    service(assessment, page);
    LaneSection lanes = new LaneSection(assessment, page);
    lanes.write();
    plant(assessment, page);
    lanes.ofPlant();
    new BandSection(assessment, page).write();
    return page.blocks();
  }

  /**
   * The plant.
   *
   * @param assessment what came of a design
   * @return loads, streams, units, days and accounts; empty when there is none
   */
  public static List<Block> plant(Assessment assessment) {
    return written(assessment, page -> plant(assessment, page));
  }

  private static void plant(Assessment assessment, Page page) {
    assessment
        .plant()
        .ifPresent(
            p -> new PlantSection(p, assessment.design().plant().orElseThrow(), page).write());
  }

  /**
   * The weeks with one unit of the plant out that cost most.
   *
   * @param assessment what came of a design
   * @return a paragraph; empty when nothing can be out
   */
  public static List<Block> oneOut(Assessment assessment) {
    return written(
        assessment,
        page ->
            assessment.plant().ifPresent(plant -> PlantDaySection.oneOut(plant.outages(), page)));
  }

  /**
   * The line in service beside its design state.
   *
   * @param assessment what came of a design
   * @return its states, each pump, water hammer, stop and restart, a day; empty when there is none
   */
  public static List<Block> service(Assessment assessment) {
    return written(assessment, page -> service(assessment, page));
  }

  private static void service(Assessment assessment, Page page) {
    Design design = assessment.design();
    ServiceResult result = assessment.service();
    new StatesSection(result, page).write();
    new PumpsInStatesSection(design, result, page).write();
    result.pulsation().ifPresent(p -> new PulsationSection(p, page).write());
    new SurgeSection(result.surges(), page).write();
    result.stop().ifPresent(s -> new StopSection(s, design.pump().isPresent(), page).write());
    new FeedSection(page).of(result);
  }

  /**
   * The findings.
   *
   * @param assessment what came of a design
   * @return a card for each part with its worst, and a table of what is met
   */
  public static List<Block> findings(Assessment assessment) {
    return written(assessment, page -> new FindingsSection(assessment, page).write());
  }

  /**
   * The safety cautions.
   *
   * @param assessment what came of a design
   * @return the cautions in full
   */
  public static List<Block> safety(Assessment assessment) {
    return written(assessment, page -> new SafetySection(assessment, page).write());
  }

  /**
   * The working.
   *
   * @param assessment what came of a design
   * @return every step with its equation, values and source
   */
  public static List<Block> working(Assessment assessment) {
    return written(assessment, page -> WorkingSection.of(assessment, page).write());
  }

  private static List<Block> written(Assessment assessment, Consumer<Page> chapter) {
    Page page = new Page(assessment.design().units());
    chapter.accept(page);
    return page.blocks();
  }
}
