package sandslurry.separation.capture;

import java.util.List;
import java.util.Locale;
import sandslurry.correlation.About;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Estimate;

/**
 * Capture in a basin that behaves like several mixed basins in a row, after Hazen.
 *
 * <pre>η = 1 − (1 + w A / (N Q))^(−N)</pre>
 *
 * <p>η share caught; w settling velocity [m/s]; A plan area [m²]; Q flow [m³/s]; N number of equal
 * mixed basins, which need not be whole. Short-circuiting lowers N. Many texts give m = 1/N
 * instead. N = 1 is a very poor basin, 2 poor, 3 to 4 average, 5 to 8 good; N without limit is
 * {@link Vetter1940}. (A design sheet for the settling basin of a river intake calls m = 0.17 very
 * good and m = 0.5 good.)
 *
 * <p>Source: Hazen (1904), Transactions ASCE 53:45; equation and ratings from memory, checked
 * against the 14 values of that design sheet. No range is published.
 */
public final class HazenBasins implements CaptureRelation {
  private final double basins;

  /**
   * A basin of given quality.
   *
   * @param basins number N of equal mixed basins, positive
   */
  public HazenBasins(double basins) {
    if (!(basins > 0 && Double.isFinite(basins))) {
      throw new IllegalArgumentException("the number of basins must be > 0 but was " + basins);
    }
    this.basins = basins;
  }

  /**
   * A basin by the reciprocal notation.
   *
   * @param m 1/N, positive
   * @return the relation with N = 1/m
   */
  public static HazenBasins ofReciprocal(double m) {
    return new HazenBasins(1 / m);
  }

  @Override
  public Estimate fraction(BasinFlow flow, double settlingVelocityMps) {
    double fall = flow.fallNumber(settlingVelocityMps);
    return Estimate.checks().value(-Math.expm1(-basins * Math.log1p(fall / basins)));
  }

  @Override
  public About about() {
    return new About(
        String.format(Locale.ROOT, "hazen-basins-%.3g", basins),
        String.format(Locale.ROOT, "Hazen, %.3g mixed basins in a row", basins),
        String.format(Locale.ROOT, "eta = 1 - (1 + w A / (N Q))^(-N), N = %.3g", basins),
        new Citation("Hazen", 1904, "Transactions ASCE 53:45; from memory, unverified"),
        List.of());
  }
}
