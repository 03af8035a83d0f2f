package sandslurry.report.section;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sandslurry.assessment.Assessment;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Severity;
import sandslurry.report.block.Block;
import sandslurry.report.block.Page;
import sandslurry.report.block.Told;

/** The findings, one card a part of the design with its worst; what is met stands in one list. */
record FindingsSection(Assessment assessment, Page page) implements SectionWriter {
  private static final String BETWEEN = "; ";

  /** The most parts that share a finding and are named and told one by one. */
  private static final int MOST = 8;

  private static final int FEW = 3;

  private static final String ALL_LINES = "All lines";

  /** Between two sentences; "et al." ends none. */
  private static final Pattern SENTENCES = Pattern.compile("(?<=[.])(?<!al\\.) (?=[A-Z])");

  void write() {
    Map<Severity, List<Block>> cards = new LinkedHashMap<>();
    for (Severity severity : List.of(Severity.FAIL, Severity.CAUTION, Severity.NOTE)) {
      cards.put(severity, new ArrayList<>());
    }
    Map<Same, List<Finding>> shared = shared();
    ofParts(shared.keySet(), cards);
    // What the same parts share stands in one card.
    Map<List<Object>, List<List<Finding>>> together = new LinkedHashMap<>();
    shared.forEach(
        (same, alike) ->
            together
                .computeIfAbsent(List.of(same.severity(), places(alike)), p -> new ArrayList<>())
                .add(alike));
    together
        .values()
        .forEach(alike -> cards.get(alike.get(0).get(0).severity()).add(sharedCard(alike)));
    cards.values().forEach(all -> all.forEach(this::add));
    met();
  }

  /** What is found, of whatever part. */
  private record Same(Severity severity, String what) {
    Same(Finding finding) {
      this(finding.severity(), finding.what());
    }
  }

  private Stream<Finding> of(Predicate<Severity> which) {
    return assessment.findings().stream().filter(finding -> which.test(finding.severity()));
  }

  /** What is found of several parts and is not met. */
  private Map<Same, List<Finding>> shared() {
    Map<Same, List<Finding>> all =
        of(severity -> severity != Severity.PASS)
            .collect(Collectors.groupingBy(Same::new, LinkedHashMap::new, Collectors.toList()));
    all.values().removeIf(alike -> places(alike).size() < 2);
    return all;
  }

  private static List<String> places(List<Finding> findings) {
    return findings.stream().map(Finding::place).distinct().toList();
  }

  /** A card for each part, of what it shares with no other. */
  private void ofParts(Set<Same> shared, Map<Severity, List<Block>> cards) {
    Map<String, List<Finding>> parts =
        of(severity -> severity != Severity.PASS)
            .filter(finding -> !shared.contains(new Same(finding)))
            .collect(
                Collectors.groupingBy(Finding::place, LinkedHashMap::new, Collectors.toList()));
    parts.forEach(
        (part, findings) -> {
          List<String> lines = card(findings);
          if (lines.size() == 1) {
            lines.set(0, part + ": " + lines.get(0));
          } else {
            lines.add(0, part);
          }
          Severity worst = findings.get(0).severity();
          cards.get(worst).add(new Block.Marked(worst.name(), lines));
        });
  }

  private static List<String> card(List<Finding> findings) {
    List<String> lines = new ArrayList<>();
    Set<String> cures = new LinkedHashSet<>();
    for (Finding finding : findings) {
      // The card bears the severity of its worst.
      String mark =
          finding.severity() == findings.get(0).severity() ? "" : finding.severity() + ": ";
      lines.add((mark + finding.what() + " " + finding.why()).strip());
      if (!finding.cure().isEmpty() && cures.add(finding.cure())) {
        lines.add("Do: " + finding.cure());
      }
    }
    return lines;
  }

  /** One card for the parts that share findings, with what is different in each. */
  private Block.Marked sharedCard(List<List<Finding>> findings) {
    List<String> lines = new ArrayList<>();
    lines.add(together(findings.get(0)));
    for (List<Finding> alike : findings) {
      Told reasons = told(alike, Finding::why);
      lines.add((alike.get(0).what() + " " + String.join(" ", reasons.shared())).strip());
      lines.addAll(few(reasons.own(BETWEEN)));
      String cures = text(told(alike, Finding::cure)).strip();
      if (!cures.isEmpty()) {
        lines.add("Do: " + cures);
      }
    }
    return new Block.Marked(findings.get(0).get(0).severity().name(), lines);
  }

  private Told told(List<Finding> findings, Function<Finding, String> text) {
    return Told.of(
        names(findings),
        findings.stream().map(f -> List.of(SENTENCES.split(text.apply(f)))).toList(),
        " ");
  }

  private static String text(Told told) {
    return String.join(" ", told.shared()) + " " + String.join(" ", few(told.own(BETWEEN)));
  }

  /** Of many parts the first are told; the tables have them all. */
  private static List<String> few(List<String> told) {
    if (told.size() <= MOST) {
      return told;
    }
    List<String> few = new ArrayList<>(told.subList(0, FEW));
    few.add("In " + (told.size() - FEW) + " more it is alike: see the tables.");
    return few;
  }

  /** The parts together. */
  private String together(List<Finding> findings) {
    List<String> names = names(findings).stream().distinct().toList();
    return names.size() > 1 && Set.copyOf(names).equals(assessment.lines().keySet())
        ? ALL_LINES
        : SectionWriter.few(new LinkedHashSet<>(names), MOST, BETWEEN);
  }

  /** The part of each finding; its line alone where each line has one. */
  private List<String> names(List<Finding> findings) {
    List<String> lines = findings.stream().map(finding -> line(finding.place())).toList();
    return lines.stream().distinct().count() == findings.size()
        ? lines
        : findings.stream().map(Finding::place).toList();
  }

  private String line(String place) {
    return assessment.lines().keySet().stream()
        .filter(line -> place.startsWith(line + ", "))
        .max(Comparator.comparing(String::length))
        .orElse(place);
  }

  /** What is met, the same of several parts in one row. */
  private void met() {
    Map<String, List<Finding>> alike =
        of(severity -> severity == Severity.PASS)
            .collect(Collectors.groupingBy(Finding::what, LinkedHashMap::new, Collectors.toList()));
    List<List<String>> rows = new ArrayList<>();
    alike.forEach(
        (what, findings) ->
            rows.add(
                List.of(
                    together(findings),
                    (what + " " + text(told(findings, Finding::why)).strip()).strip())));
    if (!rows.isEmpty()) {
      heading(2, "Checked and met");
      table(List.of("part", "what was found"), rows);
    }
  }
}
