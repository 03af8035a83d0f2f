package sandslurry.pump.suction;

import java.util.List;
import sandslurry.correlation.About;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Correlation;
import sandslurry.correlation.Estimate;
import sandslurry.correlation.Physics;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.units.Kind;

/**
 * Air pressure by altitude in the standard atmosphere.
 *
 * <pre>p = p0 (1 − β h / T0)^(g / (R β))</pre>
 *
 * <p>p0 = 101 325 Pa; T0 = 288.15 K; β = 0.0065 K/m; R = 287.05287 J/(kg K), the specific gas
 * constant of air; h geopotential altitude [m], which below 3 km differs from the height above sea
 * level by less than 0.05 %. The weather moves the true pressure by some 3 % either way; a careful
 * suction design takes that off.
 */
public final class StandardAtmosphere implements Correlation {
  private static final double LAPSE_KPM = 0.0065;
  private static final double SEA_LEVEL_K = 288.15;
  private static final double GAS_CONSTANT = 287.05287;
  private static final double TROPOPAUSE_M = 11000;
  private static final Bound ALTITUDE = new Bound("altitude", Kind.LENGTH, -2000, TROPOPAUSE_M);

  private static final Citation SOURCE =
      new Citation("International Organization for Standardization", 1975, "ISO 2533");
  private static final Equation PRESSURE =
      SOURCE.equation(
          "p_air",
          "air pressure",
          "101325 (1 - 0.0065 h / 288.15)^(g/(287.05287 * 0.0065))",
          Kind.PRESSURE,
          "h m");

  private static final About ABOUT =
      new About("iso-2533", "Standard atmosphere", SOURCE, List.of(ALTITUDE), PRESSURE);

  /**
   * Absolute air pressure.
   *
   * @param altitudeM altitude above sea level, below 44 km, where the formula ends [m]
   * @return the pressure [Pa], and what lay outside the range
   */
  public Estimate pressurePa(double altitudeM) {
    return pressurePa(altitudeM, Trace.NONE);
  }

  /**
   * The same with its step.
   *
   * @param altitudeM altitude [m]
   * @param trace what keeps the step
   * @return the pressure [Pa], and what lay outside the range
   */
  public Estimate pressurePa(double altitudeM, Trace trace) {
    double ratio = 1 - LAPSE_KPM * altitudeM / SEA_LEVEL_K;
    if (!(ratio > 0) || Double.isInfinite(ratio)) {
      throw new IllegalArgumentException(
          "the standard atmosphere has no pressure at an altitude of " + altitudeM + " m");
    }
    double exponent = Physics.GRAVITY / (GAS_CONSTANT * LAPSE_KPM);
    return Estimate.checks()
        .check(ALTITUDE, altitudeM)
        .value(trace.step(PRESSURE, Physics.ATMOSPHERE_PA * Math.pow(ratio, exponent), altitudeM));
  }

  @Override
  public About about() {
    return ABOUT;
  }
}
