package sandslurry.correlation;

/**
 * Where a correlation or a datum was published.
 *
 * @param authors the authors' names
 * @param year the year of publication
 * @param where journal, volume and page, or book and publisher, and anything a reader must know of
 *     how well the text is known, such as "coefficients from memory, unverified"
 */
public record Citation(String authors, int year, String where) {

  @Override
  public String toString() {
    return authors + " (" + year + "), " + where;
  }
}
