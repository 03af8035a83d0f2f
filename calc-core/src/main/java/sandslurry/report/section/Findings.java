package sandslurry.report.section;

import java.util.Locale;
import sandslurry.fact.finding.Finding;

/** How findings are spoken of. */
public final class Findings {
  private Findings() {}

  /**
   * The part that a finding is on.
   *
   * @param finding the finding
   * @return its name with a capital
   */
  public static String place(Finding finding) {
    String element = finding.element();
    return element.substring(0, 1).toUpperCase(Locale.ROOT) + element.substring(1);
  }

  /**
   * The first sentence of the reason.
   *
   * @param finding the finding
   * @param longest characters from which on it is left out
   * @return the sentence with a space before it; empty when it is long
   */
  public static String firstReason(Finding finding, int longest) {
    String why = finding.why();
    int end = why.indexOf(". ");
    String first = end < 0 ? why : why.substring(0, end + 1);
    return first.isEmpty() || first.length() > longest ? "" : " " + first;
  }
}
