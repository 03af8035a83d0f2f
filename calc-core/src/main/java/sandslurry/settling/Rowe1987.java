package sandslurry.settling;

import java.util.List;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Estimate;
import sandslurry.correlation.Published;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
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
public final class Rowe1987 extends Published implements HinderedSettling {
  private static final Bound REYNOLDS = new Bound("Reynolds number", Kind.NUMBER, 0, 3e4);

  private static final Citation SOURCE =
      new Citation(
          "Rowe",
          1987,
          "Chemical Engineering Science 42:2795; coefficients as used in open flow codes");
  private static final Equation N =
      SOURCE.equation(
          "n",
          "exponent of hindered settling",
          "(4.7 + 0.41 Re_p^0.75) / (1 + 0.175 Re_p^0.75)",
          Kind.NUMBER,
          "Re_p");

  /** Creates the correlation; it has no state. */
  public Rowe1987() {
    super(
        "rowe-1987",
        "Rowe's curve for Richardson and Zaki",
        SOURCE,
        List.of(REYNOLDS, Crowd.CONCENTRATION),
        N);
  }

  @Override
  public Estimate exponent(double reynoldsNumber, double volumeFraction, Trace trace) {
    Crowd.require(reynoldsNumber, volumeFraction);
    double root = Math.sqrt(reynoldsNumber);
    double power = root * Math.sqrt(root);
    return Estimate.checks()
        .check(REYNOLDS, reynoldsNumber)
        .check(Crowd.CONCENTRATION, volumeFraction)
        .value(trace.step(N, (4.7 + 0.41 * power) / (1 + 0.175 * power), reynoldsNumber));
  }
}
