package sandslurry.correlation;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import sandslurry.fact.step.Equation;

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

  /**
   * A correlation whose equations are those of its working.
   *
   * @param id a stable key for files
   * @param name the name shown to people
   * @param citation the original publication
   * @param bounds the limits of each input
   * @param equations its equations, that of its value first
   */
  public About(
      String id, String name, Citation citation, List<Bound> bounds, Equation... equations) {
    this(
        id,
        name,
        Arrays.stream(equations).map(Equation::printed).collect(Collectors.joining("; ")),
        citation,
        bounds);
  }

  /**
   * The name, and what is to be known before its values are relied on.
   *
   * @return for example "Cave (coefficients from memory, unverified)"
   */
  public String nameWithCaveat() {
    return name + citation.caveat().map(caveat -> " (" + caveat + ")").orElse("");
  }
}
