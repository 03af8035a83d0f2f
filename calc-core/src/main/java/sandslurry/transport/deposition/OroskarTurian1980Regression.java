package sandslurry.transport.deposition;

import sandslurry.correlation.Citation;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.Slurry;
import sandslurry.pipe.Bore;
import sandslurry.units.Kind;

/**
 * Critical velocity by the regression that Oroskar and Turian made of about 360 measurements.
 *
 * <pre>
 * V/√(g d (s − 1)) = 1.85 C^0.1536 (1 − C)^0.3564 (D/d)^0.378 Re^0.09 χ^0.30
 * Re = D √(g d (s − 1)) / ν
 * </pre>
 *
 * <p>Symbols and limit as in {@link OroskarTurian1980Analytic}; χ = 0.96. The exponent of 1 − C is
 * 0.3564 in some prints and 0.3567 in others, which is of no consequence. Root mean square error 22
 * to 26 % (from memory, unverified). The limits of range given are those within which the formula
 * is used here, not published ones; at C = 0 it is 0.
 */
final class OroskarTurian1980Regression extends DepositionVelocityModel {
  private static final double EDDIES = Math.pow(OroskarTurian1980Analytic.EDDY_SHARE, 0.3);

  private static final Citation SOURCE =
      new Citation(
          "Oroskar and Turian",
          1980,
          "AIChE Journal 26:550-558; read in Poloski et al. (2009), PNNL-17639");
  private static final Equation V =
      SOURCE.equation(
          "V_OT",
          "deposition velocity by Oroskar and Turian",
          "1.85 C^0.1536 (1 - C)^0.3564 (D/d)^0.378 (D sqrt(g d (s - 1))/nu)^0.09 0.96^0.30 sqrt(g"
              + " d (s - 1))",
          Kind.VELOCITY,
          "C, D m, d m, s, nu m2/s");

  OroskarTurian1980Regression() {
    super(
        "oroskar-turian-1980-regression",
        "Oroskar and Turian, regression",
        Limit.FULL_SUSPENSION,
        SOURCE,
        OroskarTurian1980Analytic.WITHIN,
        V);
  }

  @Override
  double valueMps(Slurry slurry, Bore bore, Trace trace) {
    double c = slurry.volumeFraction();
    return valueMps(slurry, c, bore, trace);
  }

  /** The velocity at a concentration [m/s]. */
  static double valueMps(Slurry slurry, double c, Bore bore, Trace trace) {
    double value = crowding(c) * aloneMps(slurry, slurry.d50M(), bore);
    return trace.step(
        V,
        value,
        c,
        bore.diameterM(),
        slurry.d50M(),
        slurry.densityRatio(),
        slurry.liquid().kinematicViscosityM2ps());
  }

  /** What of the velocity is of the concentration: C^0.1536 (1 − C)^0.3564. */
  static double crowding(double c) {
    return Math.pow(c, 0.1536) * Math.pow(1 - c, 0.3564);
  }

  /** The rest of it, of the size, the pipe and the liquid [m/s]. */
  static double aloneMps(Slurry slurry, double sizeM, Bore bore) {
    double grainMps = OroskarTurian1980Analytic.grainScaleMps(slurry, sizeM);
    return 1.85
        * Math.pow(bore.diameterM() / sizeM, 0.378)
        * Math.pow(VelocityScale.reynolds(slurry, bore, grainMps), 0.09)
        * EDDIES
        * grainMps;
  }
}
