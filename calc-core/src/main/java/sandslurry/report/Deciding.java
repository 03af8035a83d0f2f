package sandslurry.report;

import java.util.Locale;
import java.util.OptionalDouble;

/**
 * One thing that decides a design: what there is, what is allowed or needed, and what is left.
 *
 * @param what the thing, in the trade's words
 * @param actual what there is, with its unit
 * @param limit what is allowed or needed, with its unit; a dash where there is none
 * @param margin what is left of the limit as a share of it, below 0 when it is not kept; empty when
 *     it cannot be said in a number
 * @param word what to show in place of the margin; empty to show the margin itself
 * @param missed how a limit that is not kept is called: short of it, or over it
 */
record Deciding(
    String what, String actual, String limit, OptionalDouble margin, String word, String missed) {
  private static final String SHORT = "short by ";
  private static final String OVER = "over by ";

  /** From here on nobody needs to know how much is left. */
  private static final double LARGE = 0.5;

  /** Something that must reach a limit. */
  static Deciding atLeast(String what, String shown, double actual, String limit, double least) {
    return new Deciding(what, shown, limit, OptionalDouble.of(actual / least - 1), "", SHORT);
  }

  /** Something that must stay below a limit. */
  static Deciding atMost(String what, String shown, double actual, String limit, double most) {
    return new Deciding(what, shown, limit, OptionalDouble.of(1 - actual / most), "", OVER);
  }

  /** Something that a number alone does not judge. */
  static Deciding said(String what, String shown, String limit, String word) {
    return new Deciding(what, shown, limit, OptionalDouble.empty(), word, "");
  }

  /** Something that a number alone does not judge, and that is not as it should be. */
  static Deciding amiss(String what, String shown, String limit, String word) {
    return new Deciding(what, shown, limit, OptionalDouble.of(-1e-3), word, "");
  }

  /** The same of one of several lines. */
  Deciding of(String line) {
    return new Deciding(line + ", " + what, actual, limit, margin, word, missed);
  }

  /** How close it is: what is not kept first, what is no matter of a margin last. */
  double closeness() {
    return margin.orElse(Double.POSITIVE_INFINITY);
  }

  /** Whether nobody needs to know how much is left. */
  boolean isLarge() {
    return margin.orElse(0) > LARGE;
  }

  String marginText() {
    if (margin.isEmpty() || !word.isEmpty()) {
      return word;
    }
    if (isLarge()) {
      return "large";
    }
    double share = margin.getAsDouble();
    long percent = (long) Math.floor(100 * share + 1e-9);
    return share < 0
        ? missed + String.format(Locale.ROOT, "%d %%", Math.max(1, -percent))
        : String.format(Locale.ROOT, "%d %%", percent);
  }
}
