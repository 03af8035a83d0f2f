package sandslurry.settling;

import java.util.List;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Estimate;
import sandslurry.correlation.Published;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;
import sandslurry.units.Kind;

/**
 * Settling velocity of natural sediment, after Cheng.
 *
 * <pre>w = (ν/d) (√(25 + 1.2 d*²) − 5)^1.5,  d* = d (R g / ν²)^(1/3)</pre>
 *
 * <p>w settling velocity [m/s]; ν kinematic viscosity [m²/s]; d grain size [m], taken here as the
 * sieve size; R = ρs/ρ − 1; g gravity [m/s²]; d* dimensionless grain size.
 *
 * <p>It joins C_D = 32/Re for creeping flow and C_D = 1 for turbulent flow (rounded in the last
 * digit: the printed constants give 32.1 and 1.01), so fine grains fall a quarter slower than by
 * Stokes' law. It is the slowest of the formulas for natural sand below 0.3 mm. The range of the
 * data it was compared with, Re = w d/ν from 1 to 1000, is from memory, unverified.
 */
final class Cheng1997 extends Published implements SettlingVelocityModel {
  private static final Bound REYNOLDS = new Bound("Reynolds number", Kind.NUMBER, 1, 1000);

  private static final Citation SOURCE =
      new Citation("Cheng", 1997, "Journal of Hydraulic Engineering 123:149-152");
  private static final Equation W =
      SOURCE.equation(
          "w",
          "settling velocity of a grain",
          "nu/d (sqrt(25 + 1.2 (R g d^3/nu^2)^(2/3)) - 5)^1.5",
          Kind.FALL,
          "R, d m, nu m2/s");

  Cheng1997() {
    super("cheng-1997", "Cheng", SOURCE, List.of(REYNOLDS), W);
  }

  @Override
  public Estimate velocityMps(Grain grain, Liquid liquid, Trace trace) {
    GrainNumbers numbers = GrainNumbers.of(grain, liquid);
    double sizeTerm = 1.2 * Math.pow(numbers.archimedes(), 2.0 / 3);
    // √(25 + x) − 5 without the difference of near equals that would drown fine grains
    double root = sizeTerm / (Math.sqrt(25 + sizeTerm) + 5);
    double reynolds = Math.pow(root, 1.5);
    double velocity = numbers.step(trace, W, numbers.velocityMps(reynolds));
    return Estimate.checks().check(REYNOLDS, reynolds).value(velocity);
  }
}
