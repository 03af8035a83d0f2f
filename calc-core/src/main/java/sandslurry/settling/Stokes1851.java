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
 * Settling velocity of a sphere in creeping flow, after Stokes.
 *
 * <pre>w = R g d² / (18 ν)</pre>
 *
 * <p>w settling velocity [m/s]; R = ρs/ρ − 1 submerged relative density; g gravity [m/s²]; d
 * diameter [m]; ν kinematic viscosity [m²/s].
 *
 * <p>It neglects the inertia of the liquid. The first correction for inertia raises the drag by
 * 3/16 Re (Oseen), which is 2 % at Re = w d/ν = 0.1: this is the limit reported here. In water it
 * is passed by quartz above 0.05 mm, so the law must not be used for bedding sand: it gives three
 * times the velocity of a 0.5 mm grain. Irregular grains fall somewhat slower; sizes that were
 * themselves found by settling, as in a hydrometer test, are diameters of this law by definition,
 * so no shape is reported.
 */
public final class Stokes1851 extends Published implements SettlingVelocityModel {
  private static final Bound REYNOLDS = new Bound("Reynolds number", Kind.NUMBER, 0, 0.1);

  private static final Citation SOURCE =
      new Citation("Stokes", 1851, "Transactions of the Cambridge Philosophical Society 9");
  private static final Equation W =
      SOURCE.equation(
          "w", "settling velocity of a grain", "R g d^2 / (18 nu)", Kind.FALL, "R, d m, nu m2/s");

  /** Creates the correlation; it has no state. */
  public Stokes1851() {
    super("stokes-1851", "Stokes", SOURCE, List.of(REYNOLDS), W);
  }

  @Override
  public Estimate velocityMps(Grain grain, Liquid liquid, Trace trace) {
    GrainNumbers numbers = GrainNumbers.of(grain, liquid);
    double reynolds = numbers.archimedes() / 18;
    double velocity = numbers.step(trace, W, numbers.velocityMps(reynolds));
    return Estimate.checks().check(REYNOLDS, reynolds).value(velocity);
  }
}
