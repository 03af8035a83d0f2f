package sandslurry.correlation;

import java.util.Optional;
import sandslurry.fact.step.Equation;
import sandslurry.units.Kind;

/**
 * Where a correlation or a datum was published.
 *
 * @param authors the authors' names
 * @param year the year of publication
 * @param where journal, volume and page, or book and publisher, and anything a reader must know of
 *     how well the text is known
 * @param remembered what decides its values and is from memory, unverified, such as "coefficients";
 *     empty when nothing is
 */
public record Citation(String authors, int year, String where, Optional<String> remembered) {
  /**
   * A publication of which nothing that decides its values is from memory.
   *
   * @param authors the authors' names
   * @param year the year of publication
   * @param where as above
   */
  public Citation(String authors, int year, String where) {
    this(authors, year, where, Optional.empty());
  }

  /**
   * The same publication, of which something that decides its values is from memory.
   *
   * @param what such as "coefficients"
   * @return the citation, which says so wherever it is printed
   */
  public Citation fromMemory(String what) {
    return new Citation(authors, year, where, Optional.of(what));
  }

  /**
   * What is to be known before its values are relied on.
   *
   * @return such as "coefficients from memory, unverified"; empty when there is nothing to say
   */
  public Optional<String> caveat() {
    return remembered.map(what -> what + " from memory, unverified");
  }

  /**
   * An equation of this publication, as {@link Equation#of}.
   *
   * @param symbol the symbol of the result
   * @param meaning the result in words
   * @param text the right-hand side
   * @param kind what the result is
   * @param inputs each symbol put in, with its SI unit
   * @return the equation
   */
  public Equation equation(
      String symbol, String meaning, String text, Kind<?> kind, String... inputs) {
    return Equation.of(symbol, meaning, text, kind, toString(), inputs);
  }

  @Override
  public String toString() {
    return authors + " (" + year + "), " + where + caveat().map(c -> "; " + c).orElse("");
  }
}
