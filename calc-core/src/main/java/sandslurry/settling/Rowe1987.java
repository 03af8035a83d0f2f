package sandslurry.settling;

import sandslurry.correlation.Citation;

/**
 * Exponent of hindered settling as one smooth curve through the steps of Richardson and Zaki, after
 * Rowe.
 *
 * <pre>n = (4.7 + 0.41 Re^0.75) / (1 + 0.175 Re^0.75)</pre>
 *
 * <p>Re = w d / ν with w the velocity of one grain falling alone. Limits: 4.7 for creeping flow,
 * 2.34 for turbulent. The same curve is printed as 2.35 (2 + 0.175 Re^0.75) / (1 + 0.175 Re^0.75),
 * for example in the documentation of the open coastal model XBeach. A print with 2 (2.35 + 0.175
 * Re^0.75) in the numerator tends to 2.0 and contradicts the data of Richardson and Zaki (2.39); it
 * is not used. The range of Re, to 30 000, is as given in an open flow code. Irregular grains have
 * an n that is 10 to 20 % higher (common practice, no source).
 */
public final class Rowe1987 extends HinderedSettling {
  private static final Citation SOURCE =
      new Citation(
          "Rowe",
          1987,
          "Chemical Engineering Science 42:2795; coefficients as used in open flow codes");

  /** Creates the correlation; it has no state. */
  public Rowe1987() {
    super(
        "rowe-1987",
        "Rowe's curve for Richardson and Zaki",
        SOURCE,
        3e4,
        "(4.7 + 0.41 Re_p^0.75) / (1 + 0.175 Re_p^0.75)");
  }

  @Override
  double exponent(double reynoldsNumber) {
    double root = Math.sqrt(reynoldsNumber);
    double power = root * Math.sqrt(root);
    return (4.7 + 0.41 * power) / (1 + 0.175 * power);
  }
}
