package sandslurry.correlation;

import sandslurry.fact.step.Equation;
import sandslurry.units.Kind;

/**
 * Where a correlation or a datum was published.
 *
 * @param authors the authors' names
 * @param year the year of publication
 * @param where journal, volume and page, or book and publisher, and anything a reader must know of
 *     how well the text is known, such as "coefficients from memory, unverified"
 */
public record Citation(String authors, int year, String where) {

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
    return authors + " (" + year + "), " + where;
  }
}
