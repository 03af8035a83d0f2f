package sandslurry.report;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import sandslurry.assessment.Finding;

/** How findings are spoken of. */
final class Findings {
  private Findings() {}

  /** What a finding says, for a program: its topic and the start of its sentence. */
  static String id(Finding finding) {
    String sentence =
        finding
            .what()
            .toLowerCase(Locale.ROOT)
            .replaceAll("[^a-z ]", "")
            .replaceAll("\\b(a|an|the|of|in|is|are|its|it|at|to)\\b", "")
            .strip();
    return finding.topic().word().replace(' ', '-')
        + "."
        + Arrays.stream(sentence.split(" +")).limit(6).collect(Collectors.joining("-"));
  }

  /** The part that a finding is on, with a capital. */
  static String place(Finding finding) {
    String element = finding.element();
    return element.substring(0, 1).toUpperCase(Locale.ROOT) + element.substring(1);
  }

  /** The first sentence of the reason, with a space before it; nothing when it is long. */
  static String firstReason(Finding finding, int longest) {
    String why = finding.why();
    int end = why.indexOf(". ");
    String first = end < 0 ? why : why.substring(0, end + 1);
    return first.isEmpty() || first.length() > longest ? "" : " " + first;
  }
}
