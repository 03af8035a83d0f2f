package sandslurry.material;

import java.util.List;
import sandslurry.correlation.About;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Correlation;
import sandslurry.correlation.Estimate;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.units.Kind;

/**
 * How much suspended fines thicken a liquid, after Thomas.
 *
 * <pre>μ_r = 1 + 2.5 C + 10.05 C² + 0.00273 (exp(16.6 C) − 1)</pre>
 *
 * <p>μ_r viscosity of the suspension over viscosity of the liquid; C volume of grains over volume
 * of suspension. Published range C up to 0.6, grains of 0.1 to 435 µm; beyond, the fit has no data
 * and grains begin to lock.
 *
 * <p>Published without the − 1, so that C = 0 gives 1.00273. It is subtracted here so that a liquid
 * without grains keeps its viscosity; the result is less than the published one by 0.27 % at most.
 *
 * <p>Meant for fines only. Coarse sand settles and is carried as a load; it must not be counted
 * into the viscosity of its carrier.
 */
public final class Thomas1965 implements Correlation {
  private static final Bound FRACTION = new Bound("volume fraction of fines", Kind.PERCENT, 0, 0.6);

  private static final Citation SOURCE =
      new Citation(
          "Thomas",
          1965,
          "Journal of Colloid Science 20:267; coefficients as also used by the mixture viscosity"
              + " model \"slurry\" of the general-purpose library OpenFOAM");
  private static final Equation RELATIVE =
      SOURCE.equation(
          "mu_r",
          "viscosity with fines over that without",
          "1 + 2.5 C_f + 10.05 C_f^2 + 0.00273 (exp(16.6 C_f) - 1)",
          Kind.NUMBER,
          "C_f");

  private static final About ABOUT =
      new About("thomas-1965", "Thomas", SOURCE, List.of(FRACTION), RELATIVE);

  /**
   * Relative viscosity of a suspension.
   *
   * @param volumeFraction volume of grains over volume of suspension, 0 to 1
   * @return viscosity of the suspension over that of the liquid, and what lay outside the range
   */
  public Estimate relativeViscosity(double volumeFraction) {
    return relativeViscosity(volumeFraction, Trace.NONE);
  }

  /**
   * The same with its step.
   *
   * @param volumeFraction volume fraction of the fines
   * @param trace what keeps the step
   * @return the relative viscosity, and what lay outside the range
   */
  public Estimate relativeViscosity(double volumeFraction, Trace trace) {
    if (!(volumeFraction >= 0 && volumeFraction <= 1)) {
      throw new IllegalArgumentException(
          "a volume fraction lies in 0 to 1 but was " + volumeFraction);
    }
    double c = volumeFraction;
    double crowding = 0.00273 * Math.expm1(16.6 * c);
    return Estimate.checks()
        .check(FRACTION, c)
        .value(trace.step(RELATIVE, 1 + 2.5 * c + 10.05 * c * c + crowding, c));
  }

  @Override
  public About about() {
    return ABOUT;
  }
}
