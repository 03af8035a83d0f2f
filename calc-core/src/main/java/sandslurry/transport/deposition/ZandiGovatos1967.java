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
 * The change from saltation to heterogeneous flow after Zandi and Govatos, at an index of 40.
 *
 * <pre>N = V² √C_D / (C g D (s − 1)) = 40,  V = √(40 C g D (s − 1) / √C_D)</pre>
 *
 * <p>V velocity of the change [m/s]; C_D drag coefficient of a grain of size d50 falling alone; C
 * volume fraction; g gravity [m/s²]; D bore [m]; s density of sand over density of carrier.
 *
 * <p>This is a change of regime, not a deposit, and it grows as √C: useless below 3 % and too high
 * above 15 %, which are taken as limits of range here (they are not published ones).
 */
final class ZandiGovatos1967 extends DepositionVelocityModel {
  private static final double INDEX = 40;

  private static final Citation SOURCE =
      new Citation(
              "Zandi and Govatos", 1967, "Journal of the Hydraulics Division, ASCE 93(HY3):145")
          .fromMemory("index");
  private static final Equation V =
      SOURCE.equation(
          "V",
          "deposition velocity by Zandi and Govatos",
          "sqrt(40 C g D (s - 1) / sqrt(C_D))",
          Kind.VELOCITY,
          "C, D m, s, C_D");

  ZandiGovatos1967() {
    super(
        "zandi-govatos-1967",
        "Zandi and Govatos",
        Limit.SALTATION,
        SOURCE,
        Within.OWN.fraction(0.03, 0.15),
        V);
  }

  @Override
  double valueMps(Slurry slurry, Bore bore, Trace trace) {
    double drag = SettlingVelocities.dragCoefficient(slurry.d50Grain(), slurry.liquid(), trace);
    double weight = Physics.GRAVITY * bore.diameterM() * (slurry.densityRatio() - 1);
    return trace.step(
        V,
        Math.sqrt(INDEX * slurry.volumeFraction() * weight / Math.sqrt(drag)),
        slurry.volumeFraction(),
        bore.diameterM(),
        slurry.densityRatio(),
        drag);
  }
}
