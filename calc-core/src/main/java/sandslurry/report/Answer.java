package sandslurry.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.LinesTogether;
import sandslurry.assessment.SafetyCaution;
import sandslurry.assessment.stop.StopResult;
import sandslurry.assessment.stop.StopResult.FlushNeed;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.Severity;
import sandslurry.fact.finding.Value;
import sandslurry.report.block.Block;
import sandslurry.report.section.CuresSection;
import sandslurry.study.Cures;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/**
 * The answer in one page: verdict, operating window, what decides, what to do, what is not known,
 * the dangers in a line. The same blocks are printed, shown as the first page of the form and as
 * the first page of the design report.
 */
public final class Answer {
  private static final int MOST_FACTS = 7;
  private static final int MOST_OTHERS = 6;
  private static final int MOST_PLACES = 3;
  private static final String FAIL = "FAIL ";
  private static final int MOST_TO_DO = 6;
  private static final int MOST_UNKNOWN = 5;

  private static final String EVIDENCE =
      "How near this is to a line of your own: no calculation of this kind was compared with lines"
          + " measured in manure.";

  /** What each page of the design report says at its foot. */
  private static final String SCREENING =
      " Screening only: a licensed practitioner must review the design; local codes come first.";

  private final Assessment assessment;
  private final Optional<Cures> cures;
  private final boolean inReport;
  private final UnitSystem units;

  /** What the first sentence says: it is not said again, but what mends it comes first. */
  private final List<Finding> said;

  private final List<Block> blocks = new ArrayList<>();

  private Answer(
      Assessment assessment, Optional<Cures> cures, List<Finding> said, boolean inReport) {
    this.assessment = assessment;
    this.cures = cures;
    this.inReport = inReport;
    this.said = said;
    this.units = assessment.design().units();
  }

  /**
   * The answer.
   *
   * @param assessment what came of a design
   * @return the page as data
   */
  public static List<Block> of(Assessment assessment) {
    return of(assessment, Optional.empty());
  }

  /**
   * The answer with the cures that were tried.
   *
   * @param assessment what came of a design
   * @param cures what was tried to mend its gravest finding, if anything was
   * @return the page as data
   */
  public static List<Block> of(Assessment assessment, Optional<Cures> cures) {
    return of(assessment, cures, false);
  }

  /** The answer; that of the design report leaves to its later pages what they say. */
  static List<Block> of(Assessment assessment, Optional<Cures> cures, boolean inReport) {
    Answer answer = new Answer(assessment, cures, Headline.of(assessment).said(), inReport);
    answer.all();
    return List.copyOf(answer.blocks);
  }

  /**
   * The verdict in a sentence.
   *
   * @param assessment what came of a design
   * @return what a plant recovers; what is gravest, or for a pass what is closest
   */
  public static String sentence(Assessment assessment) {
    return Headline.of(assessment).text();
  }

  /**
   * Several designs side by side.
   *
   * @param results what came of each, by the name of its file
   * @return a row each: verdict, operating window and what is closest
   */
  public static Block table(Map<String, Assessment> results) {
    List<List<String>> rows = new ArrayList<>();
    results.forEach(
        (file, assessment) -> {
          String closest =
              DecidingFacts.of(assessment).stream()
                  .findFirst()
                  .map(f -> f.what() + ": " + f.actual() + ", " + f.limit())
                  .or(() -> Headline.recovered(assessment))
                  .orElse("-");
          rows.add(
              List.of(
                  file,
                  assessment.verdict().name(),
                  OperatingBlock.of(worst(assessment)).map(Block.Window::text).orElse("-"),
                  closest));
        });
    return new Block.Table(List.of("design", "verdict", "operating window", "closest"), rows);
  }

  private static Assessment worst(Assessment assessment) {
    return assessment.worstFirst().values().stream().findFirst().orElse(assessment);
  }

  private void all() {
    blocks.add(new Block.Verdict(assessment.design().title(), assessment.verdict()));
    blocks.add(new Block.Paragraph(sentence(assessment)));
    assessment.plant().ifPresent(plant -> blocks.addAll(PlantNumbers.of(assessment, plant)));
    if (assessment.lines().isEmpty()) {
      body(sentence(assessment));
    } else {
      lines();
    }
    unknown();
    dangers();
  }

