package sandslurry.assessment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sandslurry.design.Design;
import sandslurry.fact.finding.Finding;

/** Puts together what came of several lines, each of which was judged in a design of its own. */
public final class LinesTogether {
  /** How a finding calls the line that it is on. */
  private static final String LINE = "line";

  private LinesTogether() {}

  /**
   * The whole design: its verdict is that of its worst line or part.
   *
   * @param design the design
   * @param rest what came of it without its lines
   * @param lines what came of each line, by its name
   * @return all of them
   */
  static Assessment of(Design design, Assessment rest, Map<String, Assessment> lines) {
    List<Finding> findings = new ArrayList<>(rest.findings());
    Set<SafetyCaution> cautions = new LinkedHashSet<>();
    lines.forEach(
        (name, line) -> {
          line.findings().stream()
              .filter(finding -> rest.findings().stream().noneMatch(f -> same(f, finding)))
              .forEach(finding -> findings.add(on(name, finding)));
          cautions.addAll(line.cautions());
        });
    cautions.addAll(rest.cautions());
    findings.sort(Comparator.comparing(Finding::severity).reversed());
    return rest.with(design, lines, findings, List.copyOf(cautions));
  }

  /**
   * A finding on one of several lines as the whole design tells it.
   *
   * @param line name of the line
   * @param finding the finding on it
   * @return the same, which names the line
   */
  public static Finding on(String line, Finding finding) {
    return finding.on(finding.element().equals(LINE) ? line : line + ", " + finding.element());
  }

  /** What is said of the liquid or the sand of the design is said once, not of every line. */
  private static boolean same(Finding one, Finding other) {
    return one.id().equals(other.id())
        && one.severity() == other.severity()
        && one.element().equals(other.element())
        && one.what().equals(other.what())
        && one.why().equals(other.why());
  }
}
