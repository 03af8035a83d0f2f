package sandslurry.pump.derating;

import java.util.List;
import java.util.OptionalDouble;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Estimate;
import sandslurry.correlation.Published;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.Slurry;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;

/**
 * Derating of centrifugal pumps by solids, after Gahlot, Seshadri and Malhotra.
 *
 * <pre>HR = 1 − 0.00056 (S − 1)^0.72 (1 + 3/S) Cw ln(50 d50)</pre>
 *
 * <p>HR head ratio; S relative density of the solids; Cw mass of solids in the mixture [%]; d50
 * median size [mm]. The efficiency ratio is taken equal to the head ratio.
 *
 * <p>At d50 = 0.02 mm the derating is zero; for finer solids the ratio is 1 and the size is
 * reported as out of range, as for {@link Cave1976}.
 */
final class Gahlot1992 extends Published implements SolidsDerating {
  private static final Bound SIZE =
      new Bound("median size d50", Kind.GRAIN, 2e-5, Double.POSITIVE_INFINITY);

  private static final Citation SOURCE =
      new Citation(
              "Gahlot, Seshadri and Malhotra", 1992, "Journal of Fluids Engineering 114:475-479")
          .fromMemory("coefficients");
  private static final Equation HEAD_RATIO =
      SOURCE.equation(
          "HR_G",
          "head with sand over head without",
          "1 - 0.00056 (s - 1)^0.72 (1 + 3/s) (100 C_w) max(0, ln(50 d50[mm]))",
          Kind.NUMBER,
          "s, C_w, d50 m");

  Gahlot1992() {
    super("gahlot-1992", "Gahlot, Seshadri and Malhotra", SOURCE, List.of(SIZE), HEAD_RATIO);
  }

  @Override
  public Estimate headRatio(Slurry slurry, OptionalDouble impellerDiameterM, Trace trace) {
    double s = slurry.densityRatio();
    double size = Math.log(50 * InUnit.MILLIMETRE.of(slurry.d50M()));
    double mass = SolidsDeratings.massFraction(slurry, trace);
    double massPercent = InUnit.PERCENT.of(mass);
    double reduction =
        size > 0 ? 0.00056 * Math.pow(s - 1, 0.72) * (1 + 3 / s) * massPercent * size : 0;
    return Estimate.checks()
        .check(SIZE, slurry.d50M())
        .value(trace.step(HEAD_RATIO, 1 - reduction, s, mass, slurry.d50M()));
  }
}
