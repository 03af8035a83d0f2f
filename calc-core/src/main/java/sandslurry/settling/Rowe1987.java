package sandslurry.settling;

import java.util.List;
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
 * 2.34 for turbulent. A print of the formula with 2(2.35 + 0.175 Re^0.75) in the numerator tends to
 * 2.0 and contradicts the data of Richardson and Zaki (2.39); it is not used.
 */
public final class Rowe1987 implements HinderedSettling {
  private static final Bound CONCENTRATION =
      new Bound("volume fraction of sand", Kind.PERCENT, 0, 0.4);

  @Override
  public Estimate exponent(double reynoldsNumber, double volumeFraction) {
    double power = Math.pow(reynoldsNumber, 0.75);
    return Estimate.checks()
        .check(CONCENTRATION, volumeFraction)
        .value((4.7 + 0.41 * power) / (1 + 0.175 * power));
  }

  @Override
  public String id() {
    return "rowe-1987";
  }

  @Override
  public String name() {
    return "Rowe's curve for Richardson and Zaki";
  }

  @Override
  public String equation() {
    return "n = (4.7 + 0.41 Re^0.75) / (1 + 0.175 Re^0.75)";
  }

  @Override
  public Citation citation() {
    return new Citation(
        "Rowe", 1987, "Chemical Engineering Science 42:2795; coefficients from memory, unverified");
  }

  @Override
  public List<Bound> range() {
    return List.of(CONCENTRATION);
  }
}
