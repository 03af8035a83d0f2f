package sandslurry.correlation;

import java.util.List;
import sandslurry.fact.step.Equation;

/** A published correlation, which says what is to be known of it where it is made. */
public abstract class Published implements Correlation {
  private final About about;

  /**
   * A correlation whose equations are those of its working.
   *
   * @param id a stable key for files
   * @param name the name shown to people
   * @param citation the original publication
   * @param bounds the limits of each input
   * @param equations its equations, that of its value first
   */
  protected Published(
      String id, String name, Citation citation, List<Bound> bounds, Equation... equations) {
    about = new About(id, name, citation, bounds, equations);
  }

  /**
   * A correlation whose equation is no step of its working.
   *
   * @param id a stable key for files
   * @param name the name shown to people
   * @param equation the equation as one line of plain text
   * @param citation the original publication
   * @param bounds the limits of each input
   */
  protected Published(
      String id, String name, String equation, Citation citation, List<Bound> bounds) {
    about = new About(id, name, equation, citation, bounds);
  }

  @Override
  public final About about() {
    return about;
  }
}
