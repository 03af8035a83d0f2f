package sandslurry.correlation;

import java.util.List;

/**
 * What is to be known of a published correlation.
 *
 * @param id a stable key for files: "oroskar-turian-1980"
 * @param name the name shown to people: "Oroskar and Turian, analytic"
 * @param equation the equation as one line of plain text, right-hand side included, with the
 *     symbols that the Javadoc explains
 * @param citation the original publication
 * @param bounds the limits of each input that the publication, or our use of it, restricts
 */
public record About(
    String id, String name, String equation, Citation citation, List<Bound> bounds) {
  /** Copies the list. */
  public About {
    bounds = List.copyOf(bounds);
  }
}
