package sandslurry.settling;

import sandslurry.correlation.Bound;
import sandslurry.correlation.Estimate;
import sandslurry.fact.step.Trace;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;
import sandslurry.units.Kind;

/** What the drag laws of spheres share: they know no shape, and say so when the grain has one. */
final class Spheres {
  static final Bound SPHERICITY = new Bound("sphericity", Kind.NUMBER, 1, 1);

  private Spheres() {}

  static Estimate velocityMps(
      DragLaw law, Bound reynolds, Grain grain, Liquid liquid, Trace trace) {
    double velocity = law.terminalVelocityMps(grain, liquid, trace);
    return Estimate.checks()
        .check(reynolds, GrainNumbers.of(grain, liquid).reynolds(velocity))
        .check(SPHERICITY, grain.shape().sphericity())
        .value(velocity);
  }
}
