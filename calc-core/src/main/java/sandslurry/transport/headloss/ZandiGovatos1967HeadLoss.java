package sandslurry.transport.headloss;

import java.util.List;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Estimate.Checks;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.Slurry;
import sandslurry.pipe.Bore;
import sandslurry.transport.friction.ClearLiquid;
import sandslurry.units.Kind;

/**
 * Friction of a heterogeneous sand slurry after Zandi and Govatos, who refitted the form of Durand
 * to a larger collection of data.
 *
 * <pre>
 * im = iw (1 + C Φ),   ψ = V² √C_D / [g D (s − 1)]
 * Φ = 280 ψ^−1.93 for ψ up to 10,   Φ = 6.30 ψ^−0.354 beyond
 * </pre>
 *
 * <p>Symbols as in {@link DurandCondolios1952}. As printed, Φ falls in a step from 3.29 to 2.79 at
 * ψ = 10; the class takes the larger of the two branches, which meet at ψ = 11.1, so that the curve
 * has no step and errs to the safe side between 10 and 11.1.
 *
 * <p>Range: only flow without saltation, N = ψ/C ≥ 40. Below that the value is too low or without
 * meaning. Without sand it is the clear liquid exactly.
 */
final class ZandiGovatos1967HeadLoss extends HeadLossModel {
  private static final Bound INDEX =
      new Bound(
          "index number V^2 sqrt(C_D) / [C g D (s - 1)]",
          Kind.NUMBER,
          40,
          Double.POSITIVE_INFINITY);

  private static final Citation SOURCE =
      new Citation(
              "Zandi and Govatos", 1967, "Journal of the Hydraulics Division ASCE 93(HY3):145-159")
          .fromMemory("coefficients");
  private static final Equation GRADIENT =
      SOURCE.equation(
          "i_m",
          "gradient with sand, metres of carrier per metre",
          "i_f (1 + C max(280 psi^-1.93, 6.30 psi^-0.354))",
          Kind.NUMBER,
          "i_f, C, psi");

  ZandiGovatos1967HeadLoss() {
    super(
        "zandi-govatos-1967",
        "Zandi and Govatos",
        SOURCE,
        List.of(ClearLiquid.TURBULENT, INDEX),
        GRADIENT,
        DurandCondolios1952.PSI);
  }

  @Override
  double gradient(
      Slurry slurry, Bore bore, double velocityMps, ClearLiquid clear, Checks checks, Trace trace) {
    double concentration = slurry.volumeFraction();
    double psi = DurandCondolios1952.psi(slurry.d50Grain(), slurry, bore, velocityMps, trace);
    double excess = Math.max(280 * Math.pow(psi, -1.93), 6.30 * Math.pow(psi, -0.354));
    checks.check(INDEX, psi / concentration);
    return trace.step(
        GRADIENT,
        clear.gradient() * (1 + concentration * excess),
        clear.gradient(),
        concentration,
        psi);
  }
}
