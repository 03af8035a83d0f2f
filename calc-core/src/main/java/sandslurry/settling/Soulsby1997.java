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
 * Settling velocity of marine sand, after Soulsby.
 *
 * <pre>w = (ν/d) (√(10.36² + 1.049 d*³) − 10.36),  d*³ = R g d³ / ν²</pre>
 *
 * <p>w settling velocity [m/s]; ν kinematic viscosity [m²/s]; d sieve size [m]; R = ρs/ρ − 1; g
 * gravity [m/s²].
 *
 * <p>Limits: Stokes' law with 19.75 in the place of 18 for fine grains, C_D = 1.27 for coarse. The
 * range reported is that of sand, 0.063 to 2 mm, for which the book gives it (from memory,
 * unverified).
 */
final class Soulsby1997 extends Published implements SettlingVelocityModel {
  private static final Bound SIZE = new Bound("grain size", Kind.GRAIN, 6.3e-5, 2e-3);

  private static final Citation SOURCE =
      new Citation("Soulsby", 1997, "Dynamics of Marine Sands, Thomas Telford, London");
  private static final Equation W =
      SOURCE.equation(
          "w",
          "settling velocity of a grain",
          "nu/d (sqrt(10.36^2 + 1.049 R g d^3/nu^2) - 10.36)",
          Kind.FALL,
          "R, d m, nu m2/s");

  Soulsby1997() {
    super("soulsby-1997", "Soulsby", SOURCE, List.of(SIZE), W);
  }

  @Override
  public Estimate velocityMps(Grain grain, Liquid liquid, Trace trace) {
    GrainNumbers numbers = GrainNumbers.of(grain, liquid);
    double sizeTerm = 1.049 * numbers.archimedes();
    // √(10.36² + x) − 10.36 without the difference of near equals
    double reynolds = sizeTerm / (Math.sqrt(10.36 * 10.36 + sizeTerm) + 10.36);
    double velocity = numbers.step(trace, W, numbers.velocityMps(reynolds));
    return Estimate.checks().check(SIZE, grain.diameterM()).value(velocity);
  }
}
