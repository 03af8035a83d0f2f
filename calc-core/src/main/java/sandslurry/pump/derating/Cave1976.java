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
 * Derating of centrifugal pumps by solids, after Cave.
 *
 * <pre>HR = 1 − 0.0385 (S − 1) (1 + 4/S) Cw ln(d50 / 0.0227 mm)</pre>
 *
 * <p>HR head ratio; S relative density of the solids; Cw mass fraction of solids in the mixture;
 * d50 median size [mm]. The efficiency ratio equals the head ratio up to Cw = 0.20; beyond, the
 * efficiency falls further than the formula says.
 *
 * <p>The size of the impeller does not appear: small pumps lose more than the formula says, large
 * ones less. At d50 = 0.0227 mm the derating is zero; for finer solids the formula would give more
 * head with solids than without, so the ratio is 1 there and the size is reported as out of range.
 */
final class Cave1976 extends Published implements SolidsDerating {
  private static final double ZERO_SIZE_MM = 0.0227;
  private static final Bound SIZE =
      new Bound("median size d50", Kind.GRAIN, 2.27e-5, Double.POSITIVE_INFINITY);
  private static final Bound CONCENTRATION =
      new Bound("mass fraction of sand for the efficiency", Kind.PERCENT, 0, 0.2);

  private static final Citation SOURCE =
      new Citation(
              "Cave",
              1976,
              "Effects of suspended solids on the performance of centrifugal pumps, Hydrotransport"
                  + " 4, paper H3")
          .fromMemory("coefficients");
  private static final Equation HEAD_RATIO =
      SOURCE.equation(
          "HR_C",
          "head with sand over head without",
          "1 - 0.0385 (s - 1) (1 + 4/s) C_w max(0, ln(d50[mm]/0.0227))",
          Kind.NUMBER,
          "s, C_w, d50 m");

  Cave1976() {
    super("cave-1976", "Cave", SOURCE, List.of(SIZE, CONCENTRATION), HEAD_RATIO);
  }

  @Override
  public Estimate headRatio(Slurry slurry, OptionalDouble impellerDiameterM, Trace trace) {
    double mass = SolidsDeratings.massFraction(slurry, trace);
    double ratio =
        trace.step(HEAD_RATIO, 1 - reduction(slurry), slurry.densityRatio(), mass, slurry.d50M());
    return Estimate.checks().check(SIZE, slurry.d50M()).value(ratio);
  }

  @Override
  public Estimate efficiencyRatio(Slurry slurry, OptionalDouble impellerDiameterM) {
    return Estimate.checks()
        .check(SIZE, slurry.d50M())
        .check(CONCENTRATION, SolidsDeratings.massFraction(slurry))
        .value(1 - reduction(slurry));
  }

  private static double reduction(Slurry slurry) {
    double s = slurry.densityRatio();
    double size = Math.log(InUnit.MILLIMETRE.of(slurry.d50M()) / ZERO_SIZE_MM);
    return size > 0
        ? 0.0385 * (s - 1) * (1 + 4 / s) * SolidsDeratings.massFraction(slurry) * size
        : 0;
  }
}
