package sandslurry.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.observed.ObservedEvaluation;
import sandslurry.assessment.observed.ObservedResult;
import sandslurry.assessment.observed.ObservedResult.Cause;
import sandslurry.assessment.observed.ObservedResult.Explained;
import sandslurry.assessment.observed.ObservedResult.LineCheck;
import sandslurry.assessment.observed.ObservedResult.SecondReading;
import sandslurry.diagnosis.Bracket;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.report.block.Block;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** What a reading on site says: some lines for the answer, tables for the report. */
final class ObservedPage {
  private static final int LONG = 200;

  private final Assessment assessment;
  private final UnitSystem units;

  private ObservedPage(Assessment assessment) {
    this.assessment = assessment;
    this.units = assessment.design().units();
  }

  /**
   * The lines of the answer: the line, a bed, other causes, what would tell them apart, the pump.
   *
   * @param said what is said already
   */
  static List<String> lines(Assessment assessment, List<Finding> said) {
    ObservedPage page = new ObservedPage(assessment);
    List<String> lines = new ArrayList<>();
    lines.add(
        page.sentences(
            f -> is(f, "as-clean", "more", "less") && !said.contains(f),
            f -> f.what() + f.firstReason(LONG)));
    lines.add(page.sentences(f -> is(f, "bed", "fills", "too-little-sand"), Finding::what));
    lines.add(page.sentences(f -> is(f, "thicker", "thinner", "rough"), Finding::what));
    lines.add(page.sentences(f -> is(f, "undecided"), f -> f.what() + " " + f.cure()));
    lines.add(page.sentences(f -> f.element().equals("pump"), Finding::what));
    lines.removeIf(String::isEmpty);
    return lines;
  }

  private static boolean is(Finding finding, String... keys) {
    for (String key : keys) {
      if (finding.id().equals("observed." + key)) {
        return true;
      }
    }
    return false;
  }

  private String sentences(Predicate<Finding> which, Function<Finding, String> text) {
    return assessment.findings().stream()
        .filter(f -> f.topic() == Topic.OBSERVED)
        .filter(which)
        .map(text)
        .collect(Collectors.joining(" "));
  }

  /** The tables of the report; empty without a reading. */
  static List<Block> tables(Assessment assessment) {
    return assessment
        .service()
        .observed()
        .map(result -> new ObservedPage(assessment).tables(result))
        .orElse(List.of());
  }

  private List<Block> tables(ObservedResult result) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Heading(1, "Reading on site"));
    LineCheck check = result.line();
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("flow rate read", units.show(Kind.FLOW, check.flowM3ps())));
    rows.add(List.of("pressure read", units.show(Kind.PRESSURE, check.pressurePa())));
    rows.add(
        List.of("calculated for the clean line", units.show(Kind.PRESSURE, check.calculatedPa())));
    rows.add(List.of("uncertainty of both", units.show(Kind.PRESSURE, check.uncertaintyPa())));
    result
        .pump()
        .ifPresent(
            pump ->
                rows.add(
                    List.of(
                        "less head or flow rate than the new pump",
                        span(Kind.PERCENT, pump.wear(), 1))));
    blocks.add(new Block.Table(List.of("what", "value"), rows));
    blocks.add(
        new Block.Table(
            List.of("cause", "value that explains the reading", "explains it"),
            result.explained().stream().map(e -> cause(result, e)).toList()));
    if (!result.second().isEmpty()) {
      blocks.add(second(result));
    }
    blocks.add(
        new Block.Paragraph(
            "Each cause is solved by itself, the others as designed; two at once are not. The"
                + " uncertainty is that of both readings and of the calculated friction, "
                + units.show(Kind.PERCENT, ObservedEvaluation.MODEL)
                + ", and of the new pump, "
                + units.show(Kind.PERCENT, ObservedEvaluation.PUMP)
                + " (common practice, no source). A bed is taken as equally deep in every run that"
                + " sand does not slide down; of a shorter bed the depth is more."));
    return blocks;
  }

  private List<String> cause(ObservedResult result, Explained explained) {
    Optional<Bracket> values = explained.values();
    boolean explains = result.possible().contains(explained);
    double bore = assessment.design().oneLine().route().runs().get(0).meanBoreM();
    return switch (explained.cause()) {
      case BED ->
          List.of(
              "settled bed, depth in the first run",
              values.map(v -> span(Kind.BORE, v, bore)).orElse("-"),
              explained.enoughSand() ? yes(explains) : "no, too little sand has passed");
      case LIQUID ->
          List.of(
              "liquor, its stress over that of the design",
              values.map(v -> span(Kind.NUMBER, v, 1)).orElse("-"),
              yes(explains));
      case ROUGHNESS ->
          List.of(
              "pipe wall, roughness",
              values.map(v -> span(Kind.BORE, v, 1)).orElse("-"),
              yes(explains));
    };
  }

  private static String yes(boolean explains) {
    return explains ? "yes" : "no";
  }

  private String span(Kind<?> kind, Bracket span, double times) {
    return units.show(kind, times * span.value())
        + " ("
        + units.show(kind, times * span.low())
        + " to "
        + units.show(kind, times * span.high())
        + ")";
  }

  private Block second(ObservedResult result) {
    List<Cause> causes = result.possible().stream().map(Explained::cause).toList();
    List<String> head = new ArrayList<>(List.of("second reading"));
    causes.forEach(cause -> head.add(word(cause)));
    head.add("distinguishes");
    List<List<String>> rows = new ArrayList<>();
    for (SecondReading second : result.second()) {
      List<String> row = new ArrayList<>();
      row.add(word(second));
      for (Cause cause : causes) {
        Bracket read = second.pressurePa().get(cause);
        row.add(units.showSpan(Kind.PRESSURE, read.low(), read.high()));
      }
      String shown =
          result.open().stream()
              .filter(second::distinguishes)
              .map(pair -> word(pair.get(0)) + " from " + word(pair.get(1)))
              .collect(Collectors.joining(", "));
      row.add(shown.isEmpty() ? "nothing" : shown);
      rows.add(row);
    }
    return new Block.Table(head, rows);
  }

  private static String word(Cause cause) {
    return switch (cause) {
      case BED -> "bed";
      case LIQUID -> "liquor";
      case ROUGHNESS -> "roughness";
    };
  }

  private String word(SecondReading second) {
    return switch (second.kind()) {
      case HALF_FLOW -> units.show(Kind.FLOW, second.flowM3ps());
      case WATER -> "water, same flow rate";
      case AFTER_FLUSH -> "mixture after a flush";
    };
  }
}
