package sandslurry.transport.deposition;

import sandslurry.correlation.Citation;
import sandslurry.correlation.Physics;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.Slurry;
import sandslurry.pipe.Bore;
import sandslurry.settling.SettlingVelocities;
import sandslurry.units.Kind;

/**
 * Limit of stationary deposition after Gillies, Schaan, Sumner, McKibben and Shook, an earlier form
 * from the laboratory of {@link GilliesShook}.
 *
 * <pre>
 * V = √(g D (s − 1)) exp[0.51 − 0.0073 C_D − 12.5 (K − 0.14)²],  K = (ν²/g)^(1/3) / d
 * </pre>
 *
 * <p>V deposition velocity [m/s]; g gravity [m/s²]; D bore [m]; s density of sand over density of
 * carrier; C_D drag coefficient of a grain of size d50 falling alone; ν kinematic viscosity of the
 * carrier [m²/s]; d grain size d50 [m].
 *
 * <p>Kept as a cross-check: with sand of 0.2 to 2 mm in water it agrees within 7 % with the later
 * form, which is the reason to trust both recollections of the coefficients. The limits of range
 * are that span, not published ones.
 */
final class Gillies2000 extends DepositionVelocityModel {

  private static final Citation SOURCE =
      new Citation(
              "Gillies, Schaan, Sumner, McKibben and Shook",
              2000,
              "Canadian Journal of Chemical Engineering 78:704-708")
          .fromMemory("coefficients");
  private static final Equation K =
      SOURCE.equation(
          "K", "number of viscosity and size", "(nu^2/g)^(1/3)/d", Kind.NUMBER, "nu m2/s, d m");
  private static final Equation V =
      SOURCE.equation(
          "V",
          "deposition velocity by Gillies and others",
          "sqrt(g D (s - 1)) exp(0.51 - 0.0073 C_D - 12.5 (K - 0.14)^2)",
          Kind.VELOCITY,
          "D m, s, C_D, K");

  Gillies2000() {
    super(
        "gillies-2000",
        "Gillies and others, 2000",
        Limit.STATIONARY_BED,
        SOURCE,
        Within.OWN.size(0.2e-3, 2e-3).and(GilliesShook.PIPE).likeWater(),
        V,
        K);
  }

  @Override
  double valueMps(Slurry slurry, Bore bore, Trace trace) {
    double nu = slurry.liquid().kinematicViscosityM2ps();
    double k = Math.cbrt(nu * nu / Physics.GRAVITY) / slurry.d50M();
    trace.step(K, k, nu, slurry.d50M());
    double drag = SettlingVelocities.dragCoefficient(slurry.d50Grain(), slurry.liquid(), trace);
    double froude = Math.exp(0.51 - 0.0073 * drag - 12.5 * (k - 0.14) * (k - 0.14));
    return trace.step(
        V,
        froude * VelocityScale.withoutTwoMps(slurry, bore),
        bore.diameterM(),
        slurry.densityRatio(),
        drag,
        k);
  }
}
