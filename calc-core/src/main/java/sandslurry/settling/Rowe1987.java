package sandslurry.settling;

import java.util.List;
import sandslurry.correlation.About;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Estimate;
import sandslurry.units.Kind;

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
public final class Rowe1987 implements HinderedSettling {
  private static final Bound REYNOLDS = new Bound("Reynolds number", Kind.NUMBER, 0, 3e4);

  private static final About ABOUT =
      new About(
          "rowe-1987",
          "Rowe's curve for Richardson and Zaki",
          "n = (4.7 + 0.41 Re^0.75) / (1 + 0.175 Re^0.75)",
          new Citation(
              "Rowe",
              1987,
              "Chemical Engineering Science 42:2795; coefficients as used in open flow codes"),
          List.of(REYNOLDS, Crowd.CONCENTRATION));

  /** Creates the correlation; it has no state. */
  public Rowe1987() {}

  @Override
  public Estimate exponent(double reynoldsNumber, double volumeFraction) {
    Crowd.require(reynoldsNumber, volumeFraction);
    double power = Math.pow(reynoldsNumber, 0.75);
    return Estimate.checks()
        .check(REYNOLDS, reynoldsNumber)
        .check(Crowd.CONCENTRATION, volumeFraction)
        .value((4.7 + 0.41 * power) / (1 + 0.175 * power));
  }

  @Override
  public About about() {
    return ABOUT;
  }
}
