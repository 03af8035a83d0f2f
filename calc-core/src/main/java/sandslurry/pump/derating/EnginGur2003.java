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
import sandslurry.units.Kind;

/**
 * Derating of centrifugal slurry pumps by solids, after Engin and Gur.
 *
 * <pre>HR = 1 − 2.705 Cw (S − 1)^0.64 (d50 / D)^0.313</pre>
 *
 * <p>HR head ratio; Cw mass fraction of solids in the mixture; S relative density of the solids;
 * d50 median size [m]; D diameter of the impeller [m]. The efficiency ratio is taken equal to the
 * head ratio.
 *
 * <p>The authors' abstract states impellers up to 850 mm, metal or rubber lined, and a mean
 * deviation of 8.4 % from all published head reductions collected and of 12.4 % from 216 efficiency
 * ratios, closer than every earlier form. For sizes and concentrations they give no limits that
 * could be checked.
 */
public final class EnginGur2003 extends Published implements SolidsDerating {
  private static final Bound IMPELLER =
      new Bound("impeller diameter", Kind.BORE, Double.NEGATIVE_INFINITY, 0.85);

  private static final Citation SOURCE =
      new Citation(
              "Engin and Gur", 2003, "Journal of Fluids Engineering 125:149-157; abstract read")
          .fromMemory("coefficients");
  private static final Equation HEAD_RATIO =
      SOURCE.equation(
          "HR_E",
          "head with sand over head without",
          "1 - 2.705 C_w (s - 1)^0.64 (d50/D)^0.313",
          Kind.NUMBER,
          "C_w, s, d50 m, D m");

  /** The correlation as published. */
  public EnginGur2003() {
    super("engin-gur-2003", "Engin and Gur", SOURCE, List.of(IMPELLER), HEAD_RATIO);
  }

  @Override
  public boolean needsImpellerDiameter() {
    return true;
  }

  @Override
  public Estimate headRatio(Slurry slurry, OptionalDouble impellerDiameterM, Trace trace) {
    double impeller =
        impellerDiameterM.orElseThrow(
            () -> new IllegalArgumentException("Engin and Gur need the impeller diameter"));
    if (!(impeller > 0)) {
      throw new IllegalArgumentException(
          "an impeller diameter must be > 0 but was " + impeller + " m");
    }
    double mass = SolidsDeratings.massFraction(slurry, trace);
    double reduction =
        2.705
            * mass
            * Math.pow(slurry.densityRatio() - 1, 0.64)
            * Math.pow(slurry.d50M() / impeller, 0.313);
    return Estimate.checks()
        .check(IMPELLER, impeller)
        .value(
            trace.step(
                HEAD_RATIO, 1 - reduction, mass, slurry.densityRatio(), slurry.d50M(), impeller));
  }
}
