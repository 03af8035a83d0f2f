package sandslurry.report.section;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import sandslurry.assessment.Assessment;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Severity;
import sandslurry.report.block.Block;
import sandslurry.report.block.Page;

/** The findings, one card a part of the design with its worst; what is met stands in one list. */
record FindingsSection(Assessment assessment, Page page) implements SectionWriter {
  private void cards() {
    Map<String, List<Finding>> notes = sharedNotes();
    Map<String, List<Finding>> parts = new LinkedHashMap<>();
    for (Finding finding : assessment.findings()) {
      if (finding.severity() != Severity.PASS && !notes.containsKey(noteKey(finding))) {
        parts.computeIfAbsent(finding.place(), p -> new ArrayList<>()).add(finding);
      }
    }
    // Parts of which the same is found, such as twin units, share a card.
    Map<Block.Marked, List<String>> cards = new LinkedHashMap<>();
    parts.forEach(
        (part, findings) ->
            cards.computeIfAbsent(card(findings), c -> new ArrayList<>()).add(part));
    cards.forEach(
        (card, names) -> {
          List<String> lines = new ArrayList<>(card.lines());
          String part = String.join(", ", names);
          if (lines.size() == 1) {
            lines.set(0, part + ": " + lines.get(0));
          } else {
            lines.add(0, part);
          }
          add(new Block.Marked(card.mark(), lines));
        });
    // What the same parts share stands in one card.
    Map<List<String>, List<List<Finding>>> together = new LinkedHashMap<>();
    for (List<Finding> shared : notes.values()) {
      together.computeIfAbsent(places(shared), p -> new ArrayList<>()).add(shared);
    }
    together.forEach(this::shared);
  }

  private static List<String> places(List<Finding> findings) {
    return findings.stream().map(Finding::place).distinct().toList();
  }

  void write() {
    cards();
    met();
  }

  /** Notes that say the same of several parts. */
  private Map<String, List<Finding>> sharedNotes() {
    Map<String, List<Finding>> notes = new LinkedHashMap<>();
    for (Finding finding : assessment.findings()) {
      if (finding.severity() == Severity.NOTE) {
        notes.computeIfAbsent(noteKey(finding), k -> new ArrayList<>()).add(finding);
      }
    }
    notes.values().removeIf(n -> n.stream().map(Finding::place).distinct().count() < 2);
    return notes;
  }

  private static String noteKey(Finding finding) {
    return finding.severity() == Severity.NOTE ? finding.what() : "";
  }

  /** One card for the parts that share notes, with what is different in each. */
  private void shared(List<String> places, List<List<Finding>> notes) {
    List<String> lines = new ArrayList<>();
    lines.add(String.join(", ", places));
    for (List<Finding> note : notes) {
      List<String> reasons = reasons(note);
      lines.add((note.get(0).what() + (reasons.size() == 1 ? " " + reasons.get(0) : "")).strip());
      if (reasons.size() > 1) {
        lines.addAll(reasons);
      }
      String cure = joined(note, Finding::cure, " ");
      if (!cure.isBlank()) {
        lines.add("Do: " + cure);
      }
    }
    add(new Block.Marked(Severity.NOTE.name(), lines));
  }

  /** The reasons of a finding on several parts, each after its parts; alone where all share it. */
  private static List<String> reasons(List<Finding> findings) {
    Map<String, List<String>> reasons = new LinkedHashMap<>();
    for (Finding finding : findings) {
      reasons.computeIfAbsent(finding.why(), w -> new ArrayList<>()).add(finding.place());
    }
    return reasons.size() == 1
        ? List.copyOf(reasons.keySet())
        : reasons.entrySet().stream()
            .map(one -> String.join(", ", one.getValue()) + ": " + one.getKey())
            .toList();
  }

  private static Block.Marked card(List<Finding> findings) {
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
    return new Block.Marked(findings.get(0).severity().name(), lines);
  }

  private static String joined(
      List<Finding> findings, Function<Finding, String> text, String between) {
    return findings.stream().map(text).distinct().collect(Collectors.joining(between));
  }

  /** What is met, the same of several parts in one row. */
  private void met() {
    Map<String, List<Finding>> alike = new LinkedHashMap<>();
    for (Finding finding : assessment.findings()) {
      if (finding.severity() == Severity.PASS) {
        alike.computeIfAbsent(finding.what(), what -> new ArrayList<>()).add(finding);
      }
    }
    List<List<String>> rows = new ArrayList<>();
    alike.forEach(
        (what, findings) ->
            rows.add(
                List.of(
                    joined(findings, Finding::place, ", "),
                    what + " " + String.join(" ", reasons(findings)))));
    if (!rows.isEmpty()) {
      heading(2, "Checked and met");
      table(List.of("part", "what was found"), rows);
    }
  }
}
