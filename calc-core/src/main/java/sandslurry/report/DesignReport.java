package sandslurry.report;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.design.document.DesignDocument;
import sandslurry.report.block.Block;
import sandslurry.report.section.Chapters;
import sandslurry.study.Cures;
import sandslurry.units.ShownText;

/**
 * The design report that an engineer checks and signs: the answer, what it means on the farm, the
 * inputs, drawings, tables by subject, findings, cautions, sources, and room for signature and
 * seal.
 */
public final class DesignReport {
  private static final String STATEMENT =
      "This report is a screening estimate by computation. A licensed practitioner must review and"
          + " take responsibility for the design. Local codes, the permitting agency and the"
          + " makers' instructions come first. The sources say which coefficients are from"
          + " memory, unverified.";

  /** What a publication has and a definition has not. */
  private static final Pattern YEAR = Pattern.compile("\\b(18|19|20)[0-9]{2}\\b");

  private static final String CAVEAT = "; coefficients from memory, unverified";
  private static final String MARK = " [*]";

  private final Assessment assessment;
  private final List<Block> blocks = new ArrayList<>();

  private DesignReport(Assessment assessment) {
    this.assessment = assessment;
  }

  /**
   * The report.
   *
   * @param document the design as typed
   * @param assessment what came of it
   * @param cures what was tried to mend it, if anything was
   * @param title what the report says of itself
   * @return the report as data
   */
  public static List<Block> of(
      DesignDocument document, Assessment assessment, Optional<Cures> cures, TitleBlock title) {
    DesignReport report = new DesignReport(assessment);
    report.titleBlock(document, title);
    report.blocks.addAll(Answer.of(assessment, cures, true));
    report.plant();
    report.farm();
    report.blocks.addAll(Chapters.inputs(document, assessment));
    report.drawings();
    report.tables();
    report.blocks.addAll(OperationSheet.of(assessment));
    report.findings();
    report.safety();
    report.sources();
    report.words();
    report.signature();
    return List.copyOf(report.blocks);
  }

  /**
   * All that there is to tell of an assessment, as one text to read or to search.
   *
   * @param assessment what came of a design
   * @return answer, tables, findings, cautions and working
   */
  public static List<Block> everything(Assessment assessment) {
    DesignReport report = new DesignReport(assessment);
    report.blocks.addAll(Answer.of(assessment));
    report.tables();
    report.findings();
    report.safety();
    report.blocks.addAll(working(assessment));
    return List.copyOf(report.blocks);
  }

  /**
   * The part of the report on the line in service: its states, each pump, stop and restart, a day.
   *
   * @param assessment the assessment
   * @return that part as data; empty when there is nothing to tell
   */
  public static List<Block> service(Assessment assessment) {
    List<Block> service = new ArrayList<>(ObservedPage.tables(assessment));
    service.addAll(Chapters.service(assessment));
    return service;
  }

  /**
   * The steps behind every number.
   *
   * @param assessment what came of a design
   * @return the working as data
   */
  public static List<Block> working(Assessment assessment) {
    List<Block> working = new ArrayList<>(Chapters.working(assessment));
    assessment
        .lines()
        .forEach(
            (name, line) -> {
              working.add(new Block.Heading(1, name));
              working.addAll(within(Chapters.working(line)));
            });
    return working;
  }

  /** The blocks of a chapter, their headings below that of the chapter. */
  private static List<Block> within(List<Block> blocks) {
    return blocks.stream()
        .map(
            block ->
                block instanceof Block.Heading heading
                    ? new Block.Heading(Math.min(3, heading.level() + 1), heading.text())
                    : block)
        .toList();
  }

  private void heading(String text) {
    blocks.add(new Block.Heading(1, text));
  }

