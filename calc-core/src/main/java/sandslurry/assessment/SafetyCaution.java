package sandslurry.assessment;

/**
 * A danger to people that comes with what the design contains.
 *
 * @param title the danger in a few words
 * @param text what to do and not to do
 * @param source where the advice comes from, or "common practice, no source"
 */
public record SafetyCaution(String title, String text, String source) {
  /** The title of the caution that a licensed practitioner must review the design. */
  public static final String REVIEW = "Review";
}
