package sandslurry.report.section;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sandslurry.assessment.Assessment;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Severity;
import sandslurry.report.block.Block;

/** The findings, one card a part of the design with its worst; what is met stands in one list. */
final class FindingsSection extends SectionWriter {
  private final Assessment assessment;

  private FindingsSection(Assessment assessment) {
    super(assessment.design().units());
    this.assessment = assessment;
  }

  static List<Block> of(Assessment assessment) {
    FindingsSection section = new FindingsSection(assessment);
    section.cards();
    section.met();
    return section.blocks();
  }

  private void cards() {
    Map<String, List<Finding>> parts = new LinkedHashMap<>();
    for (Finding finding : assessment.findings()) {
      if (finding.severity() != Severity.PASS) {
        parts.computeIfAbsent(finding.place(), p -> new ArrayList<>()).add(finding);
      }
    }
    parts.forEach(this::card);
  }

  private void card(String part, List<Finding> findings) {
    List<String> lines = new ArrayList<>();
    lines.add(part);
    Set<String> cures = new LinkedHashSet<>();
    for (Finding finding : findings) {
      String mark = findings.size() > 1 ? finding.severity() + ": " : "";
      lines.add((mark + finding.what() + " " + finding.why()).strip());
      if (!finding.cure().isEmpty() && cures.add(finding.cure())) {
        lines.add("Do: " + finding.cure());
      }
    }
    add(new Block.Marked(findings.get(0).severity().name(), lines));
  }

  private void met() {
    List<List<String>> rows = new ArrayList<>();
    for (Finding finding : assessment.findings()) {
      if (finding.severity() == Severity.PASS) {
        rows.add(List.of(finding.place(), finding.what() + " " + finding.why()));
      }
    }
    if (!rows.isEmpty()) {
      heading(2, "Checked and met");
      table(List.of("part", "what was found"), rows);
    }
  }
}
