package sandslurry.separation.channel;

import java.util.List;
import java.util.Locale;
import sandslurry.correlation.About;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Estimate;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;
import sandslurry.units.Kind;

/**
 * Scour of deposited grains by one critical Shields number for all sizes, after Camp.
 *
 * <pre>V = √(8 β (s − 1) g d / f)</pre>
 *
 * <p>V mean velocity [m/s]; β = 0.04 where uniform grains begin to move, 0.06 where sticky,
 * interlocking material is swept clean; s relative density of the grain; g gravity [m/s²]; d grain
 * size [m]; f Darcy friction factor, for which Camp took 0.02 to 0.03. It is the formula by which
 * horizontal grit chambers came to 0.3 m/s.
 *
 * <p>Source: Camp (1946), Transactions ASCE 111:895, as worked in Hendricks, Fundamentals of Water
 * Treatment Unit Processes, example 7.1.
 */
public final class CampScour1946 implements ScourModel {
  private static final Bound BETA = new Bound("Camp's beta", Kind.NUMBER, 0.04, 0.06);

  private static final Citation SOURCE =
      new Citation("Camp", 1946, "Transactions ASCE 111:895; seen in Hendricks, example 7.1");
  private static final Equation THETA =
      Equation.lookup(
          "theta",
          "Shields number of Camp, beta",
          "beta of granular sand",
          Kind.NUMBER,
          SOURCE.toString());

  private final double beta;

  /**
   * A criterion of given strictness.
   *
   * @param beta β, 0.04 for the first movement of uniform grains, 0.06 for full self-cleansing;
   *     between 0.01 and 1
   */
  public CampScour1946(double beta) {
    if (!(beta >= 0.01 && beta <= 1)) {
      throw new IllegalArgumentException("Camp's beta lies in 0.01 to 1 but was " + beta);
    }
    this.beta = beta;
  }

  @Override
  public Estimate shieldsNumber(Grain grain, Liquid liquid, Trace trace) {
    return Estimate.checks().check(BETA, beta).value(trace.step(THETA, beta));
  }

  @Override
  public About about() {
    return new About(
        String.format(Locale.ROOT, "camp-scour-1946-%.3g", beta),
        String.format(Locale.ROOT, "Camp, scour with beta = %.3g", beta),
        String.format(Locale.ROOT, "V = sqrt(8 beta (s - 1) g d / f), beta = %.3g", beta),
        SOURCE,
        List.of(BETA));
  }
}
