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

/** The settling velocity by a drag law that was measured on spheres. */
abstract class Spheres extends Published implements SettlingVelocityModel, DragLaw {
  private static final Bound SPHERICITY = new Bound("sphericity", Kind.NUMBER, 1, 1);

  private final Bound reynolds;
  private final Equation drag;

  /** As {@link Published}, with the greatest Reynolds number and C_D as a text of Re. */
  Spheres(String id, String name, Citation source, double greatestReynolds, String drag) {
    this(
        id,
        name,
        source,
        new Bound("Reynolds number", Kind.NUMBER, 0, greatestReynolds),
        source.equation("C_D", "drag coefficient", drag, Kind.NUMBER, "Re"));
  }

  private Spheres(String id, String name, Citation source, Bound reynolds, Equation drag) {
    super(id, name, source, List.of(reynolds, SPHERICITY), VELOCITY, drag);
    this.reynolds = reynolds;
    this.drag = drag;
  }

  @Override
  public final double step(Trace trace, double value, double reynoldsNumber) {
    return trace.step(drag, value, reynoldsNumber);
  }

  @Override
  public final Estimate velocityMps(Grain grain, Liquid liquid, Trace trace) {
    double velocity = terminalVelocityMps(grain, liquid, trace);
    return Estimate.checks()
        .check(reynolds, GrainNumbers.of(grain, liquid).reynolds(velocity))
        .check(SPHERICITY, grain.shape().sphericity())
        .value(velocity);
  }
}