  /** What decides and what to do; what the sentence says is said above already. */
  private void body(String sentence) {
    OperatingBlock.of(assessment).map(window -> window.saidIn(sentence)).ifPresent(blocks::add);
    decides();
    observed();
    cures.filter(this::worthSaying).ifPresent(tried -> blocks.addAll(CuresSection.of(tried)));
    others();
    toDo();
  }

  /** That nothing mends a finding is news only where the finding stands in the first sentence. */
  private boolean worthSaying(Cures tried) {
    return !tried.tried().isEmpty() || said.contains(tried.finding());
  }

  /** A row for each of several lines, the answer of the worst, and what is amiss elsewhere. */
  private void lines() {
    blocks.add(LinesTable.of(assessment));
    decides();
    Map.Entry<String, Assessment> worst = assessment.worstFirst().entrySet().iterator().next();
    Finding first = worst.getValue().findings().get(0);
    boolean above = said.contains(LinesTogether.on(worst.getKey(), first));
    heading(worst.getKey());
    Answer answer =
        new Answer(worst.getValue(), cures, above ? List.of(first) : List.of(), inReport);
    answer.body(sentence(assessment));
    blocks.addAll(answer.blocks);
    List<Finding> elsewhere =
        assessment.findings().stream()
            .filter(f -> !f.element().equals(worst.getKey()))
            .filter(f -> !f.element().startsWith(worst.getKey() + ", "))
            .filter(this::isAmiss)
            .toList();
    if (!elsewhere.isEmpty()) {
      heading("Elsewhere");
      listed(elsewhere);
    }
  }

  private void heading(String text) {
    blocks.add(new Block.Heading(3, text));
  }

  private void decides() {
    List<Deciding> facts = new ArrayList<>(DecidingFacts.own(assessment));
    if (facts.isEmpty()) {
      return;
    }
    // Where there are too many, those with a large margin are missed least.
    for (int i = facts.size() - 1; i >= 0 && facts.size() > MOST_FACTS; i--) {
      if (facts.get(i).isLarge()) {
        facts.remove(i);
      }
    }
    blocks.add(
        new Block.Table(
            List.of("What decides", "actual", "limit", "margin"),
            facts.stream()
                .limit(MOST_FACTS)
                .map(f -> List.of(f.what(), f.actual(), f.limit(), f.marginText()))
                .toList()));
  }

  /** What a reading on site says. */
  private void observed() {
    List<String> lines = ObservedPage.lines(assessment, said);
    if (!lines.isEmpty()) {
      heading("Reading on site");
      blocks.add(Block.Items.bullets(lines));
    }
  }

  /** Everything that is amiss beside what the first sentence says, with what mends it. */
  private void others() {
    List<Finding> amiss = assessment.findings().stream().filter(this::isAmiss).toList();
    if (!amiss.isEmpty()) {
      heading("Also");
      listed(amiss);
    }
  }

  private boolean isAmiss(Finding finding) {
    return finding.severity().compareTo(Severity.CAUTION) >= 0
        && finding.topic() != Topic.DATA
        && (finding.topic() != Topic.OBSERVED || finding.severity() == Severity.FAIL)
        && !said.contains(finding);
  }

  /** What is amiss in the same way in several parts is said once. */
  private void listed(List<Finding> amiss) {
    Map<String, Set<String>> places = new LinkedHashMap<>();
    for (Finding finding : amiss) {
      boolean known = said.stream().anyMatch(f -> f.cure().equals(finding.cure()));
      String cure = known || isTried(finding) ? "" : finding.cure();
      String text = (": " + finding.what() + " " + cure).stripTrailing();
      places
          .computeIfAbsent(
              finding.severity() == Severity.FAIL ? FAIL + text : text,
              both -> new LinkedHashSet<>())
          .add(finding.place());
    }
    List<String> shown = new ArrayList<>();
    places.forEach(
        (text, where) ->
            shown.add(
                text.startsWith(FAIL)
                    ? FAIL + named(where) + text.substring(FAIL.length())
                    : named(where) + text));
    int more = shown.size() - MOST_OTHERS;
    if (more > 0) {
      shown.subList(MOST_OTHERS, shown.size()).clear();
      shown.add("and " + more + " more, in the design report");
    }
    blocks.add(Block.Items.bullets(shown));
  }

