package sandslurry.correlation;

import java.util.List;

/** What every member of a family of published correlations can tell of itself. */
public interface Correlation {
  /**
   * A stable key for files.
   *
   * @return for example "oroskar-turian-1980"
   */
  String id();

  /**
   * The name shown to people.
   *
   * @return for example "Oroskar and Turian, analytic"
   */
  String name();

  /**
   * The equation as one line of plain text, with the symbols that the Javadoc explains.
   *
   * @return the equation, right-hand side included
   */
  String equation();

  /**
   * The source.
   *
   * @return the original publication
   */
  Citation citation();

  /**
   * The published range.
   *
   * @return the limits of each input that the publication restricts
   */
  List<Bound> range();
}
