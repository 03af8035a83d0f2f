package sandslurry.transport.deposition;

import sandslurry.correlation.Citation;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.Slurry;
import sandslurry.pipe.Bore;
import sandslurry.units.Kind;

/**
 * Critical velocity by the regression that Turian, Hsu and Ma made of 864 measurements.
 *
 * <pre>
 * V/√(2 g D (s − 1)) = 1.7951 C^0.1087 (1 − C)^0.2501 Re^0.00179 (d/D)^0.06623
 * Re = D √(g D (s − 1)) / ν
 * </pre>
 *
 * <p>V critical velocity [m/s]; C volume fraction; g gravity [m/s²]; D bore [m]; s density of sand
 * over density of carrier; ν kinematic viscosity of the carrier [m²/s]; d grain size d50 [m]. The
 * viscosity is practically absent, so the formula cannot tell water from thick liquor.
 *
 * <p>The limit is between a bed and full suspension. The limits of range given are those within
 * which the formula is used here, not published ones; at C = 0 it is 0.
 */
final class TurianHsuMa1987 extends DepositionVelocityModel {
  private static final Citation SOURCE =
      new Citation("Turian, Hsu and Ma", 1987, "Powder Technology 51:35-47")
          .fromMemory("coefficients");
  private static final Equation RE =
      SOURCE.equation(
          "Re",
          "Reynolds number of the bore scale",
          "D sqrt(g D (s - 1)) / nu",
          Kind.NUMBER,
          "D m, s, nu m2/s");
  private static final Equation V =
      SOURCE.equation(
          "V",
          "deposition velocity by Turian, Hsu and Ma",
          "1.7951 C^0.1087 (1 - C)^0.2501 Re^0.00179 (d/D)^0.06623 sqrt(2 g D (s - 1))",
          Kind.VELOCITY,
          "C, Re, d m, D m, s");

  TurianHsuMa1987() {
    super(
        "turian-hsu-ma-1987",
        "Turian, Hsu and Ma",
        Limit.FULL_SUSPENSION,
        SOURCE,
        OroskarTurian1980Analytic.WITHIN,
        V,
        RE);
  }

  @Override
  double valueMps(Slurry slurry, Bore bore, Trace trace) {
    double c = slurry.volumeFraction();
    double reynolds =
        VelocityScale.reynolds(slurry, bore, VelocityScale.withoutTwoMps(slurry, bore));
    trace.step(
        RE,
        reynolds,
        bore.diameterM(),
        slurry.densityRatio(),
        slurry.liquid().kinematicViscosityM2ps());
    double number =
        1.7951
            * Math.pow(c, 0.1087)
            * Math.pow(1 - c, 0.2501)
            * Math.pow(reynolds, 0.00179)
            * Math.pow(slurry.d50M() / bore.diameterM(), 0.06623);
    return trace.step(
        V,
        number * VelocityScale.durandMps(slurry, bore),
        c,
        reynolds,
        slurry.d50M(),
        bore.diameterM(),
        slurry.densityRatio());
  }
}