  /** The first of the parts that share a finding. */
  private static String named(Set<String> places) {
    String first = places.stream().limit(MOST_PLACES).collect(Collectors.joining("; "));
    int more = places.size() - MOST_PLACES;
    return more > 0 ? first + " and " + more + " more" : first;
  }

  private boolean isTried(Finding finding) {
    return cures
        .filter(c -> !c.tried().isEmpty())
        .filter(c -> c.finding().equals(finding))
        .isPresent();
  }

  private void toDo() {
    Set<String> todo = new LinkedHashSet<>();
    for (Finding finding : said) {
      if (!finding.cure().isEmpty() && !isTried(finding)) {
        todo.add(finding.cure());
      }
    }
    for (Finding finding : assessment.findings()) {
      if (finding.topic() == Topic.OBSERVED
          && finding.severity() == Severity.CAUTION
          && !finding.cure().isEmpty()) {
        todo.add(finding.cure());
      }
    }
    assessment.service().stop().flatMap(this::flush).ifPresent(todo::add);
    for (Finding finding : assessment.findings()) {
      if (finding.severity() == Severity.NOTE
          && finding.topic() == Topic.PRESSURE
          && !finding.cure().isEmpty()) {
        todo.add(finding.what() + " " + finding.cure());
      }
    }
    if (!todo.isEmpty()) {
      heading(cures.filter(c -> !c.tried().isEmpty()).isPresent() ? "Do also" : "Do");
      blocks.add(Block.Items.numbered(todo.stream().limit(MOST_TO_DO).toList()));
    }
  }

  /** The flush before a stop in one sentence, with its numbers. */
  private Optional<String> flush(StopResult stop) {
    if (!(stop.filling().sandKg() > 0) || stop.flush().isEmpty()) {
      return Optional.empty();
    }
    FlushNeed flush = stop.flush().get();
    return Optional.of(
        "Flush before every stop: "
            + units.showAtLeast(Kind.FLOW, flush.flowM3ps())
            + " or more of clean water for "
            + new Value.Number(Kind.TIME, flush.timeS()).show("longest", units)
            + " ("
            + units.showAtLeast(Kind.VOLUME, flush.volumeM3())
            + ").");
  }

  private void unknown() {
    Set<String> unknown = new LinkedHashSet<>();
    for (Finding finding : assessment.findings()) {
      if (finding.topic() == Topic.DATA
          && finding.severity() == Severity.CAUTION
          && !said.contains(finding)) {
        unknown.add((finding.what() + " " + finding.cure()).strip());
      }
    }
    for (Finding finding : assessment.findings()) {
      if (finding.topic() == Topic.DATA
          && finding.severity() == Severity.NOTE
          && !finding.cure().isEmpty()) {
        unknown.add(finding.what() + " " + finding.cure());
      }
    }
    List<String> shown = new ArrayList<>(unknown.stream().limit(MOST_UNKNOWN - 2L).toList());
    FromMemory.sentence(assessment).ifPresent(shown::add);
    shown.add(EVIDENCE);
    heading("Not known");
    blocks.add(Block.Items.bullets(shown));
  }

  private void dangers() {
    blocks.add(
        new Block.Paragraph(
            "Dangers: "
                + assessment.cautions().stream()
                    .map(SafetyCaution::title)
                    .filter(title -> !title.equals(SafetyCaution.REVIEW))
                    .map(
                        title ->
                            title.substring(0, 1).toLowerCase(Locale.ROOT) + title.substring(1))
                    .collect(Collectors.joining(" - "))
                + (inReport ? "." : ". The design report has them in full." + SCREENING)));
  }
}
