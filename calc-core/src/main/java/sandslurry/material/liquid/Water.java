package sandslurry.material.liquid;

import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/**
 * Liquid water at atmospheric pressure.
 *
 * <p>Density and viscosity by the equations of IAPWS SR6-08(2011), "Revised Supplementary Release
 * on Properties of Liquid Water at 0.1 MPa", which is Pátek, Hrubý, Klomfar, Součková and Harvey
 * (2009):
 *
 * <pre>
 * 1/ρ = (R T_R / p₀) (a₅ + Σ aᵢ α^nᵢ + Σ bᵢ β^mᵢ),  α = T_R/(T_a − T),  β = T_R/(T − T_b)
 * μ   = 10⁻⁶ Σ aᵢ (T / 300)^bᵢ
 * </pre>
 *
 * <p>T temperature [K]; ρ density [kg/m³]; μ dynamic viscosity [Pa.s]; R = 461.518 05 J/(kg K); T_R
 * = 10 K; T_a = 593 K; T_b = 232 K; p₀ = 100 000 Pa. Published range 253.15 K to 383.15 K at 0.1
 * MPa. That the standard atmosphere is 1325 Pa more than 0.1 MPa makes the water denser by less
 * than one part in a million.
 *
 * <p>Vapour pressure by the saturation-pressure equation of the IAPWS Industrial Formulation 1997,
 * region 4, published range 273.15 K to 647.096 K.
 *
 * <p>The coefficients were taken from public implementations of the two releases; each set was seen
 * in at least two of them or gives the check values that the release prints.
 *
 * <p>Answers are given from the ice point to the normal boiling point, where water at atmospheric
 * pressure is a liquid; outside, the question is refused.
 */
public final class Water {
  /** The ice point, below which water freezes [K]. */
  static final double LOWEST_K = 273.15;

  /** The steam point, above which water boils at the standard atmosphere [K]. */
  static final double HIGHEST_K = 373.15;

  private static final double GAS_CONSTANT = 461.51805;
  private static final double REFERENCE_K = 10;
  private static final double REFERENCE_PA = 1e5;
  private static final double UPPER_K = 593;
  private static final double LOWER_K = 232;
  private static final double VOLUME_CONSTANT = 1.93763157e-2;
  private static final double[][] VOLUME_ALPHA = {
    {6.74458446e3, 4},
    {-2.22521604e5, 5},
    {1.00231247e8, 7},
    {-1.63552118e9, 8},
    {8.32299658e9, 9}
  };
  private static final double[][] VOLUME_BETA = {
    {5.78545292e-3, 1},
    {-1.53195665e-2, 2},
    {3.11337859e-2, 3},
    {-4.23546241e-2, 4},
    {3.38713507e-2, 5},
    {-1.19946761e-2, 6}
  };

  /** Coefficients in micropascal seconds, with their exponents. */
  private static final double[][] VISCOSITY = {
    {280.68, -1.9}, {511.45, -7.7}, {61.131, -19.6}, {0.45903, -40}
  };

  private static final double VISCOSITY_REFERENCE_K = 300;
  private static final double VISCOSITY_UNIT_PAS = 1e-6;

  private static final double[] SATURATION = {
    0.11670521452767e4,
    -0.72421316703206e6,
    -0.17073846940092e2,
    0.12020824702470e5,
    -0.32325550322333e7,
    0.14915108613530e2,
    -0.48232657361591e4,
    0.40511340542057e6,
    -0.23855557567849,
    0.65017534844798e3
  };
  private static final double SATURATION_UNIT_PA = 1e6;

  private Water() {}

  /**
   * Density at 0.1 MPa.
   *
   * @param temperatureK temperature [K]
   * @return density [kg/m3]
   * @throws IllegalArgumentException if water is not liquid at this temperature
   */
  public static double densityKgM3(double temperatureK) {
    double t = liquid(temperatureK);
    double alpha = REFERENCE_K / (UPPER_K - t);
    double beta = REFERENCE_K / (t - LOWER_K);
    double sum = VOLUME_CONSTANT;
    for (double[] term : VOLUME_ALPHA) {
      sum += term[0] * Math.pow(alpha, term[1]);
    }
    for (double[] term : VOLUME_BETA) {
      sum += term[0] * Math.pow(beta, term[1]);
    }
    return REFERENCE_PA / (GAS_CONSTANT * REFERENCE_K * sum);
  }

  /**
   * Dynamic viscosity at 0.1 MPa.
   *
   * @param temperatureK temperature [K]
   * @return dynamic viscosity [Pa.s]
   * @throws IllegalArgumentException if water is not liquid at this temperature
   */
  public static double viscosityPaS(double temperatureK) {
    double reduced = liquid(temperatureK) / VISCOSITY_REFERENCE_K;
    double sum = 0;
    for (double[] term : VISCOSITY) {
      sum += term[0] * Math.pow(reduced, term[1]);
    }
    return VISCOSITY_UNIT_PAS * sum;
  }

  /**
   * Vapour pressure.
   *
   * @param temperatureK temperature [K]
   * @return absolute pressure at which water of this temperature boils [Pa]
   * @throws IllegalArgumentException if water is not liquid at this temperature
   */
  public static double vapourPressurePa(double temperatureK) {
    double t = liquid(temperatureK);
    double[] n = SATURATION;
    double theta = t + n[8] / (t - n[9]);
    double a = (theta + n[0]) * theta + n[1];
    double b = (n[2] * theta + n[3]) * theta + n[4];
    double c = (n[5] * theta + n[6]) * theta + n[7];
    double root = 2 * c / (-b + Math.sqrt(b * b - 4 * a * c));
    return SATURATION_UNIT_PA * Math.pow(root, 4);
  }

  /**
   * Density and viscosity together.
   *
   * @param temperatureK temperature [K]
   * @return water as a Newtonian liquid
   * @throws IllegalArgumentException if water is not liquid at this temperature
   */
  public static Liquid at(double temperatureK) {
    return new Liquid(densityKgM3(temperatureK), viscosityPaS(temperatureK));
  }

  private static double liquid(double temperatureK) {
    if (!(temperatureK >= LOWEST_K && temperatureK <= HIGHEST_K)) {
      String given =
          Double.isFinite(temperatureK) ? inBothSystems(temperatureK) : "" + temperatureK;
      String reason =
          temperatureK < LOWEST_K
              ? "it freezes"
              : temperatureK > HIGHEST_K ? "it boils" : "there is no such temperature";
      throw new IllegalArgumentException(
          "water at atmospheric pressure is not liquid at "
              + given
              + ": "
              + reason
              + "; give a temperature from "
              + inBothSystems(LOWEST_K)
              + " to "
              + inBothSystems(HIGHEST_K));
    }
    return temperatureK;
  }

  private static String inBothSystems(double temperatureK) {
    return UnitSystem.METRIC.show(Kind.TEMPERATURE, temperatureK)
        + " ("
        + UnitSystem.US.show(Kind.TEMPERATURE, temperatureK)
        + ")";
  }
}
