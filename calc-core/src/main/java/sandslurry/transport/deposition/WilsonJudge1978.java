package sandslurry.transport.deposition;

import sandslurry.correlation.Citation;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.Slurry;
import sandslurry.pipe.Bore;
import sandslurry.settling.SettlingVelocities;
import sandslurry.units.Kind;

/**
 * Deposition velocity of fine and medium sand after Wilson and Judge.
 *
 * <pre>V/√(2 g D (s − 1)) = 2.0 + 0.3 log10 [d/(D C_D)]</pre>
 *
 * <p>V deposition velocity [m/s]; g gravity [m/s²]; D bore [m]; s density of sand over density of
 * carrier; d grain size d50 [m]; C_D drag coefficient of a grain of that size falling alone.
 *
 * <p>Published for d/(D C_D) from 1e-5 to 1e-3, which in pipes of 75 to 300 mm is sand of about 0.1
 * to 0.4 mm. Below 2.2e-7, far outside, the formula has no positive value and 0 is given.
 */
final class WilsonJudge1978 extends DepositionVelocityModel {

  private static final Citation SOURCE =
      new Citation("Wilson and Judge", 1978, "Hydrotransport 5, BHRA, Hannover")
          .fromMemory("coefficients");
  private static final Equation V =
      SOURCE.equation(
          "V",
          "deposition velocity by Wilson and Judge",
          "max(0, 2.0 + 0.3 log10(d/(D C_D))) sqrt(2 g D (s - 1))",
          Kind.VELOCITY,
          "d m, D m, C_D, s");

  WilsonJudge1978() {
    super(
        "wilson-judge-1978",
        "Wilson and Judge",
        Limit.STATIONARY_BED,
        SOURCE,
        Within.PUBLISHED.and(
            "grain size over bore and drag coefficient",
            Kind.NUMBER,
            1e-5,
            1e-3,
            (sand, pipe, v) ->
                group(
                    sand,
                    pipe,
                    SettlingVelocities.dragCoefficient(sand.d50Grain(), sand.liquid()))),
        V);
  }

  @Override
  double valueMps(Slurry slurry, Bore bore, Trace trace) {
    double drag = SettlingVelocities.dragCoefficient(slurry.d50Grain(), slurry.liquid(), trace);
    double number = Math.max(0, 2.0 + 0.3 * Math.log10(group(slurry, bore, drag)));
    return trace.step(
        V,
        number * VelocityScale.durandMps(slurry, bore),
        slurry.d50M(),
        bore.diameterM(),
        drag,
        slurry.densityRatio());
  }

  private static double group(Slurry slurry, Bore bore, double drag) {
    return slurry.d50M() / (bore.diameterM() * drag);
  }
}
