package sandslurry.transport.headloss;

import java.util.List;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Estimate.Checks;
import sandslurry.correlation.Physics;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.Slurry;
import sandslurry.pipe.Bore;
import sandslurry.settling.SettlingVelocities;
import sandslurry.transport.friction.ClearLiquid;
import sandslurry.units.Kind;

/**
 * Friction of fully suspended sand: the mixture rubs on the wall like a liquid of its own density.
 *
 * <pre>im = iw [1 + C (s − 1)]</pre>
 *
 * <p>im gradient of the slurry and iw of the clear liquid, both in metres of carrier per metre of
 * pipe; C delivered volume fraction; s density of the sand over that of the carrier.
 *
 * <p>It is the line that other models approach at high velocity or with very fine sand, and the
 * least that a sand slurry should be expected to lose. As its limit stands the one that Newitt and
 * co-workers (1955) gave for homogeneous flow, V³ ≥ 1800 g D w, with w the settling velocity of the
 * d50 grain; below it the sand loses more than this model says.
 */
final class EquivalentLiquid extends HeadLossModel {
  private static final double HOMOGENEOUS_FROM = 1800;
  private static final Bound SUSPENDED =
      new Bound("1800 g D w / V^3 (full suspension)", Kind.NUMBER, Double.NEGATIVE_INFINITY, 1);

  private static final Citation SOURCE =
      new Citation(
          "O'Brien and Folsom",
          1937,
          "The transportation of sand in pipe lines, University of California Publications in"
              + " Engineering 3(7) (attribution from memory, unverified); limit: Newitt et al.,"
              + " 1955, Transactions of the Institution of Chemical Engineers 33:93-113");
  private static final Equation GRADIENT =
      SOURCE.equation(
          "i_m",
          "gradient with sand, metres of carrier per metre",
          "i_f (1 + C (s - 1))",
          Kind.NUMBER,
          "i_f, C, s");

  EquivalentLiquid() {
    super(
        "equivalent-liquid",
        "Equivalent liquid",
        SOURCE,
        List.of(ClearLiquid.TURBULENT, SUSPENDED),
        GRADIENT);
  }

  @Override
  double gradient(
      Slurry slurry, Bore bore, double velocityMps, ClearLiquid clear, Checks checks, Trace trace) {
    double fall =
        SettlingVelocities.DEFAULT.velocityMps(slurry.d50Grain(), slurry.liquid()).value();
    double weight = HOMOGENEOUS_FROM * Physics.GRAVITY * bore.diameterM() * fall;
    checks.check(SUSPENDED, weight / Math.pow(velocityMps, 3));
    double gradient =
        clear.gradient() * slurry.mixtureDensityKgM3() / slurry.liquid().densityKgM3();
    double c = slurry.volumeFraction();
    return trace.step(GRADIENT, gradient, clear.gradient(), c, slurry.densityRatio());
  }
}