  private void titleBlock(DesignDocument document, TitleBlock title) {
    UnaryOperator<String> text =
        name -> ShownText.message(document.text("/titleBlock/" + name).strip());
    blocks.add(
        new Block.Table(
            List.of("", "", "", "", "", ""),
            List.of(
                List.of(
                    "Project",
                    text.apply("project"),
                    "Designer",
                    text.apply("designer"),
                    "Date",
                    title.date()),
                List.of(
                    "Client",
                    text.apply("client"),
                    "Checker",
                    text.apply("checker"),
                    "Revision",
                    text.apply("revision")),
                List.of(
                    "Site",
                    text.apply("site"),
                    "File",
                    title.file(),
                    "Program",
                    title.program()))));
  }

  /** It takes a page of its own, as the answer before it does. */
  private void plant() {
    if (assessment.plant().isPresent()) {
      heading("Drawing of the plant");
      blocks.add(new Block.Picture("plant", "Flows from the pens to the storage", true));
    }
  }

  private void farm() {
    heading("What this means on the farm");
    blocks.addAll(FarmPage.of(assessment));
  }

  private void drawings() {
    heading("Drawings");
    ofLine(assessment, "");
    assessment
        .plant()
        .flatMap(PlantResult::profile)
        .ifPresent(
            p -> blocks.add(new Block.Picture("profile", "Hydraulic profile of the plant", true)));
    if (blocks.get(blocks.size() - 1) instanceof Block.Heading) {
      blocks.remove(blocks.size() - 1);
    }
  }

  /** The drawings of a line; those of one of several have its place before their names. */
  private void ofLine(Assessment its, String place) {
    its.line()
        .filter(line -> !line.states().isEmpty())
        .ifPresent(
            line -> {
              picture(place + "system", "System curve, pump curve and duty point");
              picture(place + "grade", "Route profile with hydraulic grade line (HGL)");
              picture(place + "deposition", "Actual velocity against the deposition velocity");
            });
    its.dilution().ifPresent(d -> picture(place + "dilution", "What dilution does"));
  }

  /**
   * A chapter for each of several lines: its drawings and tables. What explains a table is said
   * once.
   */
  private void lines() {
    int place = 0;
    Set<Block> said = new HashSet<>();
    for (Map.Entry<String, Assessment> line : assessment.lines().entrySet()) {
      heading(line.getKey());
      ofLine(line.getValue(), place + "/");
      blocks.addAll(within(ObservedPage.tables(line.getValue())));
      within(Chapters.ofOneOfSeveral(line.getValue())).stream()
          .filter(block -> !(block instanceof Block.Paragraph) || said.add(block))
          .forEach(blocks::add);
      place++;
    }
  }

  private void picture(String id, String caption) {
    blocks.add(new Block.Picture(id, caption, false));
  }

  private void tables() {
    blocks.addAll(ObservedPage.tables(assessment));
    blocks.addAll(Chapters.tables(assessment));
    lines();
  }

  private void findings() {
    heading("Findings");
    blocks.addAll(Chapters.findings(assessment));
  }

  private void safety() {
    heading("Safety");
    blocks.addAll(Chapters.safety(assessment));
  }

  /** Every publication that a step of the working names, once. */
  private void sources() {
    List<String> sources =
        Stream.concat(Stream.of(assessment), assessment.lines().values().stream())
            .flatMap(part -> part.working().stream())
            .map(step -> step.equation().source())
            .filter(source -> YEAR.matcher(source).find())
            .distinct()
            .sorted()
            .toList();
    heading("Sources");
    blocks.add(
        new Block.Items(
            sources.isEmpty() ? List.of("common practice, no source") : marked(sources),
            Block.Items.Style.SMALL_PRINT));
  }

  /** The commonest caveat is written out once, and stands beside the others as a sign. */
  private static List<String> marked(List<String> sources) {
    List<String> marked = new ArrayList<>();
    marked.add(MARK.strip() + CAVEAT.substring(1));
    sources.forEach(source -> marked.add(source.replace(CAVEAT, MARK)));
    return marked;
  }

  private void words() {
    Block used = Glossary.of(blocks);
    heading("Words used here");
    blocks.add(used);
  }

  private void signature() {
    heading("Review");
    blocks.add(
        new Block.Room(
            STATEMENT,
            List.of(
                "Designed by", "Checked by", "License and state", "Date", "Signature and seal")));
  }
}
