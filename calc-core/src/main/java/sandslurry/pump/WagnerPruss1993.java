package sandslurry.pump;

import java.util.List;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Correlation;
import sandslurry.correlation.Estimate;
import sandslurry.units.Kind;

/**
 * Vapour pressure of water, after Wagner and Pruss, as adopted by IAPWS.
 *
 * <pre>ln(p/pc) = (Tc/T) (a1 τ + a2 τ^1.5 + a3 τ³ + a4 τ^3.5 + a5 τ⁴ + a6 τ^7.5)</pre>
 *
 * <p>T absolute temperature [K]; Tc = 647.096 K; pc = 22.064 MPa; τ = 1 − T/Tc. It serves for
 * manure liquor too, whose dissolved matter lowers the vapour pressure a little; gas that comes out
 * of digesting manure is another matter and can make a pump lose prime at pressures far above it.
 */
public final class WagnerPruss1993 implements Correlation {
  private static final double CRITICAL_K = 647.096;
  private static final double CRITICAL_PA = 22.064e6;
  private static final double[] COEFFICIENTS = {
    -7.85951783, 1.84408259, -11.7866497, 22.6807411, -15.9618719, 1.80122502
  };
  private static final double[] EXPONENTS = {1, 1.5, 3, 3.5, 4, 7.5};
  private static final Bound TEMPERATURE =
      new Bound("temperature", Kind.TEMPERATURE, 273.16, CRITICAL_K);

  /**
   * Vapour pressure.
   *
   * @param temperatureK temperature, above 0 and at most the critical one [K]
   * @return absolute pressure [Pa], and what lay outside the published range
   */
  public Estimate pressurePa(double temperatureK) {
    if (!(temperatureK > 0 && temperatureK <= CRITICAL_K)) {
      throw new IllegalArgumentException(
          "water has a vapour pressure above 0 K and up to "
              + CRITICAL_K
              + " K, not at "
              + temperatureK
              + " K");
    }
    double tau = 1 - temperatureK / CRITICAL_K;
    double sum = 0;
    for (int i = 0; i < COEFFICIENTS.length; i++) {
      sum += COEFFICIENTS[i] * Math.pow(tau, EXPONENTS[i]);
    }
    return Estimate.checks()
        .check(TEMPERATURE, temperatureK)
        .value(CRITICAL_PA * Math.exp(CRITICAL_K / temperatureK * sum));
  }

  @Override
  public String id() {
    return "wagner-pruss-1993";
  }

  @Override
  public String name() {
    return "Wagner and Pruss";
  }

  @Override
  public String equation() {
    return "ln(p/pc) = (Tc/T) (a1 t + a2 t^1.5 + a3 t^3 + a4 t^3.5 + a5 t^4 + a6 t^7.5)";
  }

  @Override
  public Citation citation() {
    return new Citation(
        "Wagner and Pruss", 1993, "Journal of Physical and Chemical Reference Data 22:783-787");
  }

  @Override
  public List<Bound> range() {
    return List.of(TEMPERATURE);
  }
}
